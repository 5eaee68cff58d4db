using Gudgeon.Sums.Fits;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fits;

public class TextbookFitTests
{
    private static Length Mm(double value) => Length.FromMillimetres(value);

    // Sharma, A Textbook of Production Engineering, chapter 9, examples 9.1, 9.3 and 9.5 (seen in stored notebooks).
    [Theory]
    [InlineData(37.50, 37.52, 37.45, 37.47, 0.03, 0.07)]
    [InlineData(75.000, 75.225, 75.2625, 75.4875, -0.4875, -0.0375)]
    [InlineData(30.000, 30.020, 29.982, 29.995, 0.005, 0.038)]
    public void Fit_ofTypedLimits_hasClearancesOfTheBook(double holeLow, double holeHigh, double shaftLow, double shaftHigh, double least, double most)
    {
        var fit = new Fit((Mm(holeLow), Mm(holeHigh)), (Mm(shaftLow), Mm(shaftHigh)));
        Assert.Equal(least, fit.SmallestClearance.Millimetres, 1e-9);
        Assert.Equal(most, fit.LargestClearance.Millimetres, 1e-9);
    }

    // ISO 286-1:1988 formulas (from memory) at D = √(50·80) = 63.246: they agree with the table there.
    [Theory]
    [InlineData("g6", -1, 2.5, 0.34)]
    [InlineData("f7", -1, 5.5, 0.41)]
    [InlineData("e8", -1, 11, 0.41)]
    [InlineData("n6", 1, 5, 0.34)]
    public void Iso286_deviationNearestZero_agreesWithItsFormula(string toleranceClass, int sign, double factor, double power)
    {
        var deviations = Iso286.Of(Mm(60), toleranceClass);
        var nearest = sign < 0 ? deviations.Upper.Micrometres : deviations.Lower.Micrometres;
        Assert.Equal(sign * factor * Math.Pow(63.246, power), nearest, 0.5);
    }

    // Kazimi, Solid Mechanics, chapter 5, example 10 (p. 151, seen): sleeve 99.9 mm on a rod of 100, 2.02e-5, from 10 °C: 59.55 °C; rod 1.17e-5: loose at 127.76 °C.
    [Fact]
    public void PressFit_sleeveOnRod_isHeatedAndComesLooseAsInTheBook()
    {
        Assert.Equal(59.55, 10 + PressFit.HeatToAssemble(Mm(0.1), Mm(0), Mm(99.9), 2.02e-5).Kelvins, 0.005);
        var at20 = Mm(0.1) - Mm(99.9) * ((2.02e-5 - 1.17e-5) * 10);
        Assert.Equal(0, PressFit.InterferenceAt(at20, Mm(99.9), 2.02e-5, 1.17e-5, Temperature.FromCelsius(127.76)).Millimetres, 1e-5);
        Assert.True(PressFit.InterferenceAt(at20, Mm(99.9), 2.02e-5, 1.17e-5, Temperature.FromCelsius(120)) > Length.Zero);
    }

    // Junnarkar, Mechanics of Structures, chapter 1, example 14 (seen): hoop stress 6 of E 13000 ton/in², 6.2e-6 per °F: 74.4 °F.
    [Fact]
    public void PressFit_shrunkTyre_leastHeating() =>
        Assert.Equal(74.44, PressFit.HeatToAssemble(Mm(1000.0 * 6 / 13000), Mm(0), Mm(1000), 6.2e-6 * 1.8).Kelvins * 1.8, 0.005);

    [Theory]
    [InlineData(36, "H7/p6", 36.000, 36.025, 36.026, 36.042)]
    [InlineData(86, "H7/g6", 86.000, 86.035, 85.966, 85.988)]
    public void Fit_thatWasTyped_isFound(double size, string classes, double holeLow, double holeHigh, double shaftLow, double shaftHigh)
    {
        // ISO 286-2 tables as read in two public transcriptions that agree (seen).
        var fit = Fit.Find(Mm(size), $" {classes} ", "fit").Value;
        Assert.Equal([holeLow, holeHigh, shaftLow, shaftHigh], new[] { fit.Hole.Lower, fit.Hole.Upper, fit.Shaft.Lower, fit.Shaft.Upper }.Select(l => Math.Round(l.Millimetres, 6)));
    }

