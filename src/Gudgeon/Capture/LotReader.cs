namespace Gudgeon.Capture;

/// <summary>Reads like fasteners told together: "two M6 by 22", "the others M8 by forty", "two longer ones", "third one".</summary>
internal sealed class LotReader(IReadOnlyList<Token> tokens, bool inchBook)
{
    private static readonly PhraseBook<string> Kinds = Book("kind");

    /// <summary>Stands for the fastener once its sort was told.</summary>
    private static readonly HashSet<string> Nouns = [.. Lexicon.Rows("lot-words").Where(r => r[0] == "noun").SelectMany(r => r[1].Split("; "))];

    private static PhraseBook<string> Book(string sort)
    {
        var book = new PhraseBook<string>();
        foreach (string word in Lexicon.Rows("lot-words").Where(r => r[0] == sort).SelectMany(r => r[1].Split("; ")))
            book.Add(word, word);
        return book;
    }

    /// <summary>One past a word that tells the sort, or the token itself; "a plain one" but not "the plains".</summary>
    private int KindTo(int at) => Kinds.Longest(tokens, at) is { Values.Count: > 0 } kind && (kind.To > at + 1 || Word(at) == kind.Values[0]) ? kind.To : at;

    private string Word(int at) => at >= 0 && at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    public LotPhrase? At(int from)
    {
        int at = from;
        string share = Share(ref at);
        if (share.Length == 0 && HeadsTold(at) is { } heads)
            return heads;
        int? count = null;
        bool vague = false;
        string where = "";
        bool single = false;
        if (Word(at) is "the" or "just" && Word(Word(at) == "just" ? at + 1 : at) == "the" && (Word(at) == "just" ? at + 2 : at + 1) is var lone && Word(lone) == "one" && (Lexicon.Fasteners.Longest(tokens, lone + 1).Values.Count > 0 || SizeAfter(lone + 1)))
        {
            // "just the one bolt"
            count = 1;
            at = lone + 1;
        }

        while (count is null && Word(at) is "the" or "only" or "just" or "my" or "a" or "an" && NumberWords.At(tokens, at) is null)
            single |= Word(at++) is "a" or "an";
        if (count is null && Flats(at) is null && NumberWords.At(tokens, at) is { } n && SizeReader.At(tokens, at, inchBook) is not { } sized)
        {
            if (n.Sort == NumSort.Vague)
                vague = true;
            else if (n.IsCount)
                count = n.Int;
            else if (n.Sort == NumSort.Ordinal && (Word(n.To) is "one" || (Word(n.To) is "'s" or "is" or "was" && Lexicon.Faults.Longest(tokens, n.To + 1).Values.Count > 0) || Lexicon.Fasteners.Longest(tokens, n.To).Values.Count > 0))
            {
                where = $"{tokens[at].Text} one";
                count = 1;
            }
            else
                return null;
            at = n.To;
            if (Word(at) == "of" && Word(at + 1) is "the" or "those" or "these" or "my" && Lexicon.Fasteners.Longest(tokens, at + 2).Values.Count > 0)
                at += 2;
            else if (Word(at) == "of")
                at++;
            // "2 x M8", "two off M8", "3 no. M10"
            if (Word(at) is "x" or "off" or "number" or "no" or "times" && SizeAfter(at + 1))
                at++;
            // "six numbers M8 nuts"
            else if (Word(at) is "numbers" or "nos" && (at + 1 >= tokens.Count || tokens[at + 1].IsBreak || SizeAfter(at + 1) || Lexicon.Fasteners.Longest(tokens, at + 1).Values.Count > 0))
                at++;
        }
        else if (Word(at) == "another")
        {
            count = NumberWords.At(tokens, at + 1) is { IsCount: true } more ? more.Int : 1;
            at = NumberWords.At(tokens, at + 1) is { IsCount: true } m ? m.To : at + 1;
        }
        else if (Word(at) == "one" && SizeAfter(at + 1))
        {
            count = 1;
            at++;
        }
        else if (Word(at) == "some" && (Lexicon.Fasteners.Longest(tokens, at + 1).Values.Count > 0 || SizeAfter(at + 1)))
        {
            vague = true;
            at++;
        }

        if (single && count is null && !vague && share.Length == 0)
        {
            int noun = at;
            while (KindTo(noun) is var kind && kind > noun)
                noun = kind;
            count = (Lexicon.Fasteners.Longest(tokens, noun) is { Values.Count: > 0 } one && !tokens[one.To - 1].Plural) || SizeAfter(noun) ? 1 : null;
        }

        if (count is not null && Word(at) is "stage" or "stages" or "steps" or "turns" or "passes" or "times" or "goes")
            return null;
        bool counted = count is not null || vague || share.Length > 0;
        var size = new ThreadSize();
        ThreadSize? second = null;
        var notes = new List<string>();
        string fastener = "";
        bool ones = false;
        int end = at;
        for (bool more = true; more && at < tokens.Count;)
        {
            more = false;
            if (KindTo(at) is var told && told > at + 1 && (counted || Ahead(told)))
            {
                // "twelve point", "hex socket": the head, before its figure is taken for a size.
                notes.Add(string.Join(" ", Enumerable.Range(at, told - at).Select(i => tokens[i].Text)));
                at = told;
                more = true;
            }
            else if (Flats(at) is { } flats)
            {
                size = flats.Size.Or(size);
                end = at = flats.To;
                more = true;
            }
            else if (counted && size.IsEmpty && LengthBefore(at) is { } ahead)
            {
                size = new ThreadSize { Length = ahead.Length };
                end = at = ahead.To;
                more = true;
            }
            else if ((fastener.Length > 0 || Word(at - 1) is "s" or "'s") && size is { Diameter: not null, Length: null, Inch: false } && LengthAfter(at) is { } behind)
            {
                size = size with { Length = behind.Length };
                end = at = behind.To;
                more = true;
            }
            else if (SizeReader.At(tokens, at > from && Word(at) is "at" or "is" or "are" or "'s" or "about" && SizeReader.At(tokens, at + 1, inchBook) is not null ? at + 1 : at, inchBook) is { } read && (size.IsEmpty || (read.Size.Diameter is null && size.Length is null) || (size.Diameter is null && read.Size.Length is null && size.Length is not null)))
            {
                size = read.Size.Or(size);
                second = read.Other;
                end = at = read.To;
                more = true;
            }
            else if (size.IsEmpty && (counted || fastener.Length > 0) && NumberWords.At(tokens, at) is { Sort: NumSort.Fraction } bare && SizeReader.IsInchThread(bare.Value) && (Word(bare.To) != "inch" || (counted && fastener.Length == 0 && bare.Value <= 0.625m && (bare.To + 1 >= tokens.Count || tokens[bare.To + 1].IsBreak || Word(bare.To + 1) is "and"))) && Word(bare.To) is not ("long" or "turn" or "litre" or "pint" or "of" or "full"))
            {
                size = new ThreadSize { Inch = true, Diameter = bare.Value };
                end = at = Word(bare.To) == "inch" ? bare.To + 1 : bare.To;
                more = true;
            }
            else if (fastener.Length > 0 && size is { Diameter: not null, Length: null, Inch: true } && Word(at) is "by" && NumberWords.At(tokens, at + 1) is { Sort: NumSort.Fraction or NumSort.Whole or NumSort.Decimal, Value: < 12 } inches)
            {
                size = size with { Length = inches.Value, LengthInch = true };
                end = at = Word(inches.To) is "inch" or "inches" ? inches.To + 1 : inches.To;
                more = true;
            }
            else if (fastener.Length > 0 && counted && size.IsEmpty && !inchBook && NumberWords.At(tokens, at) is { IsCount: true, Value: 5 or 6 or 8 or 10 or 12 } mil && Units.At(tokens, mil.To) is { Unit: "mil" or "mm" } milUnit && Word(milUnit.To) is not ("socket" or "spanner" or "head" or "heads" or "hex" or "wrench" or "long" or "af"))
            {
                size = size with { Diameter = mil.Value };
                end = at = milUnit.To;
                more = true;
            }
            else if (fastener.Length == 0 && counted && size.IsEmpty && !inchBook && NumberWords.At(tokens, at) is { IsCount: true, Value: >= 5 and <= 24 } head && Units.At(tokens, head.To) is { Unit: "mil" or "mm" } headUnit && Lexicon.Fasteners.Longest(tokens, headUnit.To).Values.Count > 0)
            {
                // "three thirteen mil bolts": the spanner; "ten mil bolts" may be either.
                var flat = new ThreadSize { AcrossFlats = head.Value };
                size = head.Int is 5 or 6 or 8 or 10 or 12 ? new ThreadSize { Diameter = head.Value } : flat;
                second = head.Int is 8 or 10 or 12 ? flat : null;
                end = at = headUnit.To;
                more = true;
            }
            else if (counted && size.Length is null && NumberWords.At(tokens, at) is { Sort: NumSort.Whole, Value: >= 8 and <= 300 } length && Word(length.To) == "long" && !inchBook)
            {
                size = size with { Length = length.Value };
                end = at = length.To + 1;
                more = true;
            }
            else if (counted && fastener.Length == 0 && size.IsEmpty && Word(at) is "at" or "by" && !inchBook && NumberWords.At(tokens, at + 1) is { Sort: NumSort.Whole, Value: >= 8 and <= 300 } bareLength && Units.At(tokens, bareLength.To) is null && (bareLength.To >= tokens.Count || tokens[bareLength.To].IsBreak || Word(bareLength.To) is "and" or "long"))
            {
                size = size with { Length = bareLength.Value };
                end = at = bareLength.To;
                more = true;
            }
            else if (fastener.Length == 0 && Lexicon.Fasteners.Longest(tokens, at) is { Values.Count: > 0 } found && !(ones && tokens[found.To - 1].Text == "clips"))
            {
                fastener = found.Values[0];
                end = at = found.To;
                more = true;
            }
            else if (Compares(notes) && counted && PlaceThenSize(at) is { } placed)
            {
                size = placed.Size.Or(size);
                end = at = placed.To;
                more = true;
            }
            else if (Word(at) is "thread" or "threaded" or "pitch" && notes.LastOrDefault() is "fine" or "coarse")
                (at, more) = (at + 1, true);
            else if (KindTo(at) > at && (!ones || Word(at - 1) is "them" or "em" or "those") && (counted || size.IsEmpty is false || Ahead(at + 1)))
            {
                notes.Add(Word(at));
                at++;
                more = true;
                if (counted && (size.Length is null || Word(at - 1) is not "long") && Word(at - 1) is "longer" or "shorter" or "long" or "short" or "little" or "big" or "small")
                    end = at;
            }
            else if (Nouns.Contains(Word(at)) && notes.Count > 0 && !ones && fastener.Length == 0)
            {
                ones = true;
                if (!tokens[at].Plural && count is null && share.Length == 0)
                    count = 1;
                end = ++at;
                more = true;
            }
            else if (counted && !ones && notes.LastOrDefault() is "longer" or "shorter" or "bigger" or "smaller" or "thicker" or "fatter" or "larger" && Than(at) is { } than)
            {
                ones = true;
                end = at = than;
                more = true;
            }
            else if (count is null && share.Length == 0 && size.Diameter is not null && Word(at) is "times" or "x" && NumberWords.At(tokens, at + 1) is { IsCount: true, Value: > 0 } times)
            {
                // "M8 by 60 times four"
                count = times.Int;
                end = at = times.To;
                more = true;
            }
            else if ((fastener.Length > 0 || !size.IsEmpty) && Washers(at) is { } washers)
            {
                notes.Add(string.Join(" ", Enumerable.Range(at, washers - at).Select(i => tokens[i].Text)));
                end = at = washers;
                more = true;
            }
            else if (Word(at) is "of" && Word(at + 1) is "them" or "em" or "those" && counted)
            {
                ones = true;
                end = at += 2;
                more = true;
            }
        }

        bool compared = counted && count > 1 && Compares(notes) && (Word(at) is "at" or "on" or "in" or "for" or "m" or "" || (Word(at) is "and" && NumberWords.At(tokens, at + 1) is { IsCount: true } other && KindTo(other.To) > other.To));
        if (notes.Contains("long") && size.Length is not null && !ones)
            notes.Remove("long");
        if (size is { Diameter: not null, Pitch: null, Series: "" } && notes.FirstOrDefault(k => k is "fine" or "coarse") is { } series)
        {
            size = size with { Series = series };
            notes.Remove(series);
        }

        if (single && size is { Diameter: null, AcrossFlats: not null } && fastener.Length == 0)
            count = null;
        if (share == "others" && count is not null && !size.IsEmpty)
            share = "";
        if (Word(at) is "tap" or "die" or "drill" or "insert" or "reamer" or "bit")
            return null;
        if (size.IsEmpty && fastener.Length == 0 && !ones && !compared && !(share is "others" or "rest") && where.Length == 0)
            return null;
        if (where.Length > 0 && end < at && Word(at) == "one")
            end = at + 1;
        if (where.Length > 0 && Word(end) is "one")
            end++;
        if (end <= from)
            end = at;
        if (end <= from)
            return null;
        var lot = new Lot { Count = count, Uncounted = vague, Fastener = fastener, Size = size, Where = where, Note = string.Join(" ", notes) };
        return new LotPhrase(from, end, lot, share, second is null or { Diameter: null } ? second : second.Or(size));
    }

