namespace Gudgeon.Capture;

/// <summary>A size read at a token; <see cref="Other"/> is the second way to read the same words, where there is one.</summary>
internal sealed record SizeRead(ThreadSize Size, int From, int To, ThreadSize? Other = null);

/// <summary>Reads fastener sizes: metric, inch, and lengths in inches said without a thread.</summary>
internal static class SizeReader
{
    // Preferred threads and pitches of ISO 261 (1998), from memory; spark plug and drain plug pitches included.
    private static readonly Dictionary<int, decimal[]> Pitches = new()
    {
        [3] = [0.5m],
        [4] = [0.7m],
        [5] = [0.8m, 0.5m],
        [6] = [1m, 0.75m],
        [7] = [1m, 0.75m],
        [8] = [1.25m, 1m, 0.75m],
        [9] = [1.25m, 1m],
        [10] = [1.5m, 1.25m, 1m, 0.75m],
        [11] = [1.5m, 1m],
        [12] = [1.75m, 1.5m, 1.25m, 1m],
        [14] = [2m, 1.5m, 1.25m, 1m],
        [16] = [2m, 1.5m, 1m],
        [18] = [2.5m, 2m, 1.5m, 1m],
        [20] = [2.5m, 2m, 1.5m, 1m],
        [22] = [2.5m, 2m, 1.5m, 1m],
        [24] = [3m, 2m, 1.5m, 1m],
        [26] = [1.5m],
        [27] = [3m, 2m, 1.5m],
        [30] = [3.5m, 3m, 2m, 1.5m],
    };

    // Threads per inch of the unified coarse, fine and extra-fine series (ASME B1.1) and of British Whitworth, fine and cycle threads, from memory.
    private static readonly Dictionary<int, int[]> PerInch = new()
    {
        [12] = [24, 32, 40],
        [16] = [20, 28, 26, 32, 40],
        [20] = [18, 24, 22, 26, 32],
        [24] = [16, 24, 20, 26, 32],
        [28] = [14, 20, 18, 28, 26],
        [32] = [13, 20, 12, 16, 28, 26],
        [36] = [12, 18, 16],
        [40] = [11, 18, 14],
        [48] = [10, 16, 12],
        [56] = [9, 14],
        [64] = [8, 12, 14],
    };

    private static readonly Dictionary<string, string> Series = new()
    {
        ["unf"] = "UNF",
        ["unc"] = "UNC",
        ["unef"] = "UNEF",
        ["bsf"] = "BSF",
        ["bsw"] = "BSW",
        ["whitworth"] = "BSW",
        ["whit"] = "BSW",
        ["bsp"] = "BSP",
        ["npt"] = "NPT",
        ["cycle"] = "BSC",
    };

    public static SizeRead? At(IReadOnlyList<Token> tokens, int at, bool inchBook) =>
        Metric(tokens, at, inchBook) ?? InchThread(tokens, at) ?? Bare(tokens, at, inchBook) ?? InchLength(tokens, at);

    private static string Word(IReadOnlyList<Token> tokens, int at) => at < tokens.Count && tokens[at].IsWord ? tokens[at].Text : "";

    public static bool IsMetricThread(decimal value) => value == decimal.Truncate(value) && Pitches.ContainsKey((int)value);

    public static bool IsInchThread(decimal inches) => Sixteenths(inches) is { } key && PerInch.ContainsKey(key);

    private static SizeRead? Metric(IReadOnlyList<Token> tokens, int at, bool inchBook)
    {
        if (Word(tokens, at) is not ("m" or "em") || NumberWords.At(tokens, at + 1) is not { IsCount: true } dia || !IsMetricThread(dia.Value))
            return null;
        return Rest(tokens, at, dia.Int, dia.To, inchBook, sure: true);
    }

    /// <summary>A diameter without its M: only with "by", and only when both figures fit a bolt.</summary>
    private static SizeRead? Bare(IReadOnlyList<Token> tokens, int at, bool inchBook)
    {
        if (NumberWords.At(tokens, at) is not { IsCount: true } dia || !IsMetricThread(dia.Value) || dia.Value < 4)
            return null;
        // "eight mil by thirty five"
        int to = Units.At(tokens, dia.To) is { Unit: "mil" or "mm" } unit ? unit.To : dia.To;
        if (Word(tokens, to) is not ("by" or "x" or "times"))
            return null;
        return NumberWords.At(tokens, to + 1) is { } second && (second.Value > dia.Value || Fits(dia.Int, second.Value))
            ? Rest(tokens, at, dia.Int, to, inchBook, sure: false)
            : null;
    }

    private static bool Fits(int dia, decimal pitch) => Pitches[dia].Contains(pitch);

