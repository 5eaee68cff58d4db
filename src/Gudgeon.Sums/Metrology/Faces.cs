using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>Heights and gaps at faces. Common practice, no source.</summary>
public static class Faces
{
    /// <summary>Flatness by straight edge: the largest feeler that passed on any line.</summary>
    /// <param name="feelers">The thickest that passed, by line; at least one.</param>
    /// <returns>The figure, and which line gave it.</returns>
    public static (Length Largest, int Line) Flatness(IReadOnlyList<Length> feelers)
    {
        if (feelers.Count == 0)
            throw new ArgumentException("A flatness needs at least one line.", nameof(feelers));
        var line = Enumerable.Range(0, feelers.Count).MaxBy(i => feelers[i].Millimetres);
        return (feelers[line], line);
    }

    /// <summary>Protrusion of a liner: mean and spread of its places.</summary>
    /// <param name="places">Flange over deck at several places, clamped; at least one.</param>
    /// <returns>Mean, and largest less smallest.</returns>
    public static (Length Mean, Length Spread) Protrusion(IReadOnlyCollection<Length> places) =>
        places.Count > 0
            ? (Length.FromMillimetres(places.Average(length => length.Millimetres)), places.Max() - places.Min())
            : throw new ArgumentException("A protrusion needs a reading.", nameof(places));

    /// <summary>Largest step between liners that stand side by side.</summary>
    /// <param name="inOrder">Mean protrusion of each, in their order; at least two.</param>
    /// <returns>The step, and the index of the first of the pair.</returns>
    public static (Length Step, int First) StepToNeighbour(IReadOnlyList<Length> inOrder)
    {
        if (inOrder.Count < 2)
            throw new ArgumentException("A step needs two neighbours.", nameof(inOrder));
        var first = Enumerable.Range(0, inOrder.Count - 1).MaxBy(i => (inOrder[i + 1] - inOrder[i]).Abs().Millimetres);
        return ((inOrder[first + 1] - inOrder[first]).Abs(), first);
    }

    /// <summary>Deck height at top dead centre: mean of two dial readings over the pin axis. Above zero stands above the deck.</summary>
    /// <param name="one">One side of the pin axis.</param>
    /// <param name="other">The other side; the mean takes out the rock of the piston.</param>
    /// <returns>The deck height.</returns>
    public static Length DeckHeight(Length one, Length other) => (one + other) / 2;

    /// <summary>Squish gap: compressed gasket − deck height.</summary>
    /// <param name="gasket">Thickness of the gasket as compressed.</param>
    /// <param name="deckHeight">Above zero when the piston stands above the deck.</param>
    /// <returns>The gap, cold and still.</returns>
    public static Length Squish(Length gasket, Length deckHeight) => gasket - deckHeight;

    /// <summary>Crush (nip) of a pair of shells: the gap at the slackened side, cap tightened on the other.</summary>
    /// <param name="oneSide">Gap with the bolt of one side slack.</param>
    /// <param name="otherSide">Gap with the other bolt slack.</param>
    /// <returns>The smaller, which rules, and the difference of the two.</returns>
    public static (Length Smaller, Length Difference) Crush(Length oneSide, Length otherSide) =>
        (oneSide < otherSide ? oneSide : otherSide, (oneSide - otherSide).Abs());
}
