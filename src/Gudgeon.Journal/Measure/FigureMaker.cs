using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Shapes;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Journal;

/// <summary>A figure before it is judged.</summary>
/// <param name="Spot">The spot it is read at, or empty.</param>
public sealed record MadeFigure(string Spot, Gauged Figure, Working Working);

/// <summary>Makes the figures of a characteristic from its readings, each with its working.</summary>
public sealed class FigureMaker(Bench bench, GaugeDesk gauges)
{
    private const string Practice = "common practice, no source";
    private const string Guide = "JCGM 100 (GUM), clause 5";

    /// <summary>The figures that can be made from what is there; none is made up.</summary>
    public IEnumerable<MadeFigure> Of(Characteristic characteristic, MeasuringPlace place)
    {
        if (characteristic.Figure == FigureKind.Difference)
            return Difference(characteristic, place);
        var source = characteristic.IsRead ? characteristic : Characteristics.Find(characteristic.From[0].Characteristic)!;
        var mate = characteristic.IsRead ? place : bench.Places.Mate(place, characteristic, source);
        if (mate is null)
            return [];
        var read = ReadOf(source, mate);
        if (characteristic.Figure == FigureKind.Formula)
            return ByFormula(characteristic, read);
        if (read.Count == 0)
            return [];
        var grid = read.Where(r => !r.Spot.IsUnworn).ToArray();
        var unworn = read.FirstOrDefault(r => r.Spot.IsUnworn).Figure;
        return characteristic.Figure switch
        {
            FigureKind.Each => grid.Select(r => new MadeFigure(r.Spot.Id, r.Figure, Reading(characteristic, r.Figure))),
            FigureKind.Look => grid.Select(r => new MadeFigure(r.Spot.Id, r.Figure, Reading(characteristic, r.Figure))),
            FigureKind.Max => [Picked(characteristic, grid.MaxBy(r => r.Figure.Value).Figure, "largest of the readings")],
            FigureKind.Min => [Picked(characteristic, grid.MinBy(r => r.Figure.Value).Figure, "smallest of the readings")],
            FigureKind.Mean => [Mean(characteristic, [.. grid.Select(r => r.Figure)])],
            FigureKind.Taper => WidestOf(characteristic, grid.GroupBy(r => r.Spot.Column), "down one axis: largest − smallest"),
            FigureKind.OutOfRound => WidestOf(characteristic, grid.GroupBy(r => r.Spot.Row), "round one height: largest − smallest of the diameters"),
            FigureKind.Wear => unworn is null || grid.Length == 0 ? [] : [Lessened(characteristic, grid.MaxBy(r => r.Figure.Value).Figure, unworn, "largest − unworn")],
            FigureKind.Loss => unworn is null || grid.Length == 0 ? [] : [Lessened(characteristic, unworn, grid.MinBy(r => r.Figure.Value).Figure, "unworn − smallest")],
            FigureKind.Flatness => grid.Length < characteristic.Spots.Count ? [] : [Face(characteristic, grid)],
            FigureKind.Shortfall => Shortfall(characteristic, source, grid),
            _ => [],
        };
    }

    /// <summary>The mean of all that is read at a place, or null.</summary>
    public Gauged? MeanOf(Characteristic characteristic, MeasuringPlace place)
    {
        var read = ReadOf(characteristic, place).Where(r => !r.Spot.IsUnworn).Select(r => r.Figure).ToArray();
        return read.Length == 0 ? null : Mean(characteristic, read).Figure;
    }

    /// <summary>One figure less another, with its working. What is common to both cancels.</summary>
    public static (Gauged Figure, Working Working) Less(Gauged a, Gauged b, string what, string formula)
    {
        var causes = Combined.Causes([(1, a), (-1, b)]);
        var value = (double)((decimal)a.Value - (decimal)b.Value);
        var figure = new Gauged("d", what, value, a.Unit, causes, "") { Spots = 2 };
        return (figure, WorkingOf(what, formula, [a, b], figure, Guide));
    }

    private IReadOnlyList<(MeasuringSpot Spot, Gauged Figure)> ReadOf(Characteristic characteristic, MeasuringPlace place) =>
        [.. characteristic.Spots.Select(s => (s, gauges.At(new Slot(place.Part, characteristic.Id, place.Number, s.Id), s))).Where(x => x.Item2 is not null).Select(x => (x.s, x.Item2!))];

    private static Working Reading(Characteristic characteristic, Gauged figure) =>
        WorkingOf($"{Sentence(characteristic.Name)}, {figure.Name}", "mean of the readings, brought to 20 °C where temperatures were noted", [figure], figure, characteristic.Unit == "mm" ? $"{Guide}; ISO 1 for 20 °C" : Guide);

