using CsCheck;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Metrology;

/// <summary>Invented readings and exact arithmetic, unless a source stands beside the figure. Definitions: common practice, no source.</summary>
public class DerivedFiguresTests
{
    private static SizeTable Bore => new(new Length?[,] { { Mm(86.012), Mm(86.004) }, { Mm(86.025), Mm(86.013) }, { Mm(86.018), Mm(86.014) } });

    [Fact]
    public void SizeTable_wholeBore_givesEveryFigure()
    {
        Near(0.013, Bore.TaperOn(0));
        Near(0.010, Bore.TaperOn(1));
        Near(0.013, Bore.Taper);
        Near(-0.006, Bore.EndTaperOn(0));
        Near(-0.010, Bore.EndTaperOn(1));
        Near(0.008, Bore.OutOfRoundAt(0));
        Near(0.012, Bore.OutOfRoundAt(1));
        Near(0.004, Bore.OutOfRoundAt(2));
        Near(0.012, Bore.OutOfRound);
        Near(86.0143333333, Bore.Mean);
        Near(0.010, Bore.BarrelOn(0));
        Near(0.004, Bore.BarrelOn(1));
        Near(86.025, Bore.Largest);
        Near(86.004, Bore.Smallest);
        Near(0.025, Bore.HoleWear(Mm(86)));
        Near(-0.004, Bore.ShaftWear(Mm(86)));
        Assert.Equal(0, Bore.Missing);
        Assert.Equal((3, 2), (Bore.Heights, Bore.Axes));
    }

    [Fact]
    public void SizeTable_partlyFilled_givesWhatItCan()
    {
        var table = new SizeTable(new Length?[,] { { Mm(86.012), null }, { Mm(86.025), null }, { null, Mm(86.014) } });
        Near(0.013, table.Taper);
        Assert.Null(table.TaperOn(1));
        Assert.Null(table.EndTaperOn(0));
        Assert.Null(table.BarrelOn(0));
        Assert.Null(table.OutOfRound);
        Assert.Equal(3, table.Missing);
        var empty = new SizeTable(new Length?[2, 2]);
        Assert.Null(empty.Mean);
        Assert.Null(empty.Largest);
        Assert.Null(empty.Smallest);
        Assert.Null(empty.Taper);
        Assert.Null(empty.HoleWear(Mm(1)));
        Assert.Null(empty.ShaftWear(Mm(1)));
        Assert.Null(new SizeTable(new Length?[,] { { Mm(1), Mm(2) } }).EndTaperOn(0));
        Assert.Null(new SizeTable(new Length?[,] { { Mm(1) }, { Mm(2) } }).BarrelOn(0));
    }

    [Fact]
    public void SizeTable_callersArray_isNotKept()
    {
        var readings = new Length?[,] { { Mm(10), Mm(11) } };
        var table = new SizeTable(readings);
        readings[0, 0] = Mm(99);
        Near(1, table.OutOfRound);
    }

    [Fact]
    public void SizeTable_anyReadings_outOfRoundAndTaperStayInsideTheRange() =>
        Gen.Double[85.9, 86.1].Array[6].Sample(d =>
        {
            var table = new SizeTable(new Length?[,] { { Mm(d[0]), Mm(d[1]) }, { Mm(d[2]), Mm(d[3]) }, { Mm(d[4]), Mm(d[5]) } });
            var range = table.Largest!.Value - table.Smallest!.Value;
            Assert.True(table.Taper!.Value <= range && table.OutOfRound!.Value <= range);
            Assert.True(table.Taper.Value >= table.EndTaperOn(0)!.Value.Abs());
        });

    [Fact]
    public void Clearance_range_isTightestAndLoosest()
    {
        var range = Clearances.Range([Mm(54.041), Mm(54.045)], [Mm(53.998), Mm(54.002)]);
        Near(0.039, range.Smallest);
        Near(0.047, range.Largest);
        Near(0.042, Clearances.Between(Mm(86.012), Mm(85.97)));
        Near(0.03, Clearances.Interference(Mm(36.1), Mm(36.07)));
        Assert.Throws<ArgumentException>(() => Clearances.Range([], [Mm(1)]));
        Assert.Throws<ArgumentException>(() => Clearances.Range([Mm(1)], []));
    }

