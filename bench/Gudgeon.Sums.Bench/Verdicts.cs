using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Statistics;

/// <summary>A thousand invented characteristics, ten readings each: mean, budget of five lines, verdict, probability, next step.</summary>
internal static class Verdicts
{
    private static readonly double[][] s_readings = Make();
    private static readonly Instrument[] s_shelf = [new("calliper", 0.02, 0.02), new("micrometer", 0.001, 0.0015)];

    internal static double All()
    {
        var sum = 0.0;
        for (var i = 0; i < s_readings.Length; i++)
        {
            var readings = s_readings[i];
            var mean = Samples.Mean(readings);
            var budget = new Budget(mean, "mm",
                [
                    BudgetLine.Repeats("repeats", readings), BudgetLine.Resolution("display", 0.001), BudgetLine.Certificate("setting ring", 0.001),
                    BudgetLine.Rectangular("expansion", 1e-6) with { Sensitivity = 86 * 3 }, BudgetLine.Rectangular("temperature", 0.5) with { Sensitivity = 86 * 10e-6 },
                ]);
            var verdict = Verdict.Judge(mean, budget.StandardUncertainty, Limits.Between(86, 86.02));
            var parts = new UncertaintyParts(Samples.StandardDeviation(readings), readings.Length, 0.0006, 0.0003);
            sum += verdict.ProbabilityWithin + budget.EffectiveDegreesOfFreedom + (int)NextStep.After(verdict, parts, s_shelf, "mm").Kind;
        }
        return sum;
    }

    private static double[][] Make()
    {
        var all = new double[1000][];
        for (var i = 0; i < all.Length; i++)
            all[i] = [.. Enumerable.Range(0, 10).Select(k => 86 + 0.03 * Math.Sin(i) + 0.002 * Math.Sin(17.3 * k + i))];
        return all;
    }
}
