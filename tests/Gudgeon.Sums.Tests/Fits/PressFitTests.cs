using Gudgeon.Sums.Fits;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Fits;

public class PressFitTests
{
    // Ugural and Fenster, Example 8.3, and Bhavikatti, Example 8.17 (both seen); recomputed with NumPy by formula and as a linear system.
    [Fact]
    public void Tubes_ugural_agree()
    {
        var fit = Make(150, 200, 250, 0.1, 200, 0.3, 200, 0.3);
        Assert.Equal(12.304688, fit.Contact.Megapascals, 1e-6);
        Assert.Equal(56.0547, fit.OuterHoopAtJoint.Megapascals, 5e-5);
        Assert.Equal(43.75, fit.OuterHoopAtOutside.Megapascals, 5e-5);
        Assert.Equal(-43.9453, fit.InnerHoopAtJoint.Megapascals, 5e-5);
        Assert.Equal(-56.25, fit.InnerHoopAtBore.Megapascals, 5e-5);
    }

    // Bhavikatti, Example 8.16 (seen): p 30 MPa needs 0.189394 mm; hoop +166.3636 and −136.6667.
    [Fact]
    public void Tubes_bhavikatti_agree()
    {
        var fit = Make(100, 125, 150, 0.189394, 200, 0.3, 200, 0.3);
        Assert.Equal(30, fit.Contact.Megapascals, 1e-4);
        Assert.Equal(166.3636, fit.OuterHoopAtJoint.Megapascals, 5e-4);
        Assert.Equal(-136.6667, fit.InnerHoopAtJoint.Megapascals, 5e-4);
    }

    // Junnarkar, chapter 10 example 13 (seen): 1.5/3.0/4.5 in, 0.003 in on diameter, E 13000 ton/in². Ratios carry over to any unit.
    [Fact]
    public void Tubes_junnarkar_agree()
    {
        var fit = Make(1.5, 3.0, 4.5, 0.0015, 13, 0.3, 13, 0.3);
        Assert.Equal(1.523438, fit.Contact.Megapascals, 1e-6);
        Assert.Equal(-4.0625, fit.InnerHoopAtBore.Megapascals, 1e-4);
        Assert.Equal(2.4375, fit.OuterHoopAtOutside.Megapascals, 1e-4);
    }

    // Invented dimensions; recomputed two independent ways with NumPy.
    [Fact]
    public void Bush_bronzeInSteel_agrees()
    {
        var fit = Make(11.0, 12.5, 17.0, 0.020, 110, 0.34, 207, 0.292);
        Assert.Equal(18.599220, fit.Contact.Megapascals, 1e-6);
        Assert.Equal(62.3827, fit.OuterHoopAtJoint.Megapascals, 5e-5);
        Assert.Equal(-146.2875, fit.InnerHoopAtJoint.Megapascals, 5e-5);
        Assert.Equal(-164.8867, fit.InnerHoopAtBore.Megapascals, 5e-5);
    }

    [Fact]
    public void Seat_ironInAluminium_agrees()
    {
        var fit = Make(15, 18, 30, 0.05, 120, 0.26, 71, 0.33);
        Assert.Equal(35.330382, fit.Contact.Megapascals, 1e-6);
        Assert.Equal(75.0771, fit.OuterHoopAtJoint.Megapascals, 5e-5);
        Assert.Equal(-195.9230, fit.InnerHoopAtJoint.Megapascals, 5e-5);
        Assert.Equal(-231.2534, fit.InnerHoopAtBore.Megapascals, 5e-5);
    }

    [Fact]
    public void Shaft_solidInHub_agrees()
    {
        var fit = Make(0, 25, 50, 0.025, 207, 0.3, 207, 0.3);
        Assert.Equal(77.625, fit.Contact.Megapascals, 1e-9);
        Assert.Equal(129.375, fit.OuterHoopAtJoint.Megapascals, 1e-9);
        Assert.Equal(-77.625, fit.InnerHoopAtBore.Megapascals, 1e-9);
    }

    // Invented seat Ø 36, interference 0.10 (recomputed): heat 167.96 K; cold alone 316.8 K; both ways +0.037556; at 200 °C 0.034552 left.
    [Fact]
    public void Temperatures_seatInAluminium_agree()
    {
        Assert.Equal(167.96, PressFit.HeatToAssemble(Mm(0.10), Mm(0.03), Mm(36), 21.5e-6).Kelvins, 0.005);
        Assert.Equal(316.8, PressFit.HeatToAssemble(Mm(0.10), Mm(0.03), Mm(36), 11.4e-6).Kelvins, 0.05);
        Assert.Equal(0.037556, PressFit.ClearanceWhile(Mm(0.10), Mm(36), 21.5e-6, C(150), 11.4e-6, C(-70)).Millimetres, 1e-9);
        Assert.Equal(0.034552, PressFit.InterferenceAt(Mm(0.10), Mm(36), 21.5e-6, 11.4e-6, C(200)).Millimetres, 1e-9);
    }

    // Bhavikatti's joint of Example 8.17, 400 mm and 0.2 mm on diameter, α 12e-6: 41.67 K (its notebook divides by the outside radius instead).
    [Fact]
    public void Heat_bhavikatti_dividesByTheJointDiameter() =>
        Assert.Equal(41.6667, PressFit.HeatToAssemble(Mm(0.2), Mm(0), Mm(400), 12e-6).Kelvins, 5e-5);

    [Theory]
    [InlineData(20, 20, 30)]
    [InlineData(-1, 20, 30)]
    [InlineData(10, 30, 30)]
    public void Radii_outOfOrder_areRefused(double inner, double joint, double outer) =>
        Assert.StartsWith("The radii must grow outwards from zero or more; they were ",
            Assert.Throws<ArgumentException>(() => Make(inner, joint, outer, 0.1, 200, 0.3, 200, 0.3).Contact).Message);

    [Fact]
    public void Heat_badInput_isNamed()
    {
        Assert.Equal("The diameter of the joint must be above zero; it was 0.", Assert.Throws<ArgumentOutOfRangeException>(() => PressFit.HeatToAssemble(Mm(0.1), Mm(0), Mm(0), 1e-5)).Message);
        Assert.Equal("The coefficient of expansion must be above zero; it was 0.", Assert.Throws<ArgumentOutOfRangeException>(() => PressFit.HeatToAssemble(Mm(0.1), Mm(0), Mm(36), 0)).Message);
    }

    private static PressFit Make(double inner, double joint, double outer, double radial, double innerGpa, double innerNu, double outerGpa, double outerNu) =>
        new(Mm(inner), Mm(joint), Mm(outer), Mm(radial), new(Pressure.FromMegapascals(innerGpa * 1000), innerNu), new(Pressure.FromMegapascals(outerGpa * 1000), outerNu));

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Temperature C(double value) => Temperature.FromCelsius(value);
}
