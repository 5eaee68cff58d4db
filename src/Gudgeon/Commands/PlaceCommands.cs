using System.CommandLine;
using System.CommandLine.Parsing;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Where parts go while they are off: put somewhere, away at a shop and back, scrapped, renewed.</summary>
public static class PlaceCommands
{
    public static void Add(CommandLine line)
    {
        var to = new Option<string>("--to") { Description = "Bag, tray, box, shelf", HelpName = "PLACE", Required = true };
        AddOne(line, "put", "Says where a part that is off is. Example: gudgeon put starter --to \"shelf 2\"", [to], (parsed, _, part) => new PartPut(part, parsed.GetRequiredValue(to)));

        var shop = new Option<string>("--to") { Description = "The shop", HelpName = "SHOP", Required = true };
        var work = new Option<string?>("--for") { Description = "What is done there", HelpName = "TEXT" };
        var due = new Option<string?>("--due") { Description = "When it is promised, as 2026-01-31", HelpName = "DAY" };
        AddOne(line, "send", "Sends a part to a shop. Example: gudgeon send block --to \"machine shop\" --for \"bore and hone\" --due 2026-01-31", [shop, work, due], (parsed, _, part) =>
            new PartSent(part, parsed.GetRequiredValue(shop), parsed.GetValue(work) ?? "", line.Desk.When(parsed.GetValue(due))));

        var back = new Option<string?>("--to") { Description = "Where it lies now", HelpName = "PLACE" };
        AddOne(line, "returned", "Says that a part came back from a shop; it is measured before it counts. Example: gudgeon returned block", [back], (parsed, bench, part) =>
            new PartReturned(part, bench.Part(part).Where.Name, parsed.GetValue(back)));

        var why = new Option<string?>("--why") { Description = "Why", HelpName = "TEXT" };
        AddOne(line, "scrap", "Says that a part will not be used again. Example: gudgeon scrap \"piston 2\" --why scuffed", [why], (parsed, _, part) =>
            new PartScrapped(part, parsed.GetValue(why) ?? ""));

        var place = new Option<string?>("--to") { Description = "Where it lies", HelpName = "PLACE" };
        AddOne(line, "renew", "Says that a new part is at hand in place of the old one. Example: gudgeon renew \"piston 2\" --to \"box 4\"", [place], (parsed, _, part) =>
            new PartRenewed(part, parsed.GetValue(place)));
    }

    private static void AddOne(CommandLine line, string name, string description, IReadOnlyList<Option> options, Func<ParseResult, Bench, string, Entry> entry)
    {
        var words = new Argument<string[]>("name") { Description = "The part", Arity = ArgumentArity.OneOrMore };
        var command = new Command(name, description) { words };
        foreach (var option in options)
        {
            command.Options.Add(option);
        }

        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            if (options.FirstOrDefault(o => o.Name == "--due") is Option<string?> day && parsed.GetValue(day) is { } typed && line.Desk.When(typed) is null)
            {
                return line.Desk.Refuse(json, [new Refusal("--due", $"\"{typed}\"", "a day such as 2026-01-31", "Write it so")]);
            }

            var request = book.Read(bench => Naming.Part(bench, string.Join(' ', parsed.GetRequiredValue(words))).Then(part => Outcome.Of(entry(parsed, bench, part))));
            return request.TryGet(out var told)
                ? line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(told)))
                : line.Desk.Refuse(json, request.Refusals);
        });
        line.Root.Subcommands.Add(command);
    }
}
