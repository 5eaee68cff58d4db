using System.Globalization;
using System.Text.RegularExpressions;
using Gudgeon.Engine;
using Gudgeon.Journal;
using Sheet = Gudgeon.Engine.Characteristic;

namespace Gudgeon.Capture;

/// <summary>What a measured fact comes to on the book's sheets.</summary>
/// <param name="Takes">The readings to take, one for each value; empty where the fact stays a note.</param>
/// <param name="Why">What is not certain, as a question; empty where there is no sheet for it, or nothing to ask.</param>
internal sealed record OnSheet(IReadOnlyList<TakeReading> Takes, string Why)
{
    public static readonly OnSheet None = new([], "");

    public static OnSheet Asks(string why) => new([], why);
}

/// <summary>
/// Finds the spots of the book's sheets that a measured fact was read at. Only what the words say counts: where the part,
/// the place or the spot is not certain the fact stays a note, and the book asks.
/// </summary>
internal static partial class SpokenReadings
{
    /// <summary>Rows and columns of the sheets by the words for them.</summary>
    private static readonly Dictionary<string, string[]> Spots = new()
    {
        ["top"] = ["top", "upper"],
        ["upper"] = ["upper", "top"],
        ["middle"] = ["middle"],
        ["bottom"] = ["bottom", "lower"],
        ["lower"] = ["lower", "bottom"],
        ["front"] = ["front"],
        ["rear"] = ["rear"],
        ["across"] = ["across"],
        ["crosswise"] = ["across"],
        ["crossways"] = ["across"],
        ["thrust"] = ["across"],
        ["along"] = ["along"],
        ["lengthwise"] = ["along"],
        ["vertical"] = ["upright"],
        ["horizontal"] = ["level"],
    };

    /// <summary>Words that say how it was read and nothing of where.</summary>
    private static readonly HashSet<string> How =
        ["with", "using", "on", "the", "a", "my", "measured", "dial", "clock", "gauge", "dti", "mike", "micrometer", "feeler", "feelers", "straight", "edge", "straightedge", "nose", "pushed", "both", "ways", "cold", "cranking"];

    private static readonly HashSet<string> Below = ["down", "below"];
    private static readonly HashSet<string> Above = ["up", "above", "proud"];

    [GeneratedRegex(@"\bin (?:that |this )?order\b|\bfront to (?:back|rear)\b|\bfrom the front\b")]
    private static partial Regex Ordered();

    [GeneratedRegex(@"^cylinder (?<n>\d+)(?<wet> wet)?(?: dry)?$")]
    private static partial Regex OneCylinder();

    /// <summary>The readings of a fact, each as the measure page would take it.</summary>
    public static OnSheet Of(Measured measured, string line, Bench bench)
    {
        if (measured.Values.Any(v => v.Rough || v.Unit.Length == 0) || SheetOf(measured, line) is not { } id || Characteristics.Find(id) is not { } sheet || bench.Places.All(sheet) is not { Count: > 0 } all)
            return OnSheet.None;
        var found = measured.What == "compression" && measured.Values.Any(v => OneCylinder().IsMatch(v.At))
            ? ByCylinder(measured, line, sheet, all, bench)
            : ByPlace(measured, line, sheet, all, bench);

        // What the sheet would refuse is no reading: the note keeps it.
        return found.Takes.Select(t => t.Decide(bench)).FirstOrDefault(d => !d.Ok) is { } refused ? OnSheet.Asks(string.Join(" ", refused.Refusals)) : found;
    }

