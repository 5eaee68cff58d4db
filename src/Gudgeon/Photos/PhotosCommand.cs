using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Commands;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Photos;

/// <summary>Takes photos from files and folders of this machine, as the page does.</summary>
public static class PhotosCommand
{
    private const int BarLength = 30;

    public static void Add(CommandLine line)
    {
        var from = new Argument<string[]>("from") { Description = "Photo files, or folders of them", Arity = ArgumentArity.OneOrMore };
        var of = new Option<string?>("--of") { Description = "The part that they show; else their time says", HelpName = "PART" };
        var command = new Command("photos", "Takes photos into the book, matched to the work by their time. Example: gudgeon photos ~/phone/photos") { from, of };
        line.OnBook(command, (parsed, book) =>
        {
            var part = parsed.GetValue(of) is { } name ? book.Read(bench => Naming.Part(bench, name)) : null;
            if (part is { Ok: false })
                return line.Desk.Refuse(line.Json(parsed), part.Refusals);

            return Files(parsed.GetRequiredValue(from)).TryGet(out var files)
                ? Show(line, line.Json(parsed), Take(line.Desk, book, files, part?.Value))
                : line.Desk.Refuse(line.Json(parsed), Files(parsed.GetRequiredValue(from)).Refusals);
        });
        line.Root.Subcommands.Add(command);
    }

    private static Outcome<IReadOnlyList<string>> Files(string[] from) =>
        from.FirstOrDefault(f => !File.Exists(f) && !Directory.Exists(f)) is { } missing
            ? Outcome.Refused<IReadOnlyList<string>>(new Refusal(missing, "no such file or folder", "photos on this machine", "Look at the path"))
            : Outcome.Of<IReadOnlyList<string>>([.. from.SelectMany(f => Directory.Exists(f) ? [.. Directory.EnumerateFiles(f).Order(StringComparer.Ordinal)] : new[] { f })]);

    private static List<PhotoAnswer> Take(Desk desk, Book book, IReadOnlyList<string> files, string? of)
    {
        var folder = new PhotoFolder(book.Folder);
        var answers = new List<PhotoAnswer>();
        foreach (var file in files)
        {
            using var body = File.OpenRead(file);
            var arrival = folder.Take(body, Path.GetFileName(file), desk.Clock.LocalTimeZone, default).GetAwaiter().GetResult();
            var sending = desk.Sending();
            answers.Add(PhotoAnswer.Record(book, Path.GetFileName(file), arrival, of, sending.Id, sending.By, sending.EnteredAt));
            Bar(answers.Count, files.Count);
        }

        return answers;
    }

    /// <summary>Only where somebody looks: a bar in a log file is noise.</summary>
    private static void Bar(int done, int all)
    {
        if (Console.IsErrorRedirected)
            return;

        var full = BarLength * done / all;
        Console.Error.Write($"\r[{new string('#', full)}{new string('.', BarLength - full)}] {done} of {all}{(done == all ? "\n" : "")}");
    }

    private static int Show(CommandLine line, bool json, List<PhotoAnswer> answers)
    {
        var refused = answers.Where(a => a.Refusals.Count > 0).ToArray();
        var there = answers.Count(a => a.WasThere);
        var facts = new JsonObject
        {
            ["taken"] = answers.Count - refused.Length - there,
            ["was_there"] = there,
            ["refused"] = new JsonArray([.. refused.Select(a => new JsonObject { ["name"] = a.Name, ["why"] = string.Join(" ", a.Refusals) })]),
        };
        return line.Desk.Show(json, "photos", facts,
            [$"{answers.Count - refused.Length - there} taken, {there} in the book before, {refused.Length} not taken.", .. refused.SelectMany(a => a.Refusals).Select(r => r.ToString())],
            refused.Length == 0 ? Exit.Done : Exit.Refused);
    }
}
