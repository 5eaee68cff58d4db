using System.Globalization;
using System.Text;

namespace Gudgeon.Capture;

/// <summary>
/// Cuts what was said into words, figures and marks. Every character but white space lands in a token or is a mark
/// that carries no meaning here (quotes, hyphens between words), so that what was not understood can be shown.
/// </summary>
internal static class Tokeniser
{
    private static readonly Dictionary<char, string> Signs = new()
    {
        ['×'] = "x",
        ['*'] = "x",
        ['°'] = "degree",
        ['%'] = "percent",
        ['+'] = "plus",
        ['&'] = "and",
        ['#'] = "number",
        ['='] = "is",
        ['@'] = "at",
        ['Ø'] = "diameter",
        ['⌀'] = "diameter",
        ['"'] = "inch",
        ['”'] = "inch",
        ['″'] = "inch",
        ['\u2212'] = "minus",
    };

    private static readonly Dictionary<char, string> Fractions = new()
    {
        ['½'] = "1/2",
        ['¼'] = "1/4",
        ['¾'] = "3/4",
        ['⅛'] = "1/8",
        ['⅜'] = "3/8",
        ['⅝'] = "5/8",
        ['⅞'] = "7/8",
    };

    /// <summary>What was said, cut and set right: see <see cref="Speech"/>.</summary>
    public static List<Token> Cut(string text) => Speech.Settle(Plain(text));

    /// <summary>The text cut as it stands, for the words of tables.</summary>
    public static List<Token> Plain(string text)
    {
        var tokens = new List<Token>();
        int at = 0;
        while (at < text.Length)
        {
            char c = text[at];
            if (char.IsWhiteSpace(c))
            {
                if (c == '\n')
                    Mark(tokens, TokenSort.Stop, text, at, 1);
                at++;
            }
            else if (char.IsAsciiDigit(c) || (c == '.' && Digit(text, at + 1) && !(at > 0 && char.IsLetterOrDigit(text[at - 1]))))
                at = Figure(tokens, text, at);
            else if (char.IsLetter(c))
                at = Word(tokens, text, at);
            else
                at = Sign(tokens, text, at);
        }

        return tokens;
    }

    private static bool Digit(string text, int at) => at >= 0 && at < text.Length && char.IsAsciiDigit(text[at]);

    private static bool Letter(string text, int at) => at < text.Length && char.IsLetter(text[at]);

    private static int Figure(List<Token> tokens, string text, int from)
    {
        int at = from;
        while (Digit(text, at) || (at < text.Length && text[at] is '.' or ',' && Digit(text, at + 1)))
            at++;
        if (at < text.Length && text[at] == '/' && Digit(text, at + 1))
        {
            at++;
            while (Digit(text, at))
                at++;
        }

        // 1st, 2nd, 3rd, 4th are one word; 3/8ths is 3/8.
        int tail = at;
        while (Letter(text, tail))
            tail++;
        bool ordinal = text.AsSpan(at, tail - at) is "st" or "nd" or "rd" or "th";
        bool broken = text.AsSpan(from, at - from).Contains('/');
        int end = ordinal && !broken ? tail : at;
        string figure = text[from..end].Replace(',', '.');
        if (broken && text.AsSpan(at, tail - at) is "th" or "ths" or "rds" or "nds")
            end = tail;
        Push(tokens, figure, TokenSort.Number, text, from, end - from);
        return end;
    }

    private static int Word(List<Token> tokens, string text, int from)
    {
        int at = from;
        while (Letter(text, at) || (at < text.Length && IsApostrophe(text[at]) && Letter(text, at + 1)))
            at++;
        string word = text[from..at].Normalize(NormalizationForm.FormKC).ToLower(CultureInfo.InvariantCulture).Replace('’', '\'');
        int cut = word.IndexOf('\'', StringComparison.Ordinal);
        if (word is "no" or "nos" && at < text.Length && text[at] == '.' && (Digit(text, at + 1) || (at + 2 < text.Length && (Digit(text, at + 2) || (text[at + 2] is 'M' && Digit(text, at + 3))))))
        {
            Push(tokens, "number", TokenSort.Word, text, from, at + 1 - from);
            return at + 1;
        }

        if (cut > 0 && word[cut..] is "'s" or "'ve" or "'re" or "'ll" or "'d" or "'m")
        {
            Push(tokens, word[..cut], TokenSort.Word, text, from, cut);
            Push(tokens, word[cut..], TokenSort.Word, text, from + cut, word.Length - cut);
        }
        else
            Push(tokens, word == "decimal" ? "point" : word.Replace("'", "", StringComparison.Ordinal), TokenSort.Word, text, from, at - from);

        return at;
    }

    private static bool IsApostrophe(char c) => c is '\'' or '’';

    private static int Sign(List<Token> tokens, string text, int at)
    {
        char c = text[at];
        bool after = at > 0 && char.IsLetterOrDigit(text[at - 1]);
        if (Fractions.TryGetValue(c, out string? fraction))
            Push(tokens, fraction, TokenSort.Number, text, at, 1);
        else if (c is '"' or '”' or '″' && !(at > 0 && (char.IsAsciiDigit(text[at - 1]) || Fractions.ContainsKey(text[at - 1]))))
            return at + 1;
        else if (Signs.TryGetValue(c, out string? sign))
            Push(tokens, sign, TokenSort.Word, text, at, 1);
        else if (c == '-' && after && Digit(text, at - 1) && Digit(text, at + 1))
            Push(tokens, "-", TokenSort.Other, text, at, 1);
        else if (c == '-' && !after && Digit(text, at + 1))
            Push(tokens, "minus", TokenSort.Word, text, at, 1);
        else if (c == '-' && (after || char.IsLetterOrDigit(text.ElementAtOrDefault(at + 1))))
            return at + 1;
        else if (c is ',' or ':' or '(' or ')' or '-' or '–' or '—' or '…' or '[' or ']')
            Mark(tokens, TokenSort.Comma, text, at, 1);
        else if (c is '.' or ';' or '!')
            Mark(tokens, TokenSort.Stop, text, at, 1);
        else if (c == '?')
            Mark(tokens, TokenSort.Question, text, at, 1);
        else if (IsApostrophe(c) && Digit(text, at - 1) && at + 1 < text.Length && text[at + 1] is 's' && !Letter(text, at + 2))
        {
            // "3's" is said as "three's".
            Push(tokens, "'s", TokenSort.Word, text, at, 2);
            return at + 2;
        }
        else if (c is '\'' or '’' or '‘' or '“' or '"')
            return at + 1;
        else
        {
            int length = char.IsHighSurrogate(c) && at + 1 < text.Length ? 2 : 1;
            Push(tokens, text.Substring(at, length), TokenSort.Other, text, at, length);
            return at + length;
        }

        return at + 1;
    }

    private static void Mark(List<Token> tokens, TokenSort sort, string text, int at, int length) =>
        tokens.Add(new Token(text.Substring(at, length), "", sort, at, length, false));

    private static void Push(List<Token> tokens, string word, TokenSort sort, string text, int at, int length) =>
        tokens.Add(new Token(word, sort == TokenSort.Word ? Token.StemOf(word) : word, sort, at, length, at > 0 && !char.IsWhiteSpace(text[at - 1])));
}
