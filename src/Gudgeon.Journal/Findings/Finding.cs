namespace Gudgeon.Journal;

/// <summary>
/// Something that the book holds against the work. Its name is stable: the same on a page, in a command, in a test and in the docs.
/// </summary>
/// <param name="Name">One of <see cref="FindingNames"/>.</param>
/// <param name="About">Id of the thing, or empty.</param>
/// <param name="Where">The thing, as a person names it.</param>
/// <param name="Met">What stands there.</param>
/// <param name="Do">What to do about it.</param>
public sealed record Finding(string Name, string About, string Where, string Met, string Do)
{
    public override string ToString() => $"{Name}: {Where}: {Met}. {Do}.";
}

/// <summary>The names of findings, each with what it means. Docs and the command <c>check</c> list these.</summary>
public static class FindingNames
{
    public const string CountShort = "count-short";
    public const string NotCounted = "not-counted";
    public const string FastenersUnplaced = "fasteners-unplaced";
    public const string PartUnplaced = "part-unplaced";
    public const string HalfUndone = "half-undone";
    public const string LineUntagged = "line-untagged";
    public const string QuestionOpen = "question-open";
    public const string OutOfOrder = "out-of-order";
    public const string EntryUnreadable = "entry-unreadable";
    public const string PartOff = "part-off";
    public const string PartAway = "part-away";
    public const string PartScrapped = "part-scrapped";
    public const string JointOpen = "joint-open";
    public const string LineParted = "line-parted";
    public const string CapIn = "cap-in";
    public const string BagFull = "bag-full";
    public const string LookOpen = "look-open";
    public const string GateOverridden = "gate-overridden";
    public const string GateSkipped = "gate-skipped";
    public const string OperationOpen = "operation-open";
    public const string PartUsedAgain = "part-used-again";
    public const string FluidShort = "fluid-short";
    public const string BoltStretched = "bolt-stretched";
    public const string NotWashed = "not-washed";
    public const string StudOut = "stud-out";
    public const string HolesNotBlown = "holes-not-blown";
    public const string JointNotFinal = "joint-not-final";
    public const string OneUseAgain = "one-use-again";
    public const string StageInterrupted = "stage-interrupted";
    public const string StageDiffers = "stage-differs";
    public const string WrenchRange = "wrench-range";
    public const string PortWrong = "port-wrong";
    public const string StillIn = "still-in";
    public const string SmallShort = "small-short";
    public const string WayRoundOpen = "way-round-open";
    public const string ReadingOutside = "reading-outside";
    public const string ReadingTooClose = "reading-too-close";
    public const string ReadingMissing = "reading-missing";
    public const string ReadingDoubted = "reading-doubted";
    public const string LimitMissing = "limit-missing";
    public const string InstrumentMissing = "instrument-missing";
    public const string ZeroMoved = "zero-moved";

    public static IReadOnlyDictionary<string, string> Meanings { get; } = new SortedDictionary<string, string>(StringComparer.Ordinal)
    {
        [CountShort] = "a joint has fewer fasteners than it needs: lost, broken or never accounted for",
        [NotCounted] = "a joint was undone and nobody said how many fasteners came out",
        [FastenersUnplaced] = "fasteners are out and nobody said where they went",
        [PartUnplaced] = "a part is off and nobody said where it went",
        [HalfUndone] = "some fasteners of a joint are out and some are in",
        [LineUntagged] = "a line was parted without a tag",
        [QuestionOpen] = "something was said that the book could not settle",
        [OutOfOrder] = "a part went on before another that must be on first",
        [EntryUnreadable] = "an entry of the journal cannot be read by this program, or cannot stand",
        [PartOff] = "a part is off",
        [PartAway] = "a part is away at a shop",
        [PartScrapped] = "a part was scrapped and no new one is on",
        [JointOpen] = "a joint is not done: its count is not back",
        [LineParted] = "a line is not joined",
        [CapIn] = "a cap or plug is still in a port",
        [BagFull] = "fasteners from inside are still out when it is to be closed",
        [LookOpen] = "a gate asks for a look that nobody has said yes to",
        [GateOverridden] = "a gate was closed over its findings",
        [GateSkipped] = "what closes a gate is back and the gate was neither passed nor overridden",
        [OperationOpen] = "something was done to the whole engine and is not taken back: oil drained, engine out",
        [PartUsedAgain] = "a part that is renewed at every strip was off and is back without a new one",
        [FluidShort] = "less of a fluid was filled than was drained",
        [BoltStretched] = "fasteners measured too long or necked are in again",
        [NotWashed] = "a part came back from a shop and is on the engine without having been washed",
        [StudOut] = "a stud that came out with its nut is not back",
        [HolesNotBlown] = "a joint is tightened by its book's stages and nobody said that its threads were run free and its blind holes blown out",
        [JointNotFinal] = "the fasteners of a joint are in and not every stage of its book is done",
        [OneUseAgain] = "fasteners that are used once went in again",
        [StageInterrupted] = "a long pause lies inside a stage: it is done again for all, and after an angle stage all are slackened",
        [StageDiffers] = "a wrench was set to another figure than the stage says",
        [WrenchRange] = "a wrench was set below a fifth of its range or beyond its scale",
        [PortWrong] = "a line is joined to another port than its own, or the tags differ",
        [StillIn] = "a cap, plug, rag or tape that was put in is still in",
        [SmallShort] = "a joint is closed with fewer dowels, restrictors, jets or O-rings than were found there",
        [WayRoundOpen] = "a part with a place or way round of its own is back and nobody has looked",
        [ReadingOutside] = "a figure is proven outside the limit that was typed",
        [ReadingTooClose] = "a figure is so near to its limit that the instrument cannot tell",
        [ReadingMissing] = "a gate asks for a reading that was never taken, and nobody said why it does not apply",
        [ReadingDoubted] = "a reading looks like a slip and nobody has said that it stands",
        [LimitMissing] = "something was read and no limit is typed for it",
        [InstrumentMissing] = "something was read and nobody said with which instrument",
        [ZeroMoved] = "a gauge was off its zero after the work by more than two of its steps",
    };
}
