using Gudgeon.Engine;
using Gudgeon.Sums.Metrology;

namespace Gudgeon.Journal;

/// <summary>Works out every figure of a sheet from its readings and judges it. Pure: the same bench gives the same sheet.</summary>
public sealed class Assessor
{
    private readonly Bench bench;
    private readonly GaugeDesk gauges;
    private readonly Judge judge;
    private readonly FigureMaker maker;

    public Assessor(Bench bench)
    {
        this.bench = bench;
        gauges = new GaugeDesk(bench);
        judge = new Judge(bench, gauges);
        maker = new FigureMaker(bench, gauges);
    }

    /// <summary>One characteristic at one place.</summary>
    public Assessment Of(Characteristic characteristic, MeasuringPlace place)
    {
        var figures = maker.Of(characteristic, place)
            .Select(f => characteristic.Figure == FigureKind.Look ? Judge.Look(f.Figure, f.Working, characteristic.Actions) : judge.Of(characteristic, place, f.Spot, f.Figure, f.Working) with { Grade = GradeOf(characteristic, f.Figure) })
            .ToArray();
        var missing = characteristic.Spots.Count(s => !s.IsUnworn && bench.ReadingsAt(new Slot(place.Part, characteristic.Id, place.Number, s.Id)).All(r => !r.Counts));
        return new Assessment(characteristic, place, figures, missing);
    }

    private string GradeOf(Characteristic characteristic, Gauged figure) =>
        bench.Grades.TryGetValue(characteristic.Id, out var grades) ? GradeChooser.Of(grades.Set, figure.Value, figure.StandardUncertainty) : "";

    /// <summary>Everything on one part, place by place.</summary>
    public IReadOnlyList<Assessment> Sheet(string part) => bench.Engine.Parts.TryGetValue(part, out var there)
        ? [.. bench.Places.On(there).SelectMany(x => x.Places.Select(p => Of(x.Characteristic, p)))]
        : [];

    /// <summary>Every characteristic that has a figure, over the whole engine.</summary>
    public IEnumerable<Assessment> Started()
    {
        var read = bench.Readings.Values.Where(r => r.Counts).Select(r => r.Taken.Characteristic).ToHashSet();
        return Characteristics.All
            .Where(c => read.Contains(c.Id) || c.From.Any(f => read.Contains(f.Characteristic)))
            .SelectMany(c => bench.Places.All(c).Select(p => Of(c, p)))
            .Where(a => a.IsStarted);
    }

    /// <summary>A formula's figure by a hundred thousand draws, beside its first-order budget; null for other figures.</summary>
    public (MonteCarloResult Run, Validation Beside)? Trial(Characteristic characteristic, MeasuringPlace place) =>
        maker.Trial(characteristic, place, 100_000, 1) is { } run && Of(characteristic, place).Figures is [{ Budget: { } budget }, ..]
            ? (run, Validation.Of(budget, run))
            : null;

    /// <summary>How far a set differs, largest less smallest of its places; null while fewer than two are read.</summary>
    public JudgedFigure? Spread(Characteristic characteristic)
    {
        if (!characteristic.Limits.HasFlag(LimitKinds.Spread))
            return null;
        var means = bench.Places.All(characteristic).Select(p => (Place: p, Figure: maker.MeanOf(characteristic, p))).Where(x => x.Figure is not null).OrderBy(x => x.Figure!.Value).ToArray();
        if (means.Length < 2)
            return null;
        var (most, least) = (means[^1], means[0]);
        var high = most.Figure! with { Symbol = "largest", Name = most.Place.Name };
        var low = least.Figure! with { Symbol = "smallest", Name = least.Place.Name };
        var (figure, working) = FigureMaker.Less(high, low, $"Spread of {characteristic.Name} over {means.Length}", "largest − smallest");
        return judge.Of(characteristic, most.Place, "", figure, working, spread: true);
    }
}
