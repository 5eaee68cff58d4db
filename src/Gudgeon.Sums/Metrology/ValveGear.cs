using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>Sums of cam and valve gear. Geometry or common practice, no source.</summary>
public static class ValveGear
{
    /// <summary>Room left before the coils close: fitted height − valve lift − solid height.</summary>
    /// <param name="fitted">Fitted height.</param>
    /// <param name="valveLift">Full lift at the valve.</param>
    /// <param name="solid">Height with all coils closed.</param>
    /// <returns>The clearance; below zero the spring binds.</returns>
    public static Length CoilBindClearance(Length fitted, Length valveLift, Length solid) => fitted - valveLift - solid;

    /// <summary>Lift of a lobe: height over the nose − base circle.</summary>
    /// <param name="height">Over nose and heel.</param>
    /// <param name="baseCircle">Diameter of the base circle.</param>
    /// <returns>The lift at the cam.</returns>
    public static Length LobeLift(Length height, Length baseCircle) => height - baseCircle;

    /// <summary>Lift at the valve: lift·ratio − lash.</summary>
    /// <param name="lobeLift">Lift at the cam.</param>
    /// <param name="rockerRatio">Rocker ratio, above zero; 1 for direct drive.</param>
    /// <param name="lash">Clearance at the valve.</param>
    /// <returns>The lift at the valve.</returns>
    public static Length ValveLift(Length lobeLift, double rockerRatio, Length lash)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rockerRatio);
        return lobeLift * rockerRatio - lash;
    }
}
