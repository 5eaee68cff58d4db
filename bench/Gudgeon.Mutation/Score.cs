namespace Gudgeon.Mutation;

/// <summary>Counts of what became of some mutants.</summary>
internal sealed class Score(IEnumerable<(Mutant Mutant, Answer Answer)> tried)
{
    /// <summary>The least share, in per cent, that a run may end with.</summary>
    public const double Least = 85;

    private readonly ILookup<Verdict, Mutant> _by = tried.ToLookup(t => t.Answer.Verdict, t => t.Mutant);

    /// <summary>Caught mutants, in per cent of all: one that runs on without end is caught, one that no test meets is not.</summary>
    public double PerCent => 100.0 * (Count(Verdict.Killed) + Count(Verdict.Timeout)) / All;

    private int All => _by.Sum(g => g.Count());

    /// <summary>The table: every file, every folder and the whole.</summary>
    public static IEnumerable<string> Table(IReadOnlyList<(Mutant Mutant, Answer Answer)> tried)
    {
        yield return $"{"",-34} {"mutants",8} {"killed",8} {"timeout",8} {"survived",8} {"not met",8} {"score %",8}";
        foreach (var folder in tried.GroupBy(t => Path.GetDirectoryName(t.Mutant.File)!).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            foreach (var file in folder.GroupBy(t => t.Mutant.File).OrderBy(g => g.Key, StringComparer.Ordinal))
                yield return new Score(file).Row("  " + file.Key);
            yield return new Score(folder).Row(folder.Key.Length > 0 ? folder.Key : "(no folder)");
        }
        yield return new Score(tried).Row("all");
    }

    /// <summary>One line for each mutant that was not caught.</summary>
    public static IEnumerable<string> Missed(IEnumerable<(Mutant Mutant, Answer Answer)> tried) => tried
        .Where(t => t.Answer.Verdict is Verdict.Survived or Verdict.NoCoverage)
        .OrderBy(t => t.Mutant.File, StringComparer.Ordinal).ThenBy(t => t.Mutant.Line)
        .Select(t => $"{t.Mutant.File}:{t.Mutant.Line} {t.Answer.Verdict} ({t.Mutant.Kind}): {t.Mutant.Original} => {t.Mutant.Replacement}");

    private int Count(Verdict verdict) => _by[verdict].Count();

    private string Row(string name) => string.Create(null,
        $"{name,-34} {All,8} {Count(Verdict.Killed),8} {Count(Verdict.Timeout),8} {Count(Verdict.Survived),8} {Count(Verdict.NoCoverage),8} {PerCent,8:0.0}");
}
