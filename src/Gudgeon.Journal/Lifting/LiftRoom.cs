using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>What is to spare in height, with the way it was reached.</summary>
internal sealed record RoomFound(HeadroomAnswer Answer, IReadOnlyList<Refusal> Warnings, IReadOnlyList<LiftFigure> Figures);

/// <summary>What is to spare in height, and what to take off to gain some.</summary>
internal static class LiftRoom
{
    public static Outcome<RoomFound> Spare(Bench bench, PlaceTold place, CraneTold crane, HungLoad hung, IReadOnlyList<CranePose> stroke)
    {
        var there = stroke.Where(pose => pose.Reach.Millimetres >= place.ReachMm).ToList();
        if (there.Count == 0)
        {
            return Outcome.Refused<RoomFound>(new Refusal("reach", $"{LiftText.Show(stroke.Max(pose => pose.Reach.Millimetres), "mm")} at most along the stroke", $"{LiftText.Show(place.ReachMm, "mm")} or more",
                "Draw the boom out, and look at its plate again, or bring the crane nearer"));
        }

        // The boom closes on the engine as it rises: only the strokes before it does count.
        var outline = HungOutline.Of(bench, hung);
        bool IsClear(CranePose pose) => outline is null || outline.BoomSpare(crane, pose) >= place.ClearanceMm;
        var clear = there.SkipWhile(pose => !IsClear(pose)).TakeWhile(IsClear).ToList();
        if (clear.Count == 0)
        {
            return Outcome.Refused<RoomFound>(new Refusal("boom", $"nearer than {LiftText.Show(place.ClearanceMm, "mm")} to the engine at every stroke", "a boom that stays off the engine", "Take longer legs, draw the boom out, or turn the engine's short end to the post"));
        }

        var highest = clear.MaxBy(pose => pose.HookHeight.Millimetres)!;
        IReadOnlyList<Refusal> warnings = clear[^1] == there[^1] ? [] :
        [
            new Refusal("boom", $"it closes on the engine above {LiftText.Show(clear[^1].HookHeight.Millimetres, "mm")} of hook", "a stroke that stops there", "Mark that height; longer legs of the sling give more"),
        ];
        var boom = Length.FromMillimetres(Math.Max(highest.TipHeight.Millimetres, crane.PivotHeightMm) + crane.BoomOverTipMm - highest.HookHeight.Millimetres);
        // A tilted engine hangs lower at one end, at most by half its length.
        var drop = Length.FromMillimetres(place.EngineLengthMm / 2 * Math.Sin(hung.MostTilt.Radians));
        var lift = new HeadroomCase(highest.HookHeight, boom, Mm(place.RoofMm), Mm(place.SillMm), Mm(place.SpaceUnderMm), Mm(crane.LegHeightMm), hung.HookZMm, drop, Mm(place.ClearanceMm), Items(bench, place));
        return Headroom.Spare(lift).Then(answer => Outcome.Of(new RoomFound(answer, warnings, [.. answer.Points.Select(point => new LiftFigure(
            $"{point.Name}: to spare", LiftText.Show(point.Spare.Millimetres, "mm"), Workings.Of("lifting.spare", point.Name,
            [
                new("h", "highest hook", lift.HookHighest.Millimetres, "mm"), new("h", "boom over the hook", boom.Millimetres, "mm"), new("h", "roof", place.RoofMm, "mm"), new("h", "sill", place.SillMm, "mm"),
                new("h", "space under the car", place.SpaceUnderMm, "mm"), new("h", "legs of the crane", crane.LegHeightMm, "mm"), new("h", "hook over the crank", hung.HookZMm, "mm"), new("h", "lower by tilt", drop.Millimetres, "mm"),
                new("h", "highest part", lift.Items.Max(item => item.TopMm), "mm"), new("h", "lowest part", lift.Items.Min(item => item.BottomMm), "mm"), new("h", "to stay free", place.ClearanceMm, "mm"),
            ],
            new("spare", "to spare", point.Spare.Millimetres, "mm"), LiftingCautions.Hanging)))])));
    }

    /// <summary>What does not pass, with what would gain height.</summary>
    public static IReadOnlyList<Refusal> Refusals(HeadroomAnswer answer) => [.. answer.Points.Where(point => point.Spare.Millimetres < 0).Select(point => new Refusal(
        point.Name, LiftText.Show(-point.Spare.Millimetres, "mm") + " short", "what is to stay free, and no less", point.Gains.Count == 0 ? Other(point.Name) : $"Take off to gain: {string.Join("; ", point.Gains.Select(Gain))}"))];

    public static string Gain(HeightGain gain) => $"{gain.Item} off: {LiftText.Show(gain.Gain.Millimetres, "mm")}{(gain.Minutes > 0 ? $", about {gain.Minutes:0} min (a guess)" : "")}";

    /// <summary>What is still on; what came off counts no more.</summary>
    private static IReadOnlyList<HeightItem> Items(Bench bench, PlaceTold place) =>
    [
        .. place.Heights.Where(height => height.Part == MassTold.WholeEngine || bench.Part(height.Part).IsOn).Select(height =>
        {
            var part = bench.Engine.Parts.GetValueOrDefault(height.Part);
            var minutes = part is null ? null : Guides.MinutesFor(part.Kind);
            return new HeightItem(part?.Name ?? "the engine itself", height.TopMm, height.BottomMm, part is not null, minutes is null ? 0 : (minutes.Low + minutes.High) / 2.0);
        }),
    ];

    private static string Other(string point) => point == Headroom.LegsUnder ? "Raise the car on rated stands, or take a crane with lower legs" : "Draw the legs of the sling in, lower the sill or raise the roof, or take another crane";

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
