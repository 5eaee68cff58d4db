using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>Who sends what, and when the work was done.</summary>
/// <param name="Id">Given by the sender. The same id again records nothing again.</param>
public sealed record Sending(string Id, DateTimeOffset At, DateTimeOffset EnteredAt, string By);

/// <summary>What came of a request.</summary>
/// <param name="Entries">What was recorded.</param>
/// <param name="WasThere">True when this sending had been recorded before.</param>
public sealed record Reply(IReadOnlyList<Recorded> Entries, bool WasThere);

/// <summary>
/// One engine's book: the journal on disk and the bench folded from it. The only way in is <see cref="Submit"/>.
/// </summary>
public sealed class Book : IDisposable
{
    private readonly JournalStore store;
    private readonly ReaderWriterLockSlim gate = new();
    private readonly List<Recorded> all = [];
    private readonly SortedDictionary<long, string> unreadable = [];
    private HashSet<long> struck = [];
    private long last;

    private Book(string folder, JournalStore store) => (Folder, this.store) = (folder, store);

    public const string FileName = "book.db";

    public string Folder { get; }

    /// <summary>The folder's name, by which commands and addresses call the book.</summary>
    public string Name => Path.GetFileName(Folder);

    /// <summary>What no other book has: the id of its first entry, which the sender gave. A copy of the book has it too.</summary>
    public string Key => all.Count > 0 ? all[0].Id : Name;

    /// <summary>How things stand.</summary>
    public Bench Bench { get; private set; } = new();

    /// <summary>Every entry, struck or not, in order.</summary>
    public IReadOnlyList<Recorded> Entries => all;

    /// <summary>Entries that this program cannot read, by number, with the reason. The rest is shown.</summary>
    public IReadOnlyDictionary<long, string> Unreadable => unreadable;

    /// <summary>Number of the last entry: changes whenever anybody records anything.</summary>
    public long Version => last;

    public bool IsStruck(long number) => struck.Contains(number);

    /// <summary>Opens the book in a folder.</summary>
    /// <exception cref="InvalidDataException">The file is no journal, or of a later version.</exception>
    public static Book Open(string folder)
    {
        Directory.CreateDirectory(folder);
        var book = new Book(folder, JournalStore.Open(Path.Combine(folder, FileName)));
        book.Refresh();
        return book;
    }

    public static bool IsBook(string folder) => File.Exists(Path.Combine(folder, FileName));

    /// <summary>Takes in what others recorded since. True when there was something.</summary>
    public bool Refresh() => Alone(() => TakeIn(store.After(last)));

    /// <summary>Number of the newest entry on disk. Takes nothing in: cheap enough to ask every second.</summary>
    public long Newest() => Alone(store.Newest);

    /// <summary>Looks at how things stand, what others recorded included, while nobody changes it. Take copies out, not the bench.</summary>
    public T Read<T>(Func<Bench, T> look)
    {
        Refresh();
        gate.EnterReadLock();
        try
        {
            return look(Bench);
        }
        finally
        {
            gate.ExitReadLock();
        }
    }

    /// <summary>Decides requests and records what they come to: all of it, or nothing with the refusals.</summary>
    public Outcome<Reply> Submit(Sending sending, params IReadOnlyList<Request> requests) => Submit(sending, null, requests);

    /// <summary>
    /// Records a line that somebody said, with the requests that it was understood as. Nothing of a line is lost:
    /// what the bench refuses is kept as an open question, with the words.
    /// </summary>
    public Outcome<Reply> Submit(Sending sending, Said? said, IReadOnlyList<Request> requests) => Alone(() =>
    {
        var began = all.Count;
        try
        {
            return store.Exclusively(() => Decide(sending, said, requests));
        }
        catch
        {
            // The disk kept nothing of it: neither may the bench.
            Forget(began);
            throw;
        }
    });

    private T Alone<T>(Func<T> work)
    {
        gate.EnterWriteLock();
        try
        {
            return work();
        }
        finally
        {
            gate.ExitWriteLock();
        }
    }

    private Outcome<Reply> Decide(Sending sending, Said? said, IReadOnlyList<Request> requests)
    {
        TakeIn(store.After(last));
        if (store.Holds(sending.Id))
        {
            return Outcome.Of(new Reply([.. all.Where(r => r.Act == sending.Id)], true));
        }

        var began = all.Count;
        var refusals = new List<Refusal>();
        if (said is not null && Take(said, sending, began) is { } empty)
        {
            return Outcome.Refused<Reply>(empty);
        }

        foreach (var request in requests)
        {
            var refused = Take(request, sending, began);
            if (refused.Count > 0 && said is not null)
            {
                Take(new Asked(said.Text, string.Join(" ", refused)), sending, began);
            }

            refusals.AddRange(said is null ? refused : []);
        }

        if (refusals.Count > 0)
        {
            Forget(began);
            return Outcome.Refused<Reply>(refusals);
        }

        foreach (var recorded in all.Skip(began))
        {
            store.Write(Row.Of(recorded));
        }

        return Outcome.Of(new Reply([.. all.Skip(began)], false));
    }

