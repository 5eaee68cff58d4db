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

    // By hand: a quarter turn apart; 10 and 10 + 2·0.5 on the first and second place.
    [Fact]
    public void Section_typed_goes_round_from_the_right()
    {
        var points = ShapeText.Section("0 2 0 −4", 10, 0.5).Value;
        Assert.Equal([(10, 0), (0, 11), (-10, 0), (0, -8)], points.Select(p => (Math.Round(p.X, 9) + 0.0, Math.Round(p.Y, 9) + 0.0)));
    }

    // By hand: the height stands first; two readings of 0.5 over 10 at a third of a turn are 11·(−½, ½√3).
    [Fact]
    public void Cylinder_typed_goes_round_at_each_height()
    {
        var points = ShapeText.Cylinder("5 0 2 0\n15 0 0 -2", 10, 0.5).Value;
        Assert.Equal([5, 5, 5, 15, 15, 15], points.Select(p => p.Z));
        Assert.Equal([10, -5.5, -5, 10, -5, -4.5], points.Select(p => Math.Round(p.X, 9)));
        Assert.Equal([0, 9.526279442, -8.660254038, 0, 8.660254038, -7.794228634], points.Select(p => Math.Round(p.Y, 9)));
    }

    [Theory]
    [InlineData("1 2 3 -3999", true)]
    [InlineData("1 2 3 -4000", false)]
    [InlineData("1 2 3 -4001", false)]
    public void Section_must_stay_off_the_middle(string text, bool good)
    {
        Assert.Equal(good, ShapeText.Section(text, 4, 0.001).Ok);
        Assert.Equal(good, ShapeText.Cylinder($"10 {text}\n20 1 2 3", 4, 0.001).Ok);
    }

    [Fact]
    public void Radius_that_is_no_number_is_refused()
    {
        const string message = "radius: met NaN mm; expected above zero, and larger than what is read from it. Type half of the diameter.";
        Says.One(message, ShapeText.Section("1 2 3 4", double.NaN, 0.001));
        Says.One(message, ShapeText.Cylinder("10 1 2 3\n20 1 2 3", double.NaN, 0.001));
    }

    [Fact]
    public void Cylinder_says_all_that_is_wrong() => Says.All(ShapeText.Cylinder("10 1\n10 1 2 3\n20 5 6", 0, 0.001),
        "sections: met a line of 2 figures; expected a height, then three readings or more. Type the height of the section first, in mm.",
        "sections: met a line of 3 figures; expected a height, then three readings or more. Type the height of the section first, in mm.",
        "radius: met 0 mm; expected above zero, and larger than what is read from it. Type half of the diameter.");

    [Fact]
    public void Figure_that_is_none_is_told_with_its_line() => Says.All(ShapeText.Rows("1 2\n\n3 1e3 4\n+5 1,000.5", "heights"),
        "heights, line 3: met \"1e3\"; expected a plain figure. Type figures only, with gaps between them.",
        "heights, line 4: met \"1,000.5\"; expected a plain figure. Type figures only, with gaps between them.");

    [Fact]
    public void Figure_that_is_none_is_told_by_the_name_of_its_box()
    {
        Says.One("sections, line 2: met \"x\"; expected a plain figure. Type figures only, with gaps between them.", ShapeText.Cylinder("10 1 2 3\n20 x 2 3", 43, 0.001));
        Says.One("heights, line 1: met \"x\"; expected a plain figure. Type figures only, with gaps between them.", ShapeText.Face("1 x\n3 4"));
    }

    [Fact]
    public void Row_that_is_too_short_is_told_among_longer_ones()
    {
        Says.One("heights: met 3 rows, the shortest of 1; expected two rows or more of two heights or more. Type a row of the grid on each line.", ShapeText.Face("1 2\n3\n4 5"));
        Says.One("North edge: met 5 readings; expected an even number of readings, so that the line has a middle. Read the line again with a foot that fits it an even number of times.", ShapeText.Line("1 2\n3 4 5", "North edge"));
    }

    [Theory]
    [InlineData("1 2\n3 4")]
    [InlineData("1 2 3\n3 4 5")]
    public void Face_of_two_by_two_is_taken(string text) => Assert.True(ShapeText.Face(text).Ok);

    [Fact]
    public void Line_of_two_readings_is_taken() => Assert.Equal([-1.5, 2], ShapeText.Line("-1,5 +2", "North edge").Value);

    [Fact]
    public void Text_that_is_none_is_a_bug() => Assert.Throws<ArgumentNullException>(() => ShapeText.Rows(null!, "heights"));
}
