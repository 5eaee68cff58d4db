using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>Where parts go and come from: at a trade, on the way there, back from it; and tools that go back to whoever lent them.</summary>
internal sealed partial class Listener
{
    private static readonly HashSet<string> Outfits = ["people", "place", "guy", "guys", "man", "fella", "feller", "firm", "crowd", "outfit", "folk", "folks", "shop", "works", "lad", "lads", "boys", "specialist", "company"];

    /// <summary>"the skimming guy", "the auto electrician": a trade or an outfit with its own word before; where its words begin and end.</summary>
    private (int From, int To)? Trade(int from, int to)
    {
        for (int k = from; k < to; k++)
        {
            bool trade = Errand(k, out int end) == "trade";
            int start = k;
            while (start > from && start > k - 3 && !tokens[start - 1].IsBreak && Word(start - 1) is not ("the" or "a" or "my" or "his" or "our" or "to" or "at" or "with" or "in" or "into" or "from" or "for" or "'s" or "is" or "by" or "off" or "over"))
                start--;
            bool outfit = !trade && Outfits.Contains(Word(k)) && start < k && Word(start - 1) is "the" or "a" or "my" && Word(start - 1).Length > 0;
            if (trade && Word(k - 1) is "to" or "at" or "with" or "the" or "a" or "my" or "in" or "into" or "from" or "for" or "local" or "" || trade && k == from)
                start = k;
            if ((trade || outfit) && !(trade && Word(k) is "engineer" or "painter" && Word(end) is "'s"))
                return (Word(start - 1) is "the" or "a" or "my" or "his" or "our" ? start - 1 : start, trade ? end : k + 1);
        }

        return null;
    }

    /// <summary>A day to come: "last Friday" is none.</summary>
    private Due? Coming(int from, int to) => Range(from, to).Where(k => !Range(from, k).TakeLast(2).Any(b => Word(b) is "last" or "since")).Select(dues.At).FirstOrDefault(d => d is { } due && due.To <= to)?.Due;

    /// <summary>"head went to the skimming guy, he says Monday", "starter goes to the electrician Monday", "alternator's home from the rewinder's".</summary>
    private int Journey(Stretch clause)
    {
        var said = Range(clause.From, clause.To).Select(Word).ToHashSet();
        if (In(clause.From, clause.To).Any(p => p is MeasurePhrase or AmountPhrase or LotPhrase or FaultPhrase { Damage: true }) || said.Contains("not") || said.Contains("isnt") || said.Contains("if") || said.Contains("which") || Asks().IsMatch(clause.Line))
            return -1;
        var trade = Trade(clause.From, clause.To);
        int work = Range(clause.From + 1, clause.To - 1).FirstOrDefault(k => Word(k) is "being" or "getting" or "for" && Word(k - 1) is "away" or "gone" or "given" or "out" or "taken" && (Word(k + 1).EndsWith("ing", StringComparison.Ordinal) || Word(k + 1).EndsWith("ed", StringComparison.Ordinal) || Word(k + 1) is "repair" or "a"), -1);
        if (trade is null && work < 0)
            return -1;
        var part = In(clause.From, clause.To).OfType<ThingPhrase>().FirstOrDefault(p => p.Thing is { Sort: ThingSort.Part, Ids.Count: > 0, Others.Count: 0 } && (trade is not { } t || p.To <= t.From || p.From >= t.To));
        var thing = part?.Thing ?? (Word(clause.From) is "it" or "that" or "they" or "those" or "them" || said.Contains("it") || said.Contains("that") ? pending.Count > 0 ? pending[^1].Thing : topic ?? LastThing() : null);
        if (thing is not { Sort: ThingSort.Part, Ids.Count: > 0 })
            return -1;
        string way = trade is { } shop ? Word(shop.From - 1) : "";
        bool back = way == "from" && (said.Overlaps(["back", "home", "returned", "collected", "fetched", "arrived"]) || said.Contains("picked") && said.Contains("up") || said.Contains("come") || said.Contains("came"));
        bool past = said.Overlaps(["went", "gone", "took", "taken", "sent", "dropped", "given", "gave", "handed", "posted", "been", "since", "still", "away"]) || Range(clause.From, clause.To).Any(k => Word(k) == "left" && Word(k + 1) is "the" or "it" or "them" or "my" or "at" or "with") || trade is { } holder && holder.From <= clause.From + 1 && said.Overlaps(["has", "have", "'s"]) || (way is "with" or "at" or "in" && Word(part?.To ?? clause.From + 1) is "'s" or "is" or "are");
        bool ahead = !past && said.Overlaps(["goes", "go", "going", "bring", "take", "taking", "drop", "dropping", "send", "sending", "off", "bringing", "for"]) && (Coming(clause.From, clause.To) is not null || Ahead().IsMatch(clause.Line));
        if (!back && (trade is not null && way is not ("to" or "into" or "at" or "with" or "in" or "for" or "by") && !(past && trade.Value.From <= clause.From + 1) || !past && !ahead || ahead && way is not ("to" or "into" or "at" or "for")))
            return -1;
        int end = clause.To;
        var due = Coming(clause.From, clause.To);
        var later = DueAfter(clause.To);
        if (!back && !ahead && due is null && later is null && SentTo().IsMatch(clause.Line) && Range(clause.From, clause.To).All(k => Word(k) is not ("last" or "since")))
            return -1;
        if (!back && !ahead && due is null && later is { } late)
            (due, end, skipTo) = (late.Due, late.To, late.To);
        Flush();
        var all = Whole(clause).Concat(Range(clause.To, end)).Where(k => !tokens[k].IsBreak).ToList();
        string to = trade is { } at ? Said(Word(at.From) is "the" or "a" or "my" ? at.From + 1 : at.From, at.To) : "shop";
        if (back)
            About(thing, all, t => new Back(t));
        else if (ahead)
            Add(new Planned(thing, Said(clause.From, clause.To)), all);
        else
            About(thing, all, t => new Sent(t, to, work < 0 ? "" : Said(work + 1, clause.To), due, ""));
        pending.Clear();
        Speak(thing, clause.From);
        return end;
    }

