namespace Gudgeon.Sums;

/// <summary>Why something could not be taken, in the four parts that every message here has.</summary>
/// <param name="Where">The place: which field, which figure.</param>
/// <param name="Met">What was met there.</param>
/// <param name="Expected">What would have been taken.</param>
/// <param name="Remedy">What to do now.</param>
public sealed record Refusal(string Where, string Met, string Expected, string Remedy)
{
    /// <summary>The ways it could be meant, where one of them settles it; empty otherwise.</summary>
    public IReadOnlyList<Possibility> Choices { get; init; } = [];

    /// <summary>The message as one line.</summary>
    /// <returns>All four parts.</returns>
    public override string ToString() => $"{Where}: met {Met}; expected {Expected}. {Remedy}.";
}

/// <summary>One way that something could be meant.</summary>
/// <param name="Words">What it is called: naming it settles the question.</param>
/// <param name="Means">What would be recorded, with its unit.</param>
public sealed record Possibility(string Words, string Means);
