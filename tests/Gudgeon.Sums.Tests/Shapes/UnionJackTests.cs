using Gudgeon.Sums.Shapes;

namespace Gudgeon.Sums.Tests.Shapes;

/// <summary>
/// J. C. Moody, How to calibrate surface plates in the plant, The Tool Engineer, October 1955, Table 1: a 48 × 78 in plate, readings in 0.1″, foot 4 in.
/// Seen as a scan. Two readings contradict the next printed column and are put right: 188 for 183, 43 for 42.
/// </summary>
public class UnionJackTests
{
    private const double Unit = 1.93925e-6 * 25.4; // 0.1″ × 4 in, as mm; GNU units: 1.9392547 microinch

    private static UnionJack Plate => new(new(
        [65, 60, 50, 52, 55, 56, 55, 50, 55, 48, 50, 52, 53, 49, 46, 42, 53, 49, 45, 35],
        [66, 54, 54, 52, 55, 57, 50, 50, 54, 45, 44, 45, 45, 48, 42, 42, 42, 48, 43, 32],
        [205, 197, 205, 203, 202, 199, 190, 195, 188, 186, 187, 186, 184, 185, 190, 179],
        [35, 21, 25, 28, 34, 32, 35, 40, 42, 35],
        [164, 150, 156, 155, 151, 153, 151, 146, 140, 135, 135, 133, 133, 134, 140, 139],
        [60, 46, 45, 47, 50, 45, 59, 60, 60, 49],
        [117, 124, 121, 125, 120, 115, 115, 113, 113, 103, 108, 103, 100, 107, 104, 104],
        [66, 64, 63, 65, 66, 69, 75, 74, 71, 70]));

    // Printed column 6; Moody rounds his steps alternately, so 1.5 units.
    [Fact]
    public void Plate_moody_heightsAreReproduced()
    {
        Assert.Equal(-36, Plate.DiagonalNorthWest[0], 1.5);
        Assert.Equal(-36, Plate.DiagonalNorthWest[^1], 1.5);
        Assert.Equal(-53, Plate.DiagonalNorthEast[0], 1.5);
        Assert.Equal(-53, Plate.DiagonalNorthEast[^1], 1.5);
        Assert.Equal(0, Plate.DiagonalNorthWest[10], 1e-9);
        Assert.Equal(11, Plate.North[8], 1.5);
        Assert.Equal(24, Plate.South[8], 1.5);
        Assert.Equal(-65, Plate.East[5], 1.5);
        Assert.Equal(-57, Plate.West[5], 1.5);
        Assert.Equal(-7, Plate.ClosureAcross, 1.5);
        Assert.Equal(0, Plate.ClosureDown, 1.5);
        Assert.Equal(0, Plate.CentreAcross[8], 1e-9);
        Assert.Equal(-68, Plate.East.Min(), 1.5);
        Assert.Equal(24, Plate.South.Max(), 1.5);
        Assert.Equal(92, Plate.Total, 2);
    }

    [Fact]
    public void Plate_edges_meetAtTheCorners()
    {
        Assert.Equal(Plate.North[0], Plate.East[0], 1e-9);
        Assert.Equal(Plate.North[^1], Plate.West[0], 1e-9);
        Assert.Equal(Plate.South[0], Plate.East[^1], 1e-9);
        Assert.Equal(Plate.South[^1], Plate.West[^1], 1e-9);
    }

    // The height map by other planes (recomputed with NumPy lstsq and SciPy HiGHS): 4.454436 µm and 4.157297 µm; the map's own 92 units are 4.531650 µm.
    [Fact]
    public void Plate_bestPlanes_narrowTheFigure()
    {
        var points = Plate.Points(32 * 25.4, 20 * 25.4, Unit * 1000);
        Assert.Equal(126, points.Count);
        var least = Flatness.LeastSquaresPlane(points).Zone;
        var zone = Flatness.MinimumZone(points).Zone;
        Assert.Equal(4.454436, least, 0.08);
        Assert.Equal(4.157297, zone, 0.08);
        Assert.True(zone <= least && least <= Plate.Total * Unit * 1000);
    }

    // Straightness of the printed column 6 of the north line by its ends 55.625, least squares 57.352941, minimum zone 55.625 (recomputed): our unrounded line lies within its rounding.
    [Fact]
    public void NorthEdge_straightness_isNearThePrint()
    {
        var x = Enumerable.Range(0, 17).Select(i => (double)i).ToArray();
        Assert.Equal(55.625, Straightness.MinimumZone(x, Plate.North).Zone, 1.5);
        Assert.Equal(57.353, Straightness.LeastSquaresLine(x, Plate.North).Zone, 1.5);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public void Plate_lineWithoutMidStation_isRefused(int count) =>
        Assert.StartsWith($"A line needs an even number of readings, so that it has a mid-station; there are {count}.",
            Assert.Throws<ArgumentException>(() => new UnionJack(new(new double[count], [1, 2], [1, 2], [1, 2], [1, 2], [1, 2], [1, 2], [1, 2]))).Message);
}
