using Gudgeon.Sums.Metrology;

namespace Gudgeon.Sums.Tests.Metrology;

public class BudgetTests
{
    // GUM 4.3 divisors (seen, recomputed).
    [Fact]
    public void Lines_typeB_divideByTheirShape()
    {
        Assert.Equal(1.1547e-6, BudgetLine.Rectangular("coefficient", 2e-6).StandardUncertainty, 5e-11);
        Assert.Equal(0.353553, BudgetLine.Arcsine("room", 0.5).StandardUncertainty, 5e-7);
        Assert.Equal(0.00288675, BudgetLine.Resolution("display", 0.01).StandardUncertainty, 5e-9);
        Assert.Equal(0.408248, BudgetLine.Triangular("setting", 1).StandardUncertainty, 5e-7);
        Assert.Equal(0.0025, BudgetLine.Certificate("ring", 0.005).StandardUncertainty, 1e-15);
        Assert.Equal("certificate, U/k with k = 2.5", BudgetLine.Certificate("ring", 0.005, 2.5).Basis);
        Assert.Equal(double.PositiveInfinity, BudgetLine.Resolution("display", 0.01).DegreesOfFreedom);
    }

    // GUM Table 1 temperatures: s(mean) 0.332916, 19 degrees of freedom (seen).
    [Fact]
    public void Lines_typeA_countTheirFreedom()
    {
        double[] t = [96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72];
        var line = BudgetLine.Repeats("repeats", t);
        Assert.Equal(0.332916, line.StandardUncertainty, 1e-6);
        Assert.Equal(19, line.DegreesOfFreedom);
        Assert.Equal("20 readings, s/√n", line.Basis);
        var pooled = BudgetLine.Pooled("operator", 0.004, 24, 4);
        Assert.Equal(0.002, pooled.StandardUncertainty, 1e-15);
        Assert.Equal(24, pooled.DegreesOfFreedom);
    }

    // GUM G.4.2: 25 % → 8, 10 % → 50, 50 % → 2 (seen).
    [Theory]
    [InlineData(0.25, 8)]
    [InlineData(0.10, 50)]
    [InlineData(0.50, 2)]
    public void FreedomOfEstimate_gumG3(double doubt, double freedom) => Assert.Equal(freedom, BudgetLine.FreedomOfEstimate(doubt), 1e-9);

    // GUM G.4.1 example: 0.25, 0.57, 0.82 % with 9, 4, 14: u 1.029466, ν 18.998742 (seen, recomputed).
    [Fact]
    public void Budget_welchSatterthwaite_gumG41()
    {
        var budget = new Budget(100, "%", [new("a", 0.25, "", 1, 9), new("b", 0.57, "", 1, 4), new("c", 0.82, "", 1, 14)]);
        Assert.Equal(1.029466, budget.StandardUncertainty, 5e-7);
        Assert.Equal(18.998742, budget.EffectiveDegreesOfFreedom, 5e-7);
        Assert.Equal(2.2, budget.ExpandedFor(0.95).Expanded, 0.05);
        Assert.Equal(2.10, budget.ExpandedFor(0.95).CoverageFactor, 0.005);
        Assert.Equal(2.058932, budget.Expanded(), 1e-6);
    }

    // One line with infinite freedom: 0.57 (9), 0.25 (∞) → 12.8 (seen in a public test suite; a course example, not GUM).
    [Fact]
    public void Budget_infiniteFreedom_addsNothingBelow() =>
        Assert.Equal(12.8, new Budget(0, "", [new("a", 0.57, "", 1, 9), new("b", 0.25, "")]).EffectiveDegreesOfFreedom, 0.05);

