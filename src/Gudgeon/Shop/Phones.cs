using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Gudgeon.Shop;

/// <summary>A phone that was paired. Its key is in the phone alone; here lies only the hash of it.</summary>
public sealed record PairedPhone(string Id, string Name, string KeyHash, DateTimeOffset PairedAt);

/// <summary>The phones that are let in, in a file beside the books.</summary>
public sealed class Phones(string folder)
{
    private const int KeyBytes = 32;
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private readonly string file = Path.Combine(folder, "phones.json");
    private readonly Lock gate = new();

    public IReadOnlyList<PairedPhone> All
    {
        get
        {
            lock (gate)
                return Read();
        }
    }

    /// <summary>Lets a phone in and gives its key, which is nowhere kept here.</summary>
    public string Add(string name, DateTimeOffset now)
    {
        var key = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(KeyBytes));
        lock (gate)
            Write([.. Read(), new PairedPhone(Guid.NewGuid().ToString("N"), name, HashOf(key), now)]);
        return key;
    }

    /// <summary>The phone of a key. Looked up by hash: how long it takes tells nothing of the keys that there are.</summary>
    public PairedPhone? Find(string key)
    {
        var hash = HashOf(key);
        return All.FirstOrDefault(p => p.KeyHash == hash);
    }

    public void Remove(string id)
    {
        lock (gate)
            Write([.. Read().Where(p => p.Id != id)]);
    }

    private static string HashOf(string key) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)));

    // Read each time: a phone that another program took out is out at once.
    private PairedPhone[] Read() => File.Exists(file) ? JsonSerializer.Deserialize<PairedPhone[]>(File.ReadAllText(file)) ?? [] : [];

    private void Write(PairedPhone[] phones)
    {
        Directory.CreateDirectory(folder);
        var aside = $"{file}.new";
        File.WriteAllText(aside, JsonSerializer.Serialize(phones));
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(aside, OwnerOnly);
        File.Move(aside, file, overwrite: true);
    }
}