    [Fact]
    public void OilByWall_budget_countsTheWallTwice()
    {
        Near(0.041, Clearances.OilByWall(Mm(57.715), Mm(1.836), Mm(54.002)));
        var budget = Clearances.OilByWall(
            new ModelInput(57.715, new("housing", 0.004, "")), new ModelInput(1.836, new("wall", 0.001, "")), new ModelInput(54.002, new("journal", 0.002, "")));
        Assert.Equal(0.041, budget.Value, 1e-9);
        // √(4² + (2·1)² + 2²) = √24 µm
        Assert.Equal(Math.Sqrt(24) / 1000, budget.StandardUncertainty, 1e-12);
        Assert.Equal("mm", budget.Unit);
    }

    [Theory]
    [InlineData(0.15, 20, 40, 0.075)]
    [InlineData(0.15, 0, 40, 0.15)]
    [InlineData(0.30, 40, 40, 0.10)]
    public void GuideByRock_byGeometry(double rock, double e, double length, double clearance) =>
        Near(clearance, Clearances.GuideByRock(Mm(rock), Mm(e), Mm(length)));

    [Fact]
    public void GuideByRock_badLengths_areNamed()
    {
        Assert.Equal("The guide length must be above zero; it was 0 mm.",
            Assert.Throws<ArgumentOutOfRangeException>(() => Clearances.GuideByRock(Mm(0.1), Mm(1), Mm(0))).Message);
        Assert.Equal("The distance of the dial from the guide must not be below zero; it was -1 mm.",
            Assert.Throws<ArgumentOutOfRangeException>(() => Clearances.GuideByRock(Mm(0.1), Mm(-1), Mm(40))).Message);
    }

    [Fact]
    public void SetSpread_isAlsoAShareOfTheLargest()
    {
        var (spread, share) = Clearances.SetSpread([Mm(4.9), Mm(5.0), Mm(4.75)]);
        Near(0.25, spread);
        Assert.Equal(0.05, share, 1e-12);
        Assert.Throws<ArgumentException>(() => Clearances.SetSpread([Mm(1)]));
    }

    [Fact]
    public void Runout_dialFigures()
    {
        var total = Runout.Total([Mm(0.01), Mm(-0.02), Mm(0.03)]);
        Near(0.05, total);
        Near(0.025, Runout.Bend(total));
        var (mean, scatter) = Runout.EndFloat([Mm(0.12), Mm(0.13), Mm(0.11)]);
        Near(0.12, mean);
        Near(0.02, scatter);
        Near(0.025, Runout.PerHundred(Mm(0.03), Mm(0.01), Mm(80)));
        Near(-0.025, Runout.PerHundred(Mm(0.01), Mm(0.03), Mm(80)));
        Assert.Throws<ArgumentException>(() => Runout.Total([Mm(1)]));
        Assert.Throws<ArgumentException>(() => Runout.EndFloat([]));
        Assert.Equal("The distance between the two places must be above zero; it was 0 mm.",
            Assert.Throws<ArgumentOutOfRangeException>(() => Runout.PerHundred(Mm(1), Mm(1), Mm(0))).Message);
    }

    [Fact]
    public void Faces_heightsAndGaps()
    {
        Assert.Equal((Mm(0.08), 2), Faces.Flatness([Mm(0.03), Mm(0.05), Mm(0.08), Mm(0.04)]));
        var (mean, spread) = Faces.Protrusion([Mm(0.05), Mm(0.06), Mm(0.08), Mm(0.07)]);
        Near(0.065, mean);
        Near(0.03, spread);
        var (step, first) = Faces.StepToNeighbour([Mm(0.06), Mm(0.07), Mm(0.02), Mm(0.04)]);
        Near(0.05, step);
        Assert.Equal(1, first);
        Near(-0.15, Faces.DeckHeight(Mm(-0.12), Mm(-0.18)));
        Near(1.4, Faces.Squish(Mm(1.2), Mm(-0.2)));
        var (smaller, difference) = Faces.Crush(Mm(0.08), Mm(0.05));
        Near(0.05, smaller);
        Near(0.03, difference);
        Near(0.05, Faces.Crush(Mm(0.05), Mm(0.08)).Smaller);
        Assert.Throws<ArgumentException>(() => Faces.Flatness([]));
        Assert.Throws<ArgumentException>(() => Faces.Protrusion([]));
        Assert.Throws<ArgumentException>(() => Faces.StepToNeighbour([Mm(1)]));
    }

