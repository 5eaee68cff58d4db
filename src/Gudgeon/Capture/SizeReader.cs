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
        if (NumberWords.At(tokens, at) is not { IsCount: true } dia || !IsMetricThread(dia.Value) || dia.Value < 4 || Word(tokens, dia.To) is not ("by" or "x"))
            return null;
        return NumberWords.At(tokens, dia.To + 1) is { } second && (second.Value > dia.Value || Fits(dia.Int, second.Value))
            ? Rest(tokens, at, dia.Int, dia.To, inchBook, sure: false)
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
            bool by = Word(tokens, to) is "by" or "x" or "times";
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
            to++;
        }

        return new SizeRead(size, from, Plural(tokens, to), other);
    }

    /// <summary>Somebody who names coarse or fine threads speaks of pitch, so a small second figure is one.</summary>
    private static bool Tells(IReadOnlyList<Token> tokens) => tokens.Any(t => t.Text is "coarse" or "fine" or "pitch" or "thread");

    /// <summary>A number after a size that counts the next thing: M8, two of them.</summary>
    private static bool IsIndexLike(IReadOnlyList<Token> tokens, int at) => Word(tokens, at) is "of" or "bolts" or "off" or "nuts" or "studs" or "m";

    private static int Unit(IReadOnlyList<Token> tokens, int at, ref ThreadSize size)
    {
        if (Units.At(tokens, at) is { } unit && unit.Unit is "mm" or "mil")
            at = unit.To;
        return Plural(tokens, Word(tokens, at) == "long" ? at + 1 : at);
    }

    private static int Plural(IReadOnlyList<Token> tokens, int at) =>
        Word(tokens, at) is "s" or "'s" && at < tokens.Count && tokens[at].Glued && !(Word(tokens, at) == "'s" && Word(tokens, at + 1) is "off" or "out" or "gone") ? at + 1 : at;

    private static SizeRead? InchThread(IReadOnlyList<Token> tokens, int at)
    {
        if (NumberWords.At(tokens, at) is not { Sort: NumSort.Fraction } dia || dia.Value > 1.5m)
            return null;
        int to = dia.To;
        var size = new ThreadSize { Inch = true, Diameter = dia.Value };
        if (to < tokens.Count && tokens[to].Text == "-")
            to++;
        bool thread = false;
        if (NumberWords.At(tokens, to) is { Sort: NumSort.Whole } per && Sixteenths(dia.Value) is { } key && PerInch.TryGetValue(key, out int[]? known) && known.Contains(per.Int) && Word(tokens, per.To) is not ("bolt" or "bolts" or "m"))
        {
            size = size with { ThreadsPerInch = per.Int };
            to = per.To;
            thread = true;
            if (Word(tokens, to) is "tpi")
                to++;
        }

        if (Word(tokens, to) is "inch" && Series.ContainsKey(Word(tokens, to + 1)))
            to++;
        if (Series.TryGetValue(Word(tokens, to), out string? series))
        {
            size = size with { Series = series };
            to++;
            thread = true;
        }
        else if (Word(tokens, to) is "fine" or "coarse")
        {
            size = size with { Series = Word(tokens, to) };
            to++;
            thread = true;
        }
        else if (Word(tokens, to) is "af" || (Word(tokens, to) == "across" && Word(tokens, to + 1) == "flats"))
            return new SizeRead(new ThreadSize { AcrossFlats = dia.Value, AcrossFlatsInch = true }, at, Word(tokens, to) == "af" ? to + 1 : to + 2);

        if (Word(tokens, to) is "inch" && Word(tokens, to + 1) is "by" or "x")
            to++;
        if (Word(tokens, to) is "by" or "x" && (InchLength(tokens, to + 1) ?? InchNumber(tokens, to + 1)) is { } length)
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
            ? new SizeRead(new ThreadSize { Length = n.Value, LengthInch = true }, at, Word(tokens, n.To) is "inch" or "inches" ? Long(tokens, n.To + 1) : n.To)
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
        if (n.Sort == NumSort.Fraction && at > 0 && Word(tokens, at - 1) is "at" && Word(tokens, n.To) is not "to")
            return new SizeRead(new ThreadSize { Length = n.Value, LengthInch = true }, at, Word(tokens, n.To) is "inch" ? n.To + 1 : n.To);
        return Units.At(tokens, n.To, n) is { Unit: "mm" or "mil" } unit && Word(tokens, unit.To) == "long"
            ? new SizeRead(new ThreadSize { Length = n.Value }, at, unit.To + 1)
            : null;
    }
}