    [Theory]
    [InlineData(36, "", "fit: met nothing; expected a hole and a shaft such as H7/g6. Type the hole in a capital letter, a stroke, the shaft in a small one.")]
    [InlineData(36, "H7", "fit: met \"H7\"; expected a hole and a shaft such as H7/g6. Type the hole in a capital letter, a stroke, the shaft in a small one.")]
    [InlineData(36, "g6/H7", "fit: met \"g6/H7\"; expected a hole and a shaft such as H7/g6. Type the hole in a capital letter, a stroke, the shaft in a small one.")]
    [InlineData(36, "H4/g6", "fit, hole: met \"H4\"; expected a grade from 5 to 9. Type the limits themselves.")]
    [InlineData(36, "H7/x6", "fit, shaft: met \"x6\"; expected a letter of d e f g h js k m n p r s u. Type the limits themselves.")]
    [InlineData(36, "K5/g6", "fit, hole: met \"K5\"; expected grade 6 or coarser for a hole from K on. Type the limits themselves.")]
    [InlineData(36, "H/g", "fit, hole: met \"H\"; expected a grade from 5 to 9. Type the limits themselves. fit, shaft: met \"g\"; expected a grade from 5 to 9. Type the limits themselves.")]
    [InlineData(120.001, "H7/g6", "fit, hole: met a size of 120.001 mm; expected above 0 and up to 120 mm. Type the limits themselves. fit, shaft: met a size of 120.001 mm; expected above 0 and up to 120 mm. Type the limits themselves.")]
    [InlineData(0, "H7/g6", "fit, hole: met a size of 0 mm; expected above 0 and up to 120 mm. Type the limits themselves. fit, shaft: met a size of 0 mm; expected above 0 and up to 120 mm. Type the limits themselves.")]
    public void Fit_thatCannotBe_isRefusedInFourParts(double size, string classes, string message) =>
        Assert.Equal(message, string.Join(' ', Fit.Find(Mm(size), classes, "fit").Refusals));

    // ISO 286-1:2010, table 1 (seen in public transcriptions): the ends of a step belong to the step below.
    [Theory]
    [InlineData(3, 7, 10)]
    [InlineData(3.001, 7, 12)]
    [InlineData(30, 6, 13)]
    [InlineData(30.001, 6, 16)]
    [InlineData(120, 9, 87)]
    [InlineData(120, 5, 15)]
    public void Iso286_grade_isOfTheTable(double size, int grade, double micrometres) =>
        Assert.Equal(micrometres, Iso286.Grade(Mm(size), grade).Micrometres, 1e-9);

    [Fact]
    public void Iso286_gradeBeyondTheTable_throws()
    {
        Assert.StartsWith("The grade must lie from 5 to 9.", Assert.Throws<ArgumentOutOfRangeException>(() => Iso286.Grade(Mm(36), 10)).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => Iso286.Grade(Mm(36), 4));
    }

    // ISO 286-2 coarse holes and shafts at 25 mm, and the key seats N9 and P9 of 8 mm and the smallest step, all from memory; they follow the Δ rule of ISO 286-1.
    [Theory]
    [InlineData(25, "K8", 10, -23)]
    [InlineData(25, "M8", 4, -29)]
    [InlineData(25, "N8", -3, -36)]
    [InlineData(25, "P8", -22, -55)]
    [InlineData(25, "P7", -14, -35)]
    [InlineData(8, "N9", 0, -36)]
    [InlineData(8, "P9", -15, -51)]
    [InlineData(2, "N9", -4, -29)]
    [InlineData(25, "k7", 23, 2)]
    [InlineData(25, "k8", 33, 0)]
    public void Iso286_coarseClass_isOfTheTable(double size, string toleranceClass, double upper, double lower)
    {
        var deviations = Iso286.Of(Mm(size), toleranceClass);
        Assert.Equal((upper, lower), (Math.Round(deviations.Upper.Micrometres, 6), Math.Round(deviations.Lower.Micrometres, 6)));
    }

    [Fact]
    public void Fit_thatIsNoText_throws()
    {
        Assert.Throws<ArgumentNullException>(() => Fit.Of(Mm(25), null!));
        Assert.Throws<ArgumentNullException>(() => Fit.Find(Mm(25), null!, "fit"));
        Assert.Throws<ArgumentNullException>(() => Iso286.Of(Mm(25), null!));
        Assert.Throws<ArgumentNullException>(() => Iso286.Find(Mm(25), null!, "class"));
    }
}
