using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>The catalogue of the sums.</summary>
internal static class SumsCommand
{
    public static Command Of(CommandLine line)
    {
        var find = new Argument<string?>("word") { Description = "Only those with this word in them", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("sums", "Lists every sum with its formula, where it holds and its source. Example: gudgeon sums torque") { find };
        command.SetAction(parsed =>
        {
            var word = parsed.GetValue(find) ?? "";
            var sums = SumCatalogue.All.Where(s => $"{s.Id} {s.Title}".Contains(word, StringComparison.OrdinalIgnoreCase)).ToArray();
            var facts = new JsonObject
            {
                ["sums"] = new JsonArray([.. sums.Select(s => new JsonObject
                {
                    ["id"] = s.Id,
                    ["title"] = s.Title,
                    ["formula"] = s.Formula,
                    ["unit"] = s.ResultUnit,
                    ["valid"] = s.ValidRange,
                    ["source"] = s.Source,
                    ["inputs"] = new JsonArray([.. s.Inputs.Select(i => new JsonObject { ["symbol"] = i.Symbol, ["meaning"] = i.Meaning, ["unit"] = i.Unit })]),
                    ["check"] = new JsonObject { ["given"] = s.Worked.Given, ["expected"] = s.Worked.Expected, ["origin"] = s.Worked.Origin },
                })]),
            };
            return line.Desk.Show(line.Json(parsed), "sums", facts, sums.SelectMany(s => new[] { $"{s.Id}: {s.Title}", $"    {s.Formula}  [{s.ResultUnit}]", $"    {s.ValidRange}. Source: {s.Source}" }).DefaultIfEmpty("No sum has that word."));
        });
        return command;
    }
}
