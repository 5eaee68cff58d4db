using Gudgeon.Journal;

namespace Gudgeon.Lifting;

/// <summary>What hangs and how, out of what was told of it.</summary>
internal static class LiftForms
{
    public const int Legs = 4, Pieces = 14;

    public static Entry Mass(Bench bench, LiftFields fields)
    {
        var centre = fields.Has("x") || fields.Has("y") || fields.Has("z")
            ? new EnginePlace(fields.Mm("x", "centre forward"), fields.Mm("y", "centre to the left", 0), fields.Mm("z", "centre over the crank", 0))
            : null;
        var what = fields.Text("what") is { Length: > 0 } part ? part : MassTold.WholeEngine;
        return new MassTold(what, fields.Kg("mass", "mass"), fields.Kg("spread", "give or take", 0), fields.Text("how"), centre, fields.Mm("centre-spread", "give or take of the centre", 0));
    }

    public static Entry Weighed(Bench bench, LiftFields fields) =>
        new Weighed(fields.Kg("front", "front scale"), fields.Mm("front-x", "front hook"), fields.Kg("rear", "rear scale"), fields.Mm("rear-x", "rear hook"), fields.Kg("tolerance", "tolerance of the scales"),
            fields.Mm("y", "centre to the left", 0), fields.Mm("z", "centre over the crank"), fields.Mm("unweighed", "give or take of what is not weighed"));

    public static Entry Rig(Bench bench, LiftFields fields) =>
        new RigTold(fields.Has("legs") ? LegLines(fields) : LegsOf(fields), fields.Has("gear") ? GearLines.Read(fields) : GearOf(fields), fields.Kg("gear-mass", "mass of the gear"),
            fields.Has("bar-span") ? new RigBar(fields.Mm("bar-span", "span of the bar"), fields.Mm("bar-over", "hook over the bar"), fields.Mm("bar-forward", "hook forward of the middle", 0), fields.Kg("bar-mass", "mass of the bar"), fields.Has("bar-rating") ? fields.Kg("bar-rating", "rating of the bar") : null) : null);

    private static IReadOnlyList<RigLeg> LegLines(LiftFields fields) =>
        [.. fields.Lines("legs", "legs", "name: mm forward, left and up to its eye, then its length: front: 500 0 300 500", 4, 4).Select(line => new RigLeg(line.Name, new EnginePlace(line.Figures[0], line.Figures[1], line.Figures[2]), line.Figures[3]))];

    private static IReadOnlyList<RigLeg> LegsOf(LiftFields fields)
    {
        var legs = new List<RigLeg>();
        for (var i = 1; i <= Legs; i++)
        {
            if (!fields.Has($"leg{i}-length") && !fields.Has($"leg{i}-x"))
                continue;
            var name = fields.Text($"leg{i}-name") is { Length: > 0 } given ? given : $"leg {i}";
            legs.Add(new RigLeg(name, new EnginePlace(fields.Mm($"leg{i}-x", $"{name}, forward"), fields.Mm($"leg{i}-y", $"{name}, to the left", 0), fields.Mm($"leg{i}-z", $"{name}, over the crank")), fields.Mm($"leg{i}-length", $"{name}, length")));
        }

        return legs;
    }

    private static IReadOnlyList<RigGear> GearOf(LiftFields fields)
    {
        var gear = new List<RigGear>();
        for (var i = 1; i <= Pieces; i++)
        {
            if (fields.Text($"gear{i}-sort") is not { Length: > 0 } sort)
                continue;
            var on = fields.Text($"gear{i}-on") is { Length: > 0 } given ? given : RigGear.OnHook;
            gear.Add(new RigGear(fields.Text($"gear{i}-name") is { Length: > 0 } called ? called : sort, on, sort, fields.Text($"gear{i}-grade"), fields.Text($"gear{i}-size"),
                fields.Has($"gear{i}-rating") ? fields.Kg($"gear{i}-rating", $"rating of piece {i}") : null, fields.Has($"gear{i}-angle") ? fields.Degrees($"gear{i}-angle", $"angle of piece {i}") : null,
                fields.Text($"gear{i}-shank") is { Length: > 0 } shank ? shank : "up"));
        }

        return gear;
    }
}
