using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>
/// The short code on a label: three signs and a check sign, written by hand as well as printed. Signs that are taken for one another when
/// written with a marker (0 O D Q, 1 I L, 2 Z, 5 S, 6 G, 8 B, U V) are left out. The nineteen that remain are a prime number of signs, so
/// one wrong sign and two neighbours changed over are always found.
/// </summary>
public static class LabelCode
{
    /// <summary>The signs, in the order of their worth from 0.</summary>
    public const string Signs = "3479ACEFHJKMNPRTWXY";

    public const int Length = 4;

    /// <summary>How many codes there are.</summary>
    public static readonly int Count = Signs.Length * Signs.Length * Signs.Length;

    /// <summary>No divisor in common with <see cref="Count"/>: codes of labels made one after the other do not look alike.</summary>
    private const int Stride = 2531;

    /// <summary>The code of a number from 0; numbers beyond <see cref="Count"/> come round again.</summary>
    public static string Of(int number)
    {
        var n = (int)((long)number * Stride % Count);
        int[] worth = [n / (Signs.Length * Signs.Length), n / Signs.Length % Signs.Length, n % Signs.Length];
        return new string([.. worth.Select(w => Signs[w]), Signs[CheckOf(worth)]]);
    }

    /// <summary>Reads a code as somebody typed it: either case, blanks and dashes passed over.</summary>
    public static Outcome<string> Read(string typed)
    {
        var code = new string([.. typed.ToUpperInvariant().Where(c => c is not (' ' or '-' or '.'))]);
        var strange = code.FirstOrDefault(c => !Signs.Contains(c));
        if (code.Length != Length || strange != default)
        {
            return Outcome.Refused<string>(new Refusal("label code", $"\"{typed}\"", $"{Length} signs out of {Signs}", strange == default ? "Look at the label again" : $"Look at \"{strange}\" again: no code has it"));
        }

        var worth = code.Select(c => Signs.IndexOf(c, StringComparison.Ordinal)).ToArray();
        return CheckOf(worth[..^1]) == worth[^1]
            ? Outcome.Of(code)
            : Outcome.Refused<string>(new Refusal("label code", $"\"{code}\", whose last sign does not fit the others", "a code as printed", "Look at the label again: one sign is read wrong, or two have changed places"));
    }

    /// <summary>Sum of place times worth, modulo nineteen.</summary>
    private static int CheckOf(IReadOnlyList<int> worth) => worth.Select((w, i) => w * (i + 2)).Sum() % Signs.Length;
}
