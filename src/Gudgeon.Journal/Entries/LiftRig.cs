using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(RigTold), "rig-told")]
public abstract partial record Entry;

/// <summary>A leg from hook or bar to the engine.</summary>
/// <param name="At">Where it holds the engine.</param>
/// <param name="LengthMm">From hook or bar to that place.</param>
public sealed record RigLeg(string Name, EnginePlace At, double LengthMm);

/// <summary>A spreader bar or load leveller with one drop at either end.</summary>
/// <param name="SpanMm">Between the holes of the drops.</param>
/// <param name="HookOverMm">Hook over the line of those holes.</param>
/// <param name="HookForwardMm">Hook forward of the middle.</param>
/// <param name="RatingKg">Rating on the bar, or null where none can be read: it is then unfit.</param>
public sealed record RigBar(double SpanMm, double HookOverMm, double HookForwardMm, double MassKg, double? RatingKg = null);

/// <summary>A piece of lifting gear as its tag or stamp is read. What cannot be read is left empty, and the piece is then unfit.</summary>
/// <param name="On">Name of the leg it is in, or <c>hook</c> when the whole load hangs from it.</param>
/// <param name="Sort">One of <see cref="Sorts"/>.</param>
/// <param name="Grade">Grade of a chain, pattern of an eye bolt.</param>
/// <param name="Size">Diameter in mm, or the thread of an eye bolt.</param>
/// <param name="RatingKg">Rating on the piece, or null.</param>
/// <param name="OffLineDeg">Shackle: pull off its line. Choked sling: angle of the choke.</param>
/// <param name="Shank">Eye bolt: where its shank points away from the engine: up, front, rear, left, right.</param>
public sealed record RigGear(string Name, string On, string Sort, string Grade = "", string Size = "", double? RatingKg = null, double? OffLineDeg = null, string Shank = "up")
{
    public const string OnHook = "hook", OtherRated = "other, rated";

    public static IReadOnlyList<string> Sorts { get; } = ["chain", "choked chain", "wire rope", "choked wire rope", "textile sling", "choked textile sling", "eye bolt", "shackle", OtherRated];

    public static IReadOnlyList<string> Shanks { get; } = ["up", "front", "rear", "left", "right"];
}

/// <summary>How the engine is to hang: legs, bar, every piece of gear. The last telling counts.</summary>
/// <param name="GearMassKg">Mass of all gear on the crane's hook but the bar.</param>
public sealed record RigTold(IReadOnlyList<RigLeg> Legs, IReadOnlyList<RigGear> Gear, double GearMassKg, RigBar? Bar = null) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        (Legs.Count is >= 1 and <= 4 ? null : new Refusal("legs", $"{Legs.Count}", "one to four", "Give each leg from the hook to the engine"))
        ?? (Bar is null || Legs.Count == 2 ? null : new Refusal("legs", $"{Legs.Count} under a bar", "two, one from either end of the bar", "Give the front drop and the rear drop"))
        ?? (Gear.Count <= 30 ? null : new Refusal("gear", $"{Gear.Count} pieces", "30 at most", "Use fewer pieces"))
        ?? LiftChecks.From0("mass of the gear", "", GearMassKg, "kg", "Weigh chains, shackles and hook together")
        ?? LiftChecks.First(Legs.Select(leg => LiftChecks.Named("leg", leg.Name) ?? LiftChecks.Above0(leg.Name, "a length", leg.LengthMm, "mm", "Measure from the hook to the eye") ?? leg.At.Fault(leg.Name)))
        ?? (Legs.Select(leg => leg.Name).Append(RigGear.OnHook).Distinct(StringComparer.OrdinalIgnoreCase).Count() == Legs.Count + 1 ? null : new Refusal("legs", "two of one name, or one called hook", "a name for each", "Call them front and rear"))
        ?? (Bar is null ? null : LiftChecks.Above0("bar", "a span", Bar.SpanMm, "mm", "Measure between its holes") ?? LiftChecks.Above0("bar", "a hook height", Bar.HookOverMm, "mm", "Measure over the line of its holes") ?? LiftChecks.From0("bar", "a mass", Bar.MassKg, "kg", "Weigh it") ?? LiftChecks.Far("carrier of the bar", Bar.HookForwardMm)
            ?? (Bar.RatingKg is { } onBar ? LiftChecks.Above0("bar", "a rating", onBar, "kg", "Read it again; leave it empty where it cannot be read") : null))
        ?? LiftChecks.First(Gear.Select(Fault));

    public override string Words(Bench bench) =>
        $"Rig: {string.Join(", ", Legs.Select(leg => $"{leg.Name} {Units.Plain(leg.LengthMm)} mm to {leg.At}"))}{(Bar is null ? "" : $", under a bar of {Units.Plain(Bar.SpanMm)} mm")}; {Gear.Count} {(Gear.Count == 1 ? "piece" : "pieces")} of gear";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        bench.Rig = this;
        bench.LiftToldBy = recorded.Number;
    }

    private Refusal? Fault(RigGear piece) => LiftChecks.Named("piece of gear", piece.Name)
        ?? (RigGear.Sorts.Contains(piece.Sort) ? null : new Refusal(piece.Name, $"\"{piece.Sort}\"", string.Join(", ", RigGear.Sorts), "Choose one of these"))
        ?? (RigGear.Shanks.Contains(piece.Shank) ? null : new Refusal(piece.Name, $"a shank to \"{piece.Shank}\"", string.Join(", ", RigGear.Shanks), "Choose one of these"))
        ?? (piece.On == RigGear.OnHook || Legs.Any(leg => leg.Name == piece.On) ? null : new Refusal(piece.Name, $"\"{piece.On}\"", $"{RigGear.OnHook} or {string.Join(" or ", Legs.Select(leg => leg.Name))}", "Say which leg it is in"))
        ?? (piece.RatingKg is { } rating ? LiftChecks.Above0(piece.Name, "a rating", rating, "kg", "Read it again; leave it empty where it cannot be read") : null)
        ?? (piece.OffLineDeg is < 0 or > 180 ? new Refusal(piece.Name, $"{Units.Plain(piece.OffLineDeg.Value)}°", "0 to 180°", "Give the angle again") : null);
}
