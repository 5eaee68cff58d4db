using System.Globalization;
using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>"no, twelve bolts not ten", "scrap that", "make that five", "those are M10 fine".</summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:no |naw |nah |nope |oops |sorry |right |ok |actually |wait |ah |oh |,? ?)*(?:scrap|scratch|strike|forget|ignore|delete|cancel|scrub|bin|undo|disregard|strike out|cross out|take back|rub out) (?:that last|that|the last|last|what i (?:just )?said|the last one|my last|all that|the above)(?: one| note| entry| bit| lot| line| out| thing)?\\b$|^(?:no )?(?:that 's|that was|that is|thats) (?:all )?(?:wrong|not right|rubbish|a mistake)$")]
    private static partial Regex Scraps();

    [GeneratedRegex("^(?:no |sorry |oops |actually |,? ?)*(?:it|they|that) (?:was|were|is|'s|are|should be|should have been) (?:really |actually )?(?:on |in )?(?:the )?(?<b>left|right|front|rear|upper|lower|inlet|exhaust|top|bottom)(?: (?:one|ones|hand|side|bank|head|hand one|end))? (?:and )?not (?:on |in )?(?:the )?(?<a>left|right|front|rear|upper|lower|inlet|exhaust|top|bottom)(?: .*)?$")]
    private static partial Regex OtherSide();

    [GeneratedRegex("^(?<cue>(?!no idea)(?:no(?= ?,| (?:\\d|m \\d|it|that|they|wait|sorry|make|hang|hold|actually|not|i\\b|there|the|number|left|right|bag|tray|box|tin|scrub|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty)\\b|$)|turns out|turned out|ope no|ope|well(?= (?:(?:it|that|they|there) (?:'s|'re|is|are|was|were) )?(?:\\d|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty)\\b)|nope|nay|naw|nah|hang about|hold on|sorry|actually|correction|oops|wait|hang on|i tell a lie|tell a lie|i mean|i meant|i meant to say|make that|make it|or rather|rather|should be|should have been|should say|it should be|that should be|scrub that)(?: ,?(?: ?(?:no|sorry|wait|hang on|hang about|hold on|actually|make that|make it|it 's|its|it was|that 's|they 're|they were|there 's|there are|there were|i mean|i meant|should be|that should be|it should be|that was|it is))?)*)(?![a-z']) ?,? ?(?<rest>.*)$")]
    private static partial Regex Corrects();

    [GeneratedRegex("^(?:(?:those|these|they|them|it|that)(?: ones?| bolts?| studs?| nuts?)? ?(?:'re|are|'s|is|were|was|should be)|the(?:se)? bolts (?:are|were)) (?<rest>.+)$")]
    private static partial Regex Those();

    [GeneratedRegex("^(?:that |the |those )?(?<x>.+?) (?:i|we) (?:said|put down as|wrote|told you|had as|had down as|called) (?:was |were |is |went |goes |in |at |as )*(?:the )?(?<a>.+?) ?,? (?:it 's|they 're|it is|they are|is|are|it was|should be|actually|goes|it goes|was) (?:really |actually |in )*(?:the )?(?<b>.+)$")]
    private static partial Regex SaidBefore();

    private int Correction(Stretch clause, Stretch rest)
    {
        if (!Scraps().IsMatch(clause.Line) && Revise(rest) is var revised and >= 0)
            return revised;
        if (Scraps().IsMatch(clause.Line))
        {
            int after = rest.To > clause.To && tokens[clause.To].IsBreak ? clause.To + 1 : clause.To;
            if (after < rest.To && OtherSide().Match(new Stretch(tokens, after, ClauseEnd(after, rest.To)).Line) is { Success: true } next)
            {
                int end = ClauseEnd(after, rest.To);
                Add(new Corrected(null, "side", next.Groups["a"].Value, next.Groups["b"].Value), Range(clause.From, end).Where(i => !tokens[i].IsBreak));
                return end;
            }

            StrikeLast(clause);
            return clause.To;
        }

        if (Regex.Match(clause.Line, "^(?:no |sorry |,? ?)*(?:scrap|forget|ignore|disregard|scrub|delete|strike) (?:what i (?:said|told you|put|wrote)|the (?:note|entry|bit|line|stuff)|everything|that) (?:about|on|for) (?<x>.+)$") is { Success: true } on && clause.Tokens(on.Groups["x"]) is var (onFrom, onTo) && ThingIn(onFrom, onTo) is { } meant1)
        {
            Add(new StruckOut(meant1 with { Others = [] }), Range(clause.From, clause.To));
            return clause.To;
        }

        if (OtherSide().Match(clause.Line) is { Success: true } side)
        {
            Add(new Corrected(null, "side", side.Groups["a"].Value, side.Groups["b"].Value), Range(clause.From, clause.To));
            return clause.To;
        }

        foreach (var stretch in Together(clause, rest).Take(2))
        {
            if (SaidBefore().Match(stretch.Line) is { Success: true } said && !stretch.Line.StartsWith("what ", StringComparison.Ordinal) && SaidOtherwise(stretch, said))
                return stretch.To;
        }

        if (Corrects().Match(clause.Line) is { Success: true } cue)
            return Amend(clause, rest, cue);
        if (In(clause.From, clause.To).FirstOrDefault(p => p is not WordPhrase) is ThingPhrase { Thing.Sort: ThingSort.Fasteners } bolts && draft is null && Regex.IsMatch(clause.Line, "\\b(?:are|were|is|'s|'re) .*\\bnot\\b") && In(bolts.To, clause.To).OfType<LotPhrase>().FirstOrDefault(l => !l.Lot.Size.IsEmpty && l.Lot.Count is null) is not null)
            return Amend(clause, rest, Corrects().Match("no it " + clause.Line));
        if (Those().Match(clause.Line) is { Success: true } those && Resize(clause, rest, those) is var sized and >= 0)
            return sized;
        return -1;
    }

    private void StrikeLast(Stretch clause)
    {
        // Within one note it takes back what was just said; else the note before.
        if (draft is not null || facts.Count > 0)
        {
            draft = null;
            if (facts.Count > 0)
                facts.RemoveAt(facts.Count - 1);
            _ = Spans(Range(clause.From, clause.To));
            Add(new StruckOut(topic), Range(clause.From, clause.To));
        }
        else
            Add(new StruckOut(null), Range(clause.From, clause.To));
    }

    private bool SaidOtherwise(Stretch stretch, Match match)
    {
        var (xFrom, xTo) = stretch.Tokens(match.Groups["x"]);
        var thing = ThingIn(xFrom, xTo);
        string name = string.Join(" ", Enumerable.Range(xFrom, xTo - xFrom).Select(i => tokens[i].Text));
        string was = match.Groups["a"].Value;
        string now = match.Groups["b"].Value;
        string what = Regex.IsMatch(now, "\\b(?:left|right|top|bottom|front|rear|back|middle|end)\\b") ? "place" : NumberWords.At(tokens, stretch.Tokens(match.Groups["b"]).From) is not null ? "figure" : "";
        if (what.Length == 0)
            return false;
        now = Regex.Replace(now, " (?:as )?(?:seen|viewed|looking) .*$", m => m.Value);
        Add(new Corrected(thing is { } t ? t with { Others = [] } : LastJoint() is { } joint ? joint with { Detail = name } : new Thing(ThingSort.Unknown, "", [], name), what, was, now), Range(stretch.From, stretch.To));
        return true;
    }

    private Thing? LastJoint() =>
        (context.LastJoint ?? context.LastThing) is { } id && index.Engine.Parts.TryGetValue(id, out var part) ? new Thing(ThingSort.Fasteners, part.Kind, [id], part.Name) { Fastener = "bolt" } : null;

    private int Amend(Stretch clause, Stretch rest, Match cue)
    {
        string word = cue.Groups["cue"].Value.Trim(' ', ',');
        if (word.StartsWith("no", StringComparison.Ordinal) && Regex.IsMatch(clause.Line + " " + (clause.To + 1 < rest.To ? new Stretch(tokens, clause.To + 1, ClauseEnd(clause.To + 1, rest.To)).Line : ""), "\\b(?:better|get|buy|order|need|want)\\b"))
            return -1;
        int from = cue.Index == 0 && cue.Length > clause.Line.Length ? clause.From : cue.Groups["rest"].Length > 0 ? clause.Tokens(cue.Groups["rest"]).From : clause.To;
        int end = clause.To;
        if (from >= clause.To)
        {
            if (clause.To >= rest.To || !tokens[clause.To].IsBreak)
                return -1;
            from = clause.To + 1;
            end = ClauseEnd(from, rest.To);
        }

        while (Word(from) is "no" or "sorry" or "it" or "'s" or "was" or "is" or "make" or "that" or "wait" or "there" or "are" or "were" or "they" or "'re" or "i" or "mean" or "meant" && from < end)
            from++;
        int not = Enumerable.Range(from, end - from).FirstOrDefault(i => Word(i) == "not", -1);
        if (not < 0 && end < rest.To && tokens[end].Sort == TokenSort.Comma && Word(end + 1) == "not")
        {
            not = end + 1;
            end = ClauseEnd(end + 1, rest.To);
        }

        int stop = not < 0 ? end : not;
        var (what, now) = Told(from, stop, word is "no" or "nope");
        if (what.Length == 0 || (what == "day" && word.StartsWith("should", StringComparison.Ordinal)))
            return -1;
        // "wait, the sump is off": a deed of its own.
        if (what == "part" && draft is null && facts.Count == 0 && In(from, stop).Any(p => p is ActPhrase { Act: Act.Off or Act.On or Act.Undo or Act.Tighten }))
            return -1;
        if (what == "count" && (Word(from) is "number" or "cylinder" or "no" || Picked(from, stop).Count > 1) && Renumbered(from, stop, Range(clause.From, end)))
            return end;
        string was = not < 0 ? "" : Told(not + 1, end, false).Text is { Length: > 0 } told ? told : Said(Skip(not + 1, end), end);
        if (what == "place" && was.Length > 0 && was.All(char.IsAsciiDigit))
            was = $"{now.Split(' ')[0]} {was}";
        end = Excuse(end, rest.To);
        var all = Range(clause.From, end).Where(i => !tokens[i].IsBreak);
        if (draft is { Lots.Count: > 0 } && what is "count" or "size" && draft is not null && AmendDraft(from, stop, what))
        {
            draft.Tokens.AddRange(all);
            _ = Spans(all);
            return end;
        }

        if (draft is { Lots: [.., { Lot.Size.Length: not null } sized] } && what == "figure" && NumberWords.At(tokens, from) is { } longer && longer.To >= stop)
        {
            draft.Lots[^1] = sized with { Lot = sized.Lot with { Size = sized.Lot.Size with { Length = longer.Value } } };
            draft.Tokens.AddRange(all);
            _ = Spans(all);
            return end;
        }

        if (draft is not null && what == "place" && draft.Place is not null)
        {
            draft.Place = In(from, stop).OfType<PlacePhrase>().Last().Place;
            draft.Tokens.AddRange(all);
            _ = Spans(all);
            return end;
        }

        if (what == "place" && facts.FindLastIndex(f => f is Put) is var put and >= 0)
        {
            facts[put] = ((Put)facts[put]) with { Place = In(from, stop).OfType<PlacePhrase>().Last().Place, Spans = [.. facts[put].Spans, .. Spans(all)] };
            return end;
        }

        if (what == "part" && pending.Count > 0 && In(from, stop).OfType<ThingPhrase>().FirstOrDefault() is { } meant)
        {
            // "lift pump, no it's the injection pump": nothing was said of the first yet.
            pending[^1] = (meant.Thing, meant.From, meant.To);
            _ = Spans(all);
            return end;
        }

        if (In(from, stop).OfType<ThingPhrase>().FirstOrDefault(t => t.Thing.Sort == ThingSort.Fasteners) is { } held && In(from, stop).OfType<LotPhrase>().FirstOrDefault(l => !l.Lot.Size.IsEmpty) is { } resized && not >= 0)
        {
            Add(new Corrected(held.Thing with { Others = [] }, "size", was, resized.Lot.Size.ToString()), all);
            return end;
        }

        var thing = draft?.Of ?? (what == "part" ? null : topic ?? (what is "count" or "size" or "place" ? In(from, stop).OfType<ThingPhrase>().FirstOrDefault(t => t.Told is not null)?.Thing ?? LastJoint() : null));
        Add(new Corrected(thing is { } t ? t with { Others = [] } : null, what, was, now), all);
        return end;
    }

    /// <summary>"big end four's worn, no sorry, number three": the last fact was about another one.</summary>
    private bool Renumbered(int from, int to, IEnumerable<int> clause)
    {
        if (facts.LastOrDefault() is not (Damaged or Seen or Off or On or Put or Measured) || About(facts[^1]) is not { Kind.Length: > 0 } thing || In(from, to).OfType<NumPhrase>().FirstOrDefault() is not { } num)
            return false;
        if (thing.Ids.Count > 1 && Picked(from, to) is { Count: > 1 } several && SelectAll(thing with { Others = [] }, several) is { } these)
        {
            facts[^1] = With(facts[^1], these) with { Spans = [.. facts[^1].Spans, .. Spans(clause)] };
            (topic, seen) = (these, these);
            return true;
        }

        if (Select(thing, num.Num.Int, "") is not { Ids.Count: > 0 } other || other.Ids.SequenceEqual(thing.Ids))
            return false;
        facts[^1] = With(facts[^1], other) with { Spans = [.. facts[^1].Spans, .. Spans(clause)] };
        (topic, seen) = (other, other);
        return true;
    }

    private int Skip(int from, int end)
    {
        while (from < end && Word(from) is "the" or "a" or "an" or "on" or "in")
            from++;
        return from;
    }

    /// <summary>"I'd missed two underneath": why the first count was wrong, part of the correction.</summary>
    private int Excuse(int end, int to)
    {
        if (end >= to || tokens[end].Sort != TokenSort.Comma)
            return end;
        int next = ClauseEnd(end + 1, to);
        return Regex.IsMatch(new Stretch(tokens, end + 1, next).Line, "^(?:i|we|there|one|two|it|they) (?:'d |had |was |were |'s )?(?:missed|miscounted|forgot|misread|was hiding|were hiding|hiding|got that wrong|said it wrong|one (?:more )?(?:hiding|underneath|hidden))") ? next : end;
    }

    /// <summary>What kind of thing is told here: a count, a size, a place, a side, a part.</summary>
    private (string What, string Text) Told(int from, int to, bool strict)
    {
        foreach (var phrase in In(from, to))
        {
            switch (phrase)
            {
                case PlacePhrase place:
                    return ("place", place.Place.Label);
                case LotPhrase lot when lot.Lot.Size.IsEmpty is false && lot.Lot.Count is null:
                    return ("size", lot.Lot.Size.ToString());
                case LotPhrase { Lot.Count: { } count } lot:
                    return ("count", count.ToString(CultureInfo.InvariantCulture) + (lot.Lot.Size.IsEmpty ? "" : " " + lot.Lot.Size));
                case NumPhrase { Num.Sort: NumSort.Whole } num when num.To >= to || !strict || In(num.To, to).All(p => p is WordPhrase { Filler: true } or BreakPhrase):
                    return ("count", num.Num.Int.ToString(CultureInfo.InvariantCulture));
                case AmountPhrase amount:
                    return ("figure", amount.Amount.Code);
                case NumPhrase { Num.Sort: NumSort.Decimal or NumSort.Fraction } figure:
                    return ("figure", ThreadSize.Plain(figure.Num.Value));
                case DuePhrase due:
                    return ("day", due.Due.Code);
                case ThingPhrase { Told: { } told }:
                    return ("count", told.ToString(CultureInfo.InvariantCulture));
                case ThingPhrase thing when thing.Thing.Others.Count == 0 && (!strict || phrase.From <= from + 1):
                    return ("part", thing.Thing.Full);
                case WherePhrase where:
                    return ("place", where.Where);
            }
        }

        for (int i = from; i < to && i < from + 3; i++)
        {
            if (Word(i) is "left" or "right" or "front" or "rear" or "upper" or "lower" or "inlet" or "exhaust")
                return ("side", Word(i));
        }

        return ("", "");
    }

    private bool AmendDraft(int from, int to, string what)
    {
        var last = draft!.Lots[^1];
        if (In(from, to).OfType<LotPhrase>().FirstOrDefault() is { } lot)
        {
            draft.Lots[^1] = lot with { Lot = lot.Lot with { Size = lot.Lot.Size.Or(last.Lot.Size), Count = lot.Lot.Count ?? last.Lot.Count, Fastener = lot.Lot.Fastener.Length > 0 ? lot.Lot.Fastener : last.Lot.Fastener } };
            return true;
        }

        if (what == "count" && In(from, to).OfType<NumPhrase>().FirstOrDefault() is { } num)
        {
            draft.Lots[^1] = last with { Lot = last.Lot with { Count = num.Num.Int } };
            return true;
        }

        return false;
    }

    /// <summary>"those are M10 by one and a quarter, not the coarse ones": the size of what was told last.</summary>
    private int Resize(Stretch clause, Stretch rest, Match those)
    {
        int from = clause.Tokens(those.Groups["rest"]).From;
        if (In(from, clause.To).FirstOrDefault(p => p is not WordPhrase { Filler: true }) is not LotPhrase lot || lot.Lot.Size.IsEmpty || lot.Lot.Count > 1)
            return -1;
        int end = clause.To;
        string was = "";
        int not = Enumerable.Range(from, clause.To - from).FirstOrDefault(i => Word(i) == "not", -1);
        if (not < 0 && end < rest.To && tokens[end].Sort == TokenSort.Comma && Word(end + 1) == "not")
        {
            not = end + 1;
            end = ClauseEnd(end + 1, rest.To);
        }

        if (not >= 0)
            was = Told(not + 1, end, false).Text is { Length: > 0 } told ? told : Regex.Replace(Said(not + 1, end), "^the | ones?$", "");
        if (draft is not null)
        {
            for (int i = 0; i < draft.Lots.Count; i++)
                draft.Lots[i] = draft.Lots[i] with { Lot = draft.Lots[i].Lot with { Size = lot.Lot.Size.Or(draft.Lots[i].Lot.Size) } };
            draft.Tokens.AddRange(Range(clause.From, end).Where(i => !tokens[i].IsBreak));
            return end;
        }

        var joint = topic is { Sort: ThingSort.Fasteners } ? topic : LastJoint();
        if (joint is null)
            return -1;
        var all = Range(clause.From, end).Where(i => !tokens[i].IsBreak).ToList();
        if (lot.Other is { } other)
            Ask(DoubtSort.Figure, $"{lot.Lot.Size} or {other}?", all, new Reading($"{lot.Lot.Size}", [new Corrected(joint, "size", was, lot.Lot.Size.ToString())]), new Reading($"{other}", [new Corrected(joint, "size", was, other.ToString())]));
        else
            Add(new Corrected(joint, "size", was, lot.Lot.Size.ToString()), all);
        return end;
    }
}
