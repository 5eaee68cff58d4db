using System.Collections.Concurrent;
using System.Globalization;

namespace Gudgeon.Engine.Building;

/// <summary>
/// The "if" of a table row: <c>*</c> always; <c>key=a/b</c>; <c>key!=a/b</c>; <c>key&gt;0</c>; <c>opt:x</c>; a comma means and.
/// </summary>
internal static class Condition
{
    private enum Sign
    {
        Is,
        IsNot,
        More,
        Has,
    }

    private sealed record Clause(string Key, Sign Sign, string[] Values);

    /// <summary>The tables say the same few conditions over and over, for every engine that is built.</summary>
    private static readonly ConcurrentDictionary<string, Clause[]> Read = new();

    /// <param name="value">An answer or figure by key; null for a key that nobody knows, which is a fault of the table.</param>
    public static bool Holds(string text, Func<string, string?> value) =>
        text == "*" || Array.TrueForAll(Read.GetOrAdd(text, Clauses), clause => One(clause, value));

    private static Clause[] Clauses(string text) => [.. text.Split(',').Select(part => Parse(part.Trim()))];

    private static Clause Parse(string part)
    {
        if (part.StartsWith("opt:", StringComparison.Ordinal))
            return new Clause("opt", Sign.Has, [part[4..]]);
        if (part.Split("!=") is [var not, var none])
            return new Clause(not, Sign.IsNot, none.Split('/'));
        if (part.Split('=') is [var key, var any])
            return new Clause(key, Sign.Is, any.Split('/'));
        if (part.Split('>') is [var more, var than])
            return new Clause(more, Sign.More, [than]);
        throw new FormatException($"'{part}' is not a condition");
    }

    private static bool One(Clause clause, Func<string, string?> value)
    {
        var met = value(clause.Key) ?? throw new FormatException($"no answer or figure '{clause.Key}'");
        return clause.Sign switch
        {
            Sign.Is => clause.Values.Contains(met),
            Sign.IsNot => !clause.Values.Contains(met),
            Sign.Has => met.Split(',').Contains(clause.Values[0]),
            _ => Number(met) > Number(clause.Values[0]),
        };
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
