using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fits;

/// <summary>A hole and a shaft with their limits.</summary>
/// <param name="Hole">Limits of the hole.</param>
/// <param name="Shaft">Limits of the shaft.</param>
public sealed record Fit((Length Lower, Length Upper) Hole, (Length Lower, Length Upper) Shaft)
{
    /// <summary>Smallest hole less largest shaft; below zero is interference.</summary>
    public Length SmallestClearance => Hole.Lower - Shaft.Upper;

    /// <summary>Largest hole less smallest shaft; below zero they always bind.</summary>
    public Length LargestClearance => Hole.Upper - Shaft.Lower;

    /// <summary>Limits of the hole, mm.</summary>
    public Limits HoleLimits => Limits.Between(Hole.Lower.Millimetres, Hole.Upper.Millimetres);

    /// <summary>Limits of the shaft, mm.</summary>
    public Limits ShaftLimits => Limits.Between(Shaft.Lower.Millimetres, Shaft.Upper.Millimetres);

    /// <summary>A fit by ISO 286.</summary>
    /// <param name="nominal">Nominal size, above zero to 120 mm.</param>
    /// <param name="classes">Hole, stroke, shaft: <c>H7/g6</c>.</param>
    /// <returns>The fit.</returns>
    public static Fit Of(Length nominal, string classes)
    {
        ArgumentNullException.ThrowIfNull(classes);
        if (Parts(classes) is not var (hole, shaft))
            throw new ArgumentException($"The fit \"{classes}\" cannot be read; expected a hole and a shaft such as H7/g6. Type it again.", nameof(classes));
        return new(Sizes(nominal, Iso286.Of(nominal, hole)), Sizes(nominal, Iso286.Of(nominal, shaft)));
    }

    /// <summary>A fit by ISO 286 that somebody typed.</summary>
    /// <param name="nominal">Nominal size.</param>
    /// <param name="classes">Hole, stroke, shaft: <c>H7/g6</c>.</param>
    /// <param name="where">The place, for messages.</param>
    /// <returns>The fit, or why there is none: both classes are looked at.</returns>
    public static Outcome<Fit> Find(Length nominal, string classes, string where)
    {
        ArgumentNullException.ThrowIfNull(classes);
        if (Parts(classes.Trim()) is not var (hole, shaft))
            return Outcome.Refused<Fit>(new Refusal(where, classes.Trim().Length == 0 ? "nothing" : $"\"{classes.Trim()}\"", "a hole and a shaft such as H7/g6", "Type the hole in a capital letter, a stroke, the shaft in a small one"));
        var (ofHole, ofShaft) = (Iso286.Find(nominal, hole, $"{where}, hole"), Iso286.Find(nominal, shaft, $"{where}, shaft"));
        return ofHole.TryGet(out var h) && ofShaft.TryGet(out var s)
            ? Outcome.Of(new Fit(Sizes(nominal, h), Sizes(nominal, s)))
            : Outcome.Refused<Fit>([.. ofHole.Refusals, .. ofShaft.Refusals]);
    }

    private static (string Hole, string Shaft)? Parts(string classes) =>
        classes.Split('/') is [[>= 'A' and <= 'Z', ..] hole, [>= 'a' and <= 'z', ..] shaft] ? (hole, shaft) : null;

    private static (Length, Length) Sizes(Length nominal, Deviations deviations) => (nominal + deviations.Lower, nominal + deviations.Upper);
}
