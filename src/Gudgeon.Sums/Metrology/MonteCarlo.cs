using System.Numerics;
using System.Runtime.InteropServices;

namespace Gudgeon.Sums.Metrology;

/// <summary>Carries whole distributions through a sum by drawing from them. The seed is given, so a run can be done again.</summary>
/// <remarks>Source: JCGM 101:2008, clause 7. One million trials give intervals good to about two figures of u.</remarks>
public static class MonteCarlo
{
    private const int Block = 1024;

    /// <summary>Runs any sum.</summary>
    /// <param name="inputs">What is known of each input; independent. Inputs that move together share one distribution in the model.</param>
    /// <param name="model">The sum.</param>
    /// <param name="trials">How many draws, 1000 or more.</param>
    /// <param name="seed">The seed; alike seeds give alike results.</param>
    /// <returns>The result.</returns>
    public static MonteCarloResult Run(IReadOnlyList<Distribution> inputs, Model model, int trials, ulong seed)
    {
        var results = Results(trials);
        var chance = new Xoshiro(seed);
        var count = inputs.Count;
        var draws = new double[count * Block];
        Span<double> one = stackalloc double[count];
        for (var start = 0; start < trials; start += Block)
        {
            var length = Math.Min(Block, trials - start);
            for (var input = 0; input < count; input++)
                inputs[input].Fill(draws.AsSpan(input * Block, length), ref chance);
            for (var trial = 0; trial < length; trial++)
            {
                for (var input = 0; input < count; input++)
                    one[input] = draws[input * Block + trial];
                results[start + trial] = model(one);
            }
        }
        return new(results);
    }

    /// <summary>Runs a weighted sum: Σ cᵢxᵢ.</summary>
    /// <param name="inputs">What is known of each input; independent.</param>
    /// <param name="weights">The c, as many as there are inputs.</param>
    /// <param name="trials">How many draws, 1000 or more.</param>
    /// <param name="seed">The seed.</param>
    /// <returns>The result.</returns>
    public static MonteCarloResult RunSum(IReadOnlyList<Distribution> inputs, IReadOnlyList<double> weights, int trials, ulong seed)
    {
        if (inputs.Count != weights.Count)
            throw new ArgumentException($"{inputs.Count} inputs need as many weights; there are {weights.Count}.", nameof(weights));
        var results = Results(trials);
        var chance = new Xoshiro(seed);
        Span<double> block = stackalloc double[Block];
        for (var start = 0; start < trials; start += Block)
        {
            var sums = results.AsSpan(start, Math.Min(Block, trials - start));
            var draws = block[..sums.Length];
            sums.Clear();
            for (var input = 0; input < inputs.Count; input++)
            {
                inputs[input].Fill(draws, ref chance);
                AddTo(sums, draws, weights[input]);
            }
        }
        return new(results);
    }

    private static void AddTo(Span<double> sums, ReadOnlySpan<double> draws, double weight)
    {
        var lanes = MemoryMarshal.Cast<double, Vector<double>>(sums);
        var drawn = MemoryMarshal.Cast<double, Vector<double>>(draws);
        for (var i = 0; i < lanes.Length; i++)
            lanes[i] += weight * drawn[i];
        for (var i = lanes.Length * Vector<double>.Count; i < sums.Length; i++)
            sums[i] += weight * draws[i];
    }

    private static double[] Results(int trials) => trials >= 1000
        ? GC.AllocateUninitializedArray<double>(trials)
        : throw new ArgumentOutOfRangeException(nameof(trials), trials, "Fewer than 1000 trials say nothing of the ends of an interval.");
}
