using Gudgeon.Sums.Quantities;
using static Gudgeon.Sums.InputCheck;

namespace Gudgeon.Sums.Motion;

/// <summary>Crank, rod and piston of one cylinder, exactly, with the bore or the pin off the crank's line if it is.</summary>
/// <remarks>
/// Formula: y = r·cos θ + √(l² − (r·sin θ − e)²), y the height of the pin over the crank axis, θ from the crank's upright.
/// Units: mm and radians inside; quantities at the edge.
/// Range: r above 0, l above r + |e|; else the crank cannot turn and the data is refused.
/// Errors: exact for rigid parts without play. Source: any theory of machines, e.g. Khurmi and Gupta, Theory of Machines (2005), chapter 15; geometry.
/// </remarks>
public sealed class CrankSlider
{
    private readonly double r, l, e;

    private CrankSlider(double r, double l, double e) => (this.r, this.l, this.e) = (r, l, e);

    /// <summary>The gear of one cylinder: throw (half of an on-line stroke), rod between centres, offset of the cylinder line towards the side that the crank passes after top.</summary>
    /// <remarks>
    /// Formula, units, errors and source as <see cref="CrankSlider"/>. Range: throw above 0, rod longer than throw and offset together.
    /// </remarks>
    public static Outcome<CrankSlider> Of(Length crankThrow, Length rod, Length offset) => new InputCheck()
        .Positive("throw", crankThrow).Positive("rod", rod)
        .That(rod.Millimetres > crankThrow.Millimetres + Math.Abs(offset.Millimetres), "rod", $"{Show(rod.Millimetres)} mm",
            $"more than throw and offset together, {Show(crankThrow.Millimetres + Math.Abs(offset.Millimetres))} mm", "Measure the rod between its centres, and take half the stroke as throw")
        .Then(() => new CrankSlider(crankThrow.Millimetres, rod.Millimetres, offset.Millimetres));

    /// <summary>Crank angle at top dead centre, from the crank's upright.</summary>
    public Angle Top => Angle.FromRadians(Math.Asin(e / (l + r)));

    /// <summary>Crank angle at bottom dead centre.</summary>
    public Angle Bottom => Angle.FromRadians(Math.PI + Math.Asin(e / (l - r)));

    /// <summary>Stroke of the piston: √((l + r)² − e²) − √((l − r)² − e²).</summary>
    public Length Stroke => Length.FromMillimetres(TopHeight - Math.Sqrt((l - r) * (l - r) - e * e));

    private double TopHeight => Math.Sqrt((l + r) * (l + r) - e * e);

    /// <summary>Height of the gudgeon pin over the crank axis.</summary>
    public Length PinHeight(Angle crank) => Length.FromMillimetres(r * Math.Cos(crank.Radians) + Upright(crank.Radians));

    /// <summary>How far the piston is down from its top dead centre.</summary>
    public Length Down(Angle crank) => Length.FromMillimetres(TopHeight) - PinHeight(crank);

    /// <summary>Speed of the piston downwards, m/s, at a steady crank speed.</summary>
    public double SpeedMetresPerSecond(Angle crank, double rpm) => -Slope(crank.Radians) * Omega(rpm) / 1000;

    /// <summary>Acceleration of the piston downwards, m/s², at a steady crank speed.</summary>
    public double AccelerationMetresPerSecondSquared(Angle crank, double rpm)
    {
        var (u, s) = (Sideways(crank.Radians), Upright(crank.Radians));
        var du = r * Math.Cos(crank.Radians);
        var ds = -u * du / s;
        var bend = -r * Math.Cos(crank.Radians) - (du * du - u * r * Math.Sin(crank.Radians) + ds * ds) / s;
        return -bend * Omega(rpm) * Omega(rpm) / 1000;
    }

    /// <summary>The two crank angles, before and after top, at which the piston is a distance down.</summary>
    /// <remarks>
    /// Formula: with y the pin height and D = √(e² + y²), θ = atan2(e, y) ± acos((r² + D² − l²)/(2·r·D)). Units: as the class.
    /// Range: 0 to the stroke. Errors: exact. Source: triangle of crank, rod and pin.
    /// </remarks>
    public Outcome<(Angle Before, Angle After)> AnglesAt(Length down) => new InputCheck()
        .Within("distance down", down.Millimetres, 0, Stroke.Millimetres, "mm").Then(() =>
        {
            var y = TopHeight - down.Millimetres;
            var reach = Math.Sqrt(e * e + y * y);
            var middle = Math.Atan2(e, y);
            var half = Math.Acos(Math.Clamp((r * r + reach * reach - l * l) / (2 * r * reach), -1, 1));
            return (Angle.FromRadians(middle - half), Angle.FromRadians(middle + half));
        });

    /// <summary>Mean piston speed, m/s.</summary>
    /// <remarks>
    /// Formula: 2·S·N/60 000. Units: S in mm, N in 1/min. Range: N 0 and above. Errors: exact. Source: definition.
    /// </remarks>
    public static Outcome<double> MeanSpeedMetresPerSecond(Length stroke, double rpm) => new InputCheck()
        .Positive("stroke", stroke).NotNegative("speed", rpm, "1/min").Then(() => 2 * stroke.Metres * rpm / 60);

    private double Sideways(double angle) => r * Math.Sin(angle) - e;

    private double Upright(double angle) => Math.Sqrt(l * l - Sideways(angle) * Sideways(angle));

    private double Slope(double angle) => -r * Math.Sin(angle) - Sideways(angle) * r * Math.Cos(angle) / Upright(angle);

    private static double Omega(double rpm) => rpm * 2 * Math.PI / 60;
}
