using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Shapes;

/// <summary>What two-point and three-point gauges see of lobes, and what they miss.</summary>
/// <remarks>Source: ISO 4292 (from memory); the figures follow from geometry.</remarks>
public static class Lobes
{
    /// <summary>What a page says beside a bore read with a two-point gauge.</summary>
    public const string TwoPointCaution =
        "A two-point gauge cannot see three, five or seven lobes: the diameter is alike all round while the bore is not. Half the difference of two diameters is only the least that the roundness can be.";

    /// <summary>How far the diameter varies round a section of n lobes of amplitude a: 4a when n is even, nothing when it is odd.</summary>
    /// <param name="lobes">n, two or more.</param>
    /// <param name="amplitude">a: r = R + a·cos(nθ).</param>
    /// <returns>Largest less smallest diameter. The roundness (radial) is 2a either way.</returns>
    public static Length DiameterVariation(int lobes, Length amplitude)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lobes, 2);
        return lobes % 2 == 0 ? amplitude * 4 : Length.Zero;
    }

    /// <summary>How many times a dial on the bisector of a V-block magnifies n lobes: F = 1 + cos(n(90° + α/2))/sin(α/2), beside the radial amplitude.</summary>
    /// <param name="lobes">n, two or more.</param>
    /// <param name="vee">α, the angle of the V, between 0° and 180°.</param>
    /// <returns>F; zero where the block is blind.</returns>
    public static double VeeBlockFactor(int lobes, Angle vee)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lobes, 2);
        if (vee.Degrees is not (> 0 and < 180))
            throw new ArgumentOutOfRangeException(nameof(vee), vee, "The angle of a V lies between 0° and 180°.");
        var half = vee.Radians / 2;
        return 1 + Math.Cos(lobes * (Math.PI / 2 + half)) / Math.Sin(half);
    }
}
