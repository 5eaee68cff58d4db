using System.Globalization;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Bench;

/// <summary>Invented books to measure on.</summary>
internal static class Books
{
    private static readonly DateTimeOffset began = new(2026, 1, 10, 18, 0, 0, TimeSpan.Zero);

    public static Book Start(string folder, string name, string layout = "inline", string cylinders = "4")
    {
        var book = Book.Open(Path.Combine(folder, name));
        Sure(book.Submit(Sending(-1), new Tell(new BookStarted("Invented engine", new Dictionary<string, string> { ["layout"] = layout, ["n"] = cylinders }))));
        return book;
    }

    public static void Note(Book book, int n) =>
        Sure(book.Submit(Sending(n), new Tell(new Noted("head.1", "note", $"note {n.ToString(CultureInfo.InvariantCulture)} about the head, as long as people usually write them"))));

    public static Sending Sending(int n) => new($"bench-{n.ToString(CultureInfo.InvariantCulture)}", began.AddSeconds(n), began.AddSeconds(n), "bench");

    public static Reply Sure(Outcome<Reply> outcome) => outcome.Value;
}
