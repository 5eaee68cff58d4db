using System.Text.Json.Serialization;
using Gudgeon.Sums;
using Gudgeon.Sums.Motion;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(CamDriveTold), "cam-drive")]
[JsonDerivedType(typeof(StaticTimingNoted), "static-timing")]
public abstract partial record Entry;

/// <summary>The drive from crank to cam as counted and measured: what one tooth, a stretched chain and a skimmed head do to the timing.</summary>
/// <param name="PitchMm">Pitch of chain or belt; null where only the teeth were counted.</param>
/// <param name="CentresMm">From crank axis to cam axis, before anything was skimmed.</param>
/// <param name="StretchPart">How much longer the chain is, as a part of one; null where nobody measured.</param>
/// <param name="SkimMm">What was taken off head and block together; null for nothing.</param>
public sealed record CamDriveTold(int CrankTeeth, double? PitchMm = null, double? CentresMm = null, double? StretchPart = null, double? SkimMm = null) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        OneTooth() is { Ok: false } tooth ? tooth.Refusals[0]
        : (StretchPart ?? SkimMm) is not null && (PitchMm is null || CentresMm is null) ? new Refusal("cam drive", "a stretch or a skim without pitch and centres", "pitch of the chain and the distance of the axes", "Measure both")
        : LateByStretch() is { Ok: false } stretch ? stretch.Refusals[0]
        : LateBySkim() is { Ok: false } skim ? skim.Refusals[0]
        : null;

    public override string Words(Bench bench) =>
        $"Cam drive: {CrankTeeth} teeth on the crank{(PitchMm is { } p ? $", pitch {Units.Show(p, "mm")}" : "")}{(CentresMm is { } c ? $", axes {Units.Show(c, "mm")} apart" : "")}{(StretchPart is { } x ? $", chain {Units.Show(Math.Round(100 * x, 3), "%")} longer" : "")}{(SkimMm is { } s ? $", {Units.Show(s, "mm")} skimmed off" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.CamDrive = this;

    /// <summary>What one tooth does, crank degrees.</summary>
    public Outcome<Angle> OneTooth() => CamTiming.OneTooth(CrankTeeth);

    /// <summary>How late the cam comes by the chain's stretch; null where it was not measured.</summary>
    public Outcome<Angle>? LateByStretch() => StretchPart is { } stretch && Run is { } run ? DriveWear.LateByStretch(run, stretch) : null;

    /// <summary>How late the cam comes by what was skimmed; null where nothing was.</summary>
    public Outcome<Angle>? LateBySkim() => SkimMm is { } skim && Run is { } run ? DriveWear.LateBySkim(run, Length.FromMillimetres(skim)) : null;

    private DriveRun? Run => PitchMm is { } pitch && CentresMm is { } centres
        ? new DriveRun(Length.FromMillimetres(pitch), CrankTeeth, 2 * CrankTeeth, Length.FromMillimetres(centres))
        : null;
}

/// <summary>A static setting: ignition, or the pump of a diesel, as set at the bench.</summary>
/// <param name="What">ignition, pump, or as said.</param>
/// <param name="Setting">As read: <c>8° before top, points just opening, cylinder 1</c>.</param>
public sealed record StaticTimingNoted(string What, string Setting) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(What) ? new Refusal("static timing", "no name", "ignition, pump", "Say what was set")
        : string.IsNullOrWhiteSpace(Setting) ? new Refusal(What, "no setting", "degrees and cylinder, as read", "Say what it was set to")
        : null;

    public override string Words(Bench bench) => $"{What.Trim()} set: {Setting.Trim()}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.StaticTiming[Whereabouts.PlaceName(What)] = this;
}