    private static SizeRead Rest(IReadOnlyList<Token> tokens, int from, int dia, int to, bool inchBook, bool sure)
    {
        var size = new ThreadSize { Diameter = dia };
        ThreadSize? other = null;
        to = Plural(tokens, to);
        for (int round = 0; round < 2; round++)
        {
            bool by = Word(tokens, to) is "by" or "x" or "times" || (to < tokens.Count && tokens[to].Text == "-");
            int next = by ? to + 1 : to;
            if (next >= tokens.Count || (!by && round == 1))
                break;
            if (by && Word(tokens, next) is "inch" or "an" && InchLength(tokens, next) is { } inches)
            {
                size = size with { Length = inches.Size.Length, LengthInch = true };
                to = inches.To;
                break;
            }

            if (NumberWords.At(tokens, next) is not { } n || n.Sort is NumSort.Ordinal or NumSort.Vague)
                break;
            // "M8 times four" counts them.
            if (Word(tokens, to) == "times" && n is { IsCount: true } && (size.Length is not null || n.Value <= Math.Max(10, dia)))
                break;
            if (by && n is { Sort: NumSort.Whole, Value: >= 1 and <= 3 } && tokens[next].IsWord && NumberWords.At(tokens, n.To) is { Sort: NumSort.Whole, Value: >= 10 and < 100 } tens && !Fits(dia, n.Value + (tens.Value / 100)) && Lexicon.Fasteners.Longest(tokens, tens.To).Values.Count == 0)
            {
                // "M10 by one ten": a hundred and ten.
                size = size with { Length = (n.Value * 100) + tens.Value };
                to = Unit(tokens, tens.To, ref size);
                break;
            }

            bool pitch = size.Pitch is null && Fits(dia, n.Value) && n.Value < 4;
            if (pitch && (by || Word(tokens, n.To) is "pitch"))
            {
                if (inchBook && n.Sort == NumSort.Fraction && n.Value >= 1 && by && !Tells(tokens))
                    other = size with { Length = n.Value, LengthInch = true };
                size = size with { Pitch = n.Value };
                to = Word(tokens, n.To) is "pitch" ? n.To + 1 : n.To;
            }
            else if (n.Value >= 4 && n.Value <= 400 && (by || (n.Value >= 10 && !IsIndexLike(tokens, n.To))))
            {
                size = size with { Length = n.Value };
                to = Unit(tokens, n.To, ref size);
                break;
            }
            else
                break;
        }

        if (Word(tokens, to) is "fine" or "coarse" && Word(tokens, to) is { } series)
        {
            size = size with { Series = series };
            to = Word(tokens, to + 1) is "thread" or "threads" or "pitch" or "threaded" ? to + 2 : to + 1;
            int told = to < tokens.Count && tokens[to].Sort == TokenSort.Comma ? to + 1 : to;
            if (size.Pitch is null && NumberWords.At(tokens, told) is { Sort: NumSort.Decimal or NumSort.Fraction } finer && Fits(dia, finer.Value) && (told == to || Word(tokens, finer.To) == "pitch"))
            {
                size = size with { Pitch = finer.Value, Series = "" };
                to = Word(tokens, finer.To) == "pitch" ? finer.To + 1 : finer.To;
            }

            if (size.Length is null && Word(tokens, to) is "by" or "x" && NumberWords.At(tokens, to + 1) is { Sort: NumSort.Whole, Value: >= 8 and <= 400 } long1)
            {
                size = size with { Length = long1.Value };
                to = Unit(tokens, long1.To, ref size);
            }
        }

        // "M8s, 35 long", "M10 by 1.25, 40 long"
        if (size.Length is null && to < tokens.Count && tokens[to].Sort == TokenSort.Comma && NumberWords.At(tokens, to + 1) is { Sort: NumSort.Whole, Value: >= 8 and <= 400 } late && (Units.At(tokens, late.To) is { Unit: "mil" or "mm" } lateUnit ? lateUnit.To : late.To) is var afterLate && Word(tokens, afterLate) == "long")
        {
            size = size with { Length = late.Value };
            to = afterLate + 1;
        }

        return new SizeRead(size, from, Plural(tokens, to), other);
    }

    /// <summary>Somebody who names coarse or fine threads speaks of pitch, so a small second figure is one.</summary>
    private static bool Tells(IReadOnlyList<Token> tokens) => tokens.Any(t => t.Text is "coarse" or "fine" or "pitch" or "thread");

    /// <summary>A number after a size that counts the next thing: M8, two of them.</summary>
    private static bool IsIndexLike(IReadOnlyList<Token> tokens, int at) => Word(tokens, at) is "of" or "bolts" or "off" or "nuts" or "studs" or "m" or "point" or "sided";

