using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>The engine seen from the side of the crane, hanging from its hook, tilted as it comes to rest.</summary>
public sealed class HungOutline
{
    private readonly HungLoad hung;
    private readonly RigBar? bar;
    private readonly double length, top, bottom, away;

    private HungOutline(HungLoad hung, RigBar? bar, PlaceTold place, IReadOnlyList<PartHeight> heights)
    {
        (this.hung, this.bar) = (hung, bar);
        (length, top, bottom, away) = (place.EngineLengthMm, heights.Max(h => h.TopMm), heights.Min(h => h.BottomMm), place.FreeEndToCrane ? -1 : 1);
    }

    /// <summary>Null where nobody told its heights.</summary>
    public static HungOutline? Of(Bench bench, HungLoad? hung)
    {
        var on = bench.LiftPlace?.Heights.Where(height => height.Part == MassTold.WholeEngine || bench.Part(height.Part).IsOn).ToList();
        return hung is null || on is not { Count: > 0 } ? null : new HungOutline(hung, bench.Rig?.Bar, bench.LiftPlace!, on);
    }

    /// <summary>How far it reaches beyond the hook, away from the crane, mm.</summary>
    public double Beyond => away > 0 ? length - hung.HookXMm : hung.HookXMm;

    /// <summary>The eyes that the legs go to, forward of the post and over the floor.</summary>
    public IEnumerable<FloorPoint> Eyes(CranePose pose) => hung.Legs.Select(leg => Place(leg.At.X, leg.At.Z, pose));

    /// <summary>The two holes of the bar, front first; empty where there is none.</summary>
    public IReadOnlyList<FloorPoint> BarHoles(CranePose pose)
    {
        if (bar is null || hung.BarFrontUp is not { } up)
            return [];
        var (sin, cos) = Math.SinCos(up.Radians);
        FloorPoint Hole(double along) => new(pose.Reach.Millimetres + away * (cos * along + sin * bar.HookOverMm), pose.HookHeight.Millimetres + sin * along - cos * bar.HookOverMm);
        return [Hole(bar.SpanMm / 2 - bar.HookForwardMm), Hole(-bar.SpanMm / 2 - bar.HookForwardMm)];
    }

    /// <summary>Its corners, forward of the post and over the floor.</summary>
    public IReadOnlyList<FloorPoint> Corners(CranePose pose) => [Place(0, bottom, pose), Place(length, bottom, pose), Place(length, top, pose), Place(0, top, pose)];

    public double Lowest(CranePose pose) => Corners(pose).Min(corner => corner.Y);

    /// <summary>What is left between boom and engine, mm; 0 where they touch. The boom is taken as thick below its line as it was told above its pin.</summary>
    internal double BoomSpare(CraneTold crane, CranePose pose)
    {
        var half = Math.Max(1, crane.BoomOverTipMm);
        var (sin, cos) = Math.SinCos(pose.BoomAngle.Radians);
        FloorPoint Beside(double x, double z, double side) => new(x - side * half * sin, z + side * half * cos);
        var (tipX, tipZ) = (pose.Reach.Millimetres, pose.TipHeight.Millimetres);
        var boom = new FloorShape("boom", [Beside(crane.PivotForwardMm, crane.PivotHeightMm, -1), Beside(tipX, tipZ, -1), Beside(tipX, tipZ, 1), Beside(crane.PivotForwardMm, crane.PivotHeightMm, 1)]);
        // The distance between two outlines is the same sum whether they lie on the floor or stand: neither moves here.
        var still = new FloorPose(new(0, 0), Angle.Zero);
        return FloorPlan.Sweep([boom], [still, still], [new FloorShape("engine", Corners(pose))], null).Value.Passes[0].Spare.Millimetres;
    }

    public bool Touches(CraneTold crane, CranePose pose) => BoomSpare(crane, pose) <= 0;

    private FloorPoint Place(double x, double z, CranePose pose)
    {
        var (sin, cos) = Math.SinCos(hung.FrontUp.Radians);
        var (dx, dz) = (x - hung.HookXMm, z - hung.HookZMm);
        return new(pose.Reach.Millimetres + away * (cos * dx - sin * dz), pose.HookHeight.Millimetres + sin * dx + cos * dz);
    }
}
