using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Capture;

/// <summary>
/// A line that somebody said, into the book: heard, turned into requests, decided, recorded. The page's box and the command
/// <c>note</c> both come through here.
/// </summary>
public static class Telling
{
    internal static Refusal NoWords { get; } = new("line", "nothing", "a few words", "Say what you did");

    /// <summary>Records the line with all that was understood of it; what was not understood is kept as an open question.</summary>
    /// <param name="choices">What was left out or settled before, when its pieces were looked at; null for none.</param>
    public static Outcome<Reply> Record(Book book, string text, Sending sending, Choices? choices = null)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return Outcome.Refused<Reply>(NoWords);
        }

        var (said, requests) = book.Read(bench =>
        {
            var sifted = Hear(bench, text, sending.At, choices ?? Choices.None);
            return (Hearing.SaidOf(sifted.All), Hearing.ToRequests(sifted, bench, sending.At.Offset));
        });
        return book.Submit(sending, said, requests);
    }

    /// <summary>What a line comes to as the book stands, with the choices made. Records nothing.</summary>
    public static Sifted Hear(Bench bench, string text, DateTimeOffset now, Choices choices) =>
        Sifted.Of(SpokenReadings.Heeded(Ear.Hear(text, bench.Engine, Context(bench, now)), bench), choices);

    /// <summary>Does now what the next line would wait for.</summary>
    public static void MakeReady(Bench bench, DateTimeOffset now) => Ear.MakeReady(bench.Engine, Habits(bench, now));

    /// <summary>What the ear must know besides the words, out of what was recorded so far.</summary>
    internal static EarContext Context(Bench bench, DateTimeOffset now)
    {
        var context = Habits(bench, now) with
        {
            LastThing = Last(bench, e => e.About().FirstOrDefault(bench.Engine.Parts.ContainsKey) ?? PartOfJoint(bench, e)),
            LastJoint = Last(bench, e => PartOfJoint(bench, e)),
            LastAlone = bench.Told.LastOrDefault(r => r.Entry is not Said && r.Entry.About().Any(bench.Engine.Parts.ContainsKey))?.Entry.About().Count(bench.Engine.Parts.ContainsKey) == 1,
            Short = Lacking(bench),
            Fitting = bench.Told.LastOrDefault(r => r.Entry is PartOff or PartOn or FastenersOut or FastenersIn or LineParted)?.Entry is PartOn or FastenersIn,
        };

        // "Same again" means the last line that was said, so that line is heard once more as if nothing were off yet.
        if (bench.Told.LastOrDefault(r => r.Entry is Said) is not { Entry: Said last } said)
            return context;
        var heard = Ear.Hear(last.Text, bench.Engine, context with { Off = new HashSet<string>() });
        var open = bench.Told.Where(r => r.Act == said.Act).Select(r => r.Entry).OfType<Journal.Asked>().Select(a => a.Why).ToHashSet();
        var after = context.After(heard);
        return context with { Last = [.. heard.Facts.Where(f => !open.Contains(Hearing.WhyOpen(Sifted.Tapped, f)))], Sought = after.Sought, LastOf = after.LastOf is { } of && of.Ids.Contains(context.LastThing ?? "") ? of : null, LastPlace = after.LastPlace };
    }

    /// <summary>How this owner speaks and what is off, without what was said last.</summary>
    internal static EarContext Habits(Bench bench, DateTimeOffset now) => new()
    {
        Now = now,
        Taught = bench.Taught.Where(t => t.Key != "mil").ToDictionary(t => t.Key, t => t.Value),
        Ways = bench.Ways,
        MilIsMillimetre = bench.Taught.TryGetValue("mil", out string? mil) ? mil == "mm" : null,
        Unit = bench.Units == Gudgeon.Sums.Quantities.BookUnits.Inch ? BookUnit.Inch : BookUnit.Metric,
        Off = bench.Engine.Parts.Keys.Where(p => !bench.Part(p).IsOn).ToHashSet(),
    };

    /// <summary>What was told as missing and never as found, the last one last.</summary>
    private static IReadOnlyList<Missing> Lacking(Bench bench)
    {
        var lacking = new List<Missing>();
        foreach (var noted in bench.Told.Select(r => r.Entry).OfType<Journal.Noted>())
        {
            if (noted.Mark == "found")
                lacking.RemoveAll(m => m.Thing.Ids.Contains(noted.About().FirstOrDefault() ?? ""));
            else if (noted.Mark == "missing" && noted.About().FirstOrDefault(bench.Engine.Parts.ContainsKey) is { } id)
                lacking.Add(new Missing(new Thing(ThingSort.Fasteners, bench.Engine.Parts[id].Kind, [id], bench.Engine.Parts[id].Name) { Fastener = "bolt" }, [new Lot { Count = 1, Fastener = "bolt" }]));
        }

        return lacking;
    }

    private static string? Last(Bench bench, Func<Entry, string?> of) =>
        bench.Told.Reverse().Take(50).Select(r => of(r.Entry)).FirstOrDefault(id => id is not null);

    private static string? PartOfJoint(Bench bench, Entry entry) =>
        entry.About().Where(bench.Engine.Joints.ContainsKey).Select(id => bench.Engine.Joints[id].Part).FirstOrDefault();
}
