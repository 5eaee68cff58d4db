using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Journal;

namespace Gudgeon.Commands;

/// <summary>Everything that the book holds against the work, by stable name.</summary>
public static class CheckCommand
{
    public static void Add(CommandLine line)
    {
        var back = new Option<bool>("--back") { Description = "Is it all back? Lists all that is off, undone, parted or capped" };
        var check = new Command("check", "Lists what the book holds against the work. Example: gudgeon check --back") { back };
        line.OnBook(check, (parsed, book) =>
        {
            var all = parsed.GetValue(back);
            var findings = all ? book.Read(AllBack.MissingFrom) : BenchFindings.Of(book);
            var facts = new JsonObject { ["findings"] = new JsonArray([.. findings.Select(f => f.Json())]) };
            var lines = findings.Select(f => f.ToString()).Append(findings.Count == 0 ? (all ? "All back: nothing is left over." : "No findings.") : $"{findings.Count} in all.");
            return line.Desk.Show(line.Json(parsed), all ? "all-back" : "findings", facts, lines, findings.Count == 0 ? Exit.Done : Exit.Refused);
        });
        line.Root.Subcommands.Add(check);

        var names = new Command("findings", "Lists the names that check uses, with what each means. Example: gudgeon findings");
        names.SetAction(parsed => line.Desk.Show(
            line.Json(parsed),
            "finding-names",
            new JsonObject { ["names"] = new JsonArray([.. FindingNames.Meanings.Select(m => new JsonObject { ["name"] = m.Key, ["means"] = m.Value })]) },
            FindingNames.Meanings.Select(m => $"{m.Key,-20} {m.Value}")));
        line.Root.Subcommands.Add(names);
    }
}
