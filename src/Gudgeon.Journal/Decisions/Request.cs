using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>
/// What somebody wants recorded. A web form, a command, an import and a line that was understood all come through here:
/// a request is decided against the bench and becomes entries, or a fault.
/// </summary>
public abstract record Request
{
    /// <summary>The entries that this comes to, in order. Each is checked again as it is taken in.</summary>
    public abstract Outcome<IReadOnlyList<Entry>> Decide(Bench bench);
}

/// <summary>Plain facts, as they are.</summary>
public sealed record Tell(params IReadOnlyList<Entry> Entries) : Request
{
    public override Outcome<IReadOnlyList<Entry>> Decide(Bench bench) => Outcome.Of(Entries);
}

/// <summary>An earlier entry does not count after all.</summary>
public sealed record StrikeOut(long Number, string Why = "") : Request
{
    public override Outcome<IReadOnlyList<Entry>> Decide(Bench bench) => Outcome.Of<IReadOnlyList<Entry>>([new Struck(Number, Why)]);
}
