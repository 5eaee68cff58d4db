using System.Globalization;
using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(PageBegun), "page-begun")]
[JsonDerivedType(typeof(StartStepDone), "start-step-done")]
[JsonDerivedType(typeof(RunningInBegun), "running-in-begun")]
public abstract partial record Entry;

/// <summary>A piece of work that has a page of its own was begun: the first start, closing the job.</summary>
/// <param name="Page">As gates name it: <c>page:first-start</c>.</param>
public sealed record PageBegun(string Page) : Entry
{
    public override IEnumerable<string> About() => [Page];

    public override Refusal? Check(Bench bench) => bench.Gates.Any(g => g.ClosedBy.Contains(Page))
        ? null
        : new Refusal("page", $"\"{Page}\"", "a page that a gate names", "Look at the list of gates");

    public override string Words(Bench bench) => $"Begun: {bench.Gates.FirstOrDefault(g => g.ClosedBy.Contains(Page))?.Name ?? Page}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Begun.Add(Page);
}

/// <summary>A step of the first start was done.</summary>
public sealed record StartStepDone(string Step, string Note = "") : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => FirstStart.Steps.All(s => s.Id != Step)
        ? new Refusal("first start", $"\"{Step}\"", string.Join(", ", FirstStart.Steps.Select(s => s.Id)), "Choose one of them")
        : FirstStart.Steps.First(s => s.Id == Step).Phase != StartPhase.Prime && !bench.Begun.Contains(Journal.BeginPage.FirstStart)
        ? new Refusal("first start", "a step of the running engine", "the gate before the first start closed", "Close the gate first")
        : null;

    public override string Words(Bench bench) => $"First start: {FirstStart.Steps.FirstOrDefault(s => s.Id == Step)?.Do ?? Step}{(Note.Length > 0 ? $" {Note}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.StartSteps[Step] = Note;
}

/// <summary>Running in began on a day, with what the engine does in a week: from it reminders get their days.</summary>
/// <param name="Day">The day, year first.</param>
/// <param name="HoursPerWeek">Hours a week; null where kilometres are told.</param>
/// <param name="KmPerWeek">Kilometres a week.</param>
public sealed record RunningInBegun(string Day, double? HoursPerWeek, double? KmPerWeek) : Entry
{
    private const double Most = 100_000;

    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        !DateOnly.TryParseExact(Day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _) ? new Refusal("running in", $"\"{Day}\"", "a day, as 2026-05-01", "Write it so")
        : HoursPerWeek is null && KmPerWeek is null ? new Refusal("running in", "no rate", "hours or kilometres a week", "Say what it will do in a week")
        : new[] { HoursPerWeek, KmPerWeek }.Any(r => r is <= 0 or > Most or double.NaN) ? new Refusal("running in", "a rate out of reach", "more than 0 a week", "Look at the figure again")
        : null;

    public override string Words(Bench bench) =>
        $"Running in from {Day}{(HoursPerWeek is { } h ? $", {Units.Plain(h)} hours a week" : "")}{(KmPerWeek is { } km ? $", {Units.Plain(km)} km a week" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.RunningIn = this;

    /// <summary>When each thing falls due: the earlier of its hours and its distance at the rate that was told.</summary>
    public IReadOnlyList<(RunningInDue Due, DateOnly Day)> Plan()
    {
        var from = DateOnly.ParseExact(Day, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        return [.. FirstStart.RunningIn.Select(d => (d, from.AddDays(DaysTo(d))))];
    }

    /// <summary>Whole days until it falls due; at most a century.</summary>
    private int DaysTo(RunningInDue due)
    {
        var weeks = Math.Min(HoursPerWeek is { } hours ? due.Hours / hours : double.MaxValue, KmPerWeek is { } km ? due.Km / km : double.MaxValue);
        return (int)Math.Ceiling(Math.Min(36_500, 7 * weeks));
    }
}
