namespace Gudgeon.Capture;

/// <summary>What is on its way: who brings it or how it comes, and when it is here.</summary>
internal sealed partial class Listener
{
    private static readonly HashSet<string> DayWords = ["should", "be", "here", "due", "coming", "hopefully", "they", "said", "say", "it", "'s", "probably", "maybe", "is", "on", "arrives", "arriving", "supposed", "to", "land", "meant", "says", "tracking", "now", "reckons", "reckon", "come", "comes", "turn", "up", "in", "arrive", "get", "'re", "he", "she", "expected", "delivery", "eta", "the", "ready", "back", "will", "'ll", "tells", "tell", "me", "told", "promised", "promise", "for", "are", "telling", "saying", "then", "and", "being", "done", "finished", "there", "this", "only", "not", "before", "we", "'ve", "i", "have", "by", "a", "lad", "bloke", "man", "shop", "them", "at", "think", "thinks", "latest", "earliest", "with", "luck", "want", "wants", "must", "has", "return", "give", "gets", "them", "those", "these", "telling", "promises"];

    private static readonly HashSet<string> Stops = ["round", "over", "off", "up", "in", "down", "along", "back", "here", "out", "on", "till", "until", "by", "to", "from", "for", "with", "only", "after", "before", "is", "'s", "are", "was", "isnt", "arent", "will", "'ll", "wont", "not", "has", "have", "so", "and", "that", "this", "should", "aint", "doesnt", "dont", "'re", "being", "be", "been", "which", "who", "we", "i", "he", "she", "they", "my", "at", "never", "just", "still", "today", "when", "must", "needs", "also", "belongs"];

    private static readonly HashSet<string> Dets = ["the", "a", "an", "my", "some", "his", "her", "their", "its", "our", "your", "new", "another", "other", "more", "no", "any", "that", "this", "those", "these", "me", "us", "till", "until", "right", "correct", "proper", "next", "replacement", "fresh", "still", "also", "and", "but", "first", "now", "then"];

    private string? Errand(int at, out int to)
    {
        var found = Errands.Longest(tokens, at);
        to = found.To;
        return found.Values.FirstOrDefault(v => v is not ("small" or "head"));
    }

    /// <summary>A day told after a pause, with by whose word it is, and nothing else: "Saturday he reckons", "should be here Thursday".</summary>
    private (Due Due, int To)? DueAfter(int end)
    {
        if (end >= tokens.Count || !tokens[end].IsBreak)
            return null;
        int stop = end + 1;
        while (stop < tokens.Count && !tokens[stop].IsBreak)
            stop++;
        (Due Due, int To)? day = null;
        for (int at = end + 1; at < stop;)
        {
            if (day is null && Word(at) is not ("reckons" or "reckon") && dues.At(at) is { } due && due.To <= stop)
            {
                day = due;
                at = due.To;
            }
            else if (day is not null && Word(at) == "if")
                return (day.Value.Due, stop);
            else if (DayWords.Contains(Word(at)) || Lexicon.Persons.Contains(Word(at)) || Errand(at, out _) is "supplier" or "trade")
                at++;
            else
                return day is { } told && Joins(at) ? (told.Due, at) : null;
        }

        return day is { } read ? (read.Due, stop) : null;
    }

