using System.Security.Cryptography;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace Gudgeon.Host;

/// <summary>Style sheet, fonts and scripts, carried inside the executable so that there is one file to copy.</summary>
public sealed class Assets
{
    private const string Root = "wwwroot/";
    private readonly Dictionary<string, Asset> files;

    public Assets()
    {
        var assembly = typeof(Assets).Assembly;
        files = assembly.GetManifestResourceNames()
            .Select(resource => (Resource: resource, Name: resource.Replace('\\', '/')))
            .Where(x => x.Name.StartsWith(Root, StringComparison.Ordinal))
            .ToDictionary(x => x.Name[Root.Length..], x => Read(assembly, x.Resource));
    }

    /// <summary>The address of an asset, with its fingerprint, so that a newer one is never hidden by an older one.</summary>
    public string Href(string name) => $"/assets/{name}?v={files[name].Fingerprint}";

    /// <summary>The text of an asset, for pages that must carry everything in themselves.</summary>
    public byte[] Bytes(string name) => files[name].Bytes;

    public static Results<FileContentHttpResult, NotFound> Serve(string path, HttpContext context, Assets assets)
    {
        if (!assets.files.TryGetValue(path, out var asset))
            return TypedResults.NotFound();

        var current = context.Request.Query["v"] == asset.Fingerprint;
        context.Response.Headers.CacheControl = current ? "public, max-age=31536000, immutable" : "no-cache";
        return TypedResults.File(asset.Bytes, TypeOf(path), entityTag: new EntityTagHeaderValue($"\"{asset.Fingerprint}\""));
    }

    private static Asset Read(System.Reflection.Assembly assembly, string resource)
    {
        using var stream = assembly.GetManifestResourceStream(resource)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new Asset(bytes, Convert.ToHexStringLower(SHA256.HashData(bytes))[..16]);
    }

    private static string TypeOf(string path) => Path.GetExtension(path) switch
    {
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".svg" => "image/svg+xml",
        ".woff2" => "font/woff2",
        ".webmanifest" => "application/manifest+json",
        _ => "text/plain; charset=utf-8",
    };

    private sealed record Asset(byte[] Bytes, string Fingerprint);
}
