using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal.Tests;

/// <summary>
/// Somebody who strips an engine in a random way and puts it back with care: fasteners get lost, break and turn up, parts go to a shop
/// or to the scrap, rags and caps go in. Plays against a bench in memory, so that hundreds of engines can be played.
/// </summary>
internal sealed class RefitModel(int seed)
{
    private static readonly DateTimeOffset began = new(2026, 3, 1, 9, 0, 0, TimeSpan.Zero);
    private readonly Random chance = new(seed);

    public Bench Bench { get; } = new();

    public List<Recorded> Journal { get; } = [];

    /// <summary>Entries without which something is not back.</summary>
    public static bool IsBack(Entry entry) => entry is PartOn or PartReturned or FastenersIn or LineJoined or PortOpened or TakenOut or SmallFitted or StudsBack or HolesBlown or WayRoundSeen or GateLooked
        or OperationUndone or PartWashed or StageDone or GatePassed or GateOverridden or FluidMoved { Way: FluidWay.Filled };

    /// <summary>What the book holds against the work, and what is not back.</summary>
    public static HashSet<string> Findings(Bench bench) =>
        [.. AllBack.MissingFrom(bench).Concat(BenchFindings.Of(bench)).Select(f => f.ToString())];

    public void Strip(IReadOnlyDictionary<string, string> answers)
    {
        Tell(new BookStarted("Invented engine", answers));
        var most = chance.Next(5, 400);
        for (var off = 0; off < most; off++)
        {
            var can = Bench.CanComeOff().Where(p => Bench.Part(p.Id).IsOn).ToArray();
            if (can.Length > 0)
                TakeOff(can[chance.Next(can.Length)]);
            else if (!OpenWay())
                break;
        }
    }

    public void Refit()
    {
        TurnUp();
        while (Next() is { } part)
            PutBack(part);
        foreach (var joint in Bench.Engine.Joints.Values.Where(j => Bench.Joint(j.Id).IsOpen).ToArray())
            Fasten(joint);
        foreach (var line in Bench.Engine.Lines.Keys.Where(l => Bench.Line(l).IsParted).ToArray())
            Join(line);
        foreach (var item in Bench.Register.Values.Where(i => i.Left > 0).ToArray())
            Tell(new TakenOut(item.Number));
        foreach (var part in SmallThings.ToLookAt(Bench).ToArray())
            Tell(new WayRoundSeen(part.Id));
        foreach (var fluid in FluidAccount.Of(Bench))
            Tell(new FluidMoved(fluid.Fluid, FluidWay.Filled, fluid.DrainedCm3, "as drained"));
        foreach (var operation in Bench.Engine.Operations.Values.Where(o => o.IsTakenBack && Bench.IsDone(o.Id)).ToArray())
            Good(new UndoOperation(operation.Id, Override: "an invented reason"));
    }

    private bool Likely(double share) => chance.NextDouble() < share;

    private void TakeOff(Part part)
    {
        var joint = Bench.Engine.JointsOf(part.Id).Select(id => Bench.Engine.Joints[id]).FirstOrDefault(j => j.IsCounted);
        var place = Likely(0.9) ? $"bag {chance.Next(1, 30)}" : null;
        List<OutLot> lots = [];
        if (joint is not null && Likely(0.85))
        {
            var count = chance.Next(joint.Guess.Fewest, Math.Max(joint.Guess.Fewest, joint.Guess.Most) + 1);
            lots.Add(new OutLot(Math.Max(1, count), "M8", "bolt", place));
            if (Likely(0.1))
                lots.Add(new OutLot(1, "M8", "bolt", null, Likely(0.5) ? Fate.Lost : Fate.Broken));
            if (Likely(0.1) && Bench.Joint(joint.Id).Required is null)
                Tell(new FastenersOut(joint.Id, [new OutLot(1, "M8", "bolt", "own holes")], false));
            if (Likely(0.08))
                Tell(new SmallFound(joint.Id, Likely(0.5) ? "dowel" : "O-ring", chance.Next(1, 4)));
        }

        Good(new TakeOff(part.Id, lots, Likely(0.9) ? "shelf" : null));
        if (lots.Count > 0 && Likely(0.1))
            Studs(joint!.Id);
        if (Likely(0.06))
            Tell(new PartSent(part.Id, "the invented shop", "skim"));
        else if (Likely(0.04))
            Tell(new PartScrapped(part.Id, "worn"));
        if (Likely(0.05))
            Tell(new PutIn(Likely(0.5) ? "rag" : "tape", "the hole", chance.Next(1, 3)));
        foreach (var line in Bench.Engine.LinesOf(part.Id).Where(l => Bench.Line(l) is { IsParted: true, Caps.Count: 0 } && Likely(0.2)).ToArray())
            Tell(new PortCapped(line, Likely(0.5) ? Bench.Engine.Lines[line].From.Id : Bench.Engine.Lines[line].To.Id));
    }

