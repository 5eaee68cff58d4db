using Gudgeon.Capture;
using Gudgeon.Engine;

namespace Gudgeon.Tests.Capture;

/// <summary>One way to say something, and what must be heard: facts, a question, or both.</summary>
internal sealed record SpokenWay(int Line, string Area, string Text, EngineModel Engine, EarContext Context, IReadOnlyList<string> Facts, bool Asks)
{
    public Heard Hear() => Ear.Hear(Text, Engine, Context);

    /// <summary>Every fact and no other, and a question only where one is due.</summary>
    public bool IsRight(Heard heard) =>
        Asks == heard.Doubts.Count > 0 && heard.Facts.Select(f => f.Code).Order(StringComparer.Ordinal).SequenceEqual(Facts.Order(StringComparer.Ordinal));
}

/// <summary>
/// Reads a table of ways to say things. <c>@ engine</c> and settings as in a story; <c>== AREA</c> begins an area;
/// <c>@ said NOTE</c> is heard before the rows below. <c>@ frame TEXT => FACTS</c> holds for the rows below, its <c>{}</c> stands for the phrase and for the expectation.
/// A row is <c>expectation = way; way; way</c>; facts are joined with <c>&amp;</c>. An expectation with a <c>?</c> in it is taken
/// as it stands, without its frame: those facts and a question. In a way, <c>//</c> parts the notes before from the one judged.
/// </summary>
internal static class PhraseTable
{
    /// <param name="anyWay">Takes what was said in unproven ways as well.</param>
    public static IEnumerable<SpokenWay> Read(string path, bool anyWay = false)
    {
        EngineModel? engine = null;
        var context = new EarContext { Now = Story.Now, AnyWay = anyWay };
        string area = "";
        (string Text, string Facts) frame = ("{}", "{}");
        int number = 0;
        foreach (string line in File.ReadLines(path))
        {
            number++;
            if (line.Length == 0 || line[0] == '#')
                continue;
            if (line.StartsWith("== ", StringComparison.Ordinal))
                area = line[3..];
            else if (line.StartsWith("@ engine ", StringComparison.Ordinal))
                (engine, context, frame) = (Story.Build(line[9..]), new EarContext { Now = Story.Now, AnyWay = anyWay }, ("{}", "{}"));
            else if (line.StartsWith("@ frame ", StringComparison.Ordinal))
                frame = Halves(line[8..], " => ", number);
            else if (line.StartsWith("@ said ", StringComparison.Ordinal))
                context = context.After(Ear.Hear(line[7..], engine!, context));
            else if (line.StartsWith("@ ", StringComparison.Ordinal))
                context = Story.Set(context, line[2..]);
            else
            {
                var (facts, ways) = Halves(line, " = ", number);
                bool asks = facts.Split(" & ").Contains("?");
                foreach (string way in ways.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
                {
                    string[] notes = frame.Text.Replace("{}", way, StringComparison.Ordinal).Split("//", StringSplitOptions.TrimEntries);
                    var after = notes[..^1].Aggregate(context, (c, n) => c.After(Ear.Hear(n, engine!, c)));
                    yield return new SpokenWay(number, area, notes[^1], engine!, after, [.. (asks ? facts : frame.Facts.Replace("{}", facts, StringComparison.Ordinal)).Split(" & ").Where(f => f != "?")], asks);
                }
            }
        }
    }

    private static (string Left, string Right) Halves(string line, string mark, int number) =>
        line.IndexOf(mark, StringComparison.Ordinal) is var at and > 0 ? (line[..at].Trim(), line[(at + mark.Length)..].Trim()) : throw new FormatException($"line {number}: no “{mark.Trim()}”");
}
