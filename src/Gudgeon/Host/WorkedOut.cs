using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Gudgeon.Journal;

namespace Gudgeon.Host;

/// <summary>
/// What was worked out from a book, kept until somebody records something in it: a page that is asked for again while
/// nothing happened is not reckoned again. Ask under the book's desk, where the book stands still.
/// </summary>
public sealed class WorkedOut
{
    /// <summary>Results that hang on the time of day pile up while nobody records; past this many all are worked out afresh.</summary>
    private const int Most = 200;

    private readonly ConditionalWeakTable<Book, Sheet> sheets = [];

    /// <param name="with">What the result depends on besides the book, such as the day; null for nothing.</param>
    public T Once<T>(Book book, Func<Bench, T> work, object? with = null)
    {
        var sheet = sheets.GetOrCreateValue(book);
        return (T)sheet.At(book.Version).GetOrAdd((typeof(T), with), _ => new Lazy<object?>(() => work(book.Bench))).Value!;
    }

    private sealed class Sheet
    {
        private (long Version, ConcurrentDictionary<(Type, object?), Lazy<object?>> Results) kept = (-1, []);
        private readonly Lock turning = new();

        public ConcurrentDictionary<(Type, object?), Lazy<object?>> At(long version)
        {
            lock (turning)
            {
                if (kept.Version != version || kept.Results.Count >= Most)
                    kept = (version, []);
                return kept.Results;
            }
        }
    }
}
