using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Lifting;

/// <summary>Which pattern an eye bolt is made and stamped to; the patterns differ strongly, so it is asked and never assumed.</summary>
public enum EyeBoltPattern
{
    /// <summary>Nobody knows.</summary>
    Unknown,

    /// <summary>Collar eye bolt, DIN 580.</summary>
    Din580,

    /// <summary>Collar eye bolt, BS 4278 or AS 2317.1.</summary>
    Bs4278,

    /// <summary>Machinery eye bolt as American suppliers list it.</summary>
    Machinery,
}

/// <summary>How a textile sling is laid.</summary>
public enum TextileLay
{
    /// <summary>Straight up.</summary>
    Straight,

    /// <summary>Choked round the load.</summary>
    Choked,

    /// <summary>As a basket, both ends on the hook.</summary>
    Basket,

    /// <summary>Two slings from one hook.</summary>
    TwoLegs,

    /// <summary>Three or four slings from one hook.</summary>
    ThreeOrFourLegs,
}

/// <summary>What lifting gear may carry. A piece whose grade or rating cannot be read is unfit; none is given a guess.</summary>
public static class GearTables
{
    // One leg; two legs to 45°, to 60°; three or four legs to 45°, to 60°; endless, choked.
    private static readonly Dictionary<int, double[]> GradeEightTonnes = new()
    {
        [6] = [1.12, 1.60, 1.12, 2.36, 1.70, 1.80],
        [7] = [1.50, 2.12, 1.50, 3.15, 2.24, 2.50],
        [8] = [2.00, 2.80, 2.00, 4.25, 3.00, 3.15],
        [10] = [3.15, 4.25, 3.15, 6.70, 4.75, 5.00],
        [13] = [5.30, 7.50, 5.30, 11.20, 8.00, 8.50],
    };

    private static readonly Dictionary<int, double[]> WireTonnes = new()
    {
        [8] = [0.750, 1.05, 0.750, 1.55, 1.10, 1.20],
        [10] = [1.15, 1.60, 1.15, 2.40, 1.70, 1.85],
        [12] = [1.70, 2.30, 1.70, 3.55, 2.50, 2.70],
    };

    private static readonly Dictionary<string, (double Axial, double AtSide)> Din580Kilograms = new()
    {
        ["M8"] = (140, 100),
        ["M10"] = (230, 170),
        ["M12"] = (340, 240),
        ["M16"] = (700, 500),
        ["M20"] = (1200, 860),
        ["M24"] = (1800, 1290),
        ["M30"] = (3200, 2300),
    };

    private static readonly Dictionary<string, double> Bs4278Tonnes = new()
    {
        ["M8"] = 0.15,
        ["M10"] = 0.25,
        ["M12"] = 0.40,
        ["M16"] = 0.80,
        ["M20"] = 1.60,
        ["M24"] = 2.50,
    };

    /// <summary>Rating of a chain sling of grade 8.</summary>
    /// <remarks>
    /// Formula: table by link diameter, legs and angle to the vertical (to 45°, to 60°). Units: mm, kg.
    /// Range: 6, 7, 8, 10, 13 mm; one to four legs; 60° at most; any other grade, or none that can be read, is unfit. Errors: as printed, next lower preferred number.
    /// Source: EN 818-4 table as suppliers reproduce it.
    /// </remarks>
    public static Outcome<Mass> ChainSling(string grade, Length link, int legs, Angle toVertical) => Slings("chain", GradeEightTonnes, link, legs, toVertical, Graded(grade));

    /// <summary>Rating of one leg of grade 8 chain choked round the load.</summary>
    /// <remarks>
    /// Formula: the lower of 0.8 × one leg and half of the endless sling choked, × <see cref="ChokeFactor"/>. Units: mm, degrees, kg. Range: as <see cref="ChainSling"/>; choke 0 to 180°.
    /// Errors: as printed. Source: EN 818-4 as suppliers reproduce it, its choke factor 0.8 as the endless column of the table has it; the angle of the choke by ASME B30.9: together this book's own.
    /// </remarks>
    public static Outcome<Mass> ChokedChain(string grade, Length link, Angle toVertical, Angle choke) =>
        Choked(Slings("chain", GradeEightTonnes, link, 1, toVertical, Graded(grade)), GradeEightTonnes, link, choke);

    /// <summary>Rating of one leg of wire rope choked round the load.</summary>
    /// <remarks>
    /// Formula: the lower of 0.75 × one leg and half of the endless sling choked, × <see cref="ChokeFactor"/>. Units: mm, degrees, kg. Range: as <see cref="WireRopeSling"/>; choke 0 to 180°.
    /// Errors: as printed. Source: EN 13414-1:2003, table 4; 0.75 by a training page on wire rope; the angle of the choke by ASME B30.9: together this book's own.
    /// </remarks>
    public static Outcome<Mass> ChokedRope(Length rope, Angle toVertical, Angle choke) =>
        Choked(Slings("rope", WireTonnes, rope, 1, toVertical, new InputCheck()), WireTonnes, rope, choke, 0.75);

