using CsCheck;

namespace Gudgeon.Journal.Tests;

public class LiftTests
{
    // Invented inputs. By hand: two legs of 500 mm on a span of 500 mm stand at asin(250/500) = 30°, so T = 200·9.80665/(2·cos 30°) = 1132.4 N,
    // and the hook is √(500² − 250²) = 433 mm over the eyes. Grade 8 chain of 8 mm: 2000 kg on one leg (EN 818-4, as the table of the sums reads it): 1132.4/19613.3 = 5.8 %.
    // DIN 580 M16 to 45°: 500 kg: 1132.4/4903.3 = 23.1 %. Hook: 210 of 1000 kg. Plate: 210 of 500 kg = 42 %.
    [Fact]
    public void Lift_that_is_told_whole_passes_with_figures_done_by_hand()
    {
        using var book = LiftBook.Told();
        var view = book.Book.Read(LiftAssessor.Of);
        Assert.Empty(view.Checks.SelectMany(check => check.Id == LiftAssessor.FloorId ? [] : check.Refusals).Select(r => r.ToString()));
        Assert.True(view.Passes);
        Assert.Equal("200 ± 0\u00a0kg", book.Check(LiftAssessor.LoadId).Figure("mass as it hangs"));
        Assert.Equal("1132\u00a0N", book.Check(LiftAssessor.HangId).Figure("front: largest pull, at 30° to the vertical"));
        Assert.Equal("24\u00a0%", book.Check(LiftAssessor.GearId).Figure("weakest: eye bolt of"));
        Assert.Equal("42\u00a0%", book.Check(LiftAssessor.PlateId).Figure("load on the plate"));
        // 220 under the car, legs 150, 30 to stay free: 40. Hook 733 over the crank, manifold to 560: 143.
        Assert.Equal("40\u00a0mm", book.Check(LiftAssessor.HeadroomId).Figure("crane legs under the car"));
        Assert.Equal("143\u00a0mm", book.Check(LiftAssessor.HeadroomId).Figure("hook over the engine"));
    }

