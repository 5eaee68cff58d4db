using System.Globalization;

namespace Gudgeon.Engine.Building;

/// <summary>
/// The "if" of a table row: <c>*</c> always; <c>key=a/b</c>; <c>key!=a/b</c>; <c>key&gt;0</c>; <c>opt:x</c>; a comma means and.
/// </summary>
internal static class Condition
{
    /// <param name="value">An answer or figure by key; null for a key that nobody knows, which is a fault of the table.</param>
    public static bool Holds(string text, Func<string, string?> value) =>
        text == "*" || text.Split(',').All(part => One(part.Trim(), value));

    private static bool One(string part, Func<string, string?> value)
    {
        if (part.StartsWith("opt:", StringComparison.Ordinal))
            return Known("opt", value).Split(',').Contains(part[4..]);
        if (part.Split("!=") is [var not, var none])
            return !none.Split('/').Contains(Known(not, value));
        if (part.Split('=') is [var key, var any])
            return any.Split('/').Contains(Known(key, value));
        if (part.Split('>') is [var more, var than])
            return Number(Known(more, value)) > Number(than);
        throw new FormatException($"'{part}' is not a condition");
    }

    private static string Known(string key, Func<string, string?> value) =>
        value(key) ?? throw new FormatException($"no answer or figure '{key}'");

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
