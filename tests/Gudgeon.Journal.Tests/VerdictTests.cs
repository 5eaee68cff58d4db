using Gudgeon.Sums.Metrology;

namespace Gudgeon.Journal.Tests;

public class VerdictTests
{
    // ISO 14253-1 (rule from memory; no worked example of the standard was found). Invented journal 49.975 to 50.000 mm, u = 0.0020 mm:
    // with k = 2 the guard is 0.004, so 49.979 to 49.996 is proven within and beyond 49.971 and 50.004 proven outside. Temperatures noted at 20 °C leave U as the instrument's.
    [Theory]
    [InlineData("49.979", Call.Within)]
    [InlineData("49.978", Call.TooCloseToCall)]
    [InlineData("49.980", Call.Within)]
    [InlineData("49.996", Call.Within)]
    [InlineData("49.997", Call.TooCloseToCall)]
    [InlineData("50.000", Call.TooCloseToCall)]
    [InlineData("49.975", Call.TooCloseToCall)]
    [InlineData("49.971", Call.TooCloseToCall)]
    [InlineData("49.970", Call.Outside)]
    [InlineData("50.004", Call.TooCloseToCall)]
    [InlineData("50.005", Call.Outside)]
    public void Verdict_on_each_side_of_the_guard(string text, Call expected)
    {
        using var book = Journal(text);
        Assert.Equal(expected, book.Assess("crank.1", "main-journal").Call);
    }

    // The same journal by 95 % probability: guard 1.645·u = 0.0033 mm, accept 49.9783 to 49.9967, reject below 49.9717 (unrounded 49.97171) or above 50.0033. Recomputed with SciPy elsewhere.
    [Theory]
    [InlineData("49.9783", Call.Within)]
    [InlineData("49.9782", Call.TooCloseToCall)]
    [InlineData("49.9967", Call.Within)]
    [InlineData("49.9718", Call.TooCloseToCall)]
    [InlineData("49.9717", Call.Outside)]
    public void Verdict_by_95_percent_probability(string text, Call expected)
    {
        using var book = Journal(text);
        book.Good(new Tell(new RuleChosen("probability-95")));
        Assert.Equal(expected, book.Assess("crank.1", "main-journal").Call);
    }

    [Fact]
    public void Service_and_new_limits_are_two_questions()
    {
        using var book = Journal("49.979");
        book.Limit("main-journal", 49.990, 50.000, LimitState.New);
        Assert.Equal(Call.Serviceable, book.Assess("crank.1", "main-journal").Call);
        book.Limit("main-journal", 49.970, 50.000, LimitState.New);
        Assert.Equal(Call.AsNew, book.Assess("crank.1", "main-journal").Call);
    }

    [Fact]
    public void Limit_of_one_part_stands_in_front_of_the_limit_for_all()
    {
        using var book = Journal("49.979");
        book.Good(new Tell(new LimitSet("main-journal", ["crank.1"], LimitState.Service, 49.990, null, null, "mm", "", "shop sheet")));
        Assert.Equal(Call.Outside, book.Assess("crank.1", "main-journal").Call);
    }

    [Fact]
    public void Rule_of_thumb_is_no_verdict_and_drops_out_with_a_book_limit()
    {
        using var book = new MeasureBook();
        book.Read("crank.1", "crank-end-float", 1, "one", "0.15");
        var practice = Assert.Single(book.Assess("crank.1", "crank-end-float").Figures);
        Assert.Equal(Call.None, practice.Call);
        Assert.Equal(ThumbWord.Likely, Assert.Single(practice.Thumbs).Word);
        book.Limit("crank-end-float", 0.07, 0.18);
        var judged = Assert.Single(book.Assess("crank.1", "crank-end-float").Figures);
        Assert.Empty(judged.Thumbs);
        Assert.Equal(Call.Within, judged.Call);
    }

    [Fact]
    public void Reading_without_an_instrument_has_no_verdict_and_says_so()
    {
        using var book = new MeasureBook();
        book.Limit("crank-end-float", 0.07, 0.18);
        book.Read("crank.1", "crank-end-float", 1, "one", "0.15", null);
        var figure = Assert.Single(book.Assess("crank.1", "crank-end-float").Figures);
        Assert.Equal(Call.None, figure.Call);
        Assert.Equal("Say which instrument read it: without its uncertainty there is no verdict", figure.Next);
        Assert.Contains(BenchFindings.Of(book.Bench), f => f.Name == FindingNames.InstrumentMissing);
    }

