using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(PlaceTold), "place-told")]
[JsonDerivedType(typeof(LiftChecked), "lift-checked")]
public abstract partial record Entry;

/// <summary>Highest and lowest place of a part, over the centre of the crank.</summary>
/// <param name="Part">A part's id, or <c>engine</c> for what stays.</param>
public sealed record PartHeight(string Part, double TopMm, double BottomMm);

/// <summary>A thing on the floor: a box by its corner nearest to the floor's zero, its length along x and y, turned anticlockwise about that corner.</summary>
/// <param name="Moves">True for what can be moved out of the way, such as another vehicle.</param>
/// <param name="LegsPass">True when the crane's legs go under it and the engine over it at the height of the sill, as at the nose of the car that the engine comes out of.</param>
public sealed record FloorThing(string Name, double XMm, double YMm, double LengthMm, double WidthMm, double TurnDeg = 0, bool Moves = false, bool LegsPass = false);

/// <summary>A place on the crane's way: foot of its post, and where its boom points.</summary>
public sealed record FloorStop(double XMm, double YMm, double HeadingDeg);

/// <summary>The place of the lift.</summary>
/// <param name="SillMm">What the engine is lifted over: sill, slam panel, wing.</param>
/// <param name="SpaceUnderMm">Height under the car or pallet where the crane's legs go.</param>
/// <param name="ReachMm">Hook forward of the foot of the post that the lift needs.</param>
/// <param name="ClearanceMm">What is to stay free at every point.</param>
/// <param name="EngineLengthMm">The engine along its crank, with all that is on it.</param>
/// <param name="EngineWidthMm">The engine across.</param>
/// <param name="RoomLengthMm">Floor along x; 0 where it is open.</param>
/// <param name="RoomWidthMm">Floor along y; 0 where it is open.</param>
/// <param name="FreeEndToCrane">True when the free end hangs towards the post.</param>
public sealed record PlaceTold(
    double RoofMm, double SillMm, double SpaceUnderMm, double ReachMm, double ClearanceMm, double EngineLengthMm, double EngineWidthMm, IReadOnlyList<PartHeight> Heights,
    double RoomLengthMm = 0, double RoomWidthMm = 0, IReadOnlyList<FloorThing>? Things = null, IReadOnlyList<FloorStop>? Way = null, bool FreeEndToCrane = false) : Entry
{
    [JsonIgnore]
    public bool HasFloor => Way is { Count: > 0 };

    public override IEnumerable<string> About() => Heights.Where(height => height.Part != MassTold.WholeEngine).Select(height => height.Part);

    public override Refusal? Check(Bench bench) =>
        LiftChecks.Above0("roof", "", RoofMm, "mm", "Measure it over the floor where the boom goes") ?? LiftChecks.From0("sill", "", SillMm, "mm", "Measure it over the floor")
        ?? LiftChecks.From0("space under the car", "", SpaceUnderMm, "mm", "Measure it over the floor") ?? LiftChecks.From0("reach", "", ReachMm, "mm", "Measure from the post to over the engine")
        ?? LiftChecks.From0("clearance", "", ClearanceMm, "mm", "Say what is to stay free")
        ?? LiftChecks.Above0("engine", "a length", EngineLengthMm, "mm", "Measure it along the crank") ?? LiftChecks.Above0("engine", "a width", EngineWidthMm, "mm", "Measure it across")
        ?? (Heights.Count is >= 1 and <= 60 ? null : new Refusal("heights", $"{Heights.Count} parts", "1 to 60", "Give the engine's own top and bottom first"))
        ?? LiftChecks.First(Heights.Select(height => Fault(height, bench)))
        ?? LiftChecks.From0("floor", "a length", RoomLengthMm, "mm", "Measure it") ?? LiftChecks.From0("floor", "a width", RoomWidthMm, "mm", "Measure it")
        ?? (Things is { Count: > 30 } ? new Refusal("floor", $"{Things.Count} things", "30 at most", "Leave out what is far from the way") : null)
        ?? (Way is { Count: 1 or > 30 } ? new Refusal("way", $"{Way.Count} stops", "2 to 30", "Give where it starts and where it goes") : null)
        ?? LiftChecks.First((Things ?? []).Select(thing => LiftChecks.Named("thing on the floor", thing.Name) ?? LiftChecks.Far(thing.Name, thing.XMm) ?? LiftChecks.Far(thing.Name, thing.YMm)
            ?? LiftChecks.Above0(thing.Name, "a length", thing.LengthMm, "mm", "Measure it") ?? LiftChecks.Above0(thing.Name, "a width", thing.WidthMm, "mm", "Measure it") ?? LiftChecks.Far(thing.Name, thing.TurnDeg)))
        ?? LiftChecks.First((Way ?? []).Select((stop, i) => LiftChecks.Far($"stop {i + 1}", stop.XMm) ?? LiftChecks.Far($"stop {i + 1}", stop.YMm) ?? LiftChecks.Far($"stop {i + 1}", stop.HeadingDeg)));

    public override string Words(Bench bench) =>
        $"Place of the lift: roof {Units.Plain(RoofMm)} mm, sill {Units.Plain(SillMm)} mm, {Units.Plain(ClearanceMm)} mm to stay free; {(HasFloor ? $"{Things?.Count ?? 0} things on the floor, a way of {Way!.Count} stops" : "no way across the floor")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.LiftPlace = this;
        bench.LiftToldBy = recorded.Number;
    }

    private static Refusal? Fault(PartHeight height, Bench bench) =>
        (height.Part == MassTold.WholeEngine ? null : bench.NoSuchPart(height.Part))
        ?? LiftChecks.Far(bench.NameOf(height.Part), height.TopMm) ?? LiftChecks.Far(bench.NameOf(height.Part), height.BottomMm)
        ?? (height.TopMm >= height.BottomMm ? null : new Refusal(bench.NameOf(height.Part), $"top {Units.Plain(height.TopMm)} mm, bottom {Units.Plain(height.BottomMm)} mm", "the top over the bottom", "Measure both from the centre of the crank, up counts positive"));
}

/// <summary>Looked at before the lift, and said yes to.</summary>
public sealed record LiftChecked(IReadOnlyList<string> Looks) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => Looks.Count == 0 ? new Refusal("before you lift", "nothing ticked", "one look or more", "Look, then tick")
        : Looks.FirstOrDefault(look => !LiftList.Looks.Contains(look)) is { } strange ? new Refusal("before you lift", $"\"{strange}\"", "a look of the list", "Tick what is on the list")
        : null;

    public override string Words(Bench bench) => $"Looked, before the lift: {string.Join("; ", Looks)}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        foreach (var look in Looks)
            bench.LiftLooks[look] = recorded.Number;
    }
}
