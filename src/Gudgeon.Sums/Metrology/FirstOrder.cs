namespace Gudgeon.Sums.Metrology;

/// <summary>A sum whose inputs carry uncertainty.</summary>
/// <param name="inputs">The inputs, in order.</param>
/// <returns>The result.</returns>
public delegate double Model(ReadOnlySpan<double> inputs);

/// <summary>One input of a <see cref="Model"/>: its best value, and its line in the budget.</summary>
/// <param name="Value">Best value.</param>
/// <param name="Line">Its name and uncertainty; the sensitivity is worked out.</param>
public sealed record ModelInput(double Value, BudgetLine Line);

/// <summary>Carries uncertainty through any sum by its slopes (GUM, clause 5).</summary>
public static class FirstOrder
{
    // Differences of fourth order at a hundred-thousandth of the input: near a point where the sum bends sharply a wider step misses, a finer one loses digits.
    private const double Step = 1e-5;

    /// <summary>Works out the budget of a sum.</summary>
    /// <param name="model">The sum; smooth near the inputs.</param>
    /// <param name="unit">Unit of the result.</param>
    /// <param name="inputs">The inputs.</param>
    /// <param name="correlations">Inputs that move together.</param>
    /// <returns>The budget, one line per input.</returns>
    public static Budget Of(Model model, string unit, IReadOnlyList<ModelInput> inputs, IReadOnlyList<Correlation>? correlations = null)
    {
        var at = inputs.Select(input => input.Value).ToArray();
        var scales = inputs.Select(input => input.Line.StandardUncertainty).ToArray();
        var slopes = Slopes(model, at, scales);
        return new(model(at), unit, [.. inputs.Select((input, i) => input.Line with { Sensitivity = slopes[i] })], correlations);
    }

    /// <summary>Covariances of several results that share inputs: J·V·Jᵀ.</summary>
    /// <param name="models">The sums.</param>
    /// <param name="at">Best values of the inputs.</param>
    /// <param name="covariance">Covariances of the inputs.</param>
    /// <returns>Covariances of the results.</returns>
    /// <remarks>Source: GUM H.2.3; JCGM 102, 6.2.</remarks>
    public static double[,] Propagate(IReadOnlyList<Model> models, double[] at, double[,] covariance)
    {
        var scales = at.Select((_, i) => Math.Sqrt(covariance[i, i])).ToArray();
        var slopes = models.Select(model => Slopes(model, at, scales)).ToArray();
        var result = new double[models.Count, models.Count];
        for (var p = 0; p < models.Count; p++)
            for (var q = 0; q < models.Count; q++)
                for (var i = 0; i < at.Length; i++)
                    for (var j = 0; j < at.Length; j++)
                        result[p, q] += slopes[p][i] * covariance[i, j] * slopes[q][j];
        return result;
    }

    /// <summary>Second-order terms of the variance, for sums that bend: Σᵢⱼ (½f_ij² + f_i·f_ijj)·uᵢ²uⱼ².</summary>
    /// <param name="model">The sum.</param>
    /// <param name="inputs">The inputs; independent and normal.</param>
    /// <returns>What is to be added to u_c², in the unit squared; the second term uses third slopes and may be below zero.</returns>
    /// <remarks>Source: GUM 5.1.2 note.</remarks>
    public static double SecondOrderVariance(Model model, IReadOnlyList<ModelInput> inputs)
    {
        var at = inputs.Select(input => input.Value).ToArray();
        var u = inputs.Select(input => input.Line.StandardUncertainty).ToArray();
        var sum = 0.0;
        for (var i = 0; i < at.Length; i++)
            for (var j = 0; j < at.Length; j++)
            {
                var mixed = Mixed(model, at, u, i, j);
                sum += 0.5 * mixed * mixed + First(model, at, u, i) * Third(model, at, u, i, j);
            }
        return sum;
    }

    private static double[] Slopes(Model model, double[] at, double[] scales)
    {
        var slopes = new double[at.Length];
        for (var i = 0; i < at.Length; i++)
        {
            // An exact input at zero has no scale of its own: any small step serves.
            var size = Math.Max(Math.Abs(at[i]), scales[i]);
            var h = Step * (size == 0 ? 1 : size);
            var wide = (Moved(model, at, i, h) - Moved(model, at, i, -h)) / (2 * h);
            var narrow = (Moved(model, at, i, h / 2) - Moved(model, at, i, -h / 2)) / h;
            slopes[i] = (4 * narrow - wide) / 3;
        }
        return slopes;
    }

    // The slopes below are already multiplied by the uncertainties: steps are one u, so results come in the unit of the result.
    private static double First(Model model, double[] at, double[] u, int i) =>
        (Moved(model, at, i, u[i]) - Moved(model, at, i, -u[i])) / 2;

    private static double Mixed(Model model, double[] at, double[] u, int i, int j)
    {
        if (i == j)
            return Moved(model, at, i, u[i]) - 2 * model(at) + Moved(model, at, i, -u[i]);
        return (Moved2(model, at, i, u[i], j, u[j]) - Moved2(model, at, i, u[i], j, -u[j])
            - Moved2(model, at, i, -u[i], j, u[j]) + Moved2(model, at, i, -u[i], j, -u[j])) / 4;
    }

    private static double Third(Model model, double[] at, double[] u, int i, int j)
    {
        if (i == j)
            return (Moved(model, at, i, 2 * u[i]) - 2 * Moved(model, at, i, u[i]) + 2 * Moved(model, at, i, -u[i]) - Moved(model, at, i, -2 * u[i])) / 2;
        double Bend(double side) =>
            Moved2(model, at, i, side, j, u[j]) - 2 * Moved(model, at, i, side) + Moved2(model, at, i, side, j, -u[j]);
        return (Bend(u[i]) - Bend(-u[i])) / 2;
    }

    private static double Moved(Model model, double[] at, int i, double by) => Moved2(model, at, i, by, i, 0);

    private static double Moved2(Model model, double[] at, int i, double by, int j, double alsoBy)
    {
        var moved = (double[])at.Clone();
        moved[i] += by;
        moved[j] += alsoBy;
        return model(moved);
    }
}
