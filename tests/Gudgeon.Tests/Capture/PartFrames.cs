using Gudgeon.Capture;
using Gudgeon.Engine;

namespace Gudgeon.Tests.Capture;

/// <summary>One word for a part, in a sentence, and the kinds of part that it may stand for.</summary>
internal sealed record PartFrame(string Engine, string Kind, string Text, string Verb, IReadOnlyList<string> Kinds)
{
    /// <summary>A fact of this sort about such a part, or a question that offers one: which of several is meant may be open. A rod goes back on by its cap.</summary>
    public bool IsRight(Heard heard) =>
        heard.Facts.Concat(heard.Doubts.SelectMany(d => d.Readings).SelectMany(r => r.Facts)).Any(f => Told(f) is { } told && told.Verb == Verb && (Kinds.Contains(told.Thing.Kind) || (Kind == "rod" && told is { Verb: "on", Thing.Kind: "rod-cap" })));

    private static (string Verb, Thing Thing)? Told(Gudgeon.Capture.Fact fact) => fact switch
    {
        Off off => ("off", off.Thing),
        On on => ("on", on.Thing),
        Damaged damaged => ("damaged", damaged.Thing),
        Put put => ("put", put.Thing),
        ToBuy buy => ("buy", buy.Thing),
        Missing missing => ("missing", missing.Thing),
        _ => null,
    };
}

/// <summary>
/// Every word that the tables have for every kind of part, in the singular and, where an engine has several, the plural,
/// in six sentences each, on the first of some engines that has such a part.
/// </summary>
internal static class PartFrames
{
    private static readonly (string One, string Many, string Verb)[] Frames =
    [
        ("{} off", "{} off", "off"),
        ("the {} is cracked", "the {} are cracked", "damaged"),
        ("the {} is in tray four", "the {} are in tray four", "put"),
        ("need a new {}", "need new {}", "buy"),
        ("put the {} back on", "put the {} back on", "on"),
        ("the {} is missing", "the {} are missing", "missing"),
    ];

    private static readonly string[] Engines =
    [
        "n=4 fuel=port opt=starter,alternator,steering,aircon,oilcooler,egr,vacpump,fan,oiljets,secair ign=coil",
        "layout=vee n=8 vt=ohv valves=1+1 fuel=carb ign=dist opt=starter,alternator,fan,mechpump",
        "n=4 vt=sohc valves=1+1 act=rocker drive=belt fuel=diesel ind=turbo opt=starter,alternator,vacpump",
        "layout=single vt=ohv valves=1+1 case=split cyl=barrel cool=air fuel=carb crk=built fw=none ign=magneto opt=",
        "layout=flat n=4 vt=ohv valves=1+1 case=split cyl=barrel cool=air fuel=carb opt=starter,alternator,mechpump",
        "n=4 cyl=wet fuel=diesel vt=ohv valves=1+1 drive=gears case=bedplate bal=2 opt=starter,alternator",
        "n=4 vt=dohc act=finger lash=hydraulic drive=belt fuel=port ind=super vvt=both opt=starter,alternator",
        "n=4 vt=sohc valves=1+1 act=rocker drive=shaft case=tunnel cyl=wet fuel=carb lube=dry opt=starter",
        "layout=single vt=ohv valves=1+1 case=bedplate cyl=barrel cool=air fuel=carb opt=",
    ];

    public static IEnumerable<PartFrame> All()
    {
        var engines = Engines.Select(e => (Answers: e, Model: Story.Build(e))).ToList();
        var words = Vocabulary.Words.Where(w => w.Sort == WordSort.Part).ToList();
        var kinds = words.SelectMany(w => w.Spoken.Select(s => (Word: s.ToLowerInvariant(), w.Kind))).ToLookup(w => w.Word, w => w.Kind);
        foreach (var term in words)
        {
            if (engines.FirstOrDefault(e => e.Model.Parts.Values.Any(p => p.Kind == term.Kind && (Vocabulary.Of(term.Kind).Count == 1 || p.Name.Contains(term.British, StringComparison.OrdinalIgnoreCase)))) is not { Model: { } model } engine)
                continue;
            bool several = model.Parts.Values.Count(p => p.Kind == term.Kind) > 1;
            foreach (string word in term.Spoken.Select(s => s.ToLowerInvariant()).Where(w => !w.Contains('/') && !MoreWords.TooPlain.Contains(w)))
            {
                foreach (var (one, many, verb) in Frames)
                {
                    yield return new PartFrame(engine.Answers, term.Kind, one.Replace("{}", word, StringComparison.Ordinal), verb, [.. kinds[word].Distinct()]);
                    if (several)
                        yield return new PartFrame(engine.Answers, term.Kind, many.Replace("{}", word.EndsWith('s') ? word : Vocabulary.Plural(word), StringComparison.Ordinal), verb, [.. kinds[word].Distinct()]);
                }
            }
        }
    }
}