    /// <summary>"tensioner out of stock till Saturday", "cousin brings the impact gun on Saturday", "no gasket before Friday": what is not here yet.</summary>
    private int Awaited(Stretch clause)
    {
        int heard = Hearsay(clause.From, clause.To);
        bool reported = heard > clause.From;
        clause = new Stretch(tokens, heard, clause.To);
        int end = clause.To;
        var due = DueIn(clause.From, clause.To);
        if (due is null && DueAfter(clause.To) is { } late)
            (due, end) = late;
        if (due is null || Range(clause.From, clause.To).Any(k => Word(k) is "if" or "unless" or "once" or "gone" or "went" || Word(k) is "till" or "until" or "before" or "when" && dues.At(k) is null) || In(clause.From, clause.To).Any(p => p is MeasurePhrase or AmountPhrase or TagPhrase or LotPhrase { Lot.Size.IsEmpty: false } or ActPhrase { Act: Act.On or Act.Undo or Act.Part or Act.Cap or Act.Tighten or Act.Mark or Act.Drain or Act.Stay }))
            return -1;
        var (what, from, to) = Comes(clause) ?? Brings(clause) ?? Without(clause) ?? Says(clause) ?? (reported ? Promised(clause) : null) ?? default;
        if (what is null)
            return -1;
        var thing = ThingIn(from, to);
        Flush();
        pending.RemoveAll(p => p.From >= clause.From || p.From < to && p.To > from || what.StartsWith(p.Thing.Name, StringComparison.Ordinal));
        Add(new WaitingFor(what, thing is null ? null : thing with { Others = [] }, due), Range(Math.Min(from, clause.From), end).Where(k => !tokens[k].IsBreak && (k >= clause.From || (k >= from && k < to))));
        end = BySomebody(end);
        if (end > clause.To)
            skipTo = end;
        return end;
    }

    private static readonly HashSet<string> SaidBy = ["says", "said", "say", "tells", "tell", "telling", "told", "saying", "promised", "promises", "promise", "reckons", "reckon", "thinks", "think", "swears"];

    /// <summary>One past "the dealer is telling me that", "they say", "as per the shop": by whose word it is. The token itself where nobody is named.</summary>
    private int Hearsay(int from, int to)
    {
        int at = from;
        bool per = Word(at) == "as" && Word(at + 1) == "per";
        at = per ? at + 2 : at;
        while (Word(at) is "the" or "my" or "our" or "his")
            at++;
        if (at >= to || !Somebody(at))
            return from;
        at = Errand(at, out int name) is "supplier" or "trade" ? name : at + 1;
        if (per)
            return at;
        while (Word(at) is "is" or "'s" or "are" or "'re" or "was" or "has" or "have" or "now" or "just" or "also" or "still" or "only")
            at++;
        if (!SaidBy.Contains(Word(at)))
            return from;
        at++;
        while (Word(at) is "me" or "us" or "that" or "now")
            at++;
        return at < to && dues.At(at) is null ? at : from;
    }

    /// <summary>One past ", dealer is telling", "they say": a clause that tells only who said it.</summary>
    private int BySomebody(int end)
    {
        if (end >= tokens.Count || tokens[end].Sort != TokenSort.Comma)
            return end;
        int next = end + 1;
        while (next < tokens.Count && !tokens[next].IsBreak)
            next++;
        return Range(end + 1, next).Any(k => SaidBy.Contains(Word(k))) && Range(end + 1, next).All(k => SaidBy.Contains(Word(k)) || Somebody(k) || Word(k) is "the" or "my" or "is" or "'s" or "are" or "has" or "now" or "me" or "us" or "so") ? next : end;
    }

    /// <summary>"the dealer has promised the barrel by the fifth": what was told of, and its day.</summary>
    private (string? What, int From, int To)? Promised(Stretch clause) =>
        Called(clause.From, clause.To, false) is { What: not null } called && dues.At(called.To) is { } day && day.To == clause.To ? called : null;

    /// <summary>"float needles aren't coming till Saturday": the thing before, how it comes after.</summary>
    private (string? What, int From, int To)? Comes(Stretch clause)
    {
        for (int cue = clause.From + 1; cue < clause.To; cue++)
        {
            string? sort = Errand(cue, out int to);
            if (sort == "came" && !Range(clause.From, cue).Any(k => Word(k) is "never" or "not" or "hasnt" or "havent" or "didnt" or "no"))
                continue;
            if (sort is not ("coming" or "came") || dues.At(cue) is { } spoken && cue < spoken.To && Word(cue) is not ("due" or "expected" or "promised" or "coming" or "arriving" or "landing" or "here" or "delivery"))
                continue;
            // "comes off Saturday", "come back", "I come Saturday": a deed, or somebody.
            if (Word(to) is "off" or "out" or "apart" or "away" or "down" or "back" or "on" && dues.At(to) is null && (Word(to) != "on" || Word(to + 1) is "tomorrow") || Word(cue) is "drop" or "come" && Word(cue - 1) is not ("'ll" or "will" or "to" or "should" or "not" or "cant" or "wont" or "dont") && Word(cue) == "drop")
                return null;
            // "first must arrive the front seal": what comes is told after.
            return Range(clause.From, cue).All(k => Dets.Contains(Word(k)) || Stops.Contains(Word(k))) && to < clause.To ? Called(to, clause.To, true) : Called(clause.From, cue, true);
        }

        // "big ends from the supplier tomorrow"
        int source = Range(clause.From + 1, clause.To).FirstOrDefault(k => Word(k) == "from" && Errand(Word(k + 1) is "the" or "my" ? k + 2 : k + 1, out int past) == "supplier" && dues.At(past) is not null, -1);
        return source < 0 ? null : Called(clause.From, source, true);
    }

