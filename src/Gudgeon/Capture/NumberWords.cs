using System.Globalization;

namespace Gudgeon.Capture;

/// <summary>
/// Reads one number at a token: figures (<c>35</c>, <c>1.25</c>, <c>7/16</c>, <c>1 1/2</c>) or words (<c>thirty five</c>,
/// <c>inch and a half</c> without the inch, <c>seven sixteenths</c>, <c>point two two</c>). It takes the shortest
/// natural group, so that <c>two three and four</c> stay three numbers and <c>eighty six oh one two</c> five figures;
/// who reads a measured value joins the groups.
/// </summary>
internal static class NumberWords
{
    private static readonly string[] Units = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"];
    private static readonly string[] Tens = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
    private static readonly string[] Ordinals = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth", "thirteenth", "fourteenth", "fifteenth", "sixteenth", "seventeenth", "eighteenth", "nineteenth", "twentieth"];
    private static readonly Dictionary<string, int> Small = Units.Index().ToDictionary(u => u.Item, u => u.Index);
    private static readonly Dictionary<string, int> Ten = Tens.Index().ToDictionary(t => t.Item, t => 20 + (10 * t.Index));
    private static readonly Dictionary<string, int> Order = Ordinals.Index().ToDictionary(o => o.Item, o => o.Index + 1);
    private static readonly Dictionary<string, int> Parts = new()
    {
        ["half"] = 2,
        ["halves"] = 2,
        ["quarter"] = 4,
        ["quarters"] = 4,
        ["eighth"] = 8,
        ["eighths"] = 8,
        ["sixteenth"] = 16,
        ["sixteenths"] = 16,
        ["thirds"] = 3,
    };

    private static readonly HashSet<string> PronounBefore =
    ["the", "long", "longer", "longest", "short", "shorter", "shortest", "little", "big", "bigger", "smaller", "small", "third", "second", "first", "fourth", "last", "other", "odd", "that", "this", "which", "every", "each", "any", "left", "right", "same", "new", "old", "lower", "upper", "front", "rear", "good", "bad", "middle", "missing", "fifth", "sixth", "wrong", "bent", "snapped", "far", "near", "no", "another", "fine", "coarse", "back", "spare", "loose", "worst", "best", "stuck"];

    private static readonly HashSet<string> RealThousand = ["rpm", "rev", "mile", "km", "kilometre", "pound", "quid", "euro", "dollar", "hour"];

    public static Num? At(IReadOnlyList<Token> tokens, int at)
    {
        if (at < 0 || at >= tokens.Count)
            return null;
        var token = tokens[at];
        return token.Sort switch
        {
            TokenSort.Number => Figures(tokens, at),
            TokenSort.Word => Words(tokens, at),
            _ => null,
        };
    }

    private static string Word(IReadOnlyList<Token> tokens, int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    private static Num? Figures(IReadOnlyList<Token> tokens, int at)
    {
        string text = tokens[at].Text;
        if (char.IsLetter(text[^1]))
            return decimal.TryParse(text[..^2], CultureInfo.InvariantCulture, out decimal nth) ? new Num(nth, NumSort.Ordinal, at, at + 1) : null;
        if (Fraction(text) is { } fraction)
            return new Num(fraction, NumSort.Fraction, at, at + 1);
        if (!decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value))
            return null;
        if (text.Contains('.', StringComparison.Ordinal))
            return new Num(value, NumSort.Decimal, at, at + 1);
        if (Word(tokens, at + 1) == "point" && Point(tokens, at + 1) is { } decimals)
            return new Num(value + decimals.Value, NumSort.Decimal, at, decimals.To);
        if (Word(tokens, at + 1) is "hundred")
            return Hundred(tokens, at, value, at + 1);
        return Broken(tokens, at, value, at + 1) ?? new Num(value, NumSort.Whole, at, at + 1);
    }

