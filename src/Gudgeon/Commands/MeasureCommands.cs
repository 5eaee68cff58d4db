using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Readings in, verdicts and budgets out.</summary>
public static class MeasureCommands
{
    public static void Add(CommandLine line)
    {
        line.Root.Subcommands.Add(Measure(line));
        line.Root.Subcommands.Add(Reading(line));
        line.Root.Subcommands.Add(VerdictCommands.Verdict(line));
        line.Root.Subcommands.Add(VerdictCommands.Budget(line));
        line.Root.Subcommands.Add(InstrumentCommands.Instrument(line));
        line.Root.Subcommands.Add(InstrumentCommands.Limit(line));
        line.Root.Subcommands.Add(SumsCommand.Of(line));
        line.Root.Subcommands.Add(WorkCommands.Fit(line));
        line.Root.Subcommands.Add(WorkCommands.Shape(line));
        line.Root.Subcommands.Add(WorkCommands.Repeats(line));
    }

    private static Command Measure(CommandLine line)
    {
        var part = new Argument<string?>("part") { Description = "The part", Arity = ArgumentArity.ZeroOrOne };
        var what = new Argument<string?>("characteristic") { Description = "What is read, as bore or main-journal", Arity = ArgumentArity.ZeroOrOne };
        var readings = new Argument<string[]>("readings") { Description = "Readings as SPOT=FIGURE, as top.across=86.012; a bare figure where there is one spot", Arity = ArgumentArity.ZeroOrMore };
        var place = new Option<int>("--place") { Description = "Which one along the part, as bore 3 of a block", DefaultValueFactory = _ => 1, HelpName = "N" };
        var with = new Option<string?>("--with") { Description = "Id of the instrument", HelpName = "ID" };
        var partC = new Option<string?>("--part-c") { Description = "Temperature of the part in °C", HelpName = "C" };
        var gaugeC = new Option<string?>("--gauge-c") { Description = "Temperature of the gauge in °C", HelpName = "C" };
        var meant = new Option<string?>("--meant") { Description = "Where a reading can be read in several ways: the one that is meant, in the words of the refusal", HelpName = "WORDS" };
        var by = new Option<string?>("--by") { Description = "Who took the readings", HelpName = "NAME" };
        var machined = new Option<string?>("--machined") { Description = "It was machined or renewed since, as this says: readings of earlier days no longer count", HelpName = "WHAT" };
        var notHere = new Option<string?>("--not-applicable") { Description = "It does not apply to this engine, because of this", HelpName = "WHY" };
        var everywhere = new Option<bool>("--everywhere") { Description = "With --not-applicable: on every part that carries it" };
        var command = new Command("measure", "Records readings; without any, lists what is read where on the part. Example: gudgeon measure block bore --place 3 top.across=86.012 top.along=86.004 --with bg") { part, what, readings, place, with, partC, gaugeC, meant, by, machined, notHere, everywhere };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            if (parsed.GetValue(part) is not { } words)
                return Started(line, json, book);
            var named = book.Read(bench => Naming.Part(bench, words));
            if (!named.TryGet(out var id))
                return line.Desk.Refuse(json, named.Refusals);
            if (parsed.GetValue(notHere) is { } why)
                return line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(new NotApplicable(parsed.GetValue(what) ?? "", parsed.GetValue(everywhere) ? [] : [id], why.Trim()))));
            if (parsed.GetValue(machined) is { } done)
                return line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new MeasureAfresh(id, parsed.GetValue(what) ?? "", parsed.GetValue(place), done)));
            if (parsed.GetValue(readings) is not { Length: > 0 } texts || parsed.GetValue(what) is not { } characteristic)
                return OfPart(line, json, book, id, parsed.GetValue(what));
            var faults = new List<Refusal>();
            var (partAt, gaugeAt) = (Figure(book, parsed, partC, "C", faults), Figure(book, parsed, gaugeC, "C", faults));
            if (faults.Count > 0)
                return line.Desk.Refuse(json, faults);
            var requests = texts.Select(t => t.Split('=', 2)).Select(t => (Request)new TakeReading(
                new Slot(id, characteristic, parsed.GetValue(place), t.Length == 2 ? t[0] : "one"), t[^1], parsed.GetValue(with), partAt, gaugeAt, parsed.GetValue(meant), parsed.GetValue(by))).ToArray();
            return Show(line, json, book, book.Submit(line.Desk.Sending(), requests));
        });
        return command;
    }

    /// <summary>Tells what was recorded, and asks about readings among it that look odd.</summary>
    internal static int Show(CommandLine line, bool json, Book book, Outcome<Reply> outcome) => line.Desk.Show(json, book, outcome, reply =>
    {
        var doubts = book.Read(bench => Doubts.Of(bench).Where(d => reply.Entries.Any(e => e.Number == d.Reading.Number)).ToArray());
        return (Json(doubts), doubts.Select(Question));
    });

    private static int Started(CommandLine line, bool json, Book book)
    {
        var (rows, doubts) = book.Read(bench => (new Assessor(bench).Started().Select(VerdictCommands.Row).ToArray(), Doubts.Of(bench)));
        var facts = Json(doubts);
        facts["figures"] = new JsonArray([.. rows.SelectMany(r => r.Json)]);
        return line.Desk.Show(json, "measured", facts,
            rows.SelectMany(r => r.Lines).Concat(doubts.Select(Question)).DefaultIfEmpty("Nothing is measured yet. See gudgeon measure PART for what can be."));
    }

    private static JsonObject Json(IEnumerable<Doubt> doubts) => new()
    {
        ["doubts"] = new JsonArray([.. doubts.Select(d => new JsonObject
        {
            ["reading"] = d.Reading.Number,
            ["part"] = d.Reading.Taken.Part,
            ["place"] = d.Reading.Taken.Place,
            ["characteristic"] = d.Reading.Taken.Characteristic,
            ["spot"] = d.Reading.Taken.Spot,
            ["value"] = d.Reading.Taken.Value,
            ["unit"] = d.Reading.Taken.Unit,
            ["why"] = d.Why,
            ["suggested"] = d.Suggested,
        })]),
    };

    private static string Question(Doubt doubt) =>
        $"Is that right? {doubt.Why} Answer with gudgeon reading {doubt.Reading.Number} {(doubt.Suggested is null ? "" : $"--meant ({doubt.ShownSuggestion}), ")}--stands or --aside WHY";

    private static int OfPart(CommandLine line, bool json, Book book, string part, string? what)
    {
        var there = book.Read(bench => bench.Places.On(bench.Engine.Parts[part])
            .Where(x => x.Characteristic.IsRead && (what is null || x.Characteristic.Id.StartsWith(what, StringComparison.OrdinalIgnoreCase))).ToArray());
        var facts = new JsonObject
        {
            ["part"] = part,
            ["characteristics"] = new JsonArray([.. there.Select(x => new JsonObject
            {
                ["characteristic"] = x.Characteristic.Id,
                ["name"] = x.Characteristic.Name,
                ["unit"] = x.Characteristic.Unit,
                ["places"] = x.Places.Count,
                ["spots"] = new JsonArray([.. x.Characteristic.Spots.Select(s => JsonValue.Create(s.Id))]),
            })]),
        };
        return line.Desk.Show(json, "measurable", facts, there.Select(x =>
            $"{x.Characteristic.Id,-24} {x.Characteristic.Name}{(x.Places.Count > 1 ? $", {x.Places.Count} places" : "")}: {string.Join(' ', x.Characteristic.Spots.Select(s => s.Id))}"));
    }

    private static Command Reading(CommandLine line)
    {
        var number = new Argument<long>("number") { Description = "Number of the entry that holds the reading" };
        var stands = new Option<bool>("--stands") { Description = "It was looked at again and stands" };
        var meant = new Option<bool>("--meant") { Description = "It was the slip that the book asked about: it counts as what the question named" };
        var aside = new Option<string?>("--aside") { Description = "It is not used, because of this; it stays in the book", HelpName = "WHY" };
        var command = new Command("reading", "Answers what the book asks about a reading that looks odd. Example: gudgeon reading 318 --stands") { number, stands, meant, aside };
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            var entry = parsed.GetValue(number);
            var answers = new List<Request>();
            if (parsed.GetValue(stands))
                answers.Add(new Tell(new ReadingStands(entry)));
            if (parsed.GetValue(meant))
                answers.Add(new MeanOtherwise(entry));
            if (parsed.GetValue(aside) is { } why)
                answers.Add(new Tell(new ReadingSetAside(entry, why)));
            return answers.Count == 1
                ? line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), answers))
                : line.Desk.Refuse(json, [new Refusal($"reading {entry}", answers.Count == 0 ? "no answer" : $"{answers.Count} answers", "one of --stands, --meant, --aside", "Say which")]);
        });
        return command;
    }

    /// <summary>A figure of an option, read as the pages read it: with either decimal mark and with its unit where one is typed.</summary>
    internal static double? Figure(Book book, ParseResult parsed, Option<string?> option, string unit, List<Refusal> faults)
    {
        if (parsed.GetValue(option) is not { } text)
            return null;
        var read = book.Read(bench => SpotText.Read(text, unit, bench.Units, null, option.Name));
        faults.AddRange(read.Refusals);
        return read.Ok ? read.Value : null;
    }
}
