using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fasteners;

public class StrengthTests
{
    private static readonly string[] Classes = ["8.8", "10.9", "12.9"];

    // ISO 898-1, proof loads and minimum ultimate loads, coarse thread: read in two and three supplier reproductions.
    // The printed loads are rounded from the rounded area, so the exact product is up to 0.7 % off.
    [Theory]
    [InlineData("M6", new double[] { 11600, 16700, 19500 }, new double[] { 16100, 20900, 24500 })]
    [InlineData("M8", new double[] { 21200, 30400, 35500 }, new double[] { 29200, 38100, 44600 })]
    [InlineData("M10", new double[] { 33700, 48100, 56300 }, new double[] { 46400, 60300, 70800 })]
    [InlineData("M12", new double[] { 48900, 70000, 81800 }, new double[] { 67400, 87700, 103000 })]
    [InlineData("M14", new double[] { 66700, 95500, 112000 }, new double[] { 92000, 120000, 140000 })]
    public void Coarse_loads_are_as_printed_and_near_the_product(string size, double[] proof, double[] ultimate)
    {
        var thread = ThreadTable.Find(size).Value;
        for (var i = 0; i < Classes.Length; i++)
        {
            var strength = Of(Classes[i], thread.NominalMm);
            Assert.Equal((Force.FromNewtons(proof[i]), true), ProofLoadTable.Proof(thread, strength));
            Assert.Equal((Force.FromNewtons(ultimate[i]), true), ProofLoadTable.Ultimate(thread, strength));
            Assert.InRange(thread.StressAreaMm2 * strength.ProofMpa, proof[i] * 0.993, proof[i] * 1.007);
            Assert.InRange(thread.StressAreaMm2 * strength.TensileMpa, ultimate[i] * 0.993, ultimate[i] * 1.007);
        }
    }

    // ISO 898-1, proof loads, fine thread: from memory, recomputed from the printed area times the proof stress.
    [Theory]
    [InlineData("M8x1", 22700, 32500, 38000)]
    [InlineData("M10x1.25", 35500, 50800, 59400)]
    [InlineData("M12x1.5", 51100, 73100, 85500)]
    [InlineData("M12x1.25", 53400, 76400, 89300)]
    [InlineData("M14x1.5", 72500, 104000, 121000)]
    public void Fine_proof_loads_come_from_the_product(string size, double eight, double ten, double twelve)
    {
        var thread = ThreadTable.Find(size).Value;
        foreach (var (mark, expected) in Classes.Zip(new[] { eight, ten, twelve }))
        {
            var (load, printed) = ProofLoadTable.Proof(thread, Of(mark, thread.NominalMm));
            Assert.False(printed);
            Assert.InRange(load.Newtons, expected * 0.993, expected * 1.007);
        }
    }

    // ISO 898-1: Sp and Rm follow from its load tables (seen); Rp0.2 by the ratios of the VDI 2230 preload table; 8.8 above 16 mm from memory.
    [Theory]
    [InlineData("8.8", 16, 580, 640, 800)]
    [InlineData("8.8", 16.01, 600, 660, 830)]
    [InlineData("10.9", 12, 830, 940, 1040)]
    [InlineData("12.9", 12, 970, 1100, 1220)]
    public void Class_has_the_standard_strengths(string mark, double d, double proof, double yield, double tensile) =>
        Assert.Equal(new PropertyClass(mark, proof, yield, tensile), Of(mark, d));

    // ISO 898-1:2013 table 3, from memory: proof stress, least yield, least tensile strength, MPa.
    [Theory]
    [InlineData("4.6", 39, 225, 240, 400)]
    [InlineData("4.8", 39, 310, 340, 420)]
    [InlineData("5.6", 39, 280, 300, 500)]
    [InlineData("5.8", 39, 380, 420, 520)]
    [InlineData("6.8", 39, 440, 480, 600)]
    [InlineData("8.8", 39, 600, 660, 830)]
    [InlineData("9.8", 16, 650, 720, 900)]
    [InlineData("10.9", 39, 830, 940, 1040)]
    [InlineData("12.9", 39, 970, 1100, 1220)]
    public void Class_holds_to_its_largest_size_and_not_beyond(string mark, double d, double proof, double yield, double tensile)
    {
        Assert.Equal(new PropertyClass(mark, proof, yield, tensile), Of(mark, d));
        Assert.False(PropertyClass.Of(mark, Length.FromMillimetres(d + 0.01)).Ok);
    }

