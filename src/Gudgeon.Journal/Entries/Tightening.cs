using System.Text.Json.Serialization;
using Gudgeon.Sums;
using Gudgeon.Sums.Fasteners;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(ProcedureSet), "procedure-set")]
[JsonDerivedType(typeof(PatternChosen), "pattern-chosen")]
[JsonDerivedType(typeof(StageDone), "stage-done")]
[JsonDerivedType(typeof(StageBrokenOff), "stage-broken-off")]
[JsonDerivedType(typeof(HolesBlown), "holes-blown")]
public abstract partial record Entry;

/// <summary>How a joint is tightened, as the owner's manual gives it. The last entry of a joint counts.</summary>
/// <param name="Lubricant">State of the threads that the torque was given for: dry, oiled, paste, as said.</param>
/// <param name="Renew">True when the manual wants new fasteners each time.</param>
/// <param name="Washers">Way round and number, as said.</param>
/// <param name="Order">The number that the manual's picture gives each hole, hole 1 first; empty when it gives none.</param>
/// <param name="Source">Manual and page.</param>
public sealed record ProcedureSet(
    string Joint,
    IReadOnlyList<Stage> Stages,
    string Lubricant,
    bool Renew,
    string Washers = "",
    IReadOnlyList<int>? Order = null,
    string Source = "") : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
            return missing;
        var name = bench.NameOf(Joint);
        var ticks = bench.Joint(Joint).Tightening;
        return Stages.Count == 0 ? new Refusal(name, "no stage", "one stage or more", "Type the stages of your book, one a line")
            : Stages.Any(s => s.HasTorque && s.Value is null or <= 0) ? new Refusal(name, "a torque stage without its torque", "a torque for each", "Type the torque with its unit")
            : string.IsNullOrWhiteSpace(Lubricant) ? new Refusal(name, "no state of the threads", "dry, oiled, or as your book says", "A torque holds only for the state that it was given for: look it up")
            : Order is { Count: > 0 } && !Order.Order().SequenceEqual(Enumerable.Range(1, Order.Count)) ? new Refusal(name, $"the order {string.Join(' ', Order)}", $"each number from 1 to {Order.Count} once", "Type the number at each hole, row by row")
            : Order is { Count: > 0 } && bench.Joint(Joint).Required is { } n && n != Order.Count ? new Refusal(name, $"an order of {Order.Count}", $"{n}, as counted", "Type a number for each hole")
            : ticks.Ticks.Count > 0 && ticks.Procedure is { } old && !old.Stages.SequenceEqual(Stages) ? new Refusal(name, "other stages than those that it is being tightened by", "stages changed before the first of them is done", "Say first that the work was broken off, or strike out what was ticked")
            : null;
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Joint)} is tightened {string.Join(", ", Stages.Select(s => s.Words()))}; threads {Lubricant}"
        + $"{(Renew ? "; new fasteners each time" : "")}{(Washers.Length > 0 ? $"; washers {Washers}" : "")}{(Order is { Count: > 0 } ? "; in the manual's own order" : "")}{(Source.Length > 0 ? $" ({Source})" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeJoint(Joint).Tightening.Procedure = this;
}

