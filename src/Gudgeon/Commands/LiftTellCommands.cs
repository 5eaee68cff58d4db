using System.CommandLine;
using System.CommandLine.Parsing;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Lifting;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>What a lift is made of, told by command: the same fields, read and decided as on the Lift page. What is not said stays as it was told.</summary>
internal static class LiftTellCommands
{
    /// <summary>A field and the option that tells it.</summary>
    /// <param name="Lines">True where the option may come more than once, each a line of a list.</param>
    private sealed record Said(string Option, string Field, string Means, string Help = "MM", bool Lines = false);

    private static readonly Said[] weighed =
    [
        new("--front", "front", "Front scale", "KG"), new("--front-hook", "front-x", "Front hook forward of the bell-housing face"), new("--rear", "rear", "Rear scale", "KG"), new("--rear-hook", "rear-x", "Rear hook forward"),
        new("--tolerance", "tolerance", "Either scale may be off by", "KG"), new("--left", "y", "Centre to the left, which is not weighed"), new("--up", "z", "Centre over the crank, which is not weighed"), new("--unweighed", "unweighed", "Those two may be off by"),
    ];

    private static readonly Said[] mass =
    [
        new("--kg", "mass", "Mass", "KG"), new("--spread", "spread", "Give or take", "KG"), new("--how", "how", "How it is known", "TEXT"),
        new("--forward", "x", "Its centre forward of the bell-housing face"), new("--left", "y", "Its centre to the left"), new("--up", "z", "Its centre over the crank"), new("--centre-spread", "centre-spread", "The centre may be off by"),
    ];

    private static readonly Said[] rig =
    [
        new("--leg", "legs", "A leg: name: forward, left and up to its eye, then its length, in mm; may be repeated, all legs at once", "LEG", true),
        new("--gear", "gear", "A piece of gear: leg or hook: sort, what is read on it; may be repeated, all pieces at once", "PIECE", true),
        new("--gear-mass", "gear-mass", "All gear below the crane's hook, the bar apart", "KG"),
        new("--bar-span", "bar-span", "Spreader or leveller between its holes"), new("--bar-over", "bar-over", "Hook over those holes"), new("--bar-forward", "bar-forward", "Hook forward of its middle"), new("--bar-mass", "bar-mass", "Its mass", "KG"), new("--bar-rating", "bar-rating", "Rating on it; without one it is unfit", "KG"),
    ];

    private static readonly Said[] crane =
    [
        new("--pivot-forward", "pivot-x", "Boom's pivot forward of the foot of the post"), new("--pivot-up", "pivot-z", "Boom's pivot over the floor"), new("--foot-forward", "foot-x", "Foot of the ram forward"), new("--foot-up", "foot-z", "Foot of the ram over the floor"),
        new("--pin", "pin", "Ram's pin along the boom"), new("--ram-closed", "ram-closed", "Ram between its pins, closed"), new("--ram-open", "ram-open", "Ram between its pins, open"), new("--drop", "drop", "Boom's end down to the hook"),
        new("--boom-over", "boom-over", "Boom over the pin at its end"), new("--legs-up", "legs", "Height of the legs"), new("--hole", "holes", "A hole of the boom: mm from its pivot, then kg on the plate; may be repeated, shortest first", "HOLE", true),
        new("--in-hole", "hole", "Hole in use, from the post", "N"), new("--wheel", "wheels", "A wheel: name: forward, then left, in mm; may be repeated, all wheels at once", "WHEEL", true),
        new("--kg", "mass", "The empty crane", "KG"), new("--centre-forward", "centre-x", "Its centre forward"), new("--centre-up", "centre-z", "Its centre up"), new("--swing", "swing", "The load swings by", "DEG"), new("--slope", "slope", "The floor slopes by", "DEG"),
    ];

    private static readonly Said[] place =
    [
        new("--roof", "roof", "Roof or open tailgate over the floor"), new("--sill", "sill", "Sill or slam panel"), new("--under", "under", "Under the car, for the crane's legs"), new("--reach", "reach", "Hook must reach forward"), new("--clearance", "clearance", "To stay free everywhere"),
        new("--length", "length", "The engine along its crank"), new("--width", "width", "The engine across"), new("--free-end-to-crane", "free-end", "Whether its free end hangs towards the post: yes or no", "YES"),
        new("--height", "heights", "Top and bottom of a part over the crank: engine: 450 -250; may be repeated, all at once", "PART", true),
        new("--room-length", "room-length", "Floor along x"), new("--room-width", "room-width", "Floor along y"),
        new("--thing", "things", "What stands there: name: x y length width, then moves or legs pass; may be repeated, all at once", "THING", true), new("--stop", "way", "A stop of the crane: x y and where the boom points in degrees; may be repeated, all at once", "STOP", true),
    ];

