using System.Collections.Concurrent;
using System.Text;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>The folder that holds one folder a book. A book is opened once and kept open.</summary>
public sealed class Bookshelf(string folder) : IDisposable
{
    private readonly ConcurrentDictionary<string, Lazy<Book>> open = new(StringComparer.Ordinal);

    public string Folder { get; } = folder;

    /// <summary>Names of the books, in order.</summary>
    public IReadOnlyList<string> Names => !Directory.Exists(Folder)
        ? []
        : [.. Directory.EnumerateDirectories(Folder).Where(Book.IsBook).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    /// <summary>The book of that name.</summary>
    public Outcome<Book> Open(string name)
    {
        if (!Names.Contains(name))
        {
            return Outcome.Refused<Book>(new Refusal("book", $"\"{name}\"", Names.Count == 0 ? "a book; there is none yet" : $"one of {string.Join(", ", Names)}", "Start a book, or name one that is there"));
        }

        try
        {
            return Outcome.Of(open.GetOrAdd(name, n => new Lazy<Book>(() => Book.Open(Path.Combine(Folder, n)))).Value);
        }
        catch (InvalidDataException e)
        {
            open.TryRemove(name, out _);
            return Outcome.Refused<Book>(new Refusal(name, e.Message, "a book that can be read", "Restore it from a backup, or move its folder away"));
        }
    }

    /// <summary>A free folder name for a book of that title: letters, digits and dashes.</summary>
    public string FreeName(string title)
    {
        var name = new StringBuilder();
        foreach (var c in title.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                name.Append(c);
            }
            else if (name.Length > 0 && name[^1] != '-')
            {
                name.Append('-');
            }
        }

        var stem = name.ToString().Trim('-') is { Length: > 0 } some ? some[..Math.Min(40, some.Length)].Trim('-') : "book";
        return Enumerable.Range(1, int.MaxValue)
            .Select(n => n == 1 ? stem : $"{stem}-{n}")
            .First(n => !Directory.Exists(Path.Combine(Folder, n)));
    }

    /// <summary>Starts a new book; with no answers, from nothing.</summary>
    public Outcome<Book> Start(string title, IReadOnlyDictionary<string, string> answers, Sending sending)
    {
        if (answers.Count > 0 && EngineAnswers.Read(answers) is { Ok: false } read)
        {
            return Outcome.Refused<Book>(read.Refusals);
        }

        var entry = new BookStarted(title, answers);
        if (entry.Check(new Bench()) is { } refusal)
        {
            return Outcome.Refused<Book>(refusal);
        }

        // A start that was sent before starts nothing again.
        if (Names.Select(Open).FirstOrDefault(b => b.Ok && b.Value.Entries.Count > 0 && b.Value.Entries[0].Id == sending.Id) is { } there)
        {
            return there;
        }

        var name = FreeName(title);
        var book = Book.Open(Path.Combine(Folder, name));
        var reply = book.Submit(sending, new Tell(entry));
        book.Dispose();
        return reply.Then(_ => Open(name));
    }

    /// <summary>Makes a book of a journal file.</summary>
    public Outcome<Book> Import(TextReader from, string file, string title)
    {
        var name = FreeName(title);
        return JournalFile.Import(from, file, Path.Combine(Folder, name)).Then(book =>
        {
            book.Dispose();
            return Open(name);
        });
    }

    public void Dispose()
    {
        foreach (var book in open.Values.Where(b => b.IsValueCreated))
        {
            book.Value.Dispose();
        }
    }
}
