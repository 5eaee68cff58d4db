namespace Gudgeon.Capture;

/// <summary>
/// Sets right what dialect, haste and dictation make of plain words, before a note is understood: dropped letters
/// (<c>sittin</c>), words of the regions (<c>cannae</c>), run-together ones (<c>theyre</c>, <c>gonna</c>), numbers heard as
/// little words, and talk that carries no weight. Every token keeps its span of what was said, so that facts still point
/// at the person's own words; talk without weight makes no token. The words are in <c>Data/speech.psv</c>.
/// </summary>
internal static class Speech
{
    private static readonly Dictionary<string, List<(string[] Said, string[] Meant)>> Plain = Table("word", row => row[1].Split(' '));
    private static readonly Dictionary<string, List<(string[] Said, string[] Meant)>> Asides = Talk("aside");
    private static readonly Dictionary<string, List<(string[] Said, string[] Meant)>> Openers = Talk("opener");
    private static readonly Dictionary<string, List<(string[] Said, string[] Meant)>> Pauses = Talk("pause");
    private static readonly Dictionary<string, List<(string[] Said, string[] Meant)>> Tags = Talk("tag");
    private static readonly Dictionary<string, List<(string[] Said, string[] Meant)>> Calls = Talk("call");
    private static readonly Dictionary<string, List<(string[] Said, string[] Meant)>> Mates = Talk("mate");
    private static readonly HashSet<string> KeepsN = [.. Rows("keeps-n").SelectMany(r => r[2].Split("; "))];

    /// <summary>After these "it" and "is" were run together; after anything else "its" owns what follows.</summary>
    private static readonly HashSet<string> AfterIts =
        ["a", "an", "the", "not", "off", "out", "on", "in", "gone", "been", "got", "just", "all", "still", "now", "too", "very", "really", "only", "back", "going", "no", "never", "hanging", "sitting", "lying", "well", "quite", "pretty", "like", "under", "behind", "up", "down", "about", "full", "that", "this", "there", "here", "stuck", "got"];

    /// <summary>After these a number is due.</summary>
    private static readonly HashSet<string> Numbered = ["number", "cylinder", "bore", "main", "rod", "piston"];

    /// <summary>After these a mate is spoken of, not spoken to.</summary>
    private static readonly HashSet<string> Owning = ["the", "a", "an", "my", "his", "her", "our", "your", "their", "old", "that", "this", "with", "to", "from", "by", "for", "and", "some", "these", "those", "long", "longer", "longest", "short", "shorter", "big", "bigger", "little", "small", "wee", "other"];

    /// <summary>After these the last word belongs to what is said: till then, looks like.</summary>
    private static readonly HashSet<string> NoTagAfter = ["till", "until", "by", "since", "back", "or", "think", "do", "guess", "say", "hope", "looks", "feels", "sounds", "the", "one", "it", "ever", "not", "is", "are"];

    /// <summary>After "righto possum" these go on to say what is told.</summary>
    private static readonly HashSet<string> Told = ["you", "we", "i", "first", "now", "this", "that", "here", "the", "there", "it", "see", "look", "hold", "pass"];

    public static List<Token> Settle(List<Token> tokens)
    {
        var plain = Worded(tokens);
        var kept = new List<Token>(plain.Count);
        for (int at = 0; at < plain.Count;)
        {
            int to = Left(plain, at, kept);
            if (to == at)
            {
                kept.Add(plain[at++]);
                continue;
            }

            // The pause that set it off goes with it.
            if (to < plain.Count && plain[to].Sort == TokenSort.Comma && Pause(kept, kept.Count - 1))
                to++;
            else if (kept.Count > 0 && kept[^1].Sort == TokenSort.Comma && (to >= plain.Count || plain[to].IsBreak))
                kept.RemoveAt(kept.Count - 1);
            at = to;
        }

        return kept;
    }

