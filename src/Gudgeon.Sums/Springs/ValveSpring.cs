using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Springs;

/// <summary>A helical compression spring of round wire.</summary>
/// <param name="Wire">Wire diameter d.</param>
/// <param name="MeanDiameter">Mean coil diameter D: outside less one wire.</param>
/// <param name="ActiveCoils">Coils that move, n.</param>
/// <param name="TotalCoils">All coils, Nt.</param>
/// <param name="FreeLength">Length without load.</param>
/// <param name="Ground">True when the ends are closed and ground flat.</param>
/// <param name="ShearModulusMpa">Shear modulus G, MPa; spring steel about 79 000 to 82 000.</param>
/// <param name="DensityKgPerM3">Density of the wire, kg/m³; steel about 7850.</param>
public sealed record ValveSpring(
    Length Wire, Length MeanDiameter, double ActiveCoils, double TotalCoils, Length FreeLength, bool Ground, double ShearModulusMpa = 79_300, double DensityKgPerM3 = 7850)
{
    internal double Index => MeanDiameter / Wire;

    internal double RateNPerMm => ShearModulusMpa * Math.Pow(Wire.Millimetres, 4) / (8 * Math.Pow(MeanDiameter.Millimetres, 3) * ActiveCoils);

    internal Length Solid => Wire * (Ground ? TotalCoils : TotalCoils + 1);

    internal double WahlFactor => (4 * Index - 1) / (4 * Index - 4) + 0.615 / Index;

    internal InputCheck Check(InputCheck check) => check
        .Positive("wire", Wire).Positive("mean diameter", MeanDiameter).Positive("free length", FreeLength)
        .Within("active coils", ActiveCoils, 1, 100, "").Within("shear modulus", ShearModulusMpa, 1000, 200_000, "MPa").Within("density", DensityKgPerM3, 1000, 20_000, "kg/m³")
        .That(TotalCoils >= ActiveCoils && TotalCoils <= 110, "total coils", Show(TotalCoils), $"{Show(ActiveCoils)} or more, 110 at most", "Count the coils end to end")
        .That(MeanDiameter >= Wire * 2.5 && MeanDiameter <= Wire * 50, "mean diameter", $"{Show(MeanDiameter.Millimetres)} mm on {Show(Wire.Millimetres)} mm wire", "2.5 to 50 wires", "Measure the outside and take one wire off");
}

/// <summary>A valve spring between its seat and full lift.</summary>
/// <param name="RateNPerMm">Rate, N/mm.</param>
/// <param name="SeatForce">Force with the valve shut.</param>
/// <param name="OpenForce">Force at full lift.</param>
/// <param name="Solid">Length with all coils touching.</param>
/// <param name="BindMargin">What is left before the coils touch, at full lift.</param>
/// <param name="StressMpa">Shear stress at full lift with the curve of the wire, MPa.</param>
/// <param name="SurgeHz">Lowest frequency of the spring between its seats, Hz.</param>
/// <param name="Warnings">What is allowed and yet to be looked at.</param>
public sealed record SpringAtWork(double RateNPerMm, Force SeatForce, Force OpenForce, Length Solid, Length BindMargin, double StressMpa, double SurgeHz, IReadOnlyList<Refusal> Warnings);

/// <summary>Valve springs.</summary>
public static class ValveSprings
{
    /// <summary>Below this a coil-bind margin is warned of: common practice, no source.</summary>
    public const double WarnBindMm = 0.8;

    /// <summary>Forces, coil bind, stress and surge of a spring that is fitted at one length and compressed by the lift.</summary>
    /// <remarks>
    /// Formula: k = G·d⁴/(8·D³·n); F = k·(free − length); solid = Nt·d ground, (Nt + 1)·d not; τ = Kw·8·F·D/(π·d³), Kw = (4C − 1)/(4C − 4) + 0.615/C; f = d/(2π·D²·n)·√(G/2ρ).
    /// Units: mm, N, MPa, kg/m³, Hz. Range: D 2.5 to 50 wires, fitted below free; a spring that binds at full lift is refused. Errors: even pitch and round wire; beehive and damped springs differ.
    /// Source: Wahl; Shigley's Mechanical Engineering Design, 9th edition, chapter 10; surge between plates as there.
    /// </remarks>
    public static Outcome<SpringAtWork> AtWork(ValveSpring spring, Length fitted, Length lift)
    {
        var check = spring.Check(new InputCheck()).Positive("fitted length", fitted).NotNegative("lift", lift)
            .That(fitted < spring.FreeLength, "fitted length", $"{Show(fitted.Millimetres)} mm", $"less than the free length, {Show(spring.FreeLength.Millimetres)} mm", "Measure from seat to retainer with the valve shut");
        if (check.Clean)
        {
            check.That(fitted - lift > spring.Solid, "length at full lift", $"{Show((fitted - lift).Millimetres)} mm", $"more than solid, {Show(spring.Solid.Millimetres)} mm",
                "The coils bind: take a spring of fewer coils or thinner wire, or fit it longer");
        }

        return check.Then(() =>
        {
            var open = Force.FromNewtons(spring.RateNPerMm * (spring.FreeLength - fitted + lift).Millimetres);
            var (d, big) = (spring.Wire.Metres, spring.MeanDiameter.Metres);
            var margin = fitted - lift - spring.Solid;
            return new SpringAtWork(spring.RateNPerMm, Force.FromNewtons(spring.RateNPerMm * (spring.FreeLength - fitted).Millimetres), open, spring.Solid, margin,
                spring.WahlFactor * 8 * open.Newtons * spring.MeanDiameter.Millimetres / (Math.PI * Math.Pow(spring.Wire.Millimetres, 3)),
                d / (2 * Math.PI * big * big * spring.ActiveCoils) * Math.Sqrt(spring.ShearModulusMpa * 1e6 / (2 * spring.DensityKgPerM3)),
                margin.Millimetres >= WarnBindMm - 1e-9 ? [] : [new Refusal("coil bind", $"{Show(margin.Millimetres)} mm left at full lift", $"{Show(WarnBindMm)} mm or more (common practice, no source)", "Measure fitted length and lift again, then the spring")]);
        });
    }

    /// <summary>Rate of a spring from two loads on a tester.</summary>
    /// <remarks>
    /// Formula: k = (F2 − F1)/(L1 − L2); u = √2·u_F/(L1 − L2). Units: N, mm. Range: the shorter length with the greater force. Errors: of the tester, carried; lengths taken as exact.
    /// Source: Hooke's law; JCGM 100.
    /// </remarks>
    public static Outcome<(double RateNPerMm, double StandardUncertaintyNPerMm)> RateFromLoads(Force first, Length atFirst, Force second, Length atSecond, Force forceUncertainty) => new InputCheck()
        .Positive("first force", first).Positive("first length", atFirst).Positive("second force", second).Positive("second length", atSecond).NotNegative("uncertainty of a force", forceUncertainty)
        .That(atFirst > atSecond && second > first, "second reading", $"{Show(second.Newtons)} N at {Show(atSecond.Millimetres)} mm", $"more than {Show(first.Newtons)} N at less than {Show(atFirst.Millimetres)} mm", "Read the longer length first, then the shorter")
        .Then(() => ((second - first).Newtons / (atFirst - atSecond).Millimetres, Math.Sqrt(2) * forceUncertainty.Newtons / (atFirst - atSecond).Millimetres));
}
