using System.Globalization;
using Gudgeon.Journal;
using Gudgeon.Sums;
using Gudgeon.Sums.Fits;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Pages.Measure.Work;

/// <summary>A fit as it is shown: limits, clearance, and the same hole with the classes around.</summary>
public sealed record FitView(Length Nominal, string Classes, Fit Fit)
{
    private static readonly string[] holes = ["G7", "H6", "H7", "H8", "JS7", "K7", "M7", "N7", "P7", "R7", "S7"];
    private static readonly string[] shafts = ["f7", "g6", "h6", "js6", "k6", "m6", "n6", "p6", "r6", "s6", "u6"];

    /// <summary>What was typed, understood; every fault at once.</summary>
    public static Outcome<FitView> Of(string size, string classes, BookUnits units)
    {
        var read = SpotText.Read(size, "mm", units, null, "size");
        if (!read.TryGet(out var mm))
            return Outcome.Refused<FitView>(read.Refusals);
        var nominal = Length.FromMillimetres(mm);
        return Fit.Find(nominal, classes, "fit").Then(fit => Outcome.Of(new FitView(nominal, classes.Trim(), fit)));
    }

    public string Hole => Classes.Split('/')[0];

    public string Shaft => Classes.Split('/')[1];

    /// <summary>Limits as a drawing has them: three places, four where half a micrometre counts.</summary>
    public static string Band((double Low, double High) limits)
    {
        var form = new[] { limits.Low, limits.High }.Any(l => Math.Abs(l * 1000 - Math.Round(l * 1000)) > 1e-6) ? "0.0000" : "0.000";
        return $"{limits.Low.ToString(form, CultureInfo.InvariantCulture)} to {Units.Joined(limits.High.ToString(form, CultureInfo.InvariantCulture), "mm")}";
    }

    public (double Low, double High) HoleMm => (Tidy(Fit.Hole.Lower), Tidy(Fit.Hole.Upper));

    public (double Low, double High) ShaftMm => (Tidy(Fit.Shaft.Lower), Tidy(Fit.Shaft.Upper));

    /// <summary>What the two do: run free, may do either, or bind.</summary>
    public string Words
    {
        get
        {
            var (least, most) = (Tidy(Fit.SmallestClearance), Tidy(Fit.LargestClearance));
            return least >= 0 ? $"a clearance of {Units.Plain(least)} to {Units.Show(most, "mm")}"
                : most <= 0 ? $"an interference of {Units.Plain(-most)} to {Units.Show(-least, "mm")}"
                : $"anything from an interference of {Units.Show(-least, "mm")} to a clearance of {Units.Show(most, "mm")}";
        }
    }

    /// <summary>Limits of the classes around it at this size, in µm from nominal.</summary>
    public IReadOnlyList<(string Class, string Low, string High)> Around(bool hole) =>
        [.. (hole ? holes : shafts).Select(c => (c, Iso286.Of(Nominal, c))).Select(x => (x.c, Signed(x.Item2.Lower.Micrometres), Signed(x.Item2.Upper.Micrometres)))];

    /// <summary>Width of each grade at this size, µm.</summary>
    public IReadOnlyList<(int Grade, string Width)> Grades =>
        [.. Enumerable.Range(5, 5).Select(g => (g, Iso286.Grade(Nominal, g).Micrometres.ToString("0.#", CultureInfo.InvariantCulture)))];

    public double HoleLow => Fit.Hole.Lower.Micrometres - Nominal.Micrometres;

    public double HoleHigh => Fit.Hole.Upper.Micrometres - Nominal.Micrometres;

    public double ShaftLow => Fit.Shaft.Lower.Micrometres - Nominal.Micrometres;

    public double ShaftHigh => Fit.Shaft.Upper.Micrometres - Nominal.Micrometres;

    public static string Signed(double micrometres) => Math.Round(micrometres, 1) switch
    {
        0 => "0",
        > 0 and var up => $"+{up.ToString("0.#", CultureInfo.InvariantCulture)}",
        var down => $"−{(-down).ToString("0.#", CultureInfo.InvariantCulture)}",
    };

    private static double Tidy(Length length) => (double)Math.Round((decimal)length.Millimetres, 7);
}
