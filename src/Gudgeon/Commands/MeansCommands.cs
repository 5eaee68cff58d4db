using System.CommandLine;
using System.CommandLine.Parsing;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>What planning goes by: equipment and helpers, hours at the bench, the owner's own minutes, lead times.</summary>
public static class MeansCommands
{
    public static void Add(CommandLine line)
    {
        line.Root.Subcommands.Add(Equipment(line));
        line.Root.Subcommands.Add(Hours(line));
        line.Root.Subcommands.Add(Minutes(line));
        line.Root.Subcommands.Add(Lead(line));
    }

    private static Command Equipment(CommandLine line)
    {
        var name = new Argument<string[]>("name") { Description = "What it is, or second person", Arity = ArgumentArity.OneOrMore };
        var missing = new Option<bool>("--missing") { Description = "It is not there" };
        var from = new Option<string?>("--from") { Description = "From when it is there, as 2026-01-31 or 2026-01-31 18:00", HelpName = "TIME" };
        var until = new Option<string?>("--until") { Description = "When it has to be back", HelpName = "TIME" };
        var command = new Command("equipment", "Tells whether equipment or a helper is there, and when. Example: gudgeon equipment engine stand --from 2026-11-14") { name, missing, from, until };
        line.OnBook(command, (parsed, book) =>
        {
            var refusals = new List<Refusal>();
            var (begins, ends) = (Time(line, "--from", parsed.GetValue(from), refusals), Time(line, "--until", parsed.GetValue(until), refusals));
            return Record(line, parsed, book, refusals, new EquipmentTold(string.Join(' ', parsed.GetRequiredValue(name)), !parsed.GetValue(missing), begins, ends));
        });
        return command;
    }

    private static Command Hours(CommandLine line)
    {
        var week = new Argument<string[]>("week") { Description = "Days and times", Arity = ArgumentArity.OneOrMore };
        var command = new Command("hours", "Tells when you can be at the bench in a usual week. Example: gudgeon hours \"mon-fri 19-22, sat 10-17\"") { week };
        line.OnBook(command, (parsed, book) =>
        {
            var read = DayHours.Read(string.Join(' ', parsed.GetRequiredValue(week)));
            return Record(line, parsed, book, read.Refusals, new HoursTold(read.Ok ? read.Value : []));
        });
        return command;
    }

    private static Command Minutes(CommandLine line)
    {
        var minutes = new Argument<int>("minutes") { Description = "How long it takes, in minutes" };
        var name = new Argument<string[]>("name") { Description = "Part, line or operation; washing (of one part back from a shop) or reading (one of them)", Arity = ArgumentArity.OneOrMore };
        var command = new Command("minutes", "Tells how long a piece of work takes on this engine; plans use it instead of a guess. Example: gudgeon minutes 25 starter") { minutes, name };
        line.OnBook(command, (parsed, book) =>
        {
            var found = book.Read(bench => Timed(bench, string.Join(' ', parsed.GetRequiredValue(name))));
            return Record(line, parsed, book, found.Refusals, new MinutesTold(found.Ok ? found.Value : "", parsed.GetRequiredValue(minutes)));
        });
        return command;
    }

    /// <summary>What minutes can be told of: a thing of the engine, or a kind of work.</summary>
    internal static Outcome<string> Timed(Bench bench, string words) => words.Trim().ToLowerInvariant() switch
    {
        "wash" or "washing" => Outcome.Of(MinutesTold.Washing),
        "read" or "reading" or "readings" => Outcome.Of(MinutesTold.Reading),
        _ => Naming.Part(bench, words) is { Ok: true } part ? part : Naming.Thing(bench, words),
    };

    private static Command Lead(CommandLine line)
    {
        var best = new Argument<int>("best") { Description = "Days from now at best" };
        var likely = new Argument<int>("likely") { Description = "Days from now, most likely" };
        var worst = new Argument<int>("worst") { Description = "Days from now at worst" };
        var name = new Argument<string[]>("part") { Description = "The part that waits for it", Arity = ArgumentArity.OneOrMore };
        var command = new Command("lead", "Tells how many days a part on order or at a shop is away, in three figures; the dates of the first start use them. Example: gudgeon lead 3 5 10 head gasket") { best, likely, worst, name };
        line.OnBook(command, (parsed, book) =>
        {
            var found = book.Read(bench => Naming.Part(bench, string.Join(' ', parsed.GetRequiredValue(name))));
            return Record(line, parsed, book, found.Refusals, new LeadTold(found.Ok ? found.Value : "", parsed.GetRequiredValue(best), parsed.GetRequiredValue(likely), parsed.GetRequiredValue(worst)));
        });
        return command;
    }

    private static DateTimeOffset? Time(CommandLine line, string option, string? text, List<Refusal> refusals)
    {
        var time = line.Desk.When(text);
        if (text is not null && time is null)
            refusals.Add(new Refusal(option, $"\"{text}\"", "a time such as 2026-01-31 or 2026-01-31 19:40", "Write it so"));
        return time;
    }

    private static int Record(CommandLine line, ParseResult parsed, Book book, IReadOnlyList<Refusal> refusals, Entry entry) => refusals.Count > 0
        ? line.Desk.Refuse(line.Json(parsed), refusals)
        : line.Desk.Show(line.Json(parsed), book, book.Submit(line.Desk.Sending(), new Tell(entry)));
}