    private static InputCheck Graded(string grade) =>
        new InputCheck().That(grade.Trim() is "8" or "80", "grade of the chain", grade.Length == 0 ? "none" : grade, "8 or 80, as the tag says",
            "Leave this chain out: unfit for lifting until its grade can be read");

    /// <summary>Rating of a wire rope sling with pressed ferrules and steel core.</summary>
    /// <remarks>
    /// Formula: table by rope diameter, legs and angle to the vertical. Units: mm, kg. Range: 8, 10, 12 mm; one to four legs; 60° at most. Errors: as printed.
    /// Source: EN 13414-1:2003, table 4.
    /// </remarks>
    public static Outcome<Mass> WireRopeSling(Length rope, int legs, Angle toVertical) => Slings("rope", WireTonnes, rope, legs, toVertical, new InputCheck());

    /// <summary>Rating of a textile sling as it is laid.</summary>
    /// <remarks>
    /// Formula: tag's straight rating × 1, 0.8 choked, 2 basket upright, 1.4 basket to 45°, 1 to 60°; two legs 1.4, 1; three or four 2.1, 1.5. Units: kg.
    /// Range: rating above 0; 60° at most. Errors: as printed. Source: EN 1492-1 and -2 mode factors as a sling's user manual gives them.
    /// </remarks>
    public static Outcome<Mass> TextileSling(Mass straight, TextileLay lay, Angle toVertical) => Bevel(new InputCheck().Positive("rating on the tag", straight), toVertical)
        .Then(() => straight * lay switch
        {
            TextileLay.Straight => 1,
            TextileLay.Choked => 0.8,
            TextileLay.Basket => toVertical.Degrees <= 1 ? 2 : Steep(toVertical) ? 1.4 : 1,
            TextileLay.TwoLegs => Steep(toVertical) ? 1.4 : 1,
            _ => Steep(toVertical) ? 2.1 : 1.5,
        });

    /// <summary>What a choke leaves of the rating, by the angle that the choke makes.</summary>
    /// <remarks>
    /// Formula: 1.00 above 120°, 0.87 from 90 to 120, 0.74 from 60, 0.62 from 30, 0.49 below; on top of the choke factor of the sling itself. Units: degrees; part of one.
    /// Range: 0 to 180°. Errors: as printed. Source: ASME B30.9 as two sling makers' sheets give it; taken together with the EN factor 0.8 it is a combination of this book's own.
    /// </remarks>
    public static Outcome<double> ChokeFactor(Angle choke) => new InputCheck().Within("angle of the choke", choke, 0, 180)
        .Then(() => Beyond(choke, 120) ? 1.00 : !Below(choke, 90) ? 0.87 : !Below(choke, 60) ? 0.74 : !Below(choke, 30) ? 0.62 : 0.49);

    /// <summary>Rating of an eye bolt pulled at an angle to its shank.</summary>
    /// <remarks>
    /// Formula: DIN 580 table, axial or at the side to 45°; BS 4278 axial table × 0.625 to 15°, 0.4 to 30°, 0.25 to 45° for one of a pair; machinery pattern: stamped × 0.25 off the axis.
    /// Units: kg, degrees. Range: 0 to 45° off the axis, whole thread in, collar down, pull in the plane of the eye; unknown pattern is unfit.
    /// Errors: as printed; DIN 580's side figure is taken for each eye bolt. Source: DIN 580 (2003-08) table A.1; BS 4278 by a supplier's table; machinery pattern by a supplier's table.
    /// </remarks>
    /// <param name="pattern">The pattern that is stamped.</param>
    /// <param name="size">Its thread, M8 to M30.</param>
    /// <param name="stamped">The straight rating stamped on a machinery pattern eye bolt; not read for the others.</param>
    /// <param name="offAxis">Angle of the pull to the shank.</param>
    public static Outcome<Mass> EyeBolt(EyeBoltPattern pattern, string size, Mass stamped, Angle offAxis)
    {
        var known = pattern switch
        {
            EyeBoltPattern.Din580 => Din580Kilograms.ContainsKey(size),
            EyeBoltPattern.Bs4278 => Bs4278Tonnes.ContainsKey(size),
            _ => true,
        };
        var check = new InputCheck()
            .That(pattern != EyeBoltPattern.Unknown, "pattern of the eye bolt", "none that can be read", "DIN 580, BS 4278 or machinery pattern as stamped", "Leave this eye bolt out: unfit for lifting until its stamp can be read")
            .That(known, "size of the eye bolt", size, string.Join(", ", (pattern == EyeBoltPattern.Din580 ? Din580Kilograms.Keys : (IEnumerable<string>)Bs4278Tonnes.Keys)), "Take an eye bolt that the table lists")
            .Within("pull off the shank", offAxis, 0, 45);
        if (pattern == EyeBoltPattern.Machinery)
            check.Positive("rating on the eye bolt", stamped);
        return check.Then(() => pattern switch
        {
            EyeBoltPattern.Din580 => Mass.FromKilograms(OnAxis(offAxis) ? Din580Kilograms[size].Axial : Din580Kilograms[size].AtSide),
            EyeBoltPattern.Bs4278 => Mass.FromKilograms(1000 * Bs4278Tonnes[size] * (OnAxis(offAxis) ? 1 : !Beyond(offAxis, 15) ? 0.625 : !Beyond(offAxis, 30) ? 0.4 : 0.25)),
            _ => OnAxis(offAxis) ? stamped : stamped * 0.25,
        });
    }

