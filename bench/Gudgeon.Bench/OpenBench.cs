using System.Diagnostics;
using System.Globalization;
using Gudgeon.Journal;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Bench;

/// <summary>Opening a book of 100,000 entries (read, understand, fold), against reading the same rows raw.</summary>
internal static class OpenBench
{
    private const int Entries = 100_000;
    private const int Rounds = 9;

    public static void Run()
    {
        var folder = Directory.CreateTempSubdirectory("gudgeon-bench-").FullName;
        try
        {
            Fill(folder);
            var (ours, yardstick) = (new Sample(), new Sample());
            for (var i = 0; i < Rounds + 2; i++)
            {
                var watch = Stopwatch.StartNew();
                using (var book = Book.Open(Path.Combine(folder, "long")))
                {
                    if (book.Version != Entries || book.Unreadable.Count > 0)
                    {
                        throw new InvalidOperationException($"opened {book.Version} entries, {book.Unreadable.Count} unreadable");
                    }
                }

                var mine = watch.Elapsed;
                watch.Restart();
                var characters = ReadRaw(Path.Combine(folder, "long", Book.FileName));
                var raw = watch.Elapsed;
                if (characters < Entries)
                {
                    throw new InvalidOperationException("the yardstick read nothing");
                }

                if (i >= 2)
                {
                    ours.Add(mine);
                    yardstick.Add(raw);
                }
            }

            Console.WriteLine($"open: {Entries} entries folded {Sample.Show(ours.Median)} ms, rows read raw {Sample.Show(yardstick.Median)} ms (medians of {Rounds}), ratio {Sample.Show(ours.Median / yardstick.Median)} (goal at most 3)");
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    /// <summary>A mix as in use: parts off and on with their fasteners, notes, places.</summary>
    private static void Fill(string folder)
    {
        using var book = Books.Start(folder, "long");
        var parts = book.Bench.Engine.Parts.Values.Where(p => book.Bench.Engine.CarrierOf(p.Id) is not null && book.Bench.Engine.CarriedBy(p.Id).Count == 0).Select(p => p.Id).Take(40).ToArray();
        var n = 0;
        while (book.Version < Entries)
        {
            var requests = new List<Request>();
            for (var i = 0; i < 500 && book.Version + requests.Count < Entries; i++, n++)
            {
                var part = parts[n / 4 % parts.Length];
                requests.Add(new Tell((n % 4) switch
                {
                    0 => new PartOff(part, [], $"bag {(n % 60).ToString(CultureInfo.InvariantCulture)}"),
                    1 => new Noted(part, "note", "looks as good as new, a little carbon on one side"),
                    2 => new PartPut(part, "shelf 2"),
                    _ => new PartOn(part),
                }));
            }

            Books.Sure(book.Submit(Books.Sending(n), requests));
        }
    }

    private static long ReadRaw(string file)
    {
        using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT number, id, act, at, entered, by, body FROM entries ORDER BY number";
        using var reader = command.ExecuteReader();
        var characters = 0L;
        while (reader.Read())
        {
            characters += reader.GetInt64(0) >= 0 ? 1 : 0;
            for (var i = 1; i < 7; i++)
            {
                characters += reader.GetString(i).Length;
            }
        }

        return characters;
    }
}
