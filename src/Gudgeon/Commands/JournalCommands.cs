using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Journal;
using Gudgeon.Photos;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>The journal as a file, and entries as they were recorded.</summary>
public static class JournalCommands
{
    public static void Add(CommandLine line)
    {
        var journal = new Command("journal", "Writes, reads and verifies journal files; without more, lists the last entries. Example: gudgeon journal export engine.jsonl")
        {
            Export(line),
            Import(line),
            Verify(line),
            BackUp(line),
            Restore(line),
        };
        var last = new Option<int>("--last") { Description = "How many entries", DefaultValueFactory = _ => 20, HelpName = "N" };
        journal.Options.Add(last);
        line.OnBook(journal, (parsed, book) =>
        {
            var entries = book.Read(bench => book.Entries.TakeLast(parsed.GetValue(last)).Select(r => (r, Words: r.Entry.Words(bench), Struck: book.IsStruck(r.Number))).ToArray());
            var facts = new JsonObject
            {
                ["entries"] = new JsonArray([.. entries.Select(e => new JsonObject { ["number"] = e.r.Number, ["at"] = e.r.At, ["by"] = e.r.By, ["words"] = e.Words, ["struck"] = e.Struck })]),
            };
            return line.Desk.Show(line.Json(parsed), "journal", facts, entries.Select(e => $"{e.r.Number,5}  {e.r.At:yyyy-MM-dd HH:mm}  {(e.Struck ? "(struck out) " : "")}{e.Words}"));
        });
        line.Root.Subcommands.Add(journal);
    }

    private static Argument<string> File(string what) => new("file") { Description = what };

    private static Command Export(CommandLine line)
    {
        var file = File("Where to write; - for the screen");
        var command = new Command("export", "Writes the whole journal as JSON lines. Example: gudgeon journal export engine.jsonl") { file };
        line.OnBook(command, (parsed, book) =>
        {
            var to = parsed.GetRequiredValue(file);
            if (to == "-")
            {
                using var screen = Console.OpenStandardOutput();
                JournalFile.Write(screen, book.Rows());
                return Exit.Done;
            }

            using (var stream = System.IO.File.Create(to))
            {
                JournalFile.Write(stream, book.Rows());
            }

            return line.Desk.Show(line.Json(parsed), "exported", new JsonObject { ["file"] = to, ["entries"] = book.Version }, [$"{book.Version} entries written to {to}"]);
        });
        return command;
    }

    private static Command Import(CommandLine line)
    {
        var file = File("A file made by journal export");
        var name = new Option<string?>("--as") { Description = "Name of the new book; else the file's", HelpName = "NAME" };
        var command = new Command("import", "Makes a new book of a journal file. Example: gudgeon journal import engine.jsonl") { file, name };
        line.OnShelf(command, (parsed, shelf) =>
        {
            var from = parsed.GetRequiredValue(file);
            if (!System.IO.File.Exists(from))
            {
                return line.Desk.Refuse(line.Json(parsed), [NoFile(from)]);
            }

            using var reader = System.IO.File.OpenText(from);
            var outcome = shelf.Import(reader, from, parsed.GetValue(name) ?? Path.GetFileNameWithoutExtension(from));
            if (!outcome.TryGet(out var book))
            {
                return line.Desk.Refuse(line.Json(parsed), outcome.Refusals);
            }

            var unreadable = book.Unreadable.Select(u => $"entry {u.Key} could not be taken: {u.Value}").ToArray();
            return line.Desk.Show(
                line.Json(parsed),
                "imported",
                new JsonObject { ["book"] = book.Name, ["entries"] = book.Version, ["unreadable"] = new JsonArray([.. book.Unreadable.Keys.Select(k => JsonValue.Create(k))]) },
                unreadable.Prepend($"Book {book.Name} made of {book.Version} entries"),
                unreadable.Length == 0 ? Exit.Done : Exit.Refused);
        });
        return command;
    }