    /// <summary>"two 35 mil M8s": the length first.</summary>
    private (decimal Length, int To)? LengthBefore(int at)
    {
        if (inchBook || NumberWords.At(tokens, at) is not { Sort: NumSort.Whole, Value: >= 8 and <= 300 } n)
            return null;
        int to = Units.At(tokens, n.To) is { Unit: "mil" or "mm" } unit ? unit.To : n.To;
        if (Word(to) == "long")
            to++;
        return to > n.To && SizeReader.At(tokens, to, inchBook) is { Size: { Diameter: not null, Length: null, Inch: false } } ? (n.Value, to) : null;
    }

    /// <summary>"M8 bolts by 35", "M8s, 35 mm", "M8 screws of 35 mm": the length last.</summary>
    private (decimal Length, int To)? LengthAfter(int at)
    {
        bool paused = at < tokens.Count && tokens[at].Sort == TokenSort.Comma;
        bool linked = Word(at) is "by" or "x" or "of" or "at";
        if (NumberWords.At(tokens, paused || linked ? at + 1 : at) is not { Sort: NumSort.Whole, Value: >= 8 and <= 400 } n)
            return null;
        int to = Units.At(tokens, n.To) is { Unit: "mil" or "mm" } unit ? unit.To : n.To;
        bool measured = to > n.To && Word(to) is not ("socket" or "spanner" or "head" or "heads" or "hex" or "wrench" or "af" or "across");
        if (Word(to) == "long")
            return (n.Value, to + 1);
        return (measured && (paused || linked)) || (linked && Word(at) is "by" or "x" && to == n.To && Lexicon.Fasteners.Longest(tokens, to).Values.Count == 0) ? (n.Value, to) : null;
    }

