using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Shop;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>A workshop open to the network with one book of an invented engine; it can be closed and opened again at the same port.</summary>
public sealed class ShopFloor : IAsyncDisposable
{
    public const string Slug = "invented-single";

    private WebApplication app = null!;
    private int sent;

    public string BooksFolder { get; } = Directory.CreateTempSubdirectory("gudgeon-shop-").FullName;

    public int Port { get; private set; }

    public Uri Laptop => new($"http://127.0.0.1:{Port}");

    /// <summary>The machine's own address in its network: what comes from there is no laptop.</summary>
    public Uri Lan
    {
        get
        {
            Assert.SkipWhen(ShopDoor.Addresses().Count == 0, "this machine is in no network");
            return new Uri($"http://{ShopDoor.Addresses()[0]}:{Port}");
        }
    }

    public static async Task<ShopFloor> Open(bool shop = true)
    {
        var floor = new ShopFloor();
        using (var shelf = new Bookshelf(floor.BooksFolder))
        {
            Assert.Equal(Slug, shelf.Start("Invented single", new Dictionary<string, string>(), floor.Sending()).Value.Name);
            Assert.True(shelf.Open(Slug).Value.Submit(floor.Sending(), new Tell(
                new PartAdded("own.block", "block", null, 0),
                new PartAdded("own.head", "head", "own.block", 4, "M10x90"),
                new PartAdded("own.starter", "starter", "own.block", 3, "M10x60"),
                new LineAdded("own.feed", "fuel feed hose", Gudgeon.Engine.Circuit.Fuel, "own.head", "ext"))).Ok);
        }

        await floor.Start(shop);
        return floor;
    }

    public async Task Start(bool shop = true)
    {
        var options = new HostOptions(BooksFolder);
        app = GudgeonHost.Build(shop ? ShopDoor.OpenTo(options, Port) : options with { Urls = [$"http://0.0.0.0:{Port}"], Names = ShopDoor.Addresses() });
        await app.StartAsync();
        Port = new Uri(app.Urls.First().Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal)).Port;
    }

    /// <summary>The laptop goes to sleep.</summary>
    public async Task Stop()
    {
        await app.StopAsync();
        await app.DisposeAsync();
    }

    /// <summary>A key as a paired phone carries it.</summary>
    public string PairedKey(string name) => app.Services.GetRequiredService<Phones>().Add(name, DateTimeOffset.UnixEpoch);

    /// <summary>The journal as another program reads it.</summary>
    public IReadOnlyList<Recorded> Journal()
    {
        using var book = Book.Open(Path.Combine(BooksFolder, Slug));
        return [.. book.Entries];
    }

    /// <summary>Records something as another program does: a command beside the pages.</summary>
    public void ByCommand(params IReadOnlyList<Request> requests)
    {
        using var book = Book.Open(Path.Combine(BooksFolder, Slug));
        Assert.True(book.Submit(Sending(), requests).Ok);
    }

    public async ValueTask DisposeAsync()
    {
        await app.DisposeAsync();
        Directory.Delete(BooksFolder, recursive: true);
    }

    private Sending Sending() => new($"floor-{++sent}", DateTimeOffset.Now, DateTimeOffset.Now, "command");
}
