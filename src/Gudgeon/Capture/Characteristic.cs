using System.Globalization;

namespace Gudgeon.Capture;

internal enum Quantity
{
    Length,
    Pressure,
    Torque,
    Mass,
    Temperature,
    Volume,
    Percent,
    Angle,
}

/// <summary>
/// Something people read off an instrument. <paramref name="Least"/> and <paramref name="Most"/> (millimetres for
/// lengths) bound what a figure can mean when its unit was not said; common practice, no source, and wide on purpose.
/// </summary>
internal sealed record Characteristic(string Name, string Kind, Quantity Quantity, decimal Least, decimal Most)
{
    /// <summary>Several cylinders are told in a row, so a first small number is a value.</summary>
    public bool Series { get; init; }

    /// <summary>Its words are too common: a bare whole number beside them picks or counts, and is no reading.</summary>
    public bool Shy { get; init; }

    public static readonly PhraseBook<Characteristic> Book = Build();

    /// <summary>The size of a hole, for "cylinder one mikes".</summary>
    public static Characteristic Bore { get; } = new("bore", "bore", Quantity.Length, 25, 260);

    /// <summary>What a figure before it can be of: thirty thou of wobble.</summary>
    public static readonly PhraseBook<Characteristic> Loose = BuildLoose();

    private static PhraseBook<Characteristic> BuildLoose()
    {
        var book = new PhraseBook<Characteristic>();
        foreach (string word in new[] { "play", "wobble", "slop", "movement", "rock", "shake", "float in it", "side to side", "in and out", "up and down" })
            book.Add(word, new("play", "", Quantity.Length, 0.003m, 20));
        foreach (string word in new[] { "run out", "runout" })
            book.Add(word, new("run-out", "", Quantity.Length, 0, 3));
        foreach (string word in new[] { "end float", "endfloat", "end play" })
            book.Add(word, new("end float", "crank", Quantity.Length, 0.005m, 2));
        foreach (string word in new[] { "taper" })
            book.Add(word, new("taper", "", Quantity.Length, 0, 1));
        foreach (string word in new[] { "backlash" })
            book.Add(word, new("backlash", "", Quantity.Length, 0.005m, 2));
        foreach (string word in new[] { "out of round", "ovality", "oval" })
            book.Add(word, new("out-of-round", "", Quantity.Length, 0, 1));
        foreach (string word in new[] { "wear", "wear ridge" })
            book.Add(word, new("wear", "", Quantity.Length, 0.003m, 5));
        foreach (string word in new[] { "out of flat", "out of true", "warp", "bow", "hollow" })
            book.Add(word, new(word == "out of true" ? "run-out" : "flatness", "", Quantity.Length, 0, 3));
        foreach (string word in new[] { "stretch" })
            book.Add(word, new("stretch", "", Quantity.Length, 0.01m, 10));
        foreach (string word in new[] { "slack" })
            book.Add(word, new("slack", "", Quantity.Length, 0.5m, 60));
        foreach (string word in new[] { "protrusion", "stand out", "proud" })
            book.Add(word, new("protrusion", "liner", Quantity.Length, -0.5m, 2));
        foreach (string word in new[] { "clearance", "oil clearance" })
            book.Add(word, new("clearance", "", Quantity.Length, 0.003m, 1));
        return book;
    }

    /// <summary>The reading of that name that is taken on a kind of part, where one is listed.</summary>
    public static Characteristic? Known(string name, string kind) => Listed.GetValueOrDefault((name, kind));

    private static readonly Dictionary<(string, string), Characteristic> Listed = Lexicon.Rows("readings").DistinctBy(r => (r[0], r[1])).ToDictionary(r => (r[0], r[1]), Of);

    private static Characteristic Of(string[] row) =>
        new(row[0], row[1], Enum.Parse<Quantity>(row[2]), decimal.Parse(row[3], CultureInfo.InvariantCulture), decimal.Parse(row[4], CultureInfo.InvariantCulture)) { Series = row[5] == "row", Shy = row[5] == "shy" };

    private static PhraseBook<Characteristic> Build()
    {
        var book = new PhraseBook<Characteristic>();
        foreach (string[] row in Lexicon.Rows("readings"))
        {
            var what = Of(row);
            foreach (string word in row[6].Split("; "))
                book.Add(word, what);
        }

        return book;
    }
}
