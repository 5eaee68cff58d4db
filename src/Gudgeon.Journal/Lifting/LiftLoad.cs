using Gudgeon.Engine;
using Gudgeon.Sums;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>What hangs, with where it comes from.</summary>
/// <param name="Doubts">What of it is a guess, with what is counted on until it is known.</param>
internal sealed record LiftLoad(HangingLoad Load, IReadOnlyList<LiftFigure> Figures, IReadOnlyList<Refusal> Doubts)
{
    private static readonly Refusal NothingKnown = new("mass of the engine", "nothing weighed, told or answered", "two hook scales, or a mass with its spread and centre", "Weigh it front and rear, or tell its mass");

    /// <summary>Mass and centre of the engine as it is now: the whole as weighed, told or guessed, less what came off since, with what went on since.</summary>
    /// <param name="notes">Takes where it all comes from, whether or not it comes to anything.</param>
    public static Outcome<LiftLoad> Of(Bench bench, List<string> notes)
    {
        var guess = LiftGuess.Of(bench);
        var figures = new List<LiftFigure>();
        return Whole(bench, guess, notes, figures).Then(whole =>
        {
            var offThen = bench.WholeMass?.OffThen ?? bench.Engine.Parts.Values.Where(part => part.Kind == "gearbox").Select(part => part.Id).ToHashSet();
            var off = Known(bench, guess, bench.Engine.Parts.Values.Where(part => !offThen.Contains(part.Id) && bench.Part(part.Id) is { IsOn: false, IsAbsent: false }), notes, "off since");
            var on = Known(bench, guess, bench.Engine.Parts.Values.Where(part => offThen.Contains(part.Id) && bench.Part(part.Id).IsOn), notes, "on since");
            var left = CentreOfMass.AsItIsNow(whole, off, on);
            if (!left.Ok && bench.WholeMass is null)
                return Outcome.Refused<LiftLoad>(new Refusal("mass of the engine", $"only a guess, and with so much off it says nothing: {left.Refusals[0].Met}", "two hook scales, or a mass with its spread and centre", "Weigh it front and rear, or tell its mass as it is now"));
            return left.Then(now =>
            {
                WorkingFigure[] inputs =
                [
                    new("M0", "mass as weighed, told or guessed", whole.Mass.Kilograms, "kg", whole.MassSpread.Kilograms / 2),
                    .. off.Select(part => new WorkingFigure("−m", part.Name, part.Mass.Kilograms, "kg", part.MassSpread.Kilograms / Math.Sqrt(3))),
                    .. on.Select(part => new WorkingFigure("+m", part.Name, part.Mass.Kilograms, "kg", part.MassSpread.Kilograms / Math.Sqrt(3))),
                ];
                figures.Add(Figure("mass as it hangs", now.Mass.Kilograms, now.MassSpread.Kilograms, "M", "kg", inputs));
                foreach (var (axis, of) in new (string, Func<Point3, double>)[] { ("forward of the bell-housing face", p => p.X), ("left of the crank", p => p.Y), ("over the crank", p => p.Z) })
                {
                    figures.Add(Figure($"centre of mass {axis}", of(now.Centre), of(now.CentreSpread), "x", "mm",
                        [.. inputs, new("x0", $"centre {axis}, before", of(whole.Centre), "mm", of(whole.CentreSpread) / 2), .. off.Concat(on).Select(part => new WorkingFigure("x", part.Name, of(part.Centre), "mm", part.CentreSpread.Millimetres / Math.Sqrt(3)))]));
                }

                return Outcome.Of(new LiftLoad(now, figures, Doubted(bench, now)));
            });
        });
    }

    private static IReadOnlyList<Refusal> Doubted(Bench bench, HangingLoad now)
    {
        var told = bench.WholeMass?.Recorded.Entry;
        var doubts = new List<Refusal>();
        if (told is null)
        {
            var (least, most) = ((now.Mass - now.MassSpread).Kilograms, (now.Mass + now.MassSpread).Kilograms);
            doubts.Add(new Refusal("mass", $"a guess: {LiftText.Show(least, "kg")} to {LiftText.Show(most, "kg")}", "a mass that somebody weighed", $"Weigh it front and rear before you choose gear; until then every check counts with {LiftText.Show(most, "kg")}"));
        }

        if (told is not (Weighed or MassTold { Centre: not null }))
        {
            doubts.Add(new Refusal("centre of mass", $"a guess, {LiftText.Show(now.CentreSpread.X, "mm")} either way along the crank", "a centre that was weighed",
                "Lift it by a hand's breadth and look how it hangs; until then every check counts with the worst place within that spread"));
        }

        return doubts;
    }