    /// <summary>Some of the fasteners were nuts on studs, and some of the studs came out with them.</summary>
    private void Studs(string joint)
    {
        var count = chance.Next(1, Bench.Joint(joint).Required!.Value + 1);
        if (Likely(0.8))
            Tell(new StudsCounted(joint, count));
        var loose = chance.Next(1, count + 1);
        Tell(new StudsOut(joint, loose, Likely(0.3) ? chance.Next(1, loose + 1) : 0));
    }

    /// <summary>Nothing comes off until a line is parted, something is done to the whole engine, or a question is answered yes.</summary>
    private bool OpenWay()
    {
        var needs = Bench.HeldBack().Select(p => p.Id).Concat(Bench.Engine.Operations.Keys)
            .Select(Bench.BlockersOf)
            .SelectMany(b => b.First.Concat(b.Choices.SelectMany(c => c.Sets).SelectMany(s => s)))
            .Where(n => !Bench.IsMet(n))
            .Distinct()
            .Where(n => n.Sort is NeedSort.LineParted or NeedSort.Fact || (n.Sort == NeedSort.Operation && Bench.BlockersOf(n.Id).IsNone))
            .ToArray();
        if (needs.Length == 0)
            return false;
        var need = needs[chance.Next(needs.Length)];
        Tell(need.Sort switch
        {
            NeedSort.LineParted => new LineParted(need.Id, Likely(0.8) ? "7" : "", Likely(0.3) ? [Bench.Engine.Lines[need.Id].From.Id] : null),
            NeedSort.Operation => new OperationDone(need.Id),
            _ => new FactAnswered(need.Id, true),
        });
        if (need.Id is "op:drain-oil" or "op:drain-coolant")
            Tell(new FluidMoved(need.Id == "op:drain-oil" ? "oil" : "coolant", FluidWay.Drained, chance.Next(500, 8000), "measured"));
        return true;
    }

    /// <summary>Some of what was lost is found before the refit begins.</summary>
    private void TurnUp()
    {
        foreach (var joint in Bench.Engine.Joints.Keys.Where(Bench.IsTouched).ToArray())
        {
            var gone = Bench.Joint(joint).Lots.Where(l => l.Where.Spot is Spot.Lost or Spot.Unaccounted).Sum(l => l.Count);
            if (gone > 0 && Likely(0.5))
                Tell(new FastenersFound(joint, gone, "bag 99"));
        }
    }

    /// <summary>A part that can go on; one that closes a gate last, so that the gate can be gone through.</summary>
    private string? Next()
    {
        var ready = Bench.WayBackOn().Where(s => s.IsReady).Select(s => s.Part).ToArray();
        var plain = ready.Where(p => Bench.GateClosedBy(p) is null).ToArray();
        var from = plain.Length > 0 ? plain : ready;
        return from.Length > 0 ? from[chance.Next(from.Length)] : null;
    }

