using System.Globalization;
using Gudgeon.Sums;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>A size that a reading may stand over or under.</summary>
/// <param name="Name">Which: <c>the lower limit in service, 85.99 mm</c>.</param>
/// <param name="Size">In millimetres.</param>
public sealed record Nominal(string Name, double Size);

/// <summary>Understands a reading as people type it at the bench, in the unit of its spot.</summary>
public static class SpotText
{
    private static readonly string[] passes = ["pass", "passes", "passed", "good", "ok", "okay", "yes", "fine", "none", "clean", "tight"];
    private static readonly string[] fails = ["fail", "fails", "failed", "bad", "no", "cracked", "leaks", "scored", "loose", "worn"];

    /// <summary>Reads a figure or a look.</summary>
    /// <param name="unit">Unit of the spot.</param>
    /// <param name="zero">What the gauge is set to, in that unit; null when it is not set.</param>
    /// <param name="where">The spot, for messages.</param>
    /// <param name="nominals">Sizes that "over" and "under" could stand beside, where the gauge is not set.</param>
    /// <param name="meant">Which way is meant, of those that an earlier refusal offered; null or empty when nobody was asked.</param>
    /// <remarks>A sign before a bare whole figure means micrometres from the gauge's zero, as a dial shows it.</remarks>
    public static Outcome<double> Read(string text, string unit, BookUnits book, double? zero, string where, IReadOnlyList<Nominal>? nominals = null, string? meant = null)
    {
        var bare = text.Trim();
        if (bare.Length == 0)
            return Refused(where, "nothing", unit == Units.Look ? "pass or fail" : $"a figure in {Units.Sign(unit)}", "Type the reading, or go on to another spot");
        if (unit == Units.Look)
            return Look(bare, where);
        if (unit == "mm" && zero is null && IsStep(bare))
            return Refused(where, $"\"{bare}\", a distance from the gauge's zero", "a gauge that was set, or the whole size", "Say first what the gauge is set to, or type the size itself");
        Outcome<double> Told<T>(Parsed<T> parsed, Func<T, double> amount, string at) => SpotText.Told(parsed, v => Tidy(amount(v)), at, unit, meant);
        if (unit == "mm" && zero is null && nominals is { Count: > 0 } && BesideWhich(text, book, nominals, where) is { } beside)
            return Told(beside, l => l.Millimetres, where);
        return unit switch
        {
            "mm" => Told(ReadingText.Read(text, new ReadingPlace(book, Millimetres(zero), Millimetres(zero), where)), l => l.Millimetres, where),
            "um" => Told(QuantityText.Length(With(bare, "um"), book, where), l => l.Micrometres, where),
            "g" => Told(QuantityText.Mass(With(bare, book == BookUnits.Metric ? "g" : "oz"), book, where), m => m.Grams, where),
            "cm3" => Told(QuantityText.Volume(bare, book, where), v => v.CubicCentimetres, where),
            "N" => Told(QuantityText.Force(bare, book, where), f => f.Newtons, where),
            "Nm" => Told(QuantityText.Torque(bare, book, where), t => t.NewtonMetres, where),
            "bar" => Told(QuantityText.Pressure(bare, book, where), p => p.Bar, where),
            "mbar" => Told(QuantityText.Pressure(With(bare, "mbar"), book, where), p => p.Bar * 1000, where),
            "deg" => Told(QuantityText.Angle(bare, book, where), a => a.Degrees, where),
            "C" => Told(QuantityText.Temperature(bare, book, where), t => t.Celsius, where),
            _ => Number(bare, unit, where),
        };
    }

    private static Outcome<double> Look(string text, string where)
    {
        var word = text.ToLowerInvariant().Split(' ', ',', '.')[0];
        return passes.Contains(word) ? Outcome.Of(1.0)
            : fails.Contains(word) ? Outcome.Of(0.0)
            : Refused(where, $"\"{text}\"", "pass or fail, or a word such as good, cracked, leaks", "Say which; the rest can go into a note");
    }

    /// <summary>A sign and whole digits: what a dial shows. With a decimal mark it is a size below or above nought, such as a deck height.</summary>
    private static bool IsStep(string text) => text.Length > 1 && text[0] is '+' or '-' or '−' && text[1..].All(char.IsAsciiDigit);

    private static Length? Millimetres(double? size) => size is { } mm ? Length.FromMillimetres(mm) : null;

    /// <summary>A bare figure gets the unit of the spot.</summary>
    private static string With(string text, string unit) => text.Any(c => char.IsLetter(c) || c is '"' or '\'') ? text : $"{text} {unit}";

    /// <summary>Over or under what: the gauge is not set, and there may be several sizes. Each is offered; null where nothing stands over or under.</summary>
    private static Parsed<Length>? BesideWhich(string text, BookUnits book, IReadOnlyList<Nominal> nominals, string where)
    {
        if (ReadingText.Read(text, new ReadingPlace(book, null, null, where)) is not Refused<Length> || ReadingText.Read(text, new ReadingPlace(book, null, Length.FromMillimetres(nominals[0].Size), where)) is Refused<Length>)
            return null;
        var readings = nominals.SelectMany(n => ReadingText.Read(text, new ReadingPlace(book, null, Length.FromMillimetres(n.Size), where)) switch
        {
            Understood<Length> one => [new Reading<Length>($"{text.Trim()} {n.Name}", one.Value)],
            Ambiguous<Length> several => several.Readings.Select(r => r with { Words = $"{r.Words} {n.Name}" }),
            _ => [],
        }).ToArray();
        return new Ambiguous<Length>(text, readings, "The gauge is not set: it may stand beside another size.");
    }

    private static Outcome<double> Told<T>(Parsed<T> parsed, Func<T, double> amount, string where, string unit, string? meant) => parsed switch
    {
        Understood<T> understood => Outcome.Of(amount(understood.Value)),
        Ambiguous<T> ambiguous when ambiguous.Readings.FirstOrDefault(r => r.Words == meant) is { } one => Outcome.Of(amount(one.Value)),
        Ambiguous<T> ambiguous => Outcome.Refused<double>(new Refusal(
            where,
            $"\"{ambiguous.Text.Trim()}\", which can be read in {(ambiguous.Readings.Count == 1 ? "one way" : $"{ambiguous.Readings.Count} ways")}",
            string.Join(" or ", ambiguous.Readings.Select(r => r.Words)),
            "Type it with its unit, or say which is meant")
        {
            Choices = [.. ambiguous.Readings.Select(r => new Possibility(r.Words, Units.Show(amount(r.Value), unit)))],
        }),
        Refused<T> refused => Outcome.Refused<double>(refused.Reason),
        _ => throw new InvalidOperationException("a parsed text is one of three"),
    };

    private static Outcome<double> Number(string text, string unit, string where)
    {
        var bare = text.Replace(',', '.').Replace('−', '-').ToLowerInvariant();
        var sign = unit.ToLowerInvariant();
        if (unit != "1" && bare.EndsWith(sign, StringComparison.Ordinal))
            bare = bare[..^sign.Length];
        return double.TryParse(bare.Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            ? Outcome.Of(number)
            : Refused(where, $"\"{text}\"", unit == "1" ? "a plain number" : $"a figure in {Units.Sign(unit)}", "Type the figure alone");
    }

    // The parsers go through metres and radians: 86.012 would come back as 86.01200000000001.
    private static double Tidy(double value) => Math.Abs(value) < 1e12 ? (double)Math.Round((decimal)value, 10) : value;

    private static Outcome<double> Refused(string where, string met, string expected, string remedy) =>
        Outcome.Refused<double>(new Refusal(where, met, expected, remedy));
}
