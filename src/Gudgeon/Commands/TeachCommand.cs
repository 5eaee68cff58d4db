using System.CommandLine;
using Gudgeon.Capture;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>A word of the owner's own, for the ear.</summary>
public static class TeachCommand
{
    public static void Add(CommandLine line)
    {
        var word = new Argument<string>("word") { Description = "The word that you use" };
        var term = new Argument<string>("meaning") { Description = "The name that it stands for; for mil: mm or thou" };
        var teach = new Command("teach", "Teaches a word of your own, understood from then on in what you say. Example: gudgeon teach whatsit thermostat") { word, term };
        line.OnBook(teach, (parsed, book) =>
        {
            string said = parsed.GetRequiredValue(word);
            string means = parsed.GetRequiredValue(term);
            bool mil = said.Trim().Equals("mil", StringComparison.OrdinalIgnoreCase);
            bool known = mil ? means is "mm" or "thou" : book.Read(bench => Ear.Knows(means, bench.Engine, Telling.Context(bench, line.Desk.Sending(null).At)));
            return known
                ? line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(null), new Tell(new WordTaught(said, means))))
                : line.Desk.Refuse(line.Json(parsed), [new Refusal("meaning", $"\"{means}\"", mil ? "mm or thou" : "the name of a part, hose or wire", "Name it as the book does")]);
        });
        line.Root.Subcommands.Add(teach);
    }
}
