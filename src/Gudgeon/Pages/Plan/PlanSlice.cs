using System.Globalization;
using System.Text;
using Gudgeon.Commands;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages.Strip;
using Gudgeon.Planning.Calendar;
using Gudgeon.Planning.OnTheBench;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Pages.Plan;

/// <summary>What to do next: the way to anything, what to do while waiting, the whole job on days.</summary>
public sealed class PlanSlice : ISlice
{
    private const double UsualHours = 2;
    private const double MostHours = 24;

    /// <summary>A page is made while somebody waits: fewer orders tried, fewer futures drawn than by command.</summary>
    private const int QuickTrials = 3;
    private const int QuickDraws = 100;

    private static readonly TimeSpan Grain = TimeSpan.FromMinutes(5);

    public IEnumerable<NavItem> Nav => [new(NavPlace.Verb, 30, "plan", "Plan", "plan")];

    public void MapPages(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/books/{book}");
        book.MapGet("/reach", Reach);
        book.MapGet("/plan", Plan);
        book.MapGet("/plan.ics", IResult (Visit visit, TimeProvider clock) => CalendarExport.Write(Days(visit, clock).Plan, clock.GetUtcNow(), visit.Book.Key) is var written && written.TryGet(out var text)
            ? Results.File(Encoding.UTF8.GetBytes(text), "text/calendar; charset=utf-8", "plan.ics")
            : Recording.Refused(visit, FormCollection.Empty, written.Refusals));
        book.MapPost("/keep-plan", StripSlice.Form((visit, _, _) => StripReport.Of(visit.Bench, Now(visit)) is { Steps.IsEmpty: false } report
            ? [new Tell(new PlanKept([.. report.Steps.Select(s => s.Work.Id)], report.Plan.TotalSeconds, report.Plan.BoundSeconds))]
            : []));
        book.MapPost("/equipment", StripSlice.Form(Equipment));
        book.MapPost("/minutes", StripSlice.Form((visit, form, refusals) =>
        {
            var timed = MeansCommands.Timed(visit.Bench, form.Text("what"));
            refusals.AddRange(timed.Refusals);
            return form.Count("minutes", "minutes", refusals) is { } minutes && timed.Ok ? [new Tell(new MinutesTold(timed.Value, minutes))] : [];
        }));
        book.MapPost("/lead", StripSlice.Form((visit, form, refusals) =>
            Named(visit, form, refusals) is { } part && form.Count("best", "days at best", refusals) is { } best && form.Count("likely", "days, most likely", refusals) is { } likely && form.Count("worst", "days at worst", refusals) is { } worst
                ? [new Tell(new LeadTold(part, best, likely, worst))]
                : []));
        book.MapPost("/hours", StripSlice.Form((_, form, refusals) =>
        {
            var read = DayHours.Read(form.Text("week"));
            refusals.AddRange(read.Refusals);
            return read.Ok ? [new Tell(new HoursTold(read.Value))] : [];
        }));
    }

    private static Circumstances Now(Visit visit) => new(visit.Http.RequestServices.GetRequiredService<TimeProvider>().GetLocalNow());

    /// <summary>The time to within a few minutes: plans hang on days and hours, and within that a page is not reckoned again.</summary>
    private static DateTimeOffset Moment(TimeProvider clock)
    {
        var now = clock.GetLocalNow();
        return now.AddTicks(-(now.Ticks % Grain.Ticks));
    }

    private static DaysReport Days(Visit visit, TimeProvider clock) => visit.Once(
        bench => DaysReport.Of(bench, new Circumstances(Moment(clock)), StripReport.QuickEffort, QuickTrials, QuickDraws), Moment(clock));

    private static string? Named(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var found = ReachCommands.TargetOf(visit.Bench, form.Text("what"));
        refusals.AddRange(found.Refusals);
        return found.Ok ? found.Value.Id : null;
    }

    private static IResult Plan(Visit visit, TimeProvider clock, string? hours, string? alone)
    {
        var time = UsualHours;
        if (hours is { Length: > 0 } && !(double.TryParse(hours, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out time) && time > 0 && time <= MostHours))
            return Recording.Refused(visit, FormCollection.Empty, [new Refusal("hours at hand", $"\"{hours}\"", $"more than 0 and up to {MostHours} hours", "Say how long you have")]);
        var days = Days(visit, clock);
        var isAlone = alone is "yes" || hours is null;
        return new RazorComponentResult<PlanPage>(new
        {
            Visit = visit,
            Days = days,
            Wait = visit.Once(bench => WaitReport.Of(bench, new Circumstances(Moment(clock), isAlone), (long)(time * 3600), days.Tasks), (Moment(clock), time, isAlone)),
            Refit = visit.Once(bench => RefitReport.Of(bench, new Circumstances(Moment(clock)), StripReport.QuickEffort), Moment(clock)),
            Hours = time,
            Alone = isAlone,
        });
    }

    private static IReadOnlyList<Request> Equipment(Visit visit, IFormCollection form, List<Refusal> refusals)
    {
        var (from, until) = (Time(visit, form, "from", refusals), Time(visit, form, "until", refusals));
        return [new Tell(new EquipmentTold(form.Text("what"), form.Text("have") != "no", from, until))];
    }

    private static DateTimeOffset? Time(Visit visit, IFormCollection form, string field, List<Refusal> refusals)
    {
        var text = form.Text(field);
        if (text.Length == 0)
            return null;
        if (DateTime.TryParseExact(text, ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd HH:mm", "yyyy-MM-dd"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var local))
            return new DateTimeOffset(local, visit.Http.RequestServices.GetRequiredService<TimeProvider>().LocalTimeZone.GetUtcOffset(local));
        refusals.Add(new Refusal(field, $"\"{text}\"", "a time such as 2026-01-31 19:40", "Write it so, or leave it empty"));
        return null;
    }

    private static IResult Reach(Visit visit, TimeProvider clock, string? what)
    {
        var target = ReachTarget.Of(visit.Bench, what ?? "");
        if (!target.TryGet(out var found))
            return Recording.Refused(visit, FormCollection.Empty, target.Refusals);
        var ways = Ways(visit, Moment(clock));
        var answer = visit.Once(_ => ReachAnswered.Of(ways, found), (found.Id, ways.Circumstances.Now));
        return new RazorComponentResult<ReachPage>(new
        {
            Visit = visit,
            Target = found,
            At = $"reach?what={Uri.EscapeDataString(what!)}",
            answer.Way,
            answer.Why,
        });
    }

    /// <summary>The networks of the book, kept while nothing is recorded: a tap costs its search alone.</summary>
    private static BenchWays Ways(Visit visit, DateTimeOffset moment)
    {
        var rules = visit.Once(bench => new BenchRules(bench));
        return visit.Once(_ => new BenchWays(rules, new Circumstances(moment)), moment);
    }

    /// <summary>The way, or why there is none.</summary>
    private sealed record ReachAnswered(ReachReport? Way, WhyReport? Why)
    {
        public static ReachAnswered Of(BenchWays ways, ReachTarget target) =>
            ReachReport.Of(ways, target) is { } way ? new(way, null) : new(null, WhyReport.Of(ways, target));
    }
}
