using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fasteners;

/// <summary>The sums of fasteners for the catalogue.</summary>
public static class FastenerSums
{
    private static readonly SumInput Preload = new("F", "preload", "N");
    private static readonly SumInput Torque = new("T", "torque", "N·m");
    private static readonly SumInput Diameter = new("d", "thread diameter", "mm");
    private static readonly SumInput Pitch = new("P", "thread pitch", "mm");
    private static readonly SumInput NutFactor = new("K", "nut factor", "1");
    private static readonly SumInput BoltStiffness = new("kb", "stiffness of the bolt", "N/mm");
    private static readonly SumInput JointStiffness = new("kj", "stiffness of the joint", "N/mm");
    private static readonly SumInput[] FrictionForm =
        [Pitch, new("d2", "pitch diameter", "mm"), new("μG", "friction in the thread", "1"), new("μK", "friction under the head", "1"), new("Db", "mean bearing diameter", "mm")];

    private static readonly SumInput[] ThreadForm =
        [new("Kn", "greatest minor diameter of the nut", "mm"), new("Es", "least pitch diameter of the bolt", "mm"),
            new("Ds", "least major diameter of the bolt", "mm"), new("En", "greatest pitch diameter of the nut", "mm"), Pitch];

    private static readonly ThreadLimits M10 = new(Mm(9.732), Mm(8.862), Mm(8.676), Mm(9.206));
    private const string Engagement = "FED-STD-H28/2B (1991), by way of Machinery's Handbook, 24th edition";
    private const string Wentzell = "Wentzell, Machine Design (2004), ";