    private static readonly Said[] stand =
    [
        new("--plate", "plate", "Moment on its plate", "NM"), new("--post", "post", "Bell-housing face to post"), new("--axis", "axis", "Turning axis over the crank"), new("--free-bolt", "arm", "Bolt that stands free, face to finger"), new("--engagement", "engagement", "Thread that holds"),
        new("--thread", "thread", "Thread of the bolts", "SIZE"), new("--class", "strength", "Class on their heads", "CLASS"), new("--face", "face", "What the face is of: cast iron, light alloy, steel", "FACE"), new("--bolt", "bolts", "A bolt: name: left of the crank, then over it, in mm; may be repeated, all at once", "BOLT", true),
        new("--bolt-length", "bolt-length", "Bolt under its head"), new("--through", "through", "Washer, arm and sleeve together"), new("--depth", "depth", "Depth of the hole; 0 goes through"),
        new("--arm-reach", "finger-reach", "Longest arm, free from plate to bolt"), new("--arm-off", "finger-off", "Middle of the arm to the face"), new("--arm-wide", "finger-wide", "Arm along the plate"), new("--arm-thick", "finger-thick", "Arm along the bolt"), new("--arm-wall", "finger-wall", "Wall of a tube; 0 is solid"),
    ];

    public static void Add(CommandLine line, Command lift)
    {
        lift.Subcommands.Add(Telling(line, "weighed", "Tells what two hook scales read, front and rear. Example: gudgeon lift weighed --front 82 --front-hook 520 --rear 61 --rear-hook 40 --tolerance 1 --up 60 --unweighed 40", weighed, LiftWas.Weighed, LiftForms.Weighed, "lift-load"));
        lift.Subcommands.Add(Mass(line));
        lift.Subcommands.Add(Telling(line, "rig", "Tells how the engine hangs, and every piece of gear as it is read. Example: gudgeon lift rig --leg \"front: 500 0 300 500\" --leg \"rear: 0 0 300 500\" --gear \"hook: other, rated 1000 kg\" --gear \"front: chain, grade 8, 8 mm\" --gear \"rear: chain, grade 8, 8 mm\" --gear-mass 10", rig, LiftWas.Rig, LiftForms.Rig, "lift-gear", "lift-eye"));
        lift.Subcommands.Add(Telling(line, "crane", "Tells the crane and its plate, measured from the foot of its post. Example: gudgeon lift crane --pivot-up 1500 --foot-up 900 --pin 400 --ram-closed 550 --ram-open 950 --drop 120 --hole \"1000 700\" --hole \"1200 500\" --in-hole 2 --wheel \"front left: 1600 450\" --wheel \"front right: 1600 -450\" --wheel \"rear: 0 0\" --kg 75 --centre-forward 550 --centre-up 500 --legs-up 150", crane, LiftWas.Crane, LiftMachineForms.Crane, "lift-crane", "roof"));
        lift.Subcommands.Add(Telling(line, "place", "Tells heights, the engine's own tops and bottoms, the floor and the crane's way. Example: gudgeon lift place --roof 2700 --sill 850 --under 220 --length 600 --width 500 --height \"engine: 450 -250\" --thing \"other car: 3000 1400 4200 1800 moves\" --stop \"1000 1200 0\" --stop \"2500 1200 90\"", place, LiftWas.Place, LiftMachineForms.Place, "lift-crane", "roof"));
        lift.Subcommands.Add(Telling(line, "stand", "Tells the stand, its bolts and its arms. Example: gudgeon lift stand --plate 1500 --post 150 --free-bolt 10 --engagement 20 --thread M12 --class 8.8 --face \"cast iron\" --bolt \"upper left: 130 100\" --bolt \"upper right: -130 100\" --bolt \"lower: 0 -120\"", stand, LiftWas.Stand, LiftMachineForms.Stand, "engine-stand"));
        lift.Subcommands.Add(Looked(line));
    }

