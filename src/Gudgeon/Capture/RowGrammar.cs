namespace Gudgeon.Capture;

/// <summary>What a word of a row tells.</summary>
internal enum StepSort
{
    Which,
    Gas,
    Ring,
    Spot,
    Figure,
    Same,
    Unit,
}

/// <summary>One step through the words of a row.</summary>
internal sealed record Step(StepSort Sort, int From, int To)
{
    /// <summary>Which ones, or the one that "same as" points at.</summary>
    public IReadOnlyList<int> Numbers { get; init; } = [];

    /// <summary>Side of the gas, ring or spot; "rest" for the ones not told yet.</summary>
    public string Text { get; init; } = "";
    public decimal Value { get; init; }
    public string Unit { get; init; } = "";
    public int FigureTo { get; init; }
    public bool Rough { get; init; }

    /// <summary>A first number that may as well be which one was taken into it.</summary>
    public bool Joined { get; init; }

    /// <summary>A preposition leads to it: on four, at the top.</summary>
    public bool Led { get; init; }

    /// <summary>A pause lies before it.</summary>
    public bool Paused { get; init; }

    /// <summary>"and" stands right before it.</summary>
    public bool And { get; init; }

    /// <summary>A figure that what is measured can hardly have.</summary>
    public bool Odd { get; init; }

    /// <summary>A verb lies before it.</summary>
    public bool Linked { get; init; }
}

/// <summary>One figure with all that the words say of where it was read. No <paramref name="Which"/>: all of them, or each in order.</summary>
internal sealed record Cell(IReadOnlyList<int> Which, string Gas, string Ring, string Spot, Step Figure, int From, int To)
{
    public bool Copied { get; init; }
    public bool Linked { get; init; }

    /// <summary>Which one was told of this figure, not of one before it.</summary>
    public bool Own { get; init; }

    public bool IsBeside(Cell other) => Gas == other.Gas && Ring == other.Ring && Which.SequenceEqual(other.Which);
}

/// <summary>What the words before the first figure say: of what, which, and where the row begins.</summary>
internal sealed record Head(Characteristic What, int Body, IReadOnlyList<int> Which, string Gas, string Ring, string Spot)
{
    public int From { get; init; }

    /// <summary>Only the parts are named, not what is measured on them: the figures must show that they are readings.</summary>
    public bool Bare { get; init; }
}

/// <summary>
/// Walks the words of a row of readings. Number words may be which one, how much, or parts of one figure, so every way to cut them is
/// tried; the row that reaches farthest with the fewest oddities holds.
/// </summary>
internal sealed class RowGrammar(IReadOnlyList<Token> tokens, PartIndex index, Head head, int count, Func<decimal, string, bool> fits, Func<IReadOnlyList<Cell>, int?> judge)
{
    private static readonly HashSet<string> Verbs = ["is", "'s", "are", "was", "were", "reads", "read", "measures", "measured", "mikes", "miked", "comes", "come", "came", "gives", "gave", "shows", "showed", "showing", "stands", "stand", "sits", "sit", "has", "have", "makes", "make", "weighs", "weigh", "weighed"];

    private static readonly HashSet<string> Nouns = ["number", "numbers", "no", "cylinder", "cylinders", "cyl", "bore", "bores", "main", "mains", "journal", "journals", "rod", "rods", "piston", "pistons", "liner", "liners", "pot"];

    private static readonly HashSet<string> Leads = ["on", "for", "at", "in", "of"];

    private static readonly HashSet<string> Between =
        ["the", "a", "out", "in", "up", "about", "around", "roughly", "to", "got", "just", "only", "both", "each", "also", "again", "too", "all", "every", "them", "lot", "then", "now", "while", "it", "i", "get", "getting", "reading", "and", "apiece", "another", "set", "proud", "down", "exactly", "still", "like", "back", "going", "from", "front", "those", "these", "they", "'re", "but", "mere", "left", "put", "ones", "gap", "gaps", "clearance", "clearances", "lash", "ring", "rings", "valve", "valves", "tappet", "tappets", "side", "spring", "springs", "pin", "pins", "way", "over", "likewise", "am"];

