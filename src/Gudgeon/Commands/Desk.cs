using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>How a command ended.</summary>
public static class Exit
{
    public const int Done = 0;

    /// <summary>Refused, or there are findings.</summary>
    public const int Refused = 1;

    /// <summary>The command was called wrongly.</summary>
    public const int WrongUse = 2;
}

/// <summary>What a command works with: where to write, the clock, the ids of what it sends. One a run.</summary>
public sealed class Desk(TextWriter output, TextWriter errors, TimeProvider clock, Func<string> newId)
{
    /// <summary>Version of the shapes that <c>--json</c> prints. Docs: docs/json.md.</summary>
    public const int JsonVersion = 1;

    private static readonly JsonSerializerOptions indented = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public TextWriter Output { get; } = output;

    public TextWriter Errors { get; } = errors;

    public TimeProvider Clock { get; } = clock;

    public DateTimeOffset Now => Clock.GetLocalNow();

    /// <summary>Prints one answer, as lines for people or as one JSON object.</summary>
    public int Show(bool json, string shape, JsonObject facts, IEnumerable<string> lines, int exit = Exit.Done)
    {
        if (json)
        {
            var answer = new JsonObject { ["gudgeon"] = shape, ["version"] = JsonVersion };
            foreach (var (name, value) in facts)
            {
                answer[name] = value?.DeepClone();
            }

            Output.WriteLine(answer.ToJsonString(indented));
        }
        else
        {
            foreach (var line in lines)
            {
                Output.WriteLine(Plain(line));
            }
        }

        return exit;
    }

    /// <summary>Prints why something was refused.</summary>
    public int Refuse(bool json, IReadOnlyList<Refusal> refusals)
    {
        if (json)
        {
            return Show(true, "refused", new JsonObject { ["refusals"] = new JsonArray([.. refusals.Select(Json)]) }, [], Exit.Refused);
        }

        foreach (var refusal in refusals)
        {
            Errors.WriteLine(Plain(refusal.ToString()));
            foreach (var choice in refusal.Choices)
                Errors.WriteLine(Plain($"    --meant \"{choice.Words}\": {choice.Means}"));
        }

        return Exit.Refused;
    }

    /// <summary>A sending of the command line: the work was done now unless told otherwise.</summary>
    public Sending Sending(string? at = null) =>
        new(newId(), When(at) ?? Now, Now, "command line");

    /// <summary>A time as people write it in a command, or null when it is none.</summary>
    public DateTimeOffset? When(string? text)
    {
        if (text is null)
        {
            return null;
        }

        string[] forms = ["yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd"];
        return DateTimeOffset.TryParseExact(text, ["yyyy-MM-dd HH:mmzzz", "yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mmzzz"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var exact) ? exact
            : DateTime.TryParseExact(text, forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var local) ? new DateTimeOffset(local, Clock.LocalTimeZone.GetUtcOffset(local))
            : null;
    }

    /// <summary>Control characters in what people typed would drive the terminal: they are shown as marks.</summary>
    private static string Plain(string line) =>
        line.Any(c => char.IsControl(c) && c != '\n') ? string.Concat(line.Select(c => char.IsControl(c) && c != '\n' ? '\u00b7' : c)) : line;

    private static JsonObject Json(Refusal refusal)
    {
        var json = new JsonObject
        {
            ["where"] = refusal.Where,
            ["met"] = refusal.Met,
            ["expected"] = refusal.Expected,
            ["do"] = refusal.Remedy,
        };
        if (refusal.Choices.Count > 0)
            json["choices"] = new JsonArray([.. refusal.Choices.Select(c => new JsonObject { ["words"] = c.Words, ["means"] = c.Means })]);
        return json;
    }
}
