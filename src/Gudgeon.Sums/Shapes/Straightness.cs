using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Shapes;

/// <summary>A straight line through heights along an edge, and the zone that holds them all.</summary>
/// <param name="Intercept">Height of the line at x = 0.</param>
/// <param name="Slope">Rise per unit of x.</param>
/// <param name="Zone">Highest less lowest above the line: the straightness by that line.</param>
public sealed record LineZone(double Intercept, double Slope, double Zone);

/// <summary>Straightness of an edge from heights along it. All in one unit, mm as a rule; heights small beside the length.</summary>
/// <remarks>Source: ISO 12780-1 for the reference lines (from memory).</remarks>
public static class Straightness
{
    /// <summary>By the line through both ends.</summary>
    /// <param name="x">Places along the edge; the first and the last differ.</param>
    /// <param name="z">Heights.</param>
    /// <returns>The line and its zone.</returns>
    public static LineZone EndPoints(double[] x, double[] z)
    {
        Alike(x, z);
        if (x[0] == x[^1])
            throw new ArgumentException("The two ends lie in one place.", nameof(x));
        var slope = (z[^1] - z[0]) / (x[^1] - x[0]);
        return Of(x, z, z[0] - slope * x[0], slope);
    }

    /// <summary>By the least-squares line.</summary>
    /// <inheritdoc cref="EndPoints"/>
    public static LineZone LeastSquaresLine(double[] x, double[] z)
    {
        Alike(x, z);
        var fit = LeastSquares.Line(x, z);
        return Of(x, z, fit.Coefficients[0], fit.Coefficients[1]);
    }

    /// <summary>By the line with the smallest zone: what ISO 1101 means. Exact.</summary>
    /// <inheritdoc cref="EndPoints"/>
    public static LineZone MinimumZone(double[] x, double[] z)
    {
        Alike(x, z);
        var (b, half) = Chebyshev.Fit([Array.ConvertAll(x, _ => 1.0), x], z);
        return new(b[0], b[1], 2 * half);
    }

    private static LineZone Of(double[] x, double[] z, double intercept, double slope) =>
        new(intercept, slope, Samples.Range(x.Select((at, i) => z[i] - intercept - slope * at).ToArray()));

    private static void Alike(double[] x, double[] z)
    {
        if (x.Length != z.Length || x.Length < 3)
            throw new ArgumentException($"A straightness needs three places or more with a height each; there are {x.Length} places and {z.Length} heights.");
    }
}
