using System.Globalization;
using Gudgeon.Journal;

namespace Gudgeon.Lifting;

/// <summary>What was told last, as the fields it came from: forms show it, commands change one field and keep the rest.</summary>
internal static class LiftWas
{
    public static IReadOnlyDictionary<string, string> Nothing { get; } = new Dictionary<string, string>();

    public static IReadOnlyDictionary<string, string> Weighed(Bench bench) => bench.WholeMass?.Recorded.Entry is not Weighed w ? new Dictionary<string, string> { ["y"] = "0" } : new Dictionary<string, string>
    {
        ["front"] = Of(w.FrontKg),
        ["front-x"] = Of(w.FrontXMm),
        ["rear"] = Of(w.RearKg),
        ["rear-x"] = Of(w.RearXMm),
        ["tolerance"] = Of(w.ToleranceKg),
        ["y"] = Of(w.CentreYMm),
        ["z"] = Of(w.CentreZMm),
        ["unweighed"] = Of(w.UnweighedSpreadMm),
    };

    public static IReadOnlyDictionary<string, string> Rig(Bench bench)
    {
        var fields = new Dictionary<string, string>();
        if (bench.Rig is not { } rig)
            return fields;
        foreach (var (leg, i) in rig.Legs.Select((l, i) => (l, i + 1)))
        {
            fields[$"leg{i}-name"] = leg.Name;
            (fields[$"leg{i}-x"], fields[$"leg{i}-y"], fields[$"leg{i}-z"], fields[$"leg{i}-length"]) = (Of(leg.At.X), Of(leg.At.Y), Of(leg.At.Z), Of(leg.LengthMm));
        }

        foreach (var (piece, i) in rig.Gear.Select((g, i) => (g, i + 1)))
        {
            (fields[$"gear{i}-sort"], fields[$"gear{i}-name"], fields[$"gear{i}-on"], fields[$"gear{i}-grade"], fields[$"gear{i}-size"], fields[$"gear{i}-shank"]) = (piece.Sort, piece.Name, piece.On, piece.Grade, piece.Size, piece.Shank);
            (fields[$"gear{i}-rating"], fields[$"gear{i}-angle"]) = (piece.RatingKg is { } kg ? Of(kg) : "", piece.OffLineDeg is { } deg ? Of(deg) : "");
        }

        if (rig.Bar is { } bar)
            (fields["bar-span"], fields["bar-over"], fields["bar-forward"], fields["bar-mass"], fields["bar-rating"]) = (Of(bar.SpanMm), Of(bar.HookOverMm), Of(bar.HookForwardMm), Of(bar.MassKg), bar.RatingKg is { } kg ? Of(kg) : "");
        fields["gear-mass"] = Of(rig.GearMassKg);
        return fields;
    }

    public static IReadOnlyDictionary<string, string> Crane(Bench bench) => bench.Crane is not { } c
        ? new Dictionary<string, string> { ["pivot-x"] = "0", ["foot-x"] = "0", ["hole"] = "1", ["swing"] = "3", ["slope"] = "1" }
        : new Dictionary<string, string>
        {
            ["pivot-x"] = Of(c.PivotForwardMm),
            ["pivot-z"] = Of(c.PivotHeightMm),
            ["foot-x"] = Of(c.RamFootForwardMm),
            ["foot-z"] = Of(c.RamFootHeightMm),
            ["pin"] = Of(c.RamPinAlongMm),
            ["ram-closed"] = Of(c.RamShortestMm),
            ["ram-open"] = Of(c.RamLongestMm),
            ["drop"] = Of(c.HookDropMm),
            ["boom-over"] = Of(c.BoomOverTipMm),
            ["legs"] = Of(c.LegHeightMm),
            ["holes"] = Lines(c.Holes.Select(h => $"{Of(h.BoomMm)} {Of(h.RatingKg)}")),
            ["hole"] = Of(c.Hole),
            ["wheels"] = Lines(c.Wheels.Select(w => $"{w.Name}: {Of(w.XMm)} {Of(w.YMm)}")),
            ["mass"] = Of(c.MassKg),
            ["centre-x"] = Of(c.CentreXMm),
            ["centre-z"] = Of(c.CentreZMm),
            ["swing"] = Of(c.SwingDeg),
            ["slope"] = Of(c.SlopeDeg),
        };

    public static IReadOnlyDictionary<string, string> Place(Bench bench) => bench.LiftPlace is not { } p
        ? new Dictionary<string, string> { ["clearance"] = "30" }
        : new Dictionary<string, string>
        {
            ["roof"] = Of(p.RoofMm),
            ["sill"] = Of(p.SillMm),
            ["under"] = Of(p.SpaceUnderMm),
            ["reach"] = Of(p.ReachMm),
            ["clearance"] = Of(p.ClearanceMm),
            ["length"] = Of(p.EngineLengthMm),
            ["width"] = Of(p.EngineWidthMm),
            ["heights"] = Lines(p.Heights.Select(h => $"{(h.Part == MassTold.WholeEngine ? h.Part : bench.NameOf(h.Part))}: {Of(h.TopMm)} {Of(h.BottomMm)}")),
            ["room-length"] = Of(p.RoomLengthMm),
            ["room-width"] = Of(p.RoomWidthMm),
            ["free-end"] = p.FreeEndToCrane ? "yes" : "",
            ["things"] = Lines((p.Things ?? []).Select(t => $"{t.Name}: {Of(t.XMm)} {Of(t.YMm)} {Of(t.LengthMm)} {Of(t.WidthMm)}{(t.TurnDeg == 0 ? "" : $" {Of(t.TurnDeg)}")}{(t.Moves ? " moves" : t.LegsPass ? " legs pass" : "")}")),
            ["way"] = Lines((p.Way ?? []).Select(s => $"{Of(s.XMm)} {Of(s.YMm)} {Of(s.HeadingDeg)}")),
        };

    public static IReadOnlyDictionary<string, string> Stand(Bench bench)
    {
        if (bench.Stand is not { } s)
            return new Dictionary<string, string> { ["axis"] = "0" };
        var fields = new Dictionary<string, string>
        {
            ["plate"] = Of(s.PlateMomentNm),
            ["post"] = Of(s.FaceToPostMm),
            ["axis"] = Of(s.AxisOverCrankMm),
            ["arm"] = Of(s.FreeArmMm),
            ["engagement"] = Of(s.EngagementMm),
            ["thread"] = s.Thread,
            ["strength"] = s.Strength,
            ["face"] = s.Face,
            ["bolts"] = Lines(s.Bolts.Select(b => $"{b.Name}: {Of(b.YMm)} {Of(b.ZMm)}")),
        };
        if (s.Hole is { } hole)
            (fields["bolt-length"], fields["through"], fields["depth"]) = (Of(hole.BoltMm), Of(hole.ThroughMm), Of(hole.DepthMm));
        if (s.Finger is { } finger)
            (fields["finger-reach"], fields["finger-off"], fields["finger-wide"], fields["finger-thick"], fields["finger-wall"]) = (Of(finger.ReachMm), Of(finger.OffMm), Of(finger.WideMm), Of(finger.ThickMm), Of(finger.WallMm));
        return fields;
    }

    private static string Of(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Lines(IEnumerable<string> lines) => string.Join('\n', lines);
}
