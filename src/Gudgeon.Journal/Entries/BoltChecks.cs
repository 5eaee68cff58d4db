using System.Text.Json.Serialization;
using Gudgeon.Sums;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(BoltsMeasured), "bolts-measured")]
[JsonDerivedType(typeof(InsertFitted), "insert-fitted")]
[JsonDerivedType(typeof(ExtensionSet), "extension-set")]
public abstract partial record Entry;

/// <summary>The fasteners of a joint were measured for use again: their lengths against the book's most, and the pitch gauge along the thread.</summary>
/// <param name="MostMm">Longest that the owner's book lets go in again.</param>
/// <param name="LengthsMm">Each as measured, hole 1 first where they were kept in order.</param>
/// <param name="PitchFails">How many others the pitch gauge rocks on: necked, though not too long.</param>
/// <param name="Source">Book and page of the most.</param>
public sealed record BoltsMeasured(string Joint, double MostMm, IReadOnlyList<double> LengthsMm, int PitchFails = 0, string Source = "") : Entry
{
    private const double Longest = 2000;

    /// <summary>How many are not to be used again.</summary>
    [JsonIgnore]
    public int Bad => LengthsMm.Count(l => l > MostMm) + PitchFails;

    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchJoint(Joint) is { } missing)
            return missing;
        var name = bench.NameOf(Joint);
        return LengthsMm.Count == 0 && PitchFails == 0 ? new Refusal(name, "no length", "the length of each, or how many the pitch gauge rocks on", "Measure them cold, between the same faces")
            : !(MostMm > 0 && MostMm <= Longest) || LengthsMm.Any(l => !(l > 0 && l <= Longest)) ? new Refusal(name, "a length out of reach", $"more than 0 and at most {Units.Show(Longest, "mm")}", "Read the lengths again")
            : PitchFails < 0 || Bad > (bench.Joint(Joint).Required ?? int.MaxValue) ? new Refusal(name, $"{Bad} bad ones", $"0 to {bench.Joint(Joint).Required}, as counted", "Count again")
            : null;
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Joint)}: {(LengthsMm.Count > 0 ? $"{LengthsMm.Count} measured, longest {Units.Show(LengthsMm.Max(), "mm")}, at most {Units.Show(MostMm, "mm")}{(Source.Length > 0 ? $" ({Source})" : "")}" : "pitch gauge held along the threads")}{(PitchFails > 0 ? $"; the pitch gauge rocks on {PitchFails} more" : "")}: {(Bad == 0 ? "all can be used again" : $"{Bad} not to be used again")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeJoint(Joint);
        state.Bolts = this;
        state.FreshAtBolts = state.Fresh;
    }
}

/// <summary>A thread of a joint was repaired with an insert.</summary>
/// <param name="Hole">Its hole, from 1; 0 where the holes have no numbers.</param>
/// <param name="Insert">What went in: <c>M10 wire, 2 d long</c>.</param>
public sealed record InsertFitted(string Joint, int Hole, string Insert) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench) => bench.NoSuchJoint(Joint)
        ?? (string.IsNullOrWhiteSpace(Insert) ? new Refusal(bench.NameOf(Joint), "no insert", "what went in, as M10 wire", "Say what it is")
        : Hole < 0 || Hole > (bench.Joint(Joint).Required ?? 999) ? new Refusal(bench.NameOf(Joint), $"hole {Hole}", $"1 to {bench.Joint(Joint).Required ?? 999}", "Look at the picture again") : null);

    public override string Words(Bench bench) => $"{bench.NameOf(Joint)}: thread insert {Insert}{(Hole > 0 ? $" in hole {Hole}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeJoint(Joint).Inserts.Add(this);
}

/// <summary>A joint is reached with something on the end of the wrench, so that the wrench is set to another figure than the fastener gets.</summary>
/// <param name="LeverMm">From the middle of the square to the middle of the hand.</param>
/// <param name="ExtensionMm">From the square to the fastener; 0 takes it off again.</param>
/// <param name="AngleDeg">0 straight out, 90 square across, 180 folded back.</param>
public sealed record ExtensionSet(string Joint, double LeverMm, double ExtensionMm, double AngleDeg = 0) : Entry
{
    public override IEnumerable<string> About() => [Joint];

    public override Refusal? Check(Bench bench) => bench.NoSuchJoint(Joint)
        ?? (ExtensionMm != 0 && Setting(1) is { Ok: false } refused ? refused.Refusals[0] with { Where = $"{bench.NameOf(Joint)}, {refused.Refusals[0].Where}" } : null);

    public override string Words(Bench bench) => ExtensionMm == 0
        ? $"{bench.NameOf(Joint)}: reached with the wrench alone"
        : $"{bench.NameOf(Joint)}: reached with {Units.Show(ExtensionMm, "mm")} on the end of a wrench of {Units.Show(LeverMm, "mm")}, {(AngleDeg == 0 ? "straight out" : $"at {Units.Show(AngleDeg, "deg")}")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeJoint(Joint).Tightening.Extension = ExtensionMm == 0 ? null : this;

    /// <summary>What to set on the scale for the torque that the fastener is to get.</summary>
    public Outcome<Torque> Setting(double torqueNm) => Wrench.SettingWithExtension(
        Torque.FromNewtonMetres(torqueNm), Length.FromMillimetres(LeverMm), Length.FromMillimetres(ExtensionMm), Angle.FromDegrees(AngleDeg));

    /// <summary>What the fastener gets from what is set on the scale.</summary>
    public Outcome<Torque> Reaches(double settingNm) => Wrench.TorqueThroughExtension(
        Torque.FromNewtonMetres(settingNm), Length.FromMillimetres(LeverMm), Length.FromMillimetres(ExtensionMm), Angle.FromDegrees(AngleDeg));
}
