using Gudgeon.Engine;

namespace Gudgeon.Pictures;

/// <summary>
/// The engine along its crankshaft, free end at the left. Two banks are laid open: bank 1 upward, bank 2 downward.
/// </summary>
public static class SideView
{
    private const double Width = 420;

    public static Drawing Of(EngineModel engine, DrawnSizes size, Func<string, bool> isThere)
    {
        var sketch = new Sketch(engine, isThere);
        var front = 0.9 * size.Bore;
        var back = sketch.Of("gearbox") is [] ? 1.0 * size.Bore : 2.9 * size.Bore;
        var above = size.Deck + size.HeadHeight + size.CoverHeight + (0.35 * size.Bore);
        var below = size.Banks == 2 ? above : size.CaseRadius + (0.9 * size.Bore);
        var scale = Width / (front + size.Length + back);
        var height = ((above + below) * scale) + 26;
        var origin = new Frame(front * scale, above * scale, scale);

        Bottom(sketch, size, origin);
        for (var bank = 1; bank <= size.Banks; bank++)
            Bank(sketch, size, bank == 1 ? Upright.Up(origin) : Upright.Down(origin), bank);
        CrankLine(sketch, size, origin);
        FreeEnd(sketch, size, origin);
        DriveEnd(sketch, size, origin);
        sketch.Say(4, height - 6, "free end", small: true);
        sketch.Say(Width - 58, height - 6, "drive end", small: true);
        return sketch.Done(size.Banks == 2 ? "Side view, banks laid open" : "Side view", Width, height);
    }

    private static void Bottom(Sketch sketch, DrawnSizes size, Frame at)
    {
        if (size.Banks == 2)
            return;

        var depth = 0.75 * size.Bore;
        sketch.Draw(at.Polygon((0, -size.CaseRadius), (size.Length, -size.CaseRadius), (size.Length, -size.CaseRadius - (0.4 * depth)), (0.62 * size.Length, -size.CaseRadius - depth), (0.1 * size.Length, -size.CaseRadius - depth), (0, -size.CaseRadius - (0.4 * depth))), "sump", "bottom-cover");
        sketch.Draw(at.Box(0.3 * size.Length, -size.CaseRadius - (0.42 * depth), 0.25 * size.Length, 0.2 * depth), "pickup");
        sketch.Draw(at.Disc(0.25 * size.Length, -size.CaseRadius - (0.8 * depth), 0.08 * size.Bore), "drain-plug");
    }

    private static void Bank(Sketch sketch, DrawnSizes size, Upright up, int bank)
    {
        var floor = size.Banks == 1 ? -size.CaseRadius : 0;
        up.Box(sketch, 0, floor, size.Length, size.Deck - floor, OfBank(sketch, size, bank, "block", "crankcase", "case-half"));
        var pistons = sketch.Of("piston").Where(p => size.Banks == 1 || p.Bank == bank).OrderBy(p => p.Cylinder).ToArray();
        if (!size.FrontIsFreeEnd)
            Array.Reverse(pistons);
        for (var i = 0; i < pistons.Length; i++)
            Cylinder(sketch, size, up, pistons[i], i);

        var heads = OfBank(sketch, size, bank, "head");
        var each = size.Length / Math.Max(1, heads.Count);
        for (var i = 0; i < heads.Count; i++)
        {
            up.Box(sketch, (i * each) + 2, size.Deck, each - 4, size.HeadHeight, [heads[i]]);
        }

        foreach (var (gasket, i) in OfBank(sketch, size, bank, "head-gasket").Select((g, i) => (g, i)))
            up.Box(sketch, (i * each) + 2, size.Deck - (0.05 * size.Bore), each - 4, 0.1 * size.Bore, [gasket]);

        up.Box(sketch, 0.03 * size.Length, size.Deck + size.HeadHeight, 0.94 * size.Length, size.CoverHeight, OfBank(sketch, size, bank, "cam-cover"));
        foreach (var (cam, i) in OfBank(sketch, size, bank, "cam").Take(2).Select((c, i) => (c, i)))
            up.Box(sketch, 0.05 * size.Length, size.Deck + size.HeadHeight + ((0.1 + (0.2 * i)) * size.Bore), 0.9 * size.Length, 0.1 * size.Bore, [cam]);
        foreach (var plug in sketch.Of("plug", "glow-plug").Where(p => p.Cylinder is { } c && pistons.Any(x => x.Cylinder == c) && p.Index is [_] or [_, 1]))
        {
            var i = Array.FindIndex(pistons, x => x.Cylinder == plug.Cylinder);
            up.Box(sketch, Middle(size, i) - (0.05 * size.Bore), size.Deck + size.HeadHeight + size.CoverHeight, 0.1 * size.Bore, 0.25 * size.Bore, [plug]);
        }
    }

