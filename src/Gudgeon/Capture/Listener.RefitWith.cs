namespace Gudgeon.Capture;

/// <summary>What is told beside a part that went back on: what went on with it, what went between, and what is still to be done.</summary>
internal sealed partial class Listener
{
    /// <summary>"gasket down, head on": that of the part that follows.</summary>
    private int Gasket(Breath breath, int at, int to)
    {
        int k = Word(at) is "the" or "a" or "new" ? at + 1 : at;
        k = Word(k) is "new" ? k + 1 : k;
        return phrases.FirstOrDefault(p => p.From == k) is DetailPhrase { Detail: "gasket" } gasket && Went(gasket.To, to) is var (on, _) && In(on, to).OfType<ThingPhrase>().FirstOrDefault() is { Thing: { Sort: ThingSort.Part, Ids.Count: > 0 } of } && (breath.Sure |= k > at && Word(k - 1) == "new") is var _ ? Sealed(breath, of, at, on) : -1;
    }

    /// <summary>"with their rods", "complete with the pin and two new circlips", "with plenty of oil": what came along goes on as well.</summary>
    private int With(Breath breath, int at, int to, Thing thing)
    {
        int k = Word(at) == "complete" ? at + 1 : at;
        if (Word(k) != "with")
            return -1;
        for (k++; k < to;)
        {
            while (Word(k) is "a" or "an" or "the" or "its" or "their" or "his" or "her" or "new" or "fresh" or "both" or "all" or "two" or "four" or "of" or "some" or "pair" or "set" or "good" or "thin" or "little" or "only" && phrases.All(p => p.From != k || p is not (ThingPhrase or LotPhrase or DetailPhrase)))
                k++;
            int next = Companion(breath, k, to, thing);
            if (next < 0)
                return -1;
            while (Word(next) is "in" or "on" or "under" or "underneath" or "inside" && Word(next + 1) is "it" or "them" or "her")
                next += 2;
            if (Word(next) is "fitted" or "attached" or "on" or "in" or "underneath" or "only")
                next++;
            if (Word(next) is not "and" || Companion(new Breath(), Word(next + 1) is "the" or "its" or "new" or "a" or "two" ? next + 2 : next + 1, to, thing) < 0)
                return next;
            k = next + 1;
        }

        return -1;
    }

    private int Companion(Breath breath, int at, int to, Thing thing)
    {
        if (RefitWords.To("stuff", tokens, at) is var stuff && stuff > at)
        {
            while (Word(stuff) is "of" || RefitWords.To("stuff", tokens, stuff) > stuff)
                stuff++;
            return stuff;
        }

        if ((Pin(breath, [], at) ?? phrases.FirstOrDefault(p => p.From == at)) is ThingPhrase { Thing: { Sort: ThingSort.Part, Detail: "" } along } part && part.To <= to && (along.Ids.Count > 0 || OfSame(along.Kind, thing) is not null))
        {
            along = index.Parts(thing.Kind).Count > 1 && OfSame(along.Kind, thing) is { } own && (along.Ids.Count == 0 || along.Ids.Count > own.Ids.Count || along.Others.Count > 0) ? own : Companions(thing, along);
            Goes(breath, along, at, part.To, true);
            return part.To;
        }

        return phrases.FirstOrDefault(p => p.From == at) switch
        {
            DetailPhrase { Detail: "gasket" } gasket => Sealed(breath, thing, at, gasket.To),
            DetailPhrase piece => piece.To,
            LotPhrase { Lot: { Fastener: "washer" or "clip", Size.IsEmpty: true } } washer => washer.To,
            _ => -1,
        };
    }

    private int Sealed(Breath breath, Thing thing, int from, int to)
    {
        Goes(breath, Gasketed(thing, "gasket"), from, to, breath.On.Contains(thing));
        return to;
    }

