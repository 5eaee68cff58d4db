using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>
/// Diameters of one bore, journal, pin or stem, read at several heights (or planes) and on several axes. Places not read yet are null;
/// each figure comes as soon as its own places are there.
/// </summary>
/// <remarks>
/// Taper and out-of-round as engine reconditioning uses them are defined by no standard: common practice, no source.
/// Out-of-round here is a difference of diameters; roundness by ISO 1101 is a radial zone, at least half as large,
/// and a two-point gauge misses odd lobes altogether.
/// </remarks>
public sealed class SizeTable
{
    private readonly Length?[,] _read;

    /// <summary>Takes the readings.</summary>
    /// <param name="readings">By height, first at the top (or front), then by axis.</param>
    public SizeTable(Length?[,] readings) => _read = (Length?[,])readings.Clone();

    /// <summary>How many heights.</summary>
    public int Heights => _read.GetLength(0);

    /// <summary>How many axes.</summary>
    public int Axes => _read.GetLength(1);

    /// <summary>The places that still wait for a reading.</summary>
    public int Missing => Heights * Axes - Readings.Count();

    /// <summary>What has been read.</summary>
    public IEnumerable<Length> Readings => _read.Cast<Length?>().Where(length => length is not null).Select(length => length!.Value);

    /// <summary>Mean of all readings; null while there is none.</summary>
    public Length? Mean => Readings.Any() ? Length.FromMillimetres(Readings.Average(length => length.Millimetres)) : null;

    /// <summary>Largest reading.</summary>
    public Length? Largest => Readings.Any() ? Readings.Max() : null;

    /// <summary>Smallest reading.</summary>
    public Length? Smallest => Readings.Any() ? Readings.Min() : null;

    /// <summary>Taper: for each axis largest less smallest over the heights; the largest of them.</summary>
    public Length? Taper => MaxOf(Enumerable.Range(0, Axes).Select(TaperOn));

    /// <summary>Out-of-round: for each height largest less smallest over the axes; the largest of them.</summary>
    public Length? OutOfRound => MaxOf(Enumerable.Range(0, Heights).Select(OutOfRoundAt));

    /// <summary>Largest less smallest over the heights of one axis; null with fewer than two readings there.</summary>
    /// <param name="axis">Which axis.</param>
    /// <returns>The taper, never below zero.</returns>
    public Length? TaperOn(int axis) => Spread(Enumerable.Range(0, Heights).Select(height => _read[height, axis]));

    /// <summary>Top less bottom on one axis, with its sign: above zero when wider at the top.</summary>
    /// <param name="axis">Which axis.</param>
    /// <returns>The signed taper.</returns>
    public Length? EndTaperOn(int axis) => _read[0, axis] is { } top && _read[Heights - 1, axis] is { } bottom && Heights > 1 ? top - bottom : null;

    /// <summary>Middle less the mean of the ends on one axis: above zero for a barrelled bore, below for one narrow in the waist.</summary>
    /// <param name="axis">Which axis.</param>
    /// <returns>The bulge; null unless there are three heights or more, odd in number.</returns>
    public Length? BarrelOn(int axis) =>
        Heights >= 3 && Heights % 2 == 1 && _read[0, axis] is { } top && _read[Heights / 2, axis] is { } middle && _read[Heights - 1, axis] is { } bottom
            ? middle - (top + bottom) / 2
            : null;

    /// <summary>Largest less smallest over the axes of one height; null with fewer than two readings there.</summary>
    /// <param name="height">Which height.</param>
    /// <returns>The out-of-round, never below zero.</returns>
    public Length? OutOfRoundAt(int height) => Spread(Enumerable.Range(0, Axes).Select(axis => _read[height, axis]));

    /// <summary>Wear of a hole: largest reading less an unworn spot or the nominal of its grade.</summary>
    /// <param name="unworn">The unworn size.</param>
    /// <returns>The wear.</returns>
    public Length? HoleWear(Length unworn) => Largest is { } largest ? largest - unworn : null;

    /// <summary>Wear of a shaft: unworn size less the smallest reading.</summary>
    /// <param name="unworn">The unworn size.</param>
    /// <returns>The wear.</returns>
    public Length? ShaftWear(Length unworn) => Smallest is { } smallest ? unworn - smallest : null;

    private static Length? Spread(IEnumerable<Length?> readings)
    {
        var read = readings.Where(length => length is not null).Select(length => length!.Value).ToArray();
        return read.Length < 2 ? null : read.Max() - read.Min();
    }

    private static Length? MaxOf(IEnumerable<Length?> figures)
    {
        var there = figures.Where(length => length is not null).Select(length => length!.Value).ToArray();
        return there.Length == 0 ? null : there.Max();
    }
}