    private static OnSheet ByPlace(Measured measured, string line, Sheet sheet, IReadOnlyList<MeasuringPlace> all, Bench bench)
    {
        var (places, told) = PlacesOf(measured, sheet, all, bench);
        var values = measured.Values;
        switch (places.Count)
        {
            case 0:
                return OnSheet.Asks($"which {(sheet.Place.Length > 0 ? sheet.Place : "part")} was it");
            case 1:
                return AtSpots(measured, sheet, places[0], bench);
            case > 1 when values.Count == 1:
                // One figure for all of them is what they were set to, or a sum of what was read.
                return sheet.Id is "valve-clearance" or "plug-gap" ? OnSheet.None : OnSheet.Asks($"on which of the {places.Count} was it read");
            case > 1 when values.Count == places.Count && sheet.Spots.Count == 1 && values.All(v => v.At.Length == 0) && (told || Ordered().IsMatch(line.ToLowerInvariant())) && Sites(measured.At).All(w => How.Contains(w)):
                return new OnSheet([.. places.Zip(values, (place, value) => Take(sheet, place, sheet.Spots[0], value, bench))], "");
            default:
                return OnSheet.Asks($"{values.Count} values for {places.Count} places: which is which? Say which in order, as one to {places.Count}");
        }
    }

    private static OnSheet AtSpots(Measured measured, Sheet sheet, MeasuringPlace place, Bench bench)
    {
        if (sheet.Id == "deck-height")
            return Deck(measured, sheet, place, bench);
        var takes = new List<TakeReading>();
        string? row = null, column = null;
        foreach (var value in measured.Values)
        {
            // Words before the first value hold until another of their kind is said.
            var words = takes.Count == 0 ? Sites(measured.At).Concat(Sites(value.At)) : Sites(value.At);
            if (Read(sheet, words, ref row, ref column) is not { } unsure)
            {
                var (atRow, atColumn) = (row, column);
                var fits = sheet.Spots.Where(s => s.Id == "one" || (s.Row == atRow && (s.Column.Length == 0 || s.Column == atColumn))).ToList();
                if (fits.Count == 1 && !takes.Exists(t => t.Slot.Spot == fits[0].Id))
                {
                    takes.Add(Take(sheet, place, fits[0], value, bench));
                    continue;
                }

                unsure = fits.Count == 1 ? "two values for one spot" : "the spot is not told";
            }

            return OnSheet.Asks($"{unsure}: {place.Name}, {sheet.Name}, is read at {Grid(sheet)}");
        }

        return new OnSheet(takes, "");
    }

    /// <summary>Takes row and column from the words. What is unsure about them, or null.</summary>
    private static string? Read(Sheet sheet, IEnumerable<string> words, ref string? row, ref string? column)
    {
        string? newRow = null, newColumn = null;
        foreach (string word in words.Where(w => !How.Contains(w)))
        {
            string[] ids = Spots.GetValueOrDefault(word) ?? [];
            if (ids.FirstOrDefault(i => sheet.Spots.Any(s => s.Row == i)) is { } asRow && (newRow is null || newRow == asRow))
                newRow = asRow;
            else if (ids.FirstOrDefault(i => sheet.Spots.Any(s => s.Column == i)) is { } asColumn && (newColumn is null || newColumn == asColumn))
                newColumn = asColumn;
            else
                return $"“{word}” does not say which spot";
        }

        (row, column) = (newRow ?? row, newColumn ?? column);
        return null;
    }

    /// <summary>The sheet counts above the deck; its figure is the mean of both ends of the pin.</summary>
    private static OnSheet Deck(Measured measured, Sheet sheet, MeasuringPlace place, Bench bench)
    {
        var words = Sites(measured.At).ToList();
        bool below = words.Exists(Below.Contains);
        bool above = words.Exists(Above.Contains);
        if (below == above && measured.Values.Any(v => v.Value > 0))
            return OnSheet.Asks("above or below the deck");
        if (measured.Values.Any(v => v.At.Length > 0) || measured.Values.Count > sheet.Spots.Count)
            return OnSheet.Asks($"which end of the pin: {place.Name}, {sheet.Name}, is read at {Grid(sheet)}");
        if (measured.Values.Count == 1 && !words.Contains("pin"))
            return OnSheet.Asks($"over the pin, or where: {place.Name}, {sheet.Name}, is read at {Grid(sheet)}");
        return new OnSheet([.. measured.Values.Zip(sheet.Spots, (value, spot) => Take(sheet, place, spot, below ? value with { Value = -Math.Abs(value.Value) } : value, bench))], "");
    }