    [Fact]
    public void Next_step_names_readings_or_an_instrument_or_none()
    {
        // u = 0.002 mm, of which half the variance is scatter: with n readings u² = 2 + 2/n µm². At 3.5 µm from the limit u must be 1.75 µm or less: n = 2 gives 1.732 µm.
        using var more = Journal("49.9785");
        Assert.Equal("One more reading would settle it, if the mean stays where it is", more.Assess("crank.1", "main-journal").Figures[0].Next);

        // At 1 µm from the limit the common part alone (1.41 µm) is too much: u of 0.5 µm, U of 1 µm, is asked for.
        using var none = Journal("49.976");
        Assert.Equal("No instrument you have will; one with a standard uncertainty of 0.00050 mm or less would (U = 0.0010 mm)", none.Assess("crank.1", "main-journal").Figures[0].Next);
        none.Good(new Tell(new InstrumentKept("fine", "bench micrometer", "mic2", "mm", 0.0001, 0.0008)));
        Assert.Equal("The bench micrometer that reads to 0.00010 mm would settle it", none.Assess("crank.1", "main-journal").Figures[0].Next);

        using var on = Journal("49.975");
        Assert.Equal("The value lies on the limit itself: no instrument will settle it. Decide by what the part must do", on.Assess("crank.1", "main-journal").Figures[0].Next);
    }

    [Fact]
    public void Flatness_of_a_grid_is_the_least_zone_of_two_planes()
    {
        // A face that is only tilted is flat: heights 0.01·column + 0.02·row lie in one plane. One corner lifted by 0.09 then gives less than 0.09, for the planes tilt with it.
        using var book = new MeasureBook();
        var block = book.Part("block");
        foreach (var (row, r) in new[] { ("near", 0), ("middle", 1), ("far", 2) })
            foreach (var c in Enumerable.Range(1, 5))
                book.Read(block, "deck-face", 1, $"{row}.g{c}", FormattableString.Invariant($"{0.01 * c + 0.02 * r:0.00}"), "fg");
        Assert.Equal(0, Assert.Single(book.Assess(block, "deck-face").Figures).Value, 9);
    }

    [Fact]
    public void Compression_ratio_by_formula_agrees_with_a_run_of_draws()
    {
        // Bore 80, stroke 80, chamber 40.0 cm³, gasket bore 81 by 1.2, deck −0.20, flat top: swept 402.12, clearance 47.19 cm³, ratio 9.52. Invented inputs, worked by hand.
        using var book = new MeasureBook();
        book.Good(new Tell(new InstrumentKept("bur", "burette", "bur", "cm3", 0.1, 0.25)));
        foreach (var (spot, text, with) in new[] { ("bore", "80", "bg"), ("stroke", "80", "mic"), ("chamber", "40.0", "bur"), ("gasketbore", "81", "mic"), ("gasket", "1.2", "mic"), ("deck", "-0.20", "fg"), ("dome", "0", "bur") })
            book.Read("piston.1", "compression-ratio", 1, spot, text, with);
        var ratio = Assert.Single(book.Assess("piston.1", "compression-ratio").Figures);
        Assert.Equal(9.52, ratio.Value, 0.005);
        var found = Gudgeon.Engine.Characteristics.Find("compression-ratio")!;
        var trial = new Assessor(book.Bench).Trial(found, book.Bench.Places.On(book.Bench.Engine.Parts["piston.1"], found)[0])!.Value;
        Assert.Equal(ratio.Budget!.StandardUncertainty, trial.Run.StandardUncertainty, 0.02 * ratio.Budget.StandardUncertainty);
    }

    [Fact]
    public void Probability_is_half_on_the_limit()
    {
        // Normal distribution: a reading on a single limit is as likely within as not (JCGM 106:2012, 7.2, from memory).
        using var book = new MeasureBook();
        book.Limit("crank-end-float", null, 0.15);
        book.Read("crank.1", "crank-end-float", 1, "one", "0.15", "fg");
        Assert.Equal(0.5, book.Assess("crank.1", "crank-end-float").Figures[0].Probability!.Value, 9);
    }

    [Fact]
    public void Same_gauge_on_two_spots_cancels_what_is_common()
    {
        // Two readings of u = 3 µm, half the variance common: u² of the difference = 2·(9/2) µm² = 9 µm², so u = 3 µm and not 4.24 µm. GUM 5.2.2 with r = 1 for the common part.
        using var book = new MeasureBook();
        foreach (var (spot, text) in new[] { ("top.across", "86.010"), ("bottom.across", "86.020") })
            book.Good(new TakeReading(new Slot(book.Part("block"), "bore", 1, spot), text, "bg", 20, 20));
        Assert.Equal(0.003, book.Assess(book.Part("block"), "bore-taper").Figures[0].Budget!.StandardUncertainty, 6);
    }

    [Fact]
    public void Readings_that_are_alike_leave_a_difference_as_uncertain_as_others()
    {
        // Two readings of u = 3 µm, half the variance common: u² of their difference is 9 µm², whatever they read. GUM 5.2.2.
        using var book = new MeasureBook();
        book.Limit("bore-taper", null, 0.005);
        foreach (var spot in new[] { "top.across", "bottom.across" })
            book.Good(new TakeReading(new Slot(book.Part("block"), "bore", 1, spot), "86.010", "bg", 20, 20));
        var taper = book.Assess(book.Part("block"), "bore-taper").Figures[0];
        Assert.Equal(0, taper.Value);
        Assert.Equal(0.003, taper.Budget!.StandardUncertainty, 6);
        Assert.Equal(Call.TooCloseToCall, taper.Call);
    }

