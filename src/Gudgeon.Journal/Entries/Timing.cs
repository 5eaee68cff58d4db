using System.Text.Json.Serialization;
using Gudgeon.Sums;
using Gudgeon.Sums.Motion;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(TopFound), "top-found")]
[JsonDerivedType(typeof(LobeRead), "lobe-read")]
[JsonDerivedType(typeof(ShimRead), "shim-read")]
[JsonDerivedType(typeof(ShimsOffered), "shims-offered")]
public abstract partial record Entry;

/// <summary>The disc was read against a piston stop, turned up to it from either side.</summary>
/// <param name="BeforeDeg">Disc at the stop, turned in the running direction.</param>
/// <param name="AfterDeg">Disc at the stop, turned backwards.</param>
/// <param name="EachDeg">Standard uncertainty of one reading.</param>
public sealed record TopFound(double BeforeDeg, double AfterDeg, double EachDeg = TopFound.UsualDeg) : Entry
{
    /// <summary>A disc read by eye. Common practice, no source.</summary>
    public const double UsualDeg = 0.5;

    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => Top() is { Ok: false } refused ? refused.Refusals[0] : null;

    public override string Words(Bench bench) => Top().TryGet(out var top)
        ? $"Piston stop at {Units.Show(BeforeDeg, "deg")} and {Units.Show(AfterDeg, "deg")}: top dead centre is at {Units.Show(Math.Round(top.DiscAtTop.Degrees, 2), "deg")} of the disc"
        : "Piston stop read";

    /// <summary>True top dead centre from the two readings.</summary>
    public Outcome<TrueTop> Top() => PositiveStop.FindTop(Angle.FromDegrees(BeforeDeg), Angle.FromDegrees(AfterDeg), Angle.FromDegrees(EachDeg));

    internal override void Apply(Bench bench, Recorded recorded) => bench.Top = this;
}

/// <summary>A lobe was read at one lift, opening and closing.</summary>
/// <param name="Lobe">What the lobe is called: <c>inlet 1</c>.</param>
/// <param name="OpeningDeg">Crank degrees after the reference top; before it counts negative.</param>
/// <param name="ClosingDeg">Crank degrees after the same top.</param>
/// <param name="WantedDeg">Lobe centre of the cam's card; null when there is none.</param>
public sealed record LobeRead(string Lobe, double LiftMm, double OpeningDeg, double ClosingDeg, double? WantedDeg = null) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(Lobe) ? new Refusal("lobe", "no name", "a name for the lobe, such as inlet 1", "Say which lobe it is")
        : Centre([this]) is { Ok: false } refused ? refused.Refusals[0] : null;

    public override string Words(Bench bench) =>
        $"{Lobe} at {Units.Show(LiftMm, "mm")} of lift: opening {Units.Show(OpeningDeg, "deg")}, closing {Units.Show(ClosingDeg, "deg")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Lobes.Add(this);

    internal static Outcome<CentreByEqualLift> Centre(IReadOnlyList<LobeRead> readings) => LobeCentre.ByEqualLift(
        [.. readings.Select(r => new EqualLift(Length.FromMillimetres(r.LiftMm), Angle.FromDegrees(r.OpeningDeg), Angle.FromDegrees(r.ClosingDeg)))],
        Angle.FromDegrees(TopFound.UsualDeg));
}

/// <summary>The shim at a valve was measured.</summary>
/// <param name="Valve">Id of the valve.</param>
public sealed record ShimRead(string Valve, double ThicknessMm, string AsTyped) : Entry
{
    private const double Thickest = 50;

    public override IEnumerable<string> About() => [Valve];

    public override Refusal? Check(Bench bench) => bench.NoSuchPart(Valve)
        ?? (!LashSheet.IsValve(bench.Engine.Parts[Valve]) ? new Refusal(bench.NameOf(Valve), "a shim", "a valve", "Name the valve that it sits at")
        : !(ThicknessMm > 0 && ThicknessMm <= Thickest) ? new Refusal(bench.NameOf(Valve), $"a shim of \"{AsTyped}\"", $"more than 0 and at most {Units.Show(Thickest, "mm")}", "Measure it again") : null);

    public override string Words(Bench bench) => $"{bench.NameOf(Valve)}: shim {Units.Show(ThicknessMm, "mm")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Shims[Valve] = ThicknessMm;
}

/// <summary>The shims that can be had: spares at hand, and the range of the shop.</summary>
/// <param name="SparesMm">Thickness of each spare.</param>
public sealed record ShimsOffered(double ThinnestMm, double ThickestMm, double StepMm, IReadOnlyList<double> SparesMm) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        ThinnestMm > 0 && ThickestMm >= ThinnestMm && StepMm > 0 && SparesMm.All(s => s > 0) && double.IsFinite(ThickestMm)
            ? null
            : new Refusal("shims", $"{Units.Plain(ThinnestMm)} to {Units.Plain(ThickestMm)} mm by {Units.Plain(StepMm)}", "thinnest before thickest, a step of more than 0", "Read the list of shims again");

    public override string Words(Bench bench) =>
        $"Shims to be had from {Units.Plain(ThinnestMm)} to {Units.Show(ThickestMm, "mm")} by {Units.Plain(StepMm)}{(SparesMm.Count > 0 ? $"; at hand {string.Join(", ", SparesMm.Select(Units.Plain))}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ShimsOffered = this;
}