    /// <summary>"thirteen on the big heads, ten on the little ones": heads of the bolts told of.</summary>
    private LotPhrase? HeadsTold(int from)
    {
        if (NumberWords.At(tokens, from) is not { IsCount: true, Value: >= 5 and <= 46 } n || Word(n.To) is not "on" || Word(n.To + 1) is not "the")
            return null;
        int at = n.To + 2;
        if (!(KindTo(at) == at + 1 && Word(at + 1) is "ones" or "heads" or "bolts" or "nuts" or "one" or "head") && Word(at) is not "heads")
            return null;
        return new LotPhrase(from, Word(at) == "heads" ? at + 1 : at + 2, new Lot { Size = new ThreadSize { AcrossFlats = n.Value }, Note = Word(at) == "heads" ? "" : Word(at) }, "");
    }

    private string Share(ref int at)
    {
        string word = Word(at);
        if (word == "the" && Word(at + 1) is "others" or "rest" or "remaining" or "other")
            word = Word(++at);
        switch (word)
        {
            case "others" or "rest" or "remainder" or "remaining":
                at++;
                if (Word(at) == "of" && Word(at + 1) is "them" or "em" or "the")
                    at += 2;
                for (int named = 0; named < 3 && Word(at + named).Length > 0; named++)
                {
                    // "rest of the bracket bolts"
                    if (named > 0 && Lexicon.Fasteners.Longest(tokens, at + named).Values.Count > 0)
                        at += named;
                }

                if (Word(at) is "are" or "were" or "is" or "'s" && SizeAfter(at + 1))
                    at++;
                return "others";
            case "other" when NumberWords.At(tokens, at + 1) is { IsCount: true } || Lexicon.Fasteners.Longest(tokens, at + 1).Values.Count > 0:
                at++;
                return "others";
            case "all" when SizeAfter(at + 1) || NumberWords.At(tokens, at + 1) is { IsCount: true } || Word(at + 1) is "the" && Ahead(at + 2):
                at++;
                return "all";
            case "both" when SizeAfter(at + 1) || Lexicon.Fasteners.Longest(tokens, at + 1).Values.Count > 0:
                at++;
                return "both";
            default:
                return "";
        }
    }

