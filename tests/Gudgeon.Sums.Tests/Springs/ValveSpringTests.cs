using CsCheck;
using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Springs;

namespace Gudgeon.Sums.Tests.Springs;

public class ValveSpringTests
{
    // Jindal, Machine Design (2010), ex. 8-1: d 5, D 30, n 15, G 84 GPa, 300 N: k 16.2037 N/mm, 18.5143 mm (recomputed; the transcription's 16.0 and 18.0 are integer divisions).
    [Fact]
    public void Rate_is_the_textbooks_without_its_slips()
    {
        var work = AtWork(new(Mm(5), Mm(30), 15, 17, Mm(150), true, 84_000), 150 - 18.5143, 0);
        Assert.Equal(16.2037, work.RateNPerMm, 1e-4);
        Assert.Equal(300, work.SeatForce.Newtons, 1e-3);
    }

    // Jindal ex. 8-7: d 1.016, outside 12.6, n 14, G 81 GPa: 0.496 N/mm; Shigley 9th ed. ex. 10-1: d 0.037 in, outside 7/16 in, n 10.5, G 11.85e6 psi: 4.116 lbf/in (from memory, recomputed).
    [Fact]
    public void Rate_of_thin_wire_is_the_textbooks()
    {
        Assert.Equal(0.496, AtWork(new(Mm(1.016), Mm(12.6 - 1.016), 14, 16, Mm(60), true, 81_000), 50, 5).RateNPerMm, 0.0005);
        var music = AtWork(new(Length.FromInches(0.037), Length.FromInches(0.4375 - 0.037), 10.5, 12.5, Length.FromInches(2.066), false, 11.85e6 * 0.006894757293168361), 45, 5);
        Assert.Equal(4.116, music.RateNPerMm / 0.1751268352, 0.005 * 4.116);
        Assert.Equal(0.4995, music.Solid.Inches, 1e-9);
    }

    // Sadhu Singh, Machine Design I: Wahl's factor 1.2525 at C 6 and 1.1840 at C 8 (transcription, recomputed).
    [Theory]
    [InlineData(6, 1.2525)]
    [InlineData(8, 1.1840)]
    public void Stress_holds_wahls_factor(double index, double factor)
    {
        var work = AtWork(new(Mm(5), Mm(5 * index), 8, 10, Mm(150), true, 84_000), 140, 10);
        Assert.Equal(factor, work.StressMpa * Math.PI * 125 / (8 * work.OpenForce.Newtons * 5 * index), 1e-4);
    }

    // Sadhu Singh ex. 8.1's spring, d 4.25, D 34, n 14, G 84 GPa, ρ 7800: 96.98 Hz (two forms agree; the transcription's 3.079 is a slip of units).
    [Fact]
    public void Surge_is_in_hertz() => Assert.Equal(96.98, AtWork(new(Mm(4.25), Mm(34), 14, 16, Mm(123), true, 84_000, 7800), 100, 8).SurgeHz, 0.01);

    // Invented inputs, recomputed: d 4, D 26, n 5.5, Nt 7.5, G 79.3 GPa, free 52, fitted 40: 26.25067 N/mm, 315.008 N shut; at 10 mm lift 577.515 N and solid 30.0, which is coil bind.
    [Fact]
    public void Spring_that_just_binds_is_refused_and_a_hair_before_it_is_not()
    {
        var spring = new ValveSpring(Mm(4), Mm(26), 5.5, 7.5, Mm(52), true);
        Says.One("length at full lift: met 30 mm; expected more than solid, 30 mm. The coils bind: take a spring of fewer coils or thinner wire, or fit it longer.", ValveSprings.AtWork(spring, Mm(40), Mm(10)));
        var work = AtWork(spring, 40, 9.99);
        Assert.Equal(26.25067, work.RateNPerMm, 1e-5);
        Assert.Equal(315.008, work.SeatForce.Newtons, 1e-3);
        Assert.Equal(577.515 - 0.01 * 26.25067, work.OpenForce.Newtons, 1e-3);
        Assert.Equal("coil bind: met 0.01 mm left at full lift; expected 0.8 mm or more (common practice, no source). Measure fitted length and lift again, then the spring.", Assert.Single(work.Warnings).ToString());
        Assert.Empty(AtWork(spring, 40, 9.2 - 1e-9).Warnings);
    }

