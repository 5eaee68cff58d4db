using System.Globalization;
using CsCheck;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Quantities;

public class QuantityTextPropertyTests
{
    [Fact]
    public void Length_anyText_isReadAskedOrRefusedAndKept() =>
        Gen.OneOf(Gen.String, Gen.String[Gen.Char["0123456789., /-+½µmin thou\"'°andhlfqruec"], 0, 30]).Sample(text =>
        {
            var read = QuantityText.Length(text, BookUnits.Metric);
            Assert.Equal(text, read.Text);
            if (read is Ambiguous<Length> asked)
                Assert.True(asked.Readings.Count > 1);
        }, iter: 20_000);

    [Fact]
    public void Length_pointOrComma_readsTheSame() =>
        Gen.Decimal[0, 999].Select(d => Math.Round(d, 4)).Sample(d =>
        {
            var point = d.ToString(CultureInfo.InvariantCulture);
            Assert.True(QuantityText.Length(point, BookUnits.Metric).TryGet(out var a));
            Assert.True(QuantityText.Length(point.Replace('.', ','), BookUnits.Metric).TryGet(out var b));
            Assert.Equal((double)d, a.Millimetres, 0.0);
            Assert.Equal(a, b);
        });

    // UnitsNet 5.75.1 knows nothing of this reader: it serves as the other opinion on factors.
    [Fact]
    public void Factors_agreeWithAnIndependentLibrary() =>
        Gen.Double[-1000, 1000].Sample(x =>
        {
            Near(UnitsNet.Length.FromInches(x).Millimeters, Length.FromInches(x).Millimetres);
            Near(UnitsNet.Length.FromMils(x).Millimeters, Length.FromThou(x).Millimetres);
            Near(UnitsNet.Torque.FromPoundForceFeet(x).NewtonMeters, Torque.FromPoundForceFeet(x).NewtonMetres);
            Near(UnitsNet.Torque.FromPoundForceInches(x).NewtonMeters, Torque.FromPoundForceInches(x).NewtonMetres);
            Near(UnitsNet.Torque.FromKilogramForceMeters(x).NewtonMeters, Torque.FromKilogramForceMetres(x).NewtonMetres);
            Near(UnitsNet.Pressure.FromPoundsForcePerSquareInch(x).Bars, Pressure.FromPoundsPerSquareInch(x).Bar);
            Near(UnitsNet.Pressure.FromMegapascals(x).Bars, Pressure.FromMegapascals(x).Bar);
            Near(UnitsNet.Mass.FromPounds(x).Kilograms, Mass.FromPounds(x).Kilograms);
            Near(UnitsNet.Mass.FromOunces(x).Kilograms, Mass.FromOunces(x).Kilograms);
            Near(UnitsNet.Force.FromPoundsForce(x).Newtons, Force.FromPoundsForce(x).Newtons);
            Near(UnitsNet.Force.FromKilogramsForce(x).Newtons, Force.FromKilogramsForce(x).Newtons);
            Near(UnitsNet.Volume.FromCubicInches(x).CubicCentimeters, Volume.FromCubicInches(x).CubicCentimetres);
            Near(UnitsNet.Angle.FromDegrees(x).Radians, Angle.FromDegrees(x).Radians);
            Near(UnitsNet.Angle.FromRevolutions(x).Radians, Angle.FromTurns(x).Radians);
            Near(UnitsNet.TemperatureDelta.FromDegreesFahrenheit(x).Kelvins, TemperatureDifference.FromFahrenheitDegrees(x).Kelvins);
        }, iter: 200);

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, 1e-9 * Math.Max(1, Math.Abs(expected)));
}