    /// <summary>"new base gasket under it", "over a new gasket": what went between.</summary>
    private int Lining(Breath breath, int at, int to, bool paused)
    {
        int k = Word(at) is "over" or "on" or "onto" or "with" ? at + 1 : at;
        bool fresh = k > at;
        while (Word(k) is "a" or "an" or "the" or "new" or "fresh" or "its")
            fresh |= Word(k++) is "new" or "fresh";
        fresh |= Word(k - 1) is "new" or "fresh" || (phrases.FirstOrDefault(p => p.From <= k && p.To > k) is ThingPhrase t0 && Range(t0.From, k).Any(w => Word(w) is "new" or "fresh"));
        var phrase = phrases.FirstOrDefault(p => p.From >= at && p.From <= k && p.To > k);
        var under = breath.On.LastOrDefault() ?? (at > 0 && facts.LastOrDefault() is On { Thing: var last } ? last : null);
        if (under is null || phrase is null || !fresh)
            return -1;
        int end = phrase.To;
        while (Word(end) is "under" or "underneath" or "below" or "beneath" or "on" or "in" or "between" or "it" or "them" or "her" or "him" or "first" or "too" or "dry")
            end++;
        if (end > to || (paused | k == at && !Rests(end, to)))
            return -1;
        breath.Sure = true;
        switch (phrase)
        {
            case ThingPhrase { Thing: { Sort: ThingSort.Part } thing } when thing.Kind.EndsWith("-gasket", StringComparison.Ordinal) || thing.Kind.EndsWith("-seal", StringComparison.Ordinal) || thing.Kind is "circlip" or "gudgeon" or "ring-comp" or "ring-oil":
                Goes(breath, index.Parts(under.Kind).Count > 1 && OfSame(thing.Kind, under) is { } own && (thing.Others.Count > 0 || thing.Ids.Count > own.Ids.Count) ? own : thing, at, end, breath.On.Count > 0);
                return end;
            case DetailPhrase { Detail: "gasket" }:
                return Sealed(breath, under, at, end);
            case DetailPhrase { Detail: "seal" or "O-ring" }:
                return end;
            default:
                return -1;
        }
    }

    /// <summary>"but the thermostat isn't", "sump still to go on", "not tightened yet": still to be done.</summary>
    private int NotYet(Breath breath, List<ThingPhrase> named, int at, int to, Thing of)
    {
        int k = at;
        bool denied = false, yet = false, deed = false, tight = false, ahead = false;
        for (; k < to && !tokens[k].IsBreak; k++)
        {
            if (Word(k) is "not" or "isnt" or "arent" or "hasnt" or "havent")
                denied = true;
            else if (Word(k) is "yet" or "still")
                yet = true;
            else if (Word(k) is "on" or "in" or "fitted" or "done" or "do")
                deed = true;
            else if (Word(k) is "tightened" or "torqued" or "torquing" or "tightening")
                tight = true;
            else if (Word(k) is "to" or "needs" or "wants" or "need" or "want")
                ahead = true;
            else if (Word(k) is not ("is" or "'s" or "are" or "has" or "have" or "go" or "be" or "been" or "back" or "up" or "fully" or "all" or "it" or "they") && !(named.Count == 0 && Word(k) is "the" or "its" or "bolt" or "bolts" or "nuts" or "nut"))
                break;
        }

        bool after = breath.Sure || (facts.LastOrDefault() is On or Tightened && draft is not null);
        bool told = denied ? (yet && (named.Count > 0 || tight)) || (after && (tight || (!deed && named.Count > 0))) : ahead && (tight || (deed && named.Count > 0)) && (yet || tight || Word(at) == "to" || Word(at + 1) == "to");
        return told && k > at && Rests(k, to) ? Plans(breath, named.Count > 0 ? named.Select(n => n.Thing) : [of], named.Count > 0 ? named[0].From : at, k) : -1;
    }

    private int Plans(Breath breath, IEnumerable<Thing> things, int from, int to)
    {
        foreach (var thing in things.ToList())
        {
            breath.Steps.Add((to, () =>
            {
                Flush();
                Add(new Planned(Whole(thing with { Sort = ThingSort.Part }), Said(from, to)), Range(from, to));
            }
            ));
        }

        breath.Sure = true;
        return to;
    }
}
