using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>A torque wrench as its scale says.</summary>
/// <param name="Name">What the person calls it.</param>
/// <param name="Least">Lowest mark of the scale.</param>
/// <param name="Most">Highest mark of the scale.</param>
public sealed record WrenchRange(string Name, Torque Least, Torque Most);

/// <summary>Setting a torque wrench, with and without something on its end.</summary>
public static class Wrench
{
    /// <summary>What to set on the scale when an extension stands on the square, so that the fastener gets its torque.</summary>
    /// <remarks>
    /// Formula: S = T·L/(L + e·cos θ). Units: N·m, mm; θ in degrees, 0 straight out, 90 square across (no correction), 180 folded back.
    /// Range: the hand's pull at the middle of the grip; L + e·cos θ above 0. Errors: one part in L for each millimetre that the hand is off.
    /// Source: lever; US Army TM 9-254 torque adapter paragraph (its printed line for angled adapters shows × where + is meant).
    /// </remarks>
    public static Outcome<Torque> SettingWithExtension(Torque torque, Length lever, Length extension, Angle angle) =>
        Lever(lever, extension, angle).Positive("torque", torque)
            .Then(() => torque * (lever / Effective(lever, extension, angle)));

    /// <summary>What the fastener gets from a setting through an extension.</summary>
    /// <remarks>
    /// Formula: T = S·(L + e·cos θ)/L. Units, range, errors and source as <see cref="SettingWithExtension"/>.
    /// </remarks>
    public static Outcome<Torque> TorqueThroughExtension(Torque setting, Length lever, Length extension, Angle angle) =>
        Lever(lever, extension, angle).Positive("setting", setting)
            .Then(() => setting * (Effective(lever, extension, angle) / lever));

    /// <summary>Whether a wrench is at home at a setting: below a fifth of its range's top, or beyond its scale, it is questioned.</summary>
    /// <remarks>
    /// Formula: setting at or above 0.2·top and within the scale. Units: N·m. Range: a scale from above 0 up. Errors: none.
    /// Source: ISO 6789-1 tests a wrench from a fifth of its capacity up; common practice for use.
    /// </remarks>
    /// <returns>The setting itself, or the doubt.</returns>
    public static Outcome<Torque> Question(WrenchRange wrench, Torque setting)
    {
        var lowest = wrench.Least > 0.2 * wrench.Most ? wrench.Least : 0.2 * wrench.Most;
        return new InputCheck()
            .Positive("lowest mark", wrench.Least)
            .That(wrench.Most > wrench.Least, "scale", $"{Show(wrench.Least.NewtonMetres)} to {Show(wrench.Most.NewtonMetres)} N·m", "lowest before highest", "Read the scale again")
            .Positive("setting", setting)
            .That(setting >= lowest, wrench.Name, $"{Show(setting.NewtonMetres)} N·m", $"{Show(lowest.NewtonMetres)} N·m or more", "Take a smaller wrench")
            .That(setting <= wrench.Most, wrench.Name, $"{Show(setting.NewtonMetres)} N·m", $"{Show(wrench.Most.NewtonMetres)} N·m at most", "Take a larger wrench")
            .Then(() => setting);
    }

    private static Length Effective(Length lever, Length extension, Angle angle) => lever + extension * Math.Cos(angle.Radians);

    private static InputCheck Lever(Length lever, Length extension, Angle angle) => new InputCheck()
        .Positive("wrench length", lever).NotNegative("extension", extension).Within("angle of the extension", angle, 0, 180)
        .That(Effective(lever, extension, angle) >= lever / 2, "extension folded back", $"{Show(Effective(lever, extension, angle).Millimetres)} mm of lever left",
            $"{Show(lever.Millimetres / 2)} mm or more", "Turn the extension outwards or take another tool");
}