/// <summary>How the fasteners of a joint sit, for the order in which they are tightened.</summary>
/// <param name="Count">On a circle or in a line: how many; in a grid columns times rows.</param>
/// <param name="Rows">Rows of a grid; down one short side of a rim, its corners counted; 1 otherwise.</param>
public sealed record PatternChosen(string Joint, PatternSort Sort, int Count, int Rows = 1) : Entry
{
    private const int Most = 200;

    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
            return missing;
        var name = bench.NameOf(Joint);
        return Count is < 1 or > Most || Rows < 1 ? new Refusal(name, $"a pattern of {Count}", $"1 to {Most}", "Count the holes")
            : Sort == PatternSort.Grid && Count % Rows != 0 ? new Refusal(name, $"{Count} in {Rows} rows", "rows of one length", "Put pins on a photo where the rows differ")
            : Sort == PatternSort.Rim && (Count % 2 != 0 || Rows < 2 || Columns < 2) ? new Refusal(name, $"{Count} round a rim with {Rows} down a side", "an even number with two or more to each side", "Count the sides again with their corners; put pins on a photo where the sides differ")
            : bench.Joint(Joint).Required is { } n && n != Count ? new Refusal(name, $"a pattern of {Count}", $"{n}, as counted", "Count the holes, or correct the count of the joint")
            : null;
    }

    public override string Words(Bench bench) => $"{bench.NameOf(Joint)}: its fasteners sit as {Words()}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeJoint(Joint).Tightening.Pattern = this;

    internal string Words() => Sort switch
    {
        PatternSort.Grid => $"a grid of {Count / Rows} by {Rows}",
        PatternSort.Circle => $"a circle of {Count}",
        PatternSort.Rim => $"a rim of {Columns} by {Rows}",
        _ => $"a row of {Count}",
    };

    /// <summary>Along one long side of a rim, its corners counted.</summary>
    private int Columns => (Count / 2) + 2 - Rows;

    private PlanePoint[] Rim() =>
    [
        .. Enumerable.Range(0, Columns).Select(i => new PlanePoint(i, 0)),
        .. Enumerable.Range(1, Rows - 2).Select(i => new PlanePoint(Columns - 1, i)),
        .. Enumerable.Range(0, Columns).Select(i => new PlanePoint(Columns - 1 - i, Rows - 1)),
        .. Enumerable.Range(1, Rows - 2).Select(i => new PlanePoint(0, Rows - 1 - i)),
    ];

    internal IReadOnlyList<PlanePoint> Places() => Sort switch
    {
        PatternSort.Circle => PlanePoint.Circle(Count, 1),
        PatternSort.Line => PlanePoint.Grid(Count, 1, 1, 1),
        PatternSort.Rim => Rim(),
        _ => PlanePoint.Grid(Count / Rows, Rows, 1, 1),
    };
}

