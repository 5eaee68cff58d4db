using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>What is to buy, and what the engine was built to.</summary>
public static class BuyCommands
{
    public static void Add(CommandLine line)
    {
        line.Root.Subcommands.Add(Buy(line));
        line.Root.Subcommands.Add(Built(line));
    }

    private static Command Buy(CommandLine line)
    {
        var thing = new Argument<string[]>("thing") { Description = "A part, the part of a joint whose fasteners are meant, or shim and its size; none lists all", Arity = ArgumentArity.ZeroOrMore };
        var ordered = new Option<int?>("--ordered") { Description = "So many in all are on order", HelpName = "N" };
        var hand = new Option<int?>("--at-hand") { Description = "So many came", HelpName = "N" };
        var buy = new Command("buy", "Lists what is to buy and how that stands, or says what was ordered or came. Example: gudgeon buy j-head.1 --at-hand 10") { thing, ordered, hand };
        line.OnBook(buy, (parsed, book) =>
        {
            var json = line.Json(parsed);
            if (parsed.GetValue(thing) is { Length: > 0 } words)
            {
                var found = book.Read(bench => Thing(bench, string.Join(' ', words)));
                if (!found.TryGet(out var id))
                    return line.Desk.Refuse(json, found.Refusals);
                Entry? entry = parsed.GetValue(hand) is { } came ? (book.Read(bench => bench.Engine.Parts.ContainsKey(id)) ? new PartRenewed(id) : new Bought(id, came))
                    : parsed.GetValue(ordered) is { } count ? new Ordered(id, count) : null;
                return entry is null
                    ? line.Desk.Refuse(json, [new Refusal("buy", "a thing and nothing said of it", "--ordered N or --at-hand N", "Say one of them")])
                    : line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(entry)));
            }

            var lines = book.Read(BuyList.Of);
            var facts = new JsonObject
            {
                ["lines"] = new JsonArray([.. lines.Select(l => new JsonObject { ["thing"] = l.Thing, ["what"] = l.What, ["need"] = l.Need, ["ordered"] = l.Ordered, ["at_hand"] = l.AtHand, ["why"] = l.Why, ["stand"] = l.Stand })]),
            };
            return line.Desk.Show(json, "buy", facts, lines.Select(l => $"{l.Stand,-8} {l.Need} x {l.What}: {l.Why} ({l.Thing})").DefaultIfEmpty("Nothing to buy."));
        });
        return buy;
    }

    /// <summary>A joint by its id or by the part that it holds where only its fasteners are wanted; a part that is itself on the list goes first.</summary>
    private static Outcome<string> Thing(Bench bench, string words)
    {
        var listed = BuyList.Of(bench).Select(l => l.Thing).ToArray();
        if (listed.Contains(words))
            return Outcome.Of(words);
        var part = Naming.Part(bench, words);
        return part.TryGet(out var id) && listed.Contains(id) ? part : Naming.Joint(bench, words);
    }

    private static Command Built(CommandLine line)
    {
        var part = new Argument<string[]>("part") { Description = "A part; none shows the sheet", Arity = ArgumentArity.ZeroOrMore };
        var with = new Option<string?>("--with") { Description = "Its size, grade or colour, as on the box", HelpName = "TEXT" };
        var batch = new Option<string?>("--batch") { Description = "Its batch", HelpName = "TEXT" };
        var built = new Command("built", "Shows what the engine was built to, or tells shell size and batch of a part. Example: gudgeon built main cap 3 --with \"0.25 undersize\" --batch 4711") { part, with, batch };
        line.OnBook(built, (parsed, book) =>
        {
            var json = line.Json(parsed);
            if (parsed.GetValue(part) is { Length: > 0 } words)
            {
                var found = book.Read(bench => Naming.Part(bench, string.Join(' ', words)));
                return found.TryGet(out var id)
                    ? line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(new BuiltWith(id, parsed.GetValue(with) ?? "", parsed.GetValue(batch) ?? ""))))
                    : line.Desk.Refuse(json, found.Refusals);
            }

            var rows = book.Read(BuiltSheet.Of);
            var facts = new JsonObject
            {
                ["rows"] = new JsonArray([.. rows.Select(r => new JsonObject { ["group"] = r.Group, ["what"] = r.What, ["figure"] = r.Figure, ["by"] = r.By, ["note"] = r.Note })]),
            };
            var lines = rows.GroupBy(r => r.Group).SelectMany(g => g
                .Select(r => $"  {r.What}: {r.Figure}{(r.By.Length > 0 ? $", {r.By}" : "")}{(r.Note.Length > 0 ? $" ({r.Note})" : "")}")
                .Prepend(g.Key));
            return line.Desk.Show(json, "built", facts, lines.DefaultIfEmpty("Nothing is recorded yet."));
        });
        return built;
    }
}