    /// <summary>"wet on four one forty": values told by cylinder, beside a row of all of them or alone.</summary>
    private static OnSheet ByCylinder(Measured measured, string line, Sheet sheet, IReadOnlyList<MeasuringPlace> all, Bench bench)
    {
        var row = measured.Values.Where(v => !OneCylinder().IsMatch(v.At)).ToList();
        var found = row.Count == 0 ? OnSheet.None : ByPlace(measured with { Values = row }, line, sheet, all, bench);
        if (row.Count > found.Takes.Count)
            return found;
        var takes = found.Takes.ToList();
        foreach (var value in measured.Values.Except(row))
        {
            var match = OneCylinder().Match(value.At);
            var own = match.Groups["wet"].Success ? Characteristics.Find("compression-wet")! : sheet;
            if (all.FirstOrDefault(p => p.Key == $"cyl {match.Groups["n"].Value}") is not { } place)
                return OnSheet.Asks($"there is no cylinder {match.Groups["n"].Value}");
            takes.Add(Take(own, place, own.Spots[0], value, bench));
        }

        return takes.DistinctBy(t => t.Slot).Count() == takes.Count ? new OnSheet(takes, "") : OnSheet.Asks("two values for one cylinder");
    }

    /// <summary>Words that say in which order a row of values was read belong to it where the row goes to its sheet: they are no question of their own.</summary>
    public static Heard Heeded(Heard heard, Bench bench)
    {
        bool Orders(string words) => Ordered().Match(words.ToLowerInvariant()) is { Success: true } match && match.Length == words.Length;
        return Ordered().IsMatch(heard.Text.ToLowerInvariant()) && heard.Facts.OfType<Measured>().Any(m => Of(m, heard.Text, bench).Takes.Count > 1)
            ? heard with { Doubts = [.. heard.Doubts.Where(d => !(d.Sort == DoubtSort.NotUnderstood && Orders(d.Words)))], Unused = [.. heard.Unused.Where(u => !Orders(u.Of(heard.Text)))] }
            : heard;
    }

    private static TakeReading Take(Sheet sheet, MeasuringPlace place, MeasuringSpot spot, Amount value, Bench bench) =>
        new(new Slot(place.Part, sheet.Id, place.Number, spot.Id), $"{value.Value.ToString(CultureInfo.InvariantCulture)} {value.Unit}", Gauge(sheet, spot, bench), Said: value.Said);

    /// <summary>The instrument that this was last read with: who goes on measuring has it in hand. The echo names it.</summary>
    private static string? Gauge(Sheet sheet, MeasuringSpot spot, Bench bench) =>
        bench.Readings.Values.LastOrDefault(r => r.Taken.Characteristic == sheet.Id && r.Taken.Instrument is not null)?.Taken.Instrument is { } id
        && bench.Instruments.TryGetValue(id, out var kept) && !kept.Gone && kept.Unit == spot.Unit ? id : null;

    /// <summary>The places that are meant, and whether the words number several of them.</summary>
    private static (IReadOnlyList<MeasuringPlace> Places, bool Numbered) PlacesOf(Measured measured, Sheet sheet, IReadOnlyList<MeasuringPlace> all, Bench bench)
    {
        if (measured.Thing is not { } thing)
            return ([], false);
        var numbers = Number().Matches(thing.Ids.Count == 0 ? thing.Name : thing.Where).Select(m => int.Parse(m.Value, CultureInfo.InvariantCulture)).ToList();
        if (thing.Ids.Count == 0)
            return numbers.Count > 0 ? ([.. all.Where(p => numbers.Exists(n => p.Key == $"cyl {n}"))], numbers.Count > 1) : thing.Sort == ThingSort.Part && thing.Kind.Length == 0 ? (all, false) : ([], false);
        var places = thing.Ids.SelectMany(id => On(bench.Engine.Parts.GetValueOrDefault(id), sheet, all)).Distinct().ToList();
        if (thing.Ids.Count > 1 || places.Count < 2)
            return (places, measured.InOrder || (measured.Values.Count > 1 && Range().IsMatch(measured.Words.ToLowerInvariant())));

        // Crankpins are numbered along the crank, rods by their cylinders: where two share a pin the number may mean either.
        bool shared = sheet.Id == "crankpin" && places.Count != bench.Engine.Parts.Values.Count(p => p.Kind == "rod");
        return shared ? ([], false) : ([.. places.Where(p => numbers.Contains(p.Number))], numbers.Count > 1);
    }