/// <summary>A stage was done on some fasteners of a joint, or on all that were left.</summary>
/// <param name="Stage">From 1.</param>
/// <param name="Fasteners">Their holes, from 1; null for all that the stage had left.</param>
/// <param name="Wrench">Id of the wrench, or null.</param>
/// <param name="AsTyped">What the wrench was set to, as typed; empty when it was what the stage says.</param>
/// <param name="Value">The same in N·m or degrees.</param>
public sealed record StageDone(string Joint, int Stage, IReadOnlyList<int>? Fasteners = null, string? Wrench = null, string AsTyped = "", double? Value = null) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
            return missing;
        var name = bench.NameOf(Joint);
        var joint = bench.Joint(Joint);
        var state = joint.Tightening;
        if (state.Procedure is not { } procedure)
            return new Refusal(name, "no stages", "the stages of your book", "Type them first");
        if (joint.Required is not { } count || joint.IsOpen)
            return new Refusal(name, joint.Required is { } needed ? $"{joint.In} of {needed} in" : "fasteners that were never counted", "every fastener started by hand before a tool goes on", "Say first that they are in");
        if (state.IsSpoilt)
            return new Refusal(name, "an angle stage that was broken off", "all of them slackened and out again, one-use ones renewed", "Take them out and start again");
        if (Stage < 1 || Stage > procedure.Stages.Count)
            return new Refusal(name, $"stage {Stage}", $"1 to {procedure.Stages.Count}", "Choose one of its stages");
        if (Stage > 1 && !state.IsDone(Stage - 1, count))
            return new Refusal(name, $"stage {Stage} before stage {Stage - 1} is done all round", "one stage all round before the next", $"Finish stage {Stage - 1} first");
        if (Wrench is not null && !bench.Wrenches.ContainsKey(Wrench))
            return new Refusal(name, $"the wrench \"{Wrench}\"", bench.Wrenches.Count == 0 ? "a wrench of your list; it is empty" : string.Join(", ", bench.Wrenches.Keys), "Put it into the list of wrenches first");
        if (state.IsDone(Stage, count))
            return new Refusal(name, $"stage {Stage}, done already", "a stage that is still to do", "Nothing to do here");
        var strange = (Fasteners ?? []).FirstOrDefault(f => f < 1 || f > count || state.IsTicked(Stage, f));
        return Fasteners is { Count: 0 } || Fasteners is not null && !procedure.Stages[Stage - 1].IsEach ? new Refusal(name, $"stage {Stage} on single fasteners", "a stage that is done once for the joint", "Tick it as a whole")
            : strange != 0 ? new Refusal(name, $"fastener {strange}", state.IsTicked(Stage, strange) ? "one that is not yet done at this stage" : $"1 to {count}", "Look at the picture again")
            : Fasteners is not null && Fasteners.Distinct().Count() < Fasteners.Count ? new Refusal(name, "a fastener named twice", "each once", "Look at the picture again")
            : null;
    }

    public override string Words(Bench bench)
    {
        var procedure = bench.Joint(Joint).Tightening.Procedure;
        var stage = procedure is not null && Stage <= procedure.Stages.Count ? $", {procedure.Stages[Stage - 1].Words()}" : "";
        var which = Fasteners is null ? "all round" : $"{(Fasteners.Count == 1 ? "number" : "numbers")} {string.Join(", ", Fasteners.Select(f => TighteningPlan.Of(bench, Joint)?.PlaceInOrder(f) ?? f))} of the order";
        return $"{bench.NameOf(Joint)}: stage {Stage}{stage}: {which}{(AsTyped.Length > 0 ? $", set to {AsTyped}" : "")}{(Wrench is null ? "" : $", {bench.WrenchName(Wrench)}")}";
    }

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var joint = bench.ChangeJoint(Joint);
        var each = joint.Tightening.Procedure!.Stages[Stage - 1].IsEach;
        var done = !each ? [0] : Fasteners ?? [.. Enumerable.Range(1, joint.Required!.Value).Where(f => !joint.Tightening.IsTicked(Stage, f))];
        foreach (var fastener in done)
            joint.Tightening.Add(new Tick(Stage, fastener, Wrench, Value, recorded.Number, recorded.At, joint.Tightening.Extension));
    }
}

/// <summary>The work was broken off inside a stage: a torque stage is done again for all, after an angle stage all are slackened.</summary>
public sealed record StageBrokenOff(string Joint, int Stage, string Why) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
            return missing;
        var joint = bench.Joint(Joint);
        return joint.Tightening.Ticks.Any(t => t.Stage == Stage) && !joint.Tightening.IsDone(Stage, joint.Required ?? 0)
            ? null
            : new Refusal(bench.NameOf(Joint), $"stage {Stage}, which is not half done", "a stage that was begun and not finished", "Between two stages one simply goes on");
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Joint)}: broken off inside stage {Stage}{(Why.Length > 0 ? $", {Why}" : "")}; {(IsAngle(bench) ? "all are slackened and it starts again, one-use ones renewed" : "the stage is done again for all")}";

    private bool IsAngle(Bench bench) => bench.Joint(Joint).Tightening.Procedure is { } procedure && Stage <= procedure.Stages.Count && procedure.Stages[Stage - 1].Sort == StageSort.Angle;

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeJoint(Joint).Tightening;
        if (IsAngle(bench))
            state.Spoil();
        else
            state.Redo(Stage);
    }
}

/// <summary>The threads of a joint were run free, and its blind holes blown out and dry.</summary>
public sealed record HolesBlown(string Joint) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench) => bench.NoSuchJoint(Joint);

    public override string Words(Bench bench) => $"{bench.NameOf(Joint)}: threads run free, blind holes blown out and dry";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeJoint(Joint).Tightening.HolesBlown = true;
}
