namespace Gudgeon.Sums.Quantities;

/// <summary>Number words as they are said at the bench.</summary>
internal static class NumberWords
{
    private static readonly string[] UpToNineteen =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
        "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
    ];

    private static readonly string[] Tens = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    private static readonly Dictionary<string, int> Denominators = new()
    {
        ["half"] = 2,
        ["halves"] = 2,
        ["third"] = 3,
        ["thirds"] = 3,
        ["quarter"] = 4,
        ["quarters"] = 4,
        ["eighth"] = 8,
        ["eighths"] = 8,
        ["sixteenth"] = 16,
        ["sixteenths"] = 16,
        ["thirtysecond"] = 32,
        ["thirtyseconds"] = 32,
        ["sixtyfourth"] = 64,
        ["sixtyfourths"] = 64,
    };

    /// <summary>The denominator that a fraction word names.</summary>
    internal static bool IsFraction(string word, out int denominator) => Denominators.TryGetValue(word, out denominator);

    /// <summary>A digit said alone, "oh" included.</summary>
    internal static bool IsDigit(string word, out int digit)
    {
        digit = word is "oh" or "o" or "nought" or "naught" ? 0 : Array.IndexOf(UpToNineteen, word);
        return digit is >= 0 and <= 9;
    }

    /// <summary>Reads a whole number below a thousand from the front: "two hundred and three", "eighty six", "a couple".</summary>
    /// <returns>How many words were used; 0 when there is none.</returns>
    internal static int Whole(ReadOnlySpan<string> words, out int value)
    {
        var used = BelowHundred(words, out value);
        if (used == 0 && words.Length > 0 && words[0] is "a" or "hundred")
        {
            used = words[0] == "a" ? 1 : 0;
            value = 1;
            if (words.Length <= used || words[used] is not "hundred")
                return 0;
        }
        if (used == 0 && value == 0 || words.Length <= used || words[used] != "hundred" || value is 0 or > 9)
            return used;
        value *= 100;
        used++;
        var and = words.Length > used && words[used] == "and" ? 1 : 0;
        // "a hundred and a half" is no hundred and something: leave the "and" to the fraction.
        var rest = BelowHundred(words[(used + and)..], out var below);
        value += below;
        return rest == 0 ? used : used + and + rest;
    }

    private static int BelowHundred(ReadOnlySpan<string> words, out int value)
    {
        value = 0;
        if (words.Length == 0)
            return 0;
        if (words[0] == "nought" || words[0] == "naught")
            return 1;
        if (words[0] == "couple" || words is ["a", "couple", ..])
        {
            value = 2;
            var used = words[0] == "a" ? 2 : 1;
            return words.Length > used && words[used] == "of" ? used + 1 : used;
        }
        var small = Array.IndexOf(UpToNineteen, words[0]);
        if (small >= 0)
        {
            value = small;
            return 1;
        }
        var ten = Array.IndexOf(Tens, words[0]);
        if (ten < 0)
            return 0;
        value = (ten + 2) * 10;
        var unit = words.Length > 1 ? Array.IndexOf(UpToNineteen, words[1]) : -1;
        if (unit is < 1 or > 9)
            return 1;
        value += unit;
        return 2;
    }
}