    private static Outcome<HangingLoad> Whole(Bench bench, LiftGuess? guess, List<string> notes, List<LiftFigure> figures)
    {
        switch (bench.WholeMass?.Recorded.Entry)
        {
            case Weighed w:
                notes.Add($"Weighed front and rear, entry {bench.WholeMass.Recorded.Number}.");
                return CentreOfMass.FromTwoScales(Kg(w.FrontKg), new(w.FrontXMm, w.CentreYMm, 0), Kg(w.RearKg), new(w.RearXMm, w.CentreYMm, 0), Kg(w.ToleranceKg), Mm(w.CentreZMm), Mm(w.UnweighedSpreadMm)).Then(load =>
                {
                    figures.Add(new LiftFigure("centre as weighed, forward of the bell-housing face", LiftText.Spread(load.Centre.X, load.CentreSpread.X, "mm"), Workings.Of("lifting.from-two-scales", "centre as weighed",
                        [new("m1", "front scale", w.FrontKg, "kg"), new("m2", "rear scale", w.RearKg, "kg"), new("p1", "front hook", w.FrontXMm, "mm"), new("p2", "rear hook", w.RearXMm, "mm")],
                        new("x", "centre", load.Centre.X, "mm", load.CentreSpread.X / 2), LiftingCautions.Hanging)));
                    return Outcome.Of(load with { CentreSpread = load.CentreSpread with { Y = w.UnweighedSpreadMm } });
                });
            case MassTold told when told.Centre is { } centre:
                notes.Add($"Told: {told.How}, entry {bench.WholeMass.Recorded.Number}.");
                return Outcome.Of(new HangingLoad(Kg(told.MassKg), Kg(told.SpreadKg), new(centre.X, centre.Y, centre.Z), new(told.CentreSpreadMm, told.CentreSpreadMm, told.CentreSpreadMm)));
            case MassTold told when guess is not null:
                notes.Add($"Mass told: {told.How}, entry {bench.WholeMass.Recorded.Number}. Its centre is a guess from usual proportions (common practice, no source): weigh front and rear.");
                return Outcome.Of(new HangingLoad(Kg(told.MassKg), Kg(told.SpreadKg), guess.Centre, guess.CentreSpread));
            default:
                if (guess is null)
                    return Outcome.Refused<HangingLoad>(NothingKnown);
                notes.Add("A guess: usual mass and usual centre of such an engine (common practice, no source). Weigh it front and rear before you choose gear.");
                return Outcome.Of(guess.Whole);
        }
    }

    private static IReadOnlyList<MassPart> Known(Bench bench, LiftGuess? guess, IEnumerable<Part> parts, List<string> notes, string when)
    {
        var known = new List<MassPart>();
        foreach (var part in parts)
        {
            if (bench.PartMasses.GetValueOrDefault(part.Id) is { } told && (told.Centre is not null || guess is not null))
            {
                var centre = told.Centre is { } c ? new Point3(c.X, c.Y, c.Z) : guess!.Place(part);
                known.Add(new MassPart(part.Name, Kg(told.MassKg), Kg(told.SpreadKg), centre, told.Centre is null ? guess!.PlaceSpread : Mm(told.CentreSpreadMm)));
                notes.Add($"{part.Name}, {when}: {LiftText.Spread(told.MassKg, told.SpreadKg, "kg")}, told{(told.Centre is null ? "; its place is a guess" : "")}.");
            }
            else if (guess?.Part(part) is { } guessed)
            {
                known.Add(guessed);
                notes.Add($"{part.Name}, {when}: {LiftText.Spread(guessed.Mass.Kilograms, guessed.MassSpread.Kilograms, "kg")}, a guess.");
            }
        }

        return known;
    }

    private static LiftFigure Figure(string what, double value, double spread, string symbol, string unit, IReadOnlyList<WorkingFigure> inputs) =>
        new(what, LiftText.Spread(value, spread, unit), Workings.Of("lifting.as-it-is-now", what, inputs, new(symbol, what, value, unit, spread / 2), LiftingCautions.Hanging));

    private static Mass Kg(double value) => Mass.FromKilograms(value);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
