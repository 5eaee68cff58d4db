using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>The workings of a lift, each with its caution.</summary>
public static class LiftWorkings
{
    /// <summary>How the pull of each leg was reached.</summary>
    public static IReadOnlyList<Working> Legs(HangingLoad load, IReadOnlyList<Leg> legs, Hanging hanging) =>
    [
        .. legs.Zip(hanging.Legs, (leg, carried) => Workings.Of("lifting.hang", $"largest pull of {leg.Name}",
            [
                new("m", "mass with its spread", (load.Mass + load.MassSpread).Kilograms, "kg"),
                new("Gx", "centre of mass to the front", load.Centre.X, "mm", load.CentreSpread.X / 2),
                new("Gy", "centre of mass to the left", load.Centre.Y, "mm", load.CentreSpread.Y / 2),
                new("Gz", "centre of mass up", load.Centre.Z, "mm", load.CentreSpread.Z / 2),
                new("Ax", "lifting point to the front", leg.LiftingPoint.X, "mm"),
                new("Ay", "lifting point to the left", leg.LiftingPoint.Y, "mm"),
                new("Az", "lifting point up", leg.LiftingPoint.Z, "mm"),
                new("L", "leg", leg.Length.Millimetres, "mm"),
                new("β", "largest angle to the vertical", carried.MostToVertical.Degrees, "°"),
            ],
            new("T", "pull", carried.Most.Newtons, "N"), LiftingCautions.Hanging)),
    ];

    /// <summary>How the use of each piece of gear was reached.</summary>
    public static IReadOnlyList<Working> Pieces(GearUse gear) =>
    [
        .. gear.Pieces.Select(piece => Workings.Of("lifting.use", $"use of {piece.Name}",
            [new("F", "load", piece.Load.Newtons, "N"), new("WLL", "rating", piece.Rating.Kilograms, "kg")], new("part", "load over rating", piece.Part, "1"), LiftingCautions.Gear)),
    ];

    /// <summary>How the standing on each wheel line was reached.</summary>
    public static IReadOnlyList<Working> WheelLines(StandingCrane crane, Standing standing) =>
    [
        .. standing.Lines.Select(line => Workings.Of("lifting.stands", $"standing on the line {line.Line}",
            [
                new("w", "mass of the crane", crane.CraneMass.Kilograms, "kg"), new("m", "load", crane.Load.Kilograms, "kg"),
                new("x", "end of the boom forward", crane.Tip.X, "mm"), new("z", "end of the boom up", crane.Tip.Z, "mm"),
                new("δ", "swing", crane.Swing.Degrees, "°"), new("σ", "slope", crane.Slope.Degrees, "°"),
                new("hold", "moment that holds", line.Holding.NewtonMetres, "N·m"), new("tip", "moment that tips", line.Tipping.NewtonMetres, "N·m"),
            ],
            new("factor", "holding over tipping", line.Factor, "1"), LiftingCautions.Crane)),
    ];

    /// <summary>How the stand's moment was reached.</summary>
    public static Working Stand(MountedEngine engine, StandLoad stand) => Workings.Of("lifting.mount", "moment at the post of the stand",
        [
            new("m", "mass with its spread", (engine.Load.Mass + engine.Load.MassSpread).Kilograms, "kg"),
            new("x", "centre out from the face, with its spread", engine.Load.Centre.X + engine.Load.CentreSpread.X, "mm"),
            new("a", "face to post", engine.FaceToPost.Millimetres, "mm"),
        ],
        new("M", "moment", stand.PostMoment.NewtonMetres, "N·m"), LiftingCautions.Stand);
}
