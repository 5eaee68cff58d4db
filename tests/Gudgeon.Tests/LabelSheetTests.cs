using Gudgeon.Labels;

namespace Gudgeon.Tests;

public class LabelSheetTests
{
    public static TheoryData<string> Sheets => [.. LabelSheet.All.Select(s => s.Id)];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Labels_lie_on_the_paper_and_not_on_each_other(string id)
    {
        var sheet = LabelSheet.All.Single(s => s.Id == id);
        for (var place = 0; place < sheet.Each; place++)
        {
            Assert.InRange(sheet.LabelLeft(place), 0, sheet.PaperWidth - sheet.Width + 0.01);
            Assert.InRange(sheet.LabelTop(place), 0, sheet.PaperHeight - sheet.Height + 0.01);
        }

        Assert.True(sheet.Columns == 1 || sheet.PitchX >= sheet.Width);
        Assert.True(sheet.Rows == 1 || sheet.PitchY >= sheet.Height);
    }

    /// <summary>A sheet is cut the same from either side: what is left over is the same left and right, top and bottom. True of the papers that the sizes are of.</summary>
    [Theory]
    [MemberData(nameof(Sheets))]
    public void Margins_are_the_same_on_both_sides(string id)
    {
        var sheet = LabelSheet.All.Single(s => s.Id == id);
        Assert.Equal(sheet.Left, sheet.PaperWidth - sheet.LabelLeft(sheet.Columns - 1) - sheet.Width, 0.06);
        Assert.Equal(sheet.Top, sheet.PaperHeight - sheet.LabelTop(sheet.Each - 1) - sheet.Height, 0.06);
    }

    [Fact]
    public void Name_takes_the_largest_type_that_fits()
    {
        Assert.Equal(4.6, LabelPrint.Fit("3334", "", "bag 12", 40, 20).FontSize);
        var small = LabelPrint.Fit("3334", "", "exhaust camshaft carrier of the far bank", 30, 12);
        Assert.True(small.FontSize < 4.6);
        Assert.Equal("exhaust camshaft carrier of the far bank", string.Join(' ', small.Lines));
    }

    [Fact]
    public void Name_that_fits_in_no_type_says_that_it_goes_on()
    {
        var label = LabelPrint.Fit("3334", "", string.Join(' ', Enumerable.Repeat("bracket", 40)), 30, 12);
        Assert.EndsWith("…", label.Lines[^1]);
        Assert.InRange(label.Lines.Count * label.FontSize * 1.15, 1, 12);
    }
}
