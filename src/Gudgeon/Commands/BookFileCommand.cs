using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Gudgeon.Pages.Story;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>The whole book as one file that opens in any browser, in ten years too.</summary>
public static class BookFileCommand
{
    public static void Add(CommandLine line)
    {
        var file = new Argument<string>("file") { Description = "Where to write" };
        var command = new Command("book", "Writes the whole book as one self-contained HTML file. Example: gudgeon book winter.html") { file };
        line.OnBook(command, (parsed, book) =>
        {
            var to = parsed.GetRequiredValue(file);
            try
            {
                File.WriteAllText(to, BookFile.Html(book, line.Desk.Now).GetAwaiter().GetResult(), new UTF8Encoding(false));
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return line.Desk.Refuse(line.Json(parsed), [new Refusal(to, e.Message, "a file that can be written", "Give another name")]);
            }

            return line.Desk.Show(line.Json(parsed), "book-file", new JsonObject { ["file"] = to, ["entries"] = book.Version }, [$"The book, {book.Version} entries, is in {to}"]);
        });
        line.Root.Subcommands.Add(command);
    }
}
