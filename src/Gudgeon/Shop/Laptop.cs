using System.Net;

namespace Gudgeon.Shop;

/// <summary>Who is at the other end of a connection.</summary>
public static class Laptop
{
    /// <summary>True for the machine's own loopback and nothing else: a name or a header can be made up, the other end of a connection cannot.</summary>
    public static bool IsLaptop(this ConnectionInfo connection) => connection.RemoteIpAddress is { } address && IPAddress.IsLoopback(address);
}
