using System.Globalization;

namespace Gudgeon.Sums.Quantities;

/// <summary>Shows figures. Rounding happens here, once; everything before carries all its digits.</summary>
public static class Figures
{
    private const int MostPlaces = 9;

    /// <summary>The number of decimal places that an uncertainty supports: those of its second significant figure.</summary>
    /// <param name="uncertainty">The uncertainty, in the unit of the figure; above zero.</param>
    /// <returns>Decimal places, 0 to 9.</returns>
    /// <remarks>Source: GUM 7.2.6, two significant digits at most.</remarks>
    public static int PlacesFor(double uncertainty)
    {
        if (!(uncertainty > 0) || !double.IsFinite(uncertainty))
            throw new ArgumentOutOfRangeException(nameof(uncertainty), uncertainty, "An uncertainty must be above zero.");
        // 0.00996 becomes 0.010 when rounded to two figures, so the place is found after rounding.
        var exponent = int.Parse(uncertainty.ToString("E1", CultureInfo.InvariantCulture).AsSpan(4), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        return Math.Clamp(1 - exponent, 0, MostPlaces);
    }

    /// <summary>Shows a figure to a number of places, a true minus before it where it is negative.</summary>
    /// <param name="value">The figure.</param>
    /// <param name="places">Decimal places, 0 to 9.</param>
    /// <returns>The text.</returns>
    public static string Fixed(double value, int places)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(places);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(places, MostPlaces);
        // Through decimal, so that a figure typed as 1.0005 rounds as its digits say and not as its binary neighbour does.
        var text = Math.Abs(value) < 1e15
            ? Math.Round((decimal)value, places, MidpointRounding.AwayFromZero).ToString($"F{places}", CultureInfo.InvariantCulture)
            : value.ToString("E6", CultureInfo.InvariantCulture);
        var isZero = text.AsSpan().IndexOfAnyInRange('1', '9') < 0;
        return text[0] != '-' ? text : isZero ? text[1..] : "−" + text[1..];
    }

    /// <summary>Shows a figure to the place that its expanded uncertainty supports: <c>1.998</c> for 1.99834 ± 0.012.</summary>
    /// <param name="value">The figure.</param>
    /// <param name="expandedUncertainty">U, in the unit of the figure; above zero.</param>
    /// <returns>The text, without a unit.</returns>
    public static string To(double value, double expandedUncertainty) => Fixed(value, PlacesFor(expandedUncertainty));

    /// <summary>Shows a figure with its expanded uncertainty, both to the same place: <c>86.0121 ± 0.0053</c>.</summary>
    /// <param name="value">The figure.</param>
    /// <param name="expandedUncertainty">U, in the unit of the figure; above zero.</param>
    /// <returns>The text, without a unit.</returns>
    public static string WithUncertainty(double value, double expandedUncertainty) =>
        $"{To(value, expandedUncertainty)} ± {To(expandedUncertainty, expandedUncertainty)}";

    /// <summary>Shows a length in the units of the book. Without an uncertainty it goes to a micrometre, or to a tenth of a thou.</summary>
    /// <param name="length">The length.</param>
    /// <param name="book">The units of the book.</param>
    /// <param name="expandedUncertainty">U, or null where none is known.</param>
    /// <returns>The text with its unit; a no-break space keeps the two together.</returns>
    public static string Length(Length length, BookUnits book, Length? expandedUncertainty = null)
    {
        var metric = book == BookUnits.Metric;
        var value = metric ? length.Millimetres : length.Inches;
        var u = metric ? expandedUncertainty?.Millimetres : expandedUncertainty?.Inches;
        var places = u is > 0 ? PlacesFor(u.Value) : metric ? 3 : 4;
        return $"{Fixed(value, places)}\u00A0{(metric ? "mm" : "in")}";
    }
}
