using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>A part of the engine as it counts for height.</summary>
/// <param name="Name">Its name.</param>
/// <param name="TopMm">Its highest place, in the engine's axes, mm.</param>
/// <param name="BottomMm">Its lowest place, in the engine's axes, mm.</param>
/// <param name="Removable">True when it can come off before the lift.</param>
/// <param name="MinutesToRemove">How long that takes; 0 where it stays on.</param>
public sealed record HeightItem(string Name, double TopMm, double BottomMm, bool Removable, double MinutesToRemove);

/// <summary>Everything that limits the lift in height.</summary>
/// <param name="HookHighest">Hook at the top of the stroke, at the reach that the lift needs.</param>
/// <param name="BoomOverHook">From the hook up to the highest place of the boom above it.</param>
/// <param name="Roof">Roof, door or tailgate over the floor, where the boom goes.</param>
/// <param name="Sill">What the engine is lifted over: sill, slam panel, wing.</param>
/// <param name="SpaceUnderCar">Height under the car or pallet where the crane's legs go.</param>
/// <param name="CraneLegs">Height of the crane's legs.</param>
/// <param name="HookZ">The hook in the engine's axes, mm, as <see cref="Slinging.Hang"/> gives it.</param>
/// <param name="TiltDrop">How much lower the lowest place comes because the engine is tilted.</param>
/// <param name="Clearance">What is to stay free at every point.</param>
/// <param name="Items">The parts of the engine.</param>
public sealed record HeadroomCase(
    Length HookHighest, Length BoomOverHook, Length Roof, Length Sill, Length SpaceUnderCar, Length CraneLegs, double HookZ, Length TiltDrop, Length Clearance, IReadOnlyList<HeightItem> Items);

/// <summary>One point that the lift has to pass.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Spare">What is left over, the clearance taken off; negative where it does not pass.</param>
/// <param name="Gains">What can come off to gain some, in the order in which it counts.</param>
public sealed record HeadroomPoint(string Name, Length Spare, IReadOnlyList<HeightGain> Gains);

/// <summary>What a part brings when it comes off, with those before it off already.</summary>
/// <param name="Item">The part.</param>
/// <param name="Gain">Height gained by it.</param>
/// <param name="Minutes">How long it takes to come off.</param>
public sealed record HeightGain(string Item, Length Gain, double Minutes);

/// <summary>Every point, the tightest first.</summary>
/// <param name="Points">The points.</param>
public sealed record HeadroomAnswer(IReadOnlyList<HeadroomPoint> Points)
{
    /// <summary>The point with the least to spare.</summary>
    public HeadroomPoint Tightest => Points[0];

    /// <summary>True when every point passes.</summary>
    public bool Passes => Tightest.Spare.Millimetres >= 0;
}

/// <summary>Whether the engine goes in and comes out.</summary>
public static class Headroom
{
    /// <summary>The points that a lift passes, by name.</summary>
    public const string OverSill = "over the sill", UnderRoof = "under the roof", HookOver = "hook over the engine", LegsUnder = "crane legs under the car";

    private const double MostMm = 1e5;

    /// <summary>What is to spare at sill, roof, hook and crane legs, and what to take off to gain some.</summary>
    /// <remarks>
    /// Formula: sill: highest hook − (hook to lowest part + tilt) − sill − clearance; roof: roof − (sill + clearance + hook to lowest part + tilt) − boom over hook − clearance;
    /// hook: hook − highest part − clearance; legs: space under the car − legs − clearance. Gain of a part: next lowest (or highest) part less itself.
    /// Units: mm. Range: one part or more, each with its top over its bottom; heights 0 and above. Errors: those of the tape; legs of the sling that spread round a part are not looked at.
    /// Source: adding up heights.
    /// </remarks>
    public static Outcome<HeadroomAnswer> Spare(HeadroomCase lift)
    {
        var check = new InputCheck().Positive("highest hook", lift.HookHighest).NotNegative("boom over the hook", lift.BoomOverHook).Positive("roof", lift.Roof)
            .NotNegative("sill", lift.Sill).NotNegative("space under the car", lift.SpaceUnderCar).NotNegative("legs of the crane", lift.CraneLegs)
            .NotNegative("drop by tilt", lift.TiltDrop).NotNegative("clearance", lift.Clearance).Within("hook over the engine's datum", lift.HookZ, -MostMm, MostMm, "mm")
            .That(lift.Items.Count > 0, "parts", "none", "one or more", "Give the engine's highest and lowest parts");
        foreach (var item in lift.Items)
        {
            check.That(item.TopMm >= item.BottomMm, item.Name, $"top {Show(item.TopMm)} mm, bottom {Show(item.BottomMm)} mm", "the top over the bottom", "Measure both from the engine's datum, up counts positive")
                .Within($"top of {item.Name}", item.TopMm, -MostMm, MostMm, "mm").Within($"bottom of {item.Name}", item.BottomMm, -MostMm, MostMm, "mm")
                .NotNegative($"minutes for {item.Name}", item.MinutesToRemove, "min");
        }

        return check.Then(() =>
        {
            var below = Length.FromMillimetres(lift.HookZ - lift.Items.Min(item => item.BottomMm)) + lift.TiltDrop;
            var above = Length.FromMillimetres(lift.HookZ - lift.Items.Max(item => item.TopMm));
            var fromBelow = Gains(lift.Items.OrderBy(item => item.BottomMm).ToList(), item => item.BottomMm);
            var fromAbove = Gains(lift.Items.OrderByDescending(item => item.TopMm).ToList(), item => -item.TopMm);
            var free = lift.Clearance;
            HeadroomPoint[] points =
            [
                new(OverSill, lift.HookHighest - below - lift.Sill - free, fromBelow),
                new(UnderRoof, lift.Roof - (lift.Sill + free + below) - lift.BoomOverHook - free, fromBelow),
                new(HookOver, above - free, fromAbove),
                new(LegsUnder, lift.SpaceUnderCar - lift.CraneLegs - free, []),
            ];
            return new HeadroomAnswer([.. points.OrderBy(point => point.Spare.Millimetres)]);
        });
    }

    /// <summary>Parts from the outermost inwards, each with the height that it brings, as far as they can come off.</summary>
    private static IReadOnlyList<HeightGain> Gains(List<HeightItem> outermostFirst, Func<HeightItem, double> place)
    {
        var gains = new List<HeightGain>();
        for (var i = 0; i + 1 < outermostFirst.Count && outermostFirst[i].Removable; i++)
            gains.Add(new HeightGain(outermostFirst[i].Name, Length.FromMillimetres(place(outermostFirst[i + 1]) - place(outermostFirst[i])), outermostFirst[i].MinutesToRemove));
        return gains;
    }
}