    private static MadeFigure Picked(Characteristic characteristic, Gauged figure, string formula) =>
        new("", figure with { Name = $"{characteristic.Name}, {figure.Name}" }, WorkingOf(Sentence(characteristic.Name), formula, [figure], figure, Practice));

    private static MadeFigure Mean(Characteristic characteristic, IReadOnlyList<Gauged> figures)
    {
        var causes = Combined.Causes([.. figures.Select(f => (1.0 / figures.Count, f))]);
        var mean = new Gauged("mean", $"{characteristic.Name}, mean", Samples.Mean(figures.Select(f => f.Value).ToArray()), figures[0].Unit, causes, "") { Spots = figures.Count };
        return new MadeFigure("", mean, WorkingOf(Sentence(characteristic.Name), "mean of the spots", figures, mean, Guide));
    }

    private static MadeFigure Lessened(Characteristic characteristic, Gauged a, Gauged b, string formula)
    {
        var (figure, working) = Less(a, b, Sentence(characteristic.Name), formula);
        return new MadeFigure("", figure with { Name = characteristic.Name }, working);
    }

    /// <summary>Heights on a grid: the least distance of two planes that hold them all. How far apart the spots lie does not matter to it.</summary>
    private static MadeFigure Face(Characteristic characteristic, (MeasuringSpot Spot, Gauged Figure)[] grid)
    {
        var rows = grid.Select(g => g.Spot.Row).Distinct().ToList();
        var columns = grid.Select(g => g.Spot.Column).Distinct().ToList();
        var zone = Flatness.MinimumZone([.. grid.Select(g => new Point3(columns.IndexOf(g.Spot.Column), rows.IndexOf(g.Spot.Row), g.Figure.Value))]);
        var (high, low) = (grid[zone.Highest].Figure, grid[zone.Lowest == zone.Highest ? (zone.Highest + 1) % grid.Length : zone.Lowest].Figure);
        var (far, _) = Less(high, low, characteristic.Name, "");
        var figure = far with { Name = characteristic.Name, Value = zone.Zone };
        return new MadeFigure("", figure, WorkingOf(Sentence(characteristic.Name), "least distance of two parallel planes that hold every spot", [.. grid.Select(g => g.Figure)], figure, "ISO 1101 flatness; minimum zone, exact"));
    }

    private static IEnumerable<MadeFigure> WidestOf(Characteristic characteristic, IEnumerable<IGrouping<string, (MeasuringSpot Spot, Gauged Figure)>> rows, string formula)
    {
        var widest = rows.Where(g => g.Count() > 1)
            // By order and not by largest and smallest: of readings that are alike, two are taken, for one less itself would have no uncertainty.
            .Select(g => g.OrderBy(r => r.Figure.Value).ToArray())
            .Select(g => (High: g[^1].Figure, Low: g[0].Figure))
            .OrderByDescending(x => x.High.Value - x.Low.Value)
            .ToArray();
        return widest.Length == 0 ? [] : [Lessened(characteristic, widest[0].High, widest[0].Low, $"{formula}; the widest of {widest.Length}")];
    }

    private IEnumerable<MadeFigure> Shortfall(Characteristic characteristic, Characteristic source, (MeasuringSpot Spot, Gauged Figure)[] grid)
    {
        var best = bench.Places.All(source).Select(p => MeanOf(source, p)).Where(m => m is not null).MaxBy(m => m!.Value);
        if (grid.Length == 0 || best is null || best.Value <= 0)
            return [];
        var own = grid[0].Figure;
        var share = 100 / best.Value;
        var causes = Combined.Causes([(share, best), (-share, own)]);
        var figure = new Gauged("d", characteristic.Name, (best.Value - own.Value) * share, "%", causes, "");
        return [new MadeFigure("", figure, WorkingOf(Sentence(characteristic.Name), "(best − this)·100/best", [best with { Symbol = "best", Name = "best of the set" }, own with { Symbol = "this" }], figure, Practice))];
    }

    private IEnumerable<MadeFigure> Difference(Characteristic characteristic, MeasuringPlace place)
    {
        var (outer, inner) = (SourceOf(characteristic, place, 0), SourceOf(characteristic, place, 1));
        if (outer.Count == 0 || inner.Count == 0)
            yield break;
        var names = characteristic.From.Select(f => Characteristics.Find(f.Characteristic)!.Name).ToArray();
        Gauged Named(Gauged figure, int side) => figure with { Symbol = side == 0 ? "a" : "b", Name = $"{names[side]}, {figure.Name}" };
        var tightest = Less(Named(outer.MinBy(f => f.Value)!, 0), Named(inner.MaxBy(f => f.Value)!, 1), $"{Sentence(characteristic.Name)}, smallest", "a − b, smallest a and largest b");
        yield return new MadeFigure("", tightest.Figure with { Name = "smallest" }, tightest.Working);
        if (outer.Count == 1 && inner.Count == 1)
            yield break;
        var loosest = Less(Named(outer.MaxBy(f => f.Value)!, 0), Named(inner.MinBy(f => f.Value)!, 1), $"{Sentence(characteristic.Name)}, largest", "a − b, largest a and smallest b");
        yield return new MadeFigure("", loosest.Figure with { Name = "largest" }, loosest.Working);
    }

