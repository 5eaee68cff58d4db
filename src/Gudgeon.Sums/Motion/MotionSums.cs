using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Motion;

/// <summary>The sums of moving parts and timing for the catalogue.</summary>
public static class MotionSums
{
    private const string Cycle = "the four-stroke cycle";
    private static readonly SumInput[] Gear = [new("r", "throw", "mm"), new("l", "rod between centres", "mm"), new("e", "offset", "mm")];
    private static readonly SumInput[] Events =
        [new("IO", "inlet opens before top", "°"), new("IC", "inlet closes after bottom", "°"), new("EO", "exhaust opens before bottom", "°"), new("EC", "exhaust closes after top", "°")];

    private static readonly SumInput[] Run =
        [new("p", "pitch", "mm"), new("z", "teeth of the crank wheel, the cam wheel has twice as many", "1"), new("C", "centres", "mm")];

    private static readonly ValveEvents Symmetric = new(Deg(20), Deg(60), Deg(60), Deg(20));
    private static readonly DriveRun Chain = new(Mm(9.525), 18, 36, Mm(300));

    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("motion.of-crank-slider", "Where the piston stands", "y = r·cos θ + √(l² − (r·sin θ − e)²)", [.. Gear, new("θ", "crank angle from upright", "°")], "mm",
            "rod longer than throw and offset together; else refused", "Khurmi and Gupta, Theory of Machines (2005), chapter 15; geometry",
            new("r 150, l 600, 60° after top, down from top", 89.231274, 1e-6, "exact form reckoned with numpy 1.24.2 on the data of ex. 15.5",
                () => CrankSlider.Of(Mm(150), Mm(600), Length.Zero).Value.Down(Deg(60)).Millimetres)),
        new("motion.mean-speed-metres-per-second", "Mean piston speed", "v = 2·S·N/60 000", [new("S", "stroke", "mm"), new("N", "speed", "1/min")], "m/s", "N 0 and above", "definition",
            new("86 mm at 6000 1/min", 17.2, 1e-9, "by hand", () => CrankSlider.MeanSpeedMetresPerSecond(Mm(86), 6000).Value)),
        new("motion.find-top", "True top dead centre by the piston stop", "top = (first + second)/2; u = u_reading/√2", [new("first", "disc at the stop before top", "°"), new("second", "disc at the stop after top", "°")], "°",
            "10 to 240° between the stops; else refused", "symmetry of the crank about top; common practice, no standard",
            new("352° and 20°", 6, 1e-9, "by hand: half of the 28° between them on from 352°", () => PositiveStop.FindTop(Deg(352), Deg(20), Angle.Zero).Value.DiscAtTop.Degrees)),
        new("motion.by-equal-lift", "Lobe centre by equal lift", "centre = mean of (opening + closing)/2", [new("opening", "crank angle at the lift, opening", "°"), new("closing", "crank angle at the lift, closing", "°")], "°",
            "closing after opening within 720°; else refused", "symmetry of the lobe; common practice, no standard",
            new("−10° and 230°", 110, 1e-9, "by hand", () => LobeCentre.ByEqualLift([new(Mm(1), Deg(-10), Deg(230))], Angle.Zero).Value.Centre.Degrees)),
        new("motion.from-events", "Cam figures from the events", "duration = IO + 180 + IC; centre = duration/2 − IO; separation = (ICL + ECL)/2; overlap = IO + EC", Events, "°",
            "each event −90 to 120°; else refused", "common practice, no standard found",
            new("20/60/60/20, separation", 110, 1e-9, "a valve-timing article's durations, read; the rest by hand", () => CamTiming.FromEvents(Symmetric).Value.Separation.Degrees)),
        new("motion.advanced", "The events of a shaft turned on", "IO + a, IC − a, EO + a, EC − a", [.. Events, new("a", "advance", "°")], "°", "−60 to 60°; else refused", "definition",
            new("20/60/60/20 advanced 5°, exhaust opens", 65, 1e-9, "a valve-timing article, read", () => CamTiming.Advanced(Symmetric, Deg(5)).Value.ExhaustOpens.Degrees)),
        new("motion.one-tooth", "What one tooth does", "360/z", [new("z", "teeth of the crank wheel", "1")], "°", "6 teeth or more; else refused", "geometry",
            new("20 teeth", 18, 1e-9, "by hand", () => CamTiming.OneTooth(20).Value.Degrees)),
        new("motion.against-card", "A cam against its card, in teeth", "late = measured − card; teeth = late/(360/z), rounded",
            [new("measured", "measured lobe centre", "°"), new("card", "the card's lobe centre", "°"), new("z", "teeth of the crank wheel", "1")], "1", "centres within half a turn; else refused", "geometry",
            new("128° against 110° with 20 teeth", 1, 0, "by hand: 18° is one tooth", () => CamTiming.AgainstCard(Deg(128), Deg(0.5), Deg(110), 20).Value.WholeTeeth)),
        new("motion.late-by-stretch", "Cam late by a grown chain", "late = 2·(x·L/R)·180/π", [.. Run, new("x", "elongation, part of one", "1")], "°", "elongation to 5 %, two to one; else refused", "geometry",
            new("p 9.525, z 18, C 300, 0.5 %", 3.132638, 1e-6, "invented inputs, tangents by bisection in python", () => DriveWear.LateByStretch(Chain, 0.005).Value.Degrees)),
        new("motion.late-by-skim", "Cam late by a skimmed head", "late = 2·(S(C) − S(C − h))/R·180/π", [.. Run, new("h", "skim", "mm")], "°", "skim to 5 mm, two to one; else refused", "geometry of the open belt",
            new("p 9.525, z 18, C 300, 0.2 mm", 0.417684, 1e-6, "invented inputs, tangents by bisection in python", () => DriveWear.LateBySkim(Chain, Mm(0.2)).Value.Degrees)),
        new("motion.clearance-table", "Which cylinder is at overlap when another fires", "overlapping = the one that fires 360° later", [new("order", "firing order", "1")], "1",
            "each cylinder once; else refused", Cycle,
            new("1 3 4 2: at overlap when 3 fires", 2, 0, "the four-stroke cycle, by hand", () => FiringOrder.ClearanceTable([1, 3, 4, 2]).Value[1].Overlapping!.Value)),
        new("motion.positions", "Where each cylinder stands in its cycle", "(crank − k·720°/n) mod 720°", [new("order", "firing order", "1"), new("crank", "crank angle from the first firing", "°")], "°",
            "each cylinder once; else refused", Cycle,
            new("1 3 4 2, crank 0, cylinder 3", 540, 1e-9, "by hand: it fires 180° later", () => FiringOrder.Positions([1, 3, 4, 2], Angle.Zero).Value[2].Degrees)),
        new("motion.least-new", "Shims for a set of valves, least new ones", "clearance = measured + old shim − new shim, within limits; exact assignment",
            [new("clearance", "measured clearance", "mm"), new("shim", "shim in the valve", "mm"), new("limits", "least and most clearance", "mm")], "mm",
            "1 to 500 valves; a valve that no shim fits is refused", "Kuhn, Naval Research Logistics Quarterly 2 (1955) 83",
            new("0.10 with 2.60 wanting 0.20 to 0.24, sizes by 0.05", 2.5, 1e-9, "by hand: 2.46 to 2.50 mm needed",
                () => ValveShims.LeastNew([new("1", Mm(0.10), Mm(2.60), Mm(0.20), Mm(0.24))], [], new(Mm(2.2), Mm(3.2), Mm(0.05))).Value[0].Shim.Millimetres)),
    ];

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Angle Deg(double value) => Angle.FromDegrees(value);
}