    // Invented engine worked by hand: 402.12; 6.18; +1.01; 47.19 cm³; 9.52.
    [Fact]
    public void CompressionRatio_inventedEngine()
    {
        var space = new CylinderSpace(Mm(80), Mm(80), Cc(40), Mm(81), Mm(1.2), Mm(-0.2), Cc(0));
        Assert.Equal(402.12, space.Swept.CubicCentimetres, 0.005);
        Assert.Equal(47.19, space.Clearance.CubicCentimetres, 0.005);
        Assert.Equal(9.52, space.CompressionRatio, 0.005);
        Assert.Equal(10, (space with { Chamber = space.ChamberFor(10) }).CompressionRatio, 1e-12);
        Assert.Equal(42.19, (space with { Crown = Cc(5) }).Clearance.CubicCentimetres, 0.005);
        Assert.Throws<ArgumentOutOfRangeException>(() => space.ChamberFor(1));
        Assert.StartsWith("The clearance volume must be above zero; it was -",
            Assert.Throws<ArgumentOutOfRangeException>(() => (space with { Crown = Cc(60) }).CompressionRatio).Message);
        Assert.Equal("The bore must be above zero; it was 0 mm.", Assert.Throws<ArgumentOutOfRangeException>(() => (space with { Bore = Mm(0) }).CompressionRatio).Message);
        Assert.Equal("The stroke must be above zero; it was 0 mm.", Assert.Throws<ArgumentOutOfRangeException>(() => (space with { Stroke = Mm(0) }).CompressionRatio).Message);
    }

    [Fact]
    public void ValveGear_sums()
    {
        Near(1.3, ValveGear.CoilBindClearance(Mm(38), Mm(9.5), Mm(27.2)));
        Near(8.2, ValveGear.LobeLift(Mm(42.2), Mm(34)));
        Near(12.1, ValveGear.ValveLift(Mm(8.2), 1.5, Mm(0.2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ValveGear.ValveLift(Mm(8), 0, Mm(0)));
    }

    [Fact]
    public void Wear_sums()
    {
        Assert.Equal(0.00104987, Wear.ChainElongation(Mm(953.5), 100, Mm(9.525)), 5e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Wear.ChainElongation(Mm(953.5), 0, Mm(9.525)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Wear.ChainElongation(Mm(953.5), 100, Mm(0)));
        Assert.Equal(0.225, Wear.LeakDown(Pressure.FromPoundsPerSquareInch(80), Pressure.FromPoundsPerSquareInch(62)), 1e-12);
        Assert.Equal(0, Wear.LeakDown(Pressure.FromBar(7), Pressure.FromBar(7)), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => Wear.LeakDown(Pressure.FromBar(7), Pressure.FromBar(7.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Wear.LeakDown(Pressure.FromBar(7), Pressure.FromBar(-0.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Wear.LeakDown(Pressure.FromBar(0), Pressure.FromBar(0)));
        Near(0.15, Wear.BoltStretch(Mm(120.15), Mm(120)));
        Assert.Equal(40.0 / 150, Wear.SetDrop([150, 148, 150, 110]), 1e-12);
        Assert.Throws<ArgumentException>(() => Wear.SetDrop([1]));
        Assert.Throws<ArgumentException>(() => Wear.SetDrop([0, 0]));
    }

    [Theory]
    [InlineData(0.07, 0.25)]
    [InlineData(0.09, 0.25)]
    [InlineData(0.091, 0.5)]
    [InlineData(0.3, 0.75)]
    [InlineData(0.5, null)]
    public void Oversize_isTheFirstStepThatCleansUp(double wear, double? step)
    {
        var chosen = Wear.Oversize(Mm(wear), Mm(0.07), [Mm(0.25), Mm(0.5), Mm(0.75), Mm(1.0)]);
        Assert.Equal(step, chosen?.Millimetres);
    }

    [Theory]
    [InlineData(53.79, 0.25)]
    [InlineData(53.7899, 0.5)]
    [InlineData(52.0, null)]
    public void Undersize_isTheFirstStepThatCleansUp(double smallest, double? step) =>
        Assert.Equal(step, Wear.Undersize(Mm(54), Mm(smallest), Mm(0.04), [Mm(0.25), Mm(0.5), Mm(0.75), Mm(1.0)])?.Millimetres);

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Volume Cc(double value) => Volume.FromCubicCentimetres(value);

    private static void Near(double expected, Length? actual) => Assert.Equal(expected, actual!.Value.Millimetres, 1e-9);
}