    private IReadOnlyList<Gauged> SourceOf(Characteristic characteristic, MeasuringPlace place, int side)
    {
        var from = characteristic.From[side];
        var source = Characteristics.Find(from.Characteristic)!;
        return bench.Places.Mate(place, characteristic, source) is { } mate
            ? [.. ReadOf(source, mate).Where(r => !r.Spot.IsUnworn && (from.Column.Length == 0 || r.Spot.Column == from.Column)).Select(r => r.Figure)]
            : [];
    }

    private static IEnumerable<MadeFigure> ByFormula(Characteristic characteristic, IReadOnlyList<(MeasuringSpot Spot, Gauged Figure)> read)
    {
        if (read.Count < characteristic.Spots.Count)
            return [];
        var model = ModelOf(characteristic);
        var inputs = read.Select(r => new ModelInput(r.Figure.Value, new BudgetLine(r.Figure.Name, r.Figure.StandardUncertainty ?? 0, ""))).ToArray();
        var value = model(inputs.Select(i => i.Value).ToArray());
        if (!double.IsFinite(value))
            return [];
        var slopes = FirstOrder.Of(model, Units.Sign(characteristic.Unit), inputs).Lines;
        // A plain number such as a count of links is exact and has no instrument.
        var parts = read.Select((r, i) => (slopes[i].Sensitivity, r.Spot.Unit == "1" ? r.Figure with { Causes = [] } : r.Figure)).ToArray();
        var causes = Combined.Causes(parts);
        var figure = new Gauged("y", characteristic.Name, value, characteristic.Unit, causes is { Count: 0 } ? null : causes, "") { Spots = read.Count };
        return [new MadeFigure("", figure, WorkingOf(Sentence(characteristic.Name), characteristic.Formula, [.. read.Select(r => r.Figure)], figure, Practice))];
    }

    /// <summary>Draws every input of a formula at random and runs it: whether first order serves shows beside it. Null for what is no formula or lacks an input.</summary>
    public MonteCarloResult? Trial(Characteristic characteristic, MeasuringPlace place, int trials, ulong seed)
    {
        if (characteristic.Figure != FigureKind.Formula)
            return null;
        var read = ReadOf(characteristic, place);
        if (read.Count < characteristic.Spots.Count || read.All(r => r.Figure.Causes is null))
            return null;
        // Each cause is drawn once and acts on every input that has it, so that what is shared cancels here as it does in the budget.
        var keys = read.SelectMany(r => r.Figure.Causes ?? []).Select(c => c.Key).Distinct().ToList();
        var pulls = read.Select(r => (r.Figure.Causes ?? []).Select(c => (Of: keys.IndexOf(c.Key), By: c.Line.StandardUncertainty)).ToArray()).ToArray();
        var model = ModelOf(characteristic);
        var inputs = new double[read.Count];
        double Drawn(ReadOnlySpan<double> causes)
        {
            for (var i = 0; i < inputs.Length; i++)
            {
                inputs[i] = read[i].Figure.Value;
                foreach (var (of, by) in pulls[i])
                    inputs[i] += causes[of] * by;
            }

            return model(inputs);
        }

        return MonteCarlo.Run([.. keys.Select(_ => Distribution.Normal(0, 1))], Drawn, trials, seed);
    }

    private static Model ModelOf(Characteristic characteristic)
    {
        var names = characteristic.Spots.Select(s => s.Id).ToArray();
        var at = new Dictionary<string, double>();
        return inputs =>
        {
            for (var i = 0; i < names.Length; i++)
                at[names[i]] = inputs[i];
            return characteristic.Evaluate(at);
        };
    }

    private static Working WorkingOf(string what, string formula, IReadOnlyList<Gauged> inputs, Gauged result, string source) => new(
        what,
        formula,
        [.. inputs.Select(i => new WorkingFigure(i.Symbol, i.Name, i.Value, Shown(i.Unit), i.StandardUncertainty, i.AsTyped.Length > 0 ? i.AsTyped : null))],
        new WorkingFigure(result.Symbol, what, result.Value, Shown(result.Unit), result.StandardUncertainty),
        source);

    private static string Shown(string unit) => unit == "1" ? "1" : Units.Sign(unit);

    private static string Sentence(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
