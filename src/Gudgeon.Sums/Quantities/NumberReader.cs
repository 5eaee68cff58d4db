using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>Reads one number, written or said, from the front of the tokens.</summary>
internal static class NumberReader
{
    /// <summary>What was read: one value, or several when digits were said in a row.</summary>
    internal sealed record Result(IReadOnlyList<Fraction> Values, bool WasFraction, int Next, Refusal? Refusal = null);

    /// <summary>What was met and what was expected in its place.</summary>
    internal sealed record Refusal(string Met, string Expected, string Remedy);

    /// <summary>Reads at <paramref name="at"/>; null when no number begins there.</summary>
    internal static Result? Read(List<Token> tokens, int at)
    {
        if (at >= tokens.Count)
            return null;
        var read = tokens[at].Kind == TokenKind.Number ? Written(tokens, at) : Said(tokens, at);
        return read is { Refusal: null, WasFraction: false, Values: [{ IsWhole: true } whole] }
            && AndFraction(tokens, read.Next) is var (fraction, next)
            ? new([whole.Plus(fraction)], true, next)
            : read;
    }

    /// <summary>Reads "and a quarter", "and three eighths", "and 1/2".</summary>
    internal static (Fraction Value, int Next)? AndFraction(List<Token> tokens, int at)
    {
        if (at >= tokens.Count || tokens[at] is not { Kind: TokenKind.Word, Text: "and" })
            return null;
        var read = at + 1 < tokens.Count && tokens[at + 1].Kind == TokenKind.Number ? Written(tokens, at + 1) : Said(tokens, at + 1);
        return read is { Refusal: null, WasFraction: true } ? (read.Values[0], read.Next) : null;
    }

    private static Result Written(List<Token> tokens, int at)
    {
        var text = tokens[at].Text;
        if (text.Count(c => c is '.' or ',') > 1)
            return Bad($"\"{text}\", which has more than one decimal mark", "one mark, point or comma; thousands are never parted",
                "Type the figure again with one mark");
        if (text.Length > 20)
            return Bad($"\"{text}\", which has more than 20 places", "a figure that can be measured", "Check the figure for keys held down");
        var value = Fraction.Of(decimal.Parse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture));
        if (Over(tokens, at) is { } plain)
            return plain;
        var gap = at + 1 < tokens.Count && tokens[at + 1].Kind == TokenKind.Hyphen ? 2 : 1;
        if (!text.Contains('.') && !text.Contains(',') && Over(tokens, at + gap) is { } mixed)
            return mixed.Refusal is null ? mixed with { Values = [value.Plus(mixed.Values[0])] } : mixed;
        return new([value], false, at + 1);
    }

    private static Result? Over(List<Token> tokens, int at)
    {
        if (at + 2 >= tokens.Count || tokens[at + 1].Kind != TokenKind.Slash || tokens[at + 2].Kind != TokenKind.Number)
            return null;
        var shown = $"\"{tokens[at].Text}/{tokens[at + 2].Text}\"";
        if (!int.TryParse(tokens[at].Text, NumberStyles.None, CultureInfo.InvariantCulture, out var top)
            || !int.TryParse(tokens[at + 2].Text, NumberStyles.None, CultureInfo.InvariantCulture, out var bottom)
            || bottom == 0)
            return Bad(shown, "a fraction of whole numbers such as 3/8", "Type the fraction again, or type it as a decimal");
        return new([new(top, bottom)], true, at + 3);
    }

    private static Result? Said(List<Token> tokens, int at)
    {
        var words = tokens.Skip(at).TakeWhile(token => token.Kind == TokenKind.Word).Select(token => token.Text).ToArray();
        var used = NumberWords.Whole(words, out var whole);
        var rest = words.AsSpan(used);
        if (rest is ["point", ..] && Digits(rest[1..], out var decimals, out var places) is > 0 and var digits)
            return new([Fraction.Of(whole + decimals / Power(places))], false, at + used + 1 + digits);
        if (used > 0 && rest.Length > 0 && NumberWords.IsDigit(rest[0], out _))
        {
            var row = Digits(rest, out decimals, out places);
            return new([Fraction.Of(whole + decimals / Power(places)), Fraction.Of(whole * Power(places) + decimals)], false, at + used + row);
        }
        if (rest.Length > 0 && NumberWords.IsFraction(rest[0], out var denominator))
            return new([new(used == 0 ? 1 : whole, denominator)], true, SkipOf(words, at, used + 1));
        if (used == 0 && rest is ["a" or "an", var second, ..] && NumberWords.IsFraction(second, out denominator))
            return new([new(1, denominator)], true, SkipOf(words, at, 2));
        if (used == 0 && rest is ["a" or "an", ..])
            return new([Fraction.Of(1)], false, at + 1);
        return used == 0 ? null : new([Fraction.Of(whole)], false, at + used);
    }

    // "half of an inch", "half an inch", "half inch".
    private static int SkipOf(string[] words, int at, int used)
    {
        if (used < words.Length && words[used] == "of")
            used++;
        if (used < words.Length && words[used] is "a" or "an")
            used++;
        return at + used;
    }

    private static int Digits(ReadOnlySpan<string> words, out decimal value, out int places)
    {
        value = 0;
        places = 0;
        while (places < words.Length && places < 9 && NumberWords.IsDigit(words[places], out var digit))
        {
            value = value * 10 + digit;
            places++;
        }
        return places;
    }

    private static decimal Power(int places)
    {
        var power = 1m;
        for (var i = 0; i < places; i++)
            power *= 10;
        return power;
    }

    private static Result Bad(string met, string expected, string remedy) => new([], false, 0, new(met, expected, remedy));
}
