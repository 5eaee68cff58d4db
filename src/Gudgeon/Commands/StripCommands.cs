using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Taking off, putting back, and what comes next.</summary>
public static class StripCommands
{
    public static void Add(CommandLine line)
    {
        line.Root.Subcommands.Add(Off(line));
        line.Root.Subcommands.Add(Fitted(line));
        line.Root.Subcommands.Add(Next(line));
        line.Root.Subcommands.Add(Done(line));
        line.Root.Subcommands.Add(Strike(line));
        line.Root.Subcommands.Add(Learn(line));
    }

    private static Argument<string[]> Words(string what) => new("name") { Description = what, Arity = ArgumentArity.OneOrMore };

    private static Option<string?> Override() => new("--override") { Description = "Close a gate over its findings, and why; it stands in the book for ever", HelpName = "REASON" };

    private static Option<string?> At() => new("--at") { Description = "When the work was done, as 2026-01-31 19:40; else now", HelpName = "TIME" };

    private static Command Off(CommandLine line)
    {
        var name = Words("The part, or the line");
        var fasteners = new Option<string[]>("--fasteners") { Description = "Count, size and where, as \"2 M6x22 bag 12\" or \"3 own holes\" or \"1 broken\"; may be repeated", HelpName = "LOT" };
        var to = new Option<string?>("--to") { Description = "Where the part went", HelpName = "PLACE" };
        var tag = new Option<string?>("--tag") { Description = "What is on the tag of a line", HelpName = "TEXT" };
        var some = new Option<bool>("--some") { Description = "Some fasteners are still in" };
        var at = At();
        var command = new Command("off", "Records a part as off, or a line as parted. Example: gudgeon off thermostat --fasteners \"2 M6x22 bag 12\" --to \"shelf 2\"") { name, fasteners, to, tag, some, at };
        line.OnBook(command, (parsed, book) =>
        {
            var words = string.Join(' ', parsed.GetRequiredValue(name));
            var request = book.Read(bench => Naming.Part(bench, words) is { Ok: true } part
                ? Lots(parsed.GetValue(fasteners) ?? []).Then(lots => Outcome.Of<Request>(new TakeOff(part.Value, lots, parsed.GetValue(to), null, !parsed.GetValue(some))))
                : Naming.Line(bench, words) is { Ok: true } parted
                ? Outcome.Of<Request>(new Tell(new LineParted(parted.Value, parsed.GetValue(tag) ?? "")))
                : Outcome.Refused<Request>(Naming.Part(bench, words).Refusals));
            return Submit(line, parsed, book, request, parsed.GetValue(at));
        });
        return command;
    }

    private static Command Fitted(CommandLine line)
    {
        var name = Words("The part, or the line");
        var count = new Option<int?>("--fasteners") { Description = "How many fasteners are in", HelpName = "N" };
        var fresh = new Option<int>("--new") { Description = "How many of them are new", HelpName = "N" };
        var how = new Option<string?>("--how") { Description = "Torque, angle, wrench, as you would write it", HelpName = "TEXT" };
        var some = new Option<bool>("--some") { Description = "Some fasteners are still to come" };
        var over = Override();
        var at = At();
        var command = new Command("fitted", "Records a part as back on, its fasteners as in, or a line as joined. Example: gudgeon fitted thermostat --fasteners 2") { name, count, fresh, how, some, over, at };
        line.OnBook(command, (parsed, book) =>
        {
            var words = string.Join(' ', parsed.GetRequiredValue(name));
            var request = book.Read(bench => Naming.Part(bench, words) is { Ok: true } part
                ? Outcome.Of<Request>(new PutBack(part.Value, parsed.GetValue(count), parsed.GetValue(fresh), !parsed.GetValue(some), parsed.GetValue(how) ?? "", parsed.GetValue(over)))
                : Naming.Line(bench, words) is { Ok: true } joined
                ? Outcome.Of<Request>(new Tell(new LineJoined(joined.Value)))
                : Outcome.Refused<Request>(Naming.Part(bench, words).Refusals));
            return Submit(line, parsed, book, request, parsed.GetValue(at));
        });
        return command;
    }

