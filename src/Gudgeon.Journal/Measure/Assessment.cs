using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Metrology;

namespace Gudgeon.Journal;

/// <summary>The one word for a figure that people act on.</summary>
public enum Call
{
    /// <summary>No limit was typed, no instrument named, or nothing read.</summary>
    None,
    Within,
    AsNew,
    Serviceable,
    TooCloseToCall,
    Outside,
}

/// <summary>What a rule of thumb says of a figure. Never a verdict.</summary>
public sealed record ThumbSays(Thumb Thumb, string Band, ThumbWord Word);

/// <summary>One figure of a place with all that stands behind it.</summary>
/// <param name="Spot">The spot that it is read at, or empty for a figure that is worked out.</param>
/// <param name="Budget">Its uncertainty; null when an instrument is missing.</param>
/// <param name="Service">Verdict against the service limit, or null without one.</param>
/// <param name="New">Verdict against the limit of a new part, or null without one.</param>
/// <param name="Next">What would settle it, or what is missing; empty when nothing is.</param>
public sealed record JudgedFigure(
    string Spot, string Name, double Value, string Unit, Working Working, Budget? Budget, Call Call, Verdict? Service, Verdict? New, IReadOnlyList<ThumbSays> Thumbs, string Next)
{
    /// <summary>Its size grade by the table that the owner typed, in words; empty without one.</summary>
    public string Grade { get; init; } = "";

    /// <summary>U, k = 2; null when an instrument is missing.</summary>
    public double? Expanded => Budget?.Expanded();

    /// <summary>Probability that it conforms to the limit that decides; null without a verdict.</summary>
    public double? Probability => (Service ?? New)?.ProbabilityWithin;

    /// <summary>The figure to the place that its uncertainty supports, with its unit.</summary>
    public string Shown => Unit == Units.Look ? Value == 1 ? "passes" : "fails"
        : Expanded is > 0 and var u ? Units.Joined(Sums.Quantities.Figures.To(Value, u), Unit)
        : Units.Show(Value, Unit);

    /// <summary>± U with its unit, or empty.</summary>
    public string ShownUncertainty => Expanded is > 0 and var u ? $"± {Units.Joined(Sums.Quantities.Figures.To(u, u), Unit)}" : "";
}

/// <summary>All figures of one characteristic at one place.</summary>
/// <param name="Missing">How many spots wait for a reading.</param>
public sealed record Assessment(Characteristic Characteristic, MeasuringPlace Place, IReadOnlyList<JudgedFigure> Figures, int Missing)
{
    /// <summary>The worst call of its figures.</summary>
    public Call Call => Figures.Count == 0 ? Call.None : Figures.Max(f => f.Call);

    public bool IsStarted => Figures.Count > 0;

    /// <summary>The figure that decides: the worst, and of those the one nearest to its limit.</summary>
    public JudgedFigure? Deciding => Figures.OrderByDescending(f => f.Call).ThenBy(f => (f.Service ?? f.New)?.Margin ?? 0).FirstOrDefault();
}

/// <summary>How calls are worded, alike everywhere.</summary>
public static class CallWords
{
    public static string Words(this Call call) => call switch
    {
        Call.Within => "within limits",
        Call.AsNew => "as new",
        Call.Serviceable => "serviceable",
        Call.TooCloseToCall => "too close to call",
        Call.Outside => "outside limits",
        _ => "no verdict",
    };

    public static string Words(this ThumbWord word) => word switch
    {
        ThumbWord.Likely => "likely good",
        ThumbWord.Unlikely => "unlikely to be good",
        _ => "look it up",
    };
}
