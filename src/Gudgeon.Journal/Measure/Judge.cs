using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Metrology;

namespace Gudgeon.Journal;

/// <summary>Holds a figure against the limits that the owner typed, or against practice where there is none.</summary>
public sealed class Judge(Bench bench, GaugeDesk gauges)
{
    private const int MostReadings = 9;

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
        return new JudgedFigure(spot, figure.Name, figure.Value, figure.Unit, working, budget, call, byService, byNew, [], Next(characteristic, place, figure, (byService ?? byNew)!));
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
    private string Next(Characteristic characteristic, MeasuringPlace place, Gauged figure, Verdict verdict)
    {
        if (verdict.Word == VerdictWord.Within)
            return "";
        if (verdict.Word == VerdictWord.Outside)
            return Usual(characteristic.Actions);
        var margin = Math.Abs(verdict.Margin);
        var factor = verdict.Margin < 0 || !verdict.CanProveWithin ? bench.Rule.OutsideFactor : verdict.Guard / verdict.StandardUncertainty;
        if (margin <= 1e-9 * Math.Max(1, Math.Abs(figure.Value)))
            return "It lies on the limit: no instrument will settle it. Decide by hand, with the reason";
        var wanted = margin / factor;
        if (MoreReadings(figure, wanted) is { } more)
            return $"{(more == 1 ? "One more reading" : $"{more} more readings")} of each spot would settle it, if they agree with what is there";
        var better = bench.Instruments.Values
            .Where(i => i.Unit == figure.Unit && !i.Gone && i.StandardUncertainty * SpotsOf(figure) <= wanted)
            .MaxBy(i => i.Expanded);
        var asked = Units.Joined(Sums.Quantities.Figures.Fixed(2 * wanted / SpotsOf(figure), Sums.Quantities.Figures.PlacesFor(2 * wanted / SpotsOf(figure))), figure.Unit);
        return better is not null ? $"{better.Name} would settle it: read it again with that"
            : $"An instrument with U of at most {asked} would settle it; none of yours has that";
    }

    /// <summary>Readings to add at each spot until the scatter no longer matters; null when the common part alone is too much.</summary>
    private static int? MoreReadings(Gauged figure, double wanted)
    {
        var scatter = figure.Causes!.Where(c => c.Key.StartsWith("reading ", StringComparison.Ordinal)).Sum(c => c.Line.StandardUncertainty * c.Line.StandardUncertainty);
        var common = figure.Causes!.Where(c => !c.Key.StartsWith("reading ", StringComparison.Ordinal)).Sum(c => c.Line.StandardUncertainty * c.Line.StandardUncertainty);
        for (var more = 1; more <= MostReadings; more++)
            if (Math.Sqrt(common + scatter / (more + 1)) <= wanted)
                return more;
        return null;
    }

    /// <summary>By how much two spots of one instrument make the figure worse than one: at most √2 when nothing cancels.</summary>
    private static double SpotsOf(Gauged figure) => figure.Causes!.Count(c => c.Key.StartsWith("reading ", StringComparison.Ordinal)) > 1 ? Math.Sqrt(2) : 1;

    private static string Usual(IReadOnlyList<RepairAction> actions) => actions.Count == 0
        ? ""
        : $"Usual next, cheapest first: {string.Join("; ", actions.Select(a => a.Who == "shop" ? $"{a.Name} (a shop)" : a.Name))}";
}