    private IReadOnlyList<Refusal> Take(Request request, Sending sending, int began)
    {
        if (!Bench.IsStarted && request is not Tell { Entries: [BookStarted] })
        {
            return [new Refusal("book", "it has not been started", "a started book", "Answer the questions, or start from nothing")];
        }

        var decided = request.Decide(Bench);
        if (!decided.TryGet(out var entries))
        {
            return decided.Refusals;
        }

        foreach (var entry in entries)
        {
            if (Take(entry, sending, began) is { } refusal)
            {
                return [refusal];
            }
        }

        return [];
    }

    private Refusal? Take(Entry entry, Sending sending, int began)
    {
        var id = all.Count == began ? sending.Id : $"{sending.Id}/{all.Count - began + 1}";
        var recorded = new Recorded(last + 1, id, sending.Id, sending.At, sending.EnteredAt, sending.By, entry);
        if (entry is Struck strike)
        {
            return Strike(strike, recorded);
        }

        if (entry.Check(Bench) is { } refusal)
        {
            return refusal;
        }

        Bench.Take(recorded);
        Keep(recorded);
        return null;
    }

    private Refusal? Strike(Struck strike, Recorded recorded)
    {
        var target = all.Find(r => r.Number == strike.Entry);
        if (target is null || struck.Contains(strike.Entry) || target.Entry is BookStarted)
        {
            return new Refusal(
                $"entry {strike.Entry}",
                target is null ? "no such entry" : target.Entry is BookStarted ? "it starts the book" : "it is struck out already",
                "an entry that counts",
                "Look at the journal for its number");
        }

        var without = Effective([.. all, recorded], out var struckThen);
        Recorded? leans = null;
        var bench = Bench.Fold(without, (r, _) => leans ??= r);
        if (leans is not null)
        {
            return new Refusal(
                $"entry {strike.Entry}",
                $"entry {leans.Number} leans on it ({leans.Entry.Words(Bench)})",
                "an entry that no later one leans on",
                $"Strike out entry {leans.Number} first");
        }

        Keep(recorded);
        (Bench, struck) = (bench, struckThen);
        return null;
    }

    private bool TakeIn(IEnumerable<Row> rows)
    {
        var some = false;
        var refold = false;
        foreach (var (row, recorded, why) in Understood(rows))
        {
            some = true;
            last = row.Number;
            if (recorded is null)
            {
                unreadable[row.Number] = why!;
                continue;
            }

            refold |= recorded.Entry is Struck;
            Keep(recorded);
            if (refold)
            {
                continue;
            }

            if (recorded.Entry.Check(Bench) is { } refusal)
            {
                unreadable[row.Number] = refusal.ToString();
            }
            else
            {
                Bench.Take(recorded);
            }
        }

        if (refold)
        {
            Refold();
        }

        return some;
    }

    /// <summary>Reads the text of each row. A whole book is read on all cores: each row stands by itself, and the order is kept.</summary>
    private IEnumerable<(Row Row, Recorded? Recorded, string? Why)> Understood(IEnumerable<Row> rows) => last == 0
        ? rows.AsParallel().AsOrdered().Select(Understand)
        : rows.Select(Understand);

    private static (Row Row, Recorded? Recorded, string? Why) Understand(Row row) => (row, row.Read(out var why), why);

    private void Keep(Recorded recorded)
    {
        all.Add(recorded);
        last = recorded.Number;
    }

    private void Forget(int count)
    {
        if (all.Count == count)
        {
            return;
        }

        all.RemoveRange(count, all.Count - count);
        last = Math.Max(all.Count == 0 ? 0 : all[^1].Number, unreadable.Count == 0 ? 0 : unreadable.Keys.Last());
        Refold();
    }

    private void Refold()
    {
        var effective = Effective(all, out struck);
        Bench = Bench.Fold(effective, (r, refusal) => unreadable[r.Number] = refusal.ToString());
    }

    /// <summary>Entries that count. A strike counts unless a later one strikes it.</summary>
    private static List<Recorded> Effective(IReadOnlyList<Recorded> entries, out HashSet<long> struck)
    {
        struck = [];
        for (var i = entries.Count - 1; i >= 0; i--)
        {
            if (entries[i].Entry is Struck strike && !struck.Contains(entries[i].Number))
            {
                struck.Add(strike.Entry);
            }
        }

        var gone = struck;
        return [.. entries.Where(r => !gone.Contains(r.Number) && r.Entry is not Struck)];
    }

    /// <summary>The rows as they lie on disk.</summary>
    public IReadOnlyList<Row> Rows() => Alone(() => store.After(0).ToArray());

    /// <summary>Takes rows of a journal file into an empty book, all or none. Each meets the same check as a live entry; what cannot stand is kept and named by number.</summary>
    internal void TakeRows(IReadOnlyList<Row> rows) => Alone(() => store.Exclusively(() =>
    {
        foreach (var row in rows)
        {
            store.Write(row);
        }

        return TakeIn(rows);
    }));

    /// <summary>Copies the book's journal to another file.</summary>
    public void BackUp(string file) => Alone(() =>
    {
        store.BackUp(file);
        return true;
    });

    public void Dispose()
    {
        store.Dispose();
        gate.Dispose();
    }
}
