using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Journal;

namespace Gudgeon.Commands;

/// <summary>What is off and where, and where a thing is.</summary>
public static class AccountCommands
{
    public static void Add(CommandLine line)
    {
        var account = new Command("account", "Lists what is off and where, which fasteners are short, what has no place. Example: gudgeon account");
        line.OnBook(account, (parsed, book) =>
        {
            var (lines, short_) = book.Read(bench => (
                Account.Of(bench).Select(l => (l, Where: l.Where.Words(bench.NameOf))).ToArray(),
                BenchFindings.Of(bench).Where(f => f.Name is FindingNames.CountShort or FindingNames.FastenersUnplaced or FindingNames.PartUnplaced or FindingNames.NotCounted).ToArray()));
            var facts = new JsonObject
            {
                ["off"] = new JsonArray([.. lines.Select(l => Json(l.l, l.Where))]),
                ["short"] = new JsonArray([.. short_.Select(f => f.Json())]),
            };
            var text = lines.Select(l => $"{l.l.What}: {l.Where}")
                .Concat(short_.Select(f => f.ToString()))
                .DefaultIfEmpty("Everything is on the engine.");
            return line.Desk.Show(line.Json(parsed), "account", facts, text);
        });
        line.Root.Subcommands.Add(account);

        var words = new Argument<string[]>("words") { Description = "A place, part, size or tag", Arity = ArgumentArity.OneOrMore };
        var find = new Command("find", "Finds a thing or what is in a place. Example: gudgeon find bag 12") { words };
        line.OnBook(find, (parsed, book) =>
        {
            var wanted = string.Join(' ', parsed.GetRequiredValue(words));
            var found = book.Read(bench => Account.Find(bench, wanted).Select(l => (l, Where: l.Where.Words(bench.NameOf))).ToArray());
            var facts = new JsonObject { ["found"] = new JsonArray([.. found.Select(l => Json(l.l, l.Where))]) };
            return line.Desk.Show(
                line.Json(parsed),
                "found",
                facts,
                found.Select(l => $"{l.l.What}: {l.Where}").DefaultIfEmpty($"Nothing answers to \"{wanted}\"."),
                found.Length > 0 ? Exit.Done : Exit.Refused);
        });
        line.Root.Subcommands.Add(find);
    }

    private static JsonObject Json(AccountLine entry, string where) => new()
    {
        ["thing"] = entry.Thing,
        ["what"] = entry.What,
        ["count"] = entry.Count,
        ["size"] = entry.Size,
        ["spot"] = entry.Where.Spot.ToString(),
        ["where"] = where,
    };
}
