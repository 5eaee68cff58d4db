using System.Net;
using Gudgeon.Host;
using Microsoft.AspNetCore.Builder;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>A workshop on a free loopback port over an empty folder of books that goes away with it.</summary>
public sealed class Workshop : IAsyncLifetime
{
    private WebApplication? app;

    public string BooksFolder { get; } = Directory.CreateTempSubdirectory("gudgeon-door-").FullName;

    public Uri Address => new(app!.Urls.Single());

    /// <summary>What the host is made of, to ask it which pages it has.</summary>
    public IServiceProvider Services => app!.Services;

    public HttpClient Client { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        app = GudgeonHost.Build(new HostOptions(BooksFolder) { Urls = ["http://127.0.0.1:0"] });
        await app.StartAsync();
        Client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = Address };
    }

    /// <summary>Starts a book from the questions, the same one if its sender started it before, and gives its address.</summary>
    public async Task<string> StartBook(string title, string layout = "inline", string cylinders = "4", string? sender = null)
    {
        var answers = new Dictionary<string, string> { ["sender"] = sender ?? title, ["title"] = title, ["layout"] = layout, ["n"] = cylinders };
        var answer = await Client.PostAsync("/start", new FormUrlEncodedContent(answers));
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        return answer.Headers.Location!.OriginalString.Replace("/strip", "", StringComparison.Ordinal);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await app!.DisposeAsync();
        Directory.Delete(BooksFolder, recursive: true);
    }
}
