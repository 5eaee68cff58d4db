using System.Collections.Immutable;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Planning.Calendar;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>A piece of the job that fills part of a session: a few steps that belong together.</summary>
/// <param name="Ids">Parts, lines and operations that it does.</param>
public sealed record JobTask(PlanTask Task, Phase Phase, ImmutableArray<string> Ids);

/// <summary>
/// The whole job in pieces for the calendar: steps that follow each other are done in one go, up to about an hour;
/// operations on the whole engine stand alone.
/// </summary>
public static class JobTasks
{
    private const long PieceSeconds = 3600;
    private const long MayBeLaidDownFrom = 2 * 3600;
    private const string Cleaning = "between:clean";
    private static readonly ThreePoint shopGuess = new(7 * 86400L, 14 * 86400L, 28 * 86400L);

    public static ImmutableArray<JobTask> Of(Bench bench, Circumstances circumstances, IReadOnlyList<ReachStep> strip)
    {
        var off = JobOrder.Strip(strip);
        var tasks = ImmutableArray.CreateBuilder<JobTask>();
        tasks.AddRange(Pieces(bench, off, circumstances, []));
        tasks.AddRange(Between(bench, circumstances, [.. tasks]));
        string[] between = [.. tasks.Where(t => t.Phase == Phase.Between && !t.Task.IsAway).Select(t => t.Task.Id)];
        var away = tasks.Where(t => t.Task.IsAway).ToDictionary(t => t.Ids[0], t => t.Task.Id);
        foreach (var piece in Pieces(bench, JobOrder.Refit(bench, off), circumstances, between))
            tasks.Add(piece with { Task = piece.Task with { After = [.. piece.Task.After, .. piece.Ids.Where(away.ContainsKey).Select(id => away[id])] } });
        return tasks.ToImmutable();
    }

    /// <summary>When the owner and things are there. Evenings and weekends are taken while nobody told.</summary>
    public static WorkCalendar Calendar(Bench bench, Circumstances circumstances, IEnumerable<JobTask> tasks)
    {
        var week = bench.Hours.Count > 0 ? bench.Hours : UsualWeek;
        var present = tasks.SelectMany(t => t.Task.Wants).Distinct()
            .Select(want => (Want: want, Windows: Circumstances.WindowsOf(bench, want, circumstances.Now)))
            .Where(x => x.Windows is not null)
            .ToImmutableDictionary(x => x.Want, x => x.Windows!.ToImmutableArray());
        return new WorkCalendar([.. week.Select(h => new BenchHours(h.Day, h.From, h.Until))]) { Present = present };
    }

    /// <summary>Taken until the owner tells: evenings from 19 to 22, weekends from 10 to 17. Common practice, no source.</summary>
    public static IReadOnlyList<DayHours> UsualWeek { get; } = DayHours.Read("mon-fri 19-22, sat-sun 10-17").Value;

    private static IEnumerable<JobTask> Pieces(Bench bench, IReadOnlyList<JobStep> steps, Circumstances circumstances, string[] afterAll)
    {
        var pieces = Cut(steps);
        var pieceOf = pieces.SelectMany(p => p.Select(s => (s.Id, Piece: p[0].Id))).ToDictionary(x => x.Id, x => x.Piece);
        foreach (var piece in pieces)
        {
            var after = piece.SelectMany(s => s.After).Where(pieceOf.ContainsKey).Select(id => pieceOf[id]).Where(id => id != piece[0].Id).Distinct();
            var (low, high) = (piece.Sum(s => s.Minutes.Low), piece.Sum(s => s.Minutes.High));
            var seconds = (long)((low + high) * 30);
            var waits = bench.Waits.Values.Select(r => (Waiting)r.Entry).Where(w => w.Until > circumstances.Now && piece.Any(s => s.Work.Id == w.What)).Select(w => w.Until!.Value.ToOffset(circumstances.Now.Offset).DateTime);
            yield return new JobTask(
                new PlanTask(piece[0].Id, Title(bench, piece), seconds)
                {
                    After = [.. after, .. afterAll],
                    Wants = [.. piece.SelectMany(s => s.Work.Equipment).Distinct(), .. piece.Any(s => s.Work.Persons > 1) ? [EquipmentTold.SecondPerson] : Array.Empty<string>()],
                    MaySplit = piece.All(s => s.Work.Persons == 1) || seconds >= MayBeLaidDownFrom,
                    NotBefore = waits.Any() ? waits.Max() : null,
                    Estimate = high > low ? new ThreePoint((long)(low * 60), seconds, (long)(high * 60)) : null,
                },
                piece[0].Phase,
                [.. piece.Select(s => s.Work.Id)]);
        }
    }

