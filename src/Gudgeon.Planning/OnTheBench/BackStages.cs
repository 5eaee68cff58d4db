using System.Collections.Immutable;
using System.Globalization;
using Gudgeon.Journal;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>
/// The steps of a refit sorted by the day from which each can be done: its own day and those of all that must be done
/// first, whichever is latest; what is held comes last. Between two stages lies a step that takes no time, waits for the
/// whole stage before it and is waited for by the whole stage after it: so an order never waits while something can be
/// done, and what is proven of the order holds with the waits in it.
/// </summary>
internal sealed class BackStages
{
    private const string Mark = "wait:";

    private readonly BackWait[] waits;
    private readonly DateOnly[] stages;
    private readonly Dictionary<string, DateOnly> stageOf = [];

    private BackStages(DateOnly[] stages, BackWait[] waits)
    {
        this.stages = stages;
        this.waits = waits;
    }

    /// <summary>Stage by stage, in each the other way round than it came apart; with the steps between the stages.</summary>
    public IReadOnlyList<JobStep> Steps { get; private set; } = [];

    public static BackStages Of(Bench bench, DateTimeOffset now, IReadOnlyList<JobStep> steps, IReadOnlyList<BackWait> waits)
    {
        var own = waits.ToDictionary(w => w.Part, w => w.Day ?? Never);
        var stage = steps.ToDictionary(s => s.Id, s => BackNeeds.Washed(s) is { } part ? BackWaits.BackFromShop(bench, part, now) ?? Never
            : s.Work.Sort == WorkSort.Part ? own.GetValueOrDefault(s.Work.Id) : Today);
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var step in steps)
            {
                var latest = step.After.Select(id => stage[id]).Append(stage[step.Id]).Max();
                changed |= latest != stage[step.Id];
                stage[step.Id] = latest;
            }
        }

        DateOnly[] order = [.. stage.Values.Distinct().Order()];
        var made = new BackStages(order, [.. waits.Select(w => w with { HoldsUp = HeldUp(steps, w.Part) })]);
        var all = new List<JobStep>();
        foreach (var day in order)
        {
            string[] before = [.. all.Where(s => made.stageOf[s.Id] == (all.Count == 0 ? day : made.stageOf[all[^1].Id])).Select(s => s.Id)];
            var wait = day == Today ? null : new JobStep($"{Mark}{Key(day)}", Phase.Between, new BenchWork($"{Mark}{Key(day)}", WorkSort.Wait, "wait", default), before);
            if (wait is not null)
            {
                all.Add(wait);
                made.stageOf[wait.Id] = day;
            }

            foreach (var step in steps.Where(s => stage[s.Id] == day))
            {
                all.Add(wait is null ? step : step with { After = [.. step.After, wait.Id] });
                made.stageOf[step.Id] = day;
            }
        }

        made.Steps = all;
        return made;
    }

    /// <summary>An order of the steps, by number, cut into its stages.</summary>
    public ImmutableArray<BackStage> Cut(IReadOnlyList<int> order)
    {
        var work = Steps.ToDictionary(s => s.Id, s => s.Work.Id);
        var cut = ImmutableArray.CreateBuilder<BackStage>();
        foreach (var day in stages)
        {
            var here = order.Select(k => Steps[k]).Where(s => stageOf[s.Id] == day && s.Work.Sort != WorkSort.Wait)
                .Select(s => new BackStep(s.Work, s.Minutes, [.. s.After.Where(id => !id.StartsWith(Mark, StringComparison.Ordinal)).Select(id => work[id])]));
            var waiting = waits.Where(w => (w.Day ?? Never) == day).OrderByDescending(w => w.HoldsUp).ThenBy(w => w.Part, StringComparer.Ordinal);
            cut.Add(new BackStage(day == Today || day == Never ? null : day, day == Never, [.. waiting], [.. here]));
        }

        return cut.ToImmutable();
    }

    /// <summary>From ever: earlier than any day that is told.</summary>
    private static DateOnly Today => DateOnly.MinValue;

    private static DateOnly Never => DateOnly.MaxValue;

    private static string Key(DateOnly day) => day == Never ? "held" : day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>Steps that cannot be done before this part is on.</summary>
    private static int HeldUp(IReadOnlyList<JobStep> steps, string part)
    {
        var behind = new HashSet<string> { WayBack.Mark + part };
        for (var count = 0; count != behind.Count;)
        {
            count = behind.Count;
            foreach (var step in steps.Where(s => s.After.Any(behind.Contains)))
                behind.Add(step.Id);
        }

        return behind.Count - 1;
    }
}
