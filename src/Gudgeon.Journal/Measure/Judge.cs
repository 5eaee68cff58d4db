using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Metrology;

namespace Gudgeon.Journal;

/// <summary>Holds a figure against the limits that the owner typed, or against practice where there is none.</summary>
public sealed class Judge(Bench bench, GaugeDesk gauges)
{
    /// <summary>Limits of a part for one figure: lower and upper, or the spread of a set.</summary>
    public (Limits? Service, Limits? New) LimitsOf(string characteristic, string part, bool spread)
    {
        Limits? Of(LimitState state) => bench.LimitOf(characteristic, part, state)?.Limit is { } limit
            ? spread ? limit.Spread is { } most ? Limits.AtMost(most) : null
                : limit.Low is not null || limit.High is not null ? Limits.Of(limit.Low, limit.High) : null
            : null;
        return (Of(LimitState.Service), Of(LimitState.New));
    }

    /// <summary>Judges one figure.</summary>
    public JudgedFigure Of(Characteristic characteristic, MeasuringPlace place, string spot, Gauged figure, Working working, bool spread = false)
    {
        var (service, asNew) = LimitsOf(characteristic.Id, place.Part, spread);
        var budget = figure.Causes is { } causes ? Combined.Budget(figure.Value, figure.Unit, causes) : null;
        if (service is null && asNew is null)
            return new JudgedFigure(spot, figure.Name, figure.Value, figure.Unit, working, budget, Call.None, null, null, spread ? [] : Practice(characteristic, place, figure.Value), "Type the limit of your book to get a verdict");
        if (budget is null)
            return new JudgedFigure(spot, figure.Name, figure.Value, figure.Unit, working, null, Call.None, null, null, [], "Say which instrument read it: without its uncertainty there is no verdict");
        var u = budget.StandardUncertainty;
        var (byService, byNew) = (service is null ? null : Verdict.Judge(figure.Value, u, service, bench.Rule), asNew is null ? null : Verdict.Judge(figure.Value, u, asNew, bench.Rule));
        var call = (byService, byNew) switch
        {
            ({ } s, { } n) => Word(s.Word, n.Word),
            _ => Word((byService ?? byNew)!.Word),
        };
        return new JudgedFigure(spot, figure.Name, figure.Value, figure.Unit, working, budget, call, byService, byNew, [], Next(characteristic, figure, (byService ?? byNew)!));
    }

    /// <summary>A look passes or fails; there is nothing to measure it by.</summary>
    public static JudgedFigure Look(Gauged figure, Working working, IReadOnlyList<RepairAction> actions) => new(
        figure.Symbol, figure.Name, figure.Value, figure.Unit, working, null, figure.Value == 1 ? Call.Within : Call.Outside, null, null, [], figure.Value == 1 ? "" : Usual(actions));

    private static Call Word(VerdictWord service, VerdictWord asNew) => service switch
    {
        VerdictWord.Outside => Call.Outside,
        VerdictWord.TooCloseToCall => Call.TooCloseToCall,
        _ => asNew == VerdictWord.Within ? Call.AsNew : Call.Serviceable,
    };

    private static Call Word(VerdictWord word) => word switch
    {
        VerdictWord.Within => Call.Within,
        VerdictWord.Outside => Call.Outside,
        _ => Call.TooCloseToCall,
    };

    private IReadOnlyList<ThumbSays> Practice(Characteristic characteristic, MeasuringPlace place, double value)
    {
        var bore = bench.Answers.Count > 0 && double.TryParse(bench.Answers.GetValueOrDefault("D"), CultureInfo.InvariantCulture, out var d) ? d : (double?)null;
        var says = new List<ThumbSays>();
        foreach (var thumb in Thumbs.For(characteristic.Id))
        {
            if (thumb.At(bore, Shaft(characteristic, place)) is not var (low, high, rejectLow, rejectHigh))
                continue;
            var usual = low is null && high is null ? null : Limits.Of(low, high);
            var reject = rejectLow is null && rejectHigh is null ? null : Limits.Of(rejectLow, rejectHigh);
            var word = usual is null
                ? reject is not null && reject.Margin(value) < 0 ? ThumbWord.Unlikely : ThumbWord.LookItUp
                : new RuleOfThumb(usual, reject).Of(value);
            says.Add(new ThumbSays(thumb, $"usual {Band(low, high, characteristic.Unit)}; often rejected {Band(rejectLow, rejectHigh, characteristic.Unit, beyond: true)}", word));
        }

        return says;
    }

    private static string Band(double? low, double? high, string unit, bool beyond = false) => (low, high, beyond) switch
    {
        (null, null, _) => "not said",
        ({ } l, { } h, true) => $"below {Units.Show(l, unit)} or above {Units.Show(h, unit)}",
        ({ } l, null, true) => $"below {Units.Show(l, unit)}",
        (null, { } h, true) => $"above {Units.Show(h, unit)}",
        _ => Units.Band(low, high, unit),
    };

    /// <summary>The shaft that a clearance is reckoned from, where it has been read.</summary>
    private double? Shaft(Characteristic characteristic, MeasuringPlace place)
    {
        if (characteristic.From.Count != 2 || Characteristics.Find(characteristic.From[1].Characteristic) is not { } shaft || bench.Places.Mate(place, characteristic, shaft) is not { } mate)
            return null;
        var read = shaft.Spots.Where(s => !s.IsUnworn).Select(s => gauges.At(new Slot(mate.Part, shaft.Id, mate.Number, s.Id), s)).Where(g => g is not null).ToArray();
        return read.Length == 0 ? null : read.Average(g => g!.Value);
    }

    /// <summary>What would settle a figure that is too close to call; what is usually done about one that is out.</summary>
    private string Next(Characteristic characteristic, Gauged figure, Verdict verdict) => verdict.Word switch
    {
        VerdictWord.Within => "",
        VerdictWord.Outside => Usual(characteristic.Actions),
        _ => Settling(figure, verdict).TrimEnd('.'),
    };

    private string Settling(Gauged figure, Verdict verdict)
    {
        var owned = bench.Instruments.Values.Where(i => i.Unit == figure.Unit && !i.Gone)
            .Select(i => new Instrument(i.Name, i.Resolution, i.StandardUncertainty)).ToArray();
        double Square(Func<Cause, bool> of) => figure.Causes!.Where(of).Sum(c => c.Line.StandardUncertainty * c.Line.StandardUncertainty);
        var scatter = Square(c => c.IsScatter);
        var instrument = Square(c => c.IsInstrument);
        var other = Math.Sqrt(Square(c => !c.IsScatter && !c.IsInstrument));
        // Readings that were averaged at one spot; a difference of two spots counts as one.
        var count = Math.Max(1, figure.Causes!.Count(c => c.IsScatter) / Math.Max(1, figure.Spots));
        var more = NextStep.After(verdict, new UncertaintyParts(Math.Sqrt(scatter * count), count, Math.Sqrt(instrument), other), owned, Units.Sign(figure.Unit), bench.Rule);
        if (more.Kind == NextStepKind.MoreReadings || figure.ScatterIsKnown)
            return more.Advice;
        // The share of the scatter is only taken: another instrument brings its own.
        return NextStep.After(verdict, new UncertaintyParts(0, 1, Math.Sqrt(scatter + instrument), other), owned, Units.Sign(figure.Unit), bench.Rule).Advice;
    }

    private static string Usual(IReadOnlyList<RepairAction> actions) => actions.Count == 0
        ? ""
        : $"Usual next, cheapest first: {string.Join("; ", actions.Select(a => a.Who == "shop" ? $"{a.Name} (a shop)" : a.Name))}";
}
