using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(FastenersOut), "fasteners-out")]
[JsonDerivedType(typeof(FastenersIn), "fasteners-in")]
[JsonDerivedType(typeof(FastenersPut), "fasteners-put")]
[JsonDerivedType(typeof(FastenersFound), "fasteners-found")]
[JsonDerivedType(typeof(FastenersCounted), "fasteners-counted")]
public abstract partial record Entry;

/// <summary>What became of fasteners that came out.</summary>
public enum Fate
{
    Kept,
    Lost,
    Broken,
}

/// <summary>Like fasteners that came out together.</summary>
/// <param name="Size">As said: <c>M6x22</c>. Empty when nobody said.</param>
/// <param name="To">Where they went; <c>own holes</c> for left in their holes; null when nobody said.</param>
public sealed record OutLot(int Count, string Size = "", string Fastener = "", string? To = null, Fate Fate = Fate.Kept)
{
    internal Whereabouts Where => Fate switch
    {
        Fate.Lost => Whereabouts.Lost,
        Fate.Broken => Whereabouts.Broken,
        _ => Whereabouts.Place(To),
    };

    internal string Words(Func<string, string> nameOf)
    {
        var what = string.Join(' ', new[] { $"{Count}", Size, Fastener.Length == 0 || Count == 1 ? Fastener : $"{Fastener}s" }.Where(w => w.Length > 0));
        return Fate switch
        {
            Fate.Broken => $"{what} broken",
            Fate.Lost => $"{what} lost",
            _ => Where switch
            {
                { Spot: Spot.Unplaced } => $"{what} out",
                { Spot: Spot.OwnHoles } when Count == 1 => $"{what} out, in its own hole",
                var where => $"{what} out, {where.Words(nameOf)}",
            },
        };
    }
}

/// <summary>Fasteners of one joint came out.</summary>
/// <param name="All">True when nothing is left in: what was counted before and is not in the lots is then missing.</param>
public sealed record FastenersOut(string Joint, IReadOnlyList<OutLot> Lots, bool All = true) : Entry
{
    private static bool IsThere(Lot lot) => lot.Where.Spot is Spot.Engine or Spot.Unplaced;

    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
        {
            return missing;
        }

        var state = bench.Joint(Joint);
        if (Lots.Count == 0 || Lots.Any(l => l.Count <= 0))
        {
            return new Refusal(bench.NameOf(Joint), "a count of nothing", "1 or more fasteners", "Say how many came out");
        }

        return state.Required is not null && state.Phase == JointPhase.Undone && !state.Lots.Any(IsThere)
            ? new Refusal(bench.NameOf(Joint), $"all {state.Required} are out already", "fasteners that are still in", "Correct the count, or strike out the entry that took them out")
            : null;
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Joint)}: {string.Join("; ", Lots.Select(l => l.Words(bench.NameOf)))}{(All ? "" : "; not all yet")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeCounted(Joint);
        var known = state.Required is not null;

        // Those that came out untold of are among the ones told of now; they wait with the rest while these are shared out.
        var untold = state.Lots.Where(l => l.Where.Spot == Spot.Unplaced).Sum(l => l.Count);
        state.Move(l => l.Where.Spot == Spot.Unplaced, untold, Whereabouts.Engine);
        state.Open(new Lot(Whereabouts.Engine, Math.Max(0, Lots.Sum(l => l.Count) - state.In)));
        foreach (var lot in Lots)
        {
            state.Move(l => l.Where.Spot == Spot.Engine, lot.Count, lot.Where, lot.Size, lot.Fastener);
        }

        if (All)
        {
            state.Move(l => l.Where.Spot == Spot.Engine, state.In, Whereabouts.Unaccounted);
            state.Phase = JointPhase.Undone;
            state.Standing = Standing.Counted;
        }
        else
        {
            state.Move(l => l.Where.Spot == Spot.Engine, Math.Min(state.In, untold), Whereabouts.Unplaced);
            state.Phase = known && state.In == 0 ? JointPhase.Undone : JointPhase.HalfUndone;
        }

        if (known || All)
        {
            state.Required = Math.Max(state.Required ?? 0, state.Opened - state.Fresh);
        }
    }
}

