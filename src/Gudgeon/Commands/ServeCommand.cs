using System.CommandLine;
using Gudgeon.Host;

namespace Gudgeon.Commands;

/// <summary>Opens the workshop: the pages, on this machine alone.</summary>
public static class ServeCommand
{
    public static void Add(CommandLine line)
    {
        var port = new Option<int>("--port") { Description = "Port on this machine; 0 for any free one", DefaultValueFactory = _ => 5080, HelpName = "N" };
        var serve = new Command("serve", "Opens the pages on this machine. Example: gudgeon serve --port 5080") { port };
        serve.SetAction(parsed => Serve(line, line.BooksFolder(parsed), parsed.GetValue(port)));
        line.Root.Subcommands.Add(serve);
        line.Root.Options.Add(port);
        line.Root.SetAction(parsed => Serve(line, line.BooksFolder(parsed), parsed.GetValue(port)));
    }

    private static int Serve(CommandLine line, string folder, int port)
    {
        var app = GudgeonHost.Build(new HostOptions(Path.GetFullPath(folder)) { Urls = [$"http://127.0.0.1:{port}"], Clock = line.Desk.Clock });
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            line.Desk.Output.WriteLine($"The workshop is open at {string.Join(" and ", app.Urls)}");
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
