using System.Globalization;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums;

/// <summary>Looks at every input of a sum before the sum runs, so that all refusals come at once.</summary>
internal sealed class InputCheck
{
    /// <summary>A number as a message shows it: at most six figures, a full stop as decimal mark.</summary>
    public static string Show(double value) => value.ToString("G6", CultureInfo.InvariantCulture);

    private readonly List<Refusal> refusals = [];

    // Nothing on a bench is a thousand million of its unit or a thousand millionth; beyond it a product may overflow.
    private const double Largest = 1e9;
    private const double Smallest = 1e-9;

    public InputCheck Positive(string name, double value, string unit) => value is > 0 and < Smallest or > Largest
        ? Within(name, value, Smallest, Largest, unit)
        : That(value > 0, name, $"{Show(value)} {unit}".TrimEnd(), $"more than 0 {unit}".TrimEnd(), $"Look at {name} again");

    public InputCheck NotNegative(string name, double value, string unit) => value > Largest
        ? Within(name, value, 0, Largest, unit)
        : That(value >= 0, name, $"{Show(value)} {unit}".TrimEnd(), $"0 {unit} or more", $"Look at {name} again");

    public InputCheck Within(string name, double value, double low, double high, string unit) =>
        That(value >= low && value <= high, name, $"{Show(value)} {unit}".TrimEnd(), $"{Show(low)} to {Show(high)} {unit}".TrimEnd(), $"Look at {name} again");

    public InputCheck Positive(string name, Length value) => Positive(name, value.Millimetres, "mm");

    public InputCheck Positive(string name, Force value) => Positive(name, value.Newtons, "N");

    public InputCheck Positive(string name, Torque value) => Positive(name, value.NewtonMetres, "N·m");

    public InputCheck Positive(string name, Mass value) => Positive(name, value.Kilograms, "kg");

    public InputCheck NotNegative(string name, Length value) => NotNegative(name, value.Millimetres, "mm");

    public InputCheck NotNegative(string name, Force value) => NotNegative(name, value.Newtons, "N");

    public InputCheck NotNegative(string name, Mass value) => NotNegative(name, value.Kilograms, "kg");

    // Degrees pass through radians and back; an angle that is given as 45° must count as 45°.
    public InputCheck Within(string name, Angle value, double lowDeg, double highDeg) =>
        That(value.Degrees >= lowDeg - 1e-9 && value.Degrees <= highDeg + 1e-9, name, $"{Show(value.Degrees)}°", $"{Show(lowDeg)} to {Show(highDeg)}°", $"Look at {name} again");

    public InputCheck That(bool good, string where, string met, string expected, string todo)
    {
        if (!good)
            refusals.Add(new Refusal(where, met, expected, todo));
        return this;
    }

    public bool Clean => refusals.Count == 0;

    public Outcome<T> Then<T>(Func<T> sum) => Clean ? Outcome.Of(sum()) : Outcome.Refused<T>(refusals);

    public Outcome<T> Go<T>(Func<Outcome<T>> sum) => Clean ? sum() : Outcome.Refused<T>(refusals);
}