    private static int Unit(IReadOnlyList<Token> tokens, int at, ref ThreadSize size)
    {
        if (Units.At(tokens, at) is { } unit && unit.Unit is "mm" or "mil")
            at = unit.To;
        return Plural(tokens, Word(tokens, at) == "long" ? at + 1 : at);
    }

    private static int Plural(IReadOnlyList<Token> tokens, int at) =>
        Word(tokens, at) is "s" or "'s" && at < tokens.Count && tokens[at].Glued && !(Word(tokens, at) == "'s" && Word(tokens, at + 1) is "off" or "out" or "gone") ? at + 1 : at;

    /// <summary>UNF, U N F, unified fine, Whitworth, fine thread.</summary>
    private static (string Name, int To)? SeriesAt(IReadOnlyList<Token> tokens, int at)
    {
        if (Series.TryGetValue(Word(tokens, at), out string? series))
            return (series, Word(tokens, at + 1) is "thread" or "threads" ? at + 2 : at + 1);
        if (Word(tokens, at) == "unified" && Word(tokens, at + 1) is "fine" or "coarse")
            return (Word(tokens, at + 1) == "fine" ? "UNF" : "UNC", at + 2);
        if (Word(tokens, at).Length == 1 && Word(tokens, at + 1).Length == 1 && Word(tokens, at + 2).Length == 1 && Series.TryGetValue(Word(tokens, at) + Word(tokens, at + 1) + Word(tokens, at + 2), out series))
            return (series, at + 3);
        return Word(tokens, at) is "fine" or "coarse" ? (Word(tokens, at), Word(tokens, at + 1) is "thread" or "threads" or "pitch" ? at + 2 : at + 1) : null;
    }

    /// <summary>Threads per inch that this diameter comes with; "twenties" are twenty.</summary>
    private static Num? PerInchAt(IReadOnlyList<Token> tokens, int at, decimal diameter)
    {
        if (at >= tokens.Count || Sixteenths(diameter) is not { } key || !PerInch.TryGetValue(key, out int[]? known))
            return null;
        var read = NumberWords.At(tokens, at) ?? (tokens[at].Plural && NumberWords.At([tokens[at] with { Text = tokens[at].Stem }], 0) is { } many ? many with { From = at, To = at + 1 } : null);
        return read is { Sort: NumSort.Whole } per && known.Contains(per.Int) ? per : null;
    }

    private static SizeRead? InchThread(IReadOnlyList<Token> tokens, int at)
    {
        string first = "";
        int start = at;
        if (SeriesAt(tokens, at) is { } led && led.Name is not ("fine" or "coarse") && NumberWords.At(tokens, led.To) is { Sort: NumSort.Fraction })
            (first, start) = led;
        if (NumberWords.At(tokens, start) is not { Sort: NumSort.Fraction } dia || dia.Value > 1.5m)
            return null;
        int to = dia.To;
        var size = new ThreadSize { Inch = true, Diameter = dia.Value, Series = first };
        bool dashed = to < tokens.Count && tokens[to].Text == "-";
        if (dashed)
            to++;
        bool thread = first.Length > 0;
        // "three quarter twenty bolts" were counted before; "3/8 sixteen bolts" may be sixteen.
        bool sure = dashed || (start > 0 && NumberWords.At(tokens, start - 1) is not null);
        int pitch = Word(tokens, to) is "inch" && PerInchAt(tokens, to + 1, dia.Value) is not null ? to + 1 : to;
        if (Word(tokens, to) is "inch" && Word(tokens, to + 1) is "by" or "x" && PerInchAt(tokens, to + 2, dia.Value) is { Value: >= 8 } && dia.Value <= 0.5m)
            pitch = to + 1;
        bool by = Word(tokens, pitch) is "by" or "x" && PerInchAt(tokens, pitch + 1, dia.Value) is { Value: >= 8 } told && (dia.Value <= 0.5m || Word(tokens, told.To) is "tpi" or "threads");
        if (by)
            pitch++;
        if (PerInchAt(tokens, pitch, dia.Value) is { } per && (sure || Word(tokens, per.To) is not ("bolt" or "bolts" or "m")) && !(Word(tokens, per.To) == "long"))
        {
            size = size with { ThreadsPerInch = per.Int };
            to = per.To;
            thread = true;
            if (Word(tokens, to) is "tpi")
                to++;
            else if (Word(tokens, to) is "threads" or "thread")
                to = Word(tokens, to + 1) is "per" or "to" && Word(tokens, to + 2) is "inch" or "the" ? to + (Word(tokens, to + 2) == "the" ? 4 : 3) : to + 1;
            if (Word(tokens, to) is "s" && tokens[to].Glued)
                to++;
        }

        if (Word(tokens, to) is "inch" && SeriesAt(tokens, to + 1) is not null)
            to++;
        if (first.Length == 0 && SeriesAt(tokens, to) is { } series)
        {
            size = size with { Series = series.Name };
            to = series.To;
            thread = true;
        }
        else if (Word(tokens, to) is "af" || (Word(tokens, to) == "across" && Word(tokens, to + 1) == "flats"))
            return new SizeRead(new ThreadSize { AcrossFlats = dia.Value, AcrossFlatsInch = true }, at, Word(tokens, to) == "af" ? to + 1 : to + 2);

        if (Word(tokens, to) is "inch" && Word(tokens, to + 1) is "by" or "x")
            to++;
        if (thread && NumberWords.At(tokens, to) is { Sort: NumSort.Fraction } bare && (Word(tokens, bare.To) == "long" || (Word(tokens, bare.To) is "inch" or "inches" && Word(tokens, bare.To + 1) == "long")))
        {
            size = size with { Length = bare.Value, LengthInch = true };
            to = Word(tokens, bare.To) == "long" ? bare.To + 1 : bare.To + 2;
        }
        else if (Word(tokens, to) is "by" or "x" && (InchLength(tokens, to + 1) ?? InchNumber(tokens, to + 1)) is { } length)
        {
            size = size with { Length = length.Size.Length, LengthInch = true };
            to = length.To;
            thread = true;
        }

        if (Word(tokens, to) is "bolt" or "bolts" or "stud" or "studs" or "nut" or "nuts" or "screw" or "screws" or "thread" || (Word(tokens, to) == "inch" && Word(tokens, to + 1) is "bolt" or "bolts" or "stud" or "studs" or "nut" or "nuts" or "screw" or "screws"))
        {
            thread = true;
            to = Word(tokens, to) == "inch" ? to + 1 : to;
        }

        return thread ? new SizeRead(size, at, Plural(tokens, to)) : null;
    }

