using System.Diagnostics;
using Gudgeon.Journal;
using Microsoft.Data.Sqlite;

namespace Gudgeon.Bench;

/// <summary>One entry appended durably through the book, against one raw insert of the same row into a file with the same pragmas.</summary>
internal static class AppendBench
{
    private const int Rounds = 600;

    public static void Run()
    {
        var folder = Directory.CreateTempSubdirectory("gudgeon-bench-").FullName;
        try
        {
            using var book = Books.Start(folder, "append");
            using var raw = new RawFile(Path.Combine(folder, "raw.db"));
            var (ours, yardstick) = (new Sample(), new Sample());
            for (var i = 0; i < Rounds + 50; i++)
            {
                var watch = Stopwatch.StartNew();
                Books.Note(book, i);
                var mine = watch.Elapsed;
                var row = Row.Of(book.Entries[^1]);
                watch.Restart();
                raw.Insert(row);
                if (i >= 50)
                {
                    ours.Add(mine);
                    yardstick.Add(watch.Elapsed);
                }
            }

            Console.WriteLine($"append: one durable entry {Sample.Show(ours.Median)} ms, raw insert {Sample.Show(yardstick.Median)} ms (medians of {Rounds}), ratio {Sample.Show(ours.Median / yardstick.Median)} (goal at most 1.3)");
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    /// <summary>The yardstick: the same table, the same pragmas, one prepared insert in its own transaction.</summary>
    private sealed class RawFile : IDisposable
    {
        private readonly SqliteConnection connection;
        private readonly SqliteCommand insert;

        public RawFile(string file)
        {
            connection = new SqliteConnection($"Data Source={file};Pooling=False");
            connection.Open();
            using var make = connection.CreateCommand();
            make.CommandText = """
                PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL;
                CREATE TABLE entries (
                    number INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, act TEXT NOT NULL,
                    at TEXT NOT NULL, entered TEXT NOT NULL, by TEXT NOT NULL, body TEXT NOT NULL) STRICT;
                """;
            make.ExecuteNonQuery();
            insert = connection.CreateCommand();
            insert.CommandText = "INSERT INTO entries VALUES ($a, $b, $c, $d, $e, $f, $g)";
            foreach (var name in "abcdefg")
            {
                insert.Parameters.Add(new SqliteParameter { ParameterName = $"${name}" });
            }
        }

        public void Insert(Row row)
        {
            object[] values = [row.Number, row.Id, row.Act, row.At, row.EnteredAt, row.By, row.Body];
            for (var i = 0; i < values.Length; i++)
            {
                insert.Parameters[i].Value = values[i];
            }

            insert.ExecuteNonQuery();
        }

        public void Dispose()
        {
            insert.Dispose();
            connection.Dispose();
        }
    }
}
