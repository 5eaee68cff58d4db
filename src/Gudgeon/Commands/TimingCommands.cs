using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Commands;

/// <summary>The degree wheel and the valves.</summary>
public static class TimingCommands
{
    public static void Add(CommandLine line)
    {
        line.Root.Subcommands.Add(Timing(line));
        line.Root.Subcommands.Add(Lash(line));
    }

    private static Command Timing(CommandLine line)
    {
        var before = new Option<double?>("--before") { Description = "Disc at the piston stop, turned forwards", HelpName = "DEG" };
        var after = new Option<double?>("--after") { Description = "Disc at the piston stop, turned backwards", HelpName = "DEG" };
        var command = new Command("timing", "Shows true top and lobe centres; with both readings of the stop finds top. Example: gudgeon timing --before 322.5 --after 41") { before, after };
        line.OnBook(command, (parsed, book) =>
        {
            if (parsed.GetValue(before) is { } b && parsed.GetValue(after) is { } a)
                return line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), new Tell(new TopFound(b, a))));
            var (top, lobes) = book.Read(bench => (bench.Top?.Top(), TimingSheet.Of(bench)));
            var at = top is { Ok: true } ? top.Value.DiscAtTop.Degrees : (double?)null;
            var facts = new JsonObject
            {
                ["disc_at_top_deg"] = at,
                ["lobes"] = new JsonArray([.. lobes.Select(l => new JsonObject { ["lobe"] = l.Lobe, ["centre_deg"] = l.Centre.Centre.Degrees, ["spread_deg"] = l.Centre.Spread.Degrees, ["card_deg"] = l.WantedDeg })]),
            };
            return line.Desk.Show(line.Json(parsed), "timing", facts,
            [
                .. Cautions.ForPage("timing").Select(c => c.Text),
                at is { } deg ? $"Top dead centre at {Units.Show(Math.Round(deg, 2), "deg")} of the disc." : "The piston stop has not been read.",
                .. lobes.Select(l => $"{l.Lobe}: centre {Units.Show(Math.Round(l.Centre.Centre.Degrees, 2), "deg")} after top{(l.WantedDeg is { } wanted ? $", card {Units.Show(wanted, "deg")}" : "")}"),
            ]);
        });
        return command;
    }

    private static Command Lash(CommandLine line)
    {
        var command = new Command("lash", "Shows valve clearances and which shims to fit. Example: gudgeon lash");
        line.OnBook(command, (parsed, book) =>
        {
            var (valves, choice) = book.Read(bench => (LashSheet.Of(bench).Select(l => (l, Name: bench.NameOf(l.Valve))).ToArray(), LashSheet.Choose(bench)));
            var facts = new JsonObject
            {
                ["valves"] = new JsonArray([.. valves.Select(v => new JsonObject { ["valve"] = v.l.Valve, ["clearance_mm"] = v.l.ClearanceMm, ["shim_mm"] = v.l.ShimMm, ["least_mm"] = v.l.Low, ["most_mm"] = v.l.High })]),
                ["shims"] = new JsonArray([.. (choice.Ok ? choice.Value : []).Select(c => new JsonObject { ["valve"] = c.Valve, ["shim_mm"] = c.Shim.Millimetres, ["from"] = c.Source.ToString(), ["clearance_mm"] = c.Clearance.Millimetres })]),
            };
            return line.Desk.Show(line.Json(parsed), "lash", facts,
            [
                .. valves.Select(v => $"{v.Name}: {(v.l.ClearanceMm is { } c ? Units.Show(c, "mm") : "not read")}{(v.l.IsWithin switch { true => ", within", false => ", outside", _ => "" })}"),
                .. choice.Ok ? choice.Value.Select(c => $"{c.Valve}: {LashSheet.Words(c)}") : choice.Refusals.Select(r => r.ToString()),
            ]);
        });
        return command;
    }
}
