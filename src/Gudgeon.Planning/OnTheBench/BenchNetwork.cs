using System.Collections.Immutable;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Planning.Reach;
using Choice = Gudgeon.Planning.Reach.Choice;
using Need = Gudgeon.Planning.Reach.Need;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>
/// The bench as a network of what must be undone before what: parts, lines, operations, open questions. What is done
/// already costs nothing; what cannot be done now carries its reason.
/// </summary>
public sealed class BenchNetwork
{
    private readonly Dictionary<string, int> numberOf;

    internal BenchNetwork(ImmutableArray<BenchWork> work, Dictionary<string, int> numberOf, AndOrNetwork network)
    {
        Work = work;
        this.numberOf = numberOf;
        Network = network;
    }

    public AndOrNetwork Network { get; }

    /// <summary>What each node is.</summary>
    public ImmutableArray<BenchWork> Work { get; }

    /// <summary>The node of a thing, or -1.</summary>
    public int IndexOf(string id) => numberOf.GetValueOrDefault(id, -1);

    /// <summary>The bench as it stands; open questions are taken as not to be counted on.</summary>
    public static BenchNetwork Of(Bench bench, Circumstances circumstances) => new NetworkMaker(bench, circumstances).Make();

    /// <summary>The parts that can be taken off in the end, or split from what is off.</summary>
    public IEnumerable<int> Things => Enumerable.Range(0, Work.Length).Where(k => Work[k].Sort is WorkSort.Part or WorkSort.Split);
}

/// <summary>A further rule that a plan puts up for itself.</summary>
internal sealed record OwnRule(string Target, string Need, string Why);

/// <summary>Builds the network of a bench.</summary>
internal sealed class NetworkMaker(Bench bench, Circumstances circumstances)
{
    private const string Hang = "op:hang";
    private const string Out = "op:engine-out";
    private const string OnStand = "op:on-stand";

    private readonly List<BenchWork> work = [];
    private readonly Dictionary<string, int> numberOf = [];
    private readonly Dictionary<(string Target, string Need), long> learnedIn = [];

    /// <summary>Whether an open question may be answered yes by looking.</summary>
    public bool MayLook { get; init; }

    /// <summary>Rules beyond those of the bench.</summary>
    public IReadOnlyList<OwnRule> Own { get; init; } = [];

    /// <summary>A place to get at.</summary>
    public ReachTarget? Place { get; init; }

    public BenchNetwork Make()
    {
        foreach (var recorded in bench.Told)
        {
            if (recorded.Entry is AccessLearned learned)
            {
                foreach (var need in learned.Needs)
                    learnedIn[(learned.Target, need)] = recorded.Number;
            }
        }

        foreach (var part in bench.Engine.Parts.Values.Where(p => !bench.Part(p.Id).IsAbsent))
            Add(OfPart(part));
        foreach (var line in bench.Engine.Lines.Values.Where(l => !l.IsPassage && !bench.Line(l.Id).IsAbsent))
            Add(new BenchWork(line.Id, WorkSort.Line, line.Name, WorkMinutes.OfLine(bench, line)) { RunsOut = line.RunsOut });
        foreach (var operation in bench.Engine.Operations.Values)
            Add(new BenchWork(operation.Id, operation.Lasts ? WorkSort.Operation : WorkSort.Way, operation.Name, WorkMinutes.OfOperation(bench, operation)) { Equipment = operation.Equipment, Persons = operation.Persons });
        foreach (var fact in bench.Engine.Facts.Values)
            Add(new BenchWork(fact.Id, WorkSort.Look, fact.Question, WorkMinutes.Look));
        if (Place is { IsPlace: true } place)
            Add(new BenchWork(place.Id, WorkSort.Place, place.Name, default));
        return new BenchNetwork([.. work], numberOf, new AndOrNetwork(work.Select(Node)));
    }

    private BenchWork OfPart(Part part)
    {
        var sort = IsBody(part) ? WorkSort.Body : bench.Part(part.Id).IsRiding ? WorkSort.Split : WorkSort.Part;
        return new BenchWork(part.Id, sort, part.Name, sort == WorkSort.Body ? default : WorkMinutes.OfPart(bench, part))
        {
            Persons = part.Lift == LiftClass.TwoPersons ? 2 : 1,
            Equipment = part.Lift == LiftClass.Crane ? ["hoist"] : [],
        };
    }

    /// <summary>The body comes off nothing: it carries the rest and nothing carries it.</summary>
    private bool IsBody(Part part) => bench.Engine.CarrierOf(part.Id) is null && bench.Engine.CarriedBy(part.Id).Count > 0;

    private void Add(BenchWork item)
    {
        numberOf.Add(item.Id, work.Count);
        work.Add(item);
    }

    private AndOrNode Node(BenchWork item)
    {
        var needs = new List<Need>();
        var choices = new List<Choice>();
        var ruledBy = item.Sort == WorkSort.Place ? Place?.AccessOf ?? "" : item.Id;
        if (bench.Engine.Access.TryGetValue(ruledBy, out var access))
        {
            foreach (var need in access.First)
                Require(item, need.Id, Rule(item, need.Id), needs);
            foreach (var choice in access.Choices)
                AddChoice(item, choice, choices);
        }

        foreach (var line in LinesOf(item))
            Require(item, line.Id, $"the {line.Name} runs from the {item.Name}", needs);
        if (item.Sort == WorkSort.Line && MadeSafeBy(bench.Engine.Lines[item.Id]) is { } safe)
            Require(item, safe, Rule(item, safe), needs);
        foreach (var own in Own.Where(o => o.Target == item.Id))
            Require(item, own.Need, own.Why, needs);
        foreach (var id in item.Sort == WorkSort.Place ? Place!.Needs : [])
            Require(item, id, $"the {bench.NameOf(id)} is in front of it", needs);
        var hangs = HangsFrom(item.Id);
        if (hangs && numberOf.ContainsKey(Out))
            Require(item, Out, $"held: the engine hangs from the {item.Name}", needs);
        return new AndOrNode(item.Id, item.Minutes.Seconds)
        {
            FluidLines = item.Sort == WorkSort.Line && bench.Engine.Lines[item.Id].Circuit != Circuit.Electrical ? 1 : 0,
            ThingsOff = item.Sort is WorkSort.Part or WorkSort.Split or WorkSort.Line ? 1 : 0,
            Needs = [.. needs],
            Choices = [.. choices],
            IsDone = IsDone(item),
            Blocks = [.. Blocks(item, hangs)],
        };
    }

