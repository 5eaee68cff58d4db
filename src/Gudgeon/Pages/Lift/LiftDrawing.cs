using Gudgeon.Journal;
using Gudgeon.Pictures;
using Gudgeon.Sums.Lifting;

namespace Gudgeon.Pages.Lift;

/// <summary>The crane at one stroke, with what hangs from it.</summary>
/// <param name="Engine">Outline of the engine; empty where nobody knows how it hangs or how tall it is.</param>
/// <param name="Lines">Ram, rope, legs of the sling.</param>
/// <param name="Tight">The gap that is tightest over the whole lift, as it is at this stroke; empty where none is known.</param>
public sealed record LiftPose(string Boom, string Lines, string Engine, string Tight, string Words);

/// <summary>The lift from the side, to scale, in picture units.</summary>
/// <param name="Fixed">Floor, post, legs, roof.</param>
/// <param name="Limits">Sill and the space under the car.</param>
public sealed record LiftDrawing(double Width, double Height, string Fixed, string Limits, IReadOnlyList<Caption> Captions, IReadOnlyList<LiftPose> Poses)
{
    private const double PictureWidth = 400;

    /// <summary>A roof higher than this is left out: the crane would be drawn too small to read.</summary>
    private const double HighestMm = 4500;

    public static LiftDrawing Of(Bench bench, LiftView view)
    {
        var (crane, place) = (bench.Crane!, bench.LiftPlace);
        var hang = HungOutline.Of(bench, view.Hung);
        var rear = Math.Min(-250, crane.Wheels.Min(wheel => wheel.XMm) - 150);
        var front = Math.Max(crane.Wheels.Max(wheel => wheel.XMm), view.Stroke.Max(pose => pose.Reach.Millimetres) + (hang?.Beyond ?? 0)) + 200;
        var top = Math.Max(view.Stroke.Max(pose => pose.TipHeight.Millimetres) + 100, place is { RoofMm: < HighestMm } ? place.RoofMm + 120 : 0);
        var scale = PictureWidth / (front - rear);
        var at = new Frame(-rear * scale, (top * scale) + 2, scale);

        var legs = at.Box(crane.Wheels.Min(wheel => wheel.XMm), 30, crane.Wheels.Max(wheel => wheel.XMm) - crane.Wheels.Min(wheel => wheel.XMm), Math.Max(10, crane.LegHeightMm - 30));
        var still = $"{at.Line(rear, 0, front, 0)}{at.Line(0, 0, crane.PivotForwardMm, crane.PivotHeightMm)}{legs}";
        var limits = "";
        var captions = new List<Caption>();
        if (place is not null)
        {
            if (place.RoofMm < HighestMm)
            {
                still += at.Line(rear, place.RoofMm, front, place.RoofMm);
                Say(front, place.RoofMm, $"roof {LiftText.Show(place.RoofMm, "mm")}", 12);
            }

            limits = at.Line(rear, place.SillMm, front, place.SillMm) + at.Line(rear, place.SpaceUnderMm, front, place.SpaceUnderMm);
            Say(front, place.SillMm, $"sill {LiftText.Show(place.SillMm, "mm")}", -3);
            Say(front, place.SpaceUnderMm, $"under the car {LiftText.Show(place.SpaceUnderMm, "mm")}", -3);
        }

        return new LiftDrawing(PictureWidth, (top * scale) + 8, still, limits, captions, [.. view.Stroke.Select(pose => Pose(at, crane, pose, hang, Gap(view.Headroom, crane, place), place?.ClearanceMm ?? 0))]);

        void Say(double x, double z, string text, double down)
        {
            var (u, v) = at.At(x, z);
            captions.Add(new Caption(u - 4, v + down, text, true));
        }
    }

    private static LiftPose Pose(Frame at, CraneTold crane, CranePose pose, HungOutline? hang, Func<CranePose, HungOutline, (double X, double Low, double High)>? gap, double free)
    {
        var (sin, cos) = Math.SinCos(pose.BoomAngle.Radians);
        var (reach, hook, tip) = (pose.Reach.Millimetres, pose.HookHeight.Millimetres, pose.TipHeight.Millimetres);
        var boom = at.Line(crane.PivotForwardMm, crane.PivotHeightMm, reach, tip);
        var ram = at.Line(crane.RamFootForwardMm, crane.RamFootHeightMm, crane.PivotForwardMm + (crane.RamPinAlongMm * cos), crane.PivotHeightMm + (crane.RamPinAlongMm * sin));
        var words = $"Hook {LiftText.Show(hook, "mm")} over the floor, {LiftText.Show(reach, "mm")} forward of the post, boom at {LiftText.Degrees(pose.BoomAngle.Degrees)}.";
        if (hang is null)
            return new LiftPose(boom, ram + at.Line(reach, tip, reach, hook), "", "", words);
        // Under a bar each leg hangs from its end; else from the hook.
        var holes = hang.BarHoles(pose);
        var legs = string.Concat(hang.Eyes(pose).Select((eye, i) => holes.Count > 0 ? at.Line(holes[i].X, holes[i].Y, eye.X, eye.Y) + at.Line(reach, hook, holes[i].X, holes[i].Y) : at.Line(reach, hook, eye.X, eye.Y)));
        if (holes.Count > 0)
            boom += at.Line(holes[0].X, holes[0].Y, holes[1].X, holes[1].Y);
        var lowest = hang.Lowest(pose);
        words += lowest < 0 ? " The engine stands on the floor before the hook comes down so far." : $" Lowest part of the engine {LiftText.Show(lowest, "mm")} over the floor.";
        if (hang.Touches(crane, pose))
            words += " Here the boom touches the engine: never so far.";
        var tight = "";
        if (gap is not null)
        {
            var (x, low, high) = gap(pose, hang);
            tight = at.Line(x, low, x, high) + at.Line(x - 60, low, x + 60, low) + at.Line(x - 60, high, x + 60, high);
            words += high > low ? $" The tightest place has {LiftText.Show(high - low, "mm")} here, {LiftText.Show(free, "mm")} of that to stay free." : " It does not clear the tightest place here.";
        }

        return new LiftPose(boom, ram + at.Line(reach, tip, reach, hook) + legs, at.Polygon([.. hang.Corners(pose).Select(c => (c.X, c.Y))]), tight, words);
    }

    /// <summary>Where the tightest point of the lift is at a stroke: beside the middle of it, from its lower to its upper side.</summary>
    private static Func<CranePose, HungOutline, (double X, double Low, double High)>? Gap(HeadroomAnswer? headroom, CraneTold crane, PlaceTold? place) => headroom is null || place is null ? null : headroom.Tightest.Name switch
    {
        Headroom.OverSill => (pose, hang) => (hang.Corners(pose).Average(c => c.X), place.SillMm, hang.Lowest(pose)),
        Headroom.UnderRoof => (pose, _) => (pose.Reach.Millimetres, pose.TipHeight.Millimetres + crane.BoomOverTipMm, place.RoofMm),
        Headroom.HookOver => (pose, hang) => (pose.Reach.Millimetres, hang.Corners(pose).Max(c => c.Y), pose.HookHeight.Millimetres),
        _ => (_, _) => (crane.Wheels.Max(wheel => wheel.XMm) - 150, crane.LegHeightMm, place.SpaceUnderMm),
    };
}
