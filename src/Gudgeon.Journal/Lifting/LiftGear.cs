using System.Globalization;
using Gudgeon.Sums;
using Gudgeon.Sums.Lifting;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>The gear of a rig against what each piece carries.</summary>
internal static class LiftGear
{
    /// <summary>What a choke leaves when nobody looked at its angle: the least of the table.</summary>
    private static readonly Angle UnknownChoke = Angle.Zero;

    public static Outcome<GearUse> Use(RigTold rig, HungLoad hung)
    {
        var bare = rig.Legs.Select(leg => leg.Name).Append(RigGear.OnHook).Where(on => rig.Gear.All(piece => piece.On != on))
            .Select(on => new Refusal(on, "no piece of gear", "every piece that carries, with its rating", on == RigGear.OnHook ? "Add the hook, and what sits on it" : "Add its chain or sling, its shackles and its eye")).ToList();
        return bare.Count > 0 ? Outcome.Refused<GearUse>(bare) : Gear.Use([.. rig.Gear.Select(piece => Piece(piece, rig, hung)), .. rig.Bar is { } bar ? [new GearPiece("bar", All(rig, hung), Stamped(bar.RatingKg))] : Array.Empty<GearPiece>()]);
    }

    /// <summary>What hangs from the hook, the gear below it as well.</summary>
    private static Force All(RigTold rig, HungLoad hung) => hung.OnHook + Force.FromKilogramsForce(rig.GearMassKg + hung.BarMass.Kilograms);

    private static GearPiece Piece(RigGear piece, RigTold rig, HungLoad hung)
    {
        if (piece.On == RigGear.OnHook)
            return new GearPiece(piece.Name, All(rig, hung), Rating(piece, Angle.Zero, new Point3(0, 0, 1), Angle.Zero));

        var leg = hung.Legs.Single(l => l.Name == piece.On);
        return new GearPiece($"{piece.Name} of {piece.On}", leg.Most, Rating(piece, leg.MostToVertical, leg.Pull, leg.Wider));
    }

    /// <summary>What one piece in one leg may carry. A leg's own pull is held against the rating of a single leg.</summary>
    private static Outcome<Mass> Rating(RigGear piece, Angle toVertical, Point3 pull, Angle wider) => piece.Sort switch
    {
        "chain" => Diameter(piece).Then(size => GearTables.ChainSling(Mark(piece.Grade), size, 1, toVertical)),
        "choked chain" => Diameter(piece).Then(size => GearTables.ChokedChain(Mark(piece.Grade), size, toVertical, Choke(piece))),
        "choked wire rope" => Diameter(piece).Then(size => GearTables.ChokedRope(size, toVertical, Choke(piece))),
        "wire rope" => Diameter(piece).Then(size => GearTables.WireRopeSling(size, 1, toVertical)),
        "textile sling" => Stamped(piece.RatingKg).Then(rating => GearTables.TextileSling(rating, TextileLay.Straight, toVertical)),
        "choked textile sling" => Stamped(piece.RatingKg).Then(rating => GearTables.TextileSling(rating, TextileLay.Choked, toVertical))
            .Then(rating => GearTables.ChokeFactor(Choke(piece)).Then(factor => Outcome.Of(rating * factor))),
        "eye bolt" => GearTables.EyeBolt(Pattern(piece.Grade), piece.Size.Trim().ToUpperInvariant(), Mass.FromKilograms(piece.RatingKg ?? 0), OffShank(piece.Shank, pull) + wider),
        "shackle" => GearTables.Shackle(Mass.FromKilograms(piece.RatingKg ?? 0), Angle.FromDegrees(piece.OffLineDeg ?? 0)),
        _ => Stamped(piece.RatingKg),
    };

    private static Angle Choke(RigGear piece) => piece.OffLineDeg is { } choke ? Angle.FromDegrees(choke) : UnknownChoke;

    private static Outcome<Mass> Stamped(double? onIt) => onIt is { } rating ? Outcome.Of(Mass.FromKilograms(rating))
        : Outcome.Refused<Mass>(new Refusal("rating", "none that can be read", "a rating on the piece", "Leave it out: unfit for lifting until its rating can be read"));

    private static Outcome<Length> Diameter(RigGear piece) =>
        double.TryParse(piece.Size.Replace("mm", "", StringComparison.OrdinalIgnoreCase).Replace(',', '.').Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var size) && size is > 0 and < 1000
            ? Outcome.Of(Length.FromMillimetres(size))
            : Outcome.Refused<Length>(new Refusal("size", piece.Size.Length == 0 ? "none" : $"\"{piece.Size}\"", "its diameter in mm", "Measure it; unfit for lifting until it is known"));

    private static string Mark(string grade) => grade.Replace("grade", "", StringComparison.OrdinalIgnoreCase).Trim();

    private static EyeBoltPattern Pattern(string grade) => grade.Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant() switch
    {
        "DIN580" => EyeBoltPattern.Din580,
        "BS4278" or "AS2317" or "AS2317.1" => EyeBoltPattern.Bs4278,
        "MACHINERY" => EyeBoltPattern.Machinery,
        _ => EyeBoltPattern.Unknown,
    };

    private static Angle OffShank(string shank, Point3 pull)
    {
        var along = shank switch { "front" => pull.X, "rear" => -pull.X, "left" => pull.Y, "right" => -pull.Y, _ => pull.Z };
        return Angle.FromRadians(Math.Acos(Math.Clamp(along / pull.Norm, -1, 1)));
    }
}
