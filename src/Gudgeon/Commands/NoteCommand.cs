using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Capture;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>A line as people say it.</summary>
public static class NoteCommand
{
    public static void Add(CommandLine line)
    {
        var words = new Argument<string[]>("words") { Description = "What you did, as you would say it", Arity = ArgumentArity.OneOrMore };
        var at = new Option<string?>("--at") { Description = "When the work was done, as 2026-01-31 19:40; else now", HelpName = "TIME" };
        var look = new Option<bool>("--try") { Description = "Shows what the line comes to and records nothing" };
        var without = new Option<string[]>("--without") { Description = "A piece that is not so, by the code that --try shows: it becomes a question", HelpName = "CODE" };
        var meant = new Option<string[]>("--meant") { Description = "Which reading of a question is meant, by the code that --try shows", HelpName = "CODE" };
        var all = new Option<bool>("--meant-all") { Description = "All that is only offered is meant" };
        var note = new Command("note", "Records a line as you say it; what is not understood is kept as a question. Example: gudgeon note \"thermostat off, two M6 by 22, bag 12\"") { words, at, look, without, meant, all };
        line.OnBook(note, (parsed, book) =>
        {
            var json = line.Json(parsed);
            var when = parsed.GetValue(at);
            if (when is not null && line.Desk.When(when) is null)
                return line.Desk.Refuse(json, [new Refusal("--at", $"\"{when}\"", "a time such as 2026-01-31 19:40", "Write it so")]);
            string text = string.Join(' ', parsed.GetRequiredValue(words));
            if (string.IsNullOrWhiteSpace(text))
                return line.Desk.Refuse(json, [Telling.NoWords]);
            var sending = line.Desk.Sending(when);
            var choices = new Choices([.. (parsed.GetValue(without) ?? []).Select(PieceKey.Read)], [.. (parsed.GetValue(meant) ?? []).Select(PieceKey.Read)]);
            if (parsed.GetValue(all))
                choices = choices with { Meant = [.. choices.Meant, .. book.Read(bench => Telling.Hear(bench, text, sending.At, Choices.None)).Offered.Select(o => PieceKey.Of(o.Doubt, o.Doubt.Readings[0]))] };
            var sifted = book.Read(bench => Telling.Hear(bench, text, sending.At, choices));

            // Who types a code is still there to type it again: nothing has to be kept as a question.
            return sifted.Unfit.Count > 0
                ? line.Desk.Refuse(json, [.. sifted.Unfit.Select(key => new Refusal("--without or --meant", $"\"{key.Code}\"", string.Join(", ", Codes(sifted.All)), "Look with --try and name it as shown there"))])
                : parsed.GetValue(look) ? book.Read(bench => Show(line, json, sifted, f => Hearing.SpotsOf(f, sifted.All, bench)))
                : MeasureCommands.Show(line, json, book, Telling.Record(book, text, sending, choices));
        });
        line.Root.Subcommands.Add(note);
    }

    private static IEnumerable<string> Codes(Heard heard) => heard.Facts.Select(f => f.Code).Concat(heard.Doubts.SelectMany(d => d.Readings).Select(r => r.Code)).DefaultIfEmpty("none: the line has no pieces");

    private static int Show(CommandLine line, bool json, Sifted sifted, Func<Fact, IReadOnlyList<string>> spots)
    {
        var heard = sifted.All;
        var facts = new JsonObject
        {
            ["pieces"] = new JsonArray([.. heard.Facts.Select(f => new JsonObject { ["code"] = f.Code, ["echo"] = f.Echo, ["left_out"] = sifted.IsLeft(f), ["spots"] = new JsonArray([.. spots(f).Select(s => JsonValue.Create(s))]) })]),
            ["questions"] = new JsonArray([.. heard.Doubts.Select(d => new JsonObject
            {
                ["words"] = d.Words,
                ["question"] = d.Question,
                ["readings"] = new JsonArray([.. d.Readings.Select(r => new JsonObject { ["code"] = r.Code, ["echo"] = r.Echo, ["chosen"] = ReferenceEquals(sifted.Settled.GetValueOrDefault(d), r) })]),
            })]),
            ["unused"] = new JsonArray([.. heard.UnusedWords.Select(w => JsonValue.Create(w))]),
        };
        var lines = heard.Facts.SelectMany(f => spots(f).Select(s => $"    on the sheet: {s}").Prepend($"{(sifted.IsLeft(f) ? "not this: " : "")}{f.Echo}    --without \"{f.Code}\"")).ToList();
        foreach (var doubt in heard.Doubts)
        {
            lines.Add($"? \"{doubt.Words}\": {doubt.Question}");
            lines.AddRange(doubt.Readings.Select(r => $"    {(ReferenceEquals(sifted.Settled.GetValueOrDefault(doubt), r) ? "meant: " : "")}{r.Echo}    --meant \"{r.Code}\""));
        }

        if (heard.Unused.Count > 0)
            lines.Add($"Not used: {string.Join(", ", heard.UnusedWords.Select(w => $"\"{w}\""))}");
        return line.Desk.Show(json, "heard", facts, lines.Append("Nothing is recorded."));
    }
}
