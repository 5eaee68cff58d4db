using System.CommandLine;
using Gudgeon.Host;
using Gudgeon.Shop;

namespace Gudgeon.Commands;

/// <summary>Opens the workshop: the pages, on this machine alone unless the owner lets paired phones in.</summary>
public static class ServeCommand
{
    public static void Add(CommandLine line)
    {
        var port = new Option<int>("--port") { Description = "Port on this machine; 0 for any free one", DefaultValueFactory = _ => 5080, HelpName = "N" };
        var shop = new Option<bool>("--shop") { Description = "Answers the local network as well, for phones that are paired on the Phones page" };
        var serve = new Command("serve", "Opens the pages on this machine. Example: gudgeon serve --port 5080") { port, shop };
        serve.SetAction(parsed => Serve(line, line.BooksFolder(parsed), parsed.GetValue(port), parsed.GetValue(shop)));
        line.Root.Subcommands.Add(serve);
        line.Root.Options.Add(port);
        line.Root.Options.Add(shop);
        line.Root.SetAction(parsed => Serve(line, line.BooksFolder(parsed), parsed.GetValue(port), parsed.GetValue(shop)));
    }

    private static int Serve(CommandLine line, string folder, int port, bool shop)
    {
        var alone = new HostOptions(Path.GetFullPath(folder)) { Urls = [$"http://127.0.0.1:{port}"], Clock = line.Desk.Clock };
        var app = GudgeonHost.Build(shop ? ShopDoor.OpenTo(alone, port) : alone);
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            line.Desk.Output.WriteLine($"The workshop is open at {string.Join(" and ", app.Urls)}".Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal));
            if (shop)
                line.Desk.Output.WriteLine($"Paired phones of the local network find it at {string.Join(" and ", ShopDoor.Addresses())}. Pair one on the Phones page; docs/phone.md says what works over plain HTTP.");
            line.Desk.Output.WriteLine($"Books are in {Path.GetFullPath(folder)}. Ctrl+C closes it.");
        });
        try
        {
            app.Run();
            return Exit.Done;
        }
        catch (IOException e)
        {
            return line.Desk.Refuse(false, [new Sums.Refusal($"port {port}", e.Message, "a free port", "Close the other workshop, or add --port with another number")]);
        }
    }
}