    public static decimal? Fraction(string text)
    {
        int slash = text.IndexOf('/', StringComparison.Ordinal);
        return slash > 0
            && decimal.TryParse(text[..slash], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal over)
            && decimal.TryParse(text[(slash + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out decimal under) && under > 0
            ? over / under
            : null;
    }

    private static Num? Words(IReadOnlyList<Token> tokens, int at)
    {
        string word = tokens[at].Text;
        string next = Word(tokens, at + 1);
        switch (word)
        {
            case "point" when Point(tokens, at) is { } decimals:
                return decimals;
            case "a" or "an" when next is "dozen":
                return new Num(12, NumSort.Whole, at, at + 2);
            case "a" or "an" when next is "couple" or "pair":
                return new Num(2, NumSort.Whole, at, Word(tokens, at + 2) == "of" ? at + 3 : at + 2);
            case "a" when next is "few" or "handful":
                return new Num(0, NumSort.Vague, at, at + 2);
            case "a" when next is "load" or "bunch" or "lot" or "pile" or "mass" or "heap" && Word(tokens, at + 2) == "of" && Lexicon.Fasteners.Longest(tokens, at + 3).Values.Count > 0:
                return new Num(0, NumSort.Vague, at, at + 3);
            case "loads" or "plenty" or "lots" or "heaps" or "tons" or "bags" when next == "of" && Lexicon.Fasteners.Longest(tokens, at + 2).Values.Count > 0:
                return new Num(0, NumSort.Vague, at, at + 2);
            case "a" when next is "hundred":
                return Hundred(tokens, at, 1, at + 1);
            case "hundred" when !IsNumberWord(Word(tokens, at - 1)) && Word(tokens, at - 1) is not ("few" or "couple" or "several" or "the") && (Word(tokens, next == "and" ? at + 2 : at + 1) is var tail && IsNumberWord(tail) || Gudgeon.Capture.Units.At(tokens, at + 1) is not null):
                return Hundred(tokens, at, 1, at);
            case "a" when next is "quarter" or "half" && Word(tokens, at + 2) is not ("turn" or "of"):
                return new Num(next == "half" ? 0.5m : 0.25m, NumSort.Fraction, at, at + 2);
            case "half" when next == "a" && Word(tokens, at + 2) == "dozen":
                return new Num(6, NumSort.Whole, at, at + 3);
            case "half" when next == "an" && Word(tokens, at + 2) == "inch":
                return new Num(0.5m, NumSort.Fraction, at, at + 2);
            case "half" when next == "a" && Word(tokens, at + 2) is "thou" or "thousandth" or "hundredth" or "mil" or "mill" or "millimetre" or "tenth" or "degree" or "bar" or "inch":
                return new Num(0.5m, NumSort.Fraction, at, at + 2);
            case "a" when next is "thou" or "mil" or "micron" && Word(tokens, at - 1) is not ("of" or "half" or "quarter"):
                return new Num(1, NumSort.Whole, at, at + 1);
            case "couple" or "pair":
                return new Num(2, NumSort.Whole, at, next == "of" ? at + 2 : at + 1);
            case "dozen":
                return new Num(12, NumSort.Whole, at, at + 1);
            case "few" or "several" or "handful":
                return new Num(0, NumSort.Vague, at, at + 1);
            case "thirtieth":
                return new Num(30, NumSort.Ordinal, at, at + 1);
            case "twenty" or "thirty" when Order.TryGetValue(next, out int day) && day < 10 && (word == "twenty" ? next != "second" || Word(tokens, at + 2) is "" or "of" : day == 1):
                return new Num((word == "twenty" ? 20 : 30) + day, NumSort.Ordinal, at, at + 2);
            case "half" or "quarter" when StartsSize(tokens, at + 1):
                return new Num(word == "half" ? 0.5m : 0.25m, NumSort.Fraction, at, at + 1);
            case "oh" or "o" or "nought" or "naught" or "nil" when next == "point" && Point(tokens, at + 1) is { } below:
                return below with { From = at };
            case "oh" or "o" or "nought" or "naught" or "nil":
                return Beside(tokens, at) ? new Num(0, NumSort.Whole, at, at + 1) : null;
        }

        if (Order.TryGetValue(word, out int nth))
            return new Num(nth, NumSort.Ordinal, at, at + 1);
        if (word == "one" && (IsPronoun(tokens, at) || next is "side" or "way" or "end" or "edge" or "go" or "piece" or "time" or "day"))
            return null;
        return Group(tokens, at);
    }

    /// <summary>"the long one", "this one": a thing, not a number.</summary>
    private static bool IsPronoun(IReadOnlyList<Token> tokens, int at) =>
        at > 0 && PronounBefore.Contains(Word(tokens, at - 1)) && !(Word(tokens, at + 1) is "by" or "x" or "point" or "and" && At(tokens, at + 2) is not null && Word(tokens, at - 1) is not "the");

    private static bool StartsSize(IReadOnlyList<Token> tokens, int at) =>
        Word(tokens, at) is "inch" or "unf" or "unc" or "by" or "x" or "bsf" or "whitworth" or "bsw" or "bolt" or "bolts" or "stud" or "studs" or "nut" or "nuts" or "an" or "bsp" or "af" or "fine" or "coarse"
        || (At(tokens, at) is { Sort: NumSort.Whole, Value: >= 10 and <= 32 });

    private static bool Beside(IReadOnlyList<Token> tokens, int at) =>
        (at > 0 && (tokens[at - 1].Sort == TokenSort.Number || IsNumberWord(tokens[at - 1].Text) || tokens[at - 1].Text is "point" or "oh" or "nought"))
        || (at + 1 < tokens.Count && (Word(tokens, at + 1) == "point" || (IsNumberWord(tokens[at + 1].Text) && tokens[at].Text is "nought" or "naught")));

    private static bool IsNumberWord(string word) => Small.ContainsKey(word) || Ten.ContainsKey(word);

    private static Num? Group(IReadOnlyList<Token> tokens, int at)
    {
        string word = tokens[at].Text;
        decimal value;
        int to = at + 1;
        if (Ten.TryGetValue(word, out int ten))
        {
            value = ten;
            if (Small.TryGetValue(Word(tokens, to), out int unit) && unit is > 0 and < 10)
            {
                value += unit;
                to++;
            }
            else if (ten == 30 && Word(tokens, to) is "seconds" or "second" && at > 0)
            {
                return null;
            }
        }
        else if (Small.TryGetValue(word, out int small))
            value = small;
        else
            return null;

        if (Word(tokens, to) == "hundred")
            return Hundred(tokens, at, value, to);
        if (Word(tokens, to) == "thousand" && RealThousand.Contains(to + 1 < tokens.Count ? tokens[to + 1].Stem : ""))
            return new Num(value * 1000, NumSort.Whole, at, to + 1);
        if (Word(tokens, to) == "dozen")
            return new Num(value * 12, NumSort.Whole, at, to + 1);
        if (Word(tokens, to) == "point" && Point(tokens, to) is { } decimals)
            return new Num(value + decimals.Value, NumSort.Decimal, at, decimals.To);
        return Broken(tokens, at, value, to) ?? new Num(value, NumSort.Whole, at, to);
    }

    /// <summary>Three quarters, seven sixteenths; two and a half; 1 1/2.</summary>
    private static Num? Broken(IReadOnlyList<Token> tokens, int from, decimal value, int to)
    {
        if (Part(tokens, value, to) is { } part)
            return new Num(part.Value, NumSort.Fraction, from, part.To);
        bool figures = tokens[from].Sort == TokenSort.Number;
        if (figures && to < tokens.Count && tokens[to].Sort == TokenSort.Number && Fraction(tokens[to].Text) is { } plain && plain < 1 && !(to + 1 < tokens.Count && tokens[to + 1].Text == "-"))
            return new Num(value + plain, NumSort.Fraction, from, to + 1);
        if (to + 1 < tokens.Count && tokens[to].Text == "-" && tokens[to + 1].Sort == TokenSort.Number && Fraction(tokens[to + 1].Text) is { } dashed && dashed < 1)
            return new Num(value + dashed, NumSort.Fraction, from, to + 2);
        return AndPart(tokens, to) is { } and ? new Num(value + and.Value, NumSort.Fraction, from, and.To) : null;
    }

    /// <summary>"and a half", "and three quarters", after a number or the word inch.</summary>
    public static (decimal Value, int To)? AndPart(IReadOnlyList<Token> tokens, int at)
    {
        if (Word(tokens, at) != "and")
            return null;
        if (Word(tokens, at + 1) is "a" && Parts.TryGetValue(Word(tokens, at + 2), out int under) && Word(tokens, at + 3) is not "turn")
            return (1m / under, at + 3);
        if (Word(tokens, at + 1) is "half" && at + 2 < tokens.Count && tokens[at + 2].Stem is "liter" or "litre" or "pint" or "gallon" or "quart")
            return (0.5m, at + 2);
        if (Small.TryGetValue(Word(tokens, at + 1), out int over) && over > 0)
            return Part(tokens, over, at + 2);
        return at + 1 < tokens.Count && tokens[at + 1].Sort == TokenSort.Number && Fraction(tokens[at + 1].Text) is { } plain && plain < 1 ? (plain, at + 2) : null;
    }

    private static (decimal Value, int To)? Part(IReadOnlyList<Token> tokens, decimal over, int at)
    {
        if (over is < 1 or > 63)
            return null;
        // "two quarter twenty": two bolts, not a half.
        bool several = over > 1 && Word(tokens, at) is "half" or "quarter" && (over != 3 || Word(tokens, at) == "half" || At(tokens, at + 1) is { Sort: NumSort.Whole, Value: 20 or 28 or 26 });
        if (!several && Parts.TryGetValue(Word(tokens, at), out int under) && over < under)
            return (over / under, at + 1);
        if (Word(tokens, at) == "thirty" && Word(tokens, at + 1) is "seconds" or "second" or "secondths" && over < 32)
            return (over / 32, at + 2);
        return Word(tokens, at) == "sixty" && Word(tokens, at + 1) is "fourths" or "fourth" && over < 64 ? (over / 64, at + 2) : null;
    }

    private static Num Hundred(IReadOnlyList<Token> tokens, int from, decimal hundreds, int hundredAt)
    {
        decimal value = hundreds * 100;
        int to = hundredAt + 1;
        int rest = Word(tokens, to) == "and" ? to + 1 : to;
        return Group0(tokens, rest) is { } tail && tail.Value < 100 ? new Num(value + tail.Value, NumSort.Whole, from, tail.To) : new Num(value, NumSort.Whole, from, to);
    }

    private static Num? Group0(IReadOnlyList<Token> tokens, int at) =>
        at < tokens.Count && tokens[at].IsWord && Group(tokens, at) is { Sort: NumSort.Whole, Value: > 0 } n ? n : null;

    /// <summary>Digits after "point": one by one, or as a group (point twenty five).</summary>
    private static Num? Point(IReadOnlyList<Token> tokens, int at)
    {
        string digits = "";
        int to = at + 1;
        while (to < tokens.Count && digits.Length < 6)
        {
            string word = tokens[to].Text;
            if (tokens[to].Sort == TokenSort.Number && word.All(char.IsAsciiDigit))
                digits += word;
            else if (word is "double" && to + 1 < tokens.Count && (Word(tokens, to + 1) is "oh" or "o" or "nought" or "naught" ? 0 : Small.GetValueOrDefault(Word(tokens, to + 1), 10)) is < 10 and var twice)
            {
                digits += $"{twice}{twice}";
                to++;
            }
            else if (word is "oh" or "o" or "nought" or "naught")
                digits += "0";
            else if (Small.TryGetValue(word, out int small) && small < 10)
                digits += small.ToString(CultureInfo.InvariantCulture);
            else if (digits.Length == 0 && Group0(tokens, to) is { } group && group.Value is >= 10 and < 100)
            {
                digits += ((int)group.Value).ToString(CultureInfo.InvariantCulture);
                to = group.To;
                continue;
            }
            else
                break;
            to++;
        }

        return digits.Length == 0 ? null : new Num(decimal.Parse("0." + digits, CultureInfo.InvariantCulture), NumSort.Decimal, at, to);
    }
}
