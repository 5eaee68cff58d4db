using Gudgeon.Sums;
using Gudgeon.Sums.Lifting;

namespace Gudgeon.Journal;

/// <summary>How one check of a lift stands.</summary>
public enum LiftStanding
{
    Passes,
    Fails,

    /// <summary>What it needs was never told.</summary>
    NotTold,

    /// <summary>It waits for an earlier check.</summary>
    Waits,
}

/// <summary>A figure of a lift, with the way it was reached.</summary>
public sealed record LiftFigure(string What, string Value, Working Working);

/// <summary>One check. One that fails has refusals and no figures: no figure of a lift that cannot be is shown as if it could.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Caution">What stands above its figures.</param>
public sealed record LiftCheck(string Id, string Title, LiftStanding Standing, string Caution, IReadOnlyList<LiftFigure> Figures, IReadOnlyList<Refusal> Refusals, IReadOnlyList<Refusal> Warnings)
{
    internal static LiftCheck Good(string id, string title, string caution, IReadOnlyList<LiftFigure> figures, IReadOnlyList<Refusal>? warnings = null) =>
        new(id, title, LiftStanding.Passes, caution, figures, [], warnings ?? []);

    internal static LiftCheck Bad(string id, string title, string caution, IReadOnlyList<Refusal> refusals) => new(id, title, LiftStanding.Fails, caution, [], refusals, []);

    internal static LiftCheck Untold(string id, string title, string caution, string where, string expected, string remedy) =>
        Untold(id, title, caution, [new Refusal(where, "nothing told", expected, remedy)]);

    internal static LiftCheck Untold(string id, string title, string caution, IReadOnlyList<Refusal> what) => new(id, title, LiftStanding.NotTold, caution, [], what, []);

    internal static LiftCheck Waiting(string id, string title, string caution, string forWhat) =>
        new(id, title, LiftStanding.Waits, caution, [], [new Refusal(title, $"no figure: it waits for {forWhat}", "the checks before it passed", "Put those right first")], []);
}

/// <summary>A lift as it is told so far, judged. A pure view of the bench; nothing of it is recorded and nothing overrides it.</summary>
/// <param name="Load">What hangs; null while nobody knows.</param>
/// <param name="LoadNotes">Where its mass comes from, guesses said to be guesses.</param>
/// <param name="Checks">In the order in which each feeds the next; the stand's are kept apart.</param>
/// <param name="Hung">How it hangs; null where it does not.</param>
/// <param name="Stroke">The crane along its stroke; empty where it cannot be drawn.</param>
/// <param name="Sweep">The crane's way; null where none is told or it cannot be looked at.</param>
/// <param name="Moves">What to do when something that moves stands in the way.</param>
/// <param name="Stand">The engine on its stand.</param>
/// <param name="BeforeTurning">What has to be off or done before the engine is turned on its stand.</param>
/// <param name="OpenLooks">What was not yet looked at.</param>
public sealed record LiftView(
    HangingLoad? Load, IReadOnlyList<string> LoadNotes, IReadOnlyList<LiftCheck> Checks, HungLoad? Hung, IReadOnlyList<CranePose> Stroke, HeadroomAnswer? Headroom, SweptWay? Sweep,
    IReadOnlyList<string> Moves, LiftCheck Stand, IReadOnlyList<string> BeforeTurning, IReadOnlyList<string> OpenLooks)
{
    /// <summary>True when every check passes; a way across the floor counts only where one is told.</summary>
    public bool Passes => Checks.All(check => check.Standing == LiftStanding.Passes || (check.Id == LiftAssessor.FloorId && check.Standing == LiftStanding.NotTold));

    /// <summary>What of the load is a guess; every check counts with the worst of it.</summary>
    public IReadOnlyList<Refusal> Doubts => Checks[0].Warnings;

    public bool Fails => Checks.Any(check => check.Standing == LiftStanding.Fails);
}