    private static Command Next(CommandLine line)
    {
        var back = new Option<bool>("--back") { Description = "What goes back on next, instead of what comes off" };
        var command = new Command("next", "Lists what can come off now, or go back on. Example: gudgeon next --back") { back };
        line.OnBook(command, (parsed, book) => parsed.GetValue(back) ? NextOn(line, parsed, book) : NextOff(line, parsed, book));
        return command;
    }

    private static int NextOff(CommandLine line, ParseResult parsed, Book book)
    {
        var (now, held) = book.Read(bench => (
            bench.CanComeOff().Where(p => bench.Part(p.Id).IsOn).Select(p => (p.Id, p.Name)).ToArray(),
            bench.HeldBack().Select(p => (p.Id, p.Name, Why: WhyNot.Words(bench, p.Id))).ToArray()));
        var facts = new JsonObject
        {
            ["now"] = new JsonArray([.. now.Select(p => new JsonObject { ["part"] = p.Id, ["name"] = p.Name })]),
            ["held"] = new JsonArray([.. held.Select(p => new JsonObject { ["part"] = p.Id, ["name"] = p.Name, ["why"] = p.Why })]),
        };
        return line.Desk.Show(line.Json(parsed), "next", facts,
        [
            $"Can come off now ({now.Length}): {string.Join(", ", now.Select(p => p.Name))}",
            .. held.Select(p => $"{p.Name}: {p.Why}"),
        ]);
    }

    private static int NextOn(CommandLine line, ParseResult parsed, Book book)
    {
        var steps = book.Read(bench =>
        {
            var waits = new RefitWaits(bench);
            return bench.WayBackOn().Select(s => (s.Part, Name: bench.NameOf(s.Part), Where: bench.Part(s.Part).Where.Words(bench.NameOf), Waits: s.WaitsFor.Select(bench.NameOf).ToArray(), Better: waits.Of(s.Part))).ToArray();
        });
        var facts = new JsonObject
        {
            ["next"] = new JsonArray([.. steps.Select(s => new JsonObject { ["part"] = s.Part, ["name"] = s.Name, ["where"] = s.Where, ["waits_for"] = new JsonArray([.. s.Waits.Select(w => JsonValue.Create(w))]), ["better_wait"] = new JsonArray([.. s.Better.Select(w => JsonValue.Create(w))]) })]),
        };
        return line.Desk.Show(line.Json(parsed), "next-back", facts, steps
            .Select(s => s.Waits.Length == 0 ? $"{s.Name}: {s.Where}{(s.Better.Count > 0 ? $"; had better wait: {string.Join("; ", s.Better)}" : "")}" : $"{s.Name}: after the {string.Join(", ", s.Waits)}")
            .DefaultIfEmpty("Every part is back on."));
    }

    private static Command Done(CommandLine line)
    {
        var name = Words("The operation");
        var undo = new Option<bool>("--back") { Description = "It was done the other way round: filled, refitted" };
        var note = new Option<string?>("--note") { Description = "Amount, look, anything", HelpName = "TEXT" };
        var over = Override();
        var at = At();
        var command = new Command("done", "Records something done to the whole engine. Example: gudgeon done drain the oil --note \"4.2 l\"") { name, undo, note, over, at };
        line.OnBook(command, (parsed, book) =>
        {
            var words = string.Join(' ', parsed.GetRequiredValue(name));
            var request = book.Read(bench => Naming.Operation(bench, words).Then(id => Outcome.Of<Request>(parsed.GetValue(undo)
                ? new UndoOperation(id, parsed.GetValue(note) ?? "", parsed.GetValue(over))
                : new Tell(new OperationDone(id, parsed.GetValue(note) ?? "")))));
            return Submit(line, parsed, book, request, parsed.GetValue(at));
        });
        return command;
    }

