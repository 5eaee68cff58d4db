using System.Globalization;

namespace Gudgeon.Bench;

/// <summary>Timings of one thing, in milliseconds.</summary>
internal sealed class Sample
{
    private readonly List<double> times = [];

    public void Add(TimeSpan time) => times.Add(time.TotalMilliseconds);

    public double Percentile(double p)
    {
        var sorted = times.Order().ToArray();
        return sorted[(int)Math.Min(sorted.Length - 1, Math.Ceiling(p / 100 * sorted.Length) - 1)];
    }

    public double Median => Percentile(50);

    public static string Show(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);
}
