using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>What a dial gauge tells of a turning or sliding part. Common practice, no source.</summary>
public static class Runout
{
    /// <summary>Total indicated run-out: largest less smallest of the dial over one turn.</summary>
    /// <param name="dial">Readings round one turn; at least two.</param>
    /// <returns>The run-out. Part of it may be the track being out of round.</returns>
    public static Length Total(IReadOnlyCollection<Length> dial) =>
        dial.Count >= 2 ? dial.Max() - dial.Min() : throw new ArgumentException("A run-out needs at least two readings of the dial.", nameof(dial));

    /// <summary>Bend of a shaft at the dial: half its total run-out.</summary>
    /// <param name="total">Total indicated run-out.</param>
    /// <returns>The bend.</returns>
    public static Length Bend(Length total) => total / 2;

    /// <summary>End float from several push-pull readings.</summary>
    /// <param name="readings">End to end, three times or more is usual; at least one.</param>
    /// <returns>Mean, and largest less smallest: a wide scatter means a dirty face or a loose dial.</returns>
    public static (Length Mean, Length Scatter) EndFloat(IReadOnlyCollection<Length> readings) =>
        readings.Count > 0
            ? (Length.FromMillimetres(readings.Average(length => length.Millimetres)), readings.Max() - readings.Min())
            : throw new ArgumentException("An end float needs a reading.", nameof(readings));

    /// <summary>Bend or twist of a rod, as mm per 100 mm: (r₁ − r₂)·100/L, with its sign.</summary>
    /// <param name="one">Dial over one end of the mandrel.</param>
    /// <param name="other">Dial over the other end.</param>
    /// <param name="apart">L: how far apart the two places are; above zero.</param>
    /// <returns>Millimetres in each 100 mm; bend in the plane of the rod, twist square to it.</returns>
    public static Length PerHundred(Length one, Length other, Length apart)
    {
        Require.Positive(apart, "distance between the two places");
        return (one - other) * (100 / apart.Millimetres);
    }
}
