using CsCheck;
using Gudgeon.Sums.Fasteners;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fasteners;

public class ThreadTests
{
    // ISO 724 and ASME B1.13M reproductions (d2, D1), ISO 898-1 reproductions (As to three figures): seen. d3 and full digits of As: recomputed with numpy 1.24.2.
    [Theory]
    [InlineData("M6", 5.350, 4.917, 4.773, 20.1234, 20.1)]
    [InlineData("M8", 7.188, 6.647, 6.466, 36.6085, 36.6)]
    [InlineData("M8x1", 7.350, 6.917, 6.773, 39.1671, 39.2)]
    [InlineData("M10", 9.026, 8.376, 8.160, 57.9896, 58.0)]
    [InlineData("M10x1.25", 9.188, 8.647, 8.466, 61.1986, 61.2)]
    [InlineData("M10x1", 9.350, 8.917, 8.773, 64.4940, 64.5)]
    [InlineData("M12", 10.863, 10.106, 9.853, 84.2665, 84.3)]
    [InlineData("M12x1.5", 11.026, 10.376, 10.160, 88.1260, 88.1)]
    [InlineData("M12x1.25", 11.188, 10.647, 10.466, 92.0718, 92.1)]
    [InlineData("M14", 12.701, 11.835, 11.546, 115.4394, 115)]
    [InlineData("M14x1.5", 13.026, 12.376, 12.160, 124.5455, 125)]
    public void Metric_thread_has_the_standard_diameters(string size, double d2, double d1, double d3, double area, double printed)
    {
        var thread = ThreadTable.Find(size).Value;
        Assert.Equal(d2, thread.PitchDiameterMm, 0.001);
        Assert.Equal(d1, thread.NutMinorMm, 0.001);
        Assert.Equal(d3, thread.RootMm, 0.001);
        Assert.Equal(area, thread.StressAreaMm2, 0.00006);
        Assert.Equal(printed, double.Parse(thread.StressAreaMm2.ToString("G3")));
    }

    // Jindal, Machine Design (2010), ex. 9-1 p.266: read in a transcription, recomputed.
    [Theory]
    [InlineData("M16", 156.7)]
    [InlineData("M16x1.5", 167.2)]
    public void Metric_thread_has_the_textbook_stress_area(string size, double area) => Assert.Equal(area, ThreadTable.Find(size).Value.StressAreaMm2, 0.1);

    // ASME B1.1 as printed in Shigley table 8-2: seen in a code listing. 3/4-10 Wentzell (transcription), 3/4-16 Shigley 9th ed. ex. 8-3 (seen).
    [Theory]
    [InlineData("1/4-20", 0.0318, 1e-4)]
    [InlineData("1/4-28", 0.0364, 1e-4)]
    [InlineData("5/16-18", 0.0524, 1e-4)]
    [InlineData("5/16-24", 0.0580, 1.1e-4)]
    [InlineData("3/8-16", 0.0775, 1e-4)]
    [InlineData("3/8-24", 0.0878, 1e-4)]
    [InlineData("7/16-14", 0.1063, 1e-4)]
    [InlineData("7/16-20 UNF", 0.1187, 1e-4)]
    [InlineData("1/2 UNC", 0.1419, 1e-4)]
    [InlineData("1/2-20", 0.1599, 1.1e-4)]
    [InlineData("3/4-10", 0.334, 5e-4)]
    [InlineData("3/4-16", 0.373, 5e-4)]
    public void Unified_thread_has_the_standard_stress_area(string size, double squareInch, double tolerance) =>
        Assert.Equal(squareInch, ThreadTable.Find(size).Value.StressAreaMm2 / 645.16, tolerance);

    [Theory]
    [InlineData("M10", "m 10 × 1.5")]
    [InlineData("M10x1.25", "M10X1.25")]
    [InlineData("7/16-20", "7/16 - 20 unf")]
    public void Find_reads_what_people_write(string size, string written) => Assert.Same(ThreadTable.Find(size).Value, ThreadTable.Find(written).Value);

    // ASME B1.1, threads to the inch, coarse and fine; from memory.
    [Theory]
    [InlineData("1/4", 0.25, 20, 28)]
    [InlineData("5/16", 0.3125, 18, 24)]
    [InlineData("3/8", 0.375, 16, 24)]
    [InlineData("7/16", 0.4375, 14, 20)]
    [InlineData("1/2", 0.5, 13, 20)]
    [InlineData("9/16", 0.5625, 12, 18)]
    [InlineData("5/8", 0.625, 11, 18)]
    [InlineData("3/4", 0.75, 10, 16)]
    [InlineData("7/8", 0.875, 9, 14)]
    [InlineData("1", 1, 8, 12)]
    public void Unified_size_has_its_coarse_and_its_fine_thread(string size, double inches, int coarse, int fine)
    {
        foreach (var (perInch, series) in new[] { (coarse, "UNC"), (fine, "UNF") })
        {
            var thread = ThreadTable.Find($"{size} {series}").Value;
            Assert.Equal($"{size}-{perInch}", thread.Designation);
            Assert.Equal(ThreadFamily.Unified, thread.Family);
            Assert.Equal(25.4 * inches, thread.NominalMm, 1e-12);
            Assert.Equal(25.4 / perInch, thread.PitchMm, 1e-12);
            Assert.Same(thread, ThreadTable.Find($"{size}-{perInch}").Value);
            Assert.Same(thread, ThreadTable.Find($"{size}-{perInch} {series}").Value);
        }
    }

    [Fact]
    public void Size_that_is_no_text_is_a_bug() => Assert.Throws<ArgumentNullException>(() => ThreadTable.Find(null!));

    [Fact]
    public void Every_listed_thread_finds_itself() => Assert.All(ThreadTable.All, thread => Assert.Same(thread, ThreadTable.Find(thread.Designation).Value));

    [Fact]
    public void Any_thread_keeps_its_diameters_in_order() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[0.01, 0.49]).Sample((d, part) =>
        {
            var thread = ScrewThread.Of("odd", ThreadFamily.Metric, Length.FromMillimetres(d), Length.FromMillimetres(d * part)).Value;
            Assert.True(thread.RootMm < thread.NutMinorMm && thread.NutMinorMm < thread.PitchDiameterMm && thread.PitchDiameterMm < thread.NominalMm);
        });

    [Fact]
    public void Find_of_an_unlisted_size_is_refused() => Says.One(
        "thread: met M11; expected a listed size such as M10, M10x1.25 or 7/16-20. Measure the outside diameter and the pitch and give both.", ThreadTable.Find("M11"));

    [Theory]
    [InlineData(-1, 1, "thread diameter: met -1 mm; expected more than 0 mm. Look at thread diameter again.")]
    [InlineData(10, 5, "thread pitch: met 5 mm on 10 mm; expected less than half of the diameter. Measure the pitch with a gauge, crest to crest.")]
    [InlineData(10, 0, "thread pitch: met 0 mm; expected more than 0 mm. Look at thread pitch again.")]
    public void Thread_that_cannot_be_is_refused(double d, double p, string message)
    {
        var refusals = ScrewThread.Of("odd", ThreadFamily.Metric, Length.FromMillimetres(d), Length.FromMillimetres(p)).Refusals;
        Assert.Equal(message, refusals[0].ToString());
    }
}