/// <summary>Fasteners of one joint are back in.</summary>
/// <param name="Fresh">How many of them are new.</param>
/// <param name="All">True when the joint has all it needs; settles a count that nobody took at the strip.</param>
/// <param name="How">Torque, angle, wrench, as said.</param>
public sealed record FastenersIn(string Joint, int Count, int Fresh = 0, bool All = false, string How = "") : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
        {
            return missing;
        }

        var state = bench.Joint(Joint);
        var name = bench.NameOf(Joint);
        var part = bench.Part(bench.Engine.Joints[Joint].Part);
        if (Count <= 0 || Fresh < 0 || Fresh > Count)
        {
            return new Refusal(name, $"{Count} in, {Fresh} of them new", "1 or more, and no more new ones than there are", "Say how many went in");
        }

        if (!state.IsOpen)
        {
            return new Refusal(name, "it is not open", "a joint with fasteners out", "Nothing to do here, or strike out the entry that closed it");
        }

        if (!part.IsOn && !part.IsRiding)
        {
            return new Refusal(name, $"the {bench.NameOf(bench.Engine.Joints[Joint].Part)} is still off", "the part back on before its fasteners", "Record the part as back on first");
        }

        if (state.Studs.Out > 0 && (state.Required is { } all ? state.In + Count > all - state.Studs.Out : All))
        {
            return new Refusal(name, $"{state.In + Count} in with {StudCount.Many(state.Studs.Out)} out", "each stud in before its nut", "Screw the studs in again and say so");
        }

        if (state.Required is not { } required)
        {
            var there = Math.Max(state.Opened, state.Opened + Count - Fresh - Reachable(state)) - state.Fresh;
            return All && state.In + Count < there
                ? new Refusal(name, $"{state.In + Count} in as all of them", $"{there}, for so many were told of", "Say how many are new, or that some are still to come")
                : null;
        }

        return state.In + Count > required
            ? new Refusal(name, $"{state.In + Count} in", $"{required}, as counted", "Count again; correct the count if the engine has more")
            : Count - Fresh > state.AtHand
            ? new Refusal(name, $"{Count - Fresh} old ones in", $"no more than the {state.AtHand} that are at hand", "Say how many are new, or record the lost ones as found")
            : null;
    }

    private static bool IsGone(Lot lot) => lot.Where.Spot is Spot.Lost or Spot.Unaccounted;

    private static int Gone(JointState state) => state.Lots.Where(IsGone).Sum(l => l.Count);

    private static int Reachable(JointState state) => state.AtHand + Gone(state);

    public override string Words(Bench bench)
    {
        var fresh = Fresh == 0 ? "" : Fresh == Count ? " new" : $" ({Fresh} new)";
        return $"{bench.NameOf(Joint)}: {Count}{fresh} in{(How.Length > 0 ? $", {How}" : "")}";
    }

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeCounted(Joint);
        var old = Count - Fresh;
        if (state.Required is null && old > state.AtHand)
        {
            // They are here after all; what nobody told of before is counted in now.
            state.Open(new Lot(Whereabouts.Unplaced, Math.Max(0, old - Reachable(state))));
            state.Move(IsGone, Math.Min(old - state.AtHand, Gone(state)), Whereabouts.Unplaced);
        }

        var fromHoles = Math.Min(old, state.Lots.Where(l => l.Where.Spot == Spot.OwnHoles).Sum(l => l.Count));
        state.Move(l => l.Where.Spot == Spot.OwnHoles, fromHoles, Whereabouts.Engine);
        state.Move(l => l.Where.IsAtHand, old - fromHoles, Whereabouts.Engine);
        state.Open(new Lot(Whereabouts.Engine, Fresh));
        state.Fresh += Fresh;
        state.FreshIn += Fresh;
        if (How.Length > 0)
            state.How = How;
        state.Tightening.UsedAgain += old;
        if (Fresh > 0 && bench.Bought.TryGetValue(Joint, out var bought))
            bought.AtHand = Math.Max(0, bought.AtHand - Fresh);
        if (All && state.Required is null)
        {
            // Nobody told of the old ones that the new ones replace: so many must there have been.
            state.Open(new Lot(Whereabouts.Unplaced, Math.Max(0, state.In - (state.Opened - state.Fresh))));
            state.Required = state.Opened - state.Fresh;
            state.Standing = Standing.Counted;
        }

        state.Settle();
    }
}

