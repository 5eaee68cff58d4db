using System.Net.NetworkInformation;
using System.Net.Sockets;
using Gudgeon.Host;

namespace Gudgeon.Shop;

/// <summary>Opening the workshop to the local network, on purpose. Without it, it answers this machine alone.</summary>
public static class ShopDoor
{
    /// <summary>The folder of what belongs to the shop and to no book: paired phones, the certificate.</summary>
    public const string FolderName = ".shop";

    public static string FolderOf(string booksFolder) => Path.Combine(booksFolder, FolderName);

    /// <summary>These options, open to the network on that port, and over HTTPS on the next when the shop has a certificate.</summary>
    public static HostOptions OpenTo(HostOptions options, int port)
    {
        var certificate = ShopCertificate.FileIn(options.BooksFolder);
        var secure = File.Exists(certificate);
        return options with
        {
            Shop = true,
            Certificate = secure ? certificate : null,
            Urls = secure ? [$"http://0.0.0.0:{port}", $"https://0.0.0.0:{(port == 0 ? 0 : port + 1)}"] : [$"http://0.0.0.0:{port}"],
            Names = [.. options.Names, .. Addresses(), .. OwnNames(), .. secure ? ShopCertificate.NamesIn(certificate) : []],
        };
    }

    /// <summary>This machine's addresses on its networks.</summary>
    public static IReadOnlyList<string> Addresses() =>
        [.. NetworkInterface.GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(n => n.GetIPProperties().UnicastAddresses)
            .Where(a => a.Address.AddressFamily == AddressFamily.InterNetwork)
            .Select(a => a.Address.ToString())
            .Distinct()];

    /// <summary>What this machine is called on its networks.</summary>
    public static IReadOnlyList<string> OwnNames()
    {
        var name = Environment.MachineName.ToLowerInvariant();
        return [name, $"{name}.local"];
    }

    /// <summary>Where a phone finds this workshop; the laptop's own address while the workshop is not open to phones.</summary>
    public static string AddressFor(HttpContext context, HostOptions options)
    {
        var first = options.Shop ? Addresses().FirstOrDefault() : null;
        return first is null ? $"{context.Request.Scheme}://{context.Request.Host}" : $"{context.Request.Scheme}://{first}:{context.Connection.LocalPort}";
    }
}