    /// <summary>One past the talk that starts at the token, or the token itself.</summary>
    private static int Left(List<Token> tokens, int at, List<Token> before)
    {
        bool starts = Pause(before, before.Count - 1);
        int aside = Find(Asides, tokens, at).To;
        if (aside > at)
            return aside;
        bool opens = before.Count == 0 || before[^1].IsEnd;
        if (opens && Find(Openers, tokens, at).To is var opener && opener > at && opener < tokens.Count)
            return opener;
        if (starts && (Find(Pauses, tokens, at).To is var pause && pause > at && pause < tokens.Count && tokens[pause].IsBreak))
            return pause;
        if (starts && Math.Max(Find(Calls, tokens, at).To, Find(Mates, tokens, at).To) is var call && call > at && (Pause(tokens, call) || (opens && at > 0 && !tokens[at - 1].IsBreak && Told.Contains(tokens[call].Text))))
            return call;
        if (!starts && Find(Mates, tokens, at).To is var mate && mate > at && Ends(tokens, mate) && !Owning.Contains(before[^1].Text) && NumberWords.At(before, before.Count - 1) is null)
            return mate;
        return !starts && Find(Tags, tokens, at).To is var tag && tag > at && Pause(tokens, tag) && !NoTagAfter.Contains(before[^1].Text) ? tag : at;
    }

    private static bool Pause(List<Token> tokens, int at) => at < 0 || at >= tokens.Count || tokens[at].IsBreak;

    private static bool Ends(List<Token> tokens, int at) => at >= tokens.Count || tokens[at].IsEnd;

    /// <summary>Every word as plain speech has it.</summary>
    private static List<Token> Worded(List<Token> tokens)
    {
        var plain = new List<Token>(tokens.Count);
        for (int at = 0; at < tokens.Count;)
        {
            var (meant, to) = Meant(tokens, at);
            if (meant is null)
                plain.Add(tokens[at]);
            else
                Spread(plain, meant, tokens[at], tokens[to - 1]);
            at = to;
        }

        return plain;
    }

    private static (string[]? Meant, int To) Meant(List<Token> tokens, int at)
    {
        var token = tokens[at];
        if (!token.IsWord)
            return (null, at + 1);
        string next = Word(tokens, at + 1);
        string before = Word(tokens, at - 1);
        if (Find(Plain, tokens, at) is var (meant, to) && to > at)
            return (meant, to);
        switch (token.Text)
        {
            case "its" when AfterIts.Contains(next) || (at + 1 < tokens.Count && tokens[at + 1].IsWord && Lexicon.Faults.Longest(tokens, at + 1).Values.Count > 0 && Lexicon.Details.Longest(tokens, at + 1).Values.Count == 0 && !Lexicon.Common.Contains(Word(tokens, at + 2))):
                return (["it", "'s"], at + 1);
            case "em" when NumberWords.At(tokens, at + 1) is not { IsCount: true }:
                return (["them"], at + 1);
            case "them" or "they" when (at == 0 || tokens[at - 1].IsBreak || before is "all" or "of" or "and" or "on") && Lexicon.Fasteners.Longest(tokens, at + 1).Values.Count > 0:
            case "they" when before is "on" or "of" or "in" or "from" or "with":
                return (["those"], at + 1);
            case "is" or "are" when next == "having" && NumberWords.At(tokens, at + 2) is not null:
                return (["has"], at + 2);
            case "nae" or "no" when before is "is" or "'s" or "was" or "are" or "were" or "'re" && (token.Text == "nae" || next is "in" or "on" or "off" or "out" or "there" or "here" or "under" or "at"):
                return (["not"], at + 1);
            case "nae":
                return (["no"], at + 1);
            case "no" when before is "is" or "'s" or "was" && next == "where":
                return (["not"], at + 1);
            case "dry" when before is "on" or "in" && (Pause(tokens, at + 1) || next is "and" or "with" or "no" or "then" or "as" or "but"):
                // "gasket on dry": how it went on, and nothing seen on it.
                return ([], at + 1);
            case "let" when next == "off" && (before == "pressure" || Word(tokens, at - 2) == "pressure"):
                return (["let", "down"], at + 2);
            case "battery" when Disconnected(tokens, at) is { } lead:
                return (["battery", "is"], lead);
            case "negative" or "earth" or "positive" or "lead" or "leads" or "terminal" or "terminals" or "cables" when OffBattery(tokens, at) is { } taken:
                return (["battery", "is", "off"], taken);
            case "pulled" or "yanked" or "took" when Starved(tokens, at) is { } starved:
                return (tokens.Take(at).Any(t => t.Text == "pressure") ? [] : ["fuel", "pressure", "let", "down"], starved);
            case "cause" when next is "i" or "it" or "its" or "the" or "they" or "he" or "she" or "we" or "you" or "your" or "my" or "there":
                return (["because"], at + 1);
            case "ate" when Numbered.Contains(before) || next == "of" || NumberWords.At(tokens, at - 1) is not null || Lexicon.Fasteners.Longest(tokens, at + 1).Values.Count > 0 || Metric(tokens, at + 1):
                return (["eight"], at + 1);
            case "won" when Numbered.Contains(before):
                return (["one"], at + 1);
            case "to" or "too" when Numbered.Contains(before) && (next is "is" or "'s" or "has" or "was" or "and" || at + 1 >= tokens.Count || tokens[at + 1].IsBreak):
                return (["two"], at + 1);
            case "for" when (Numbered.Contains(before) && (next is "is" or "'s" or "has" or "was" || at + 1 >= tokens.Count || tokens[at + 1].IsBreak)) || (Pause(tokens, at - 1) && at > 0 && Metric(tokens, at + 1)):
                return (["four"], at + 1);
            case "numbers" or "nos" or "pieces" or "pcs" when at > 0 && NumberWords.At(tokens, at - 1) is { Sort: NumSort.Whole } && (token.Text is "numbers" or "nos" or "pcs" || Metric(tokens, at + 1)):
                return (Pause(tokens, at + 1) || next is "all" or "and" or "are" or "is" ? ["of", "them"] : [], at + 1);
        }

        return Dropped(tokens, at) is { } full ? ([full], at + 1) : (null, at + 1);
    }