    private static int? Sixteenths(decimal inches) => inches * 64 is var s && s == decimal.Truncate(s) && s <= 128 ? (int)s : null;

    private static SizeRead? InchNumber(IReadOnlyList<Token> tokens, int at) =>
        NumberWords.At(tokens, at) is { } n && n.Sort is NumSort.Fraction or NumSort.Whole or NumSort.Decimal && n.Value < 20
            ? new SizeRead(new ThreadSize { Length = n.Value, LengthInch = true }, at, Word(tokens, n.To) is "inch" or "inches" ? Long(tokens, n.To + 1) : Word(tokens, n.To) == "of" && Word(tokens, n.To + 1) is "an" or "a" && Word(tokens, n.To + 2) == "inch" ? Long(tokens, n.To + 3) : Long(tokens, n.To))
            : null;

    private static int Long(IReadOnlyList<Token> tokens, int at) => Word(tokens, at) == "long" ? at + 1 : at;

    /// <summary>"inch and a half", "an inch long", "three quarters", "two and a half inch".</summary>
    private static SizeRead? InchLength(IReadOnlyList<Token> tokens, int at)
    {
        int inch = Word(tokens, at) is "an" && Word(tokens, at + 1) == "inch" ? at + 1 : at;
        if (Word(tokens, inch) == "inch")
        {
            var part = NumberWords.AndPart(tokens, inch + 1);
            if (part is null && inch == at && Word(tokens, at + 1) is not "long")
                return null;
            return new SizeRead(new ThreadSize { Length = 1 + (part?.Value ?? 0), LengthInch = true }, at, Long(tokens, part?.To ?? inch + 1));
        }

        if (NumberWords.At(tokens, at) is not { } n || n.Sort is NumSort.Ordinal or NumSort.Vague)
            return null;
        if (Word(tokens, n.To) is "inch" or "inches" && NumberWords.AndPart(tokens, n.To + 1) is { } and)
            return new SizeRead(new ThreadSize { Length = n.Value + and.Value, LengthInch = true }, at, Long(tokens, and.To));
        if (Word(tokens, n.To) is "inch" or "inches" && Word(tokens, n.To + 1) == "long")
            return new SizeRead(new ThreadSize { Length = n.Value, LengthInch = true }, at, n.To + 2);
        if (n.Sort == NumSort.Fraction && Word(tokens, n.To) == "long")
            return new SizeRead(new ThreadSize { Length = n.Value, LengthInch = true }, at, n.To + 1);
        if (n.Sort == NumSort.Fraction && at > 0 && Word(tokens, at - 1) is "at" && Word(tokens, n.To) is not "to")
            return new SizeRead(new ThreadSize { Length = n.Value, LengthInch = true }, at, Word(tokens, n.To) is "inch" ? n.To + 1 : n.To);
        return Units.At(tokens, n.To, n) is { Unit: "mm" or "mil" } unit && Word(tokens, unit.To) == "long"
            ? new SizeRead(new ThreadSize { Length = n.Value }, at, unit.To + 1)
            : null;
    }
}
