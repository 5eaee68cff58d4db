namespace Gudgeon.Mutation;

/// <summary>What a worker is asked.</summary>
/// <param name="Mutant">The mutant to try.</param>
/// <param name="Tests">Tests that meet it while they run, in order.</param>
/// <param name="Fresh">Tests to run in a world in which it was active from the start, in order; none when it has no hand in what is set up once.</param>
internal sealed record Trial(int Mutant, int[] Tests, int[] Fresh);

/// <summary>What a worker answers.</summary>
/// <param name="Verdict">What became of the mutant.</param>
/// <param name="By">The test that caught it, if one did.</param>
internal sealed record Answer(Verdict Verdict, string? By = null);
