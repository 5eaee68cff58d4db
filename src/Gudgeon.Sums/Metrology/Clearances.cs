using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>The tightest and the loosest that two parts can sit, from all their readings.</summary>
/// <param name="Smallest">Smallest hole less largest shaft; below zero is interference.</param>
/// <param name="Largest">Largest hole less smallest shaft.</param>
public readonly record struct ClearanceRange(Length Smallest, Length Largest);

/// <summary>Clearances and interferences between measured parts. All on diameter. Common practice, no source, unless said otherwise.</summary>
public static class Clearances
{
    /// <summary>Clearance of one pair of readings on the same axis: hole − shaft. Below zero is interference.</summary>
    /// <param name="hole">Diameter of the hole.</param>
    /// <param name="shaft">Diameter of the shaft.</param>
    /// <returns>The clearance.</returns>
    public static Length Between(Length hole, Length shaft) => hole - shaft;

    /// <summary>Interference of one pair: shaft − hole. Below zero is clearance.</summary>
    /// <param name="shaft">Diameter of the shaft, insert or pin.</param>
    /// <param name="hole">Diameter of the hole.</param>
    /// <returns>The interference.</returns>
    public static Length Interference(Length shaft, Length hole) => shaft - hole;

    /// <summary>Tightest and loosest over all readings of a pair.</summary>
    /// <param name="hole">Readings of the hole; at least one.</param>
    /// <param name="shaft">Readings of the shaft; at least one.</param>
    /// <returns>The range.</returns>
    public static ClearanceRange Range(IReadOnlyCollection<Length> hole, IReadOnlyCollection<Length> shaft) =>
        hole.Count > 0 && shaft.Count > 0
            ? new(hole.Min() - shaft.Max(), hole.Max() - shaft.Min())
            : throw new ArgumentException("A clearance needs a reading of each part.");

    /// <summary>Oil clearance from a housing read without its shells: housing − 2·wall − journal.</summary>
    /// <param name="housing">Housing bore, cap tightened as in service, square to the joint.</param>
    /// <param name="wall">Wall of one shell at its crown.</param>
    /// <param name="journal">Diameter of the journal.</param>
    /// <returns>The oil clearance.</returns>
    /// <remarks>The wall counts twice, so its uncertainty does too: u² = u_h² + (2u_w)² + u_j².</remarks>
    public static Length OilByWall(Length housing, Length wall, Length journal) => housing - wall * 2 - journal;

    /// <summary>Oil clearance by shell wall with its budget.</summary>
    /// <param name="housing">Housing bore with its line of uncertainty, mm.</param>
    /// <param name="wall">Shell wall with its line, mm.</param>
    /// <param name="journal">Journal with its line, mm.</param>
    /// <returns>The budget of the clearance, mm.</returns>
    public static Budget OilByWall(ModelInput housing, ModelInput wall, ModelInput journal) => new(
        OilByWall(Length.FromMillimetres(housing.Value), Length.FromMillimetres(wall.Value), Length.FromMillimetres(journal.Value)).Millimetres, "mm",
        [housing.Line with { Sensitivity = 1 }, wall.Line with { Sensitivity = -2 }, journal.Line with { Sensitivity = -1 }]);

    /// <summary>Stem to guide clearance from rocking the valve: c = rock / (1 + 2e/L).</summary>
    /// <param name="rock">Total side play at the valve head.</param>
    /// <param name="headBelowGuide">e: how far the place of the dial stands from the end of the guide; not below zero.</param>
    /// <param name="guideLength">L, above zero.</param>
    /// <returns>The clearance on diameter.</returns>
    public static Length GuideByRock(Length rock, Length headBelowGuide, Length guideLength)
    {
        Require.Positive(guideLength, "guide length");
        Require.NotNegative(headBelowGuide, "distance of the dial from the guide");
        return rock / (1 + 2 * (headBelowGuide / guideLength));
    }

    /// <summary>Clearance of one shaft in a set, or of a pair, spread over the set: largest less smallest.</summary>
    /// <param name="set">One value per member; at least two.</param>
    /// <returns>The spread, and its share of the largest.</returns>
    public static (Length Spread, double ShareOfLargest) SetSpread(IReadOnlyCollection<Length> set)
    {
        if (set.Count < 2)
            throw new ArgumentException("A spread needs at least two of a set.", nameof(set));
        var spread = set.Max() - set.Min();
        return (spread, spread / set.Max());
    }
}
