using System.Collections.Concurrent;

namespace Gudgeon.Host;

/// <summary>The desks of all books: whoever reads or writes a book goes through its one desk.</summary>
public sealed class Desks
{
    private readonly ConcurrentDictionary<string, Desk> desks = new(StringComparer.Ordinal);

    public Desk Of(string book) => desks.GetOrAdd(book, _ => new Desk());
}

/// <summary>
/// Where one book lies open. Many may read it at a time; who writes has it alone, because the bench is folded in place
/// and a page is made of many looks at it.
/// </summary>
public sealed class Desk
{
    private const int Readers = 16;
    private readonly SemaphoreSlim seats = new(Readers, Readers);
    private readonly SemaphoreSlim pen = new(1, 1);

    public async Task<IDisposable> Read(CancellationToken cancel)
    {
        await seats.WaitAsync(cancel);
        return new Leaving(() => seats.Release());
    }

    public async Task<IDisposable> Write(CancellationToken cancel)
    {
        // The pen first: two writers that each hold some seats would wait for each other for ever.
        await pen.WaitAsync(cancel);
        var taken = 0;
        try
        {
            for (; taken < Readers; taken++)
                await seats.WaitAsync(cancel);
        }
        catch (OperationCanceledException)
        {
            Leave(taken);
            throw;
        }

        return new Leaving(() => Leave(Readers));
    }

    private void Leave(int taken)
    {
        if (taken > 0)
            seats.Release(taken);
        pen.Release();
    }

    private sealed class Leaving(Action leave) : IDisposable
    {
        public void Dispose() => leave();
    }
}