    private static bool Compares(List<string> notes) => notes.Any(n => n is "longer" or "shorter" or "long" or "short");

    /// <summary>"two longer at the back M6 by 55": the place stands between.</summary>
    private SizeRead? PlaceThenSize(int at)
    {
        if (Word(at) is not ("at" or "on" or "in"))
            return null;
        int to = Word(at + 1) == "the" ? at + 3 : at + 2;
        return SizeReader.At(tokens, to, inchBook) is { Size.Diameter: not null } read ? read : null;
    }

    private bool SizeAfter(int at) => SizeReader.At(tokens, at, inchBook) is { Size.Diameter: not null } || (NumberWords.At(tokens, at) is { Sort: NumSort.Fraction } n && SizeReader.IsInchThread(n.Value));

    /// <summary>A fastener, a size or "ones" ends what starts here.</summary>
    private bool Ahead(int at)
    {
        for (int i = at; i < at + 4; i++)
        {
            if (Word(i) is "ones" or "one" || Lexicon.Fasteners.Longest(tokens, i).Values.Count > 0 || SizeAfter(i))
                return true;
            if (KindTo(i) is var kind && kind == i)
                return false;
            i = kind - 1;
        }

        return false;
    }

    /// <summary>"than the rest", "than the other three": what a longer one is longer than; one past it.</summary>
    private int? Than(int at)
    {
        if (Word(at) != "than")
            return null;
        int to = Word(at + 1) is "the" or "all" ? at + 2 : at + 1;
        if (Word(to) == "the")
            to++;
        if (Word(to) is not ("rest" or "others" or "other"))
            return null;
        return Word(to) == "other" && (NumberWords.At(tokens, to + 1)?.To ?? (Nouns.Contains(Word(to + 1)) ? to + 2 : null)) is { } end ? end : to + 1;
    }

