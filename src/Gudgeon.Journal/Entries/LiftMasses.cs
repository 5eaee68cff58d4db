using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(MassTold), "mass-told")]
[JsonDerivedType(typeof(Weighed), "weighed")]
public abstract partial record Entry;

/// <summary>A place on the engine in mm, from the middle of the bell-housing face at the centre of the crank: x to the free end, y to the left seen from the drive end, z up.</summary>
public sealed record EnginePlace(double X, double Y, double Z)
{
    internal Refusal? Fault(string what) => LiftChecks.Far(what, X) ?? LiftChecks.Far(what, Y) ?? LiftChecks.Far(what, Z);

    public override string ToString() => $"{Units.Plain(X)}, {Units.Plain(Y)}, {Units.Plain(Z)} mm";
}

/// <summary>Somebody told what a part weighs, or the whole engine with what is on it now.</summary>
/// <param name="What">A part's id, or <c>engine</c>.</param>
/// <param name="SpreadKg">Most that the mass is off, either way.</param>
/// <param name="How">How it is known: scale, parts list, somebody's word.</param>
/// <param name="Centre">Its centre of mass, or null for a guess.</param>
/// <param name="CentreSpreadMm">Most that the centre is off in any direction.</param>
public sealed record MassTold(string What, double MassKg, double SpreadKg, string How, EnginePlace? Centre = null, double CentreSpreadMm = 0) : Entry
{
    public const string WholeEngine = "engine";

    public override IEnumerable<string> About() => IsWhole ? [] : [What];

    [JsonIgnore]
    public bool IsWhole => What == WholeEngine;

    public override Refusal? Check(Bench bench) =>
        (IsWhole ? null : bench.NoSuchPart(What))
        ?? LiftChecks.Above0(Name(bench), "a mass", MassKg, "kg", "Read the scale again, in kg")
        ?? LiftChecks.From0(Name(bench), "a spread", SpreadKg, "kg", "Say how far off the mass may be")
        ?? (SpreadKg >= MassKg ? new Refusal(Name(bench), $"{Units.Plain(MassKg)} kg, give or take {Units.Plain(SpreadKg)} kg", "a spread below the mass", "Weigh it") : null)
        ?? LiftChecks.From0(Name(bench), "a spread of the centre", CentreSpreadMm, "mm", "Say how far off the centre may be")
        ?? Centre?.Fault(Name(bench));

    public override string Words(Bench bench) =>
        $"{(IsWhole ? "The engine as it is" : bench.NameOf(What))}: {Units.Plain(MassKg)} kg, give or take {Units.Plain(SpreadKg)} kg{(How.Length > 0 ? $", {How}" : "")}{(Centre is null ? "" : $"; centre at {Centre}, give or take {Units.Plain(CentreSpreadMm)} mm")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Take(this, recorded);

    private string Name(Bench bench) => IsWhole ? "the engine" : bench.NameOf(What);
}

/// <summary>The engine hung level from two hook scales, front and rear.</summary>
/// <param name="FrontXMm">Front hook, along the engine.</param>
/// <param name="RearXMm">Rear hook, along the engine.</param>
/// <param name="ToleranceKg">Most that either scale is off.</param>
/// <param name="CentreYMm">Centre to the left: it is not weighed.</param>
/// <param name="CentreZMm">Centre over the crank: it is not weighed.</param>
/// <param name="UnweighedSpreadMm">Most that those two are off.</param>
public sealed record Weighed(double FrontKg, double FrontXMm, double RearKg, double RearXMm, double ToleranceKg, double CentreYMm, double CentreZMm, double UnweighedSpreadMm) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        LiftChecks.Above0("front scale", "", FrontKg, "kg", "Read it again, in kg")
        ?? LiftChecks.Above0("rear scale", "", RearKg, "kg", "Read it again, in kg")
        ?? LiftChecks.From0("tolerance of the scales", "", ToleranceKg, "kg", "See the scale's own plate")
        ?? LiftChecks.From0("spread of what is not weighed", "", UnweighedSpreadMm, "mm", "Say how far off it may be")
        ?? LiftChecks.Far("front hook", FrontXMm) ?? LiftChecks.Far("rear hook", RearXMm) ?? LiftChecks.Far("centre to the left", CentreYMm) ?? LiftChecks.Far("centre over the crank", CentreZMm)
        ?? (FrontXMm - RearXMm < 50 ? new Refusal("hooks", $"{Units.Plain(FrontXMm - RearXMm)} mm from rear to front", "50 mm or more", "Measure both forward from the bell-housing face") : null);

    public override string Words(Bench bench) => $"Weighed: {Units.Plain(FrontKg)} kg in front at {Units.Plain(FrontXMm)} mm, {Units.Plain(RearKg)} kg behind at {Units.Plain(RearXMm)} mm, scales to {Units.Plain(ToleranceKg)} kg";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Take(this, recorded);
}
