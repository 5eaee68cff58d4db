namespace Gudgeon.Sums;

/// <summary>Why something could not be taken, in the four parts that every message here has.</summary>
/// <param name="Where">The place: which field, which figure.</param>
/// <param name="Met">What was met there.</param>
/// <param name="Expected">What would have been taken.</param>
/// <param name="Remedy">What to do now.</param>
public sealed record Refusal(string Where, string Met, string Expected, string Remedy)
{
    /// <summary>The message as one line.</summary>
    /// <returns>All four parts.</returns>
    public override string ToString() => $"{Where}: met {Met}; expected {Expected}. {Remedy}.";
}