    private static void Cylinder(Sketch sketch, DrawnSizes size, Upright up, Part piston, int i)
    {
        var middle = Middle(size, i);
        var barrel = sketch.Of("barrel", "liner").FirstOrDefault(b => b.Cylinder == piston.Cylinder);
        if (barrel is not null)
            up.Box(sketch, middle - (0.58 * size.Bore), size.Deck - size.Stroke - (0.8 * size.Bore), 1.16 * size.Bore, size.Stroke + (0.8 * size.Bore), [barrel]);

        // Neighbours stand at opposite ends of their strokes: no true crank angle, but it reads as an engine.
        var crown = size.Deck - (0.03 * size.Bore) - (i % 2 == 0 ? 0 : size.Stroke * 0.8);
        var rod = sketch.Of("rod").FirstOrDefault(r => r.Cylinder == piston.Cylinder);
        if (rod is not null)
            up.Box(sketch, middle - (0.12 * size.Bore), 0.25 * size.Bore, 0.24 * size.Bore, crown - (0.6 * size.Bore), [rod]);
        up.Box(sketch, middle - (0.46 * size.Bore), crown - (0.75 * size.Bore), 0.92 * size.Bore, 0.75 * size.Bore, [piston]);
        up.Centre(sketch, middle, -0.6 * size.Bore, size.Deck + (0.25 * size.Bore));
        up.Say(sketch, middle, size.Deck + (0.3 * size.HeadHeight), $"{piston.Cylinder}");
    }

    private static void CrankLine(Sketch sketch, DrawnSizes size, Frame at)
    {
        sketch.Draw(at.Box(-0.25 * size.Bore, -0.18 * size.Bore, size.Length + (0.45 * size.Bore), 0.36 * size.Bore), "crank", "case-half");
        var caps = sketch.Of("main-cap", "carrier");
        for (var i = 0; i < caps.Count; i++)
        {
            var middle = caps.Count == 1 ? size.Length / 2 : (0.12 * size.Bore) + (i * (size.Length - (0.24 * size.Bore)) / (caps.Count - 1));
            sketch.Draw(at.Box(middle - (0.14 * size.Bore), -0.5 * size.Bore, 0.28 * size.Bore, 0.32 * size.Bore), caps[i]);
        }

        sketch.Draw(at.Box(0, -size.CaseRadius, size.Length, 0.2 * size.Bore), "bedplate");
        sketch.Centre(at.Line(-0.85 * size.Bore, 0, size.Length + (0.9 * size.Bore), 0));
    }

