namespace Gudgeon.Capture;

/// <summary>Reads a part with the words that say which: "number three exhaust", "left head", "plugs, all six", "rod caps one to four".</summary>
internal sealed class ThingReader(IReadOnlyList<Token> tokens, PartIndex index, ThingResolver resolver)
{
    private static readonly HashSet<string> GasKinds = ["follower", "cam", "shim", "finger", "rocker", "spring", "guide", "seat", "stem-seal", "collet", "retainer", "pushrod", "phaser", "cam-cap", "cam-sprocket", "pivot", "cam-seal", "spring-seat"];

    private static readonly HashSet<string> Level = ["upper", "lower", "front", "rear", "top", "bottom", "middle", "centre", "center", "inner", "outer", "back", "side"];

    private static readonly HashSet<string> Loose = ["the", "my", "its", "their", "that", "this", "these", "those", "old", "new", "whole", "complete", "both", "a", "an", "poor", "bloody", "damn", "stupid", "original", "missing", "same", "big", "little", "long", "short", "dirty", "other", "actual"];

    /// <summary>"inlet buckets and shims": what was said of the first holds for the second.</summary>
    private string gas = "";
    private int gasTo = -1;

    private string Word(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    private string Stem(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Stem : "";

    public ThingPhrase? At(int from)
    {
        var selectors = new Selectors();
        if (Word(from - 1) == "and" && gasTo == from - 1)
            selectors.Gas = gas;
        int at = Before(from, selectors, out bool other, out bool counted);
        if (at < 0)
            return null;
        var (values, end) = Longest(at);
        if (values.Count == 0)
            return null;
        if (values.All(v => v.Rank == 2) && MoreWords.PlainMisheard.Contains(Word(end - 1)) && !Misheard(from, at, end))
            return null;
        bool plural = tokens[end - 1].Plural || tokens[end - 1].Text is "halves" or "both";
        if (selectors.Numbers.Count > 0 && plural && counted)
        {
            // "six plugs": all of them when that is how many there are.
            selectors.AllOf = selectors.Numbers[0];
            selectors.Numbers.Clear();
        }

        if (other && selectors.Side.Length == 0)
            selectors.Side = "other";
        int partEnd = end;
        end = Tail(end);
        string fastener = Fastener(ref end, out bool boltsPlural);
        string detail = fastener.Length == 0 ? Detail(ref end) : "";
        int count = index.Parts(values[0].Kind).Count;
        end = After(from, end, selectors, values, ref plural, fastener.Length > 0, count, boltsPlural);
        string said = string.Join(" ", Enumerable.Range(at, partEnd - at).Select(i => tokens[i].Text));
        if (selectors.Gas.Length > 0 && !values.Any(v => GasKinds.Contains(v.Kind)))
            selectors.Gas = "";
        (gas, gasTo) = (selectors.Gas, end);
        if (detail.StartsWith("hole", StringComparison.Ordinal) && selectors.Numbers is [var hole] && count <= 1)
        {
            detail = $"hole {hole}";
            selectors.Numbers.Clear();
        }

        values = Narrow(values, selectors, fastener, partEnd);
        if (values.Count == 0)
            return null;
        bool whole = selectors.All || plural;
        var thing = resolver.Resolve(values, selectors, whole || fastener.Length > 0 || selectors.AllOf > 1, said);
        if (selectors.AllOf is { } n && thing.Ids.Count > 0 && n != thing.Ids.Count && thing.Others.Count == 0)
            thing = thing with { Ids = [], Where = $"{n} of {thing.Ids.Count}" };
        if (fastener.Length > 0)
            thing = Joint(thing, fastener);
        if (detail.Length > 0)
            thing = thing with { Detail = detail, Others = [.. thing.Others.Select(o => o with { Detail = detail })] };
        return new ThingPhrase(from, end, thing, plural || boltsPlural, selectors.All);
    }

    /// <summary>Selectors before the part; -1 when what stands here can be none.</summary>
    private int Before(int at, Selectors selectors, out bool other, out bool counted)
    {
        other = false;
        counted = false;
        for (int start = at; at < tokens.Count; at++)
        {
            string word = Word(at);
            if (word is "left" or "right" or "far" or "near" or "offside" or "nearside" && Word(at + 1) is not ("in" or "on" or "out" or "the" or "to" or "back"))
            {
                selectors.Side = word is "offside" or "nearside" ? "" : word;
                if (word is "offside" or "nearside")
                    selectors.Where.Add(word);
                if (Word(at + 1) is "hand" && Word(at + 2) is not "tight")
                    at++;
                if (Word(at + 1) is "bank" or "side" && Longest(at + 2).Values.Count > 0)
                    at++;
                continue;
            }

            if (word == "bank" && Bank(at + 1) is { } bank && Longest(bank.To).Values.Count > 0)
            {
                selectors.Side = $"bank:{bank.Bank}";
                at = bank.To - 1;
                continue;
            }

            bool part = Longest(at).Values.Count > 0;
            if (word is "inlet" or "intake" or "exhaust" && !LongPart(at) && Longest(at + 1) is { Values.Count: > 0 } next && next.Values.Any(v => GasKinds.Contains(v.Kind)))
            {
                selectors.Gas = word == "exhaust" ? "ex" : "in";
                continue;
            }

            if (part && !(Level.Contains(word) && !LongPart(at)))
                return at;
            if (word is "number" or "cylinder" && NumberWords.At(tokens, at + 1) is { IsCount: true } n && n.Int is > 0 and <= 40)
            {
                selectors.Numbers.Add(n.Int);
                at = n.To - 1;
                if (Word(at + 1) == "'s")
                    at++;
                continue;
            }

            if (word is "all" && (at == start || Word(at + 1) is "the" or "of"))
            {
                selectors.All = true;
                continue;
            }

            if (word == "both")
            {
                selectors.All = true;
                continue;
            }

            if (Level.Contains(word))
            {
                selectors.Where.Add(word is "back" ? "rear" : word);
                continue;
            }

            if (NumberWords.At(tokens, at) is { } num && num.Sort is NumSort.Whole or NumSort.Ordinal && num.Int is > 0 and <= 99 && Leads(num.To))
            {
                if (num.Sort == NumSort.Ordinal && Longest(num.To) is var (_, e) && Word(e - 1) is "ring" or "rings")
                    return -1;
                selectors.Numbers.Add(num.Int);
                counted = num.Sort == NumSort.Whole;
                at = num.To - 1;
                if (Word(at + 1) == "'s")
                    at++;
                continue;
            }

            if (!Loose.Contains(word) || word.Length == 0)
                return -1;
            other |= word == "other";
        }

        return -1;
    }

    private bool LongPart(int at) => Longest(at) is var (values, end) && values.Count > 0 && end - at > 1;

    /// <summary>A part follows here, perhaps after more selectors.</summary>
    private bool Leads(int at)
    {
        for (int i = 0; i < 3 && at + i < tokens.Count; i++)
        {
            if (Longest(at + i).Values.Count > 0 && Word(at + i) is not ("top" or "black"))
                return true;
            if (Word(at + i) is not ("inlet" or "exhaust" or "intake" or "left" or "right" or "upper" or "lower" or "front" or "rear" or "'s" or "other" or "old" or "new"))
                return false;
        }

        return false;
    }

    private (List<PartWord> Values, int To) Longest(int at) => index.Book.Longest(tokens, at);

    /// <summary>A plain word stands for a part only in a part's company.</summary>
    private bool Misheard(int from, int at, int end) =>
        (from == 0 || tokens[from - 1].IsBreak || Word(at - 1) is "the" or "left" or "right" or "my")
        && Word(end) is "off" or "out" or "'s" or "bolts" or "bolt" or "plug" or "gasket" or "cap" or "caps" or "came" or "cover" or "lobe" or "lobes";

    private int Tail(int end)
    {
        while (Word(end) is "housing" or "assembly" or "unit" or "complete" or "body" or "itself" or "casting" or "motor" && Longest(end).Values.Count == 0)
            end++;
        return end;
    }

    private string Fastener(ref int end, out bool plural)
    {
        plural = false;
        int at = Word(end) is "securing" or "fixing" or "retaining" or "mounting" or "holding" ? end + 1 : end;
        if (Word(at) is "drain" or "banjo" || Lexicon.Fasteners.Longest(tokens, at) is not { Values.Count: > 0 } found)
            return "";
        plural = tokens[found.To - 1].Plural;
        end = found.To;
        return found.Values[0];
    }

    private string Detail(ref int end)
    {
        int at = end;
        string which = "";
        if (NumberWords.At(tokens, at) is { Sort: NumSort.Ordinal } nth && Lexicon.Details.Longest(tokens, nth.To).Values.Count > 0)
            (which, at) = ($"{nth.Int}", nth.To);
        if (Lexicon.Details.Longest(tokens, at) is not { Values.Count: > 0 } found || Longest(at).To > found.To)
            return "";
        end = found.To;
        return which.Length > 0 ? $"{found.Values[0]} {which}" : found.Values[0];
    }

    private int After(int from, int end, Selectors selectors, List<PartWord> values, ref bool plural, bool fastener, int count, bool boltsPlural)
    {
        // "injectors bagged one to six": in order, all of them.
        if (plural && Word(end) is "bagged" or "boxed" or "numbered" or "laid" or "racked" or "marked" && Numbers(end + 1, false, false, count) is { Numbers: [1, .., var to] } order && to == count)
        {
            selectors.All = true;
            end = order.To;
        }

        for (bool more = true; more;)
        {
            more = false;
            int at = Word(end) is "on" or "of" or "in" or "from" or "for" ? end + 1 : end;
            bool linked = at > end;
            if (Word(at) is "the" && Word(at + 1) is "left" or "right" or "far" or "near" or "other" or "offside" or "nearside")
                at++;
            if ((linked || Word(at + 1) is "bank" or "side" or "hand") && Word(at) is "left" or "right" or "far" or "near" or "other" && (Word(at + 1) is "bank" or "side" or "hand" or "one" or "" || (Word(at + 1) == "head" && Word(from - 1) != "and")))
            {
                selectors.Side = Word(at);
                end = Word(at + 1) is "hand" && Word(at + 2) is "side" or "bank" ? at + 3 : Word(at + 1).Length > 0 ? at + 2 : at + 1;
                more = true;
            }
            else if (Word(at) == "bank" && Bank(at + 1) is { } bank)
            {
                selectors.Side = $"bank:{bank.Bank}";
                end = bank.To;
                more = true;
            }
            else if (selectors.Numbers.Count == 0 && Numbers(at, linked, fastener && boltsPlural, count) is { } list)
            {
                selectors.Numbers.AddRange(list.Numbers);
                plural |= list.Numbers.Count > 1;
                end = list.To;
                more = true;
            }
            else if (All(end, count, values) is { } all)
            {
                selectors.All = true;
                end = all;
                more = true;
            }
            else if (Word(end) is "upper" or "lower" && tokens[end].Sort == TokenSort.Word && values.Any(v => v.Kind is "rod-shell" or "main-shell" or "belt-cover"))
            {
                selectors.Where.Add(Word(end));
                end++;
                more = true;
            }
        }

        return end;
    }

    private int? All(int at, int count, List<PartWord> values)
    {
        if (at < tokens.Count && tokens[at].Sort == TokenSort.Comma)
            at++;
        if (Word(at) == "both" && count == 2 && values.Count == 1)
            return at + 1;
        if (Word(at) != "all")
            return null;
        int of = Word(at + 1) is "the" ? at + 2 : at + 1;
        if (NumberWords.At(tokens, of) is { IsCount: true } n && n.Int == count && !Sized(n.To))
            return n.To;
        return Word(at + 1) == "of" && Word(at + 2) is "them" or "em" && !Sized(at + 3) ? at + 3 : null;
    }

    /// <summary>Numbers after a part that say which ones: "three", "one to four", "two three and four", "1, 2 and 4".</summary>
    private (List<int> Numbers, int To)? Numbers(int at, bool linked, bool bolts, int count)
    {
        bool named = Word(at) is "number" or "numbers" or "cylinder" or "cylinders" or "no" or "nos" or "bore" or "cyl";
        if (named)
            at++;
        if (bolts && !named && !linked)
            return null;
        if (!named && count <= 1)
            return null;
        var numbers = new List<int>();
        int to = at;
        while (NumberWords.At(tokens, to) is { IsCount: true } n && n.Int is > 0 and <= 40)
        {
            if (Sized(n.To) || (!named && n.Int > Math.Max(count, 1)) || (numbers.Count > 0 && Longest(n.To).Values.Count > 0 && tokens[Longest(n.To).To - 1].Plural))
                break;
            numbers.Add(n.Int);
            to = n.To;
            string link = Word(to);
            if ((link is "to" or "through" || (to < tokens.Count && tokens[to].Text == "-")) && NumberWords.At(tokens, to + 1) is { IsCount: true } last && last.Int > n.Int && last.Int <= 40 && !Sized(last.To))
            {
                for (int i = n.Int + 1; i <= last.Int; i++)
                    numbers.Add(i);
                to = last.To;
            }

            int next = Word(to) is "and" or "plus" ? to + 1 : to < tokens.Count && tokens[to].Sort == TokenSort.Comma && List(to + 1) ? to + 1 : to;
            if (NumberWords.At(tokens, next) is not { IsCount: true } follow || Sized(follow.To) || follow.Int <= numbers[^1])
                break;
            to = next;
        }

        return numbers.Count == 0 ? null : (numbers, to);
    }

    /// <summary>After a comma only a number that goes on as a list: "1, 2 and 4".</summary>
    private bool List(int at) => NumberWords.At(tokens, at) is { IsCount: true } n && (Word(n.To) is "and" || (n.To < tokens.Count && tokens[n.To].Sort == TokenSort.Comma)) && NumberWords.At(tokens, n.To + 1) is { IsCount: true };

    /// <summary>The number before counts or sizes something and so picks no part.</summary>
    private bool Sized(int at) =>
        Word(at) is "by" or "x" or "at" or "of" or "point" or "mm" or "bolts" or "longer" or "short" or "shorter" or "long" or "little" or "big" or "m" or "or" or "hundred" or "more" or "fixings" or "hex" or "torx" or "allen"
        || (Word(at) is "'s" && Lexicon.Fasteners.Longest(tokens, at + 1).Values.Count > 0)
        || Lexicon.Fasteners.Longest(tokens, at).Values.Count > 0
        || Units.At(tokens, at) is not null;

    private (int Bank, int To)? Bank(int at)
    {
        if (NumberWords.At(tokens, at) is { IsCount: true } n && n.Int is 1 or 2)
            return (n.Int, n.To);
        return Word(at) switch
        {
            "a" when Word(at + 1) is "" or "off" or "head" or "'s" or "is" => (1, at + 1),
            "b" => (2, at + 1),
            _ => null,
        };
    }

    private List<PartWord> Narrow(List<PartWord> values, Selectors selectors, string fastener, int partEnd)
    {
        if (values.Count == 1)
            return values;
        string word = Stem(partEnd - 1);
        if (word is "exhaust" or "inlet" or "intake")
        {
            string valve = word == "exhaust" ? "valve-ex" : "valve-in";
            bool numbered = selectors.Numbers.Count > 0;
            values = [.. values.Where(v => v.Kind == valve == numbered)];
        }

        if (fastener is "stud" or "nut" && values.Count > 1)
        {
            var studs = values.Where(v => index.Parts(v.Kind) is [var p, ..] && index.Engine.JointsOf(p.Id) is [var j, ..] && index.Engine.Joints[j].Fasteners is ["stud", ..]).ToList();
            if (studs.Count > 0)
                return studs;
        }

        return selectors.Gas.Length > 0 && values.Any(v => GasKinds.Contains(v.Kind)) ? [.. values.Where(v => GasKinds.Contains(v.Kind))] : values;
    }

    private Thing Joint(Thing thing, string fastener)
    {
        Thing Turn(Thing t)
        {
            if (MoreWords.BoltsOf.TryGetValue(t.Kind, out string? holds) && index.Parts(holds) is { Count: > 0 } held && fastener is not "clip")
            {
                var ids = t.Ids.Count > 0 && held.Count > 1 ? [.. held.Where(h => t.Ids.Any(i => i.EndsWith($".{string.Join('.', h.Index)}", StringComparison.Ordinal))).Select(h => h.Id)] : (IReadOnlyList<string>)[.. held.Select(h => h.Id)];
                t = t with { Kind = holds, Ids = ids.Count > 0 ? ids : [.. held.Select(h => h.Id)], Name = ids.Count == 1 ? index.Engine.Parts[ids[0]].Name : index.NameOf(holds) };
            }

            return t with { Sort = t.Sort is ThingSort.Lacking or ThingSort.Unknown ? t.Sort : ThingSort.Fasteners, Fastener = fastener };
        }

        return Turn(thing) with { Others = [.. thing.Others.Select(Turn)] };
    }
}
