using CsCheck;
using Gudgeon.Sums.Motion;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Tests.Motion;

public class TimingTests
{
    private static readonly ValveEvents Symmetric = new(Deg(20), Deg(60), Deg(60), Deg(20));

    // Against exact kinematics: a stop at any depth, a disc set anywhere, any gear in line with its crank.
    [Fact]
    public void Stop_finds_top_whatever_the_stop_and_the_disc() =>
        Gen.Select(Gen.Double[25, 80], Gen.Double[2.5, 5], Gen.Double[0.02, 0.6], Gen.Double[0, 360]).Sample((r, ratio, depth, disc) =>
        {
            var gear = CrankSlider.Of(Mm(r), Mm(r * ratio), Length.Zero).Value;
            var (before, after) = gear.AnglesAt(gear.Stroke * depth).Value;
            var top = PositiveStop.FindTop(OnDisc(before, disc), OnDisc(after, disc), Deg(0.25)).Value;
            Assert.Equal(0, Math.IEEERemainder(top.DiscAtTop.Degrees - disc, 360), 1e-6);
            Assert.Equal(0, Math.IEEERemainder(top.TurnPointerBy.Degrees - disc, 360), 1e-6);
            Assert.InRange(top.TurnPointerBy.Degrees, -180, 180);
            Assert.Equal(0.25 / Math.Sqrt(2), top.StandardUncertainty.Degrees, 1e-12);
        });

    // The same with an offset cylinder, whose middle of the stops is not its top.
    [Fact]
    public void Stop_finds_the_top_of_an_offset_cylinder() =>
        Gen.Select(Gen.Double[25, 80], Gen.Double[2.5, 5], Gen.Double[-0.3, 0.3], Gen.Double[0.02, 0.6]).Sample((r, ratio, offset, depth) =>
        {
            var gear = CrankSlider.Of(Mm(r), Mm(r * ratio), Mm(r * offset)).Value;
            var (before, after) = gear.AnglesAt(gear.Stroke * depth).Value;
            var top = PositiveStop.FindTop(OnDisc(before, 100), OnDisc(after, 100), Angle.Zero, gear).Value;
            Assert.Equal(100 + gear.Top.Degrees, top.DiscAtTop.Degrees, 1e-5);
        });

    [Theory]
    [InlineData(5, 14, "9°")]
    [InlineData(20, 340, "320°")]
    public void Stops_read_the_wrong_way_are_refused(double first, double second, string met) => Says.One(
        $"turn between the stops: met {met}; expected 10 to 240°. Read again: first against the stop in the running direction, then backwards.",
        PositiveStop.FindTop(Deg(first), Deg(second), Angle.Zero));

    // Harmonic lift y = (h/2)(1 − cos 2πφ/β), h 9.5, β 240°: 189.5151° above 1.0 mm (invented inputs, recomputed). Lobe centre put at 110°.
    [Fact]
    public void Equal_lift_finds_the_centre_of_a_harmonic_lobe()
    {
        static (double Open, double Close) At(double lift)
        {
            var half = 120 - 240 / (2 * Math.PI) * Math.Acos(1 - 2 * lift / 9.5);
            return (110 - half, 110 + half);
        }

        Assert.Equal(189.5151, At(1).Close - At(1).Open, 1e-4);
        var readings = new[] { 0.5, 1, 2, 5 }.Select(lift => new EqualLift(Mm(lift), Deg(At(lift).Open), Deg(At(lift).Close))).ToList();
        var centre = LobeCentre.ByEqualLift(readings, Deg(0.5)).Value;
        Assert.Equal(110, centre.Centre.Degrees, 1e-9);
        Assert.Equal(0, centre.Spread.Degrees, 1e-9);
        Assert.Equal(0.5 / Math.Sqrt(8), centre.StandardUncertainty.Degrees, 1e-12);
    }

    [Fact]
    public void Equal_lift_shows_a_lobe_that_leans()
    {
        var centre = LobeCentre.ByEqualLift([new(Mm(1), Deg(0), Deg(220)), new(Mm(5), Deg(50), Deg(174))], Angle.Zero).Value;
        Assert.Equal(111, centre.Centre.Degrees, 1e-9); // by hand: middles 110 and 112
        Assert.Equal(2, centre.Spread.Degrees, 1e-9);
    }

    [Fact]
    public void Equal_lift_that_closes_before_it_opens_is_refused() => Says.One(
        "closing of pair 1: met -110° after opening at -10°; expected a later angle, less than two turns on. Count degrees on through the turn: 250° and not −110°.",
        LobeCentre.ByEqualLift([new(Mm(1), Deg(-10), Deg(-110))], Angle.Zero));

    [Fact]
    public void Equal_lift_without_readings_is_refused() => Says.One(
        "readings: met none; expected one pair or more. Read the disc at one lift, opening and closing.", LobeCentre.ByEqualLift([], Angle.Zero));