    private static void FreeEnd(Sketch sketch, DrawnSizes size, Frame at)
    {
        sketch.Draw(at.Box(-0.28 * size.Bore, -size.CaseRadius, 0.28 * size.Bore, size.CaseRadius + size.Deck + (size.Banks == 1 ? size.HeadHeight : 0)), "timing-cover", "belt-cover");
        sketch.Draw(at.Box(-0.5 * size.Bore, 0.95 * size.Stroke, 0.3 * size.Bore, 0.6 * size.Bore), "water-pump");
        sketch.Draw(at.Box(-0.75 * size.Bore, -size.Damper, 0.42 * size.Bore, 2 * size.Damper), "damper");
        sketch.Draw(at.Box(0.02 * size.Bore, 0.9 * size.Stroke, 0.75 * size.Bore, 0.7 * size.Bore), "alternator");
        sketch.Draw(at.Box(0.15 * size.Length, -0.9 * size.Bore, 0.5 * size.Bore, 0.75 * size.Bore), "oil-filter");
        sketch.Draw(at.Box(0.02 * size.Bore, -0.62 * size.Bore, 0.45 * size.Bore, 0.4 * size.Bore), "oil-pump");
        sketch.Draw(at.Disc(0.02 * size.Bore, size.Deck + (0.45 * size.HeadHeight), 0.24 * size.Bore), "thermostat");
    }

    private static void DriveEnd(Sketch sketch, DrawnSizes size, Frame at)
    {
        var wheel = size.Length + (0.2 * size.Bore);
        sketch.Draw(at.Polygon((wheel + (0.5 * size.Bore), -1.45 * size.Bore), (wheel + (1.2 * size.Bore), -0.8 * size.Bore), (wheel + (2.6 * size.Bore), -0.6 * size.Bore), (wheel + (2.6 * size.Bore), 0.6 * size.Bore), (wheel + (1.2 * size.Bore), 0.8 * size.Bore), (wheel + (0.5 * size.Bore), 1.45 * size.Bore)), "gearbox");
        sketch.Draw(at.Box(wheel, -size.Flywheel, 0.26 * size.Bore, 2 * size.Flywheel), "flywheel");
        sketch.Draw(at.Box(wheel + (0.26 * size.Bore), -1.05 * size.Bore, 0.24 * size.Bore, 2.1 * size.Bore), "clutch-cover");
        sketch.Draw(at.Box(size.Length - (0.95 * size.Bore), -1.35 * size.Bore, 1.1 * size.Bore, 0.5 * size.Bore), "starter");
        sketch.Draw(at.Disc(size.Length - (0.3 * size.Bore), size.Deck + (0.5 * size.HeadHeight), 0.25 * size.Bore), "distributor", "vac-pump");
    }

    private static double Middle(DrawnSizes size, int i) => (0.125 * size.Bore) + ((i + 0.5) * size.Pitch);

    /// <summary>Parts of one bank; a kind without banks belongs to bank 1, or by halves where there are two.</summary>
    private static IReadOnlyList<Part> OfBank(Sketch sketch, DrawnSizes size, int bank, params ReadOnlySpan<string> kinds)
    {
        var all = sketch.Of(kinds);
        if (size.Banks == 1)
            return all;

        var tied = all.Where(p => p.Bank == bank).ToArray();
        return tied.Length > 0 ? tied : all.Count == 1 ? all : [.. all.Where(p => p.Bank is null).Where((_, i) => i % size.Banks == bank - 1)];
    }

    /// <summary>The same shapes above the crank line or mirrored below it.</summary>
    private readonly record struct Upright(Frame At, int Sign)
    {
        public static Upright Up(Frame at) => new(at, 1);

        public static Upright Down(Frame at) => new(at, -1);

        public void Box(Sketch sketch, double u, double v, double width, double height, IReadOnlyList<Part> parts)
        {
            if (parts.Count > 0)
                sketch.Draw(At.Box(u, Sign > 0 ? v : -v - height, width, height), parts[0]);
        }

        public void Centre(Sketch sketch, double u, double from, double to) => sketch.Centre(At.Line(u, Sign * from, u, Sign * to));

        public void Say(Sketch sketch, double u, double v, string text)
        {
            var (x, y) = At.At(u, Sign * v);
            sketch.Say(x - (4 * text.Length), y + 4, text);
        }
    }
}
