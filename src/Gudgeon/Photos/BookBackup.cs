using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.RegularExpressions;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Photos;

/// <summary>What a backup holds.</summary>
/// <param name="Entries">Entries of the journal.</param>
/// <param name="Photos">Photos as they came.</param>
/// <param name="Lost">Photos that the journal names and the disk no longer has, by their hash.</param>
public sealed record BackedUp(long Entries, int Photos, IReadOnlyList<string> Lost);

/// <summary>
/// A book with its photos in one file: a zip (ISO/IEC 21320-1) with the journal as <c>book.db</c> and every photo as it came under
/// <c>photos/</c>, named by its SHA-256. What can be made again, small pictures and views, stays out.
/// </summary>
public static partial class BookBackup
{
    /// <summary>Whether a file is to hold the photos as well as the journal.</summary>
    public static bool IsWhole(string file) => file.EndsWith(".zip", StringComparison.OrdinalIgnoreCase);

    /// <summary>Writes the backup and reads it back; the file stands only when all of it could be read again.</summary>
    public static Outcome<BackedUp> Write(Book book, string to)
    {
        var work = Directory.CreateTempSubdirectory("gudgeon-backup-").FullName;
        var coming = $"{to}.coming";
        try
        {
            var copy = Path.Combine(work, Book.FileName);
            book.BackUp(copy);
            var folder = new PhotoFolder(book.Folder);
            var photos = book.Read(bench => bench.Photos.Keys.Select(hash => (Hash: hash, File: folder.Kept(hash))).ToArray());
            using (var zip = ZipFile.Open(coming, ZipArchiveMode.Create))
            {
                zip.CreateEntryFromFile(copy, Book.FileName, CompressionLevel.Optimal);
                foreach (var file in photos.Select(p => p.File).OfType<string>())
                    zip.CreateEntryFromFile(file, $"photos/{Path.GetFileName(file)}", CompressionLevel.NoCompression);
            }

            return Take(coming, Path.Combine(work, "again")).Then(taken =>
            {
                using var again = JournalStore.Open(Path.Combine(work, "again", Book.FileName));
                using var before = JournalStore.Open(copy);
                if (!again.After(0).SequenceEqual(before.After(0)))
                    return Outcome.Refused<BackedUp>(Differs(to));
                File.Move(coming, to);
                return Outcome.Of(new BackedUp(again.After(0).Count(), taken, [.. photos.Where(p => p.File is null).Select(p => p.Hash)]));
            });
        }
        finally
        {
            File.Delete(coming);
            Directory.Delete(work, true);
        }
    }

    /// <summary>Makes a new book of a backup, with its photos where the backup has them. What cannot be read whole leaves nothing behind.</summary>
    public static Outcome<Book> Restore(Bookshelf shelf, string from, string title)
    {
        var name = shelf.FreeName(title);
        var folder = Path.Combine(shelf.Folder, name);
        var outcome = IsWhole(from) ? Take(from, folder) : Copy(from, folder);
        var book = outcome.Then(_ => shelf.Open(name));
        if (!book.Ok && Directory.Exists(folder))
            Directory.Delete(folder, true);
        return book;
    }

    private static Outcome<int> Copy(string from, string folder)
    {
        Directory.CreateDirectory(folder);
        File.Copy(from, Path.Combine(folder, Book.FileName));
        return Outcome.Of(0);
    }

    /// <summary>Unpacks a backup and holds every photo to the hash in its name.</summary>
    private static Outcome<int> Take(string from, string folder)
    {
        try
        {
            using var zip = ZipFile.OpenRead(from);
            var strange = zip.Entries.FirstOrDefault(e => e.FullName != Book.FileName && !PhotoName().IsMatch(e.FullName));
            if (strange is not null)
                return Outcome.Refused<int>(new Refusal(from, $"\"{strange.FullName}\" in it", "book.db and photos by their hash", "Take a file made by journal backup"));
            if (zip.GetEntry(Book.FileName) is null)
                return Outcome.Refused<int>(new Refusal(from, "no book.db in it", "book.db and photos by their hash", "Take a file made by journal backup"));
            Directory.CreateDirectory(Path.Combine(folder, "photos"));
            var photos = 0;
            foreach (var entry in zip.Entries)
            {
                var file = Path.Combine(folder, entry.FullName);
                entry.ExtractToFile(file);
                if (entry.FullName == Book.FileName)
                    continue;
                using var body = File.OpenRead(file);
                if (Convert.ToHexStringLower(SHA256.HashData(body)) != Path.GetFileNameWithoutExtension(file))
                    return Outcome.Refused<int>(Differs(from));
                photos++;
            }

            return Outcome.Of(photos);
        }
        catch (InvalidDataException e)
        {
            return Outcome.Refused<int>(new Refusal(from, e.Message, "a zip that can be read whole", "Take another backup"));
        }
    }

    private static Refusal Differs(string file) => new(file, "what was read back differs from what was written", "the same entries and photos", "Try again on another disk");

    [GeneratedRegex(@"^photos/[0-9a-f]{64}\.[a-z0-9]{1,5}$")]
    private static partial Regex PhotoName();
}