    /// <summary>"cousin brings the impact gun", "the factor can't get me a tensioner", "holding tool my nephew will bring".</summary>
    private (string? What, int From, int To)? Brings(Stretch clause)
    {
        int who = Range(clause.From, clause.To).FirstOrDefault(k => Somebody(k), -1);
        if (who < 0)
            return null;
        int verb = Range(who + 1, Math.Min(clause.To, who + 8)).FirstOrDefault(k => Errand(k, out _) == "bringing" || Word(k) is "leave" or "drop" && Errand(k, out _) is "coming", -1);
        if (verb < 0 || !Range(who + 1, verb).All(k => Lexicon.Fillers.Contains(Word(k)) || Somebody(k) || Word(k) is "cant" or "cannot" or "wont" or "isnt" or "not" or "only" or "kindly" or "next" or "door" or "up" or "street" || tokens[k].Glued || In(k, k + 1).All(p => p is WordPhrase) && Range(who, verb).Count() < 4))
            return null;
        int from = verb + 1;
        while (from < clause.To && (Dets.Contains(Word(from)) && Word(from) is not "it" || Word(from) is "in" or "back" or "over" or "off" or "round" or "up" && Word(from + 1) is "the" or "a" or "my" or "his"))
            from++;
        if (Word(from) is "it" or "them" or "that" or "one")
            return Word(from + 1) is "home" or "back" ? null : Lacked(clause.From);
        int to = from;
        while (to < clause.To && !tokens[to].IsBreak && !Stops.Contains(Word(to)) && dues.At(to) is null)
            to++;
        // "bring it to the welder": taken there, not brought here.
        if (Range(to, clause.To).Any(k => Word(k) == "to" && Errand(Word(k + 1) is "the" or "my" ? k + 2 : k + 1, out _) == "trade") || Word(to) is "for" && to < clause.To && Errand(Word(to + 1) is "the" ? to + 2 : to + 1, out _) == "trade")
            return null;
        return to > from ? Called(from, clause.To, false) : Called(clause.From, who, false);
    }

    /// <summary>"no tensioner before Saturday", "they've no gasket till Friday".</summary>
    private (string? What, int From, int To)? Without(Stretch clause)
    {
        int no = Range(clause.From, Math.Min(clause.To, clause.From + 4)).FirstOrDefault(k => Word(k) == "no", -1);
        // "the shop won't have shims till Monday"
        int have = Range(clause.From, clause.To).FirstOrDefault(k => Word(k) is "have" or "got" or "stock" && Word(k - 1) is "wont" or "hasnt" or "havent" or "dont" or "doesnt" or "not" && Range(clause.From, k).Any(Somebody) && Word(k + 1) is not ("to" or "till" or "until" or "it" or "them" or "any" or "time"), -1);
        if (have >= 0 && Range(have, clause.To).FirstOrDefault(k => Word(k) is "till" or "until" or "before" && dues.At(k) is not null, -1) is var then and > 0)
            return Called(have + 1, then, false);
        int till = no < 0 ? -1 : Range(no + 1, clause.To).FirstOrDefault(k => Word(k) is "till" or "until" or "before" && dues.At(k) is not null, -1);
        return till < 0 || !Range(clause.From, no).All(k => Word(k) is "they" or "'ve" or "have" or "he" or "has" or "'s" or "there" or "is" or "got" or "so" or "still" or "she" || Errand(k, out _) == "supplier") ? null : Called(no + 1, till, false);
    }

