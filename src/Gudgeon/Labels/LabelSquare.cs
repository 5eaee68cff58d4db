using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Labels;

/// <summary>The square on a label: the address that answers what it is on.</summary>
public static class LabelSquare
{
    private const string Path = "/K/";

    /// <summary>
    /// What the square holds. In capitals throughout, for which a QR code (ISO/IEC 18004) needs five and a half bits a sign in place of eight: the
    /// squares of a small label stay coarse enough for a phone.
    /// </summary>
    public static string Text(string address, string code) => $"{address}{Path}{code}".ToUpperInvariant();

    /// <summary>The code in the words of a square, whatever the laptop's address was when the label was printed; or in a code alone.</summary>
    public static Outcome<string> CodeIn(string? text)
    {
        if (text is null)
            return Refuse("no square that can be read");

        var start = text.LastIndexOf(Path, StringComparison.OrdinalIgnoreCase);
        return LabelCode.Read(start < 0 ? text : text[(start + Path.Length)..]) is { Ok: true } read ? read : Refuse($"a square that is no label's: \"{(text.Length <= 60 ? text : text[..60] + "…")}\"");
    }

    private static Outcome<string> Refuse(string met) =>
        Outcome.Refused<string>(new Refusal("photo of a label", met, "the square of a label of this workshop, sharp and whole", "Hold it nearer, flat and in the light, or type the code beside it"));
}
