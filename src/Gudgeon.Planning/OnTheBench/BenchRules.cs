using System.Collections.Immutable;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Planning.Reach;
using Choice = Gudgeon.Planning.Reach.Choice;
using Need = Gudgeon.Planning.Reach.Need;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>
/// What must be undone before what on a bench as it stands, whoever asks and when: all of a network but the reasons that
/// come and go. Made once for a state of the book.
/// </summary>
public sealed class BenchRules
{
    private const string Hang = "op:hang";
    private const string Out = "op:engine-out";
    private const string OnStand = "op:on-stand";

    private readonly List<BenchWork> work = [];
    private readonly Dictionary<string, int> numberOf = [];
    private readonly Dictionary<(string Target, string Need), ImmutableArray<long>> learnedIn = [];
    private readonly Dictionary<string, ImmutableArray<long>> addedIn = [];
    private readonly ImmutableArray<long> hungIn = [];
    private readonly AndOrNetwork network;

    public BenchRules(Bench bench)
    {
        Bench = bench;
        foreach (var recorded in bench.Told)
        {
            if (recorded.Entry is AccessLearned learned)
            {
                foreach (var need in learned.Needs)
                    learnedIn[(learned.Target, need)] = [.. Learned(learned.Target, need), recorded.Number];
            }
            else if (recorded.Entry is LineAdded line)
            {
                addedIn[line.Line] = [recorded.Number];
            }
            else if (recorded.Entry is OperationDone { Operation: Hang })
            {
                hungIn = [recorded.Number];
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
        Work = [.. work];
        network = new AndOrNetwork(Work.Select(item => NodeOf(item)));
    }

    public Bench Bench { get; }

    internal ImmutableArray<BenchWork> Work { get; }

    internal IReadOnlyDictionary<string, int> NumberOf => numberOf;

    /// <summary>The network with what holds things up under these circumstances.</summary>
    internal BenchNetwork Under(Circumstances circumstances, bool mayLook)
    {
        var waits = Bench.Waits.Values.Select(r => (Waiting)r.Entry)
            .Where(w => w.What is not null && !(w.Until <= circumstances.Now || (circumstances.AnyTime && w.Until is not null))).ToLookup(w => w.What!);
        var lacks = new Dictionary<string, string?>();
        var changed = Enumerable.Range(0, Work.Length)
            .Where(k => !network.Nodes[k].IsDone)
            .Select(k => (Node: k, Blocks: Blocks(Work[k]).ToImmutableArray()))
            .Where(x => !x.Blocks.IsEmpty)
            .Select(x => (x.Node, network.Nodes[x.Node] with { Blocks = x.Blocks }));
        return new BenchNetwork(Work, numberOf, network.With(changed));

        IEnumerable<Block> Blocks(BenchWork item)
        {
            if (item.Sort == WorkSort.Look && Bench.Answer(item.Id) == false)
                yield return new Block(BlockKind.Fact, $"\"{item.Name}\" is answered no");
            else if (item.Sort == WorkSort.Look && !mayLook)
                yield return new Block(BlockKind.Fact, $"nobody has looked yet: {item.Name}");
            if (HangsFrom(item.Id) && !numberOf.ContainsKey(Out))
                yield return new Block(BlockKind.Held, $"held: the engine hangs from the {item.Name}");
            foreach (var reason in item.Equipment.Select(Lacks).OfType<string>().Distinct())
                yield return new Block(BlockKind.Equipment, reason);
            if (item.Persons > 1 && circumstances.Alone)
                yield return new Block(BlockKind.Person, "needs a second person");
            else if (item.Persons > 1 && Lacks(EquipmentTold.SecondPerson) is { } absent)
                yield return new Block(BlockKind.Person, absent);
            foreach (var wait in waits[item.Id])
                yield return new Block(BlockKind.Other, $"waits for {wait.For}{(wait.Until is { } until ? $", due {Circumstances.Day(until)}" : "")}");
        }

        string? Lacks(string equipment)
        {
            if (!lacks.TryGetValue(equipment, out var why))
                lacks[equipment] = why = circumstances.Lacks(Bench, equipment);
            return why;
        }
    }

    private BenchWork OfPart(Part part)
    {
        var sort = IsBody(part) ? WorkSort.Body : Bench.Part(part.Id).IsRiding ? WorkSort.Split : WorkSort.Part;
        return new BenchWork(part.Id, sort, part.Name, sort == WorkSort.Body ? default : WorkMinutes.OfPart(Bench, part))
        {
            Persons = part.Lift == LiftClass.TwoPersons ? 2 : 1,
            Equipment = part.Lift == LiftClass.Crane ? ["hoist"] : [],
        };
    }

    /// <summary>The body comes off nothing: it carries the rest and nothing carries it.</summary>
    private bool IsBody(Part part) => Bench.Engine.CarrierOf(part.Id) is null && Bench.Engine.CarriedBy(part.Id).Count > 0;

    private void Add(BenchWork item)
    {
        numberOf.Add(item.Id, work.Count);
        work.Add(item);
    }

    /// <param name="item">What it is.</param>
    /// <param name="target">For a place to get at: what it asks for; null for the rest.</param>
    internal AndOrNode NodeOf(BenchWork item, ReachTarget? target = null)
    {
        var needs = new List<Need>();
        var choices = new List<Choice>();
        var ruledBy = target?.AccessOf ?? item.Id;
        if (Bench.Engine.Access.TryGetValue(ruledBy, out var access))
        {
            foreach (var need in access.First)
                Require(item, need.Id, Rule(item, ruledBy, need.Id), Learned(ruledBy, need.Id), needs);
            foreach (var choice in access.Choices)
                AddChoice(item, choice, choices);
        }

        foreach (var line in LinesOf(item))
            Require(item, line.Id, $"{Entry(Added(line.Id))}the {line.Name} runs from the {item.Name}", Added(line.Id), needs);
        if (item.Sort == WorkSort.Line && MadeSafeBy(Bench.Engine.Lines[item.Id]) is { } safe)
            Require(item, safe, Rule(item, item.Id, safe), Added(item.Id), needs);
        foreach (var id in target?.Needs ?? [])
            Require(item, id, $"the {Bench.NameOf(id)} is in front of it", [], needs);
        if (HangsFrom(item.Id) && numberOf.ContainsKey(Out))
            Require(item, Out, $"held: the engine hangs from the {item.Name}", hungIn, needs);
        return new AndOrNode(item.Id, item.Minutes.Seconds)
        {
            FluidLines = item.Sort == WorkSort.Line && Bench.Engine.Lines[item.Id].Circuit != Circuit.Electrical ? 1 : 0,
            ThingsOff = item.Sort is WorkSort.Part or WorkSort.Split or WorkSort.Line ? 1 : 0,
            Needs = [.. needs],
            Choices = [.. choices],
            IsDone = IsDone(item),
        };
    }

    private bool IsDone(BenchWork item) => item.Sort switch
    {
        WorkSort.Part => !Bench.Part(item.Id).IsOn,
        WorkSort.Line => Bench.Line(item.Id).IsParted,
        WorkSort.Operation => Bench.IsDone(item.Id),
        WorkSort.Look => Bench.Answer(item.Id) == true,
        _ => false,
    };

    private void Require(BenchWork item, string need, string rule, ImmutableArray<long> by, List<Need> needs)
    {
        if (numberOf.TryGetValue(need, out var number) && IsOpen(need) && needs.All(n => n.Node != number) && need != item.Id)
            needs.Add(new Need(number, rule) { By = by });
    }

    private void AddChoice(BenchWork item, Engine.Choice choice, List<Choice> choices)
    {
        var ways = choice.Sets.Select(set => set.Where(n => numberOf.ContainsKey(n.Id) && IsOpen(n.Id)).Select(n => numberOf[n.Id]).Distinct().ToImmutableArray()).ToImmutableArray();
        if (!ways.Any(way => way.IsEmpty))
            choices.Add(new Choice(ways, $"the {item.Name} waits for {string.Join(", or ", ways.Select(way => string.Join(" and ", way.Select(n => work[n].Sort == WorkSort.Look ? $"a yes to \"{work[n].Name}\"" : work[n].Name))))}"));
    }

    /// <summary>What is off and riding stands in nobody's way, though it may still have to be split.</summary>
    private bool IsOpen(string id) => work[numberOf[id]].Sort != WorkSort.Split;

    private ImmutableArray<long> Learned(string target, string need) => learnedIn.TryGetValue((target, need), out var numbers) ? numbers : [];

    private ImmutableArray<long> Added(string line) => addedIn.TryGetValue(line, out var numbers) ? numbers : [];

    private static string Entry(ImmutableArray<long> numbers) => numbers.Length switch
    {
        0 => "",
        1 => $"entry {numbers[0]}: ",
        _ => $"entries {string.Join(" and ", numbers)}: ",
    };

    private string Rule(BenchWork item, string ruledBy, string need)
    {
        var first = numberOf.TryGetValue(need, out var known) ? work[known].Doing : Bench.NameOf(need);
        return $"{Entry(Learned(ruledBy, need))}{first} before {(item.Sort is WorkSort.Operation or WorkSort.Way ? $"you {item.Name}" : $"the {item.Name}")}";
    }

    /// <summary>Lines that run from what comes off to what stays.</summary>
    private IEnumerable<Line> LinesOf(BenchWork item)
    {
        if (item.Sort != WorkSort.Part)
            return [];
        HashSet<string> unit = [item.Id, .. Bench.RidersOf(item.Id)];
        return unit.SelectMany(Bench.Engine.LinesOf).Distinct().Select(id => Bench.Engine.Lines[id])
            .Where(line => !line.IsPassage && unit.Contains(line.From.Part) != unit.Contains(line.To.Part) && !IsPartedAfter(line, unit));
    }

    /// <summary>The owner found that the line can only be reached once the part is loose: it comes away on it.</summary>
    private bool IsPartedAfter(Line line, HashSet<string> unit) =>
        Bench.Engine.Access.TryGetValue(line.Id, out var access) && access.First.Any(n => unit.Contains(n.Id));

    /// <summary>What is done before a line of its sort is opened, so that nothing sprays, scalds or sparks.</summary>
    private static string? MadeSafeBy(Line line) => line.Circuit switch
    {
        Circuit.Coolant => "op:drain-coolant",
        Circuit.Fuel => "op:fuel-safe",
        Circuit.Electrical when line.RunsOut.StartsWith("battery off", StringComparison.Ordinal) => "op:battery-off",
        _ => null,
    };

    private bool HangsFrom(string id) =>
        Bench.IsDone(Hang) && !Bench.IsDone(Out) && !Bench.IsDone(OnStand)
        && Bench.Engine.Access.TryGetValue(id, out var access) && access.Holds.Contains("eye");
}
