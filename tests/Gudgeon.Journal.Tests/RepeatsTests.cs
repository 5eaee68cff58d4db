namespace Gudgeon.Journal.Tests;

// Readings are invented; expected figures by hand or from the formulas named.
public class RepeatsTests
{
    private static Repeats Of(MeasureBook book) => Repeats.Of(book.Bench, book.Bench.Instruments["mic"]);

    [Fact]
    public void Without_repeats_there_is_nothing_to_say()
    {
        using var book = new MeasureBook();
        book.Read("crank.1", "main-journal", 1, "front.upright", "57.990");
        var repeats = Of(book);
        Assert.Empty(repeats.Spots);
        Assert.Null(repeats.Pooled);
        Assert.Null(repeats.ByRange);
        Assert.Null(repeats.Days);
    }

    [Fact]
    public void Pairs_are_pooled_and_ranged()
    {
        // Two pairs 2 µm and 4 µm apart: s² = (2² + 4²)/4 = 5 µm², 2 degrees of freedom (GUM 4.2.4); mean range 3 µm over d₂(2) = 1.128 (ASTM E2587, from memory).
        using var book = new MeasureBook();
        foreach (var (spot, text) in new[] { ("front.upright", "57.990"), ("front.upright", "57.992"), ("front.level", "57.985"), ("front.level", "57.989"), ("rear.level", "57.990") })
            book.Read("crank.1", "main-journal", 1, spot, text);
        var repeats = Of(book);
        Assert.Equal(2, repeats.Spots.Count);
        Assert.Equal(Math.Sqrt(5) / 1000, repeats.Pooled!.Value.Deviation, 1e-12);
        Assert.Equal(2, repeats.Pooled.Value.Freedom);
        Assert.Equal(0.003 / 1.128, repeats.ByRange!.Value, 1e-9);
    }

    [Fact]
    public void Reading_set_aside_is_no_repeat()
    {
        using var book = new MeasureBook();
        book.Read("crank.1", "main-journal", 1, "front.upright", "57.990");
        book.Good(new Tell(new ReadingSetAside(book.Read("crank.1", "main-journal", 1, "front.upright", "57.992"), "dirt")));
        Assert.Empty(Of(book).Spots);
    }

    [Fact]
    public void Two_days_make_a_gauge_study()
    {
        using var book = new MeasureBook();
        book.Limit("main-journal", 57.98, 58.00);
        foreach (var day in new[] { 0, 1 })
            foreach (var spot in new[] { "front.upright", "rear.upright" })
                foreach (var trial in new[] { 0, 1 })
                {
                    var at = new DateTimeOffset(2026, 3, 1 + day, 19, 0, 0, TimeSpan.Zero);
                    var text = FormattableString.Invariant($"{57.985 + (spot[0] == 'r' ? 0.004 : 0) + 0.001 * day + 0.001 * trial:0.000}");
                    Assert.True(book.Inner.Book.Submit(new Sending($"{day}{spot}{trial}", at, at, "test"), [new TakeReading(new Slot("crank.1", "main-journal", 1, spot), text, "mic")]).Ok);
                }

        var study = Of(book).Days!;
        Assert.Equal(["1 Mar 2026", "2 Mar 2026"], study.Table.Operators.Order());
        Assert.Equal((2, 2, 2), (study.Table.Readings.GetLength(0), study.Table.Readings.GetLength(1), study.Table.Readings.GetLength(2)));
        Assert.Equal(0.02, study.Width!.Value, 9);
        // By hand: pairs 1 µm apart give s² = 0.5 µm² with no interaction, pooled over 5: (4·0.5)/5 = 0.4 µm².
        var (anova, _) = Gudgeon.Sums.Metrology.GaugeStudy.ByAnova(study.Table.Readings);
        Assert.Equal(0.4e-6, anova.Repeatability, 1e-12);
    }

    [Fact]
    public void Two_persons_make_a_gauge_study_of_their_own()
    {
        using var book = new MeasureBook();
        foreach (var (by, over) in new[] { ("Anna", 0), ("Ben", 1), ("anna ", 0), ("ben", 1) })
            foreach (var spot in new[] { "front.upright", "rear.upright" })
            {
                var trial = char.IsLower(by[0]) ? 1 : 0;
                var text = FormattableString.Invariant($"{57.985 + (spot[0] == 'r' ? 0.004 : 0) + 0.001 * over + 0.001 * trial:0.000}");
                book.Good(new TakeReading(new Slot("crank.1", "main-journal", 1, spot), text, "mic", By: by));
            }

        // What nobody put a name to takes no part.
        book.Read("crank.1", "main-journal", 1, "front.upright", "57.999");
        Assert.Null(Of(book).Days);
        var study = Of(book).Persons!.Table;
        Assert.Equal(["Anna", "Ben"], study.Operators.Order());
        Assert.Equal((2, 2, 2), (study.Readings.GetLength(0), study.Readings.GetLength(1), study.Readings.GetLength(2)));
        // By hand, µm²: pairs 1 apart, four of them: 4·½ over 5 degrees, no interaction, is 0.4. Persons 1 apart over four readings each: mean square 2, (2 − 0.4)/4 = 0.4.
        var (anova, _) = Gudgeon.Sums.Metrology.GaugeStudy.ByAnova(study.Readings);
        Assert.Equal(0.4e-6, anova.Repeatability, 1e-12);
        Assert.Equal(0.4e-6, anova.Reproducibility, 1e-12);
    }

    [Fact]
    public void Who_read_is_kept_in_the_book_and_told()
    {
        using var book = new MeasureBook();
        var slot = new Slot("crank.1", "main-journal", 1, "front.upright");
        book.Good(new TakeReading(slot, "57.990", "mic", By: " Anna "));
        book.Good(new TakeReading(slot, "57.991", "mic", By: "  "));
        book.Inner.Reopen();
        Assert.Equal(["Anna", null], book.Bench.ReadingsAt(slot).Select(r => r.Taken.By));
        Assert.EndsWith(", by Anna", book.Bench.ReadingsAt(slot)[0].Taken.Words(book.Bench), StringComparison.Ordinal);
        Assert.Contains("met a name of 61 signs; expected who took it, in 60 signs at most. Type a short name, or leave it out.", book.Refused(new TakeReading(slot, "57.990", "mic", By: new string('n', 61))), StringComparison.Ordinal);
    }

    [Fact]
    public void One_day_makes_no_study()
    {
        using var book = new MeasureBook();
        foreach (var spot in new[] { "front.upright", "front.upright", "rear.upright", "rear.upright" })
            book.Read("crank.1", "main-journal", 1, spot, "57.990");
        Assert.Null(Of(book).Days);
    }
}