    /// <summary>Runs of the order: an order that works, cut anywhere, gives pieces that can follow each other.</summary>
    private static List<List<JobStep>> Cut(IReadOnlyList<JobStep> steps)
    {
        var pieces = new List<List<JobStep>>();
        foreach (var step in steps)
        {
            var last = pieces.LastOrDefault();
            // What is small leads over to what wants it, whatever the time.
            if (last is null || (!IsSmall(last[^1]) && (StandsAlone(step) || StandsAlone(last[^1]) || last.Sum(s => s.Minutes.Seconds) + step.Minutes.Seconds > PieceSeconds)))
                pieces.Add([step]);
            else
                last.Add(step);
        }

        return pieces;
    }

    private static bool IsSmall(JobStep step) => Lateness.IsSmall(step.Work, step.After.Count == 0);

    private static bool StandsAlone(JobStep step) => !IsSmall(step) && (step.Work.Sort == WorkSort.Operation || step.Work.Persons > 1);

    private static IEnumerable<JobTask> Between(Bench bench, Circumstances circumstances, IReadOnlyList<JobTask> strip)
    {
        // Cleaning and measuring: as long again as the strip to twice, common practice, no source.
        var minutes = bench.Engine.Parts.Values.Where(p => bench.Part(p.Id) is { IsOff: true } or { IsRiding: true }).Sum(p => WorkMinutes.OfPart(bench, p).Seconds)
            + strip.SelectMany(t => t.Ids).Where(bench.Engine.Parts.ContainsKey).Sum(id => WorkMinutes.OfPart(bench, bench.Engine.Parts[id]).Seconds);
        if (minutes > 0)
            yield return new JobTask(new PlanTask(Cleaning, "Clean and measure what is off", minutes * 3 / 2) { After = [.. strip.Select(t => t.Task.Id)], Estimate = new ThreePoint(minutes, minutes * 3 / 2, minutes * 2) }, Phase.Between, []);
        foreach (var part in bench.Engine.Parts.Values)
        {
            var isAtShop = bench.Part(part.Id).Where.Spot == Spot.Shop;
            var title = isAtShop ? $"{part.Name} back from {bench.Part(part.Id).Where.Name}" : $"what is on order for the {part.Name}";
            if (bench.Leads.TryGetValue(part.Id, out var lead))
                yield return Away(part.Id, title, Left(lead.Told, lead.At, circumstances.Now));
            else if (isAtShop && bench.ShopDue(part.Id) is { } due)
                yield return Away(part.Id, title, Math.Max(0, (long)(due - circumstances.Now).TotalSeconds));
            else if (isAtShop)
                yield return Away(part.Id, title, shopGuess);
        }
    }

    private static JobTask Away(string part, string title, ThreePoint time) => new(new PlanTask($"away:{part}", title, time.LikelySeconds) { IsAway = true, Estimate = time }, Phase.Between, [part]);

    private static JobTask Away(string part, string title, long seconds) => new(new PlanTask($"away:{part}", title, seconds) { IsAway = true }, Phase.Between, [part]);

    /// <summary>What is left of a lead time; what is overdue may come any day.</summary>
    private static ThreePoint Left(LeadTold told, DateTimeOffset at, DateTimeOffset now)
    {
        var gone = Math.Max(0, (long)(now - at).TotalSeconds);
        return new ThreePoint(Of(told.BestDays), Of(told.LikelyDays), Of(told.WorstDays));

        long Of(int days) => Math.Max(0, days * 86400L - gone);
    }

    private static string Title(Bench bench, IReadOnlyList<JobStep> piece)
    {
        var isBack = piece[0].Phase == Phase.Refit;
        var parts = piece.Where(s => s.Work.Sort is WorkSort.Part or WorkSort.Split).Select(s => s.Work.Id).ToArray();
        var lines = piece.Count(s => s.Work.Sort == WorkSort.Line);
        if (parts.Length > 0)
            return $"{bench.Several(parts)} {(isBack ? "on" : "off")}{(lines == 0 ? "" : $", {lines} {(lines == 1 ? "line" : "lines")} {(isBack ? "joined" : "parted")}")}";
        if (lines > 0)
            return lines == 1 ? $"{(isBack ? "join" : "part")} the {piece.First(s => s.Work.Sort == WorkSort.Line).Work.Name}" : $"{(isBack ? "join" : "part")} {lines} lines";
        var main = piece.FirstOrDefault(StandsAlone) ?? piece[0];
        return isBack ? main.Work.Return : main.Work.Name;
    }
}