    [Fact]
    public void Set_that_is_alike_and_a_face_that_is_level_are_not_known_for_sure()
    {
        using var book = new MeasureBook();
        foreach (var i in new[] { 1, 2 })
            book.Good(new TakeReading(new Slot($"piston.{i}", "piston-skirt", 1, "one"), "85.950", "mic", 20, 20));
        foreach (var row in new[] { "near", "middle", "far" })
            foreach (var c in Enumerable.Range(1, 5))
                book.Read("block.1", "deck-face", 1, $"{row}.g{c}", "0.01", "fg");
        Assert.True(book.Assess("block.1", "deck-face").Figures[0].Budget!.StandardUncertainty > 0.004);
        var spread = Gudgeon.Engine.Characteristics.All.First(c => c.Limits.HasFlag(Gudgeon.Engine.LimitKinds.Spread) && c.IsRead && c.Figure == Gudgeon.Engine.FigureKind.Each && c.Spots.Count == 1 && book.Bench.Places.All(c).Count > 1 && c.Unit == "mm");
        foreach (var place in book.Bench.Places.All(spread).Take(2))
            book.Read(place.Part, spread.Id, place.Number, "one", "1.000");
        Assert.True(new Assessor(book.Bench).Spread(spread)!.Budget!.StandardUncertainty > 0);
    }

    [Fact]
    public void Warm_alloy_bore_is_brought_to_20_degrees()
    {
        // Alloy (21.5e-6/K) at 31 °C read as 85.0123 mm by steel (11.5e-6/K) at 24 °C is 84.996108986 mm at 20 °C: recomputed elsewhere with mpmath; coefficients of Callister and Rethwisch, Table B.6, seen.
        using var book = new MeasureBook();
        var block = book.Part("block");
        book.Good(new Tell(new MaterialTold(block, "aluminium-cast")));
        book.Good(new TakeReading(new Slot(block, "bore", 1, "top.across"), "85.0123", "bg", 31, 24));
        Assert.Equal(84.996108986, book.Assess(block, "bore").Figures[0].Value, 9);
    }

    [Fact]
    public void Findings_name_what_is_out_and_what_is_too_close()
    {
        using var book = Journal("49.960");
        book.Good(new TakeReading(new Slot("crank.1", "main-journal", 2, "front.upright"), "49.975", "mic", 20, 20));
        var findings = BenchFindings.Of(book.Bench);
        Assert.Equal(
            "reading-outside: main 1, main journal diameter, front, upright: 49.9600\u00a0mm ± 0.0040\u00a0mm, limit 49.975 to 50\u00a0mm: outside limits. Usual next, cheapest first: polish (a shop); grind to the next undersize (a shop).",
            findings.First(f => f.Name == FindingNames.ReadingOutside).ToString());
        Assert.Contains(findings, f => f.Name == FindingNames.ReadingTooClose && f.Where.StartsWith("main 2", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("86.512", "86.512 mm: a turn of the thimble may have been misread. Was it 86.012 mm?")]
    [InlineData("8.6012", "8.6012 mm: the decimal mark may have slipped. Was it 86.012 mm?")]
    [InlineData("3.3863", "3.3863 mm: it may be in inches. Was it 86.01202 mm?")]
    [InlineData("86.120", "86.12 mm: one digit may be wrong. Was it 86.02 mm?")]
    [InlineData("87.700", "87.7 mm lies far from 86.012 mm. Is it this place, and this part?")]
    public void Slip_of_the_hand_is_asked_and_kept(string text, string why)
    {
        using var book = new MeasureBook();
        var block = book.Part("block");
        book.Read(block, "bore", 1, "top.across", "86.010", "bg");
        book.Read(block, "bore", 1, "middle.across", "86.012", "bg");
        book.Read(block, "bore", 1, "bottom.across", "86.014", "bg");
        Assert.Empty(Doubts.Of(book.Bench));
        var odd = book.Read(block, "bore", 1, "top.along", text, "bg");
        Assert.Equal(why, Assert.Single(Doubts.Of(book.Bench), d => d.Reading.Number == odd).Why);
        book.Good(new Tell(new ReadingStands(odd)));
        Assert.DoesNotContain(Doubts.Of(book.Bench), d => d.Reading.Number == odd);
        Assert.Equal(text, book.Bench.Readings[odd].Taken.AsTyped);
    }

    private static MeasureBook Journal(string text)
    {
        var book = new MeasureBook();
        book.Limit("main-journal", 49.975, 50.000);
        book.Good(new TakeReading(new Slot("crank.1", "main-journal", 1, "front.upright"), text, "mic", 20, 20));
        return book;
    }
}