    /// <summary>Rating of a shackle pulled off its line.</summary>
    /// <remarks>
    /// Formula: stamped × 1 in line, 0.7 to 45°, 0.5 to 90°. Units: kg, degrees. Range: 0 to 90°, screw pin home; no stamp is unfit.
    /// Errors: as printed. Source: ASME B30.26 side loading, from memory.
    /// </remarks>
    public static Outcome<Mass> Shackle(Mass stamped, Angle offLine) => new InputCheck()
        .That(stamped.Kilograms > 0, "rating on the shackle", $"{Show(stamped.Kilograms)} kg", "a rating that can be read", "Leave this shackle out: unfit for lifting")
        .Within("pull off the line", offLine, 0, 90)
        .Then(() => stamped * (OnAxis(offLine) ? 1 : !Beyond(offLine, 45) ? 0.7 : 0.5));

    /// <summary>What warmth leaves of the rating of a grade 8 chain.</summary>
    /// <remarks>
    /// Formula: 1 from −40 to 200 °C, 0.9 to 300, 0.75 to 400. Units: °C; part of one. Range: −40 to 400 °C. Errors: as printed. Source: EN 818-4 as suppliers reproduce it.
    /// </remarks>
    public static Outcome<double> ChainWarmthFactor(Temperature chain) => new InputCheck()
        .Within("temperature of the chain", chain.Celsius, -40, 400, "°C")
        .Then(() => chain.Celsius <= 200 ? 1 : chain.Celsius <= 300 ? 0.9 : 0.75);

    private static Outcome<Mass> Slings(string kind, Dictionary<int, double[]> table, Length size, int legs, Angle toVertical, InputCheck check)
    {
        var key = Key(size);
        return Bevel(check, toVertical)
            .That(table.ContainsKey(key) && Math.Abs(size.Millimetres - key) <= 0.05 * key, $"diameter of the {kind}", $"{Show(size.Millimetres)} mm",
                string.Join(", ", table.Keys) + " mm", $"Measure the {kind} again, or take one that the table lists")
            .That(legs is >= 1 and <= 4, "legs", Show(legs), "one to four", "Give the number of legs that carry")
            .Then(() => Mass.FromKilograms(1000 * table[key][legs == 1 ? 0 : (legs == 2 ? 1 : 3) + (Steep(toVertical) ? 0 : 1)]));
    }

    private static Outcome<Mass> Choked(Outcome<Mass> leg, Dictionary<int, double[]> table, Length size, Angle choke, double left = 0.8) =>
        leg.Then(one => ChokeFactor(choke).Then(factor => Outcome.Of(Mass.FromKilograms(factor * Math.Min(left * one.Kilograms, 500 * table[Key(size)][5])))));

    private static int Key(Length size) => (int)Math.Round(Math.Clamp(size.Millimetres, 0, 1000));

    private static InputCheck Bevel(InputCheck check, Angle toVertical) =>
        check.That(toVertical.Degrees >= 0 && !Beyond(toVertical, Slinging.RefuseDeg), "angle to the vertical", $"{Show(toVertical.Degrees)}°", $"{Show(Slinging.RefuseDeg)}° at most", "Take longer legs or a spreader bar");

    private static bool Steep(Angle toVertical) => !Beyond(toVertical, Slinging.WarnDeg);

    // Degrees pass through radians: an angle that is given as 45° must count as 45°.
    private static bool Beyond(Angle angle, double degrees) => angle.Degrees > degrees + 1e-9;

    private static bool Below(Angle angle, double degrees) => angle.Degrees < degrees - 1e-9;

    // A pull is on the axis when it is as straight as an eye can tell.
    private static bool OnAxis(Angle angle) => angle.Degrees <= 1;
}
