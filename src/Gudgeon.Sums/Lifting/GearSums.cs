using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Lifting;

/// <summary>The sums of lifting gear for the catalogue.</summary>
internal static class GearSums
{
    private static readonly SumInput[] Sling = [new("d", "diameter of link or rope", "mm"), new("n", "legs", "1"), new("β", "angle to the vertical", "°")];
    private static readonly SumInput Rating = new("WLL", "rating as stamped", "kg");

    public static IReadOnlyList<SumEntry> List { get; } =
    [
        new("lifting.chain-sling", "Rating of a grade 8 chain sling", "table", [new("grade", "grade on the tag", "1"), .. Sling], "kg", "6 to 13 mm, 60° at most; unknown grade is unfit", "EN 818-4, by suppliers' reproductions",
            new("8 mm, two legs, 45°", 2800, 0.001, "EN 818-4 table, read in a reproduction", () => GearTables.ChainSling("8", Length.FromMillimetres(8), 2, Deg(45)).Value.Kilograms)),
        new("lifting.choked-chain", "Rating of one leg of grade 8 chain choked", "the lower of 0.8 × one leg and half of endless choked, × choke factor", [new("grade", "grade on the tag", "1"), .. Sling, new("γ", "angle of the choke", "°")], "kg", "6 to 13 mm, 60° at most; unknown grade is unfit", "EN 818-4, by suppliers' reproductions; ASME B30.9",
            new("10 mm, choke open beyond 120°", 2500, 0.001, "half of the endless column, 5.00 t, read in a reproduction", () => GearTables.ChokedChain("8", Length.FromMillimetres(10), Angle.Zero, Deg(130)).Value.Kilograms)),
        new("lifting.choked-rope", "Rating of one leg of wire rope choked", "the lower of 0.75 × one leg and half of endless choked, × choke factor", [.. Sling, new("γ", "angle of the choke", "°")], "kg", "8 to 12 mm, 60° at most; else refused", "EN 13414-1:2003, table 4; a training page; ASME B30.9",
            new("8 mm, choke at 100°", 489.375, 0.001, "by hand: 0.87 × 0.75 × 750", () => GearTables.ChokedRope(Length.FromMillimetres(8), Angle.Zero, Deg(100)).Value.Kilograms)),
        new("lifting.wire-rope-sling", "Rating of a wire rope sling", "table", Sling, "kg", "8 to 12 mm, 60° at most; else refused", "EN 13414-1:2003, table 4",
            new("10 mm, two legs, 60°", 1150, 0.001, "EN 13414-1:2003, table 4, read", () => GearTables.WireRopeSling(Length.FromMillimetres(10), 2, Deg(60)).Value.Kilograms)),
        new("lifting.textile-sling", "Rating of a textile sling as it is laid", "WLL × mode factor", [Rating, new("lay", "how it is laid", "1"), new("β", "angle to the vertical", "°")], "kg", "60° at most; else refused", "EN 1492-1 and -2 mode factors",
            new("1 t, two legs, 45°", 1400, 0.001, "manual of a webbing sling, read", () => GearTables.TextileSling(Mass.FromKilograms(1000), TextileLay.TwoLegs, Deg(45)).Value.Kilograms)),
        new("lifting.choke-factor", "What a choke leaves", "table", [new("γ", "angle of the choke", "°")], "1", "0 to 180°; else refused", "ASME B30.9, by two sling makers' sheets",
            new("100°", 0.87, 1e-12, "ASME B30.9, read in two sheets", () => GearTables.ChokeFactor(Deg(100)).Value)),
        new("lifting.eye-bolt", "Rating of an eye bolt at an angle", "table by pattern", [new("pattern", "pattern as stamped", "1"), new("size", "thread", "1"), new("α", "pull off the shank", "°")], "kg",
            "0 to 45°; unknown pattern is unfit", "DIN 580 (2003-08) table A.1; BS 4278 and machinery pattern by suppliers' tables",
            new("DIN 580 M10 at 45°", 170, 0.001, "DIN 580 table A.1, read in a reproduction", () => GearTables.EyeBolt(EyeBoltPattern.Din580, "M10", Mass.Zero, Deg(45)).Value.Kilograms)),
        new("lifting.shackle", "Rating of a shackle off its line", "WLL × 1, 0.7, 0.5", [Rating, new("α", "pull off the line", "°")], "kg", "0 to 90°; no stamp is unfit", "ASME B30.26, from memory",
            new("1000 kg at 45°", 700, 0.001, "ASME B30.26, from memory", () => GearTables.Shackle(Mass.FromKilograms(1000), Deg(45)).Value.Kilograms)),
        new("lifting.chain-warmth-factor", "What warmth leaves of a chain", "table", [new("t", "temperature of the chain", "°C")], "1", "−40 to 400 °C; else refused", "EN 818-4, by suppliers' reproductions",
            new("250 °C", 0.9, 1e-12, "EN 818-4, read in a reproduction", () => GearTables.ChainWarmthFactor(Temperature.FromCelsius(250)).Value)),
        new("lifting.use", "Gear against its load, weakest first", "part = F/(9.80665·WLL)", [new("F", "load", "N"), Rating], "1", "part 1 at most, no piece unfit; else refused", "definition of the working load limit",
            new("4903.325 N on 1000 kg", 0.5, 1e-12, "by hand", () => Gear.Use([new("hook", Force.FromNewtons(4903.325), Outcome.Of(Mass.FromKilograms(1000)))]).Value.Weakest.Part)),
    ];

    private static Angle Deg(double value) => Angle.FromDegrees(value);
}