    // SAE J429 table 1, from memory, ksi: the grade at its largest size and a step beyond, where it is weaker or unknown.
    [Theory]
    [InlineData("grade 2", 0.75, 55, 57, 74)]
    [InlineData("grade 2", 0.76, 33, 36, 60)]
    [InlineData("grade 2", 1.5, 33, 36, 60)]
    [InlineData("grade 5", 1, 85, 92, 120)]
    [InlineData("grade 5", 1.01, 74, 81, 105)]
    [InlineData("grade 5", 1.5, 74, 81, 105)]
    [InlineData(" GRADE   8 ", 1.5, 120, 130, 150)]
    public void Grade_holds_to_its_largest_size(string mark, double inches, double proof, double yield, double tensile)
    {
        var strength = PropertyClass.Of(mark, Length.FromInches(inches)).Value;
        Assert.Equal([proof, yield, tensile], new[] { strength.ProofMpa, strength.YieldMpa, strength.TensileMpa }.Select(mpa => Math.Round(Pressure.FromMegapascals(mpa).PoundsPerSquareInch / 1000, 6)));
    }

    [Theory]
    [InlineData("grade 2")]
    [InlineData("grade 5")]
    [InlineData("grade 8")]
    public void Grade_beyond_an_inch_and_a_half_is_refused(string mark) => Assert.False(PropertyClass.Of(mark, Length.FromInches(1.501)).Ok);

    [Fact]
    public void Mark_that_is_no_text_is_a_bug() => Assert.Throws<ArgumentNullException>(() => PropertyClass.Of(null!, Length.FromMillimetres(10)));

    // "10.9 yields at 900" is the nominal figure; the least one is 940 MPa.
    [Fact]
    public void Class_yield_is_the_least_not_the_nominal_one() => Assert.NotEqual(900, Of("10.9", 10).YieldMpa);

    // SAE J429 grade 2 proof 55 000 psi; clamp load at 75 % of proof as printed by a hardware seller: seen. 5/16-24 is off by 0.3 % in that table.
    [Theory]
    [InlineData("1/4-20", 1312, 1)]
    [InlineData("5/16-18", 2162, 1)]
    [InlineData("3/8-16", 3197, 1.5)]
    [InlineData("7/16-14", 4385, 2)]
    [InlineData("1/2-13", 5853, 2)]
    [InlineData("1/4-28", 1502, 2)]
    [InlineData("3/8-24", 3622, 2)]
    [InlineData("7/16-20", 4896, 2)]
    [InlineData("5/16-24", 2397, 8)]
    public void Grade_two_clamp_load_is_the_sellers(string size, double poundsForce, double tolerance)
    {
        var thread = ThreadTable.Find(size).Value;
        Assert.Equal(poundsForce, 0.75 * ProofLoadTable.Proof(thread, Of("grade 2", thread.NominalMm)).Load.PoundsForce, tolerance);
    }

    // SAE J429: grade 5 read in a reproduction, grade 8 from memory; psi.
    [Theory]
    [InlineData("grade 5", 85000, 120000)]
    [InlineData("grade 8", 120000, 150000)]
    public void Grade_has_the_standard_strengths(string mark, double proof, double tensile)
    {
        var strength = Of(mark, 12.7);
        Assert.Equal(proof, Pressure.FromMegapascals(strength.ProofMpa).PoundsPerSquareInch, 0.01);
        Assert.Equal(tensile, Pressure.FromMegapascals(strength.TensileMpa).PoundsPerSquareInch, 0.01);
    }

    [Theory]
    [InlineData("none", 10)]
    [InlineData("10.9", 40)]
    [InlineData("grade 2", 39)]
    [InlineData("8.8", 0)]
    [InlineData("grade 2", 0)]
    public void Unknown_mark_is_refused(string mark, double d) => Says.One(
        $"property class: met {mark} at {d} mm; expected 4.6 to 12.9 (ISO 898-1) or grade 2, 5, 8 (SAE J429) within its sizes. "
        + "Read the mark on the head; treat an unmarked bolt as unknown and renew it.", PropertyClass.Of(mark, Length.FromMillimetres(d)));

    private static PropertyClass Of(string mark, double d) => PropertyClass.Of(mark, Length.FromMillimetres(d)).Value;
}
