using System.Threading.RateLimiting;
using Gudgeon.Host;
using Gudgeon.Sums;

namespace Gudgeon.Shop;

/// <summary>How much a caller from the network may ask in a time. The laptop itself is not counted.</summary>
public static class ShopLimits
{
    /// <summary>A page of photos asks for a few hundred pictures at once.</summary>
    private const int AtOnce = 600;
    private const int EachSecond = 60;

    /// <summary>Codes are eight signs: at this rate guessing takes longer than the code lives by a factor of millions.</summary>
    private const int PairingsEachMinute = 10;

    public static void Add(IServiceCollection services) => services.AddRateLimiter(limiter =>
    {
        limiter.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        limiter.OnRejected = (rejected, _) => new ValueTask(Mishap.Refuse(rejected.HttpContext, StatusCodes.Status429TooManyRequests,
            new Refusal("this phone", "too many requests at once", "fewer", "Wait a minute and go on")));
        limiter.GlobalLimiter = PartitionedRateLimiter.CreateChained(PartitionedRateLimiter.Create<HttpContext, string>(Pairing), PartitionedRateLimiter.Create<HttpContext, string>(All));
    });

    private static RateLimitPartition<string> Pairing(HttpContext context) =>
        !context.Connection.IsLaptop() && HttpMethods.IsPost(context.Request.Method) && context.Request.Path.StartsWithSegments("/pair")
            ? RateLimitPartition.GetFixedWindowLimiter(Caller(context), _ => new FixedWindowRateLimiterOptions { PermitLimit = PairingsEachMinute, Window = TimeSpan.FromMinutes(1) })
            : RateLimitPartition.GetNoLimiter("free");

    private static RateLimitPartition<string> All(HttpContext context) => context.Connection.IsLaptop()
        ? RateLimitPartition.GetNoLimiter("laptop")
        : RateLimitPartition.GetTokenBucketLimiter(Caller(context), _ => new TokenBucketRateLimiterOptions { TokenLimit = AtOnce, TokensPerPeriod = EachSecond, ReplenishmentPeriod = TimeSpan.FromSeconds(1) });

    private static string Caller(HttpContext context) => context.Connection.RemoteIpAddress?.ToString() ?? "unknown";
}
