using System.Globalization;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>What a reading at a place is read against.</summary>
/// <param name="Book">The units that the book speaks.</param>
/// <param name="GaugeZero">The size at which a comparing gauge shows zero, where one is in use.</param>
/// <param name="Nominal">The size that is expected, where it is known.</param>
/// <param name="Where">The place, for messages.</param>
public sealed record ReadingPlace(BookUnits Book, Length? GaugeZero, Length? Nominal, string Where);

/// <summary>
/// Reads what is keyed or said for one place: a size, <c>+43</c> from the gauge's zero, <c>two thou over</c> the nominal, digits said in a row.
/// </summary>
public static class ReadingText
{
    // How near to the nominal a reading must lie, as a share of it, to be the one that was meant.
    private const double NearNominal = 0.05;

    /// <summary>Reads one place.</summary>
    /// <param name="text">The text as typed or dictated.</param>
    /// <param name="place">What it is read against.</param>
    /// <returns>The size, the readings to ask about, or the message.</returns>
    public static Parsed<Length> Read(string text, ReadingPlace place)
    {
        ArgumentNullException.ThrowIfNull(text);
        var bare = text.Trim().ToLowerInvariant();
        if (place.GaugeZero is { } zero && FromZero(bare) is { } steps)
            return new Understood<Length>(text, zero + Step(place.Book) * steps, place.Book == BookUnits.Metric ? "µm from zero" : "0.0001 in from zero", true);
        foreach (var (word, sign) in ((string, int)[])[("over", 1), ("oversize", 1), ("up", 1), ("under", -1), ("undersize", -1), ("down", -1)])
            if (bare.EndsWith(" " + word, StringComparison.Ordinal))
                return Beside(text, bare[..^word.Length].Trim(), sign, place);
        var read = QuantityText.Length(text, place.Book, place.Where);
        return read is Ambiguous<Length> several && place.Nominal is { } nominal ? Nearest(several, nominal, place.Book) : read;
    }

    // A sign and whole digits, nothing else: the divisions of a dial, not a size.
    private static int? FromZero(string bare)
    {
        if (bare.Length < 2 || bare[0] is not ('+' or '-' or '−' or '–'))
            return null;
        var digits = bare.AsSpan(1).Trim();
        return digits.Length <= 6 && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var steps)
            ? bare[0] == '+' ? steps : -steps
            : null;
    }

    private static Length Step(BookUnits book) => book == BookUnits.Metric ? Length.FromMicrometres(1) : Length.FromThou(0.1);

    private static Parsed<Length> Beside(string text, string amount, int sign, ReadingPlace place)
    {
        if (place.Nominal is not { } nominal)
            return new Refused<Length>(text, new(place.Where, $"\"{text.Trim()}\" where no nominal size is known", "a size, or a nominal to stand over or under",
                "Type the size itself, or give the part its nominal first"));
        return QuantityText.Length(amount, place.Book, place.Where) switch
        {
            // "Ten under" without a unit is thou to one trade and hundredths to another.
            Understood<Length> { UnitAssumed: true } plain when IsWhole(plain.Value, place.Book) => Bare(text, plain.Value, sign, nominal, place.Book),
            Understood<Length> one => one with { Text = text, Value = nominal + one.Value * sign },
            Ambiguous<Length> several => several with
            {
                Text = text,
                Readings = [.. several.Readings.Select(r => r with { Value = nominal + r.Value * sign })],
            },
            var other => other with { Text = text },
        };
    }

    private static bool IsWhole(Length value, BookUnits book) => Figure(value, book) is >= 1 and var figure && figure == Math.Floor(figure);

    private static double Figure(Length value, BookUnits book) => Math.Round(book == BookUnits.Metric ? value.Millimetres : value.Inches, 9);

    private static Ambiguous<Length> Bare(string text, Length value, int sign, Length nominal, BookUnits book)
    {
        var figure = Figure(value, book);
        Reading<Length>[] readings =
        [
            new(string.Create(CultureInfo.InvariantCulture, $"{figure} thou {(sign > 0 ? "over" : "under")}"), nominal + Length.FromThou(figure) * sign),
            new(string.Create(CultureInfo.InvariantCulture, $"{figure} hundredths of a millimetre {(sign > 0 ? "over" : "under")}"), nominal + Length.FromMillimetres(figure / 100) * sign),
        ];
        return new(text, book == BookUnits.Inch ? readings : [.. readings.Reverse()], "No unit was given.");
    }

    private static Parsed<Length> Nearest(Ambiguous<Length> several, Length nominal, BookUnits book)
    {
        var near = several.Readings.Where(r => r.Value.IsWithin(nominal, nominal.Abs() * NearNominal)).ToArray();
        return near.Length == 1 ? new Understood<Length>(several.Text, near[0].Value, book == BookUnits.Metric ? "mm" : "in", true) : several;
    }
}
