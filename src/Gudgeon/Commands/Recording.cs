using System.Text.Json.Nodes;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Tells what was recorded, in the book's own words, with the number to strike it out by.</summary>
public static class Recording
{
    public static int Show(this Desk desk, bool json, Book book, Outcome<Reply> outcome, Func<Reply, (JsonObject Facts, IEnumerable<string> Lines)>? beside = null)
    {
        if (!outcome.TryGet(out var reply))
        {
            return desk.Refuse(json, outcome.Refusals);
        }

        var told = book.Read(bench => reply.Entries.Select(r => (r.Number, Words: r.Entry.Words(bench))).ToArray());
        var facts = new JsonObject
        {
            ["recorded"] = new JsonArray([.. told.Select(t => new JsonObject { ["number"] = t.Number, ["words"] = t.Words })]),
            ["was_there"] = reply.WasThere,
        };
        var hint = told.Length == 0 ? [] : new[] { $"Wrong? gudgeon strike {told[^1].Number}" };
        var (also, lines) = beside?.Invoke(reply) ?? ([], []);
        foreach (var (name, value) in also)
            facts[name] = value?.DeepClone();
        return desk.Show(json, "recorded", facts, told.Select(t => $"{t.Number,5}  {t.Words}").Concat(hint).Concat(lines));
    }

    public static JsonObject Json(this Finding finding) => new()
    {
        ["name"] = finding.Name,
        ["about"] = finding.About,
        ["where"] = finding.Where,
        ["met"] = finding.Met,
        ["do"] = finding.Do,
    };
}