    [Fact]
    public void Every_figure_opens_its_working_with_a_caution()
    {
        using var book = LiftBook.Told();
        book.Good(new Tell(LiftStandTests.Stand));
        var view = book.Book.Read(LiftAssessor.Of);
        foreach (var figure in view.Checks.Append(view.Stand).SelectMany(check => check.Figures))
        {
            Assert.NotEmpty(figure.Working.Inputs);
            Assert.EndsWith("Defer to local codes and licensed practice.", figure.Working.Caution, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("load", "mass of the engine: met nothing weighed, told or answered; expected two hook scales, or a mass with its spread and centre. Weigh it front and rear, or tell its mass.")]
    [InlineData("hang", "rig: met nothing told; expected one to four legs, and where each holds the engine. Tell the rig.")]
    [InlineData("plate", "crane: met nothing told; expected its boom, plate, ram and wheels. Tell the crane.")]
    [InlineData("headroom", "place: met nothing told; expected heights of roof, sill, crane legs and engine. Tell the place.")]
    public void Nothing_told_is_asked_for_and_gives_no_figure(string id, string message)
    {
        using var book = new TestBook();
        var check = book.Check(id);
        Assert.Empty(check.Figures);
        Assert.Equal(message, check.Refusals.Single().ToString());
        Assert.False(book.Book.Read(LiftAssessor.Of).Passes);
    }

    [Fact]
    public void Legs_shorter_than_the_span_are_refused_and_all_behind_waits()
    {
        using var book = LiftBook.Told(rig: LiftBook.Rig with { Legs = [new("front", new(500, 0, 300), 240), new("rear", new(0, 0, 300), 240)] });
        Assert.Equal("rear and front: met 480 mm of legs over a span of 500 mm; expected legs longer together than the span. Take longer legs.", Swapped(book.Check(LiftAssessor.HangId).Refusals.Single().ToString()));
        AssertNoFigureBehind(book, LiftAssessor.HangId);
    }

    [Fact]
    public void Centre_outside_the_lifting_points_is_refused()
    {
        using var book = LiftBook.Told(engine: LiftBook.Engine with { Centre = new EnginePlace(600, 0, 0) });
        Assert.Equal("centre of mass: met 600, 0 mm, outside the lifting points; expected a centre between the lifting points, seen from above. Move a lifting point so that the centre lies between them.", book.Check(LiftAssessor.HangId).Refusals.Single().ToString());
        AssertNoFigureBehind(book, LiftAssessor.HangId);
    }

    [Theory]
    [InlineData(433.0, true)] // half span 250 over 433: 35.3° to the vertical
    [InlineData(289.0, true)] // asin(250/289) = 59.9°
    [InlineData(288.0, false)] // asin(250/288) = 60.2°
    public void Legs_beyond_sixty_degrees_are_refused(double length, bool passes)
    {
        using var book = LiftBook.Told(rig: LiftBook.Rig with { Legs = [.. LiftBook.Rig.Legs.Select(leg => leg with { LengthMm = length })] });
        Assert.Equal(passes ? LiftStanding.Passes : LiftStanding.Fails, book.Check(LiftAssessor.HangId).Standing);
    }

    [Fact]
    public void Chain_without_a_grade_is_unfit_and_so_is_gear_without_a_rating()
    {
        var gear = LiftBook.Rig.Gear.Select(piece => piece.Sort == "chain" && piece.On == "front" ? piece with { Grade = "" } : piece.On == RigGear.OnHook ? piece with { RatingKg = null } : piece);
        using var book = LiftBook.Told(rig: LiftBook.Rig with { Gear = [.. gear] });
        var check = book.Check(LiftAssessor.GearId);
        Assert.Empty(check.Figures);
        Assert.Equal(
            ["crane hook, rating: met none that can be read; expected a rating on the piece. Leave it out: unfit for lifting until its rating can be read.",
             "chain of front, grade of the chain: met none; expected 8 or 80, as the tag says. Leave this chain out: unfit for lifting until its grade can be read."],
            check.Refusals.Select(r => r.ToString()));
        Assert.False(book.Book.Read(LiftAssessor.Of).Passes);
    }

    // By hand: the leg's 1132.4 N against 0.8 × 1120 kg × 0.49 (angle of the choke not looked at: the least of the table) = 439 kg: 26.3 %.
    [Fact]
    public void Chain_choked_round_the_engine_counts_as_choked()
    {
        var gear = LiftBook.Rig.Gear.Where(piece => piece.Sort != "eye bolt").Select(piece => piece is { Sort: "chain", On: "front" } ? piece with { Sort = "choked chain", Size = "6" } : piece);
        using var book = LiftBook.Told(rig: LiftBook.Rig with { Gear = [.. gear] });
        Assert.Equal("27\u00a0%", book.Check(LiftAssessor.GearId).Figure("weakest: chain of front"));
    }

    [Fact]
    public void Cautions_of_the_sums_are_those_of_the_book()
    {
        string Line(string id) => Engine.Cautions.All.Single(c => c.Id == id).Text;
        Assert.Equal([Line("lift-load"), Line("lift-gear"), Line("lift-crane"), Line("engine-stand")],
            [Sums.Lifting.LiftingCautions.Hanging, Sums.Lifting.LiftingCautions.Gear, Sums.Lifting.LiftingCautions.Crane, Sums.Lifting.LiftingCautions.Stand]);
    }

    [Fact]
    public void Bar_without_a_rating_is_unfit()
    {
        var rig = LiftBook.Rig with { Legs = [new("front", new(500, 0, 300), 400), new("rear", new(0, 0, 300), 400)], Bar = new RigBar(500, 150, 0, 8) };
        using var book = LiftBook.Told(rig: rig);
        Assert.Equal("bar, rating: met none that can be read; expected a rating on the piece. Leave it out: unfit for lifting until its rating can be read.", book.Check(LiftAssessor.GearId).Refusals.Single().ToString());
        Assert.False(book.Book.Read(LiftAssessor.Of).Passes);
    }

    [Fact]
    public void Leg_without_gear_is_not_taken_to_hold()
    {
        using var book = LiftBook.Told(rig: LiftBook.Rig with { Gear = [.. LiftBook.Rig.Gear.Where(piece => piece.On != "rear")] });
        Assert.Equal("rear: met no piece of gear; expected every piece that carries, with its rating. Add its chain or sling, its shackles and its eye.", book.Check(LiftAssessor.GearId).Refusals.Single().ToString());
    }

    [Fact]
    public void Load_beyond_the_plate_names_the_hole_that_carries_it()
    {
        using var book = LiftBook.Told(crane: LiftBook.Crane with { Holes = [new(1000, 300), new(1200, 200)] });
        Assert.Equal("boom: met 210 kg at hole 2; expected 200 kg at most by the plate. Draw the boom in to hole 1.", book.Check(LiftAssessor.PlateId).Refusals.Single().ToString());
        Assert.Empty(book.Check(LiftAssessor.PlateId).Figures);
        Assert.False(book.Book.Read(LiftAssessor.Of).Passes);
    }

    [Fact]
    public void Crane_with_its_load_before_its_wheels_tips_and_gives_no_figure()
    {
        using var book = LiftBook.Told(crane: LiftBook.Crane with { Wheels = [new("front left", 800, 450), new("front right", 800, -450), new("rear right", 0, -350), new("rear left", 0, 350)] });
        var check = book.Check(LiftAssessor.TippingId);
        Assert.Equal(LiftStanding.Fails, check.Standing);
        Assert.Empty(check.Figures);
        Assert.All(check.Refusals, r => Assert.Equal("Draw the boom in, take mass off, or set the legs wider; do not hold it down by hand", r.Remedy));
    }

    // Manifold to 720: hook at 733, 30 to stay free: 17 short; without it the engine's own top of 450 is the highest: 270 gained.
    [Fact]
    public void Headroom_that_is_short_says_what_to_take_off_and_passes_once_that_is_off()
    {
        using var book = LiftBook.Told(place: LiftBook.Place with { SillMm = 300, Heights = [new(MassTold.WholeEngine, 450, -250), new("own.manifold", 720, 300)] });
        Assert.Equal("hook over the engine: met 17\u00a0mm short; expected what is to stay free, and no less. Take off to gain: inlet manifold off: 270\u00a0mm.", book.Check(LiftAssessor.HeadroomId).Refusals[0].ToString());
        Assert.Empty(book.Check(LiftAssessor.HeadroomId).Figures);
        book.Good(new TakeOff("own.manifold"));
        Assert.Equal(LiftStanding.Passes, book.Check(LiftAssessor.HeadroomId).Standing);
    }

    // Invented: 1400 mm of engine, 1150 of it towards the post. With the boom up by 10° its end at 32 mm from the post has the boom 90 mm over it, less 62 of boom and look:
    // no more than 27 is left of the 30 to stay free. So the hook stays below 1500 + 1200·sin 10° − 120 = 1588 mm, where 983 + 850 + 30 = 1863 are needed over the sill.
    [Fact]
    public void Boom_that_closes_on_the_engine_ends_the_stroke()
    {
        using var book = LiftBook.Told(place: LiftBook.Place with { EngineLengthMm = 1400, FreeEndToCrane = true });
        var refusals = book.Check(LiftAssessor.HeadroomId).Refusals;
        var refusal = refusals[0];
        Assert.Equal(("over the sill", "boom", "Mark that height; longer legs of the sling give more"), (refusal.Where, refusals[1].Where, refusals[1].Remedy));
        Assert.InRange(1863 - double.Parse(refusal.Met.Split('\u00a0')[0], System.Globalization.CultureInfo.InvariantCulture), 1400, 1588);
        using var short_ = LiftBook.Told();
        Assert.Contains(short_.Check(LiftAssessor.HeadroomId).Warnings, w => w.ToString().StartsWith("boom: met it closes on the engine above", StringComparison.Ordinal));
    }

    // By hand: drops upright under a bar as long as the eyes are apart, centre 305 of 500 from the rear eye: 200·9.80665·305/500 = 1196.4 N in front, 765 N behind;
    // hook over the common centre of engine and bar, 200·55/208 = 52.9 mm forward of the bar's middle, hangs it level. Hook: 300 + 400 + 150 = 850 mm over the crank.
    [Fact]
    public void Leveller_shares_by_the_lever_and_says_where_its_carrier_levels()
    {
        var rig = LiftBook.Rig with { Legs = [new("front", new(500, 0, 300), 400), new("rear", new(0, 0, 300), 400)], Bar = new RigBar(500, 150, 200.0 * 55 / 208, 8, 500) };
        using var book = LiftBook.Told(engine: LiftBook.Engine with { Centre = new EnginePlace(305, 0, 0) }, rig: rig);
        var check = book.Check(LiftAssessor.HangId);
        Assert.Equal(("1196\u00a0N", "765\u00a0N", "53\u00a0mm"), (check.Figure("front: largest pull"), check.Figure("rear: largest pull"), check.Figure("carrier that hangs the engine level")));
        Assert.Equal(850, book.Book.Read(LiftAssessor.Of).Hung!.HookZMm, 0.5);
        Assert.Equal("44\u00a0%", book.Check(LiftAssessor.GearId).Figure("bar, of 500"));
        // Level, so its front hole is 250 − 52.9 mm forward of the hook and 150 under it.
        var view = book.Book.Read(LiftAssessor.Of);
        var (pose, hole) = (view.Stroke[0], HungOutline.Of(book.Bench, view.Hung)!.BarHoles(view.Stroke[0])[0]);
        Assert.Equal((197.1, -150.0), (hole.X - pose.Reach.Millimetres, hole.Y - pose.HookHeight.Millimetres), Within(0.5));
        // 200 + 10 of gear + 8 of bar, of 1000 and of 500 kg.
        Assert.Equal("44\u00a0%", book.Check(LiftAssessor.PlateId).Figure("load on the plate"));
    }

    // Whatever is told: a check that does not pass carries no figure, all that carry one have a finite one, and nothing passes as a whole past a check that fails.
    [Fact]
    public void No_figure_stands_beside_a_check_that_does_not_pass()
    {
        using var book = LiftBook.Told();
        Gen.Select(Gen.Double[200, 1500], Gen.Double[-100, 600], Gen.Double[50, 700], Gen.Double[300, 2500], Gen.Double[0, 60]).Sample((leg, centre, rating, sill, spread) =>
        {
            book.Good(new Tell(
                LiftBook.Engine with { Centre = new EnginePlace(centre, 0, 0), CentreSpreadMm = spread, SpreadKg = spread },
                LiftBook.Rig with { Legs = [.. LiftBook.Rig.Legs.Select(l => l with { LengthMm = leg })] },
                LiftBook.Crane with { Holes = [new(1000, rating + 100), new(1200, rating)] },
                LiftBook.Place with { SillMm = sill }));
            var view = book.Book.Read(LiftAssessor.Of);
            Assert.All(view.Checks, check => Assert.True(check.Standing == LiftStanding.Passes ? check.Figures.Count > 0 : check.Figures.Count == 0 && check.Refusals.Count > 0, check.Id));
            Assert.All(view.Checks.SelectMany(check => check.Figures), figure => Assert.True(double.IsFinite(figure.Working.Result.Value), figure.What));
            Assert.Equal(view.Checks.All(check => check.Standing == LiftStanding.Passes || check.Id == LiftAssessor.FloorId), view.Passes);
        }, iter: 60, threads: 1);
    }

    [Fact]
    public void Looks_hold_until_the_lift_is_told_anew()
    {
        using var book = LiftBook.Told();
        book.Good(new Tell(new LiftChecked(LiftList.Looks)));
        Assert.Empty(LiftList.Open(book.Bench));
        book.Good(new Tell(LiftBook.Rig));
        Assert.Equal(LiftList.Looks, LiftList.Open(book.Bench));
    }

    [Fact]
    public void Lift_is_the_same_after_the_book_is_opened_again()
    {
        using var book = LiftBook.Told(place: LiftBook.Place with { RoomLengthMm = 6000, RoomWidthMm = 3000, Things = [new("bench", 0, 2500, 2000, 500)], Way = [new(1000, 1200, 0), new(2500, 1200, 0)] });
        book.Good(new Tell(LiftStandTests.Stand, new Weighed(110, 450, 90, 50, 1, 0, 20, 15)));
        string Tell() => string.Join('\n', book.Book.Read(LiftAssessor.Of) is var view ? view.Checks.Append(view.Stand).SelectMany(check => check.Figures.Select(f => $"{f.What} {f.Value}").Concat(check.Refusals.Select(r => r.ToString()))) : []);
        var before = Tell();
        book.Reopen();
        Assert.Equal(before, Tell());
        // By hand: (110·450 + 90·50)/200 = 270; 2·(1/√3)·√(110² + 90²)·400/200² = 1.64.
        Assert.Equal("270 ± 1.6\u00a0mm", book.Check(LiftAssessor.LoadId).Figure("centre of mass forward"));
    }

    private static void AssertNoFigureBehind(TestBook book, string id)
    {
        var view = book.Book.Read(LiftAssessor.Of);
        Assert.False(view.Passes);
        Assert.Empty(view.Checks.SkipWhile(check => check.Id != id).SelectMany(check => check.Figures));
    }

    private static EqualityComparer<(double, double)> Within(double off) => EqualityComparer<(double, double)>.Create((a, b) => Math.Abs(a.Item1 - b.Item1) <= off && Math.Abs(a.Item2 - b.Item2) <= off);

    // Which leg of a pair is named first is no matter.
    private static string Swapped(string message) => message.Replace("front and rear:", "rear and front:", StringComparison.Ordinal);
}
