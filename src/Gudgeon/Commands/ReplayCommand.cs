using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text.Json.Nodes;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>
/// Runs a file of commands, each with the time of its work: a paper notebook typed in later, or the demo.
/// A line is <c>2026-01-10 18:05 +01:00 | off starter --to bench</c>; blank lines and lines that begin with # are passed over.
/// Each line has an id of its own, so a file that is run again records nothing twice.
/// </summary>
public static class ReplayCommand
{
    public static void Add(CommandLine line)
    {
        var file = new Argument<string>("file") { Description = "Lines of TIME | COMMAND" };
        var replay = new Command("replay", "Runs a file of commands, each with the time of its work. Example: gudgeon replay notebook.txt") { file };
        replay.SetAction(parsed => Replay(line, parsed, parsed.GetRequiredValue(file)));
        line.Root.Subcommands.Add(replay);
    }

    private static int Replay(CommandLine line, ParseResult parsed, string file)
    {
        var json = line.Json(parsed);
        if (!File.Exists(file))
        {
            return line.Desk.Refuse(json, [new Refusal(file, "no such file", "a file of lines TIME | COMMAND", "Look at its name")]);
        }

        var done = 0;
        foreach (var (number, text) in File.ReadLines(file).Select((t, i) => (i + 1, t.Trim())).Where(l => l.Item2.Length > 0 && l.Item2[0] != '#'))
        {
            var where = $"{file} line {number}";
            if (text.Split('|', 2, StringSplitOptions.TrimEntries) is not [var time, var command]
                || !DateTimeOffset.TryParseExact(time, "yyyy-MM-dd HH:mm zzz", CultureInfo.InvariantCulture, DateTimeStyles.None, out var at))
            {
                return line.Desk.Refuse(json, [new Refusal(where, text, "TIME | COMMAND, as 2026-01-10 18:05 +01:00 | off starter", "Mend the line and run the file again: what is recorded stays recorded once")]);
            }

            using var errors = new StringWriter();
            var stem = $"{Path.GetFileNameWithoutExtension(file)}-{number.ToString("0000", CultureInfo.InvariantCulture)}";
            var desk = new Desk(TextWriter.Null, errors, new StoppedClock(at), () => stem);
            string[] args = [.. CommandLineParser.SplitCommandLine(command), "--books", line.BooksFolder(parsed), .. line.BookName(parsed) is { } book ? new[] { "--book", book } : []];
            if (CommandLine.Run(args, desk) == Exit.WrongUse || errors.ToString().Length > 0)
            {
                return line.Desk.Refuse(json, [new Refusal(where, command, "a command that can be carried out", $"It said: {errors.ToString().Trim().TrimEnd('.')}")]);
            }

            done++;
        }

        return line.Desk.Show(json, "replayed", new JsonObject { ["file"] = file, ["lines"] = done }, [$"{done} lines of {file} carried out"]);
    }

    /// <summary>A clock that stands at the time of the line.</summary>
    private sealed class StoppedClock(DateTimeOffset at) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => at.ToUniversalTime();

        public override TimeZoneInfo LocalTimeZone { get; } = TimeZoneInfo.CreateCustomTimeZone("line", at.Offset, null, null);
    }
}
