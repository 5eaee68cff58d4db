namespace Gudgeon.Host;

/// <summary>
/// Everything that a page needs comes from this workshop, in files: no inline script, no inline style, no frame.
/// User text that slipped through as markup could then still run nothing and load nothing.
/// </summary>
public sealed class SecurityHeaders(RequestDelegate next)
{
    private const string Policy =
        "default-src 'none'; style-src 'self'; script-src 'self'; font-src 'self'; img-src 'self' blob:; connect-src 'self'; "
        + "manifest-src 'self'; worker-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'";

    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";

        // "no-referrer" would make browsers send "Origin: null" with our own forms, which the door then refuses.
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
        return next(context);
    }
}
