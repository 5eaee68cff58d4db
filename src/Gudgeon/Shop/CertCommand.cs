using System.CommandLine;
using System.Net;
using Gudgeon.Commands;

namespace Gudgeon.Shop;

/// <summary>Makes the shop's own certificate, so that phones can use HTTPS in the local network.</summary>
public static class CertCommand
{
    public static void Add(CommandLine line)
    {
        var name = new Option<string[]>("--name") { Description = "A name besides the machine's own by which phones call it", HelpName = "NAME" };
        var cert = new Command("cert", "Makes a certificate of the shop's own for HTTPS in the local network. Example: gudgeon cert --name bench.lan") { name };
        cert.SetAction(parsed => Make(line, line.BooksFolder(parsed), parsed.GetValue(name) ?? []));
        line.Root.Subcommands.Add(cert);
    }

    private static int Make(CommandLine line, string folder, string[] more)
    {
        if (more.FirstOrDefault(n => Uri.CheckHostName(n) != UriHostNameType.Dns) is { } odd)
            return line.Desk.Refuse(false, [new Sums.Refusal("--name", $"\"{odd}\"", "a name as in bench.lan", "Give the name that you type into the phone")]);

        var addresses = ShopDoor.Addresses();
        string[] names = [.. ShopDoor.OwnNames(), .. more.Select(n => n.ToLowerInvariant())];
        ShopCertificate.Make(folder, [.. names.Distinct()], [.. addresses.Select(IPAddress.Parse)], line.Desk.Clock.GetUtcNow());
        line.Desk.Output.WriteLine($"Certificate made for {string.Join(", ", names.Distinct().Concat(addresses))}, good for {ShopCertificate.Days} days.");
        line.Desk.Output.WriteLine("Start the workshop with --shop: it answers over HTTPS on the next port as well.");
        line.Desk.Output.WriteLine("Open /ca.crt on the phone once and install it as an authority; docs/phone.md says how and what it may vouch for.");
        line.Desk.Output.WriteLine($"The authority's key is in {ShopDoor.FolderOf(folder)}: keep it to yourself.");
        return Exit.Done;
    }
}
