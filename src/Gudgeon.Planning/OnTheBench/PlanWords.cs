using System.Globalization;
using Gudgeon.Journal;
using Gudgeon.Planning.Calendar;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>How plans are said, alike on a page and in a command.</summary>
public static class PlanWords
{
    /// <summary>Seconds as people say them: <c>40 min</c>, <c>3 h 20 min</c>.</summary>
    public static string Minutes(long seconds)
    {
        var minutes = (seconds + 59) / 60;
        return minutes < 60 ? $"{minutes} min" : minutes % 60 == 0 ? $"{minutes / 60} h" : $"{minutes / 60} h {minutes % 60} min";
    }

    /// <summary>The minutes of one step, with a word on whose they are; empty where nothing is done.</summary>
    public static string Minutes(BenchWork work) => Minutes(work.Minutes);

    /// <inheritdoc cref="Minutes(BenchWork)"/>
    public static string Minutes(Span minutes) => minutes.High <= 0 ? ""
        : string.Create(CultureInfo.InvariantCulture, $", {(minutes.IsGuess ? $"{minutes.Low:0.#} to {minutes.High:0.#} min, a guess" : $"{minutes.High:0.#} min, yours")}");

    /// <summary>Which refit this is.</summary>
    public static string RefitHead(RefitReport report) => report.IsOfWhatIsOff
        ? $"The refit of what is off now: {report.Steps.Length} steps."
        : $"Nothing is off yet. The refit after the whole strip: {report.Steps.Length} steps.";

    /// <summary>How long it takes, and how sure it is that no order takes less.</summary>
    public static string RefitTime(RefitReport report) => string.Create(CultureInfo.InvariantCulture,
        $"About {Minutes(report.Plan.TotalSeconds)}, of it {Minutes(report.Plan.SetupSeconds)} for turning, help and spanners. No order{(report.Stages.Length > 1 ? " that does first what can be done" : "")} takes less than {Minutes(report.Plan.BoundSeconds)}: at most {report.Plan.Gap * 100:0.0} % above the least. The minutes are those of taking off, one and a half to two times: common practice, no source.");

    /// <summary>From when the steps of a stage can be done, how many they are and what they take.</summary>
    public static string StageHead(BackStage stage) =>
        $"{(stage.IsHeld ? "Held, no day known" : stage.Day is { } day ? $"From {day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture)} on" : "Can be done now")}: {stage.Steps.Length} {(stage.Steps.Length == 1 ? "step" : "steps")}, about {Minutes(stage.Seconds)} of work";

    /// <summary>What the parts of a stage wait for, those for the same reasons together.</summary>
    public static IEnumerable<string> Waits(Bench bench, BackStage stage) => stage.Waits
        .GroupBy(w => string.Join("; ", w.Reasons))
        .Select(alike => $"{(stage.IsHeld ? "held" : "waits")}: {bench.Several(alike.Select(w => w.Part))}: {alike.Key}{HoldsUp([.. alike])}");

    /// <summary>What the dates of a plan on days leave out; null for nothing.</summary>
    public static string? LeftOut(Bench bench, DaysReport report) => report.Held.IsEmpty ? null
        : $"No day is known for what these wait for, so the dates leave it out: {bench.Several(report.Held.Select(w => w.Part))}.";

    private static string HoldsUp(BackWait[] waits) => waits.Max(w => w.HoldsUp) switch
    {
        0 => "",
        1 => " (1 other step behind it)",
        var most => $" ({(waits.Length == 1 ? "" : "up to ")}{most} other steps behind it)",
    };

    /// <summary>What a step asks for beyond time.</summary>
    public static string Extras(BenchWork work) => string.Concat(new[]
    {
        work.Persons > 1 ? $"; {work.Persons} persons" : "",
        work.Equipment.Count > 0 ? $"; needs {string.Join(", ", work.Equipment)}" : "",
        work.RunsOut.Length > 0 ? $"; opened: {work.RunsOut}" : "",
    });

    /// <summary>How sure it is that there is no shorter way.</summary>
    public static string Proof(ReachReport report) => report.IsProven
        ? "No way takes less work: proven over every alternative that the book knows."
        : $"No way takes less than {Minutes(report.BoundSeconds)}; whether this one is the least is not proven.";

    /// <summary>Why something cannot be had, never a bare no.</summary>
    public static IEnumerable<string> Why(WhyReport why)
    {
        var name = Capital(why.Target.Name);
        if (why.IsDone)
        {
            yield return $"{name}: nothing holds it, it is done already.";
            yield break;
        }

        if (why.Rules.Length > 0)
        {
            yield return $"{name}: these rules contradict each other, so it can never be reached. Strike out or correct one of them:";
            foreach (var rule in why.Rules)
                yield return $"  {rule}";
        }

        if (why.Reasons.Length > 0)
            yield return $"{name}: not as matters stand. {(why.Reasons.Length == 1 ? "One reason has" : $"{why.Reasons.Length} reasons have")} to go:";
        foreach (var reason in why.Reasons)
            yield return $"  {Capital(reason.Words)}{(reason.HoldsUp.Count > 0 ? $" (holds up: {string.Join(", ", reason.HoldsUp)})" : "")}";
        if (why.Looks is { } looks)
            yield return $"Or look: {string.Join(" ", looks.Facts.Select(f => f.Question))} If so, there is a way.";
        if (why.Way is { Steps.Length: > 0 } way)
            yield return why.CanNow ? $"{name}: nothing is in the way, it can be done now." : $"{name}: {way.Steps.Length} steps away, about {Minutes(way.Seconds)}{(way.IsGuess ? ", a guess" : "")}. Directly in the way:";
        else if (why.Way is not null)
            yield return $"{name}: nothing is in the way.";
        if (why.Way is { Steps.Length: > 0 } && !why.CanNow)
        {
            foreach (var rule in why.First)
                yield return $"  {Capital(rule)}";
        }
    }

    /// <summary>One thing worth doing while something is waited for.</summary>
    public static string Offer(WaitOffer offer) => $"{Capital(offer.Task.Title)}: {Worth(offer)}";

    /// <summary>How long it takes, what it opens, what it saves.</summary>
    public static string Worth(WaitOffer offer) => string.Concat(new[]
    {
        $"about {Minutes(offer.Task.Seconds)}",
        offer.FitsWhole ? "" : ", a beginning only",
        offer.Opens > 0 ? $"; opens {offer.Opens} {(offer.Opens == 1 ? "other" : "others")}" : "",
        offer.Saves > TimeSpan.Zero ? $"; all is done {Long(offer.Saves)} earlier than if nothing were done" : "",
    });

    /// <summary>A time as people say it, in days from a day on.</summary>
    public static string Long(TimeSpan time) => time.TotalDays >= 1 ? $"{time.TotalDays.ToString("0.#", CultureInfo.InvariantCulture)} days" : Minutes((long)time.TotalSeconds);

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
