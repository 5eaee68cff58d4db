using System.Globalization;

namespace Gudgeon.Engine.Building;

/// <summary>A count from the tables: sure when both ends are the same, else a guess between them.</summary>
internal readonly record struct CountRange(double Low, double High, bool Estimate)
{
    public int Fewest => (int)Math.Floor(Low + 1e-9);
    public int Most => (int)Math.Ceiling(High - 1e-9);
}

/// <summary>
/// Counts are written as arithmetic on the figures of the engine: <c>2*(k+1)..3*(k+1)</c>, <c>~2*h+4</c>, <c>n*v?</c>.
/// Plus, minus, times, divide and brackets; nothing else.
/// </summary>
internal static class Formula
{
    public static CountRange Count(string text, IReadOnlyDictionary<string, double> figures)
    {
        var estimate = text.StartsWith('~') || text.EndsWith('?') || text.Contains("..", StringComparison.Ordinal);
        var bare = text.TrimStart('~').TrimEnd('?');
        var ends = bare.Split("..");
        var low = Value(ends[0], figures);
        var high = ends.Length == 1 ? low : Value(ends[1], figures);
        return new CountRange(Math.Min(low, high), Math.Max(low, high), estimate);
    }

    public static double Value(string text, IReadOnlyDictionary<string, double> figures)
    {
        var at = 0;
        var value = Sum(text, ref at, figures);
        return at == text.Length ? value : throw new FormatException($"'{text}' is not a formula: '{text[at]}' at {at + 1}");
    }

    private static double Sum(string text, ref int at, IReadOnlyDictionary<string, double> figures)
    {
        var value = Product(text, ref at, figures);
        while (at < text.Length && text[at] is '+' or '-')
            value = text[at++] == '+' ? value + Product(text, ref at, figures) : value - Product(text, ref at, figures);
        return value;
    }

    private static double Product(string text, ref int at, IReadOnlyDictionary<string, double> figures)
    {
        var value = Term(text, ref at, figures);
        while (at < text.Length && text[at] is '*' or '/')
            value = text[at++] == '*' ? value * Term(text, ref at, figures) : value / Term(text, ref at, figures);
        return value;
    }

    private static double Term(string text, ref int at, IReadOnlyDictionary<string, double> figures)
    {
        if (at < text.Length && text[at] == '(')
        {
            at++;
            var inner = Sum(text, ref at, figures);
            if (at >= text.Length || text[at++] != ')')
                throw new FormatException($"'{text}' has an open bracket");
            return inner;
        }

        var start = at;
        while (at < text.Length && (char.IsAsciiLetterOrDigit(text[at]) || text[at] == '.'))
            at++;
        var word = text[start..at];
        if (double.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
            return number;
        return figures.TryGetValue(word, out var figure)
            ? figure
            : throw new FormatException($"'{text}' is not a formula: no figure '{word}'");
    }
}
