using System.Text;

namespace Gudgeon.Sums.Quantities;

/// <summary>Brings the many ways to write one sign to one way, so that the readers after it see few.</summary>
internal static class TextFold
{
    // A general compatibility fold would turn 1½ into 11/2; fractions are opened here with a space before them.
    internal static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length + 8);
        foreach (var c in text)
            folded.Append(One(c));
        return folded.ToString().Trim();
    }

    private static string One(char c) => c switch
    {
        'µ' or 'μ' => "u",
        '−' or '–' or '—' or '‐' or '‑' or '‒' or '﹣' => "-",
        '\u00A0' or '\u2007' or '\u2009' or '\u200A' or '\u202F' or '\t' or '\r' or '\n' => " ",
        '″' or '”' or '“' or '„' => "\"",
        '′' or '’' or '‘' => "'",
        '⁄' or '∕' => "/",
        'º' or '˚' => "°",
        '℃' => "°c",
        '℉' => "°f",
        '㎜' => "mm",
        '⋅' or '∙' or '•' or '*' => "·",
        '²' => "2",
        '³' => "3",
        '½' => " 1/2",
        '¼' => " 1/4",
        '¾' => " 3/4",
        '⅓' => " 1/3",
        '⅔' => " 2/3",
        '⅛' => " 1/8",
        '⅜' => " 3/8",
        '⅝' => " 5/8",
        '⅞' => " 7/8",
        _ => char.ToLowerInvariant(c).ToString(),
    };
}