    /// <summary>"battery lead's off", "battery terminals are disconnected": the battery is off; one past the lead.</summary>
    private static int? Disconnected(List<Token> tokens, int at)
    {
        if (!(Pause(tokens, at - 1) || (Word(tokens, at - 1) is "the" or "negative" or "so" or "right" && Pause(tokens, at - 2))) || Word(tokens, at + 1) is not ("lead" or "leads" or "cable" or "cables" or "terminal" or "terminals" or "clamp" or "clamps" or "negative" or "earth"))
            return null;
        int to = Word(tokens, at + 1) is "negative" or "earth" && Word(tokens, at + 2) is "lead" or "cable" or "terminal" or "clamp" ? at + 3 : at + 2;
        int state = Word(tokens, to) is "'s" or "is" or "are" or "was" or "were" or "'re" ? to + 1 : to;
        return Word(tokens, state) is "off" or "disconnected" or "unhooked" && Word(tokens, state + 1) is not ("the" or "at" or "of") ? state : null;
    }

    /// <summary>"negative lead's off the battery", "leads are off the battery": one past it.</summary>
    private static int? OffBattery(List<Token> tokens, int at)
    {
        if (!(Pause(tokens, at - 1) || (Word(tokens, at - 1) is "the" or "both" && Pause(tokens, at - 2))))
            return null;
        int to = Word(tokens, at) is "negative" or "earth" or "positive" && Word(tokens, at + 1) is "lead" or "cable" or "terminal" or "clamp" ? at + 2 : at + 1;
        to = Word(tokens, to) is "'s" or "is" or "are" or "was" or "were" ? to + 1 : to;
        return Word(tokens, to) is "off" or "disconnected" && Word(tokens, to + 1) is "the" or "from" && (Word(tokens, to + 1) == "the" ? to + 2 : to + 3) is var noun && Word(tokens, noun) == "battery" && Word(tokens, noun + 1) is not ("tray" or "box") ? noun + 1 : null;
    }