    private static Command Mass(CommandLine line)
    {
        var of = new Option<string?>("--of") { Description = "The part; without it the whole engine as it is now", HelpName = "PART" };
        var command = Telling(line, "mass", "Tells what the engine or a part of it weighs. Example: gudgeon lift mass --kg 150 --spread 5 --how \"bathroom scale\" --forward 250 --up 40 --centre-spread 30", mass, _ => LiftWas.Nothing, LiftForms.Mass, ["lift-load", "manual"],
            (parsed, bench) => parsed.GetValue(of) is { } name ? Naming.Part(bench, name).Then(id => Outcome.Of<(string, string)?>(("what", id))) : Outcome.Of<(string, string)?>(null));
        command.Options.Add(of);
        return command;
    }

    private static Command Looked(CommandLine line)
    {
        var numbers = new Argument<int[]>("number") { Description = "Numbers of the list that gudgeon lift ends with", Arity = ArgumentArity.OneOrMore };
        var command = new Command("looked", "Says what was looked at before the lift, by its number in the list. Example: gudgeon lift looked 1 3") { numbers };
        line.OnBook(command, (parsed, book) =>
        {
            var wanted = parsed.GetRequiredValue(numbers);
            if (wanted.Where(n => n < 1 || n > LiftList.Looks.Count).Select(n => $"{n}").FirstOrDefault() is { } strange)
                return line.Desk.Refuse(line.Json(parsed), [new Refusal("before you lift", strange, $"1 to {LiftList.Looks.Count}", "See the list with gudgeon lift")]);
            return line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), new Tell(new LiftChecked([.. wanted.Distinct().Order().Select(n => LiftList.Looks[n - 1])]))));
        });
        return command;
    }

    private static Command Telling(CommandLine line, string name, string description, IReadOnlyList<Said> said, Func<Bench, IReadOnlyDictionary<string, string>> was, Func<Bench, LiftFields, Entry> read, params string[] cautions) =>
        Telling(line, name, description, said, was, read, cautions, (_, _) => Outcome.Of<(string, string)?>(null));

    private static Command Telling(
        CommandLine line, string name, string description, IReadOnlyList<Said> said, Func<Bench, IReadOnlyDictionary<string, string>> was, Func<Bench, LiftFields, Entry> read, string[] cautions,
        Func<ParseResult, Bench, Outcome<(string Field, string Text)?>> more)
    {
        var options = said.Select(s => (Said: s, Option: new Option<string[]>(s.Option) { Description = s.Means, HelpName = s.Help, Arity = ArgumentArity.OneOrMore })).ToArray();
        var command = new Command(name, description);
        foreach (var (_, option) in options)
            command.Options.Add(option);
        line.OnBook(command, (parsed, book) =>
        {
            var json = line.Json(parsed);
            var given = options.Where(o => parsed.GetResult(o.Option) is { Implicit: false }).ToDictionary(o => o.Said.Field, o => string.Join('\n', parsed.GetValue(o.Option) ?? []));
            var entry = book.Read(bench => more(parsed, bench).Then(extra => Entry(command, given, extra, was(bench), fields => read(bench, fields))));
            if (!entry.TryGet(out var told))
                return line.Desk.Refuse(json, entry.Refusals);
            var outcome = book.Submit(line.Desk.Sending(), new Tell(told));
            foreach (var caution in Cautions.All.Where(c => outcome.Ok && !json && cautions.Contains(c.Id)))
                line.Desk.Output.WriteLine(caution.Text);
            return line.Desk.Show(json, book, outcome);
        });
        return command;
    }

    private static Outcome<Entry> Entry(Command command, IReadOnlyDictionary<string, string> given, (string Field, string Text)? extra, IReadOnlyDictionary<string, string> was, Func<LiftFields, Entry> read)
    {
        if (given.Count == 0)
            return Outcome.Refused<Entry>(new Refusal($"lift {command.Name}", "nothing told", "one option or more", $"See gudgeon lift {command.Name} --help"));
        var refusals = new List<Refusal>();
        var entry = read(new LiftFields(field => given.GetValueOrDefault(field) ?? (extra?.Field == field ? extra.Value.Text : was.GetValueOrDefault(field, "")), refusals));
        return refusals.Count > 0 ? Outcome.Refused<Entry>([.. refusals]) : Outcome.Of(entry);
    }
}