    // A valve-timing article: 20/60/60/20 lasts 260°; 5° advance gives 25/55/65/15, 5° retard 15/65/55/25 (seen). Centres, separation, overlap by hand.
    [Theory]
    [InlineData(0, 20, 60, 60, 20, 110, 110)]
    [InlineData(5, 25, 55, 65, 15, 105, 115)]
    [InlineData(-5, 15, 65, 55, 25, 115, 105)]
    public void Events_and_figures_are_the_published_ones(double advance, double io, double ic, double eo, double ec, double inlet, double exhaust)
    {
        var events = CamTiming.Advanced(Symmetric, Deg(advance)).Value;
        Assert.Equal([io, ic, eo, ec], new[] { events.InletOpens, events.InletCloses, events.ExhaustOpens, events.ExhaustCloses }.Select(a => Math.Round(a.Degrees, 9)));
        var figures = CamTiming.FromEvents(events).Value;
        Assert.Equal([260, 260, inlet, exhaust, 110, 40],
            new[] { figures.InletDuration, figures.ExhaustDuration, figures.InletCentre, figures.ExhaustCentre, figures.Separation, figures.Overlap }.Select(a => Math.Round(a.Degrees, 9)));
    }

    // For equal lobes separation = (duration − overlap)/2: an identity from a forum note.
    [Fact]
    public void Separation_is_half_of_duration_less_overlap_for_equal_lobes() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[30, 90]).Sample((open, close) =>
        {
            var figures = CamTiming.FromEvents(new(Deg(open), Deg(close), Deg(close), Deg(open))).Value;
            Assert.Equal((figures.InletDuration - figures.Overlap).Degrees / 2, figures.Separation.Degrees, 1e-9);
        });

    [Fact]
    public void Event_beyond_reason_is_refused() => Says.One(
        "inlet closes: met 240°; expected -90 to 120°. Look at inlet closes again.", CamTiming.FromEvents(Symmetric with { InletCloses = Deg(240) }));

    // By hand, 20 teeth: 18° each. One tooth late; on the card; between two teeth nobody can say.
    [Theory]
    [InlineData(128, 0.5, 1, 0, true)]
    [InlineData(92.4, 0.5, -1, 0.4, true)]
    [InlineData(111, 0.5, 0, 1, true)]
    [InlineData(119, 0.5, 1, -9, false)]
    [InlineData(118.5, 0.5, 0, 8.5, false)]
    public void Cam_against_its_card_counts_teeth(double measured, double u, int teeth, double left, bool sure)
    {
        var answer = CamTiming.AgainstCard(Deg(measured), Deg(u), Deg(110), 20).Value;
        Assert.Equal((teeth, sure), (answer.WholeTeeth, answer.Sure));
        Assert.Equal(left, answer.Left.Degrees, 1e-9);
    }

    [Fact]
    public void Cam_half_a_turn_off_is_refused() => Says.One(
        "lobe centre: met 300°; expected within half a turn of the card's 110°. Check that both count from the same top dead centre.",
        CamTiming.AgainstCard(Deg(300), Angle.Zero, Deg(110), 20));

    [Fact]
    public void Wheel_without_teeth_is_refused() => Says.One(
        "teeth of the crank wheel: met 0; expected 6 or more. Count the teeth of the wheel on the crank.", CamTiming.OneTooth(0));

    // Invented inputs; wheels and tangents solved by bisection in python.
    [Fact]
    public void Stretch_and_skim_make_the_cam_late_as_reckoned_apart()
    {
        var run = new DriveRun(Mm(9.525), 18, 36, Mm(300));
        Assert.Equal(3.132638, DriveWear.LateByStretch(run, 0.005).Value.Degrees, 1e-6);
        Assert.Equal(0.417684, DriveWear.LateBySkim(run, Mm(0.2)).Value.Degrees, 1e-6);
    }

    // By hand: shafts far apart have an all but straight run, and the cam turns by x/R, the crank by twice that.
    // R 50 mm, x 0.5 mm: 0.572957795° at the cam, 1.145915590° at the crank; at 50 m the lean of the run takes 1.25 parts in ten million.
    [Fact]
    public void Skim_of_a_long_run_is_the_skim_over_the_cam_wheels_radius() =>
        Assert.Equal(1.145915590, DriveWear.LateBySkim(new(Mm(2 * 50 * Math.Sin(Math.PI / 36)), 18, 36, Mm(50_000)), Mm(0.5)).Value.Degrees, 5e-7);

    [Fact]
    public void Drive_that_is_not_two_to_one_is_refused() => Says.One(
        "teeth of the cam wheel: met 38; expected twice the crank wheel's, 36. Count again; a drive in two stages is reckoned stage by stage.",
        DriveWear.LateByStretch(new(Mm(9.525), 18, 38, Mm(300)), 0.005));

    [Fact]
    public void Wheels_that_touch_are_refused() => Says.One(
        "centres: met 80 mm; expected more than both wheels' radii and the skim, 87.0697 mm. Measure from crank axis to cam axis.",
        DriveWear.LateBySkim(new(Mm(9.525), 18, 36, Mm(80)), Mm(0.2)));

    private static Angle OnDisc(Angle crank, double discAtTop) => Deg(((crank.Degrees + discAtTop) % 360 + 360) % 360);

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Angle Deg(double value) => Angle.FromDegrees(value);
}
