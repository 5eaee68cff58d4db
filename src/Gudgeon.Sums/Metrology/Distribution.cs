namespace Gudgeon.Sums.Metrology;

/// <summary>What is known of one input, as a distribution to draw from.</summary>
/// <remarks>Source: JCGM 101:2008, 6.4.</remarks>
public readonly record struct Distribution
{
    private enum Kind { Normal, Student, Rectangular, Trapezoid, Arcsine, CurvedTrapezoid }

    private Distribution(Kind kind, double centre, double scale, double extra = 0)
    {
        if (!double.IsFinite(centre) || !(scale >= 0) || double.IsInfinity(scale))
            throw new ArgumentOutOfRangeException(nameof(scale), scale, "A distribution needs a finite centre and a width not below zero.");
        (_kind, _centre, _scale, _extra) = (kind, centre, scale, extra);
    }

    private readonly Kind _kind;
    private readonly double _centre, _scale, _extra;

    /// <summary>Mean.</summary>
    public double Mean => _centre;

    /// <summary>Standard deviation; infinite for Student's with two degrees of freedom or fewer.</summary>
    public double StandardDeviation => _kind switch
    {
        Kind.Normal => _scale,
        Kind.Student => _extra > 2 ? _scale * Math.Sqrt(_extra / (_extra - 2)) : double.PositiveInfinity,
        Kind.Rectangular => _scale / Math.Sqrt(3),
        Kind.Trapezoid => _scale * Math.Sqrt((1 + _extra * _extra) / 6),
        Kind.Arcsine => _scale / Math.Sqrt(2),
        _ => Math.Sqrt(_scale * _scale / 3 + _extra * _extra / 9),
    };

    /// <summary>Normal.</summary>
    /// <param name="mean">Mean.</param>
    /// <param name="standardUncertainty">Standard deviation.</param>
    /// <returns>The distribution.</returns>
    public static Distribution Normal(double mean, double standardUncertainty) => new(Kind.Normal, mean, standardUncertainty);

    /// <summary>Student's, moved and scaled: what a mean of few readings leaves.</summary>
    /// <param name="mean">Mean.</param>
    /// <param name="scale">s/√n.</param>
    /// <param name="degreesOfFreedom">n − 1, above zero.</param>
    /// <returns>The distribution.</returns>
    public static Distribution Student(double mean, double scale, double degreesOfFreedom)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degreesOfFreedom);
        return new(Kind.Student, mean, scale, degreesOfFreedom);
    }

    /// <summary>Anywhere between two bounds alike.</summary>
    /// <param name="low">Lower bound.</param>
    /// <param name="high">Upper bound.</param>
    /// <returns>The distribution.</returns>
    public static Distribution Rectangular(double low, double high) => new(Kind.Rectangular, (low + high) / 2, (high - low) / 2);

    /// <summary>A trapezoid: flat on top for a share of the base.</summary>
    /// <param name="low">Lower bound.</param>
    /// <param name="high">Upper bound.</param>
    /// <param name="top">Share of the base that is flat on top, 0 (a triangle) to 1 (a rectangle).</param>
    /// <returns>The distribution.</returns>
    public static Distribution Trapezoid(double low, double high, double top) => top is >= 0 and <= 1
        ? new(Kind.Trapezoid, (low + high) / 2, (high - low) / 2, top)
        : throw new ArgumentOutOfRangeException(nameof(top), top, "The flat share lies between 0 and 1.");

    /// <summary>Likeliest in the middle.</summary>
    /// <inheritdoc cref="Rectangular"/>
    public static Distribution Triangular(double low, double high) => Trapezoid(low, high, 0);

    /// <summary>Swinging between two bounds, likeliest at the ends.</summary>
    /// <inheritdoc cref="Rectangular"/>
    public static Distribution Arcsine(double low, double high) => new(Kind.Arcsine, (low + high) / 2, (high - low) / 2);

    /// <summary>Rectangular between bounds that are themselves known to ±d only.</summary>
    /// <param name="low">Lower bound.</param>
    /// <param name="high">Upper bound.</param>
    /// <param name="doubt">d, not below zero and below half the width.</param>
    /// <returns>The distribution.</returns>
    public static Distribution CurvedTrapezoid(double low, double high, double doubt) => doubt >= 0 && doubt < (high - low) / 2
        ? new(Kind.CurvedTrapezoid, (low + high) / 2, (high - low) / 2, doubt)
        : throw new ArgumentOutOfRangeException(nameof(doubt), doubt, "The doubt of the bounds lies between 0 and half their distance.");

    /// <summary>Fills a block with draws; the kind is looked at once a block, not once a draw.</summary>
    internal void Fill(Span<double> block, ref Xoshiro chance)
    {
        double centre = _centre, scale = _scale, extra = _extra;
        switch (_kind)
        {
            case Kind.Normal:
                for (var i = 0; i < block.Length; i++)
                    block[i] = centre + scale * Ziggurat.Normal(ref chance);
                break;
            case Kind.Student:
                for (var i = 0; i < block.Length; i++)
                    block[i] = centre + scale * Ziggurat.Normal(ref chance) / Math.Sqrt(2 * Gamma(extra / 2, ref chance) / extra);
                break;
            case Kind.Rectangular:
                FillRectangle(block, centre - 3 * scale, 2 * scale, ref chance);
                break;
            case Kind.Trapezoid:
                for (var i = 0; i < block.Length; i++)
                    block[i] = centre + scale * ((1 + extra) / 2 * (2 * chance.Unit() - 1) + (1 - extra) / 2 * (2 * chance.Unit() - 1));
                break;
            case Kind.Arcsine:
                for (var i = 0; i < block.Length; i++)
                    block[i] = centre + scale * Math.Sin(2 * Math.PI * chance.Unit());
                break;
            default:
                for (var i = 0; i < block.Length; i++)
                {
                    var half = scale + extra * (2 * chance.Unit() - 1);
                    block[i] = centre + half * (2 * chance.Unit() - 1);
                }
                break;
        }
    }

    // Apart from the others, because a generator that nobody else may change can live in registers.
    private static void FillRectangle(Span<double> block, double start, double width, ref Xoshiro shared)
    {
        var chance = shared;
        for (var i = 0; i < block.Length; i++)
            block[i] = start + width * chance.FromOneToTwo();
        shared = chance;
    }

    // Marsaglia and Tsang, ACM Transactions on Mathematical Software 26 (2000).
    private static double Gamma(double shape, ref Xoshiro chance)
    {
        if (shape < 1)
            return Gamma(shape + 1, ref chance) * Math.Pow(chance.Unit(), 1 / shape);
        var d = shape - 1.0 / 3;
        var c = 1 / Math.Sqrt(9 * d);
        while (true)
        {
            var x = Ziggurat.Normal(ref chance);
            var v = 1 + c * x;
            if (v <= 0)
                continue;
            v = v * v * v;
            if (Math.Log(chance.Unit()) < 0.5 * x * x + d - d * v + d * Math.Log(v))
                return d * v;
        }
    }
}
