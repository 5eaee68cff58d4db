using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>A piece between hook and engine.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Load">What it carries.</param>
/// <param name="Rating">What it may carry, or why that is not known.</param>
public sealed record GearPiece(string Name, Force Load, Outcome<Mass> Rating);

/// <summary>How far a piece is used.</summary>
/// <param name="Name">The piece.</param>
/// <param name="Load">What it carries.</param>
/// <param name="Rating">What it may carry.</param>
/// <param name="Part">Load over rating.</param>
public sealed record PieceUse(string Name, Force Load, Mass Rating, double Part);

/// <summary>How far the gear is used, most used first.</summary>
/// <param name="Pieces">Every piece.</param>
public sealed record GearUse(IReadOnlyList<PieceUse> Pieces)
{
    /// <summary>The piece that is nearest to its rating.</summary>
    public PieceUse Weakest => Pieces[0];
}

/// <summary>Gear against its load.</summary>
public static class Gear
{
    /// <summary>Every piece against its rating, the weakest first; one beyond its rating, or unfit, refuses the lift.</summary>
    /// <remarks>
    /// Formula: part = F/(9.80665·WLL). Units: N, kg. Range: one piece or more, loads 0 and above; a part above 1 is refused.
    /// Errors: those of load and table; the ratings hold their own safety. Source: definition of the working load limit, EN 818-4 and ASME B30.9.
    /// </remarks>
    public static Outcome<GearUse> Use(IReadOnlyList<GearPiece> pieces)
    {
        var check = new InputCheck().That(pieces.Count > 0, "gear", "none", "every piece from hook to engine", "List hook, legs, shackles and eyes");
        var unfit = pieces.Where(piece => !piece.Rating.Ok).SelectMany(piece => piece.Rating.Refusals.Select(why => why with { Where = $"{piece.Name}, {why.Where}" })).ToList();
        foreach (var piece in pieces)
        {
            check.NotNegative($"load on {piece.Name}", piece.Load);
            if (piece.Rating.TryGet(out var rating))
            {
                var may = Force.FromKilogramsForce(rating.Kilograms);
                check.That(piece.Load <= may, piece.Name, $"{Show(piece.Load.Newtons)} N, {Show(piece.Load / may)} of its rating", $"{Show(may.Newtons)} N at most", "Take a stronger piece");
            }
        }

        return unfit.Count == 0
            ? check.Then(() => new GearUse([.. pieces.Select(piece => new PieceUse(piece.Name, piece.Load, piece.Rating.Value, piece.Load / Force.FromKilogramsForce(piece.Rating.Value.Kilograms)))
                .OrderByDescending(use => use.Part)]))
            : Outcome.Refused<GearUse>([.. unfit, .. check.Then(() => 0).Refusals]);
    }
}
