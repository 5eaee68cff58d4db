using Gudgeon.Sums.Metrology;

namespace Gudgeon.Journal;

/// <summary>One cause of uncertainty of a reading.</summary>
/// <param name="Key">The same key in two readings means the same error in both: it cancels in their difference.</param>
public sealed record Cause(string Key, BudgetLine Line)
{
    /// <summary>The scatter of one reading: more readings make it less.</summary>
    public bool IsScatter => Key.StartsWith("reading ", StringComparison.Ordinal);

    /// <summary>What another instrument would not bring.</summary>
    public bool IsInstrument => Key.StartsWith("gauge ", StringComparison.Ordinal) || Key.StartsWith("certificate ", StringComparison.Ordinal) || Key.StartsWith("setting ", StringComparison.Ordinal);
}

/// <summary>A figure with the causes of its uncertainty.</summary>
/// <param name="Symbol">Its symbol in a working: the spot, or a, b.</param>
/// <param name="Name">What it is.</param>
/// <param name="Causes">Null when no instrument was named: then nothing can be judged.</param>
public sealed record Gauged(string Symbol, string Name, double Value, string Unit, IReadOnlyList<Cause>? Causes, string AsTyped)
{
    /// <summary>How many spots it stands on.</summary>
    public int Spots { get; init; } = 1;

    /// <summary>True when the scatter comes from the owner's own repeats.</summary>
    public bool ScatterIsKnown => Causes is { } causes && causes.Any(c => c.IsScatter && double.IsFinite(c.Line.DegreesOfFreedom));

    /// <summary>Standard uncertainty, or null when no instrument was named.</summary>
    public double? StandardUncertainty => Causes is null ? null : Combined.Budget(Value, Unit, Causes).StandardUncertainty;
}

/// <summary>Weighted sums of figures that may share causes.</summary>
public static class Combined
{
    /// <summary>Causes of Σ cᵢxᵢ: what is shared adds with its sign, what is not adds as squares (GUM 5.1.2, 5.2.2 with r = 1 or 0).</summary>
    public static IReadOnlyList<Cause>? Causes(IReadOnlyList<(double Weight, Gauged Figure)> parts)
    {
        if (parts.Any(p => p.Figure.Causes is null))
            return null;
        return
        [
            .. parts.SelectMany(p => p.Figure.Causes!.Select(c => (p.Weight, Cause: c))).GroupBy(x => x.Cause.Key).Select(g =>
            {
                var first = g.First().Cause;
                var together = Math.Abs(g.Sum(x => x.Weight * x.Cause.Line.StandardUncertainty));
                return first with { Line = first.Line with { StandardUncertainty = together } };
            }),
        ];
    }

    /// <summary>The budget of a figure. Readings of one spot are told as one line.</summary>
    public static Budget Budget(double value, string unit, IReadOnlyList<Cause> causes)
    {
        var lines = causes.GroupBy(c => c.Line.Name).Select(g => g.First().Line with
        {
            StandardUncertainty = Math.Sqrt(g.Sum(c => c.Line.StandardUncertainty * c.Line.StandardUncertainty)),
        });
        return new Budget(value, Units.Sign(unit), [.. lines]);
    }
}
