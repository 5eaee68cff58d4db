using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fluids;

/// <summary>What a leak-down reading says.</summary>
/// <param name="LossPercent">Part of the supply pressure that is lost over the tester's orifice, in per cent.</param>
/// <param name="AreaRatio">Leak area over orifice area.</param>
/// <param name="EquivalentDiameter">Diameter of one round hole that leaks as much.</param>
public sealed record LeakSize(double LossPercent, double AreaRatio, Length EquivalentDiameter);

/// <summary>The leak-down test. Percent scales of such testers are not standardised: their orifices differ, so the size of the leak is what can be compared.</summary>
public static class LeakDown
{
    private const double Gamma = 1.4;

    /// <summary>Size of the leak from supply and cylinder pressure.</summary>
    /// <remarks>
    /// Formula: A/A₀ = ψ(p₀, p₁)/ψ(p₁, p_a), ψ(p, q) = p·√(2γ/(γ − 1)·(r^(2/γ) − r^((γ + 1)/γ))), r = q/p, not below the choked 0.528282; γ 1.4; d = d₀·√(A/A₀).
    /// Units: bar, mm; supply and cylinder over ambient, ambient absolute. Range: supply 0.5 to 12 bar, cylinder above 0 and below supply, ambient 0.5 to 1.1 bar.
    /// Errors: the two holes taken to flow alike for their area; the piston at rest on top dead centre, warm. Source: isentropic flow of a perfect gas; orifice as FAA AC 43.13-1B change 1 (2001), 8-14.
    /// </remarks>
    public static Outcome<LeakSize> FromReading(Pressure supply, Pressure cylinder, Pressure ambient, Length orifice) => new InputCheck()
        .Within("supply pressure", supply.Bar, 0.5, 12, "bar").Within("ambient pressure", ambient.Bar, 0.5, 1.1, "bar").Positive("orifice", orifice)
        .That(cylinder.Bar > 0 && cylinder < supply, "cylinder pressure", $"{Show(cylinder.Bar)} bar", $"more than 0, less than the supply's {Show(supply.Bar)} bar", "Read both gauges with the flow steady")
        .Then(() =>
        {
            var (p0, p1, pa) = (supply.Bar + ambient.Bar, cylinder.Bar + ambient.Bar, ambient.Bar);
            var ratio = Flow(p0, p1) / Flow(p1, pa);
            return new LeakSize(100 * (supply - cylinder).Bar / supply.Bar, ratio, orifice * Math.Sqrt(ratio));
        });

    /// <summary>The orifice that a leak-down tester for an engine of a bore has.</summary>
    /// <remarks>
    /// Formula: 0.040 in under a bore of 5.00 in, 0.060 in from there on. Units: mm. Range: bore above 0. Errors: none; workshop testers differ.
    /// Source: FAA AC 43.13-1B change 1 (2001), paragraph 8-14, as an FAA safety notice (2011) quotes it.
    /// </remarks>
    public static Outcome<Length> OrificeFor(Length bore) => new InputCheck().Positive("bore", bore)
        .Then(() => Length.FromInches(bore.Inches < 5 - 1e-9 ? 0.040 : 0.060));

    private static double Flow(double from, double to)
    {
        var r = Math.Max(to / from, Math.Pow(2 / (Gamma + 1), Gamma / (Gamma - 1)));
        return from * Math.Sqrt(2 * Gamma / (Gamma - 1) * (Math.Pow(r, 2 / Gamma) - Math.Pow(r, (Gamma + 1) / Gamma)));
    }
}
