using System.Globalization;
using System.Text.RegularExpressions;
using Gudgeon.Engine;
using Gudgeon.Pictures;

namespace Gudgeon.Tests.Pictures;

public sealed partial class DrawingTests
{
    public static TheoryData<string, int> Layouts => new()
    {
        { "inline", 2 }, { "inline", 3 }, { "inline", 4 }, { "inline", 6 }, { "single", 1 }, { "vee", 6 }, { "vee", 8 }, { "flat", 4 }, { "flat", 6 },
    };

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Picture_of_any_layout_stays_inside_its_frame(string layout, int cylinders)
    {
        foreach (var drawing in Draw(layout, cylinders, _ => true))
        {
            foreach (var outline in drawing.Outlines)
            {
                foreach (var (x, y) in Points(outline.Path))
                {
                    Assert.True(x >= -1 && x <= drawing.Width + 1, $"{drawing.Title}: {outline.Part} at x {x} of {drawing.Width}");
                    Assert.True(y >= -1 && y <= drawing.Height + 1, $"{drawing.Title}: {outline.Part} at y {y} of {drawing.Height}");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Picture_shows_every_piston_and_names_its_cylinder(string layout, int cylinders)
    {
        var side = Draw(layout, cylinders, _ => true)[0];

        Assert.Equal(cylinders, side.Outlines.Count(o => o.Part!.StartsWith("piston.", StringComparison.Ordinal)));
        for (var cylinder = 1; cylinder <= cylinders; cylinder++)
            Assert.Contains(side.Captions, c => c.Text == cylinder.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Part_that_the_engine_lacks_is_not_drawn()
    {
        var views = Draw("inline", 4, id => id != "starter.1");

        Assert.DoesNotContain(views.SelectMany(v => v.Outlines), o => o.Part == "starter.1");
        Assert.Contains(views.SelectMany(v => v.Outlines), o => o.Part == "alternator.1");
    }

    [Fact]
    public void Cylinder_one_is_at_the_drive_end_where_the_owner_counts_from_there()
    {
        var front = FirstPiston(Draw("inline", 4, _ => true, "free-end")[0]);
        var back = FirstPiston(Draw("inline", 4, _ => true, "drive-end")[0]);

        Assert.True(front < back, $"{front} is left of {back}");
    }

    [Fact]
    public void Engine_grown_from_nothing_has_no_picture()
    {
        var engine = new EngineModel();
        var size = DrawnSizes.From(new Dictionary<string, string>());

        Assert.Empty(SideView.Of(engine, size, _ => true).Outlines);
        Assert.Empty(EndView.Of(engine, size, _ => true).Outlines);
    }

    private static double FirstPiston(Drawing side) => Points(side.Outlines.Single(o => o.Part == "piston.1").Path).Min(p => p.X);

    private static Drawing[] Draw(string layout, int cylinders, Func<string, bool> isThere, string from = "free-end")
    {
        var answers = new Dictionary<string, string> { ["layout"] = layout, ["n"] = cylinders.ToString(CultureInfo.InvariantCulture), ["numberingFrom"] = from };
        var engine = Anatomy.Build(EngineAnswers.Read(answers).Value);
        var size = DrawnSizes.From(answers);
        return [SideView.Of(engine, size, isThere), EndView.Of(engine, size, isThere)];
    }

    /// <summary>Corners of polygons, and the leftmost point of discs with the point opposite.</summary>
    private static IEnumerable<(double X, double Y)> Points(string path)
    {
        foreach (Match match in Corner().Matches(path))
            yield return (Number(match.Groups[1]), Number(match.Groups[2]));
        if (Disc().Match(path) is { Success: true } disc)
        {
            var (x, y, r) = (Number(disc.Groups[1]), Number(disc.Groups[2]), Number(disc.Groups[3]));
            yield return (x + (2 * r), y);
            yield return (x + r, y - r);
            yield return (x + r, y + r);
        }
    }

    private static double Number(Group group) => double.Parse(group.ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"[ML](-?[\d.]+) (-?[\d.]+)")]
    private static partial Regex Corner();

    [GeneratedRegex(@"M(-?[\d.]+) (-?[\d.]+)a([\d.]+)")]
    private static partial Regex Disc();
}
