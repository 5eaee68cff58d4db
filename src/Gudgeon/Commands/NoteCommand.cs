using System.CommandLine;
using Gudgeon.Capture;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>A line as people say it.</summary>
public static class NoteCommand
{
    public static void Add(CommandLine line)
    {
        var words = new Argument<string[]>("words") { Description = "What you did, as you would say it", Arity = ArgumentArity.OneOrMore };
        var at = new Option<string?>("--at") { Description = "When the work was done, as 2026-01-31 19:40; else now", HelpName = "TIME" };
        var note = new Command("note", "Records a line as you say it; what is not understood is kept as a question. Example: gudgeon note \"thermostat off, two M6 by 22, bag 12\"") { words, at };
        line.OnBook(note, (parsed, book) =>
        {
            var when = parsed.GetValue(at);
            return when is not null && line.Desk.When(when) is null
                ? line.Desk.Refuse(line.Json(parsed), [new Refusal("--at", $"\"{when}\"", "a time such as 2026-01-31 19:40", "Write it so")])
                : line.Desk.Show(line.Json(parsed), book, Telling.Record(book, string.Join(' ', parsed.GetRequiredValue(words)), line.Desk.Sending(when)));
        });
        line.Root.Subcommands.Add(note);
    }
}
