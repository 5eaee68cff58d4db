using Gudgeon.Sums.Shapes;

namespace Gudgeon.Sums.Tests.Shapes;

public class ShapeTextTests
{
    // Invented profile; narrowest ring 9.000 µm and least squares 9.788709 µm recomputed with SciPy (HiGHS, least_squares).
    [Fact]
    public void Section_typed_hasTheRoundnessOfItsPoints()
    {
        var points = ShapeText.Section("0 3 5 2 -1 -4\n−2;1\t4 2,0 -3 -5", 43, 0.001).Value;
        Assert.Equal(12, points.Count);
        Assert.Equal(0.009, Roundness.MinimumZone(points).Total, 1e-9);
        Assert.Equal(0.009788709, Roundness.LeastSquaresCircle(points).Total, 1e-9);
        Assert.Equal((43, 0), (points[0].X, points[0].Y));
    }

    // Invented sections; 9.196949 µm recomputed with SciPy least_squares, 8.999751 µm with successive linear programmes (HiGHS) from 40 starts: a single start may end at 8.999991.
    [Fact]
    public void Cylinder_typed_hasTheZonesOfItsSections()
    {
        var text = string.Join('\n', new (int Z, double[] Over)[] { (10, [0, 2, 4, 3, 0, -1, -3, -2]), (60, [1, 4, 8, 5, 1, 3, 6, 4]), (110, [-2, -1, 1, 0, -2, 0, 2, 1]) }
            .Select(s => FormattableString.Invariant($"{s.Z} {string.Join(' ', s.Over)}")));
        var straight = ShapeText.Cylinder(text, 43, 0.001).Value;
        Assert.Equal(24, straight.Count);
        // The table moves each section sideways; here they stand on one axis, and the move comes back as lean.
        var leaning = straight.Select(p => p with { X = p.X + 2e-5 * p.Z, Y = p.Y - 1e-5 * p.Z }).ToArray();
        Assert.Equal(0.009196949, Cylindricity.LeastSquaresCylinder(leaning).Total, 5e-9);
        Assert.Equal(0.008999751, Cylindricity.MinimumZone(leaning).Total, 5e-9);
    }

    [Fact]
    public void Face_typed_isReadRowByRow() => Assert.Equal([[0, 3.5, 1], [2, 6, -4]], ShapeText.Face("0 3,5 1\n\n2 6 -4\r\n").Value);

    [Fact]
    public void Line_typed_isReadOverSeveralRows() => Assert.Equal([1, 2, 3, 4], ShapeText.Line("1 2\n3 4", "North edge").Value);

    [Theory]
    [InlineData("1 2 3", 43, "readings: met 3 figures; expected four or more, at equal steps all round. Read more places: twelve show up to six lobes.")]
    [InlineData("", 43, "readings: met 0 figures; expected four or more, at equal steps all round. Read more places: twelve show up to six lobes.")]
    [InlineData("1 2 3 4", 0, "radius: met 0 mm; expected above zero, and larger than what is read from it. Type half of the diameter.")]
    [InlineData("1 2 3 -4000", 4, "radius: met 4 mm; expected above zero, and larger than what is read from it. Type half of the diameter.")]
    [InlineData("1 x 3 4y", 43, "readings, line 1: met \"x\"; expected a plain figure. Type figures only, with gaps between them. readings, line 1: met \"4y\"; expected a plain figure. Type figures only, with gaps between them.")]
    public void Section_thatCannotBe_isRefused(string text, double radius, string message) =>
        Assert.Equal(message, string.Join(' ', ShapeText.Section(text, radius, 0.001).Refusals));

    [Theory]
    [InlineData("10 1 2 3", 43, "sections: met one section; expected two heights or more. Read another height.")]
    [InlineData("10 1 2 3\n10 1 2 3", 43, "sections: met 2 sections at one height; expected two heights or more. Read another height.")]
    [InlineData("10 1 2\n20 1 2 3", 43, "sections: met a line of 3 figures; expected a height, then three readings or more. Type the height of the section first, in mm.")]
    [InlineData("10 1 2 3\n20 1 2 3", 0, "radius: met 0 mm; expected above zero, and larger than what is read from it. Type half of the diameter.")]
    [InlineData("10 1 2 3\n20 1 2 -43000", 43, "radius: met 43 mm; expected above zero, and larger than what is read from it. Type half of the diameter.")]
    public void Cylinder_thatCannotBe_isRefused(string text, double radius, string message) =>
        Assert.Equal(message, string.Join(' ', ShapeText.Cylinder(text, radius, 0.001).Refusals));

    [Theory]
    [InlineData("", "heights: met nothing; expected two rows or more of two heights or more. Type a row of the grid on each line.")]
    [InlineData("1 2", "heights: met 1 rows, the shortest of 2; expected two rows or more of two heights or more. Type a row of the grid on each line.")]
    [InlineData("1\n2", "heights: met 2 rows, the shortest of 1; expected two rows or more of two heights or more. Type a row of the grid on each line.")]
    [InlineData("1 2\n1 2 3", "heights: met rows of 2, 3 heights; expected as many in each row. Read the missing places.")]
    public void Face_thatCannotBe_isRefused(string text, string message) =>
        Assert.Equal(message, string.Join(' ', ShapeText.Face(text).Refusals));

    [Theory]
    [InlineData("", "North edge: met nothing; expected an even number of readings, so that the line has a middle. Read the line again with a foot that fits it an even number of times.")]
    [InlineData("1", "North edge: met 1 readings; expected an even number of readings, so that the line has a middle. Read the line again with a foot that fits it an even number of times.")]
    [InlineData("1 2 3", "North edge: met 3 readings; expected an even number of readings, so that the line has a middle. Read the line again with a foot that fits it an even number of times.")]
    public void Line_thatCannotBe_isRefused(string text, string message) =>
        Assert.Equal(message, string.Join(' ', ShapeText.Line(text, "North edge").Refusals));
}