/// <summary>Fasteners that are out were put somewhere.</summary>
/// <param name="Count">How many; null for all that are out.</param>
public sealed record FastenersPut(string Joint, string To, int? Count = null) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
        {
            return missing;
        }

        var state = bench.Joint(Joint);
        return state.AtHand == 0 || Count > state.AtHand || Count <= 0
            ? new Refusal(bench.NameOf(Joint), $"{Count ?? 0} put in {Whereabouts.PlaceName(To)}", $"1 to {state.AtHand}, which is what is out", "Record them as out first, or correct the count")
            : null;
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Joint)}: {(Count is { } n ? $"{n} of the fasteners" : "fasteners")} put {Whereabouts.Place(To).Words(bench.NameOf)}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeCounted(Joint);
        var left = Count ?? state.AtHand;
        // Those without a place are meant first.
        var unplaced = Math.Min(left, state.Lots.Where(l => l.Where.Spot == Spot.Unplaced).Sum(l => l.Count));
        state.Move(l => l.Where.Spot == Spot.Unplaced, unplaced, Whereabouts.Place(To));
        state.Move(l => l.Where.IsAtHand && l.Where != Whereabouts.Place(To), Math.Min(left - unplaced, state.Lots.Where(l => l.Where.IsAtHand && l.Where != Whereabouts.Place(To)).Sum(l => l.Count)), Whereabouts.Place(To));
    }
}

/// <summary>Fasteners that were missing turned up.</summary>
public sealed record FastenersFound(string Joint, int Count, string? To = null) : Entry
{
    private static bool IsGone(Lot lot) => lot.Where.Spot is Spot.Lost or Spot.Unaccounted;

    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
        {
            return missing;
        }

        var gone = bench.Joint(Joint).Lots.Where(IsGone).Sum(l => l.Count);
        return Count <= 0 || Count > gone
            ? new Refusal(bench.NameOf(Joint), $"{Count} found", gone == 0 ? "a joint with fasteners missing" : $"1 to {gone}, which is what is missing", "Look which joint is short, or correct its count")
            : null;
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Joint)}: {Count} found{(Whereabouts.Place(To) is { Spot: Spot.Place or Spot.OwnHoles } place ? $", {place.Words(bench.NameOf)}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeJoint(Joint).Move(IsGone, Count, Whereabouts.Place(To));
}

/// <summary>The fasteners of a joint were counted, or a count was put right.</summary>
public sealed record FastenersCounted(string Joint, int Count, string Size = "", string Fastener = "") : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
        {
            return missing;
        }

        var state = bench.Joint(Joint);
        var gone = state.Lots.Where(l => l.Where.Spot is Spot.Lost or Spot.Broken or Spot.Scrap).Sum(l => l.Count) - state.Fresh;
        var least = Math.Max(1, Math.Max(gone, InAfter(state) > Count ? InAfter(state) : 0));
        return Count < least
            ? new Refusal(bench.NameOf(Joint), $"a count of {Count}", $"at least {least}", "Count again")
            : null;
    }

    /// <summary>How many would be in after this count: new ones that went in beside all the old ones cannot be counted away.</summary>
    private int InAfter(JointState state)
    {
        var fewer = Math.Max(0, state.Opened - state.Fresh - Count);
        var uncertain = state.Lots.Where(l => l.Where.Spot is Spot.Unaccounted or Spot.Unplaced).Sum(l => l.Count);
        return state.In - Math.Max(0, fewer - uncertain);
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Joint)}: {Count}{(Size.Length > 0 ? $" {Size}" : "")}{(Fastener.Length > 0 ? $" {Fastener}" : "")} counted";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeCounted(Joint);
        var more = Count - (state.Opened - state.Fresh);
        if (more > 0)
        {
            // Holes that new ones fill already have no room for those that nobody told of before: these must have come out.
            var room = state.Phase is JointPhase.Undone ? 0 : Math.Clamp(Count - state.In, 0, more);
            state.Open(new Lot(Whereabouts.Engine, room, Size, Fastener));
            state.Open(new Lot(Whereabouts.Unplaced, more - room, Size, Fastener));
        }
        else if (more < 0)
        {
            state.Close(-more);
        }

        if (Size.Length > 0)
        {
            state.Resize(Size);
        }

        state.Required = Count;
        state.Standing = Standing.Counted;
        if (state.Phase is JointPhase.HalfDone or JointPhase.Done)
        {
            state.Settle();
        }
    }
}
