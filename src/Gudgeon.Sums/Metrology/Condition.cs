namespace Gudgeon.Sums.Metrology;

/// <summary>What two sets of limits, as built and wear, say together.</summary>
public enum ConditionWord
{
    /// <summary>Proven within the limits of a new part.</summary>
    AsNew,

    /// <summary>Proven within the wear limits, but not within those of a new part.</summary>
    Serviceable,

    /// <summary>Proven beyond the wear limits.</summary>
    Out,

    /// <summary>Not settled against the wear limits.</summary>
    TooCloseToCall,
}

/// <summary>A judgement against limits for new parts and for worn ones; the two are different questions.</summary>
/// <param name="Word">The word.</param>
/// <param name="Wear">The verdict against the wear limits.</param>
/// <param name="New">The verdict against the limits of a new part.</param>
public sealed record Condition(ConditionWord Word, Verdict Wear, Verdict New)
{
    /// <summary>Judges a value against both.</summary>
    /// <param name="value">The value.</param>
    /// <param name="standardUncertainty">Its standard uncertainty.</param>
    /// <param name="newLimits">Limits of a new or rebuilt part.</param>
    /// <param name="wearLimits">Limits of service.</param>
    /// <param name="rule">The decision rule, or null for the guard of U.</param>
    /// <returns>The condition.</returns>
    public static Condition Judge(double value, double standardUncertainty, Limits newLimits, Limits wearLimits, DecisionRule? rule = null)
    {
        var asNew = Verdict.Judge(value, standardUncertainty, newLimits, rule);
        var wear = Verdict.Judge(value, standardUncertainty, wearLimits, rule);
        var word = wear.Word switch
        {
            VerdictWord.Outside => ConditionWord.Out,
            VerdictWord.TooCloseToCall => ConditionWord.TooCloseToCall,
            _ => asNew.Word == VerdictWord.Within ? ConditionWord.AsNew : ConditionWord.Serviceable,
        };
        return new(word, wear, asNew);
    }
}

/// <summary>What a rule of thumb may say. It never says within or outside.</summary>
public enum ThumbWord
{
    /// <summary>Inside the usual range.</summary>
    Likely,

    /// <summary>Between the usual range and where parts are usually rejected: look it up.</summary>
    LookItUp,

    /// <summary>Where parts are usually rejected.</summary>
    Unlikely,
}

/// <summary>A rule of thumb: common practice, no source. It drops out once the owner has a limit.</summary>
/// <param name="Usual">The usual range of a new or rebuilt part.</param>
/// <param name="Reject">Beyond these a part is usually rejected; null where practice names none.</param>
public sealed record RuleOfThumb(Limits Usual, Limits? Reject)
{
    /// <summary>What practice would say of a value.</summary>
    /// <param name="value">The value.</param>
    /// <returns>A word that is no verdict.</returns>
    public ThumbWord Of(double value) =>
        Usual.Margin(value) >= 0 ? ThumbWord.Likely
        : Reject is not null && Reject.Margin(value) < 0 ? ThumbWord.Unlikely
        : ThumbWord.LookItUp;
}
