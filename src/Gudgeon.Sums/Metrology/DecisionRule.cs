using Gudgeon.Sums.Statistics;

namespace Gudgeon.Sums.Metrology;

/// <summary>How wide a guard is kept from a limit before a verdict is given.</summary>
/// <remarks>Source: ISO 14253-1; JCGM 106:2012, 8.3. Clauses from memory.</remarks>
public abstract record DecisionRule
{
    private DecisionRule()
    {
    }

    /// <summary>Guard of the expanded uncertainty, U = 2u: simple and on the safe side. The rule unless another is chosen.</summary>
    public static DecisionRule ExpandedUncertainty { get; } = new Fixed();

    /// <summary>Guard that leaves 95 % probability, about 1.645u: the default of the 2017 edition of ISO 14253-1.</summary>
    public static DecisionRule Probability95 { get; } = new Probability();

    /// <summary>Name to show.</summary>
    public abstract string Name { get; }

    /// <summary>Guard outside a limit, in standard uncertainties: beyond it the value is proven outside.</summary>
    public abstract double OutsideFactor { get; }

    /// <summary>Guard inside a limit, in standard uncertainties; infinite when no value in the band could be proven within.</summary>
    /// <param name="widthInUncertainties">Width of the band over u; infinite with one limit.</param>
    /// <returns>The factor.</returns>
    public abstract double InsideFactor(double widthInUncertainties);

    private sealed record Fixed : DecisionRule
    {
        public override string Name => "guard of U (k = 2)";

        public override double OutsideFactor => 2;

        public override double InsideFactor(double widthInUncertainties) => widthInUncertainties >= 4 ? 2 : double.PositiveInfinity;
    }

    private sealed record Probability : DecisionRule
    {
        private const double Wanted = 0.95;
        private static readonly double s_oneSided = Quantiles.NormalPoint(Wanted);

        public override string Name => "95 % probability";

        public override double OutsideFactor => s_oneSided;

        // In a narrow band both tails count: Φ(g) − Φ(g − T/u) = 0.95. The share is largest at the middle of the band, and too small there when the guard reaches beyond it.
        public override double InsideFactor(double widthInUncertainties)
        {
            if (widthInUncertainties > 20)
                return s_oneSided;
            double low = s_oneSided, high = widthInUncertainties / 2;
            if (Share(high, widthInUncertainties) < Wanted)
                return double.PositiveInfinity;
            for (var i = 0; i < 60; i++)
            {
                var middle = (low + high) / 2;
                if (Share(middle, widthInUncertainties) < Wanted)
                    low = middle;
                else
                    high = middle;
            }
            return high;
        }

        private static double Share(double guard, double width) =>
            Quantiles.NormalShareBelow(guard) - Quantiles.NormalShareBelow(guard - width);
    }
}
