using System.Reflection;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Pages.Books;

/// <summary>The invented engine that comes with the program: a journal file, taken in like anybody's.</summary>
public static class DemoBook
{
    private const string Name = "demo";
    private static readonly string? File = Assembly.GetExecutingAssembly().GetManifestResourceNames().FirstOrDefault(n => n.StartsWith("demo/", StringComparison.Ordinal));

    public static bool IsThere => File is not null;

    /// <summary>The demo book: the one on the shelf, or a fresh one.</summary>
    public static Outcome<Book> Open(Bookshelf shelf)
    {
        if (shelf.Names.Contains(Name))
            return shelf.Open(Name);
        if (File is null)
            return Outcome.Refused<Book>(new Refusal("demo book", "no journal file in this program", "one that was built with it", "Start a book of your own"));

        using var reader = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream(File)!);
        return shelf.Import(reader, File, Name);
    }
}