    // Bhandari ex. 10.4 as transcribed: d 4, 9 coils ground, open at 30 mm: solid at 36 mm, so it cannot open.
    [Fact]
    public void Textbook_spring_that_binds_is_refused() => Says.One(
        "length at full lift: met 30 mm; expected more than solid, 36 mm. The coils bind: take a spring of fewer coils or thinner wire, or fit it longer.",
        ValveSprings.AtWork(new(Mm(4), Mm(24), 7, 9, Mm(49), true, 81_370), Mm(35), Mm(5)));

    // Bhandari ex. 10.4: 150 N at 35 mm, 300 N at 30 mm: 30 N/mm.
    [Fact]
    public void Rate_from_two_loads_is_the_textbooks()
    {
        var (rate, u) = ValveSprings.RateFromLoads(Force.FromNewtons(150), Mm(35), Force.FromNewtons(300), Mm(30), Force.FromNewtons(2)).Value;
        Assert.Equal(30, rate, 1e-9);
        Assert.Equal(2 * Math.Sqrt(2) / 5, u, 1e-12);
    }

    // Invented readings, by hand: (600 − 250)/(38 − 28).
    [Fact]
    public void Rate_from_two_loads_is_the_one_by_hand() =>
        Assert.Equal(35, ValveSprings.RateFromLoads(Force.FromNewtons(250), Mm(38), Force.FromNewtons(600), Mm(28), Force.Zero).Value.RateNPerMm, 1e-12);

    [Fact]
    public void Rate_measured_on_the_spring_is_the_rate_reckoned() =>
        Gen.Select(Gen.Double[2, 6], Gen.Double[5, 10], Gen.Double[4, 9]).Sample((d, index, n) =>
        {
            var spring = new ValveSpring(Mm(d), Mm(d * index), n, n + 2, Mm(d * (n + 2) + 40), true);
            var work = AtWork(spring, spring.FreeLength.Millimetres - 10, 15);
            Assert.Equal(work.RateNPerMm, ValveSprings.RateFromLoads(work.SeatForce, spring.FreeLength - Mm(10), work.OpenForce, spring.FreeLength - Mm(25), Force.Zero).Value.RateNPerMm, 1e-6 * work.RateNPerMm);
        });

    [Fact]
    public void Bad_spring_is_refused_all_at_once() => Says.All(
        ValveSprings.AtWork(new(Mm(4), Mm(8), 0, -1, Mm(50), true), Mm(50), Mm(-1)),
        "active coils: met 0; expected 1 to 100. Look at active coils again.",
        "total coils: met -1; expected 0 or more, 110 at most. Count the coils end to end.",
        "mean diameter: met 8 mm on 4 mm wire; expected 2.5 to 50 wires. Measure the outside and take one wire off.",
        "lift: met -1 mm; expected 0 mm or more. Look at lift again.",
        "fitted length: met 50 mm; expected less than the free length, 50 mm. Measure from seat to retainer with the valve shut.");

    [Fact]
    public void Readings_the_wrong_way_round_are_refused() => Says.One(
        "second reading: met 150 N at 35 mm; expected more than 300 N at less than 30 mm. Read the longer length first, then the shorter.",
        ValveSprings.RateFromLoads(Force.FromNewtons(300), Mm(30), Force.FromNewtons(150), Mm(35), Force.Zero));

    private static SpringAtWork AtWork(ValveSpring spring, double fitted, double lift) => ValveSprings.AtWork(spring, Mm(fitted), Mm(lift)).Value;

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
