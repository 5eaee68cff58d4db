using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

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
        var lobe = new Option<string?>("--lobe") { Description = "Reads a lobe: its name; with --lift, --opening, --closing", HelpName = "NAME" };
        var lift = new Option<double>("--lift") { Description = "With --lobe: lift in mm at both readings", HelpName = "MM" };
        var opening = new Option<double>("--opening") { Description = "With --lobe: crank degrees after top", HelpName = "DEG" };
        var closes = new Option<double>("--closing") { Description = "With --lobe: crank degrees after top", HelpName = "DEG" };
        var card = new Option<double?>("--card") { Description = "With --lobe: lobe centre on the cam's card", HelpName = "DEG" };
        var teeth = new Option<int?>("--teeth") { Description = "The drive: teeth of the wheel on the crank", HelpName = "N" };
        var pitch = new Option<double?>("--pitch") { Description = "With --teeth: pitch of chain or belt, mm", HelpName = "MM" };
        var centres = new Option<double?>("--centres") { Description = "With --teeth: crank axis to cam axis, mm", HelpName = "MM" };
        var stretch = new Option<double?>("--stretch") { Description = "With --teeth: how much longer the chain is, percent", HelpName = "PERCENT" };
        var skim = new Option<double?>("--skim") { Description = "With --teeth: taken off head and block, mm", HelpName = "MM" };
        var set = new Option<string?>("--static") { Description = "A static setting: ignition, pump; with --at", HelpName = "WHAT" };
        var at = new Option<string?>("--at") { Description = "With --static: what it was set to", HelpName = "TEXT" };
        var command = new Command("timing", "Shows true top, lobe centres and the drive; with both readings of the stop finds top. Example: gudgeon timing --before 322.5 --after 41")
        {
            before, after, lobe, lift, opening, closes, card, teeth, pitch, centres, stretch, skim, set, at,
        };
        line.OnBook(command, (parsed, book) =>
        {
            Entry? told = parsed.GetValue(lobe) is { } name ? new LobeRead(name, parsed.GetValue(lift), parsed.GetValue(opening), parsed.GetValue(closes), parsed.GetValue(card))
                : parsed.GetValue(teeth) is { } z ? new CamDriveTold(z, parsed.GetValue(pitch), parsed.GetValue(centres), parsed.GetValue(stretch) / 100, parsed.GetValue(skim))
                : parsed.GetValue(set) is { } what ? new StaticTimingNoted(what, parsed.GetValue(at) ?? "")
                : null;
            if (told is not null)
                return line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), new Tell(told)));
            if (parsed.GetValue(before) is { } b && parsed.GetValue(after) is { } a)
                return line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), new Tell(new TopFound(b, a))));
            var (top, lobes) = book.Read(bench => (bench.Top?.Top(), TimingSheet.Of(bench)));
            var (drive, settings) = book.Read(bench => (bench.CamDrive, bench.StaticSettings.Select(s => s.Words(bench)).ToArray()));
            var found = top is { Ok: true } ? top.Value.DiscAtTop.Degrees : (double?)null;
            var facts = new JsonObject
            {
                ["disc_at_top_deg"] = found,
                ["lobes"] = new JsonArray([.. lobes.Select(l => new JsonObject { ["lobe"] = l.Lobe, ["centre_deg"] = l.Centre.Centre.Degrees, ["spread_deg"] = l.Centre.Spread.Degrees, ["card_deg"] = l.WantedDeg, ["teeth_late"] = l.Card is { Ok: true } c ? c.Value.WholeTeeth : null, ["sure"] = l.Card is { Ok: true } s ? s.Value.Sure : null })]),
                ["one_tooth_deg"] = drive?.OneTooth().Value.Degrees,
                ["late_by_stretch_deg"] = drive?.LateByStretch() is { Ok: true } x ? x.Value.Degrees : null,
                ["late_by_skim_deg"] = drive?.LateBySkim() is { Ok: true } y ? y.Value.Degrees : null,
                ["settings"] = new JsonArray([.. settings.Select(s => JsonValue.Create(s))]),
            };
            return line.Desk.Show(line.Json(parsed), "timing", facts,
            [
                .. Cautions.ForPage("timing").Select(c => c.Text),
                found is { } deg ? $"Top dead centre at {Units.Show(Math.Round(deg, 2), "deg")} of the disc." : "The piston stop has not been read.",
                .. lobes.Select(l => $"{l.Lobe}: centre {TimingSheet.FromTop(l.Centre.Centre.Degrees)}{(l.WantedDeg is { } wanted ? $", card {TimingSheet.FromTop(wanted)}" : "")}{(l.ToothWords.Length > 0 ? $"; {l.ToothWords}" : "")}"),
                .. drive is null ? Array.Empty<string>() :
                [
                    $"One tooth is {Units.Show(Math.Round(drive.OneTooth().Value.Degrees, 2), "deg")} of the crank.",
                    .. drive.LateByStretch() is { Ok: true } slack ? [$"The chain's stretch makes the cam {Units.Show(Math.Round(slack.Value.Degrees, 2), "deg")} late."] : Array.Empty<string>(),
                    .. drive.LateBySkim() is { Ok: true } lower ? [$"What was skimmed makes the cam {Units.Show(Math.Round(lower.Value.Degrees, 2), "deg")} late."] : Array.Empty<string>(),
                ],
                .. settings,
            ]);
        });
        return command;
    }

    private static Command Lash(CommandLine line)
    {
        var valve = new Argument<string[]>("valve") { Description = "A valve; none shows the sheet", Arity = ArgumentArity.ZeroOrMore };
        var clearance = new Option<string?>("--clearance") { Description = "Its clearance as read", HelpName = "LENGTH" };
        var shim = new Option<double?>("--shim") { Description = "Thickness of the shim in it, mm", HelpName = "MM" };
        var shop = new Option<double[]>("--shop") { Description = "Shims to be had: thinnest, thickest and step in mm, as 2 3 0.05", AllowMultipleArgumentsPerToken = true, HelpName = "MM" };
        var spare = new Option<double[]>("--spare") { Description = "With --shop: spares at hand, mm", AllowMultipleArgumentsPerToken = true, HelpName = "MM" };
        var command = new Command("lash", "Shows valve clearances and which shims to fit, or reads a valve. Example: gudgeon lash inlet valve 1.1 --clearance 0.18 --shim 2.45") { valve, clearance, shim, shop, spare };
        line.OnBook(command, (parsed, book) =>
        {
            if (parsed.GetValue(shop) is { Length: > 0 } list)
                return list.Length == 3
                    ? line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), new Tell(new ShimsOffered(list[0], list[1], list[2], parsed.GetValue(spare) ?? []))))
                    : line.Desk.Refuse(line.Json(parsed), [new Refusal("--shop", $"{list.Length} figures", "three: thinnest, thickest, step", "Write it as --shop 2 3 0.05")]);
            if (parsed.GetValue(valve) is { Length: > 0 } words)
            {
                var named = book.Read(bench => Naming.Part(bench, string.Join(' ', words)));
                if (!named.TryGet(out var id))
                    return line.Desk.Refuse(line.Json(parsed), named.Refusals);
                List<Request> requests = [];
                if (parsed.GetValue(clearance) is { } read)
                    requests.Add(new TakeReading(LashSheet.SlotOf(id), read));
                if (parsed.GetValue(shim) is { } mm)
                    requests.Add(new Tell(new ShimRead(id, mm, Units.Plain(mm))));
                return requests.Count > 0
                    ? line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), requests))
                    : line.Desk.Refuse(line.Json(parsed), [new Refusal("lash", "a valve and nothing read", "--clearance or --shim", "Say one of them")]);
            }

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
