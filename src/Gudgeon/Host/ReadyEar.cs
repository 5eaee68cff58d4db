using System.Runtime.CompilerServices;
using Gudgeon.Capture;
using Gudgeon.Journal;

namespace Gudgeon.Host;

/// <summary>
/// Makes the ear ready for a book once its page was served: who begins to type while looking at it waits for no index.
/// </summary>
public sealed class ReadyEar(Desks desks, TimeProvider clock)
{
    private readonly ConditionalWeakTable<Book, StrongBox<long>> asked = [];

    /// <summary>In the background, at the book's desk like every reader; nothing to do where nobody recorded anything since.</summary>
    public void For(string slug, Book book)
    {
        var version = book.Version + 1;
        if (Interlocked.Exchange(ref asked.GetOrCreateValue(book).Value, version) != version)
            _ = Task.Run(() => Make(slug, book));
    }

    private async Task Make(string slug, Book book)
    {
        using (await desks.Of(slug).Read(CancellationToken.None))
            Telling.MakeReady(book.Bench, clock.GetLocalNow());
    }
}
