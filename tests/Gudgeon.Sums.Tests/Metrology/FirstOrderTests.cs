using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Tests.Metrology;

public class FirstOrderTests
{
    // GUM H.1 end gauge, seen in three public test suites; recomputed with NumPy. The print sums rounded lines (u² = 1002 nm²), hence 0.05 nm. Lengths in nm, so l = l_S + d − l_S(δα·θ + α_S·δθ).
    private static double EndGauge(ReadOnlySpan<double> x) => x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]);

    private static ModelInput[] EndGaugeInputs()
    {
        var d = new Budget(215, "nm",
            [new("repeats", 13 / Math.Sqrt(5), "", 1, 24), new("random", 0.01e3 / 2.57, "", 1, 5), new("systematic", 0.02e3 / 3, "", 1, 8)]);
        return
        [
            new(50_000_623, new("standard", 25, "", 1, 18)),
            new(215, new("comparator", d.StandardUncertainty, "", 1, d.EffectiveDegreesOfFreedom)),
            new(0, new("difference of expansion", 0.58e-6, "", 1, 50)),
            new(-0.1, new("temperature", 0.41, "")),
            new(11.5e-6, new("expansion", 1.2e-6, "")),
            new(0, new("difference of temperature", 0.029, "", 1, 2)),
        ];
    }

    [Fact]
    public void EndGauge_gumH1_agrees()
    {
        var budget = FirstOrder.Of(EndGauge, "nm", EndGaugeInputs());
        Assert.Equal(50_000_838, budget.Value, 0.5);
        double[] contributions = [25, 9.7, 2.9, 0, 0, 16.6];
        for (var i = 0; i < contributions.Length; i++)
            Assert.Equal(contributions[i], Math.Abs(budget.Lines[i].Contribution), 0.08);
        Assert.Equal(25.6, budget.Lines[1].DegreesOfFreedom, 0.05);
        Assert.Equal(31.66, budget.StandardUncertainty, 0.05);
        Assert.Equal(16.7, budget.EffectiveDegreesOfFreedom, 0.1);
        var (u99, k) = budget.ExpandedFor(0.99);
        Assert.Equal(2.92, k, 0.005);
        Assert.Equal(92.5, u99, 0.2);
    }

    // GUM H.1.7: second-order terms 11.7 and 1.7 nm raise u to 34 nm (from memory); recomputed from unrounded inputs: 11.89, 1.74, 33.9.
    [Fact]
    public void EndGauge_gumH17_secondOrder()
    {
        var inputs = EndGaugeInputs();
        var extra = FirstOrder.SecondOrderVariance(EndGauge, inputs);
        Assert.Equal(11.89 * 11.89 + 1.74 * 1.74, extra, 0.3);
        Assert.Equal(33.9, Math.Sqrt(Math.Pow(FirstOrder.Of(EndGauge, "nm", inputs).StandardUncertainty, 2) + extra), 0.05);
    }

    // GUM H.2: data and results seen in a public test suite; recomputed with the uncertainties library.
    [Fact]
    public void Impedance_gumH2_correlatedInputs()
    {
        double[] v = [5.007, 4.994, 5.005, 4.990, 4.999], i = [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3], phi = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
        double[][] data = [v, i, phi];
        var at = data.Select(x => Samples.Mean(x)).ToArray();
        var covariance = new double[3, 3];
        for (var a = 0; a < 3; a++)
            for (var b = 0; b < 3; b++)
                covariance[a, b] = Enumerable.Range(0, 5).Sum(k => (data[a][k] - at[a]) * (data[b][k] - at[b])) / 20;
        Model[] models = [x => x[0] / x[1] * Math.Cos(x[2]), x => x[0] / x[1] * Math.Sin(x[2]), x => x[0] / x[1]];
        var c = FirstOrder.Propagate(models, at, covariance);
        Assert.Equal([127.73217, 219.84651, 254.25970], models.Select(model => Math.Round(model(at), 5)));
        Assert.Equal(0.07107, Math.Sqrt(c[0, 0]), 1e-5);
        Assert.Equal(0.29558, Math.Sqrt(c[1, 1]), 1e-5);
        Assert.Equal(0.23634, Math.Sqrt(c[2, 2]), 1e-5);
        Assert.Equal(-0.58843, R(0, 1), 1e-5);
        Assert.Equal(-0.48526, R(0, 2), 1e-5);
        Assert.Equal(0.99251, R(1, 2), 1e-5);
        Assert.Equal(-0.36, covariance[0, 1] / Math.Sqrt(covariance[0, 0] * covariance[1, 1]), 0.006);

        double R(int p, int q) => c[p, q] / Math.Sqrt(c[p, p] * c[q, q]);
    }

    // The same through a budget with its correlations: u(Z) only.
    [Fact]
    public void Impedance_budgetWithCorrelations_agrees()
    {
        var budget = FirstOrder.Of(x => x[0] / x[1], "Ω",
            [new(4.9990, new("V", 0.0032094, "", 1, 4)), new(19.6610e-3, new("I", 0.0094710e-3, "", 1, 4))], [new(0, 1, -0.35531)]);
        Assert.Equal(0.2363, budget.StandardUncertainty, 2e-4);
    }

    // NPL Report DEM-ES-011 9.2 (seen): first order of ln x, x rectangular 0.1 to 1.1: −0.5108256, 0.4811252.
    [Fact]
    public void Logarithm_nplReport_firstOrder()
    {
        var budget = FirstOrder.Of(x => Math.Log(x[0]), "1", [new(0.6, BudgetLine.Rectangular("x", 0.5))]);
        Assert.Equal(-0.5108256, budget.Value, 1e-7);
        Assert.Equal(0.4811252, budget.StandardUncertainty, 1e-7);
    }

    [Fact]
    public void Slopes_exactInputAtZero_isFound() =>
        Assert.Equal(3, FirstOrder.Of(x => 3 * x[0] + 5, "mm", [new(0, new("zero", 0, ""))]).Lines[0].Sensitivity, 1e-9);

    // One-way clutch of Chase, Gao and Magleby (data from memory; sensitivities recomputed): degrees per mm.
    [Fact]
    public void Clutch_sensitivities_agree()
    {
        var budget = FirstOrder.Of(x => 180 / Math.PI * Math.Acos((x[0] + x[1]) / (x[2] - x[1])), "°",
            [new(27.645, new("a", 0.0166667, "")), new(11.430, new("c", 0.0033333, "")), new(50.800, new("e", 0.0041667, ""))]);
        Assert.Equal(7.01839, budget.Value, 5e-6);
        Assert.Equal([-11.910473, -23.731700, 11.821227], budget.Lines.Select(line => Math.Round(line.Sensitivity, 6)));
        Assert.Equal(0.219293, budget.StandardUncertainty, 1e-6);
    }
}
