using System.Net;
using Gudgeon.Sums;

namespace Gudgeon.Host;

/// <summary>
/// Turns away requests that another site makes in the owner's browser: those that call this workshop by a foreign
/// name (a foreign name pointed at loopback could otherwise read every book) and forms sent from foreign pages.
/// A program that is no browser sends neither header and is let in: it needs no trick to reach loopback.
/// </summary>
public sealed class DoorGuard(RequestDelegate next, HostOptions options)
{
    public Task InvokeAsync(HttpContext context) => Turned(context.Request) switch
    {
        (var status, { } refusal) => Mishap.Refuse(context, status, refusal),
        _ => next(context),
    };

    private (int Status, Refusal? Why) Turned(HttpRequest request)
    {
        if (!IsOurName(request.Host.Host))
            return (StatusCodes.Status421MisdirectedRequest, new Refusal("the address in the browser", $"the name \"{request.Host.Host}\"", "127.0.0.1, localhost, or a name that the workshop was started with", "Open the address that the workshop printed when it started"));

        if (IsReading(request.Method) || !IsForeign(request))
            return default;

        return (StatusCodes.Status403Forbidden, new Refusal("the form that was sent", "a form of another site", "a form of this workshop", "Open the page here and send it again; nothing was recorded"));
    }

    private bool IsOurName(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address))
        || options.Names.Contains(host, StringComparer.OrdinalIgnoreCase);

    private static bool IsReading(string method) => HttpMethods.IsGet(method) || HttpMethods.IsHead(method);

    private static bool IsForeign(HttpRequest request)
    {
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        if (site.Length > 0)
            return site is not ("same-origin" or "none");

        var origin = request.Headers.Origin.ToString();
        return origin.Length > 0 && origin != $"{request.Scheme}://{request.Host}";
    }
}