    private static readonly Dictionary<string, string> Spots = new()
    {
        ["top"] = "top",
        ["upper"] = "top",
        ["middle"] = "middle",
        ["mid"] = "middle",
        ["halfway"] = "middle",
        ["centre"] = "middle",
        ["center"] = "middle",
        ["bottom"] = "bottom",
        ["lower"] = "bottom",
        ["across"] = "across",
        ["along"] = "along",
        ["front"] = "front",
        ["rear"] = "rear",
        ["back"] = "rear",
    };

    /// <summary>Where the search gives up: words that can be cut in more ways than this are no row.</summary>
    private const int Most = 4000;

    private readonly List<Step> path = [];
    private int walked;

    /// <summary>The cells of the best way, and whether another way is as good and says something else.</summary>
    public IReadOnlyList<Cell> Best { get; private set; } = [];
    public bool Torn { get; private set; }
    private (int To, int Cost) best = (-1, 0);

    private string Word(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    private bool IsBig => head.What is { Quantity: Quantity.Length, Least: >= 10 };

    private bool IsRing => head.What.Name.EndsWith("ring gap", StringComparison.Ordinal);

    private bool IsLash => head.What.Name == "valve clearance";

    private bool HasGas => IsLash || head.What.Kind is "spring" or "guide" or "cam" or "follower";

    public void Walk() => Walk(head.Body, false, false, false, false);

    private void Walk(int at, bool led, bool linked, bool paused, bool named)
    {
        if (++walked > Most)
            return;
        if (path.Count > 0)
            Consider(at);
        if (at >= tokens.Count || tokens[at].Sort is TokenSort.Question or TokenSort.Other)
            return;
        if (tokens[at].IsBreak)
        {
            if (!named && !led)
                Walk(at + 1, false, linked, true, false);
            return;
        }

        string word = Word(at);
        foreach (var step in Steps(at, word, named))
        {
            path.Add(step with { Led = led, Paused = paused, Linked = linked, And = Word(at - 1) == "and" });
            Walk(step.To, false, false, false, false);
            path.RemoveAt(path.Count - 1);
        }

        // "that's one through four": of which the figures were.
        if (word == "that" && Word(at + 1) == "'s" && path is [.., { Sort: StepSort.Figure }])
            Walk(at + 2, true, false, false, false);
        // "and one's only one and a half": one of them, the next in order.
        if (word == "one" && Word(at - 1) == "and" && Word(at + 1) == "'s")
            Walk(at + 2, led, linked, paused, false);
        if (word == "one" && (Word(at - 1) is "every" or "each" or "front" or "rear" or "other" or "back" || NumberWords.At(tokens, at - 1) is { Sort: NumSort.Ordinal }))
            Walk(at + 1, led, linked, paused, false);
        if (Nouns.Contains(word))
            Walk(at + 1, led, linked, paused, true);
        else if (Leads.Contains(word) && Angle(at) is null)
            Walk(at + 1, true, linked, paused, false);
        else if (Verbs.Contains(word))
            Walk(at + 1, led, true, paused, false);
        else if (Between.Contains(word))
            Walk(at + 1, led, linked, paused, named);
        else if (index.Book.Longest(tokens, at) is { Values: [var part, ..] } named1 && part.Kind == head.What.Kind)
            Walk(named1.To, led, linked, paused, false);
        else if (Characteristic.Book.Longest(tokens, at) is { Values: [var again, ..] } noun && again.Name == head.What.Name)
            Walk(noun.To, led, linked, paused, false);
    }

    private IEnumerable<Step> Steps(int at, string word, bool named)
    {
        if (!named)
        {
            foreach (var figure in Figures(at).OrderByDescending(f => f.To))
                yield return figure;
        }

        // Which one comes once, and a list of them goes upwards.
        if (One(at) is { } which && !(path is [.., { Sort: StepSort.Which, Led: false, Numbers: [.., var last] }] && which.Numbers[0] <= last) && (HasGas || !path.Exists(s => s.Sort == StepSort.Which && s.Numbers.Contains(which.Numbers[0]))))
            yield return which;

        if (Gas(at) is { } gas)
            yield return gas;
        if (Word(at - 1) == "all" && count > 1 && NumberWords.At([tokens[at]], 0) is { IsCount: true } every && every.Int == count)
            yield return new Step(StepSort.Which, at, at + 1) { Numbers = [.. Enumerable.Range(1, count)] };
        if (path.Count > 1 && path[^1].Sort is StepSort.Gas or StepSort.Which && path.TrueForAll(s => s.Unit.Length == 0) && Units.At(tokens, at) is { Unit: "thou" or "mm" or "hundredth" or "hundredth mm" } unit)
            yield return new Step(StepSort.Unit, at, unit.To) { Unit = unit.Unit };
        if (Angle(at) is { } angle)
            yield return angle;
        if (IsRing && word is "top" or "second" or "oil")
            yield return new Step(StepSort.Ring, at, at + 1) { Text = word };
        else if (Spots.TryGetValue(word, out string? spot) && !(IsLash && spot is not ("front" or "rear")))
            yield return new Step(StepSort.Spot, at, SpotEnd(at + 1)) { Text = spot };
        if (word is "rest" or "others")
            yield return new Step(StepSort.Which, at, at + 1) { Text = "rest" };
        if (word is "same" or "ditto" or "identical" || (word is "likewise" && (at + 1 >= tokens.Count || tokens[at + 1].IsBreak)))
            yield return Alike(at);
    }

    /// <summary>"at ninety": the axis of a reading.</summary>
    private Step? Angle(int at) => Word(at) == "at" && NumberWords.At(tokens, at + 1) is { Sort: NumSort.Whole, Value: 0 or 30 or 45 or 60 or 90 or 120 or 180 } angle
        ? new Step(StepSort.Spot, at, Units.At(tokens, angle.To) is { Unit: "deg" } degrees ? degrees.To : angle.To) { Text = $"{Axis}{angle.Int}°" }
        : null;

    /// <summary>How the axis of a reading begins.</summary>
    public const string Axis = "at ";

    public static bool IsSpot(string word) => Spots.ContainsKey(word);

    private int SpotEnd(int at)
    {
        if (Word(at) is "way" or "end" or "down")
            at++;
        if (Word(at) is "of" && Word(at + 1) is "it" or "ring" or "the")
        {
            int to = Word(at + 1) is "it" ? at + 2 : Word(at + 2) is "bore" or "travel" or "liner" or "stroke" ? at + 3 : at;
            return to;
        }

        return at;
    }

    private Step Alike(int at)
    {
        int to = at + 1;
        if (Word(to) is "again")
            to++;
        if (Word(to) is "as" or "like")
        {
            int which = to + 1;
            while (Word(which) is "the" or "number" or "cylinder")
                which++;
            if (NumberWords.At(tokens, which) is { Value: > 0 and <= 28 } n)
                return new Step(StepSort.Same, at, Word(n.To) == "one" ? n.To + 1 : n.To) { Numbers = [n.Int] };
        }

        return new Step(StepSort.Same, at, to);
    }

    /// <summary>One number that picks: one, 2, the third, one to four.</summary>
    private Step? One(int at)
    {
        if (NumberWords.At([tokens[at]], 0) is not { Value: > 0 and <= 28 } n || !(n.IsCount || n.Sort == NumSort.Ordinal) || (count > 0 && n.Int > count) || (IsRing && n.Sort == NumSort.Ordinal))
            return null;
        int to = at + 1;
        if (Units.At(tokens, to) is not null)
            return null;
        if (Word(to) is "to" or "through" or "thru" or "-" && to + 1 < tokens.Count && NumberWords.At([tokens[to + 1]], 0) is { IsCount: true, Value: <= 28 } last && last.Int > n.Int && (count == 0 || last.Int <= count))
            return new Step(StepSort.Which, at, to + 2) { Numbers = [.. Enumerable.Range(n.Int, last.Int - n.Int + 1)] };
        return new Step(StepSort.Which, at, to) { Numbers = [n.Int] };
    }

    private Step? Gas(int at)
    {
        if (!HasGas)
            return null;
        string side = Word(at) switch
        {
            "inlet" or "inlets" or "intake" or "intakes" => "in",
            "exhaust" or "exhausts" => "ex",
            "ex" or "in" when IsLash && path.Count > 0 && (at + 1 >= tokens.Count || tokens[at + 1].IsBreak || Word(at + 1) is "and") => Word(at),
            _ => "",
        };
        return side.Length > 0 ? new Step(StepSort.Gas, at, at + 1) { Text = side } : null;
    }

    /// <summary>Every figure that the number words from here can be.</summary>
    private IEnumerable<Step> Figures(int at)
    {
        bool rough = Word(at - 1) is "about" or "around" or "roughly";
        foreach (var (plain, end, joined) in Values(at))
        {
            decimal value = plain;
            int to = end;
            string unit = "";
            if (Units.At(tokens, to, new Num(value, value == decimal.Truncate(value) ? NumSort.Whole : NumSort.Decimal, at, to)) is { } read && !(read.Unit == "in" && Word(to) == "in" && IsLash))
                (unit, to) = read;
            if (unit.Length > 0 && NumberWords.AndPart(tokens, to) is { } half)
                (value, to) = (value + half.Value, half.To);
            bool odd = !fits(value, unit);
            if (odd && path is not [_, .., { Sort: StepSort.Which, Led: false }])
                continue;
            if (to < tokens.Count && (Lexicon.Fasteners.Longest(tokens, to).Values.Count > 0 || Word(to) is "times" or "by" or "x" or "under" or "undersize" or "oversize"))
                continue;
            if (unit.Length == 0 && value == decimal.Truncate(value) && to < tokens.Count && index.Book.Longest(tokens, to).Values.Count > 0 && !Spots.ContainsKey(Word(to)) && Gas(to) is null && !Nouns.Contains(Word(to)))
                continue;
            yield return new Step(StepSort.Figure, at, to) { Value = value, Unit = unit, FigureTo = end, Rough = rough, Odd = odd, Joined = joined || (unit.Length == 0 && head.What is { Quantity: Quantity.Length, Most: < 10 } && value > 1 && value < count + 1 && value != decimal.Truncate(value)) };
        }
    }

    private IEnumerable<(decimal Value, int To, bool Joined)> Values(int at)
    {
        if (NumberWords.At(tokens, at) is not { Sort: NumSort.Whole or NumSort.Decimal or NumSort.Fraction } n || (n.Value == 0 && n.Sort == NumSort.Whole))
        {
            foreach (var (value, to) in Ended(at))
                yield return (value, to, false);
            yield break;
        }

        yield return (n.Value, n.To, false);
        if (n.Sort == NumSort.Decimal && Enumerable.Range(at, n.To - at).FirstOrDefault(k => Word(k) == "point", -1) is var point and >= 0)
        {
            // "point three | three ...": the last digits may be which one comes next.
            for (int cut = n.To - 1; cut > point + 1; cut--)
            {
                if (NumberWords.At([.. Enumerable.Range(at, cut - at).Select(k => tokens[k])], 0) is { Sort: NumSort.Decimal } less && less.To == cut - at)
                    yield return (less.Value, cut, false);
            }
        }

        if (n.Sort == NumSort.Whole)
        {
            foreach (var (value, to) in n.Value < 10 ? Hundreds(n) : head.What.Quantity == Quantity.Length ? Tailed(n) : [])
                yield return (value, to, n.Value < 10);
        }

        foreach (var (value, to) in Ended(at))
            yield return (value, to, false);
    }

    private int? Digit(int at) => at < tokens.Count && NumberWords.At(tokens, at) is { Sort: NumSort.Whole, Value: >= 0 and < 10 } d && d.To == at + 1 ? d.Int : null;

    /// <summary>"eighty six oh one two", "fifty four ninety eight", "86 012".</summary>
    private IEnumerable<(decimal Value, int To)> Tailed(Num n)
    {
        decimal value = n.Value;
        decimal place = 1;
        int to = n.To;
        while (place > 0.0001m && Digit(to) is { } digit && !(to < tokens.Count && tokens[to].Sort == TokenSort.Number && tokens[to].Length > 1))
        {
            value += digit * (place /= 10);
            yield return (value, ++to);
        }

        if (to < tokens.Count && tokens[to].Sort == TokenSort.Number && tokens[to].Length is 2 or 3 or 4 && tokens[n.From].Sort == TokenSort.Number && to == n.To && tokens[to].Text.All(char.IsAsciiDigit))
            yield return (n.Value + (decimal.Parse(tokens[to].Text, System.Globalization.CultureInfo.InvariantCulture) / (decimal)Math.Pow(10, tokens[to].Length)), to + 1);
        else if (value == n.Value && NumberWords.At(tokens, to) is { Sort: NumSort.Whole, Value: >= 10 and < 100 } group && tokens[to].IsWord)
            yield return (value + (group.Value * place / 100), group.To);
    }

    /// <summary>"five sixty four", "one thirty three point two", "one oh five"; "two four nine eight" in inches.</summary>
    private IEnumerable<(decimal Value, int To)> Hundreds(Num n)
    {
        if (n.To - n.From != 1)
            yield break;
        if (NumberWords.At(tokens, n.To) is { Sort: NumSort.Whole or NumSort.Decimal, Value: >= 10 and < 100 } rest && tokens[n.To].IsWord)
            yield return ((n.Value * 100) + rest.Value, rest.To);
        else if (Word(n.To) is "oh" or "o" && Digit(n.To + 1) is { } ones)
            yield return ((n.Value * 100) + ones, n.To + 2);
    }

    /// <summary>After a figure told in full the next one may be told by its last digits: 63.978, "nine eight one".</summary>
    private IEnumerable<(decimal Value, int To)> Ended(int at)
    {
        if (!IsBig || path is [.., { Sort: StepSort.Figure } just] && just.To == at || path.FindLast(s => s.Sort == StepSort.Figure) is not { Value: >= 1 } full || full.Value == decimal.Truncate(full.Value))
            yield break;
        decimal value = decimal.Truncate(full.Value);
        decimal place = 1;
        int to = at;
        if (NumberWords.At(tokens, at) is { Sort: NumSort.Whole, Value: >= 10 and < 100 } pair && tokens[at].IsWord)
            yield return (value + (pair.Value / 100), pair.To);
        while (place > 0.001m && (Digit(to) ?? (Word(to) is "oh" or "nought" ? 0 : null)) is { } digit)
        {
            value += digit * (place /= 10);
            to++;
            if (to - at >= 2)
                yield return (value, to);
        }
    }

    /// <summary>The row as told so far, if it makes one.</summary>
    private void Consider(int at)
    {
        if (RowCells.Of(path, head, count) is not { } told || judge(told.Cells) is not { } oddities)
            return;
        int cost = (8 * told.Cost) + told.Cells.Count + (8 * oddities) + (8 * told.Cells.Count(c => c.Figure.Joined && !c.Copied)) + (32 * told.Cells.Count(c => c.Figure.Odd)) + (NumberWords.At(tokens, at) is not null ? 16 : 0);
        int to = path[^1].To;
        if (to < best.To || (to == best.To && cost > best.Cost))
            return;
        bool same = to == best.To && cost == best.Cost;
        Torn = same && (Torn || !told.Cells.Select(Key).SequenceEqual(Best.Select(Key)));
        if (!same)
            (best, Best) = ((to, cost), told.Cells);
    }

    private static string Key(Cell cell) => $"{string.Join(",", cell.Which)}|{cell.Gas}|{cell.Ring}|{cell.Spot}|{cell.Figure.Value}|{cell.Figure.Unit}";
}
