using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>Wear of parts that are judged by what they have become. Common practice, no source, unless said otherwise.</summary>
public static class Wear
{
    /// <summary>Growth of a chain: (L − N·p)/(N·p).</summary>
    /// <param name="length">Length over N pitches under a light pull.</param>
    /// <param name="pitches">N, above zero.</param>
    /// <param name="pitch">p, the pitch when new (ISO 606); above zero.</param>
    /// <returns>A share; multiply by 100 for per cent.</returns>
    public static double ChainElongation(Length length, int pitches, Length pitch)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitches);
        Require.Positive(pitch, "pitch");
        var whenNew = pitch * pitches;
        return (length - whenNew) / whenNew;
    }

    /// <summary>Leak-down: 1 − p₂/p₁, gauge pressures.</summary>
    /// <param name="supplied">p₁ before the orifice, above zero.</param>
    /// <param name="held">p₂ in the cylinder, from zero to p₁.</param>
    /// <returns>A share; multiply by 100 for per cent. It depends on the orifice of the tester.</returns>
    public static double LeakDown(Pressure supplied, Pressure held)
    {
        Require.Positive(supplied, "supplied pressure");
        Require.NotNegative(held, "held pressure");
        Require.NotNegative(supplied - held, "supplied pressure less the held");
        return 1 - held / supplied;
    }

    /// <summary>Stretch of a bolt: length now − length when new.</summary>
    /// <param name="now">Length now.</param>
    /// <param name="whenNew">Length of a new one.</param>
    /// <returns>The stretch.</returns>
    public static Length BoltStretch(Length now, Length whenNew) => now - whenNew;

    /// <summary>Drop within a set, as in a compression test: (largest − smallest)/largest.</summary>
    /// <param name="set">One value per cylinder; at least two, the largest above zero.</param>
    /// <returns>A share; multiply by 100 for per cent.</returns>
    public static double SetDrop(IReadOnlyCollection<double> set) => set.Count >= 2 && set.Max() > 0
        ? (set.Max() - set.Min()) / set.Max()
        : throw new ArgumentException("A spread needs two values or more, the largest above zero.", nameof(set));

    /// <summary>Next size up a ladder for a worn bore: the smallest v with v ≥ 2·(worst wear on one side) + clean-up.</summary>
    /// <param name="worstOneSidedWear">Deepest wear on one side of the unworn wall.</param>
    /// <param name="cleanUp">Metal that boring must still take, on diameter; 0.05 to 0.10 mm is usual.</param>
    /// <param name="ladder">Oversizes that are sold for this engine.</param>
    /// <returns>The oversize, or null when none is enough.</returns>
    public static Length? Oversize(Length worstOneSidedWear, Length cleanUp, IReadOnlyCollection<Length> ladder) =>
        FirstAtLeast(worstOneSidedWear * 2 + cleanUp, ladder);

    /// <summary>Next size down a ladder for a worn journal: the smallest u with u ≥ standard − smallest reading + clean-up.</summary>
    /// <param name="standard">Standard size.</param>
    /// <param name="smallest">Smallest reading.</param>
    /// <param name="cleanUp">Metal that grinding must still take, on diameter; 0.03 to 0.05 mm is usual.</param>
    /// <param name="ladder">Undersizes that are sold for this engine.</param>
    /// <returns>The undersize, or null when none is enough.</returns>
    public static Length? Undersize(Length standard, Length smallest, Length cleanUp, IReadOnlyCollection<Length> ladder) =>
        FirstAtLeast(standard - smallest + cleanUp, ladder);

    private static Length? FirstAtLeast(Length needed, IReadOnlyCollection<Length> ladder)
    {
        // A nanometre of grace: 0.25 needed and 0.25 sold must not miss each other by rounding.
        var enough = ladder.Where(step => step + Length.FromMillimetres(1e-6) >= needed).ToArray();
        return enough.Length == 0 ? null : enough.Min();
    }
}
