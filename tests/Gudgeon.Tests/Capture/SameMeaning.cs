using System.Globalization;
using System.Text.RegularExpressions;

namespace Gudgeon.Tests.Capture;

/// <summary>
/// One way of writing for facts that mean the same, applied alike to what was due and to what was heard: several parts
/// of which the same is told may stand in one fact or in several, an inch thread needs no "in", a place is
/// numbered in figures, a thing or unit may go by another of its names, what comes off first is what comes off before, and as many
/// bought as are named is those. What is told of a part, how many, how big and where is never changed.
/// </summary>
internal static partial class SameMeaning
{
    [GeneratedRegex(@"^(?<verb>off|on|parted|capped|left-on|planned|back|buy|marked|put|tagged|seen|damaged|measured [a-z][a-z -]*?) (?<ids>[a-z0-9-]+\.[a-z0-9.,/ -]*?)(?<rest>| -> .+| = .+|: .+)$", RegexOptions.IgnoreCase)]
    private static partial Regex OfParts();

    [GeneratedRegex(@"(?<=^|: | \+ )((?:\d+|\?) )?((?:nut|stud|screw|bolt) )?(\d+/\d+) in(?=$| \+ | -> )")]
    private static partial Regex InchThread();

    [GeneratedRegex(@"\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)$")]
    private static partial Regex NumberAtEnd();

    [GeneratedRegex(@"^(?<head>corrected [^:]+: [a-z]+) (?:.+ )?=> (?<now>.+)$")]
    private static partial Regex Revision();

    [GeneratedRegex(@"~?-?\d+(?:\.\d+)?(?: (?![~\d-])[^\s]+)*")]
    private static partial Regex Value();

    /// <summary>Other names of the same: a journal that the rod runs on is a crankpin or a big end of the crank, and a unit may be written out.</summary>
    private static readonly (string Other, string One)[] OtherNames =
    [
        ("big-end", "big end"), ("O-ring", "o-ring"), ("asked what first ", "asked before "), ("crank.1/crankpin", "crank.1/big end"), ("crank.1/rod journal", "crank.1/big end"),
        ("measured crankpin diameter ", "measured big end journal "), ("measured crankpin ", "measured big end journal "), ("measured runout ", "measured run-out "), ("measured spring free length ", "measured free length "),
        ("measured diameter crank.1/big end", "measured big end journal crank.1/big end"), ("measured diameter crank.1/main", "measured main journal crank.1/main"),
        (" gallon", " gal"), (" quart", " qt"), (" pint", " pt"),
    ];

    private static readonly string[] Numbers = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>The due facts that were not heard, and the heard ones that were not due.</summary>
    public static (IReadOnlyList<string> Missed, IReadOnlyList<string> Wrong) Compare(IEnumerable<string> due, IEnumerable<string> heard)
    {
        var missed = due.Select(Told.Read).ToList();
        var wrong = heard.Select(Told.Read).ToList();
        missed.RemoveAll(d => wrong.FindIndex(h => Says(h, d)) is var at and >= 0 && Drop(wrong, at));
        foreach (string key in missed.Select(m => m.Key).Distinct().ToList())
        {
            Regroup(missed, wrong, key);
            Regroup(wrong, missed, key);
        }

        return ([.. missed.Select(m => m.Code)], [.. wrong.Select(w => w.Code)]);
    }

    /// <summary>One fact on the one side is told in several on the other.</summary>
    private static void Regroup(List<Told> ones, List<Told> pieces, string key)
    {
        foreach (var one in ones.Where(o => o.Key == key && o.Of.Count > 1).ToList())
        {
            var parts = pieces.Where(p => p.Key == key && p.Of.Count > 0 && p.Of.IsSubsetOf(one.Of)).ToList();
            if (parts.Count < 2 || !parts.SelectMany(p => p.Of).ToHashSet().SetEquals(one.Of))
                continue;
            ones.Remove(one);
            parts.ForEach(p => pieces.Remove(p));
        }
    }

    private static bool Drop(List<Told> list, int at)
    {
        list.RemoveAt(at);
        return true;
    }

    /// <summary>A correction that was due without what stood before leaves that open.</summary>
    private static bool Says(Told heard, Told due) =>
        (heard.Key == due.Key && heard.Of.SetEquals(due.Of))
        || (Revision().Match(due.Key) is { Success: true } bare && due.Key == $"{bare.Groups["head"].Value} => {bare.Groups["now"].Value}"
            && Revision().Match(heard.Key) is { Success: true } told && told.Groups["head"].Value == bare.Groups["head"].Value && told.Groups["now"].Value == bare.Groups["now"].Value);

    /// <summary>A fact as coded, what it tells, and of which parts; a reading is one of its part with its value.</summary>
    private sealed record Told(string Code, string Key, HashSet<string> Of)
    {
        public static Told Read(string code)
        {
            string fact = InchThread().Replace(OtherNames.Aggregate(code, (c, name) => c.Replace(name.Other, name.One, StringComparison.Ordinal)), "$1$2$3");
            if (fact.Contains(" -> ", StringComparison.Ordinal))
                fact = NumberAtEnd().Replace(fact, m => (Array.IndexOf(Numbers, m.Value) + 1).ToString(CultureInfo.InvariantCulture));
            if (OfParts().Match(fact) is not { Success: true } of || Ids(of.Groups["ids"].Value) is not { } ids)
                return new Told(code, fact, []);
            string verb = of.Groups["verb"].Value;
            string rest = of.Groups["rest"].Value;
            if (verb == "buy" && rest == $": {ids.Count}")
                rest = "";
            if (!verb.StartsWith("measured ", StringComparison.Ordinal))
                return new Told(code, $"{verb} *{rest}", [.. ids]);
            var values = Value().Matches(rest[2..]).Select(m => m.Value).ToList();
            return values.Count == 1 ? new Told(code, verb, [.. ids.Select(id => $"{id} {values[0]}")])
                : values.Count == ids.Count ? new Told(code, verb, [.. ids.Zip(values, (id, value) => $"{id} {value}")])
                : new Told(code, fact, []);
        }
    }

    /// <summary>plug.1-3 and injector.3/washer,injector.5/washer one by one; nothing when a part has no number at its end.</summary>
    private static List<string>? Ids(string list)
    {
        string[] parts = list.Split(',');
        string last = parts[^1];
        string piece = last.IndexOf('/') is var slash and > 0 && !last[slash..].Any(char.IsAsciiDigit) ? last[slash..] : "";
        var all = new List<string>();
        foreach (string part in parts)
        {
            string id = piece.Length > 0 && part.EndsWith(piece, StringComparison.Ordinal) ? part[..^piece.Length] : part;
            if (Regex.Match(id, @"^(?<stem>.*?)(?<from>\d+)-(?<to>\d+)$") is { Success: true } range)
            {
                int from = int.Parse(range.Groups["from"].Value, CultureInfo.InvariantCulture);
                int to = int.Parse(range.Groups["to"].Value, CultureInfo.InvariantCulture);
                if (to <= from)
                    return null;
                all.AddRange(Enumerable.Range(from, to - from + 1).Select(n => $"{range.Groups["stem"].Value}{n.ToString(CultureInfo.InvariantCulture)}{piece}"));
            }
            else if (char.IsAsciiDigit(id[^1]))
                all.Add(id + piece);
            else if (id.Contains('/', StringComparison.Ordinal))
                all.Add(id);
            else
                return null;
        }

        return all;
    }
}
