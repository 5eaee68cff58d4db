using System.Net;
using System.Security.Cryptography.X509Certificates;
using Gudgeon.Shop;

namespace Gudgeon.Tests;

public sealed class ShopCertificateTests : IDisposable
{
    private static readonly DateTimeOffset now = new(2026, 3, 29, 12, 0, 0, TimeSpan.Zero);
    private readonly string folder = Directory.CreateTempSubdirectory("gudgeon-cert-").FullName;

    [Fact]
    public void Certificate_is_trusted_through_its_authority_for_its_names_and_addresses()
    {
        Make("bench.lan", "10.0.0.7");
        using var certificate = ShopCertificate.Load(ShopCertificate.FileIn(folder));

        Assert.True(IsTrusted(certificate));
        Assert.True(certificate.MatchesHostname("bench.lan") && certificate.MatchesHostname("localhost") && certificate.MatchesHostname("10.0.0.7"));
        Assert.False(certificate.MatchesHostname("elsewhere.example"));
        Assert.Equal(397, Math.Round((certificate.NotAfter.ToUniversalTime() - now.UtcDateTime).TotalDays));
    }

    [Fact]
    public void Workshop_answers_to_the_names_of_its_certificate()
    {
        Make("bench.lan", "10.0.0.7");
        var options = ShopDoor.OpenTo(new Host.HostOptions(folder), 5080);

        Assert.Contains("bench.lan", options.Names);
        Assert.Equal(["http://0.0.0.0:5080", "https://0.0.0.0:5081"], options.Urls);
    }

    [Fact]
    public void Certificate_made_again_is_by_the_same_authority()
    {
        Make("bench.lan", "10.0.0.7");
        var authority = File.ReadAllText(ShopCertificate.AuthorityIn(folder));
        Make("bench.lan", "192.168.1.20");

        Assert.Equal(authority, File.ReadAllText(ShopCertificate.AuthorityIn(folder)));
        using var certificate = ShopCertificate.Load(ShopCertificate.FileIn(folder));
        Assert.True(IsTrusted(certificate));
    }

    [Theory]
    [InlineData("elsewhere.example", "10.0.0.7")]
    [InlineData("bench.lan", "203.0.113.9")]
    public void Authority_cannot_vouch_for_other_names_or_public_addresses(string name, string address)
    {
        Make("bench.lan", "10.0.0.7");
        Make(name, address);

        using var certificate = ShopCertificate.Load(ShopCertificate.FileIn(folder));
        Assert.False(IsTrusted(certificate));
    }

    [Fact]
    public void Keys_can_be_read_by_their_owner_alone()
    {
        Make("bench.lan", "10.0.0.7");
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("file modes are of Unix");
            return;
        }

        foreach (var file in new[] { ShopCertificate.FileIn(folder), Path.Combine(ShopDoor.FolderOf(folder), "ca.key") })
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private void Make(string name, string address) => ShopCertificate.Make(folder, [name], [IPAddress.Parse(address)], now);

    /// <summary>Judged by the platform's own chain building, which owes nothing to the maker.</summary>
    private bool IsTrusted(X509Certificate2 certificate)
    {
        using var chain = new X509Chain();
        chain.ChainPolicy.TrustMode = X509ChainTrustMode.CustomRootTrust;
        chain.ChainPolicy.CustomTrustStore.Add(X509CertificateLoader.LoadCertificateFromFile(ShopCertificate.AuthorityIn(folder)));
        chain.ChainPolicy.RevocationMode = X509RevocationMode.NoCheck;
        chain.ChainPolicy.VerificationTime = now.UtcDateTime;
        return chain.Build(certificate);
    }
}