    /// <summary>"dealer says Saturday for the tensioner".</summary>
    private (string? What, int From, int To)? Says(Stretch clause)
    {
        int says = Range(clause.From + 1, clause.To).FirstOrDefault(k => Word(k) is "says" or "said" or "say" or "reckons" or "reckon" or "promises" or "promised" or "tells" or "telling" or "saying" && dues.At(k + 1) is not null, -1);
        if (says < 0 || !Range(clause.From, says).Any(Somebody) || dues.At(says + 1) is not { } day || Word(day.To) != "for")
            return null;
        return Called(day.To + 1, clause.To, false);
    }

    /// <summary>A person, a supplier or a trade, or a pronoun for one; not the speaker.</summary>
    private bool Somebody(int at) => Word(at) is "he" or "she" or "they" || (Lexicon.Persons.Contains(Word(at)) && Word(at) is not ("i" or "we" or "me" or "us" or "you" or "him" or "her" or "love" or "darling")) || Errand(at, out _) is "supplier" or "trade";

    /// <summary>What it is called, without what only points at it: "another tensioner", "no tensioner", "his gasket" of the thermostat.</summary>
    private (string? What, int From, int To)? Called(int from, int to, bool cut)
    {
        string owner = "";
        while (from < to && (tokens[from].IsBreak || Dets.Contains(Word(from)) || Word(from) is "so" or "then"))
        {
            owner = Word(from) is "its" or "his" && topic is { Sort: ThingSort.Part, Others.Count: 0 } of && pending.Count == 0 || Word(from) is "its" or "his" && pending.Count > 0 && (of = pending[^1].Thing).Others.Count == 0 ? of.Name + " " : "";
            from++;
        }

        int stop = from;
        while (stop < to && !tokens[stop].IsBreak && (!Stops.Contains(Word(stop)) || Word(stop) == "and" && stop + 1 < to && !Lexicon.Fillers.Contains(Word(stop + 1))) && dues.At(stop) is null && Errand(stop, out _) is not ("coming" or "bringing" or "came") | stop == from)
            stop++;
        if (stop > from && Word(stop - 1) is "one" or "ones" && Range(from, stop - 1).All(k => Dets.Contains(Word(k))))
            return Lacked(from);
        if (stop == from || stop - from > 5 || (cut && Range(stop, to).Any(k => In(k, to).Any(p => p is ThingPhrase && p.From == k))) || Range(from, stop).All(k => Lexicon.Fillers.Contains(Word(k)) || Somebody(k)) || Word(from) is "it" or "they" or "he" or "she" or "i" or "we" or "you")
            return Word(from) is "it" or "they" && from < to ? Lacked(from) : null;
        return (owner + string.Join(" ", Range(from, stop).Select(k => tokens[k].Text)).Replace(" '", "'", StringComparison.Ordinal), from, stop);
    }

    /// <summary>"needs a puller, neighbour's got one", "cousin has the impact gun, he brings it": what was wanted or had, told before in the sentence.</summary>
    private (string? What, int From, int To)? Lacked(int before)
    {
        for (int k = before - 1; k >= 0 && !tokens[k].IsEnd; k--)
        {
            if (Word(k) is not ("has" or "have" or "got" or "need" or "needs" or "without" or "want" or "wants" or "ordered") || Word(k + 1) is "to" or "it" or "one" or "them")
                continue;
            int to = k + 1;
            while (to < before && !tokens[to].IsBreak && (to == k + 1 || !Stops.Contains(Word(to))))
                to++;
            return Called(k + 1, to, false);
        }

        var last = phrases.LastOrDefault(p => p is ThingPhrase && p.To <= before);
        return last is null ? null : (string.Join(" ", Range(last.From, last.To).SkipWhile(k => Dets.Contains(Word(k))).Select(k => tokens[k].Text)), last.From, last.To);
    }
}