    // EA-4/02 M:2022 S2: 22.5, 8.66, 14.4, 5.77, 5.77 mg → 29.26 mg, U = 58.5 mg (seen 29.2 and 58).
    [Fact]
    public void Budget_ea402Weight_agrees()
    {
        var budget = new Budget(10000.025, "g", [new("standard", 22.5, ""), new("drift", 8.66, ""), new("comparator", 14.4, ""), new("buoyancy", 5.77, ""), new("repeat", 5.77, "")]);
        Assert.Equal(29.26, budget.StandardUncertainty, 0.02);
        Assert.Equal(58.52, budget.Expanded(), 0.04);
    }

    // EA-4/02 S4, gauge block by comparison (from memory; root sum of squares recomputed): 36.4 nm.
    [Fact]
    public void Budget_ea402GaugeBlock_agrees()
    {
        double[] nm = [15.0, 17.3, 5.37, 18.5, 16.6, 11.8, 3.87];
        var budget = new Budget(49.999926, "mm", [.. nm.Select((u, i) => new BudgetLine($"line {i}", u, ""))]);
        Assert.Equal(36.40, budget.StandardUncertainty, 0.005);
        Assert.Equal(1, Enumerable.Range(0, nm.Length).Sum(budget.ShareOf), 1e-12);
        Assert.Equal(18.5 * 18.5 / (36.40 * 36.40), budget.ShareOf(3), 1e-3);
    }

    // The same gauge on bore and piston: an error common to both leaves the clearance (u² of a difference with r = 1 is zero).
    [Theory]
    [InlineData(1, 0.002)]
    [InlineData(0, 0.0048989795)]
    [InlineData(-1, 0.0066332496)]
    public void Budget_sameGaugeOnBoth_cancelsByItsCorrelation(double r, double expected)
    {
        var budget = new Budget(0.042, "mm",
            [new("gauge on bore", 0.003162277660168379, "", 1), new("gauge on piston", 0.003162277660168379, "", -1), new("repeats", 0.002, "")],
            [new(0, 1, r)]);
        Assert.Equal(expected, budget.StandardUncertainty, 1e-9);
    }

    [Fact]
    public void Budget_badInput_throwsWithWhatWasMet()
    {
        BudgetLine[] two = [new("a", 1, ""), new("b", 1, "")];
        Assert.StartsWith("A budget without a line has no uncertainty to state.", Assert.Throws<ArgumentException>(() => new Budget(0, "", [])).Message);
        Assert.StartsWith("A correlation joins two different lines of the budget; it named 0 and 2.", Assert.Throws<ArgumentException>(() => new Budget(0, "", two, [new(0, 2, 1)])).Message);
        Assert.StartsWith("A correlation joins two different lines of the budget; it named 1 and 1.", Assert.Throws<ArgumentException>(() => new Budget(0, "", two, [new(1, 1, 1)])).Message);
        Assert.StartsWith("A correlation lies between -1 and 1; it was 1.1.", Assert.Throws<ArgumentException>(() => new Budget(0, "", two, [new(0, 1, 1.1)])).Message);
        BudgetLine[] three = [.. two, new("c", 1, "")];
        Assert.StartsWith("These correlations cannot hold together",
            Assert.Throws<ArgumentException>(() => new Budget(0, "", three, [new(0, 1, -1), new(0, 2, -1), new(1, 2, -1)])).Message);
        Assert.StartsWith("a: an uncertainty is finite and not below zero.", Assert.Throws<ArgumentOutOfRangeException>(() => new BudgetLine("a", -1, "")).Message);
        Assert.StartsWith("a: degrees of freedom are above zero.", Assert.Throws<ArgumentOutOfRangeException>(() => new BudgetLine("a", 1, "", 1, 0)).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => BudgetLine.Pooled("a", 1, 5, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BudgetLine.Certificate("a", 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BudgetLine.FreedomOfEstimate(0));
    }

    [Fact]
    public void Budget_allZero_isExact()
    {
        var budget = new Budget(5, "mm", [new("counted", 0, "")]);
        Assert.Equal(0, budget.StandardUncertainty);
        Assert.Equal(double.PositiveInfinity, budget.EffectiveDegreesOfFreedom);
        Assert.Equal(0, budget.ShareOf(0));
    }
}
