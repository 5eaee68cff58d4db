using System.Xml.Linq;
using Gudgeon.Journal;
using Gudgeon.Pages;
using Gudgeon.Shop;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Microsoft.AspNetCore.DataProtection.XmlEncryption;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Gudgeon.Host;

/// <summary>The workshop: one web host over one folder of books.</summary>
public static class GudgeonHost
{
    /// <summary>The most that one form may carry. A dictated story is a few kilobytes; photographs have their own door.</summary>
    private const long LargestForm = 1 << 20;

    public static WebApplication Build(HostOptions options)
    {
        Directory.CreateDirectory(options.BooksFolder);
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.WebHost.UseUrls([.. options.Urls]);
        builder.WebHost.ConfigureKestrel(LimitSizes);
        if (options.Certificate is { } certificate)
        {
            builder.WebHost.UseKestrelHttpsConfiguration();
            builder.WebHost.ConfigureKestrel(kestrel => kestrel.ConfigureHttpsDefaults(https => https.ServerCertificate = ShopCertificate.Load(certificate)));
        }

        builder.Services.AddRazorComponents();

        // The page renderer asks for keys that no page of ours uses: none are written to the owner's disk.
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.Configure<KeyManagementOptions>(keys => (keys.XmlRepository, keys.XmlEncryptor) = (new NoKeys(), new NullXmlEncryptor()));
        builder.Services.AddSingleton(options);
        builder.Services.AddSingleton(options.Clock);
        builder.Services.AddSingleton<Assets>();
        builder.Services.AddSingleton(new Bookshelf(options.BooksFolder));
        builder.Services.AddSingleton<Desks>();
        builder.Services.AddSingleton<WorkedOut>();
        builder.Services.AddSingleton<ReadyEar>();
        foreach (var slice in Slices.All)
            slice.AddServices(builder.Services);

        var app = builder.Build();
        app.UseExceptionHandler(handler => handler.Run(Mishap.Show));
        app.UseMiddleware<SecurityHeaders>();
        app.UseMiddleware<DoorGuard>();
        app.UseRateLimiter();
        app.UseMiddleware<ShopGuard>();
        app.UseMiddleware<VisitGate>();
        app.MapGet("/assets/{**path}", Assets.Serve);
        foreach (var slice in Slices.All)
            slice.MapPages(app);
        app.MapFallback(Mishap.NotFound);
        return app;
    }

    private static void LimitSizes(KestrelServerOptions kestrel)
    {
        kestrel.AddServerHeader = false;
        kestrel.Limits.MaxRequestBodySize = LargestForm;
    }

    /// <summary>The host makes a key as it starts, asked for or not: it is forgotten at once.</summary>
    private sealed class NoKeys : IXmlRepository
    {
        public IReadOnlyCollection<XElement> GetAllElements() => [];

        public void StoreElement(XElement element, string friendlyName)
        {
        }
    }
}
