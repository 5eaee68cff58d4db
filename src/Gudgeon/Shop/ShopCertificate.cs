using System.Formats.Asn1;
using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Gudgeon.Shop;

/// <summary>
/// A certificate authority of the shop's own and a certificate by it, for HTTPS in the local network. Who installs the authority in a phone
/// trusts it for this workshop's names and for private addresses only: it cannot vouch for anything else.
/// </summary>
public static class ShopCertificate
{
    /// <summary>Browsers take no longer one: 398 days is their limit (from memory); one less.</summary>
    public const int Days = 397;

    private const int AuthorityYears = 10;
    private const string NameConstraints = "2.5.29.30";
    private const string ServerAuthentication = "1.3.6.1.5.5.7.3.1";

    /// <summary>IPv4 private, link-local and loopback nets: RFC 1918, RFC 3927, RFC 1122; address and mask.</summary>
    private static readonly byte[][] privateNets = [[10, 0, 0, 0, 255, 0, 0, 0], [172, 16, 0, 0, 255, 240, 0, 0], [192, 168, 0, 0, 255, 255, 0, 0], [169, 254, 0, 0, 255, 255, 0, 0], [127, 0, 0, 0, 255, 0, 0, 0]];

    public static string FileIn(string booksFolder) => Path.Combine(ShopDoor.FolderOf(booksFolder), "shop.pem");

    public static string AuthorityIn(string booksFolder) => Path.Combine(ShopDoor.FolderOf(booksFolder), "ca.crt");

    private static string AuthorityKeyIn(string booksFolder) => Path.Combine(ShopDoor.FolderOf(booksFolder), "ca.key");

    public static X509Certificate2 Load(string file) =>
        // By way of PKCS 12: some platforms do not serve with a key that exists only in memory.
        X509CertificateLoader.LoadPkcs12(X509Certificate2.CreateFromPemFile(file, file).Export(X509ContentType.Pkcs12), null);

    /// <summary>The names that a certificate is for: by these the workshop is called.</summary>
    public static IReadOnlyList<string> NamesIn(string file)
    {
        using var certificate = X509Certificate2.CreateFromPemFile(file, file);
        return [.. certificate.Extensions.OfType<X509SubjectAlternativeNameExtension>().SelectMany(names => names.EnumerateDnsNames())];
    }

    /// <summary>Makes the authority when there is none, and a new certificate for these names and addresses. Phones that have the authority need nothing again.</summary>
    public static void Make(string booksFolder, IReadOnlyList<string> names, IReadOnlyList<IPAddress> addresses, DateTimeOffset now)
    {
        Directory.CreateDirectory(ShopDoor.FolderOf(booksFolder));
        if (!File.Exists(AuthorityKeyIn(booksFolder)))
            MakeAuthority(booksFolder, names, addresses, now);

        using var authority = X509Certificate2.CreateFromPemFile(AuthorityIn(booksFolder), AuthorityKeyIn(booksFolder));
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=Gudgeon workshop", key, HashAlgorithmName.SHA256);
        var alternatives = new SubjectAlternativeNameBuilder();
        foreach (var name in names.Append("localhost"))
            alternatives.AddDnsName(name);
        foreach (var address in addresses.Append(IPAddress.Loopback))
            alternatives.AddIpAddress(address);
        request.CertificateExtensions.Add(alternatives.Build());
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(false, false, 0, true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid(ServerAuthentication)], false));
        request.CertificateExtensions.Add(X509AuthorityKeyIdentifierExtension.CreateFromCertificate(authority, true, false));
        using var certificate = request.Create(authority, now.AddMinutes(-5), now.AddDays(Days), RandomNumberGenerator.GetBytes(16));
        WriteOwn(FileIn(booksFolder), $"{certificate.ExportCertificatePem()}\n{key.ExportPkcs8PrivateKeyPem()}\n");
    }

    private static void MakeAuthority(string booksFolder, IReadOnlyList<string> names, IReadOnlyList<IPAddress> addresses, DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=Gudgeon workshop authority", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, true, 0, true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign | X509KeyUsageFlags.CrlSign, true));
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, false));
        request.CertificateExtensions.Add(new X509Extension(NameConstraints, Constraints([.. names, "localhost"], addresses), critical: true));
        using var authority = request.CreateSelfSigned(now.AddMinutes(-5), now.AddYears(AuthorityYears));
        WriteOwn(AuthorityKeyIn(booksFolder), key.ExportPkcs8PrivateKeyPem() + "\n");
        File.WriteAllText(AuthorityIn(booksFolder), authority.ExportCertificatePem() + "\n");
    }

    /// <summary>RFC 5280, 4.2.1.10: only these names, and only these addresses and the private nets.</summary>
    private static byte[] Constraints(IReadOnlyList<string> names, IReadOnlyList<IPAddress> addresses)
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        using (writer.PushSequence(new Asn1Tag(TagClass.ContextSpecific, 0)))
        {
            foreach (var name in names)
            {
                using (writer.PushSequence())
                    writer.WriteCharacterString(UniversalTagNumber.IA5String, name, new Asn1Tag(TagClass.ContextSpecific, 2));
            }

            foreach (var net in privateNets.Concat(addresses.Select(a => (byte[])[.. a.GetAddressBytes(), 255, 255, 255, 255])))
            {
                using (writer.PushSequence())
                    writer.WriteOctetString(net, new Asn1Tag(TagClass.ContextSpecific, 7));
            }
        }

        return writer.Encode();
    }

    /// <summary>For the owner's eyes alone.</summary>
    private static void WriteOwn(string file, string text)
    {
        File.Delete(file);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using var writer = new StreamWriter(file, options);
        writer.Write(text);
    }
}
