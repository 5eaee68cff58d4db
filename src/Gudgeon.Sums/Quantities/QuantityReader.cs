using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>Reads a figure and its unit; the same for every kind of quantity.</summary>
internal static class QuantityReader
{
    private const int LongestText = 80;

    internal static Parsed<T> Read<T>(string text, UnitTable table, BookUnits book, string where, Func<double, T> make)
    {
        ArgumentNullException.ThrowIfNull(text);
        var asked = $"{OneOf(table)} such as {table.Example}";
        if (string.IsNullOrWhiteSpace(text))
            return Refuse<T>(text, where, "nothing", asked, "Type the figure, or leave this place for later");
        if (text.Length > LongestText)
            return Refuse<T>(text, where, $"{text.Length} characters", asked, "Type the figure alone and put the rest in a note");

        var tokens = Join(Tokens.Cut(TextFold.Fold(text)));
        var at = 0;
        var negative = Sign(tokens, ref at);
        var number = NumberReader.Read(tokens, at);
        if (number?.Refusal is { } fault)
            return Refuse<T>(text, where, fault.Met, fault.Expected, fault.Remedy);
        at = number?.Next ?? at;
        var (unit, afterUnit) = UnitAt(tokens, at);
        // "inch and a quarter" means one inch and a quarter; a unit alone means nothing.
        if (number is null && (unit.Length == 0 || NumberReader.AndFraction(tokens, afterUnit) is null))
            return Refuse<T>(text, where, $"\"{text.Trim()}\", which has no figure", asked, "Type the figure first, then its unit");
        var values = number?.Values ?? [Fraction.Of(1)];
        var meanings = unit.Length == 0 ? table.Default(book) : table.Aliases.GetValueOrDefault(unit);
        if (meanings is null)
            return Refuse<T>(text, where, $"the unit \"{unit}\"", asked, $"Use one of {Known(table)}");
        at = afterUnit;
        if (NumberReader.AndFraction(tokens, at) is var (fraction, afterFraction))
        {
            values = [.. values.Select(value => value.Plus(fraction))];
            at = afterFraction;
        }
        var inches = Fraction.Of(0);
        if (meanings is [{ Sign: "ft" }] && NumberReader.Read(tokens, at) is { Refusal: null, Values: [var single] } second
            && UnitAt(tokens, second.Next) is ("in" or "inch" or "inches" or "\"", var end))
            (inches, at) = (single, end);
        if (at < tokens.Count)
            return Refuse<T>(text, where, $"\"{Shown(tokens, at)}\" after the {table.Kind}", $"one {table.Kind} and nothing more",
                "Type each figure in its own place");
        if (values.Any(value => value.IsTooLarge) || inches.IsTooLarge)
            return Refuse<T>(text, where, $"\"{text.Trim()}\"", "a figure below 1000000000", "Check the figure and its unit");

        var readings = from value in values
                       from meaning in meanings
                       select (Value: negative ? value.Negated : value, Meaning: meaning);
        return Conclude(text, table, book, where, make, [.. readings], new(unit, number is { WasFraction: true }, values.Count > 1, negative ? inches.Negated : inches));
    }

    private sealed record Context(string Unit, bool WasFraction, bool DigitsInRow, Fraction Inches);

    private static Parsed<T> Conclude<T>(
        string text, UnitTable table, BookUnits book, string where, Func<double, T> make, List<(Fraction Value, UnitMeaning Meaning)> readings, Context seen)
    {
        var why = seen.DigitsInRow ? "The digits were said in a row, without a point."
            : seen.Unit.Length == 0 ? "No unit was given." : $"\"{seen.Unit}\" is said for more than one unit.";
        if (table == Units.Length && seen is { Unit: "", WasFraction: true } && book == BookUnits.Metric)
        {
            readings = BareFraction(readings);
            why = "A fraction without a unit is an inch size more often than not, and this book speaks millimetres.";
        }
        try
        {
            var made = readings.ConvertAll(r => new Reading<T>(Words(r.Value, r.Meaning),
                make(r.Value.Plus(Fraction.Of(r.Meaning.Offset)).Times(r.Meaning.Factor) + seen.Inches.Times(25.4m))));
            return made.Count == 1
                ? new Understood<T>(text, made[0].Value, readings[0].Meaning.Sign, seen.Unit.Length == 0)
                : new Ambiguous<T>(text, made, why);
        }
        catch (ArgumentOutOfRangeException)
        {
            return Refuse<T>(text, where, $"\"{text.Trim()}\"", $"{OneOf(table)} that can exist", "Check the figure and its unit");
        }
    }

    // Eighths and finer are inch sizes; a half or a quarter may be meant in millimetres.
    private static List<(Fraction, UnitMeaning)> BareFraction(List<(Fraction Value, UnitMeaning Meaning)> metric)
    {
        var inch = metric.ConvertAll(r => (r.Value, Units.Length.Inch[0]));
        return metric[0].Value.Denominator is 8 or 16 or 32 or 64 ? inch : [.. inch, .. metric];
    }

    private static bool Sign(List<Token> tokens, ref int at)
    {
        if (tokens.Count == 0 || tokens[0] is not ({ Kind: TokenKind.Hyphen or TokenKind.Plus } or { Kind: TokenKind.Word, Text: "minus" or "plus" }))
            return false;
        at = 1;
        return tokens[0].Kind == TokenKind.Hyphen || tokens[0].Text == "minus";
    }

    private static (string Unit, int Next) UnitAt(List<Token> tokens, int at)
    {
        var unit = "";
        while (at < tokens.Count && tokens[at] is { Kind: TokenKind.Slash } or { Kind: TokenKind.Word, Text: not "and" })
            unit += tokens[at++].Text;
        return (unit, at);
    }

    // Hyphens inside words part nothing: eighty-six, thirty-second, quarter-inch, ft-lb.
    private static List<Token> Join(List<Token> tokens)
    {
        var joined = new List<Token>(tokens.Count);
        for (var i = 0; i < tokens.Count; i++)
        {
            var inside = tokens[i].Kind == TokenKind.Hyphen && i > 0 && i + 1 < tokens.Count && tokens[i + 1].Kind == TokenKind.Word;
            if (inside)
                continue;
            if (tokens[i].Text is "second" or "seconds" or "fourth" or "fourths" && joined is [.., { Text: "thirty" or "sixty" } tens])
                joined[^1] = new(TokenKind.Word, tens.Text + tokens[i].Text);
            else
                joined.Add(tokens[i]);
        }
        return joined;
    }

    private static string Words(Fraction value, UnitMeaning meaning) => string.Create(CultureInfo.InvariantCulture,
        $"{value.Numerator / value.Denominator:0.############} {(char.IsAsciiDigit(meaning.Sign[0]) ? "× " : "")}{meaning.Sign}");

    private static string OneOf(UnitTable table) => table.Kind.StartsWith('a') ? $"an {table.Kind}" : $"a {table.Kind}";

    private static string Known(UnitTable table) =>
        string.Join(", ", table.Aliases.Values.Where(m => m.Length == 1).Select(m => m[0].Sign).Where(s => !char.IsAsciiDigit(s[0])).Distinct());

    private static string Shown(List<Token> tokens, int at) => string.Join(' ', tokens.Skip(at).Select(token => token.Text));

    private static Refused<T> Refuse<T>(string text, string where, string met, string expected, string remedy) =>
        new(text, new(where, met, expected, remedy));
}