    /// <summary>"pulled the fuse and ran her till she died": that is how the pressure is let out of the fuel; one past it.</summary>
    private static int? Starved(List<Token> tokens, int at)
    {
        int to = at + 1;
        while (Word(tokens, to) is "the" or "fuel" or "petrol" or "pump" or "out")
            to++;
        if (Word(tokens, to) is not ("fuse" or "relay"))
            return null;
        to++;
        while ((to < tokens.Count && tokens[to].Sort == TokenSort.Comma) || Word(tokens, to) is "out" or "and" or "then" or "i" or "we" or "just")
            to++;
        if (Word(tokens, to) is not ("ran" or "run" or "let" or "left" or "cranked"))
            return null;
        int end = to + 1;
        while (end < to + 5 && Word(tokens, end) is "her" or "it" or "him" or "run" or "running" or "the" or "engine" or "motor" or "on")
            end++;
        if (Word(tokens, end) is not ("till" or "until" or "til") || Word(tokens, end + 1) is not ("she" or "it" or "he"))
            return null;
        return Word(tokens, end + 2) switch
        {
            "died" or "stalled" or "stopped" or "quit" or "starved" or "conked" or "cut" when Word(tokens, end + 3) == "out" => end + 4,
            "died" or "stalled" or "stopped" or "quit" or "starved" => end + 3,
            "ran" when Word(tokens, end + 3) is "out" or "dry" => end + 4,
            _ => null,
        };
    }

    /// <summary>"M8" or "M 8" stands there.</summary>
    private static bool Metric(List<Token> tokens, int at) => Word(tokens, at) is "m" && NumberWords.At(tokens, at + 1) is { IsCount: true };

    /// <summary>"sittin" is "sitting"; a name and "drain" are what they are.</summary>
    private static string? Dropped(List<Token> tokens, int at)
    {
        string word = tokens[at].Text;
        return word.Length >= 4 && word.EndsWith("in", StringComparison.Ordinal) && !KeepsN.Contains(word) && word[..^2].AsSpan().IndexOfAny("aeiouy") >= 0 ? word + "g" : null;
    }

    private static string Word(IReadOnlyList<Token> tokens, int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    /// <summary>The plain words, each with a piece of the span of what was said for them.</summary>
    private static void Spread(List<Token> plain, string[] meant, Token first, Token last)
    {
        int length = last.Start + last.Length - first.Start;
        for (int i = 0; i < meant.Length; i++)
        {
            int from = first.Start + (i * length / meant.Length);
            int to = first.Start + ((i + 1) * length / meant.Length);
            plain.Add(new Token(meant[i], Token.StemOf(meant[i]), TokenSort.Word, from, Math.Max(1, to - from), i > 0 || first.Glued));
        }
    }

    private static (string[]? Meant, int To) Find(Dictionary<string, List<(string[] Said, string[] Meant)>> table, List<Token> tokens, int at)
    {
        (string[]? Meant, int To) best = (null, at);
        if (!tokens[at].IsWord || !table.TryGetValue(tokens[at].Text, out var rows))
            return best;
        foreach (var (said, meant) in rows)
        {
            if (at + said.Length > best.To && at + said.Length <= tokens.Count && said.Index().All(w => tokens[at + w.Index].Text == w.Item))
                best = (meant, at + said.Length);
        }

        return best;
    }

    private static IEnumerable<string[]> Rows(string sort) => Lexicon.Rows("speech").Where(r => r[0] == sort);

    private static Dictionary<string, List<(string[] Said, string[] Meant)>> Talk(string sort) => Table(sort, _ => []);

    private static Dictionary<string, List<(string[] Said, string[] Meant)>> Table(string sort, Func<string[], string[]> meant) =>
        Rows(sort).SelectMany(r => r[2].Split("; "), (r, said) => (Said: Tokeniser.Plain(said).Select(t => t.Text).ToArray(), Meant: meant(r)))
            .GroupBy(w => w.Said[0]).ToDictionary(g => g.Key, g => g.ToList());
}
