using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>Sums of cam and valve gear. Geometry or common practice, no source.</summary>
public static class ValveGear
{
    /// <summary>Shim for a wanted lash, direct drive: fitted + measured clearance − target.</summary>
    /// <param name="fitted">Shim that is fitted.</param>
    /// <param name="clearance">Clearance that was measured.</param>
    /// <param name="target">Clearance that is wanted.</param>
    /// <returns>The shim to fit, before a size that exists is chosen.</returns>
    public static Length Shim(Length fitted, Length clearance, Length target) => fitted + clearance - target;

    /// <summary>The shim of a ladder nearest to a wanted one, and the clearance that it leaves.</summary>
    /// <param name="fitted">Shim that is fitted.</param>
    /// <param name="clearance">Clearance that was measured.</param>
    /// <param name="target">Clearance that is wanted.</param>
    /// <param name="sizes">Sizes that exist; at least one.</param>
    /// <returns>The shim and its clearance.</returns>
    public static (Length Shim, Length Clearance) NearestShim(Length fitted, Length clearance, Length target, IReadOnlyCollection<Length> sizes)
    {
        if (sizes.Count == 0)
            throw new ArgumentException("There are no shims to choose from.", nameof(sizes));
        var wanted = Shim(fitted, clearance, target);
        var shim = sizes.MinBy(size => (size - wanted).Abs().Millimetres);
        return (shim, fitted + clearance - shim);
    }

    /// <summary>Spring rate between two heights: (F₂ − F₁)/(h₁ − h₂).</summary>
    /// <param name="load">F₁ at the taller height.</param>
    /// <param name="height">h₁, the taller.</param>
    /// <param name="moreLoad">F₂ at the shorter height.</param>
    /// <param name="lessHeight">h₂, the shorter.</param>
    /// <returns>N/mm.</returns>
    public static double SpringRate(Force load, Length height, Force moreLoad, Length lessHeight)
    {
        Require.Positive(height - lessHeight, "difference of the two heights, taller first,");
        return (moreLoad - load).Newtons / (height - lessHeight).Millimetres;
    }

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

    /// <summary>How far a chain- or belt-driven cam falls late when its distance from the crank shrinks: x/r at the cam, twice that at the crank.</summary>
    /// <param name="shrunk">x: what the skim or the thinner gasket took; above zero is shrunk.</param>
    /// <param name="sprocketPitchRadius">r of the cam sprocket, above zero.</param>
    /// <returns>The angle at the cam and at the crank; above zero is late.</returns>
    public static (Angle Cam, Angle Crank) PhaseShift(Length shrunk, Length sprocketPitchRadius)
    {
        Require.Positive(sprocketPitchRadius, "pitch radius of the sprocket");
        var cam = Angle.FromRadians(shrunk / sprocketPitchRadius);
        return (cam, cam * 2);
    }
}