    private static Command Verify(CommandLine line)
    {
        var file = File("A file made by journal export");
        var command = new Command("verify", "Reads a journal file back and says whether every entry stands. Example: gudgeon journal verify engine.jsonl") { file };
        command.SetAction(parsed =>
        {
            var from = parsed.GetRequiredValue(file);
            if (!System.IO.File.Exists(from))
            {
                return line.Desk.Refuse(line.Json(parsed), [NoFile(from)]);
            }

            var folder = Directory.CreateTempSubdirectory("gudgeon-verify-").FullName;
            try
            {
                using var reader = System.IO.File.OpenText(from);
                var outcome = JournalFile.Import(reader, from, folder);
                if (!outcome.TryGet(out var book))
                {
                    return line.Desk.Refuse(line.Json(parsed), outcome.Refusals);
                }

                using (book)
                {
                    var refusals = book.Unreadable.Select(u => new Refusal($"{from} entry {u.Key}", u.Value, "an entry that stands", "Use the program version that wrote it")).ToArray();
                    return refusals.Length > 0
                        ? line.Desk.Refuse(line.Json(parsed), refusals)
                        : line.Desk.Show(line.Json(parsed), "verified", new JsonObject { ["file"] = from, ["entries"] = book.Version }, [$"{from}: {book.Version} entries, all stand"]);
                }
            }
            finally
            {
                Directory.Delete(folder, true);
            }
        });
        return command;
    }

    private static Command BackUp(CommandLine line)
    {
        var file = File("Where to write; must not be there yet. A name that ends in .zip takes the photos along");
        var command = new Command("backup", "Copies the book to one file and reads it back. Example: gudgeon journal backup 2026-11.zip") { file };
        line.OnBook(command, (parsed, book) =>
        {
            var to = parsed.GetRequiredValue(file);
            if (System.IO.File.Exists(to))
            {
                return line.Desk.Refuse(line.Json(parsed), [new Refusal(to, "a file is there already", "a new file", "Give another name; a backup never overwrites")]);
            }

            if (BookBackup.IsWhole(to))
            {
                var outcome = BookBackup.Write(book, to);
                return outcome.TryGet(out var done)
                    ? line.Desk.Show(line.Json(parsed), "backed-up", BackUpFacts(to, done.Entries, done.Photos), done.Lost.Select(h => $"Photo {h} is in the book and no longer on the disk").Prepend($"{done.Entries} entries and {Count(done.Photos, "photo")} copied to {to} and read back"), done.Lost.Count == 0 ? Exit.Done : Exit.Refused)
                    : line.Desk.Refuse(line.Json(parsed), outcome.Refusals);
            }

            book.BackUp(to);
            using var copy = JournalStore.Open(to);
            var photos = book.Read(bench => bench.Photos.Count);
            IEnumerable<string> left = photos == 0 ? [] : [$"{Count(photos, "photo")} not in it: a name that ends in .zip takes them along"];
            var same = copy.After(0).SequenceEqual(book.Rows());
            return same
                ? line.Desk.Show(line.Json(parsed), "backed-up", BackUpFacts(to, book.Version, 0), left.Prepend($"{book.Version} entries copied to {to} and read back"))
                : line.Desk.Refuse(line.Json(parsed), [new Refusal(to, "the copy differs from the book", "the same entries", "Try again on another disk")]);
        });
        return command;
    }

    private static JsonObject BackUpFacts(string file, long entries, int photos) => new() { ["file"] = file, ["entries"] = entries, ["photos"] = photos };

    private static string Count(int count, string noun) => $"{count} {noun}{(count == 1 ? "" : "s")}";

    private static Command Restore(CommandLine line)
    {
        var file = File("A file made by journal backup");
        var name = new Option<string?>("--as") { Description = "Name of the new book; else the file's", HelpName = "NAME" };
        var command = new Command("restore", "Makes a new book of a backup, photos and all. Example: gudgeon journal restore 2026-11.zip") { file, name };
        line.OnShelf(command, (parsed, shelf) =>
        {
            var from = parsed.GetRequiredValue(file);
            if (!System.IO.File.Exists(from))
            {
                return line.Desk.Refuse(line.Json(parsed), [new Refusal(from, "no such file", "a file made by journal backup", "Look at its name")]);
            }

            var outcome = BookBackup.Restore(shelf, from, parsed.GetValue(name) ?? Path.GetFileNameWithoutExtension(from));
            if (!outcome.TryGet(out var book))
            {
                return line.Desk.Refuse(line.Json(parsed), outcome.Refusals);
            }

            var photos = Directory.Exists(Path.Combine(book.Folder, "photos")) ? Directory.EnumerateFiles(Path.Combine(book.Folder, "photos")).Count() : 0;
            return line.Desk.Show(line.Json(parsed), "restored", new JsonObject { ["book"] = book.Name, ["entries"] = book.Version, ["photos"] = photos }, [$"Book {book.Name} made of {book.Version} entries and {Count(photos, "photo")}"]);
        });
        return command;
    }

    private static Refusal NoFile(string file) => new(file, "no such file", "a file made by journal export", "Look at its name");
}
