using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Starting a book.</summary>
public static class BookCommands
{
    public static void Add(CommandLine line)
    {
        var title = new Argument<string>("title") { Description = "The book's name, such as the car's" };
        var answers = new Option<string?>("--answers") { Description = "JSON file of answers; else each question is asked", HelpName = "FILE" };
        var nothing = new Option<bool>("--from-nothing") { Description = "No questions: the engine grows as it is stripped" };
        var start = new Command("new", "Starts a book. Example: gudgeon new \"Hill-climb engine\" --answers engine.json") { title, answers, nothing };
        line.OnShelf(start, (parsed, shelf) =>
        {
            var json = line.Json(parsed);
            var given = parsed.GetValue(nothing) ? Outcome.Of<IReadOnlyDictionary<string, string>>(new Dictionary<string, string>())
                : parsed.GetValue(answers) is { } file ? ReadAnswers(file)
                : Console.IsInputRedirected ? Outcome.Refused<IReadOnlyDictionary<string, string>>(new Refusal("new", "no answers and nobody to ask", "--answers FILE or --from-nothing", "Add one of them"))
                : Outcome.Of(Ask(line.Desk, Console.In));
            if (!given.TryGet(out var values))
            {
                return line.Desk.Refuse(json, given.Refusals);
            }

            var outcome = shelf.Start(parsed.GetRequiredValue(title), values, line.Desk.Sending());
            return outcome.TryGet(out var book)
                ? line.Desk.Show(
                    json,
                    "book",
                    new JsonObject { ["book"] = book.Name, ["parts"] = book.Bench.Engine.Parts.Count, ["joints"] = book.Bench.Engine.Joints.Count },
                    [$"Book {book.Name} started: {book.Bench.Engine.Parts.Count} parts, {book.Bench.Engine.Joints.Count} joints, every count a guess until you count."])
                : line.Desk.Refuse(json, outcome.Refusals);
        });
        line.Root.Subcommands.Add(start);

        var books = new Command("books", "Lists the books. Example: gudgeon books");
        line.OnShelf(books, (parsed, shelf) => line.Desk.Show(
            line.Json(parsed),
            "books",
            new JsonObject { ["folder"] = shelf.Folder, ["books"] = new JsonArray([.. shelf.Names.Select(n => JsonValue.Create(n))]) },
            shelf.Names.DefaultIfEmpty($"No book in {shelf.Folder} yet.")));
        line.Root.Subcommands.Add(books);
    }

    private static Outcome<IReadOnlyDictionary<string, string>> ReadAnswers(string file)
    {
        try
        {
            using var document = JsonDocument.Parse(File.ReadAllText(file));
            var answers = document.RootElement.EnumerateObject().ToDictionary(
                p => p.Name,
                p => p.Value.ValueKind == JsonValueKind.String ? p.Value.GetString()! : p.Value.GetRawText());
            return answers.Count > 0
                ? Outcome.Of<IReadOnlyDictionary<string, string>>(answers)
                : Outcome.Refused<IReadOnlyDictionary<string, string>>(new Refusal(file, "no answers", "at least the layout", "Answer some, or use --from-nothing"));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException or InvalidOperationException or ArgumentException)
        {
            return Outcome.Refused<IReadOnlyDictionary<string, string>>(new Refusal(file, e.Message, "a JSON object of question and answer, such as {\"layout\": \"inline\", \"n\": 4}", "Mend the file"));
        }
    }

    private static IReadOnlyDictionary<string, string> Ask(Desk desk, TextReader from)
    {
        var answers = new Dictionary<string, string>();
        foreach (var question in Questions.Basic.Where(q => Questions.IsAsked(q, answers)))
        {
            desk.Output.WriteLine(question.Ask);
            foreach (var option in question.Options)
            {
                desk.Output.WriteLine($"    {option.Id,-12} {option.Label}");
            }

            desk.Output.Write($"  {question.Expects}; nothing for {Questions.DefaultOf(question, answers)} > ");
            if (from.ReadLine()?.Trim() is { Length: > 0 } answer)
            {
                answers[question.Id] = answer;
            }
        }

        // Nothing answered is still an answer: the usual engine, not an empty book.
        answers.TryAdd(Questions.Basic[0].Id, Questions.DefaultOf(Questions.Basic[0], answers));
        return answers;
    }
}
