using System.CommandLine;
using System.Globalization;
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

        var left = new Command("left", "Where the work was left: what was done last, what stands half way. Example: gudgeon left");
        line.OnBook(left, (parsed, book) =>
        {
            var (where, doings) = book.Read(bench => WhereLeft.Of(bench) is { } w ? (w, w.Doings.Select(r => (r.Number, r.At, Words: r.Entry.Words(bench))).ToArray()) : ((WhereLeft?)null, []));
            var facts = new JsonObject
            {
                ["last"] = where?.Last.ToString("O", CultureInfo.InvariantCulture),
                ["done"] = new JsonArray([.. doings.Select(d => new JsonObject { ["number"] = d.Number, ["at"] = d.At.ToString("O", CultureInfo.InvariantCulture), ["words"] = d.Words })]),
                ["half_way"] = new JsonArray([.. (where?.HalfWay ?? []).Select(h => JsonValue.Create(h))]),
                ["open_questions"] = where?.OpenQuestions ?? 0,
            };
            var text = where is null ? ["Nothing has been done in this book yet."]
                : new[] { $"The last work was on {where.Last.ToString("dddd d MMMM yyyy, HH:mm", CultureInfo.InvariantCulture)}:" }
                    .Concat(doings.Select(d => $"{d.Number,5}  {d.Words}"))
                    .Concat(where.HalfWay.Count > 0 ? where.HalfWay : ["Nothing stands half way."])
                    .Concat(where.OpenQuestions > 0 ? [$"Open questions: {where.OpenQuestions}. gudgeon check lists them."] : []);
            return line.Desk.Show(line.Json(parsed), "left", facts, text);
        });
        line.Root.Subcommands.Add(left);

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