    /// <summary>"the spring compressor isn't mine, he wants it back Sunday", "ring compressor to be given back Friday".</summary>
    private int HandBack(Stretch clause, Stretch rest)
    {
        if (Lends(clause) is not { } lent || lent.What is null)
            return -1;
        bool back = Range(clause.From, clause.To).Any(k => Word(k) is "back" || tokens[k].Stem is "return" or "returned");
        int end = clause.To;
        var due = DueIn(clause.From, clause.To);
        if (due is null && end < rest.To && tokens[end].IsBreak && ClauseEnd(end + 1, rest.To) is var next && DueIn(end + 1, next) is { } told && Regex.IsMatch(new Stretch(tokens, end + 1, next).Line, "\\b(?:back|return\\w*|till|until)\\b"))
        {
            // "Sunday I must return it": the day may stand apart from the deed.
            (due, end) = (told, next);
            while (end < rest.To && Range(end, ClauseEnd(end + 1, rest.To)).Any(k => tokens[k].Stem is "return" or "back"))
                end = ClauseEnd(end + 1, rest.To);
        }
        else if (due is null && DueAfter(end) is { } late)
            (due, end, skipTo) = (late.Due, late.To, late.To);
        else if (due is null && end < rest.To && DueIn(end, rest.To) is { } far && Regex.IsMatch(new Stretch(tokens, end, rest.To).Line, "\\b(?:back|return\\w*)\\b") && !In(end, rest.To).Any(p => p is ThingPhrase))
            (due, end) = (far, rest.To);
        if (due is null || (back && lent.Owned is false && end == clause.To && !Range(clause.From, clause.To).Any(k => Word(k) is "must" or "has" or "have" or "goes" or "go" or "to" or "wants" or "want" or "due" or "take" or "give" or "needs")))
            return -1;
        Flush();
        lastOutside = new Thing(ThingSort.Outside, "", [], lent.What);
        pending.RemoveAll(p => p.From >= clause.From);
        Add(new GoesBack(lastOutside, due), Range(clause.From, end).Where(k => !tokens[k].IsBreak));
        return end;
    }

    /// <summary>A tool that is somebody else's, and whether that was said.</summary>
    private (string? What, bool Owned)? Lends(Stretch clause)
    {
        for (int k = clause.From; k < clause.To; k++)
        {
            bool loan = Word(k) is "borrowed" or "hired" or "rented" || Word(k) is "loan" or "lend" or "lent" or "hire" or "len" && Word(k - 1) is "on" or "a" or "the" || Word(k) is "mine" or "ours" && Range(clause.From, k).Any(b => Word(b) is "not" or "isnt" or "no" or "aint" or "only") || Word(k) is "took" or "got" or "have" && Range(k, clause.To).Any(b => Word(b) == "from") && Word(k - 1) is "i" or "we";
            if (loan)
            {
                int of = Range(k, clause.To).FirstOrDefault(b => Word(b) == "of", -1);
                var what = of == k + 1 ? Tool(of + 1, clause.To) : Tool(clause.From, k) ?? Tool(k + 1, clause.To);
                return what is null ? null : (what, true);
            }

            // "got the neighbour's puller here"
            if (Word(k) is "got" or "have" && Range(k + 1, Math.Min(clause.To, k + 4)).FirstOrDefault(b => Lexicon.Persons.Contains(Word(b)) && Word(b + 1) is "'s", -1) is var whose and >= 0 && Tool(whose + 2, clause.To) is { } theirs)
                return (theirs, true);
        }

        var outside = In(clause.From, clause.To).OfType<ThingPhrase>().FirstOrDefault(p => p.Thing.Sort is ThingSort.Outside or ThingSort.Unknown);
        return outside is not null && Range(clause.From, clause.To).Any(k => Word(k) is "back" || tokens[k].Stem is "return" or "returned") ? (outside.Thing.Name, false) : null;
    }

    /// <summary>The name of a tool; null where a part of the engine is named.</summary>
    private string? Tool(int from, int to)
    {
        if (Called(from, to, false) is not { What: { } what } called)
            return null;
        return In(from, to).OfType<ThingPhrase>().Any(p => p.Thing.Sort is ThingSort.Part && p.To >= called.To) ? null : what;
    }
}
