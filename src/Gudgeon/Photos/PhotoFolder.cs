using System.Security.Cryptography;
using Gudgeon.Sums;

namespace Gudgeon.Photos;

/// <summary>A photo whose file is safe in the book's folder.</summary>
/// <param name="Width">Turned upright; 0 where the picture cannot be opened here.</param>
public sealed record Arrival(string Hash, string Type, int Width, int Height, CameraNotes Notes);

/// <summary>The photos of one book: originals by content hash, each with a small picture beside it.</summary>
public sealed class PhotoFolder(string bookFolder)
{
    private const int Block = 1 << 16;

    public string Folder { get; } = Path.Combine(bookFolder, "photos");

    /// <summary>The file as it came.</summary>
    public string Original(string hash, string type) => Path.Combine(Folder, hash + PhotoType.Ending(type));

    /// <summary>The file as it came, of whatever type it is; null when the disk has it no more.</summary>
    public string? Kept(string hash) => PhotoType.All.Select(t => Original(hash, t)).FirstOrDefault(File.Exists);

    public string Thumb(string hash) => Path.Combine(Folder, $"{hash}.thumb.jpg");

    /// <summary>Keeps a file that comes in: streamed to disk, checked by its header, made small. What is refused leaves nothing behind.</summary>
    public async Task<Outcome<Arrival>> Take(Stream from, string name, TimeZoneInfo zone, CancellationToken cancel)
    {
        Directory.CreateDirectory(Folder);
        var coming = Path.Combine(Folder, $"coming-{Guid.NewGuid():N}");
        try
        {
            return (await Save(from, coming, name, cancel)).Then(hash => Examine(coming, hash, name, zone));
        }
        finally
        {
            File.Delete(coming);
        }
    }

    /// <summary>The picture that pages show and prints carry, made when first asked for. Nothing of the camera's notes is in it, its place least of all.</summary>
    public Outcome<string> View(string hash, string type)
    {
        var view = Path.Combine(Folder, $"{hash}.view.jpg");
        if (File.Exists(view))
            return Outcome.Of(view);

        return Picture.Open(Original(hash, type), type, "photo").Then(picture =>
        {
            using (picture)
                return picture.Shrink(PhotoLimits.ViewPixels, "photo");
        }).Then(bytes => Outcome.Of(Put(view, bytes)));
    }

    private Outcome<Arrival> Examine(string coming, string hash, string name, TimeZoneInfo zone)
    {
        using var file = File.OpenRead(coming);
        Span<byte> head = stackalloc byte[PhotoType.HeadLength];
        var length = file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        if (PhotoType.Of(head[..length]) is not { } type)
            return Outcome.Refused<Arrival>(new Refusal(name, length == 0 ? "an empty file" : "a file that is no photo, whatever its name says", "a JPEG, PNG, WebP or HEIC picture", "Send the photo itself"));

        var notes = CameraNotes.Read(file, type, zone);
        if (type == PhotoType.Heic)
            return Outcome.Of(Keep(coming, new Arrival(hash, type, 0, 0, notes)));

        return Picture.Open(coming, type, name).Then(picture =>
        {
            using (picture)
            {
                return picture.Shrink(PhotoLimits.ThumbPixels, name).Then(thumb =>
                {
                    Put(Thumb(hash), thumb);
                    return Outcome.Of(Keep(coming, new Arrival(hash, type, picture.Width, picture.Height, notes)));
                });
            }
        });
    }

    private Arrival Keep(string coming, Arrival arrival)
    {
        var original = Original(arrival.Hash, arrival.Type);
        if (!File.Exists(original))
            File.Move(coming, original);
        return arrival;
    }

    /// <summary>Written aside and moved, so that nobody ever reads half a picture.</summary>
    private static string Put(string file, byte[] bytes)
    {
        var aside = $"{file}.{Guid.NewGuid():N}";
        File.WriteAllBytes(aside, bytes);
        File.Move(aside, file, overwrite: true);
        return file;
    }

    private static async Task<Outcome<string>> Save(Stream from, string to, string name, CancellationToken cancel)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        await using var file = new FileStream(to, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.Asynchronous);
        var block = new byte[Block];
        for (int read; (read = await from.ReadAsync(block, cancel)) > 0;)
        {
            if (file.Length + read > PhotoLimits.FileBytes)
                return Outcome.Refused<string>(new Refusal(name, $"more than {PhotoLimits.FileBytes >> 20} MB", $"a photo of at most {PhotoLimits.FileBytes >> 20} MB", "Send a smaller copy"));
            hash.AppendData(block, 0, read);
            await file.WriteAsync(block.AsMemory(0, read), cancel);
        }

        // The entry that names the file is durable: the file must be no less so.
        file.Flush(flushToDisk: true);
        return Outcome.Of(Convert.ToHexStringLower(hash.GetHashAndReset()));
    }
}
