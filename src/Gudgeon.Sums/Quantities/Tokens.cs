namespace Gudgeon.Sums.Quantities;

internal enum TokenKind { Number, Word, Slash, Hyphen, Plus, Other }

internal readonly record struct Token(TokenKind Kind, string Text);

/// <summary>Cuts a folded text into figures, words and signs.</summary>
internal static class Tokens
{
    internal static List<Token> Cut(string folded)
    {
        var tokens = new List<Token>();
        for (var at = 0; at < folded.Length;)
        {
            var c = folded[at];
            if (c is ' ' or '·')
                at++;
            else if (char.IsAsciiDigit(c) || IsMark(c) && at + 1 < folded.Length && char.IsAsciiDigit(folded[at + 1]))
                tokens.Add(new(TokenKind.Number, Run(folded, ref at, d => char.IsAsciiDigit(d) || IsMark(d))));
            else if (IsMark(c))
                at++; // the dot of "in." or "N.m"
            else if (char.IsLetter(c) || c is '°')
                tokens.Add(new(TokenKind.Word, WordRun(folded, ref at)));
            else
                tokens.Add(new(KindOf(c), folded[at++].ToString()));
        }
        return tokens;
    }

    private static bool IsMark(char c) => c is '.' or ',';

    private static TokenKind KindOf(char c) => c switch
    {
        '/' => TokenKind.Slash,
        '-' => TokenKind.Hyphen,
        '+' => TokenKind.Plus,
        '"' or '\'' => TokenKind.Word,
        _ => TokenKind.Other,
    };

    private static string Run(string text, ref int at, Func<char, bool> belongs)
    {
        var start = at;
        while (at < text.Length && belongs(text[at]))
            at++;
        return text[start..at];
    }

    // A digit that follows letters at once belongs to the unit: cm3, in2.
    private static string WordRun(string text, ref int at)
    {
        var letters = Run(text, ref at, c => char.IsLetter(c) || c is '°');
        return letters + Run(text, ref at, char.IsAsciiDigit);
    }
}
