using Microsoft.Data.Sqlite;

namespace Gudgeon.Journal;

/// <summary>
/// The journal on disk: SQLite, WAL, every append durable before it is answered. One table, never updated, never deleted from.
/// Several processes may hold the same book; each append first reads what the others wrote.
/// </summary>
public sealed class JournalStore : IDisposable
{
    private const int SchemaVersion = 1;

    private readonly SqliteConnection connection;
    private readonly SqliteCommand after;
    private readonly SqliteCommand holds;
    private readonly SqliteCommand newest;
    private readonly SqliteCommand insert;
    private readonly SqliteCommand begin;
    private readonly SqliteCommand commit;
    private readonly SqliteCommand rollback;

    private JournalStore(SqliteConnection connection)
    {
        this.connection = connection;
        after = Command("SELECT number, id, act, at, entered, by, body FROM entries WHERE number > $number ORDER BY number", "$number");
        holds = Command("SELECT 1 FROM entries WHERE id = $id", "$id");
        newest = Command("SELECT coalesce(max(number), 0) FROM entries");
        insert = Command("INSERT INTO entries (number, id, act, at, entered, by, body) VALUES ($number, $id, $act, $at, $entered, $by, $body)", "$number", "$id", "$act", "$at", "$entered", "$by", "$body");
        begin = Command("BEGIN IMMEDIATE");
        commit = Command("COMMIT");
        rollback = Command("ROLLBACK");
    }

    /// <summary>Opens the journal in a file, making it when it is not there.</summary>
    /// <exception cref="InvalidDataException">The file was written by a later version, or is no journal.</exception>
    public static JournalStore Open(string file)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false, DefaultTimeout = 10 }.ToString());
        try
        {
            connection.Open();
            Run(connection, "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA busy_timeout=10000;");
            using var version = connection.CreateCommand();
            version.CommandText = "PRAGMA user_version";
            switch (Convert.ToInt32(version.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture))
            {
                case 0:
                    Run(connection, $"""
                        BEGIN IMMEDIATE;
                        CREATE TABLE IF NOT EXISTS entries (
                            number INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, act TEXT NOT NULL,
                            at TEXT NOT NULL, entered TEXT NOT NULL, by TEXT NOT NULL, body TEXT NOT NULL) STRICT;
                        PRAGMA user_version = {SchemaVersion};
                        COMMIT;
                        """);
                    break;
                case SchemaVersion:
                    break;
                case var later:
                    throw new InvalidDataException($"{file}: written by a later version (schema {later}); this program reads schema {SchemaVersion}. Use the newer program");
            }

            return new JournalStore(connection);
        }
        catch (SqliteException e)
        {
            connection.Dispose();
            throw new InvalidDataException($"{file}: {e.Message}. Expected a book's journal. Restore the file from a backup", e);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Entries after a number, in order.</summary>
    public IEnumerable<Row> After(long number)
    {
        after.Parameters[0].Value = number;
        using var reader = after.ExecuteReader();
        var sender = "";
        while (reader.Read())
        {
            // Most entries are an act of their own, entered when the work was done, by the sender of the one before: one text serves for both.
            var (id, at) = (reader.GetString(1), reader.GetString(3));
            sender = Same(sender, reader.GetString(5));
            yield return new Row(reader.GetInt64(0), id, Same(id, reader.GetString(2)), at, Same(at, reader.GetString(4)), sender, reader.GetString(6));
        }

        static string Same(string known, string read) => known == read ? known : read;
    }

    /// <summary>Whether an entry with this id was recorded.</summary>
    public bool Holds(string id)
    {
        holds.Parameters[0].Value = id;
        return holds.ExecuteScalar() is not null;
    }

    /// <summary>Number of the newest entry on disk, whoever wrote it.</summary>
    public long Newest() => (long)newest.ExecuteScalar()!;

    /// <summary>Holds off other writers until the work is done; what it wrote is kept only when it returns.</summary>
    public T Exclusively<T>(Func<T> work)
    {
        begin.ExecuteNonQuery();
        try
        {
            var result = work();
            commit.ExecuteNonQuery();
            return result;
        }
        catch
        {
            rollback.ExecuteNonQuery();
            throw;
        }
    }

    /// <summary>Writes one entry; only inside <see cref="Exclusively"/>.</summary>
    public void Write(Row row)
    {
        var p = insert.Parameters;
        (p[0].Value, p[1].Value, p[2].Value, p[3].Value, p[4].Value, p[5].Value, p[6].Value) = (row.Number, row.Id, row.Act, row.At, row.EnteredAt, row.By, row.Body);
        insert.ExecuteNonQuery();
    }

    /// <summary>Copies the whole book to another file, as it stands at one moment.</summary>
    public void BackUp(string file)
    {
        using var copy = Command("VACUUM INTO $file", "$file");
        copy.Parameters[0].Value = file;
        copy.ExecuteNonQuery();
    }

    public void Dispose()
    {
        foreach (var command in new[] { after, newest, holds, insert, begin, commit, rollback })
        {
            command.Dispose();
        }

        connection.Dispose();
    }

    private SqliteCommand Command(string text, params string[] parameters)
    {
        var command = connection.CreateCommand();
        command.CommandText = text;
        foreach (var name in parameters)
        {
            command.Parameters.Add(new SqliteParameter { ParameterName = name });
        }

        return command;
    }

    private static void Run(SqliteConnection connection, string text)
    {
        using var command = connection.CreateCommand();
        command.CommandText = text;
        command.ExecuteNonQuery();
    }
}
