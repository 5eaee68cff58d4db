namespace Gudgeon.Journal;

/// <summary>Where the work was left: the first question of every evening.</summary>
/// <param name="Last">When the last work was done.</param>
/// <param name="Doings">The last things done, the newest first.</param>
/// <param name="HalfWay">What stands half done.</param>
/// <param name="OpenQuestions">How many questions of the book wait for an answer.</param>
public sealed record WhereLeft(DateTimeOffset Last, IReadOnlyList<Recorded> Doings, IReadOnlyList<string> HalfWay, int OpenQuestions)
{
    private const int Shown = 3;

    /// <summary>Null for a book in which nothing was done yet.</summary>
    public static WhereLeft? Of(Bench bench)
    {
        var done = bench.Told.Where(r => r.Entry is not (BookStarted or Said)).ToArray();
        return done.Length == 0
            ? null
            : new WhereLeft(done.Max(r => r.At), [.. done.OrderByDescending(r => r.At).ThenByDescending(r => r.Number).Take(Shown)], [.. AfterGap.HalfWay(bench)], bench.OpenQuestions.Count);
    }

    /// <summary>Whether a night has passed since: then the page says where the work was left.</summary>
    public bool HasSlept(DateTimeOffset now) => now - Last >= AfterGap.Night;
}
