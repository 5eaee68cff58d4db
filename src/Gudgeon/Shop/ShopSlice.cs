using System.Text;
using Gudgeon.Host;
using Gudgeon.Journal;
using Gudgeon.Pages;
using Gudgeon.Sums;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gudgeon.Shop;

/// <summary>The phone beside the laptop: pairing, what others recorded meanwhile, what a phone sends late.</summary>
public sealed class ShopSlice : ISlice
{
    private const int LongestName = 40;

    public IEnumerable<NavItem> Nav => [new(NavPlace.Shelf, 90, "phones", "Phones", "phone")];

    public void AddServices(IServiceCollection services)
    {
        services.AddSingleton(provider => new Phones(ShopDoor.FolderOf(provider.GetRequiredService<HostOptions>().BooksFolder)));
        services.AddSingleton<PairingCode>();
        ShopLimits.Add(services);
    }

    public void MapPages(IEndpointRouteBuilder app)
    {
        app.MapGet("/books/{book}/phones", () => Back.To("/phones"));
        app.MapGet("/phones", PhonesPage);
        app.MapPost("/phones/offer", (HttpContext context, PairingCode code) => OnLaptop(context, code.Offer));
        app.MapPost("/phones/withdraw", (HttpContext context, PairingCode code) => OnLaptop(context, code.Withdraw));
        app.MapPost("/phones/revoke", Revoke);
        app.MapGet("/pair", (string? code) => new RazorComponentResult<PairPage>(new { Code = code ?? "", Refusals = Array.Empty<Refusal>() }));
        app.MapPost("/pair", Pair);
        app.MapGet("/ca.crt", (HostOptions options) => File.Exists(ShopCertificate.AuthorityIn(options.BooksFolder))
            ? Results.File(ShopCertificate.AuthorityIn(options.BooksFolder), "application/x-x509-ca-cert", "workshop-ca.crt")
            : Results.NotFound());
        app.MapGet("/app.webmanifest", (Assets files) => Results.Bytes(files.Bytes("app.webmanifest"), "application/manifest+json"));
        app.MapGet("/sw.js", (Assets files, HttpContext context) =>
        {
            context.Response.Headers.CacheControl = "no-cache";
            return Results.Bytes(files.Bytes("sw.js"), "text/javascript; charset=utf-8");
        });
        app.MapGet("/others/{book}", IResult (Bookshelf shelf, string book) => shelf.Open(book).TryGet(out var opened) ? Results.Json(new { newest = opened.Newest() }) : Results.NotFound());
        app.MapPost("/books/{book}/not-taken", NotTaken);
    }

    private static IResult PhonesPage(HttpContext context, HostOptions options, Phones phones, PairingCode code) => context.Connection.IsLaptop()
        ? new RazorComponentResult<PhonesPage>(new
        {
            IsOpen = options.Shop,
            Known = phones.All,
            Offer = code.Open,
            Addresses = ShopDoor.Addresses().Select(a => $"{context.Request.Scheme}://{a}:{context.Connection.LocalPort}").ToArray(),
            HasCertificate = options.Certificate is not null,
        })
        : LaptopOnly(context);

    private static IResult OnLaptop(HttpContext context, Action deed)
    {
        if (!context.Connection.IsLaptop())
            return LaptopOnly(context);

        deed();
        return Back.To("/phones");
    }

    private static async Task<IResult> Revoke(HttpContext context, Phones phones)
    {
        var form = await context.Request.ReadFormAsync();
        return OnLaptop(context, () => phones.Remove(form.Text("id")));
    }

    /// <summary>A phone that could pair or take out phones could let anybody in.</summary>
    private static RazorComponentResult<MishapPage> LaptopOnly(HttpContext context) =>
        new(new { Refusals = new[] { new Refusal("phones", "a phone", "the laptop itself, by its own address", "Open this page on the laptop") } }) { StatusCode = StatusCodes.Status403Forbidden };

    private static async Task<IResult> Pair(HttpContext context, HostOptions options, Phones phones, PairingCode code, TimeProvider clock)
    {
        var form = await context.Request.ReadFormAsync();
        var name = form.Text("name");
        var refusal = !options.Shop ? new Refusal("this workshop", "it is not open to phones", "one started with --shop", "Start it again with --shop")
            : name.Length is 0 or > LongestName || name.Any(char.IsControl) ? new Refusal("name of the phone", $"{name.Length} letters", $"1 to {LongestName}", "Give it a short name")
            : phones.All.Any(p => p.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) ? new Refusal("name of the phone", $"\"{name}\", which another phone has", "a name of its own", "Give it another name, or take the other one out on the laptop")
            : code.Redeem(form.Text("code"));
        if (refusal is not null)
            return new RazorComponentResult<PairPage>(new { Code = form.Text("code"), Refusals = new[] { refusal } }) { StatusCode = StatusCodes.Status422UnprocessableEntity };

        context.Response.Cookies.Append(ShopGuard.Cookie, phones.Add(name, clock.GetUtcNow()), new CookieOptions
        {
            HttpOnly = true,
            SameSite = SameSiteMode.Strict,
            Secure = context.Request.IsHttps,
            MaxAge = TimeSpan.FromDays(400),
            IsEssential = true,
        });
        return Back.To("/");
    }

    /// <summary>What a phone kept and the book does not take any more: an open question with the words, never a loss.</summary>
    private static async Task<IResult> NotTaken(Visit visit, HttpRequest request)
    {
        var form = await request.ReadFormAsync();
        var words = form.Text("words") is { Length: > 0 } said ? said : "something from a phone";
        var why = new StringBuilder("sent late by a phone and not taken: ").Append(form.Text("why")).ToString();
        return visit.Book.Submit(visit.Sending(form), new Tell(new Asked(words, why))).Ok ? Results.Ok() : Results.UnprocessableEntity();
    }
}