    private void PutBack(string part)
    {
        var state = Bench.Part(part);
        if (state.Where.Spot == Spot.Shop)
            Tell(new PartReturned(part, state.Where.Name, "bench"));
        if (Bench.Part(part).Where.Spot == Spot.Scrap || Bench.Engine.Parts[part].Renewal == Renewal.EveryStrip)
            Tell(new PartRenewed(part, "box"));
        // A new one needs no washing after a shop.
        if (Bench.Part(part).NeedsWash)
            Tell(new PartWashed(part));
        if (Bench.GateClosedBy(part) is { } gate)
        {
            foreach (var joint in Bench.Engine.Joints.Values.Where(j => j.Part != part && Bench.Joint(j.Id).IsOpen && Bench.Part(j.Part) is { IsOn: true } or { IsRiding: true }).ToArray())
                Fasten(joint);
            foreach (var item in Bench.Register.Values.Where(i => i.Left > 0).ToArray())
                Tell(new TakenOut(item.Number));
            foreach (var look in gate.Looks.Where(_ => Likely(0.95)))
                Tell(new GateLooked(gate.Id, look, part));
        }

        foreach (var id in Bench.Engine.JointsOf(part))
            FitSmall(id);
        var closes = Bench.GateClosedBy(part);
        if (closes is not null && GateCheck.Of(Bench, closes, part).Any(f => f.IsFirm))
            Tell(new GateOverridden(closes.Id, part, "an invented reason", []), new PartOn(part));
        else
            Good(new PutBack(part, Override: "an invented reason"));
        foreach (var id in Bench.Engine.JointsOf(part).Where(id => Bench.Joint(id).IsOpen && Likely(0.8)).ToArray())
            Fasten(Bench.Engine.Joints[id]);
    }

    /// <summary>What goes in before a joint's fasteners: its small parts and its studs.</summary>
    private void FitSmall(string joint)
    {
        foreach (var small in Bench.Joint(joint).Small.Where(s => s.Value.Fitted < s.Value.Found).ToArray())
            Tell(new SmallFitted(joint, small.Key, small.Value.Found - small.Value.Fitted));
        if (Bench.Joint(joint).Studs is { Out: > 0 } studs)
            Tell(new StudsBack(joint, studs.Out, studs.Broken));
    }

    private void Fasten(Joint joint)
    {
        var state = Bench.Joint(joint.Id);
        FitSmall(joint.Id);
        if (joint.IsCounted && Likely(0.25))
            Tell(new ProcedureSet(joint.Id, [new Stage(StageSort.Torque, "20 Nm", 20), new Stage(StageSort.Torque, "40 Nm", 40)], "oiled", Likely(0.3)));
        if (state.Tightening.Procedure is not null)
            Tell(new HolesBlown(joint.Id));
        var there = state.AtHand + state.In;
        var needed = state.Required ?? (there > 0 ? there : Math.Max(1, joint.Guess.Fewest));
        var fresh = Bench.IsOneUse(joint) ? needed - state.In : Math.Max(0, needed - state.In - (state.Required is null ? needed : state.AtHand));
        var left = needed - state.In;
        if (left > 2 && fresh == 0 && state.Required is not null && Likely(0.3))
        {
            Tell(new FastenersIn(joint.Id, 1));
            left--;
        }

        Tell(new FastenersIn(joint.Id, left, Math.Min(fresh, left), true));
        if (Bench.Joint(joint.Id).Tightening.Procedure is not null && Bench.Joint(joint.Id) is { IsOpen: false, Required: not null })
            foreach (var stage in new[] { 1, 2 })
                Tell(new StageDone(joint.Id, stage));
    }

    private void Join(string line)
    {
        foreach (var cap in Bench.Line(line).Caps.ToArray())
            Tell(new PortOpened(line, cap));
        Tell(new LineJoined(line));
    }

    private void Tell(params IReadOnlyList<Entry> entries) => Good(new Tell(entries));

    private void Good(Request request)
    {
        var decided = request.Decide(Bench);
        Assert.True(decided.Ok, $"{request}: {string.Join(" ", decided.Refusals)}");
        foreach (var entry in decided.Value)
        {
            var number = Journal.Count + 1;
            var recorded = new Recorded(number, $"{number}", $"{number}", began.AddMinutes(number), began.AddMinutes(number), "model", entry);
            Assert.True(entry.Check(Bench) is null, $"entry {number}, {entry}: {entry.Check(Bench)}");
            Bench.Take(recorded);
            Journal.Add(recorded);
        }
    }
}
