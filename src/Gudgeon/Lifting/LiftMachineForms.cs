using Gudgeon.Journal;

namespace Gudgeon.Lifting;

/// <summary>Crane, place and stand, out of what was told of them.</summary>
internal static class LiftMachineForms
{
    public static Entry Crane(Bench bench, LiftFields fields)
    {
        var holes = fields.Lines("holes", "plate", "boom in mm, then kg on the plate: 1200 500", 2, 2, needsName: false);
        var wheels = fields.Lines("wheels", "wheels", "name: mm forward, then mm left: front left: 1600 450", 2, 2);
        return new CraneTold(
            fields.Mm("pivot-x", "pivot forward", 0), fields.Mm("pivot-z", "pivot over the floor"), fields.Mm("foot-x", "foot of the ram forward", 0), fields.Mm("foot-z", "foot of the ram over the floor"), fields.Mm("pin", "pin of the ram"),
            fields.Mm("ram-closed", "closed ram"), fields.Mm("ram-open", "open ram"), fields.Mm("drop", "drop of the hook"),
            [.. holes.Select(line => new CraneHole(line.Figures[0], line.Figures[1]))], fields.Count("hole", "hole in use", 1), [.. wheels.Select(line => new CraneWheel(line.Name, line.Figures[0], line.Figures[1]))],
            fields.Kg("mass", "mass of the crane"), fields.Mm("centre-x", "centre of the crane forward"), fields.Mm("centre-z", "centre of the crane up"), fields.Mm("legs", "legs of the crane"), fields.Mm("boom-over", "boom over its pin", 0),
            fields.Degrees("swing", "swing"), fields.Degrees("slope", "slope"));
    }

    public static Entry Place(Bench bench, LiftFields fields)
    {
        var heights = fields.Lines("heights", "heights", "part: top, then bottom, in mm over the crank: engine: 450 -250", 2, 2);
        var things = fields.Lines("things", "things on the floor", "name: x y length width, and a turn in degrees where it is turned: bench: 0 2500 2000 500", 4, 5);
        var way = fields.Lines("way", "way", "x y and where the boom points, in degrees: 1000 1200 90", 3, 3, needsName: false);
        var known = heights.Select(line => (Line: line, Part: PartOf(bench, line.Name))).ToList();
        foreach (var (line, _) in known.Where(x => x.Part is null))
            fields.Refuse("heights", $"\"{line.Name}\"", "engine, or a part of this engine by its name", "See the name on the part's page");
        foreach (var thing in things.Where(line => line.Marks is not ("" or "moves" or "legs pass")))
            fields.Refuse(thing.Name, $"\"{thing.Marks}\"", "moves, or legs pass, or nothing", "Say moves for what can be moved, legs pass for what the crane's legs go under");
        return new PlaceTold(
            fields.Mm("roof", "roof"), fields.Mm("sill", "sill"), fields.Mm("under", "space under the car"), fields.Mm("reach", "reach", 0), fields.Mm("clearance", "clearance"), fields.Mm("length", "length of the engine"), fields.Mm("width", "width of the engine"),
            [.. known.Where(x => x.Part is not null).Select(x => new PartHeight(x.Part!, x.Line.Figures[0], x.Line.Figures[1]))],
            fields.Mm("room-length", "length of the floor", 0), fields.Mm("room-width", "width of the floor", 0),
            [.. things.Select(line => new FloorThing(line.Name, line.Figures[0], line.Figures[1], line.Figures[2], line.Figures[3], line.Figures.Count > 4 ? line.Figures[4] : 0, line.Marks == "moves", line.Marks == "legs pass"))],
            [.. way.Select(line => new FloorStop(line.Figures[0], line.Figures[1], line.Figures[2]))], fields.Text("free-end") is "yes");
    }

    public static Entry Stand(Bench bench, LiftFields fields)
    {
        var bolts = fields.Lines("bolts", "bolts of the stand", "name: mm left of the crank, then mm over it: upper left: 130 100", 2, 2);
        return new StandTold(fields.Nm("plate", "moment on the plate"), fields.Mm("post", "face to post"), fields.Mm("axis", "turning axis over the crank", 0), [.. bolts.Select(line => new StandBolt(line.Name, line.Figures[0], line.Figures[1]))],
            fields.Text("thread"), fields.Text("strength"), fields.Mm("arm", "free arm of the bolts"), fields.Mm("engagement", "engagement"), fields.Text("face"),
            fields.Has("bolt-length") || fields.Has("through") ? new StandHole(fields.Mm("bolt-length", "bolt under its head"), fields.Mm("through", "between head and engine"), fields.Mm("depth", "depth of the hole", 0)) : null,
            fields.Has("finger-reach") || fields.Has("finger-wide") ? new StandFinger(fields.Mm("finger-reach", "reach of the arm"), fields.Mm("finger-off", "arm to the face", 0), fields.Mm("finger-wide", "width of the arm"), fields.Mm("finger-thick", "thickness of the arm"), fields.Mm("finger-wall", "wall of the arm", 0)) : null);
    }

    /// <summary>The part that a line names: by id, or by a name that only one part has.</summary>
    private static string? PartOf(Bench bench, string name) =>
        name.Equals(MassTold.WholeEngine, StringComparison.OrdinalIgnoreCase) ? MassTold.WholeEngine
        : bench.Engine.Parts.Values.Where(part => part.Id == name || part.Name.Equals(name, StringComparison.OrdinalIgnoreCase)).Select(part => part.Id).ToArray() is [var one] ? one : null;
}
