using System.Text;
using System.Text.Json;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>
/// A journal as a text file that outlives this program: JSON lines in UTF-8, LF. First line <c>{"gudgeon_journal":1}</c>, then one entry a line,
/// in order, with its envelope. Docs: docs/journal-file.md.
/// </summary>
public static class JournalFile
{
    public const int Version = 1;

    /// <summary>Writes all rows. The same rows give the same bytes.</summary>
    public static void Write(Stream to, IEnumerable<Row> rows)
    {
        using var writer = new StreamWriter(to, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        writer.WriteLine(JsonSerializer.Serialize(new JournalHead(Version), JournalJson.Lines.JournalHead));
        foreach (var row in rows)
        {
            using var body = JsonDocument.Parse(row.Body);
            writer.WriteLine(JsonSerializer.Serialize(
                new JournalLine(row.Number, row.Id, row.Act, row.At, row.EnteredAt, row.By, body.RootElement),
                JournalJson.Lines.JournalLine));
        }
    }

    /// <summary>Reads all rows, or says line by line what cannot be read. Bodies are kept as written.</summary>
    public static Outcome<IReadOnlyList<Row>> Read(TextReader from, string file)
    {
        var rows = new List<Row>();
        var faults = new List<Refusal>();
        var head = from.ReadLine();
        if (head is null || HeadVersion(head) is not { } version)
        {
            return Outcome.Refused<IReadOnlyList<Row>>(new Refusal($"{file} line 1", Short(head ?? "an empty file"), "{\"gudgeon_journal\":1}", "Give a file made by journal export"));
        }

        if (version > Version)
        {
            return Outcome.Refused<IReadOnlyList<Row>>(new Refusal($"{file} line 1", $"journal version {version}", $"version {Version} or earlier", "Use the newer program"));
        }

        for (var n = 2; from.ReadLine() is { } text; n++)
        {
            if (ReadLine(text, out var why) is not { } row)
            {
                faults.Add(new Refusal($"{file} line {n}", why, "an entry with number, id, act, at, entered, by and entry", "Mend the line, or export the book again"));
            }
            else if (row.Number != rows.Count + 1 + faults.Count)
            {
                faults.Add(new Refusal($"{file} line {n}", $"number {row.Number}", $"number {rows.Count + 1 + faults.Count}, for no entry is ever left out", "Export the book again"));
            }
            else
            {
                rows.Add(row);
            }
        }

        return faults.Count > 0 ? Outcome.Refused<IReadOnlyList<Row>>(faults) : Outcome.Of<IReadOnlyList<Row>>(rows);
    }

    /// <summary>Makes a book of a journal file, in a folder that holds none yet.</summary>
    public static Outcome<Book> Import(TextReader from, string file, string folder)
    {
        if (Book.IsBook(folder))
        {
            return Outcome.Refused<Book>(new Refusal(folder, "a book is there already", "a folder without a book", "Give another name"));
        }

        return Read(from, file).Then(rows =>
        {
            var book = Book.Open(folder);
            book.TakeRows(rows);
            return Outcome.Of(book);
        });
    }

    private static int? HeadVersion(string line)
    {
        try
        {
            return JsonSerializer.Deserialize(line, JournalJson.Lines.JournalHead)?.GudgeonJournal;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static Row? ReadLine(string text, out string why)
    {
        try
        {
            var line = JsonSerializer.Deserialize(text, JournalJson.Lines.JournalLine);
            why = Short(text);
            return line is null or { Id: null } or { Act: null } or { At: null } or { Entered: null } or { By: null } || line.Entry.ValueKind != JsonValueKind.Object
                ? null
                : new Row(line.Number, line.Id, line.Act, line.At, line.Entered, line.By, line.Entry.GetRawText());
        }
        catch (JsonException e)
        {
            why = $"{Short(text)} ({e.Message})";
            return null;
        }
    }

    private static string Short(string text) => text.Length <= 60 ? text : $"{text[..57]}...";
}