    private bool IsDone(BenchWork item) => item.Sort switch
    {
        WorkSort.Part => !bench.Part(item.Id).IsOn,
        WorkSort.Line => bench.Line(item.Id).IsParted,
        WorkSort.Operation => bench.IsDone(item.Id),
        WorkSort.Look => bench.Answer(item.Id) == true,
        _ => false,
    };

    private void Require(BenchWork item, string need, string rule, List<Need> needs)
    {
        if (numberOf.TryGetValue(need, out var number) && IsOpen(need) && needs.All(n => n.Node != number) && need != item.Id)
            needs.Add(new Need(number, rule));
    }

    private void AddChoice(BenchWork item, Engine.Choice choice, List<Choice> choices)
    {
        var ways = choice.Sets.Select(set => set.Where(n => numberOf.ContainsKey(n.Id) && IsOpen(n.Id)).Select(n => numberOf[n.Id]).Distinct().ToImmutableArray()).ToImmutableArray();
        if (!ways.Any(way => way.IsEmpty))
            choices.Add(new Choice(ways, $"the {item.Name} waits for {string.Join(", or ", ways.Select(way => string.Join(" and ", way.Select(n => work[n].Sort == WorkSort.Look ? $"a yes to \"{work[n].Name}\"" : work[n].Name))))}"));
    }

    /// <summary>What is off and riding stands in nobody's way, though it may still have to be split.</summary>
    private bool IsOpen(string id) => work[numberOf[id]].Sort != WorkSort.Split;

    private string Rule(BenchWork item, string need)
    {
        var first = numberOf.TryGetValue(need, out var known) ? work[known].Doing : bench.NameOf(need);
        var rule = $"{first} before {(item.Sort is WorkSort.Operation or WorkSort.Way ? $"you {item.Name}" : $"the {item.Name}")}";
        return learnedIn.TryGetValue((item.Id, need), out var number) ? $"entry {number}: {rule}" : rule;
    }

    /// <summary>Lines that run from what comes off to what stays.</summary>
    private IEnumerable<Line> LinesOf(BenchWork item)
    {
        if (item.Sort != WorkSort.Part)
            return [];
        HashSet<string> unit = [item.Id, .. bench.RidersOf(item.Id)];
        return unit.SelectMany(bench.Engine.LinesOf).Distinct().Select(id => bench.Engine.Lines[id])
            .Where(line => !line.IsPassage && unit.Contains(line.From.Part) != unit.Contains(line.To.Part) && !IsPartedAfter(line, unit));
    }

    /// <summary>The owner found that the line can only be reached once the part is loose: it comes away on it.</summary>
    private bool IsPartedAfter(Line line, HashSet<string> unit) =>
        bench.Engine.Access.TryGetValue(line.Id, out var access) && access.First.Any(n => unit.Contains(n.Id));

    /// <summary>What is done before a line of its sort is opened, so that nothing sprays, scalds or sparks.</summary>
    private static string? MadeSafeBy(Line line) => line.Circuit switch
    {
        Circuit.Coolant => "op:drain-coolant",
        Circuit.Fuel => "op:fuel-safe",
        Circuit.Electrical when line.RunsOut.StartsWith("battery off", StringComparison.Ordinal) => "op:battery-off",
        _ => null,
    };

    private bool HangsFrom(string id) =>
        bench.IsDone(Hang) && !bench.IsDone(Out) && !bench.IsDone(OnStand)
        && bench.Engine.Access.TryGetValue(id, out var access) && access.Holds.Contains("eye");

    private IEnumerable<Block> Blocks(BenchWork item, bool hangs)
    {
        if (IsDone(item))
            yield break;
        if (item.Sort == WorkSort.Look && bench.Answer(item.Id) == false)
            yield return new Block(BlockKind.Fact, $"\"{item.Name}\" is answered no");
        else if (item.Sort == WorkSort.Look && !MayLook)
            yield return new Block(BlockKind.Fact, $"nobody has looked yet: {item.Name}");
        if (hangs && !numberOf.ContainsKey(Out))
            yield return new Block(BlockKind.Held, $"held: the engine hangs from the {item.Name}");
        foreach (var reason in item.Equipment.Select(e => circumstances.Lacks(bench, e)).OfType<string>().Distinct())
            yield return new Block(BlockKind.Equipment, reason);
        if (item.Persons > 1 && circumstances.Alone)
            yield return new Block(BlockKind.Person, "needs a second person");
        else if (item.Persons > 1 && circumstances.Lacks(bench, EquipmentTold.SecondPerson) is { } absent)
            yield return new Block(BlockKind.Person, absent);
        foreach (var wait in bench.Waits.Values.Select(r => (Waiting)r.Entry).Where(w => w.What == item.Id && !(w.Until <= circumstances.Now || (circumstances.AnyTime && w.Until is not null))))
            yield return new Block(BlockKind.Other, $"waits for {wait.For}{(wait.Until is { } until ? $", due {Circumstances.Day(until)}" : "")}");
    }
}
