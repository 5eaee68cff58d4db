using System.Globalization;
using System.Text.RegularExpressions;

namespace Gudgeon.Capture;

/// <summary>
/// A value told anew: "eight bolts he says now, not seven", "I said fourteen, well it's sixteen", "pardon, bore two it is
/// 72.03", "no, count again, nine". What was told before may be said or not; of what it is told may be said or not: then
/// it is what the note before told a value of the same sort of.
/// </summary>
internal sealed partial class Listener
{
    [GeneratedRegex("^(?:(?:oh|ah|so|and|but|right|no|oops|um|uh) |, )*(?:pardon(?: me)?|i beg your pardon|beg (?:your )?pardon|my (?:mistake|apologies|error|bad)|apologies|excuse me|sorry ,? ?sorry|correction(?: please)?|please correct)\\b")]
    private static partial Regex Apologises();

    [GeneratedRegex("^(?:(?:oh|ah|well|um|uh) |, )*(?:no|nope|nah|naw|na|wait|hang on|hold on|count again|counted again|recount)\\b")]
    private static partial Regex Wavers();

    [GeneratedRegex("^(?:count(?:ed)? again|recount(?:ed)?)?(?: |,)*(?:so |and |well |altogether |it |that |they |there |'s |'re |is |was |were |are |makes |make |actually |really )*$")]
    private static partial Regex OnlyCounts();

    private static readonly HashSet<string> Saying = ["said", "told", "put", "wrote", "gave", "called", "had"];

    private sealed record ToldValue(string Sort, string Text, int From, int To);

    private int Revise(Stretch rest)
    {
        if (draft is not null || facts.Count > 0 || pending.Count > 0)
            return -1;
        var values = Values(rest.From, rest.To);
        if (values.Count == 0)
            return -1;
        var was = values.FirstOrDefault(v => Negated(v.From)) ?? values.FirstOrDefault(v => Reported(rest.From, v.From));
        bool sorry = Apologises().IsMatch(rest.Line);
        bool counted = !sorry && was is null && Wavers().IsMatch(rest.Line) && values is [{ Sort: "count" }] or [.., { Sort: "count" }] && Closes(values[^1], rest);
        var anew = values.Where(v => v != was && !Negated(v.From) && !(was is not null && v.Sort != was.Sort && !sorry && !(was.Sort == "count" && v.Sort == "figure"))).ToList();
        var now = counted ? values[^1] : anew.FirstOrDefault(v => v.Sort is "reading" or "figure") ?? anew.FirstOrDefault();
        was = was?.Sort == now?.Sort || (was is { Sort: "count" } && now is { Sort: "figure" }) ? was : null;
        if (now is null || (!sorry && !counted && (was is null || was.Text == now.Text)) || In(rest.From, rest.To).Any(p => p is FaultPhrase || (p is ActPhrase { Act: not Act.Put } act && Word(act.From) is not "in")))
            return -1;
        if (counted && (now.Sort != "count" || context.Last.OfType<Undone>().FirstOrDefault() is null && LastJoint() is null))
            return -1;
        var (of, what, before, text) = now.Sort switch
        {
            "reading" or "figure" => Figure(now, rest),
            "place" => (ThingIn(rest.From, rest.To) ?? (context.Last.Any(f => f is Undone { Place: not null }) ? LastJoint() : null), "place", was?.Text ?? "", now.Text),
            _ => (Joined(now), now.Sort, was?.Text ?? "", now.Text),
        };
        if (what.Length == 0 || (of is null && what != "place"))
            return -1;
        Add(new Corrected(of is null ? null : of with { Others = [] }, what, before, text), Range(rest.From, rest.To).Where(i => !tokens[i].IsBreak));
        topic = of is null ? topic : of with { Others = [] };
        return rest.To;
    }

    private List<ToldValue> Values(int from, int to)
    {
        var list = new List<ToldValue>();
        foreach (var phrase in In(from, to))
        {
            ToldValue? value = phrase switch
            {
                MeasurePhrase read => new ToldValue("reading", "", read.From, read.To),
                PlacePhrase { Place.Sort: PlaceSort.Container } place => new ToldValue("place", place.Place.Label, place.From, place.To),
                LotPhrase { Lot: { Count: { } count, Size.IsEmpty: true } } lot => new ToldValue("count", count.ToString(CultureInfo.InvariantCulture), lot.From, lot.To),
                LotPhrase { Lot.Size.IsEmpty: false } lot => new ToldValue("size", lot.Lot.Size.ToString(), lot.From, lot.To),
                AmountPhrase amount => new ToldValue("figure", amount.Amount.Code, amount.From, amount.To),
                ThingPhrase { Told: { } held } thing => new ToldValue("count", held.ToString(CultureInfo.InvariantCulture), thing.From, thing.To),
                NumPhrase { Num.Sort: NumSort.Whole } num when Word(num.From - 1) is not ("number" or "cylinder") && !phrases.Any(p => p is ThingPhrase && p.To == num.From) => new ToldValue("count", num.Num.Int.ToString(CultureInfo.InvariantCulture), num.From, num.To),
                NumPhrase { Num.Sort: NumSort.Decimal } num => new ToldValue("figure", ThreadSize.Plain(num.Num.Value), num.From, num.To),
                _ => null,
            };
            if (value is not null)
                list.Add(value);
        }

        return list;
    }

