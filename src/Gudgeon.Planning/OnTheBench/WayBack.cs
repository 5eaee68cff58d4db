using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>
/// What goes back and what each thing waits for. Parts that are off wait as they came apart (the book's own record). For
/// lines, for what was done to the whole engine and for what is still to come off the rules of access hold the other way
/// round, as far as it came apart so. The order given is the other way round than it came apart.
/// </summary>
internal sealed class WayBack
{
    public const string Mark = "back:";

    private static readonly string[] lastOfAll = ["op:drain-coolant", "op:drain-oil", "op:battery-off"];

    private readonly Bench bench;
    private readonly Dictionary<string, BenchWork> work = [];
    private readonly Dictionary<string, List<string>> recorded = [];
    private readonly Dictionary<string, List<string>> byRule = [];
    private readonly Dictionary<string, (DateTimeOffset At, long Number)> turn = [];

    /// <param name="bench">How things stand.</param>
    /// <param name="strip">What is taken to come off first; empty for what is off now.</param>
    public WayBack(Bench bench, IReadOnlyList<JobStep> strip)
    {
        this.bench = bench;
        foreach (var told in bench.Told)
        {
            if (told.Entry is LineParted parted)
                turn[parted.Line] = (told.At, told.Number);
            else if (told.Entry is OperationDone done)
                turn[done.Operation] = (told.At, told.Number);
        }
        foreach (var part in bench.WayBackOn())
            turn[part.Part] = (bench.Part(part.Part).OffAt ?? default, bench.Part(part.Part).OffBy ?? 0);
        foreach (var part in bench.WayBackOn())
            Add(new BenchWork(part.Part, WorkSort.Part, bench.NameOf(part.Part), WorkMinutes.OfPart(bench, bench.Engine.Parts[part.Part])) { Persons = bench.Engine.Parts[part.Part].Lift == LiftClass.TwoPersons ? 2 : 1 });
        foreach (var line in bench.Engine.Lines.Values.Where(l => !l.IsPassage && bench.Line(l.Id) is { IsParted: true, IsAbsent: false }))
            Add(new BenchWork(line.Id, WorkSort.Line, line.Name, WorkMinutes.OfLine(bench, line)));
        foreach (var operation in bench.Engine.Operations.Values.Where(o => o.IsTakenBack && bench.IsDone(o.Id)))
            Add(Of(operation));
        foreach (var (step, k) in strip.Select((s, k) => (s, k)))
        {
            turn[step.Work.Id] = (DateTimeOffset.MaxValue, k);
            if (step.Work.Sort is WorkSort.Part or WorkSort.Split or WorkSort.Line || (bench.Engine.Operations.TryGetValue(step.Work.Id, out var operation) && operation.IsTakenBack))
                Add(step.Work);
        }

        foreach (var part in bench.WayBackOn())
            recorded[part.Part].AddRange(part.WaitsFor);
        foreach (var id in work.Keys)
            Rules(id);
        // What was let out is filled in when nothing is left to be opened for, and the battery comes last of all.
        foreach (var last in work.Keys.Where(lastOfAll.Contains))
            byRule[last].AddRange(work.Keys.Where(id => Array.IndexOf(lastOfAll, id) < Array.IndexOf(lastOfAll, last)));
        var users = strip.SelectMany(s => s.After.Select(first => (First: first, Then: s.Work.Id))).ToLookup(x => x.First, x => x.Then);
        foreach (var step in strip.Where(s => work.ContainsKey(s.Work.Id)))
            recorded[step.Work.Id].AddRange(Users(step.Work.Id, users));
    }

    /// <summary>Everything once, each after what it waits for: a table's rule gives way where the record goes against it.</summary>
    public IReadOnlyList<JobStep> Steps()
    {
        var left = work.Keys.OrderByDescending(id => turn.GetValueOrDefault(id)).ThenBy(id => id, StringComparer.Ordinal).ToList();
        var placed = new HashSet<string>();
        var steps = new List<JobStep>();
        while (left.Count > 0)
        {
            var next = left.FirstOrDefault(id => recorded[id].Concat(byRule[id]).All(placed.Contains))
                ?? left.FirstOrDefault(id => recorded[id].All(placed.Contains)) ?? left[0];
            left.Remove(next);
            steps.Add(new JobStep(Mark + next, Phase.Refit, work[next], [.. recorded[next].Concat(byRule[next]).Where(placed.Contains).Distinct().Select(id => Mark + id)]));
            placed.Add(next);
        }

        return steps;
    }

    private static BenchWork Of(Operation operation) =>
        new(operation.Id, WorkSort.Operation, operation.Name, default) { Equipment = operation.Equipment, Persons = operation.Persons };

    private void Add(BenchWork item)
    {
        if (!work.TryAdd(item.Id, item.Sort == WorkSort.Operation ? item with { Minutes = WorkMinutes.OfOperation(bench, bench.Engine.Operations[item.Id]) } : item))
            return;
        recorded[item.Id] = [];
        byRule[item.Id] = [];
    }

    /// <summary>What had to be out of the way of a thing goes back after it.</summary>
    private void Rules(string id)
    {
        if (bench.Engine.Access.TryGetValue(id, out var access))
        {
            foreach (var outer in access.First.Concat(access.Choices.SelectMany(c => c.Sets).SelectMany(s => s)).Select(n => n.Id).Where(work.ContainsKey))
            {
                // Two parts that are off both have their record, which says more than the table.
                if (outer != id && !(IsOff(outer) && IsOff(id)) && CameFirst(outer, id))
                    byRule[outer].Add(id);
            }
        }

        if (!bench.Engine.Lines.TryGetValue(id, out var line))
            return;
        foreach (var end in new[] { line.From.Part, line.To.Part }.Where(work.ContainsKey))
        {
            // A line that could only be parted once its part was loose is joined before the part goes on.
            if (CameFirst(id, end))
                byRule[id].Add(end);
            else
                byRule[end].Add(id);
        }
    }

    private bool CameFirst(string one, string other) => turn.GetValueOrDefault(one).CompareTo(turn.GetValueOrDefault(other)) < 0;

    private bool IsOff(string id) => bench.Engine.Parts.ContainsKey(id) && bench.Part(id).IsOff;

    /// <summary>What rests on a step of the strip; through steps that are not taken back, what rests on those.</summary>
    private IEnumerable<string> Users(string id, ILookup<string, string> users)
    {
        var seen = new HashSet<string>();
        var stack = new Stack<string>(users[id]);
        while (stack.TryPop(out var user))
        {
            if (!seen.Add(user))
                continue;
            if (work.ContainsKey(user))
            {
                yield return user;
                continue;
            }

            foreach (var next in users[user])
                stack.Push(next);
        }
    }
}
