using System.Globalization;

namespace Gudgeon.Sums;

/// <summary>
/// One thing wrong with what was given to a sum, in four parts: where, what was met, what was expected, what to do.
/// </summary>
/// <param name="Where">The input, by the name that the person knows it by.</param>
/// <param name="Met">What stood there.</param>
/// <param name="Expected">What could have stood there.</param>
/// <param name="Do">The next step, verb first.</param>
public sealed record Fault(string Where, string Met, string Expected, string Do)
{
    /// <summary>The four parts as one line.</summary>
    public override string ToString() => $"{Where}: met {Met}; expected {Expected}. {Do}.";

    /// <summary>A number as a fault shows it: at most six figures, a full stop as decimal mark.</summary>
    public static string Show(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