    private bool Negated(int at) => Word(at - 1) is "not" || (Word(at - 1) is "the" or "in" or "only" && Word(at - 2) is "not");

    /// <summary>"I said fourteen", "head bolts I told twenty six": what was said before, right behind the verb of saying.</summary>
    private bool Reported(int from, int at) =>
        Range(Math.Max(from, at - 3), at).Any(k => Saying.Contains(Word(k)) && Word(k - 1) is "i" or "we" or "he" or "she");

    /// <summary>Nothing of weight beside the number in its clause, and nothing after it but a word in passing.</summary>
    private bool Closes(ToldValue value, Stretch rest)
    {
        int from = value.From;
        while (from > rest.From && !tokens[from - 1].IsBreak)
            from--;
        return OnlyCounts().IsMatch(new Stretch(tokens, from, value.From).Line.Replace("wait ", "", StringComparison.Ordinal)) && (from > rest.From || Word(from) is "count" or "counted" or "recount")
            && Range(value.To, rest.To).All(k => tokens[k].IsBreak || phrases.Any(p => p.From <= k && p.To > k && p is WordPhrase));
    }

    /// <summary>Whose fasteners: named here, or of the joint spoken of last; a name of several means the one spoken of last.</summary>
    private Thing? Joined(ToldValue value)
    {
        int from = value.From;
        int to = value.To;
        while (from > 0 && !tokens[from - 1].IsBreak)
            from--;
        while (to < tokens.Count && !tokens[to].IsBreak)
            to++;
        if (ThingIn(from, to) is { Ids.Count: > 0 } named)
            return named.Others.Prepend(named).FirstOrDefault(t => context.LastJoint is { } joint && t.Ids.Contains(joint)) ?? (named.Others.Count == 0 ? named : null);
        return LastJoint() is { } last && Range(value.To, to).Select(Word).FirstOrDefault(w => w is "left" or "right" or "front" or "rear") is { } side && Select(last, null, side) is { Ids.Count: > 0 } told ? told : LastJoint();
    }

    /// <summary>A torque or a reading: of what was read or done up last, by its number where one is told.</summary>
    private (Thing? Of, string What, string Was, string Now) Figure(ToldValue now, Stretch rest)
    {
        if (now.Sort == "reading" && In(now.From, now.To).OfType<MeasurePhrase>().First().Read.Readings is [{ Thing: { } read } reading])
            return (read, reading.What, Before(reading.What, read), string.Join(" ", reading.Values.Select(v => v.Code)));
        var figure = In(now.From, now.To).OfType<AmountPhrase>().FirstOrDefault()?.Amount;
        if (figure is { Unit: "N m" or "lbf ft" or "lbf in" or "deg" })
            return context.Last.OfType<Tightened>().LastOrDefault() is { } done ? (done.Of, figure.Unit == "deg" ? "angle" : "torque", done.Stages.LastOrDefault(s => s.EndsWith(figure.Unit, StringComparison.Ordinal)) ?? "", figure.Code) : (null, "", "", "");
        // Of two readings told together the one that is near the new figure is meant.
        decimal value = figure?.Value ?? decimal.Parse(now.Text, CultureInfo.InvariantCulture);
        var near = context.Last.OfType<Measured>().Where(m => m is { Thing: not null, Values: [{ Value: > 0 }] }).OrderBy(m => Math.Abs(Math.Log((double)(m.Values[0].Value / Math.Max(value, 0.0001m))))).ToList();
        if (near.Count == 0)
            return (null, "", "", "");
        var which = In(rest.From, now.From).OfType<NumPhrase>().LastOrDefault(n => n.Num.IsCount);
        var of = which is null ? near.Count == 1 ? near[0].Thing : null : near.Select(m => m.Thing!).FirstOrDefault(t => t.Code.EndsWith($" {which.Num.Int}", StringComparison.Ordinal) || t.Code.EndsWith($".{which.Num.Int}", StringComparison.Ordinal));
        return of is null ? (null, "", "", "") : (of, near[0].What, Before(near[0].What, of), figure?.Code ?? $"{now.Text} {near[0].Values[0].Unit}");
    }

    private string Before(string what, Thing of) => context.Last.OfType<Measured>().LastOrDefault(m => m.What == what && m.Thing?.Code == of.Code) is { } old ? string.Join(" ", old.Values.Select(v => v.Code)) : "";
}
