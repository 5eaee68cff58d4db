using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(CraneTold), "crane-told")]
public abstract partial record Entry;

/// <summary>A hole of the boom and the plate's figure for it.</summary>
public sealed record CraneHole(double BoomMm, double RatingKg);

/// <summary>A wheel, forward and left of the foot of the post.</summary>
public sealed record CraneWheel(string Name, double XMm, double YMm);

/// <summary>The crane as it stands and as its plate reads. Forward and up from the foot of the post.</summary>
/// <param name="Hole">The hole in use, from 1.</param>
/// <param name="LegHeightMm">Highest place of the legs that go under the car.</param>
/// <param name="BoomOverTipMm">Boom over the pin at its end.</param>
/// <param name="CentreXMm">Centre of mass of the empty crane, forward.</param>
/// <param name="CentreZMm">The same, up.</param>
/// <param name="SwingDeg">How far the load may swing.</param>
/// <param name="SlopeDeg">Slope of the floor.</param>
public sealed record CraneTold(
    double PivotForwardMm, double PivotHeightMm, double RamFootForwardMm, double RamFootHeightMm, double RamPinAlongMm, double RamShortestMm, double RamLongestMm, double HookDropMm,
    IReadOnlyList<CraneHole> Holes, int Hole, IReadOnlyList<CraneWheel> Wheels, double MassKg, double CentreXMm, double CentreZMm, double LegHeightMm, double BoomOverTipMm, double SwingDeg, double SlopeDeg) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        LiftChecks.Far("pivot forward", PivotForwardMm) ?? LiftChecks.Above0("pivot", "a height", PivotHeightMm, "mm", "Measure it over the floor")
        ?? LiftChecks.Far("foot of the ram forward", RamFootForwardMm) ?? LiftChecks.From0("foot of the ram", "a height", RamFootHeightMm, "mm", "Measure it over the floor")
        ?? LiftChecks.Above0("pin of the ram", "", RamPinAlongMm, "mm", "Measure along the boom from its pivot")
        ?? LiftChecks.Above0("closed ram", "", RamShortestMm, "mm", "Measure it between its pins") ?? LiftChecks.Above0("open ram", "", RamLongestMm, "mm", "Measure it between its pins")
        ?? LiftChecks.From0("drop of the hook", "", HookDropMm, "mm", "Measure from the pin to the hook's bearing point")
        ?? (Holes.Count is >= 1 and <= 12 ? null : new Refusal("plate", $"{Holes.Count} holes", "1 to 12 with their figures", "Copy the plate"))
        ?? LiftChecks.First(Holes.Select((hole, i) => LiftChecks.Above0($"hole {i + 1}", "a boom", hole.BoomMm, "mm", "Copy the plate again") ?? LiftChecks.Above0($"hole {i + 1}", "a rating", hole.RatingKg, "kg", "Copy the plate again")))
        ?? (Hole >= 1 && Hole <= Holes.Count ? null : new Refusal("hole in use", $"{Hole}", $"1 to {Holes.Count}", "Count the holes from the post"))
        ?? (Wheels.Count is >= 3 and <= 12 ? null : new Refusal("wheels", $"{Wheels.Count}", "3 to 12", "Give each forward and left of the foot of the post"))
        ?? LiftChecks.First(Wheels.Select(wheel => LiftChecks.Named("wheel", wheel.Name) ?? LiftChecks.Far(wheel.Name, wheel.XMm) ?? LiftChecks.Far(wheel.Name, wheel.YMm)))
        ?? LiftChecks.Above0("crane", "a mass", MassKg, "kg", "See its plate, or weigh it") ?? LiftChecks.Far("centre of the crane", CentreXMm) ?? LiftChecks.From0("centre of the crane", "a height", CentreZMm, "mm", "Measure it over the floor")
        ?? LiftChecks.From0("legs of the crane", "a height", LegHeightMm, "mm", "Measure it over the floor") ?? LiftChecks.From0("boom over its pin", "", BoomOverTipMm, "mm", "Measure it")
        ?? (SwingDeg is >= 0 and <= 30 ? null : new Refusal("swing", $"{Units.Plain(SwingDeg)}°", "0 to 30°", "3° is a slow push, 10° a jerk: common practice, no source"))
        ?? (SlopeDeg is >= 0 and <= 10 ? null : new Refusal("slope", $"{Units.Plain(SlopeDeg)}°", "0 to 10°", "Lay a level on the floor"));

    public override string Words(Bench bench) => $"Crane: {Holes.Count} holes, hole {Hole} in use, {Units.Plain(Holes[Hole - 1].BoomMm)} mm for {Units.Plain(Holes[Hole - 1].RatingKg)} kg by its plate";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.Crane = this;
        bench.LiftToldBy = recorded.Number;
    }
}
