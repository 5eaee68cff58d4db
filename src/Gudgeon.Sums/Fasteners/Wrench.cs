using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Fasteners;

/// <summary>A torque wrench as its scale says.</summary>
/// <param name="Name">What the person calls it.</param>
/// <param name="LeastNm">Lowest mark of the scale, N·m.</param>
/// <param name="MostNm">Highest mark of the scale, N·m.</param>
public sealed record WrenchRange(string Name, double LeastNm, double MostNm);

/// <summary>Setting a torque wrench, with and without something on its end.</summary>
public static class Wrench
{
    /// <summary>What to set on the scale when an extension stands on the square, so that the fastener gets its torque.</summary>
    /// <remarks>
    /// Formula: S = T·L/(L + e·cos θ). Units: N·m, mm; θ in degrees, 0 straight out, 90 square across (no correction), 180 folded back.
    /// Range: the hand's pull at the middle of the grip; L + e·cos θ above 0. Errors: one part in L for each millimetre that the hand is off.
    /// Source: lever; US Army TM 9-254 torque adapter paragraph (its printed line for angled adapters shows × where + is meant).
    /// </remarks>
    public static Outcome<double> SettingWithExtension(double torqueNm, double leverMm, double extensionMm, double angleDeg) =>
        Lever(leverMm, extensionMm, angleDeg).Positive("torque", torqueNm, "N·m")
            .Then(() => torqueNm * leverMm / Effective(leverMm, extensionMm, angleDeg));

    /// <summary>What the fastener gets from a setting through an extension.</summary>
    /// <remarks>
    /// Formula: T = S·(L + e·cos θ)/L. Units, range, errors and source as <see cref="SettingWithExtension"/>.
    /// </remarks>
    public static Outcome<double> TorqueThroughExtension(double settingNm, double leverMm, double extensionMm, double angleDeg) =>
        Lever(leverMm, extensionMm, angleDeg).Positive("setting", settingNm, "N·m")
            .Then(() => settingNm * Effective(leverMm, extensionMm, angleDeg) / leverMm);

    /// <summary>Whether a wrench is at home at a setting: below a fifth of its range's top, or beyond its scale, it is questioned.</summary>
    /// <remarks>
    /// Formula: setting at or above 0.2·top and within the scale. Units: N·m. Range: a scale from above 0 up. Errors: none.
    /// Source: ISO 6789-1 tests a wrench from a fifth of its capacity up; common practice for use.
    /// </remarks>
    /// <returns>The setting itself, or the doubt.</returns>
    public static Outcome<double> Question(WrenchRange wrench, double settingNm)
    {
        var lowest = Math.Max(wrench.LeastNm, 0.2 * wrench.MostNm);
        return new InputCheck()
            .Positive("lowest mark", wrench.LeastNm, "N·m")
            .That(wrench.MostNm > wrench.LeastNm, "scale", $"{Show(wrench.LeastNm)} to {Show(wrench.MostNm)} N·m", "lowest before highest", "Read the scale again")
            .Positive("setting", settingNm, "N·m")
            .That(!(settingNm < lowest), wrench.Name, $"{Show(settingNm)} N·m", $"{Show(lowest)} N·m or more", "Take a smaller wrench")
            .That(!(settingNm > wrench.MostNm), wrench.Name, $"{Show(settingNm)} N·m", $"{Show(wrench.MostNm)} N·m at most", "Take a larger wrench")
            .Then(() => settingNm);
    }

    private static double Effective(double leverMm, double extensionMm, double angleDeg) => leverMm + extensionMm * Math.Cos(angleDeg * Math.PI / 180);

    private static InputCheck Lever(double leverMm, double extensionMm, double angleDeg) => new InputCheck()
        .Positive("wrench length", leverMm, "mm").NotNegative("extension", extensionMm, "mm").Within("angle of the extension", angleDeg, 0, 180, "°")
        .That(!(Effective(leverMm, extensionMm, angleDeg) < leverMm / 2), "extension folded back", $"{Show(Effective(leverMm, extensionMm, angleDeg))} mm of lever left",
            $"{Show(leverMm / 2)} mm or more", "Turn the extension outwards or take another tool");
}
