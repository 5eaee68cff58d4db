using Gudgeon.Sums;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>Reads a row of bolt lengths as people type them.</summary>
public static class BoltText
{
    /// <summary>Lengths in mm, parted by semicolons or lines, else by blanks; a bare figure is in the book's units.</summary>
    public static Outcome<IReadOnlyList<double>> Lengths(string text, BookUnits units)
    {
        char[] parting = text.IndexOfAny([';', '\n']) >= 0 ? [';', '\n', '\r'] : [' '];
        var read = text.Split(parting, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select((word, i) => SpotText.Read(word, "mm", units, null, $"length {i + 1}")).ToArray();
        var refusals = read.SelectMany(r => r.Refusals).ToArray();
        return refusals.Length > 0 ? Outcome.Refused<IReadOnlyList<double>>(refusals) : Outcome.Of<IReadOnlyList<double>>([.. read.Select(r => r.Value)]);
    }
}
