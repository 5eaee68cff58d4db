using System.Security.Claims;
using Gudgeon.Host;
using Gudgeon.Sums;

namespace Gudgeon.Shop;

/// <summary>
/// Lets in the laptop itself and paired phones. Everybody else gets as far as the page that pairs, whatever address is asked for; and not even
/// so far while the workshop is not open to the network.
/// </summary>
public sealed class ShopGuard(RequestDelegate next, HostOptions options, Phones phones)
{
    public const string Cookie = "phone";

    /// <summary>What a phone needs before it is paired: nothing of any book is there.</summary>
    private static readonly string[] beforePairing = ["/pair", "/assets", "/app.webmanifest", "/sw.js", "/ca.crt"];

    public Task InvokeAsync(HttpContext context)
    {
        if (context.Connection.IsLaptop())
            return next(context);

        if (!options.Shop)
            return Mishap.Refuse(context, StatusCodes.Status403Forbidden, new Refusal("this workshop", "a caller from the network", "the laptop that it runs on", "Start it with --shop to let phones in"));

        if (context.Request.Cookies[Cookie] is { Length: > 0 } key && phones.Find(key) is { } phone)
        {
            context.User = new ClaimsPrincipal(new ClaimsIdentity([new Claim(ClaimTypes.Name, phone.Name)], "paired"));
            return next(context);
        }

        return beforePairing.Any(path => context.Request.Path.StartsWithSegments(path, StringComparison.OrdinalIgnoreCase))
            ? next(context)
            : Mishap.Refuse(context, StatusCodes.Status401Unauthorized, new Refusal("this phone", "a phone that is not paired with this workshop", "a paired phone", "Open Phones on the laptop, press Pair a phone, and point this phone's camera at the square"));
    }
}