    /// <summary>"with copper washers": they come with what was counted and have no number of their own; one past them.</summary>
    private int? Washers(int at)
    {
        if (Word(at) is not ("with" or "plus"))
            return null;
        int to = at + 1;
        while (Word(to) is "the" or "their" || (KindTo(to) > to && Lexicon.Fasteners.Longest(tokens, to).Values.Count == 0))
            to++;
        return Lexicon.Fasteners.Longest(tokens, to) is { Values: ["washer", ..] } found && tokens[found.To - 1].Plural ? found.To : null;
    }

    /// <summary>"thirteen mil socket", "ten mil head", "13 AF": the head, never the thread.</summary>
    private (ThreadSize Size, int To)? Flats(int at)
    {
        if (NumberWords.At(tokens, at) is { Sort: NumSort.Fraction } inch && inch.Value <= 2)
        {
            int tool = Word(inch.To) is "inch" ? inch.To + 1 : inch.To;
            if (Word(tool) is "spanner" or "socket" or "wrench" or "af" or "hex" or "ring" or "key" or "head" or "heads" || (Word(tool) == "across" && Word(tool + 1) == "flats"))
                return (new ThreadSize { AcrossFlats = inch.Value, AcrossFlatsInch = true }, Word(tool) == "across" ? tool + 2 : tool + 1);
        }

        int sized = Word(at) == "size" ? at + 1 : at;
        if (NumberWords.At(tokens, sized) is not { IsCount: true } n || n.Value is < 5 or > 60)
            return null;
        int to = Units.At(tokens, n.To) is { Unit: "mil" or "mm" } unit ? unit.To : n.To;
        if (Word(to) is "af" || (Word(to) is "across" && Word(to + 1) is "flats") || (to > n.To && Word(to) is "socket" or "spanner" or "head" or "heads" or "hex" or "wrench" or "ring" or "key"))
            return (new ThreadSize { AcrossFlats = n.Value }, Word(to) == "across" || Word(to + 1) == "size" ? to + 2 : to + 1);
        // "thirteen socket", "size 13 spanner"
        return to == n.To && Word(to) is "socket" or "spanner" or "wrench" && !inchBook ? (new ThreadSize { AcrossFlats = n.Value }, to + 1) : null;
    }

    public ThreadSize? FlatsAt(int at, out int to)
    {
        var read = Flats(at);
        to = read?.To ?? at;
        return read?.Size;
    }
}