    /// <summary>The list.</summary>
    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("fasteners.of-screw-thread", "Diameters and stress area of a thread", "As = (π/4)·((d2 + d3)/2)²; d2 = d − 0.6495·P; d3 = d − 1.2269·P (unified 1.2990)",
            [Diameter, Pitch], "mm²", "d above 0, P below d/2; else refused", "ISO 68-1, ISO 724, ISO 898-1; ASME B1.1",
            new("M16x2", 156.7, 0.1, "Jindal, Machine Design (2010), ex. 9-1, read in a transcription", () => ThreadTable.Find("M16").Value.StressAreaMm2)),
        new("fasteners.find-thread", "A listed thread by its name", "table", [new("size", "size as spoken", "1")], "1",
            "M3 to M36, 1/4 to 1 in; else refused", "ISO 261, ISO 262, ASME B1.1",
            new("M10x1.25", 61.2, 0.05, "ISO 724 fine-thread table, read in a reproduction", () => ThreadTable.Find("M10x1.25").Value.StressAreaMm2)),
        new("fasteners.of-property-class", "Strengths that the mark on a bolt head promises", "table", [new("mark", "mark on the head", "1"), Diameter], "MPa",
            "4.6 to 12.9 to 39 mm, grades 2, 5, 8 to 1½ in; an unknown mark is refused", "ISO 898-1; SAE J429",
            new("10.9 at 10 mm, yield", 940, 0, "ISO 898-1, by the ratios of the VDI 2230 preload table", () => PropertyClass.Of("10.9", Mm(10)).Value.YieldMpa)),
        new("fasteners.torque-by-nut-factor", "Torque for a preload by the nut factor", "T = K·d·F", [NutFactor, Diameter, Preload], "N·m",
            "K 0.05 to 0.5; ±25 % and more hides in K", "Shigley's Mechanical Engineering Design, 9th edition, section 8-8",
            new("M20, 120 kN, K 0.18", 432, 1e-9, "Jindal, Machine Design (2010), ex. 9-6, read in a transcription",
                () => Tightening.TorqueByNutFactor(Force.FromKilonewtons(120), Mm(20), 0.18).Value.NewtonMetres)),
        new("fasteners.preload-by-nut-factor", "Preload of a torque by the nut factor", "F = T/(K·d)", [Torque, NutFactor, Diameter], "N",
            "K 0.05 to 0.5; ±25 % and more hides in K", "Shigley's Mechanical Engineering Design, 9th edition, section 8-8",
            new("M20, 432 N·m, K 0.18", 120000, 1e-6, "Jindal, Machine Design (2010), ex. 9-6, read in a transcription, turned round",
                () => Tightening.PreloadByNutFactor(Nm(432), Mm(20), 0.18).Value.Newtons)),
        new("fasteners.torque-by-friction", "Torque for a preload by the full friction form", "T = F·[P/2π + μG·d2/(2 cos 30°) + μK·Db/2]", [Preload, .. FrictionForm], "N·m",
            "friction 0 to 0.6, below yield", "ISO 16047; VDI 2230-1",
            new("M10, Db 13, μ 0.12, 30 kN", 49.4, 0.2, "VDI 2230-1 with its rounded factors, invented inputs, formula from memory",
                () => Tightening.TorqueByFriction(Force.FromKilonewtons(30), ThreadTable.Find("M10").Value,
                    new(FrictionBand.Exactly(0.12), FrictionBand.Exactly(0.12), Mm(13))).Value.NewtonMetres)),
        new("fasteners.preload-by-friction", "Preload of a torque with the scatter of friction and wrench", "F = T/[P/2π + μG·d2/(2 cos 30°) + μK·Db/2]", [Torque, .. FrictionForm], "N",
            "friction 0 to 0.6, wrench tolerance 0 to 0.5, below yield", "ISO 16047; VDI 2230-1; JCGM 100",
            new("M12x1.25, Db 15.065, μ 0.14, 101.37 N·m", 46870, 150, "VDI 2230-1 (2003) preload table, class 8.8, recomputed with its rounded factors",
                () => Tightening.PreloadByFriction(Nm(101.37), 0, ThreadTable.Find("M12x1.25").Value,
                    new(FrictionBand.Exactly(0.14), FrictionBand.Exactly(0.14), Mm(15.065))).Value.Likely.Newtons)),
        new("fasteners.preload-at-utilisation", "Preload at a part of the bolt's yield, tension and twist together",
            "F = As·ν·Rp/√(1 + 3·[1.5·(d2/d0)·(P/(π·d2) + 1.155·μG)]²)", [new("ν", "utilisation", "1"), new("Rp", "yield stress", "MPa"), .. FrictionForm[..3]], "N",
            "ν above 0 to 1, friction 0 to 0.6", "VDI 2230-1 (2003)",
            new("M12, class 8.8, μ 0.14, ν 0.9", 41900, 130, "a bolt supplier's guide to VDI 2230 (2021), worked M12×40, read",
                () => Tightening.PreloadAtUtilisation(0.9, ThreadTable.Find("M12").Value, PropertyClass.Of("8.8", Mm(12)).Value, 0.14).Value.Newtons)),
        new("fasteners.utilisation", "Part of the yield that a preload uses under the wrench",
            "ν = F·√(1 + 3·[1.5·(d2/d0)·(P/(π·d2) + 1.155·μG)]²)/(As·Rp)", [Preload, new("Rp", "yield stress", "MPa"), .. FrictionForm[..3]], "1",
            "friction 0 to 0.6; above 1 the bolt yields", "VDI 2230-1 (2003)",
            new("M12, class 8.8, μ 0.14, 41.9 kN", 0.9, 0.003, "a bolt supplier's guide to VDI 2230 (2021), worked M12×40, read, turned round",
                () => Tightening.Utilisation(Force.FromKilonewtons(41.9), ThreadTable.Find("M12").Value, PropertyClass.Of("8.8", Mm(12)).Value, 0.14).Value)),
        new("fasteners.stiffness-n-per-mm", "Stiffness of a bolt made of sections", "k = E/Σ(Li/Ai)",
            [new("E", "Young's modulus", "MPa"), new("Li", "length of a section", "mm"), new("Ai", "cross-section", "mm²")], "N/mm",
            "below yield; head and engaged thread add stretch of their own", "Hooke's law, springs in series",
            new("40 mm of ⌀10 and 20 mm of M10 thread, E 205 GPa", 239995, 1, "invented inputs, reckoned apart with python",
                () => BoltStretch.StiffnessNPerMm([new(Mm(40), Math.PI * 25), new(Mm(20), 57.9896)]).Value)),
        new("fasteners.stretch", "Stretch of a bolt under a load", "δ = F/k", [new("F", "load", "N"), BoltStiffness], "mm", "below yield", "Hooke's law",
            new("24131.5 lbf on 5 in of 0.334 in², E 30·10⁶ psi", 0.0120417 * 25.4, 3e-5, Wentzell + "ex. 6.2, read in a transcription",
                () => BoltStretch.Stretch(Force.FromPoundsForce(24131.5), Force.FromPoundsForce(30e6 * 0.334 / 5).Newtons / 25.4).Value.Millimetres)),
        new("fasteners.load-from-lengths", "Load of a bolt from its length before and after", "F = k·(L₁ − L₀)",
            [new("L₀", "free length", "mm"), new("L₁", "tightened length", "mm"), BoltStiffness], "N", "below yield, both lengths at one temperature", "Hooke's law; JCGM 100",
            new("0.125003 mm at 239 995 N/mm", 30000, 1, "invented inputs, reckoned apart with python",
                () => BoltStretch.LoadFromLengths(Mm(80), Mm(80.125003), Length.Zero, 239995).Value.Load.Newtons)),
        new("fasteners.load-from-angle", "Load gained by turning through an angle after snug", "F = (θ/360°)·P/(1/kb + 1/kj)", [new("θ", "angle", "°"), Pitch, BoltStiffness, JointStiffness], "N",
            "0 to 720°, below yield", "springs in series; VDI 2230",
            new("43.35°, P 0.1 in, rigid joint, bolt of ex. 6.2", 24131.5 * 4.4482216152605, 30, Wentzell + "ex. 6.2, read in a transcription, turned round",
                () => BoltStretch.LoadFromAngle(Angle.FromDegrees(43.35), Length.FromInches(0.1), 30e6 * 0.334 / 5 * 4.4482216152605 / 25.4, double.PositiveInfinity).Value.Newtons)),
        new("fasteners.angle-for-load", "Angle that gives a load after snug", "θ = 360°·F·(1/kb + 1/kj)/P", [new("F", "load", "N"), Pitch, BoltStiffness, JointStiffness], "°",
            "below yield", "springs in series; VDI 2230",
            new("24131.5 lbf, P 0.1 in, rigid joint, bolt of ex. 6.2", 43.35, 0.01, Wentzell + "ex. 6.2, read in a transcription",
                () => BoltStretch.AngleForLoad(Force.FromPoundsForce(24131.5), Length.FromInches(0.1), 30e6 * 0.334 / 5 * 4.4482216152605 / 25.4, double.PositiveInfinity).Value.Degrees)),
        new("fasteners.bolt-share", "The bolt's part of a load put on the tightened joint", "C = kb/(kb + kj)", [BoltStiffness, JointStiffness], "1", "until the joint opens",
            "Shigley's Mechanical Engineering Design, 9th edition, section 8-7",
            new("6.50 and 13.8 Mlbf/in", 0.320, 0.0005, "Shigley, 9th edition, ex. 8-3, read", () => BoltStretch.BoltShare(6.5, 13.8).Value)),
        new("fasteners.warming-for-stretch", "Warming that stretches a free bolt as much as a load does", "ΔT = δ/(α·L)",
            [new("δ", "stretch", "mm"), new("α", "expansion", "1/K"), new("L", "length", "mm")], "K", "α above 0", "linear expansion; " + Wentzell + "ex. 6.3",
            new("0.01204 in on 5 in, α 6.5·10⁻⁶/°F", 370.46, 0.01, Wentzell + "ex. 6.3, in °F, read in a transcription",
                () => BoltStretch.WarmingForStretch(Length.FromInches(0.01204), Length.FromInches(5), 6.5e-6 * 1.8).Value.FahrenheitDegrees)),
        new("fasteners.shear-areas", "Shear areas of a mating thread", "As = (π·Le/P)·Kn·(P/2 + (Es − Kn)/√3); An = (π·Le/P)·Ds·(P/2 + (Ds − En)/√3)",
            [new("Le", "engagement", "mm"), .. ThreadForm], "mm²", "Kn below Es, En below Ds; else refused", Engagement,
            new("M10, Le 10, bolt side", 155.80, 0.01, "formula read, limits partly from memory, reckoned apart with python",
                () => Fasteners.Engagement.ShearAreas(Mm(10), Mm(1.5), M10).Value.BoltMm2)),
        new("fasteners.no-strip-length", "Engagement at which the bolt breaks before its thread strips", "Le = 2·At/{(π/P)·Kn·[P/2 + (Es − Kn)/√3]}·max(1, J)",
            [new("At", "stress area", "mm²"), .. ThreadForm], "mm", "Kn below Es, En below Ds; else refused", Engagement,
            new("1/2-13 UNC, equal strength", 0.3643 * 25.4, 0.003, "formula read, limits from memory, reckoned apart with python",
                () => Fasteners.Engagement.NoStripLength(0.1419 * 645.16, Length.FromInches(1) / 13,
                    new(Length.FromInches(0.4876), Length.FromInches(0.4435), Length.FromInches(0.434), Length.FromInches(0.4565)), 800, 8000).Value.Millimetres)),
        new("fasteners.stripping-load", "Load at which the weaker thread strips", "F = ½·Rm·A", [new("Le", "engagement", "mm"), new("Rm", "tensile strength", "MPa"), .. ThreadForm], "N",
            "shear strength taken as half the tensile strength", Engagement,
            new("M10, Le 10, bolt 800 MPa in steel of 800 MPa", 155.80 * 400, 5, "from the shear area above",
                () => Fasteners.Engagement.StrippingLoad(Mm(10), Mm(1.5), M10, 800, 800).Value.Load.Newtons)),
        new("fasteners.usual-least", "Usual least engagement by material", "Le = 1.0, 1.3 or 2.0 times d", [Diameter], "mm", "a habit, not a limit", "common practice, no source",
            new("M10 in light alloy", 20, 0, "common practice, no source", () => Fasteners.Engagement.UsualLeast(Mm(10), HoleMaterial.LightAlloy).Value.Millimetres)),
        new("fasteners.setting-with-extension", "Wrench setting with an extension", "S = T·L/(L + e·cos θ)",
            [Torque, new("L", "wrench length", "mm"), new("e", "extension", "mm"), new("θ", "angle of the extension", "°")], "N·m", "lever left at least L/2", "lever; US Army TM 9-254",
            new("50 lbf·ft, L 16, e 2", 44.44, 0.01, "a torque tool's manual, read",
                () => Wrench.SettingWithExtension(Nm(50), Mm(16), Mm(2), Angle.Zero).Value.NewtonMetres)),
        new("fasteners.torque-through-extension", "Torque at the fastener through an extension", "T = S·(L + e·cos θ)/L",
            [new("S", "setting", "N·m"), new("L", "wrench length", "mm"), new("e", "extension", "mm"), new("θ", "angle of the extension", "°")], "N·m", "lever left at least L/2",
            "lever; US Army TM 9-254", new("60 lbf·in, L 12, e 2", 70, 1e-9, "US Army TM 9-254, paragraph d, figure 4-5, read",
                () => Wrench.TorqueThroughExtension(Nm(60), Mm(12), Mm(2), Angle.Zero).Value.NewtonMetres)),
        new("fasteners.question", "Whether a wrench is at home at a setting", "S ≥ 0.2·top and S within the scale", [new("S", "setting", "N·m"), new("top", "highest mark", "N·m")], "N·m",
            "refused with the wrench to take instead", "ISO 6789-1; common practice for use",
            new("210 N·m wrench at 42 N·m", 42, 0, "the rule itself: a fifth of 210", () => Wrench.Question(new("large", Nm(40), Nm(210)), Nm(42)).Value.NewtonMetres)),
        new("fasteners.spiral-from-centre", "Tightening order from the middle outwards", "by distance from the middle, each round clockwise", [new("points", "places of the fasteners", "1")], "1",
            "one fastener or more, no two at one place", "common practice, no source",
            new("first of a 5 by 2 grid", 3, 0, "common practice, no source: the middle of the top row", () => TighteningOrder.SpiralFromCentre(PlanePoint.Grid(5, 2, 90, 100)).Value[0] + 1)),
        new("fasteners.loosen-from-the-ends-in", "Loosening order", "the spiral backwards", [new("points", "places of the fasteners", "1")], "1",
            "one fastener or more, no two at one place", "common practice, no source",
            new("last of a 5 by 2 grid", 3, 0, "common practice, no source: the middle of the top row", () => TighteningOrder.LoosenFromTheEndsIn(PlanePoint.Grid(5, 2, 90, 100)).Value[^1] + 1)),
        new("fasteners.cross", "Tightening order across a flange", "k, k + n/2, k + n/4, k + 3n/4", [new("points", "places of the fasteners", "1")], "1",
            "open middle; else refused", "legacy cross pattern of ASME PCC-1",
            new("third of 12", 4, 0, "order 1-7-4-10-2-8-5-11-3-9-6-12, read in a general page", () => TighteningOrder.Cross(PlanePoint.Circle(12, 1)).Value[2] + 1)),
        new("fasteners.in-circles", "Order of the last round of a flange", "clockwise from the top", [new("points", "places of the fasteners", "1")], "1",
            "open middle; else refused", "ASME PCC-1 legacy method, by way of flange guides",
            new("third of 12", 3, 0, "flange guides that cite ASME PCC-1, read", () => TighteningOrder.InCircles(PlanePoint.Circle(12, 1)).Value[2] + 1)),
        new("fasteners.flange", "Rounds of a flange", "30, 60, 100 % across, 100 % in circles", [new("parts", "parts of the final torque", "1")], "1",
            "parts rising to 1; else refused", "ASME PCC-1 legacy method, by way of flange guides",
            new("number of rounds", 4, 0, "flange guides that cite ASME PCC-1, read", () => TighteningPasses.Flange(PlanePoint.Circle(8, 1), TighteningPasses.UsualParts).Value.Count)),
        new("fasteners.head", "Rounds of a head", "30, 60, 100 % in the spiral", [new("parts", "parts of the final torque", "1")], "1", "parts rising to 1; else refused", "common practice, no source",
            new("number of rounds", 3, 0, "common practice, no source", () => TighteningPasses.Head(PlanePoint.Grid(5, 2, 90, 100), TighteningPasses.UsualParts).Value.Count)),
    ];

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Quantities.Torque Nm(double value) => Quantities.Torque.FromNewtonMetres(value);
}
