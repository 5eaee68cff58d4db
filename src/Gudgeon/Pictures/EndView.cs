using Gudgeon.Engine;

namespace Gudgeon.Pictures;

/// <summary>The engine seen on its free end, with each bank leaning as it does.</summary>
public static class EndView
{
    private const double Width = 420;

    public static Drawing Of(EngineModel engine, DrawnSizes size, Func<string, bool> isThere)
    {
        var sketch = new Sketch(engine, isThere);
        var reach = size.Deck + size.HeadHeight + size.CoverHeight + (0.15 * size.Bore);
        var steep = size.Leans.Max(l => Math.Abs(Math.Cos(l)));
        var wide = size.Leans.Max(l => Math.Abs(Math.Sin(l)));
        var half = Math.Max(2.1 * size.Bore, (reach * wide) + (1.0 * size.Bore * steep));
        var above = Math.Max((reach * steep) + (1.1 * size.Bore * wide), 1.8 * size.Bore);
        var below = size.Layout == "radial" ? above : Math.Max(size.CaseRadius + (0.9 * size.Bore), 1.3 * size.Bore * wide);
        var scale = Math.Min(Width / 2 / half, 320 / (above + below));
        var centre = new Frame(Width / 2, above * scale + 4, scale);

        if (size.Layout != "radial")
            sketch.Draw(centre.Polygon((-0.75 * size.Bore, -size.CaseRadius), (0.75 * size.Bore, -size.CaseRadius), (0.6 * size.Bore, -size.CaseRadius - (0.75 * size.Bore)), (-0.6 * size.Bore, -size.CaseRadius - (0.75 * size.Bore))), "sump", "bottom-cover");
        sketch.Draw(centre.Disc(0, 0, size.CaseRadius + (0.12 * size.Bore)), "block", "crankcase", "case-half");
        for (var bank = 1; bank <= size.Leans.Count; bank++)
            Bank(sketch, size, centre with { Turn = size.Leans[bank - 1] }, bank);
        Middle(sketch, size, centre);
        var height = ((above + below) * scale) + 22;
        sketch.Say(4, height - 6, "seen on the free end", small: true);
        return sketch.Done("End view", Width, height);
    }

    private static void Bank(Sketch sketch, DrawnSizes size, Frame at, int bank)
    {
        // Inlet to the inside of a vee, upward in a flat engine, to the right of a single row.
        var inner = size.Banks > 1 && bank == 2 ? -1 : 1;
        var d = size.Bore;
        Draw(at.Box(-0.72 * d, 0.3 * size.Stroke, 1.44 * d, size.Deck - (0.3 * size.Stroke)), Mine("block", "barrel", "crankcase", "case-half"));
        Draw(at.Polygon((-0.72 * d, size.Deck), (0.72 * d, size.Deck), (0.8 * d, size.Deck + size.HeadHeight), (-0.8 * d, size.Deck + size.HeadHeight)), Mine("head"));
        Draw(at.Polygon((-0.78 * d, size.Deck + size.HeadHeight), (0.78 * d, size.Deck + size.HeadHeight), (0.6 * d, size.Deck + size.HeadHeight + size.CoverHeight), (-0.6 * d, size.Deck + size.HeadHeight + size.CoverHeight)), Mine("cam-cover"));
        Draw(at.Polygon((inner * 0.76 * d, size.Deck + (0.15 * d)), (inner * 1.25 * d, size.Deck + (0.35 * d)), (inner * 1.25 * d, size.Deck + (0.85 * d)), (inner * 0.79 * d, size.Deck + (0.6 * d))), Mine("inlet-manifold"));
        Draw(at.Polygon((inner * -0.76 * d, size.Deck + (0.15 * d)), (inner * -0.77 * d, size.Deck + (0.5 * d)), (inner * -1.2 * d, size.Deck + (0.2 * d)), (inner * -1.2 * d, size.Deck - (0.9 * d)), (inner * -0.95 * d, size.Deck - (0.9 * d)), (inner * -0.95 * d, size.Deck)), Mine("exhaust-manifold"));
        if (bank == 1 || sketch.Of("turbo").Count > 1)
            Draw(at.Disc(inner * -1.35 * d, size.Deck - (1.0 * d), 0.4 * d), Mine("turbo"));
        var cams = Every("cam");
        for (var i = 0; i < cams.Count; i++)
        {
            var inHead = sketch.Of("pushrod") is [] && sketch.Of("cam-plate") is [];
            var across = cams.Count == 1 ? (inHead ? 0 : 0.52 * d) : (0.38 - (0.76 * i)) * d * inner;
            Draw(at.Disc(across, inHead ? size.Deck + size.HeadHeight + (0.06 * d) : size.CaseRadius + (0.1 * d), 0.2 * d), [cams[i]]);
        }

        sketch.Centre(at.Line(0, -0.6 * d, 0, size.Deck + size.HeadHeight + size.CoverHeight));

        void Draw(string path, IReadOnlyList<Part> parts)
        {
            if (parts.Count > 0)
                sketch.Draw(path, parts[0]);
        }

        IReadOnlyList<Part> Mine(params ReadOnlySpan<string> kinds)
        {
            foreach (var kind in kinds)
            {
                if (Every(kind) is { Count: > 0 } some)
                    return some;
            }

            return [];
        }

        IReadOnlyList<Part> Every(string kind)
        {
            var all = sketch.Of(kind);
            if (size.Banks == 1)
                return all;

            var tied = all.Where(p => size.Layout == "radial" ? p.Cylinder == bank : p.Bank == bank).ToArray();
            return tied.Length > 0 ? tied : all.Count == 1 ? all : [.. all.Where(p => p.Bank is null).Where((_, i) => i % size.Banks == bank - 1)];
        }
    }

    private static void Middle(Sketch sketch, DrawnSizes size, Frame at)
    {
        var d = size.Bore;
        sketch.Draw(at.Disc(0, 0, 0.75 * size.CaseRadius), "crank");
        sketch.Draw(at.Disc(0, 0, size.Damper), "damper");
        sketch.Draw(at.Disc(1.15 * d, 0.75 * d, 0.4 * d), "alternator");
        sketch.Draw(at.Disc(0, 1.25 * size.Stroke, 0.36 * d), "water-pump");
        sketch.Draw(at.Disc(-1.05 * d, -0.35 * d, 0.26 * d), "oil-filter");
        sketch.Draw(at.Disc(-1.15 * d, 0.6 * d, 0.36 * d), "steering-pump", "ac-compressor");
        sketch.Centre(at.Line(-1.5 * d, 0, 1.5 * d, 0));
    }
}
