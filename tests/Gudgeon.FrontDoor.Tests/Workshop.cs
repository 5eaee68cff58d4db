using Gudgeon.Host;
using Microsoft.AspNetCore.Builder;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>A workshop on a free loopback port over an empty folder of books that goes away with it.</summary>
public sealed class Workshop : IAsyncLifetime
{
    private WebApplication? app;

    public string BooksFolder { get; } = Directory.CreateTempSubdirectory("gudgeon-door-").FullName;

    public Uri Address => new(app!.Urls.Single());

    public HttpClient Client { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        app = GudgeonHost.Build(new HostOptions(BooksFolder) { Urls = ["http://127.0.0.1:0"] });
        await app.StartAsync();
        Client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = Address };
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await app!.DisposeAsync();
        Directory.Delete(BooksFolder, recursive: true);
    }
}
