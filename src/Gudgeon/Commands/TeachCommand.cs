using System.CommandLine;
using Gudgeon.Capture;

namespace Gudgeon.Commands;

/// <summary>A word of the owner's own, for the ear.</summary>
public static class TeachCommand
{
    public static void Add(CommandLine line)
    {
        var word = new Argument<string>("word") { Description = "The word that you use" };
        var term = new Argument<string>("meaning") { Description = "The name that it stands for; for mil: mm or thou" };
        var command = new Command("teach", "Teaches a word of your own, understood from then on in what you say. Example: gudgeon teach whatsit thermostat") { word, term };
        line.OnBook(command, (parsed, book) =>
        {
            string said = parsed.GetRequiredValue(word);
            string means = parsed.GetRequiredValue(term);
            var teach = book.Read(bench => OwnWords.Teach(bench, said, means, line.Desk.Now));
            return teach.TryGet(out var requests) ? line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), requests)) : line.Desk.Refuse(line.Json(parsed), teach.Refusals);
        });
        line.Root.Subcommands.Add(command);
    }
}
