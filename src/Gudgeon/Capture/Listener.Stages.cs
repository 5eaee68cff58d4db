using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>How fasteners were tightened, go after go: stages by name, by figure, and for how many of them.</summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:i )?(?:did|done|just did|gave) (?:the )?(?<x>.+?) (?:bolts? |nuts? )?(?:(?:its|their|the) )?(?:final |last |second |first )?(?<w>angles?|torques?|turn|stage (?:one|two|three|1|2|3))\\b(?<r>.*)$")]
    private static partial Regex Stages();

    /// <summary>"did the head final angle, ninety and ninety": stages of a joint told by name.</summary>
    private int Staged(Stretch clause, Stretch rest)
    {
        if (Stages().Match(clause.Line) is not { Success: true } match)
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        if (ThingIn(xFrom, xTo) is not { Ids.Count: > 0 } thing)
            return -1;
        int end = clause.To;
        if (end < rest.To && tokens[end].Sort == TokenSort.Comma && NumberWords.At(tokens, end + 1) is not null)
            end = ClauseEnd(end + 1, rest.To);
        var stages = new List<string>();
        string unit = match.Groups["w"].Value.StartsWith("torque", StringComparison.Ordinal) ? "N m" : "deg";
        for (int i = clause.Tokens(match.Groups["w"]).To; i < end;)
        {
            if (NumberWords.At(tokens, i) is { IsCount: true } n)
            {
                var read = Units.At(tokens, n.To, n);
                stages.Add($"{n.Int} {read?.Unit ?? unit}");
                i = read?.To ?? n.To;
            }
            else
                i++;
        }

        if (stages.Count == 0)
            stages.Add(match.Groups["w"].Value is "angle" or "torque" or "turn" ? "final " + match.Groups["w"].Value : match.Groups["w"].Value);
        var joint = CapOf(thing);
        About(joint.Sort == ThingSort.Part ? joint with { Sort = ThingSort.Fasteners, Fastener = "bolt" } : joint, Range(clause.From, end), t => new Tightened(t, [], stages));
        topic = thing;
        return end;
    }

    [GeneratedRegex("^(?:and |but |so )*(?<x>.+?) (?:(?:is|are|'s|was|were|got|been) )*(?:torqued|tightened|done|taken|pulled|set|gone|went|up)(?: up| down)? (?:to|at) (?:the |its )?(?<s>(?:first|second|third|final|last) (?:stage|angle|torque)|stage (?:one|two|three|four|1|2|3|4)|full torque|spec|the book|final figure)$")]
    private static partial Regex AtStage();

    /// <summary>"right head's torqued to the first stage": a stage told by its name.</summary>
    private int StageNamed(Stretch clause)
    {
        if (AtStage().Match(clause.Line) is not { Success: true } match)
            return -1;
        var (xFrom, xTo) = clause.Tokens(match.Groups["x"]);
        var thing = ThingIn(xFrom, xTo) ?? draft?.Of ?? topic;
        if (thing is null)
            return -1;
        About(things.Joint(CapOf(thing), "bolt"), Range(clause.From, clause.To), t => new Tightened(t, [], [match.Groups["s"].Value]));
        topic = thing;
        return clause.To;
    }

    /// <summary>Words of a go that carry no figure: how, in what order, on which of them.</summary>
    private static readonly HashSet<string> GoWords =
    [
        "then", "and", "plus", "the", "a", "an", "another", "further", "more", "again", "round", "around", "go", "goes", "stage", "pass", "pull", "time", "turn", "step", "lap", "sweep", "first", "second", "third", "fourth", "fifth", "final", "finally", "last", "next", "now", "up", "to", "at", "on", "all", "of", "them", "those", "each", "every", "one", "lot", "whole", "everything",
        "only", "just", "got", "get", "gave", "given", "done", "did", "do", "have", "had", "has", "been", "taken", "took", "take", "going", "went", "gone", "crossways", "crosswise", "pattern", "star", "order", "in", "sequence", "spiral", "from", "middle", "centre", "out", "outwards", "their", "its", "his", "too", "also", "as", "well", "so", "far", "i", "we", "they", "it", "'s", "'ve", "is", "are", "after", "torque", "torqued", "tightened", "set", "pulled", "nipped", "other", "others", "remaining", "rest", "way", "same", "bolt", "bolts", "nut", "nuts", "stud", "studs", "screw", "screws", "done", "finish", "finished", "angle", "degree", "for",
    ];

    private sealed record Go(List<(int Value, string Unit, bool Angle)> Figures, int? Count, bool Cue, int To);

    /// <summary>"then ninety five on the lot", "plus ninety degrees, only got six of them done", "the other four got their ninety too": the next go on what was tightened last.</summary>
    private int NextGo(Stretch clause, Stretch rest)
    {
        var last = facts.LastOrDefault() as Tightened ?? (facts.Count == 0 && draft is null && pending.Count == 0 ? context.Last.OfType<Tightened>().LastOrDefault() : null);
        bool going = draft is { Fitting: true, Stages.Count: > 0 } && pending.Count == 0;
        if (last is null && !going)
            return -1;
        Go? told = null;
        for (int end = clause.From + 1; end <= rest.To; end++)
        {
            if ((end == rest.To || tokens[end].IsBreak || Word(end) is "and" or "but" or "so" or "because" or "cos" or "then") && GoIn(clause.From, end) is { Figures.Count: > 0 } go)
                told = go;
        }

        if (told is not { Cue: true })
            return -1;
        string before = going ? draft!.Stages[^1] : last!.Stages.LastOrDefault() ?? "";
        bool turned = told.Figures.Any(f => f.Angle || f.Unit == "deg");
        var stages = told.Figures.Select(f => $"{f.Value} {(f.Unit.Length > 0 ? f.Unit : f.Angle || (turned && told.Figures.Any(o => o.Value == f.Value && (o.Angle || o.Unit == "deg"))) || before == $"{f.Value} deg" ? "deg" : Torque(before))}").ToList();
        var all = Range(clause.From, told.To).Where(k => !tokens[k].IsBreak).ToList();
        if (going && told.Count is null)
        {
            draft!.Stages.AddRange(stages);
            draft.Tokens.AddRange(all);
            return told.To;
        }

        if (told.Count is null && facts.LastOrDefault() is Tightened)
        {
            facts[^1] = last! with { Stages = [.. last.Stages, .. stages], Spans = [.. last.Spans, .. Spans(all)] };
            return told.To;
        }

        var of = going ? things.Joint(draft!.Of, "bolt") : last!.Of;
        string fastener = (going ? draft!.Lots.Select(l => l.Lot) : last!.Lots).Select(l => l.Fastener).FirstOrDefault(f => f.Length > 0) ?? "bolt";
        Flush();
        Add(new Tightened(of, told.Count is { } n ? [new Lot { Count = n, Fastener = fastener }] : [], stages), all);
        Speak(of with { Sort = of.Sort == ThingSort.Fasteners ? ThingSort.Part : of.Sort }, clause.From);
        return told.To;
    }

    private string Torque(string before) => before.EndsWith(" lbf ft", StringComparison.Ordinal) || (inchBook && !before.EndsWith(" N m", StringComparison.Ordinal)) ? "lbf ft" : "N m";

    /// <summary>Figures, and how many of the fasteners had them; null where anything else is told.</summary>
    private Go? GoIn(int from, int to)
    {
        var figures = new List<(int, string, bool)>();
        int? count = null;
        bool cue = Word(from - 1) is "then" or "plus" or "and" || Range(from, to).Any(k => Word(k) is "then" or "plus" or "next" or "now" or "final" or "finally" or "last" or "second" or "third" or "lot" or "all" or "each" or "every" or "other" or "remaining" or "their" or "them" or "go" or "stage" or "round" or "pass" or "another" or "further" or "again");
        for (int at = from; at < to;)
        {
            if (Turn(at) is { } turn && turn.To <= to)
            {
                figures.Add((turn.Degrees, "deg", true));
                at = turn.To;
                continue;
            }

            if (NumberWords.At(tokens, at) is { IsCount: true } n && (Word(at) != "one" || n.To > at + 1))
            {
                int value = n.Int;
                int next = n.To;
                // "one forty five"
                if (value is >= 1 and < 10 && NumberWords.At(tokens, next) is { IsCount: true, Value: >= 10 and < 100 } tail)
                    (value, next) = ((value * 100) + tail.Int, tail.To);
                var unit = Units.At(tokens, next, n);
                if (unit is { Unit: not ("N m" or "lbf ft" or "lbf in" or "deg") })
                    return null;
                bool some = unit is null && value <= 40 && (Word(next) is "of" or "done" or "so" or "got" or "had" or "have" or "also" or "more" || Word(at - 1) is "other" or "last" or "remaining" or "only" or "just" or "got" or "all" or "did" || Lexicon.Fasteners.Longest(tokens, next).Values.Count > 0);
                if (some && count is not null || !some && (value is < 3 or > 700 || unit is null && figures.Count == 0 && !cue))
                    return null;
                if (some)
                    count = value;
                else
                    figures.Add((value, unit?.Unit ?? "", unit is null && value % 15 == 0 && Word(at - 1) is "plus" or "their" or "another" or "the"));
                at = unit?.To ?? next;
                continue;
            }

            // "one forty five"
            if (Word(at) == "one" && NumberWords.At(tokens, at + 1) is { IsCount: true, Value: >= 10 and < 100 } hundred && Word(at - 1) is not ("every" or "each"))
            {
                var unit = Units.At(tokens, hundred.To, hundred);
                figures.Add((100 + hundred.Int, unit?.Unit ?? "", false));
                at = unit?.To ?? hundred.To;
                continue;
            }

            if (tokens[at].Sort != TokenSort.Comma && !GoWords.Contains(Word(at)))
                return null;
            at++;
        }

        return figures.Count == 0 ? null : new Go(figures, count, cue || figures.Any(f => f.Item2.Length > 0), to);
    }

    /// <summary>"a quarter turn", "half a turn": as an angle.</summary>
    private (int Degrees, int To)? Turn(int at)
    {
        int degrees = Word(at) switch { "quarter" => 90, "half" => 180, _ => 0 };
        int to = at + 1;
        while (Word(to) is "of" or "a")
            to++;
        return degrees > 0 && Word(to) == "turn" ? (degrees, to + 1) : null;
    }
}
