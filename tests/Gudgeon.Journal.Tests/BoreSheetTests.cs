using Gudgeon.Engine;

namespace Gudgeon.Journal.Tests;

public class BoreSheetTests
{
    // Readings and figures: invented bore of three heights and two axes, worked by hand as differences of the readings.
    // No standard defines taper and out-of-round as engine reconditioning uses them: common practice, no source.
    private static readonly (string Spot, string Text)[] readings =
    [
        ("top.across", "86.012"), ("middle.across", "86,025"), ("bottom.across", "86.018"),
        ("top.along", "86.004"), ("middle.along", "86.013"), ("bottom.along", "86.014"),
    ];

    private static MeasureBook Whole(string instrument = "bg")
    {
        var book = new MeasureBook();
        foreach (var (spot, text) in readings)
            book.Read(book.Part("block"), "bore", 1, spot, text, instrument);
        return book;
    }

    [Fact]
    public void Bore_sheet_has_taper_out_of_round_and_every_reading()
    {
        using var book = Whole();
        var block = book.Part("block");
        Assert.Equal(6, book.Assess(block, "bore").Figures.Count);
        Assert.Equal(0.013, Assert.Single(book.Assess(block, "bore-taper").Figures).Value, 12);
        Assert.Equal(0.012, Assert.Single(book.Assess(block, "bore-roundness").Figures).Value, 12);
        Assert.Empty(book.Assess(block, "bore-wear").Figures);
        Assert.Equal(6, book.Assess(block, "bore", 2).Missing);
    }

    [Fact]
    public void Bore_wear_is_taken_from_the_unworn_spot()
    {
        using var book = Whole();
        book.Read(book.Part("block"), "bore", 1, "unworn", "86.000", "bg");
        Assert.Equal(0.025, Assert.Single(book.Assess(book.Part("block"), "bore-wear").Figures).Value, 12);
    }

    [Fact]
    public void Taper_working_names_the_two_readings_and_what_was_typed()
    {
        using var book = Whole();
        var working = book.Assess(book.Part("block"), "bore-taper").Figures[0].Working;
        Assert.Equal(["middle.across", "top.across"], working.Inputs.Select(i => i.Symbol));
        Assert.Equal("86,025", working.Inputs[0].AsTyped);
        Assert.Equal("d", working.Result.Symbol);
        Assert.Equal(0.013, working.Result.Value, 12);
    }

    [Fact]
    public void Piston_clearance_takes_the_bore_across_and_its_own_piston()
    {
        using var book = Whole();
        book.Read("piston.1", "piston-skirt", 1, "one", "85.960");
        book.Read("piston.2", "piston-skirt", 1, "one", "85.930");
        var figures = book.Assess("piston.1", "piston-clearance").Figures;
        Assert.Equal(["smallest", "largest"], figures.Select(f => f.Name));
        Assert.Equal([0.052, 0.065], figures.Select(f => Math.Round(f.Value, 9)));
        Assert.Empty(book.Assess("piston.2", "piston-clearance").Figures);
    }

    [Fact]
    public void Big_end_clearance_finds_the_crankpin_of_its_rod()
    {
        using var book = new MeasureBook();
        book.Read("rod.3", "rod-bore-in-shells", 1, "front", "48.045", "bg");
        book.Read("crank.1", "crankpin", 3, "front.throw", "47.990");
        book.Read("crank.1", "crankpin", 2, "front.throw", "47.900");
        Assert.Equal(0.055, Assert.Single(book.Assess("rod.3", "rod-clearance").Figures).Value, 9);
    }

    [Fact]
    public void Gauge_from_zero_reads_micrometres_and_words()
    {
        using var book = new MeasureBook();
        book.Good(new Tell(new GaugeZeroed("bg", 86, "86.000", "ring")));
        var block = book.Part("block");
        book.Read(block, "bore", 1, "top.across", "+43", "bg");
        book.Read(block, "bore", 1, "middle.across", "-2", "bg");
        book.Read(block, "bore", 1, "bottom.across", "two thou over", "bg");
        book.Read(block, "bore", 1, "top.along", "3.3862 in", "bg");
        Assert.Equal([86.043, 85.998, 86.0508, 86.00948], book.Bench.Readings.Values.Select(r => r.Taken.Value));
        Assert.Equal(["+43", "-2", "two thou over", "3.3862 in"], book.Bench.Readings.Values.Select(r => r.Taken.AsTyped));
    }

    [Fact]
    public void Gauge_without_a_zero_is_refused_in_four_parts()
    {
        using var book = new MeasureBook();
        Assert.Equal(
            "bore 1, bore diameter, top, across the crank: met \"+43\", a distance from the gauge's zero; expected a gauge that was set, or the whole size. Say first what the gauge is set to, or type the size itself.",
            book.Refused(new TakeReading(new Slot(book.Part("block"), "bore", 1, "top.across"), "+43", "bg")));
    }

    [Fact]
    public void Place_beyond_the_engine_is_refused()
    {
        using var book = new MeasureBook();
        Assert.Equal(
            "cylinder block: met bore 5; expected 1 to 4. Count them again.",
            book.Refused(new TakeReading(new Slot(book.Part("block"), "bore", 5, "top.across"), "86", "bg")));
    }

    [Fact]
    public void Reading_of_a_worked_out_figure_is_refused_with_what_to_read()
    {
        using var book = new MeasureBook();
        Assert.Equal(
            "cylinder block: met a reading of bore taper; expected readings of bore diameter, from which it is worked out. Read those.",
            book.Refused(new TakeReading(new Slot(book.Part("block"), "bore-taper", 1, "one"), "0.01", "bg")));
    }

    [Fact]
    public void Struck_reading_is_gone_from_the_sheet_and_one_set_aside_is_kept()
    {
        using var book = new MeasureBook();
        var block = book.Part("block");
        var first = book.Read(block, "bore", 1, "top.across", "86.012", "bg");
        var second = book.Read(block, "bore", 1, "top.across", "86.016", "bg");
        Assert.Equal(86.014, book.Assess(block, "bore").Figures[0].Value, 12);
        book.Good(new Tell(new ReadingSetAside(second, "dirt on the anvil")));
        Assert.Equal(86.012, book.Assess(block, "bore").Figures[0].Value, 12);
        Assert.Equal(2, book.Bench.Readings.Count);
        Assert.Contains("leans on it", book.Refused(new StrikeOut(second)));
        book.Good(new StrikeOut(first));
        Assert.Single(book.Bench.Readings);
    }

    [Fact]
    public void Sheet_is_the_same_after_the_book_is_opened_again()
    {
        using var book = Whole();
        book.Limit("bore", 85.99, 86.03);
        var before = book.Assess(book.Part("block"), "bore").Figures.Select(f => (f.Shown, f.Call)).ToArray();
        book.Inner.Reopen();
        Assert.Equal(before, book.Assess(book.Part("block"), "bore").Figures.Select(f => (f.Shown, f.Call)));
    }

    [Fact]
    public void Characteristics_resolve_wherever_they_point()
    {
        Assert.All(Characteristics.All, c => Assert.All(c.From, f => Assert.NotNull(Characteristics.Find(f.Characteristic))));
        Assert.All(Thumbs.All, t => Assert.NotNull(Characteristics.Find(t.Characteristic)));
        Assert.All(Characteristics.All.Where(c => c.Tool.Length > 0), c => Assert.NotNull(ToolSorts.Find(c.Tool)));
        Assert.All(Characteristics.All, c => Assert.Contains(c.Unit, Units.All));
    }
}
