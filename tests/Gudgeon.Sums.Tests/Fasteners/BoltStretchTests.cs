using CsCheck;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fasteners;

public class BoltStretchTests
{
    private static readonly double WentzellNPerMm = Force.FromPoundsForce(30e6 * 0.334 / 5).Newtons / 25.4;

    // Wentzell, Machine Design (2004), ex. 6.2 and 6.3: read in a transcription, recomputed.
    [Fact]
    public void Stretch_and_angle_are_the_textbooks()
    {
        var load = Force.FromPoundsForce(24131.5);
        Assert.Equal(0.0120417, BoltStretch.Stretch(load, WentzellNPerMm).Value.Inches, 1e-6);
        Assert.Equal(43.35, BoltStretch.AngleForLoad(load, Length.FromInches(0.1), WentzellNPerMm, double.PositiveInfinity).Value.Degrees, 0.01);
        Assert.Equal(370.46, BoltStretch.WarmingForStretch(Length.FromInches(0.01204), Length.FromInches(5), 6.5e-6 * 1.8).Value.FahrenheitDegrees, 0.01);
    }

    // Invented inputs, recomputed with numpy 1.24.2.
    [Fact]
    public void Sections_in_series_add_their_stretch()
    {
        var stiffness = BoltStretch.StiffnessNPerMm([new(Mm(40), Math.PI * 25), new(Mm(20), 57.9896)]).Value;
        Assert.Equal(239_995, stiffness, 0.5);
        Assert.Equal(0.125003, BoltStretch.Stretch(Force.FromKilonewtons(30), stiffness).Value.Millimetres, 1e-5);
    }

    // Wentzell ex. 6.4: ten studs 1¼ in at 0.9 of 120 000 psi, L 6 in, flange 50 in² of the same steel, 500 psi on a 20 in bore: 1 186 593 lbf in all. Transcription.
    [Fact]
    public void Share_of_an_outside_load_is_the_textbooks()
    {
        var bolts = 10 * 1.073;
        var share = BoltStretch.BoltShare(bolts * 30e6 / 6, 50 * 30e6 / 6).Value;
        Assert.Equal(1_186_593, 10 * 0.9 * 1.073 * 120_000 + share * 500 * Math.PI * 100, 1.0);
    }

    [Fact]
    public void Load_from_angle_undoes_the_angle() =>
        Gen.Select(Gen.Double[0.1, 200], Gen.Double[0.5, 3], Gen.Double[5e4, 1e6], Gen.Double[5e4, 5e6]).Sample((kn, pitch, bolt, joint) =>
        {
            var angle = BoltStretch.AngleForLoad(Force.FromKilonewtons(kn), Mm(pitch), bolt, joint).Value;
            if (angle.Degrees <= 720)
                Assert.Equal(kn, BoltStretch.LoadFromAngle(angle, Mm(pitch), bolt, joint).Value.Kilonewtons, 1e-9 * kn);
        });

    [Fact]
    public void Soft_joint_needs_more_angle() =>
        Gen.Select(Gen.Double[5e4, 5e5], Gen.Double[1.01, 20]).Sample((joint, ratio) => Assert.True(
            BoltStretch.AngleForLoad(Force.FromKilonewtons(30), Mm(1.5), 2e5, joint).Value > BoltStretch.AngleForLoad(Force.FromKilonewtons(30), Mm(1.5), 2e5, joint * ratio).Value));

    [Fact]
    public void Load_from_lengths_carries_the_readings()
    {
        // By hand: 0.1 mm at 240 000 N/mm is 24 kN; 5 µm on each reading is √2·5 µm on the difference, 1697 N.
        var (load, u) = BoltStretch.LoadFromLengths(Mm(80), Mm(80.1), Mm(0.005), 240_000).Value;
        Assert.Equal(24_000, load.Newtons, 1e-6);
        Assert.Equal(1697.06, u.Newtons, 0.01);
    }

    [Fact]
    public void Shorter_after_tightening_is_refused() => Says.One(
        "tightened length: met 79.9 mm; expected 80 mm or more. Check that the two readings are in the right order and taken cold.",
        BoltStretch.LoadFromLengths(Mm(80), Mm(79.9), Mm(0.005), 240_000));

    [Fact]
    public void Bolt_without_sections_is_refused() => Says.One(
        "bolt sections: met none; expected one or more. Give the shank and the thread under load.", BoltStretch.StiffnessNPerMm([]));

    [Fact]
    public void Bad_section_is_refused_by_number() => Says.All(
        BoltStretch.StiffnessNPerMm([new(Mm(40), 78), new(Mm(-1), 0)]),
        "length of section 2: met -1 mm; expected more than 0 mm. Look at length of section 2 again.",
        "area of section 2: met 0 mm²; expected more than 0 mm². Look at area of section 2 again.");

    [Fact]
    public void Two_turns_and_more_are_refused() => Says.One(
        "angle: met 721°; expected 0 to 720°. Look at angle again.", BoltStretch.LoadFromAngle(Angle.FromDegrees(721), Mm(1.5), 2e5, 2e5));

    [Fact]
    public void Joint_without_stiffness_is_refused() => Says.One(
        "joint stiffness: met 0 N/mm; expected more than 0 N/mm. Look at joint stiffness again.", BoltStretch.AngleForLoad(Force.FromNewtons(1), Mm(1.5), 2e5, 0));

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
