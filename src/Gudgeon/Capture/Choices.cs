namespace Gudgeon.Capture;

/// <summary>
/// Names one piece of a line from one hearing of it to the next: its code, and where its words stand. The code finds it
/// again; where the code no longer fits, the words say what was meant.
/// </summary>
public sealed record PieceKey(string Code, IReadOnlyList<TextSpan> Spans)
{
    private const string Mark = " @";

    public static PieceKey Of(Fact fact) => new(fact.Code, fact.Spans);

    public static PieceKey Of(Doubt doubt, Reading way) => new(way.Code, doubt.Spans);

    /// <summary>What <see cref="ToString"/> wrote, or a code alone. Any text is some key: one that fits nothing is asked about.</summary>
    public static PieceKey Read(string text)
    {
        int mark = text.LastIndexOf(Mark, StringComparison.Ordinal);
        var spans = new List<TextSpan>();
        foreach (string span in mark < 0 ? [] : text[(mark + Mark.Length)..].Split(','))
        {
            if (span.Split('+') is not [var start, var length] || !ushort.TryParse(start, out ushort from) || !ushort.TryParse(length, out ushort many))
                return new PieceKey(text, []);
            spans.Add(new TextSpan(from, many));
        }

        return new PieceKey(mark < 0 ? text : text[..mark], spans);
    }

    /// <summary>The words that it stands for, as far as the text holds them; the whole text where it names none.</summary>
    public string Words(string text)
    {
        string words = string.Join(" … ", Spans.Where(s => s.Start < text.Length).Select(s => text[s.Start..Math.Min(s.End, text.Length)]));
        return words.Trim().Length > 0 ? words : text;
    }

    public bool Touches(IEnumerable<TextSpan> others) => others.Any(o => Spans.Any(s => s.Start < o.End && o.Start < s.End));

    public override string ToString() => Spans.Count == 0 ? Code : $"{Code}{Mark}{string.Join(',', Spans.Select(s => $"{s.Start}+{s.Length}"))}";
}

/// <summary>What the person made of a line's pieces before it is recorded.</summary>
/// <param name="Without">Pieces that are not so.</param>
/// <param name="Meant">Readings that settle a doubt.</param>
public sealed record Choices(IReadOnlyList<PieceKey> Without, IReadOnlyList<PieceKey> Meant)
{
    public static Choices None { get; } = new([], []);
}

/// <summary>A fact that is not recorded, and why: it becomes an open question.</summary>
public sealed record LeftOut(Fact Fact, string Why);

/// <summary>A line as it was heard, with the person's choices made.</summary>
public sealed record Sifted
{
    /// <summary>Why a piece is an open question although it was understood.</summary>
    public const string Tapped = "left out before it was recorded";

    private Sifted()
    {
    }

    /// <summary>What was heard, all of it.</summary>
    public required Heard All { get; init; }

    /// <summary>What is recorded: without what was left out, and with the readings that were chosen.</summary>
    public required Heard Kept { get; init; }

    public required IReadOnlyList<LeftOut> Left { get; init; }

    /// <summary>The reading chosen for each doubt that was settled.</summary>
    public required IReadOnlyDictionary<Doubt, Reading> Settled { get; init; }

    /// <summary>Choices that fit nothing of the line any more.</summary>
    public required IReadOnlyList<PieceKey> Unfit { get; init; }

    /// <summary>What was understood but is only offered, with its place among the doubts.</summary>
    public IEnumerable<(int Number, Doubt Doubt)> Offered => All.Doubts.Index().Where(d => d.Item.Sort == DoubtSort.Unproven);

    public bool IsLeft(Fact fact) => Left.Any(l => ReferenceEquals(l.Fact, fact));

    /// <summary>Makes the choices. A choice whose code fits no more holds back whatever its words read as now: the owner never saw that.</summary>
    public static Sifted Of(Heard heard, Choices choices)
    {
        var left = new List<LeftOut>();
        var settled = new Dictionary<Doubt, Reading>(ReferenceEqualityComparer.Instance);
        var unfit = new List<PieceKey>();
        bool Stands(Fact fact) => !left.Exists(l => ReferenceEquals(l.Fact, fact));

        void Hold(PieceKey key, string was)
        {
            var touched = heard.Facts.Where(f => Stands(f) && key.Touches(f.Spans)).ToList();
            if (touched.Exists(f => Verb(f.Code) == Verb(key.Code)))
                touched.RemoveAll(f => Verb(f.Code) != Verb(key.Code));
            left.AddRange(touched.Select(f => new LeftOut(f, $"{was} as “{key.Code}”, but it reads otherwise now")));
            if (touched.Count == 0 && !heard.Doubts.Any(d => key.Touches(d.Spans)))
                unfit.Add(key);
        }

        foreach (var key in choices.Without)
        {
            if (Nearest(heard.Facts.Where(f => Stands(f) && f.Code == key.Code), f => f.Spans, key) is { } fact)
                left.Add(new LeftOut(fact, Tapped));
            else
                Hold(key, Tapped);
        }

        foreach (var key in choices.Meant)
        {
            var doubt = Nearest(heard.Doubts.Where(d => !settled.ContainsKey(d) && d.Readings.Any(r => r.Code == key.Code)), d => d.Spans, key);
            if (doubt is not null)
                settled[doubt] = doubt.Readings.First(r => r.Code == key.Code);
            else if (!key.Code.Split(Reading.And).All(code => heard.Facts.Any(f => f.Code == code)))
                Hold(key, "chosen before it was recorded");
        }

        var facts = heard.Facts.Where(Stands).ToList();
        foreach (var told in settled.Values.SelectMany(r => r.Facts).Where(told => !facts.Exists(f => f.Code == told.Code)))
        {
            int before = facts.FindIndex(f => Start(f) > Start(told));
            facts.Insert(before < 0 ? facts.Count : before, told);
        }

        return new Sifted
        {
            All = heard,
            Kept = heard with { Facts = facts, Doubts = [.. heard.Doubts.Where(d => !settled.ContainsKey(d))] },
            Left = left,
            Settled = settled,
            Unfit = unfit,
        };
    }

    /// <summary>Of those with the right code the one at the right words, else the first.</summary>
    private static T? Nearest<T>(IEnumerable<T> those, Func<T, IReadOnlyList<TextSpan>> spans, PieceKey key) where T : class =>
        those.OrderByDescending(t => key.Touches(spans(t))).FirstOrDefault();

    private static string Verb(string code) => code.Split(' ')[0];

    private static int Start(Fact fact) => fact.Spans.Count == 0 ? int.MaxValue : fact.Spans.Min(s => s.Start);
}
