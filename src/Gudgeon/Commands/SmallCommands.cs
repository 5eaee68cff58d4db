using System.CommandLine;
using System.Text.Json.Nodes;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Commands;

/// <summary>Small things that kill engines, what to look at after a gap, and exceptions with their reasons.</summary>
public static class SmallCommands
{
    public static void Add(CommandLine line)
    {
        line.Root.Subcommands.Add(Small(line));
        line.Root.Subcommands.Add(Accept(line));
    }

    private static Command Small(CommandLine line)
    {
        var put = new Option<string?>("--in") { Description = "Something went in: rag, cap, plug, tape", HelpName = "WHAT" };
        var where = new Option<string?>("--where") { Description = "With --in: where", HelpName = "TEXT" };
        var count = new Option<int>("--count") { Description = "With --in: how many", HelpName = "N", DefaultValueFactory = _ => 1 };
        var outside = new Option<long?>("--out") { Description = "What that entry put in is out again", HelpName = "ENTRY" };
        var looked = new Option<string?>("--looked") { Description = "Looked at: this part is in its own place and the right way round", HelpName = "PART" };
        var washed = new Option<string?>("--washed") { Description = "This part was washed, its oilways brushed and blown", HelpName = "PART" };
        var small = new Command("small", "Lists what was put in and must come out, small parts, what waits to be looked at, and what to do after a gap. Example: gudgeon small --in rag --where \"bore 3\"") { put, where, count, outside, looked, washed };
        line.OnBook(small, (parsed, book) =>
        {
            var json = line.Json(parsed);
            var told = parsed.GetValue(looked) ?? parsed.GetValue(washed);
            var part = told is null ? null : book.Read(bench => Naming.Part(bench, told));
            if (part is { Ok: false })
                return line.Desk.Refuse(json, part.Refusals);
            Entry? entry = parsed.GetValue(put) is { } what ? new PutIn(what, parsed.GetValue(where) ?? "", parsed.GetValue(count))
                : parsed.GetValue(outside) is { } number ? new TakenOut(number)
                : parsed.GetValue(looked) is not null ? new WayRoundSeen(part!.Value)
                : part is not null ? new PartWashed(part.Value)
                : null;
            if (entry is not null)
                return line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(entry)));
            var (items, findings, gap) = book.Read(bench => (
                bench.Register.Values.Where(i => i.Left > 0).Select(i => (i.Number, i.Left, Words: i.Put.Words(bench))).ToArray(),
                SmallThings.Short(bench).Concat(SmallThings.WayRound(bench)).Concat(SmallThings.NotWashed(bench)).ToArray(),
                AfterGap.Of(bench, line.Desk.Now)));
            var facts = new JsonObject
            {
                ["still_in"] = new JsonArray([.. items.Select(i => new JsonObject { ["entry"] = i.Number, ["left"] = i.Left, ["words"] = i.Words })]),
                ["findings"] = new JsonArray([.. findings.Select(f => f.Json())]),
                ["after_gap"] = new JsonArray([.. gap.Select(g => JsonValue.Create(g))]),
            };
            string[] lines =
            [
                .. gap.Count > 0 ? gap.Select(g => $"  {g}").Prepend("Back after a gap:") : [],
                .. items.Select(i => $"{i.Number,5}  {i.Words}; {i.Left} left"),
                .. findings.Select(f => f.ToString()),
                items.Length == 0 ? "Nothing is in: no cap, plug, rag or tape." : $"{items.Sum(i => i.Left)} must come out again.",
            ];
            return line.Desk.Show(json, "small", facts, lines, items.Length + findings.Length == 0 ? Exit.Done : Exit.Refused);
        });
        return small;
    }

    private static Command Accept(CommandLine line)
    {
        var finding = new Argument<string>("finding") { Description = "Name of a finding of check, as part-off" };
        var about = new Argument<string[]>("thing") { Description = "What it is about; not needed where there is one of that name", Arity = ArgumentArity.ZeroOrMore };
        var because = new Option<string>("--because") { Description = "Why it stays so", Required = true, HelpName = "WHY" };
        var accept = new Command("accept", "Lets something stay as it is, for a reason that stands on the built sheet. Example: gudgeon accept part-off heat shield --because \"cracked, left off\"") { finding, about, because };
        line.OnBook(accept, (parsed, book) =>
        {
            var json = line.Json(parsed);
            var (name, words) = (parsed.GetRequiredValue(finding), string.Join(' ', parsed.GetValue(about) ?? []));
            var all = book.Read(bench => AllBack.MissingFrom(bench).Concat(BenchFindings.Of(bench)).Distinct().Where(f => f.Name == name).ToArray());
            var meant = words.Length == 0 ? all : [.. all.Where(f => f.About == words || f.Where.Contains(words, StringComparison.OrdinalIgnoreCase))];
            return meant is [var one]
                ? line.Desk.Show(json, book, book.Submit(line.Desk.Sending(), new Tell(new Accepted(one.Name, one.About, one.Met, parsed.GetRequiredValue(because)))))
                : line.Desk.Refuse(json, [new Refusal(name, $"{meant.Length} that answer to \"{words}\"", all.Length == 0 ? "a finding that stands; see gudgeon check" : string.Join(", ", all.Take(6).Select(f => f.Where)), "Name one of them")]);
        });
        return accept;
    }
}
