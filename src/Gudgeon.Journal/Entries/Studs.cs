using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(StudsCounted), "studs-counted")]
[JsonDerivedType(typeof(StudsOut), "studs-out")]
[JsonDerivedType(typeof(StudsBack), "studs-back")]
public abstract partial record Entry;

/// <summary>The studs of a joint were counted: they stay in the case, head or block when their nuts come off.</summary>
/// <param name="Count">How many there are, those that came out among them.</param>
public sealed record StudsCounted(string Joint, int Count) : Entry
{
    private const int Most = 999;

    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
            return missing;
        var state = bench.Joint(Joint);
        var (least, most) = (Math.Max(1, state.Studs.Out), state.Required ?? Most);
        return Count < least || Count > most
            ? new Refusal(bench.NameOf(Joint), $"{Count} studs", $"{least} to {most}, a fastener for each", "Count the studs again; correct the count of the joint if it has more")
            : null;
    }

    public override string Words(Bench bench) => $"{bench.NameOf(Joint)}: {StudCount.Many(Count)} counted{Into(bench)}";

    private string Into(Bench bench) => bench.Engine.Joints.TryGetValue(Joint, out var joint) && joint.FixedTo.Count > 0
        ? $", in the {string.Join(" and ", joint.FixedTo.Select(bench.NameOf))}"
        : "";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeJoint(Joint);
        state.Studs = state.Studs with { Counted = Count };
    }
}

/// <summary>Studs came out with their nuts. They go back before a nut does.</summary>
/// <param name="Broken">How many of them broke.</param>
public sealed record StudsOut(string Joint, int Count, int Broken = 0) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
            return missing;
        var (state, name) = (bench.Joint(Joint), bench.NameOf(Joint));
        if (Count < 1 || Broken < 0 || Broken > Count)
            return new Refusal(name, $"{Count} studs out, {Broken} of them broken", "1 or more, and no more broken than came out", "Say how many came out");
        if (!state.IsOpen)
            return new Refusal(name, "it is not open", "a joint with its nuts off", "Say first that its fasteners are out");
        // Where a nut is on, its stud is in.
        var most = Math.Min(state.Studs.Counted ?? int.MaxValue, state.Required is { } n ? n - state.In : int.MaxValue);
        return state.Studs.Out + Count > most
            ? new Refusal(name, $"{StudCount.Many(state.Studs.Out + Count)} out", $"{most} at most, as counted", "Count the studs again, or correct the count")
            : null;
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Joint)}: {StudCount.Many(Count)} came out with {(Count == 1 ? "its nut" : "their nuts")}{(Broken == 0 ? "" : Broken == Count ? ", broken" : $", {Broken} of them broken")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeJoint(Joint);
        state.Studs = state.Studs with { Out = state.Studs.Out + Count, Broken = state.Studs.Broken + Broken };
    }
}

/// <summary>Studs that were out are screwed in again.</summary>
/// <param name="Fresh">How many of them are new.</param>
public sealed record StudsBack(string Joint, int Count, int Fresh = 0) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
            return missing;
        var (studs, name) = (bench.Joint(Joint).Studs, bench.NameOf(Joint));
        return Count < 1 || Fresh < 0 || Fresh > Count ? new Refusal(name, $"{StudCount.Many(Count)} back, {Fresh} of them new", "1 or more, and no more new ones than there are", "Say how many went in")
            : Count > studs.Out ? new Refusal(name, $"{StudCount.Many(Count)} back", studs.Out == 0 ? "a joint with studs out" : $"1 to {studs.Out}, which is what is out", "Say first how many came out")
            : Count - Fresh > studs.Out - studs.Broken ? new Refusal(name, $"{Count - Fresh} old ones back", $"{studs.Out - studs.Broken} at most, for {studs.Broken} broke", "Say how many are new")
            : null;
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Joint)}: {StudCount.Many(Count)} screwed in again{(Fresh == 0 ? "" : Fresh == Count ? ", new" : $", {Fresh} of them new")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeJoint(Joint);
        state.Studs = state.Studs with { Out = state.Studs.Out - Count, Broken = Math.Max(0, state.Studs.Broken - Fresh) };
        if (Fresh > 0 && bench.Bought.TryGetValue(BuyList.StudsOf(Joint), out var bought))
            bought.AtHand = Math.Max(0, bought.AtHand - Fresh);
    }
}
