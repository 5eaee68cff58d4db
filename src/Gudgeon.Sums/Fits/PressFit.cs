using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fits;

/// <summary>Stiffness of one part of a press fit.</summary>
/// <param name="Modulus">E, Young's modulus.</param>
/// <param name="PoissonRatio">ν, 0 to 0.5.</param>
public readonly record struct Elasticity(Pressure Modulus, double PoissonRatio);

/// <summary>A ring or shaft pressed or shrunk into a ring of the same length (Lamé).</summary>
/// <param name="InnerRadius">Bore radius of the inner part; zero for a solid shaft.</param>
/// <param name="JointRadius">Radius of the joint.</param>
/// <param name="OuterRadius">Outside radius of the outer part.</param>
/// <param name="RadialInterference">Half of the interference on diameter.</param>
/// <param name="Inner">Inner material.</param>
/// <param name="Outer">Outer material.</param>
/// <remarks>
/// Long thick cylinders, elastic, no end effects. A casting round a seat or liner is no cylinder: the figure is a guide.
/// Source: Ugural and Fenster, Advanced Strength and Applied Elasticity, 8.5.
/// </remarks>
public sealed record PressFit(
    Length InnerRadius, Length JointRadius, Length OuterRadius, Length RadialInterference, Elasticity Inner, Elasticity Outer)
{
    /// <summary>Pressure in the joint: δ / (R·[(1/E_o)(k_o + ν_o) + (1/E_i)(k_i − ν_i)]).</summary>
    public Pressure Contact
    {
        get
        {
            if (InnerRadius < Length.Zero || InnerRadius >= JointRadius || JointRadius >= OuterRadius)
                throw new ArgumentException($"The radii must grow outwards from zero or more; they were {InnerRadius}, {JointRadius} and {OuterRadius}.");
            var give = (OuterFactor + Outer.PoissonRatio) / Outer.Modulus.Megapascals + (InnerFactor - Inner.PoissonRatio) / Inner.Modulus.Megapascals;
            return Pressure.FromMegapascals(RadialInterference.Millimetres / (JointRadius.Millimetres * give));
        }
    }

    /// <summary>Hoop stress in the outer part at the joint; tension is above zero.</summary>
    public Pressure OuterHoopAtJoint => Contact * OuterFactor;

    /// <summary>Hoop stress in the outer part at its outside.</summary>
    public Pressure OuterHoopAtOutside => Contact * (OuterFactor - 1);

    /// <summary>Hoop stress in the inner part at the joint; below zero is compression.</summary>
    public Pressure InnerHoopAtJoint => Contact * -InnerFactor;

    /// <summary>Hoop stress in the inner part at its bore. A solid shaft has the pressure itself throughout.</summary>
    public Pressure InnerHoopAtBore => InnerRadius.Millimetres == 0 ? InnerHoopAtJoint : Contact * (-InnerFactor - 1);

    private double OuterFactor => (Square(OuterRadius) + Square(JointRadius)) / (Square(OuterRadius) - Square(JointRadius));

    private double InnerFactor => (Square(JointRadius) + Square(InnerRadius)) / (Square(JointRadius) - Square(InnerRadius));

    /// <summary>Heating of the outer part that lets the inner drop in: (interference + clearance)/(α·d).</summary>
    /// <param name="interference">On diameter.</param>
    /// <param name="clearance">Wanted clearance while it goes in.</param>
    /// <param name="diameter">Of the joint; above zero.</param>
    /// <param name="outerPerKelvin">Expansion of the outer part, 1/K; above zero.</param>
    /// <returns>The step above the temperature of the inner part.</returns>
    public static TemperatureDifference HeatToAssemble(Length interference, Length clearance, Length diameter, double outerPerKelvin)
    {
        Above(diameter.Millimetres, "diameter of the joint");
        Above(outerPerKelvin, "coefficient of expansion");
        return TemperatureDifference.FromKelvins((interference + clearance) / diameter / outerPerKelvin);
    }

    /// <summary>Interference left when both parts have one temperature: δ − d(α_o − α_i)(t − 20).</summary>
    /// <param name="at20">Interference on diameter at 20 °C.</param>
    /// <param name="diameter">Of the joint.</param>
    /// <param name="outerPerKelvin">Expansion of the outer part.</param>
    /// <param name="innerPerKelvin">Expansion of the inner part.</param>
    /// <param name="at">The temperature of both.</param>
    /// <returns>The interference; below zero the joint is loose.</returns>
    public static Length InterferenceAt(Length at20, Length diameter, double outerPerKelvin, double innerPerKelvin, Temperature at) =>
        at20 - diameter * ((outerPerKelvin - innerPerKelvin) * (at - Temperature.Reference).Kelvins);

    /// <summary>Clearance while one part is hot and the other cold: d(α_o(t_o − 20) − α_i(t_i − 20)) − δ.</summary>
    /// <param name="at20">Interference on diameter at 20 °C.</param>
    /// <param name="diameter">Of the joint.</param>
    /// <param name="outerPerKelvin">Expansion of the outer part.</param>
    /// <param name="outer">Temperature of the outer part.</param>
    /// <param name="innerPerKelvin">Expansion of the inner part.</param>
    /// <param name="inner">Temperature of the inner part.</param>
    /// <returns>The clearance; below zero it will not go in.</returns>
    public static Length ClearanceWhile(Length at20, Length diameter, double outerPerKelvin, Temperature outer, double innerPerKelvin, Temperature inner) =>
        diameter * (outerPerKelvin * (outer - Temperature.Reference).Kelvins - innerPerKelvin * (inner - Temperature.Reference).Kelvins) - at20;

    private static void Above(double value, string name)
    {
        if (!(value > 0))
            throw new ArgumentOutOfRangeException(null, FormattableString.Invariant($"The {name} must be above zero; it was {value}."));
    }

    private static double Square(Length length) => length.Millimetres * length.Millimetres;
}