    private static Command Learn(CommandLine line)
    {
        var name = Words("What could not be got at: a part or a line");
        var needs = new Option<string[]>("--first") { Description = "What had to be off or parted first; may be repeated", HelpName = "NAME", Required = true };
        var why = new Option<string?>("--why") { Description = "Why", HelpName = "TEXT" };
        var at = At();
        var command = new Command("learn", "Keeps what had to come off to get at something; it governs the refit. Example: gudgeon learn exhaust manifold --first \"dipstick tube\"") { name, needs, why, at };
        line.OnBook(command, (parsed, book) =>
        {
            var request = book.Read(bench => Naming.Thing(bench, string.Join(' ', parsed.GetRequiredValue(name))).Then(target =>
            {
                var found = parsed.GetRequiredValue(needs).Select(n => Naming.Thing(bench, n)).ToArray();
                return found.FirstOrDefault(f => !f.Ok) is { } unknown
                    ? Outcome.Refused<Request>(unknown.Refusals)
                    : Outcome.Of<Request>(new Tell(new AccessLearned(target, [.. found.Select(f => f.Value)], parsed.GetValue(why) ?? "")));
            }));
            return Submit(line, parsed, book, request, parsed.GetValue(at));
        });
        return command;
    }

    private static Command Strike(CommandLine line)
    {
        var number = new Argument<long>("number") { Description = "Number of the entry" };
        var why = new Option<string?>("--why") { Description = "Why it does not count", HelpName = "TEXT" };
        var command = new Command("strike", "Strikes out an entry; it stays in the journal. Example: gudgeon strike 41 --why \"wrong bank\"") { number, why };
        line.OnBook(command, (parsed, book) =>
            Submit(line, parsed, book, Outcome.Of<Request>(new StrikeOut(parsed.GetRequiredValue(number), parsed.GetValue(why) ?? "")), null));
        return command;
    }

    private static int Submit(CommandLine line, ParseResult parsed, Book book, Outcome<Request> request, string? at)
    {
        var json = line.Json(parsed);
        if (at is not null && line.Desk.When(at) is null)
        {
            return line.Desk.Refuse(json, [new Refusal("--at", $"\"{at}\"", "a time such as 2026-01-31 19:40", "Write it so")]);
        }

        return request.TryGet(out var good)
            ? line.Desk.Show(json, book, book.Submit(line.Desk.Sending(at), good))
            : line.Desk.Refuse(json, request.Refusals);
    }

    /// <summary>Reads <c>2 M6x22 bag 12</c>: a count, a size if there is one, and where.</summary>
    private static Outcome<IReadOnlyList<OutLot>> Lots(IReadOnlyList<string> texts)
    {
        var lots = new List<OutLot>();
        foreach (var text in texts)
        {
            var words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            if (words.Length == 0 || !int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count < 1)
            {
                return Outcome.Refused<IReadOnlyList<OutLot>>(new Refusal("--fasteners", $"\"{text}\"", "a count first, such as \"2 M6x22 bag 12\"", "Write the count first"));
            }

            var size = words.Length > 1 && IsSize(words[1]) ? words[1] : "";
            var rest = string.Join(' ', words.Skip(size.Length > 0 ? 2 : 1));
            lots.Add(rest switch
            {
                "lost" => new OutLot(count, size, Fate: Fate.Lost),
                "broken" => new OutLot(count, size, Fate: Fate.Broken),
                _ => new OutLot(count, size, "", rest.Length > 0 ? rest : null),
            });
        }

        return Outcome.Of<IReadOnlyList<OutLot>>(lots);
    }

    private static bool IsSize(string word) =>
        (word.Length > 1 && word[0] is 'M' or 'm' && char.IsAsciiDigit(word[1])) || (char.IsAsciiDigit(word[0]) && (word.Contains('/', StringComparison.Ordinal) || word.Contains('-', StringComparison.Ordinal)));
}