    /// <summary>Where a sheet holds what was read on a part: on it, or on what it belongs to, as a ring's gap with its piston.</summary>
    private static IEnumerable<MeasuringPlace> On(Part? part, Sheet sheet, IReadOnlyList<MeasuringPlace> all)
    {
        if (part is null)
            return [];
        var own = all.Where(p => p.Part == part.Id).ToList();
        string key = part.Kind == "main-shell" && sheet.Key == "main" ? $"main {part.Index.FirstOrDefault(1)}" : sheet.Key == "cyl" && part.Cylinder is { } cylinder ? $"cyl {cylinder}" : "";
        return own.Count > 0 ? own : all.Where(p => p.Key == key);
    }

    [GeneratedRegex(@"\d+")]
    private static partial Regex Number();

    /// <summary>From one to another by number.</summary>
    [GeneratedRegex(@"\b(?:one|1) to (?:\d+|[a-z]+)\b")]
    private static partial Regex Range();

    private static string? SheetOf(Measured measured, string line) => (measured.What, measured.Thing?.Kind) switch
    {
        ("bore", _) => "bore",
        ("main journal", _) => "main-journal",
        ("big-end journal", _) => "crankpin",
        ("piston diameter", _) => "piston-skirt",
        ("gudgeon pin diameter", _) => "gudgeon",
        ("end float", "crank") => "crank-end-float",
        ("end float", "cam") => "cam-end-float",
        ("top ring gap", _) => "ring-gap-top",
        ("second ring gap", _) => "ring-gap-second",
        ("oil ring gap", _) => "ring-gap-oil",
        ("plug gap", _) => "plug-gap",
        ("deck height", _) => "deck-height",
        ("valve clearance", _) => "valve-clearance",
        ("compression", _) => Sites(measured.At).Contains("wet") ? "compression-wet" : "compression-dry",
        ("run-out", "crank") => "crank-runout",
        ("run-out", "cam") => "cam-runout",
        ("clearance", "main-shell") when Strip().IsMatch(line) => "main-clearance-strip",
        ("clearance", "rod-shell") when Strip().IsMatch(line) => "rod-clearance-strip",
        ("side clearance", "rod") => "rod-side",
        ("protrusion", "liner") => "liner-protrusion",
        ("free length", "spring") => "spring-free",
        ("fitted height", "spring") => "spring-fitted",
        ("flatness", "head") => "head-flatness",
        ("mass", "rod") => "rod-mass",
        _ => null,
    };

    [GeneratedRegex(@"\bstrip\b|plastic", RegexOptions.IgnoreCase)]
    private static partial Regex Strip();

    private static IEnumerable<string> Sites(string at) => at.ToLowerInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The spots of a sheet in words: top, middle, bottom, each across the crank, along the crank.</summary>
    private static string Grid(Sheet sheet)
    {
        var grid = sheet.Spots.Where(s => !s.IsUnworn).ToList();
        string Names(Func<MeasuringSpot, string> of, int part) => string.Join(", ", grid.DistinctBy(of).Select(s => s.Name.Split(", ")[part]));
        return grid[0].Column.Length == 0 ? Names(s => s.Row, 0) : $"{Names(s => s.Row, 0)}, each {Names(s => s.Column, 1)}";
    }
}
