namespace Gudgeon.Capture;

public enum BookUnit
{
    Metric,
    Inch,
}

/// <summary>What the ear must know besides the words: when, what came before, and how this owner speaks.</summary>
public sealed record EarContext
{
    /// <summary>The moment of the note with the owner's offset; days such as Saturday are told from it.</summary>
    public required DateTimeOffset Now { get; init; }

    public BookUnit Unit { get; init; }

    /// <summary>The part spoken of last, for "it" and for gaskets, holes and bolts that name no part.</summary>
    public string? LastThing { get; init; }

    /// <summary>Whether one part alone was spoken of last, so that its kind without a number means it again.</summary>
    public bool LastAlone { get; init; }

    /// <summary>The same, whole: all the parts that were told together, or the place in one of them.</summary>
    public Thing? LastOf { get; init; }

    /// <summary>What the note before asked the place of: "they're in the tin" answers it.</summary>
    public Thing? Sought { get; init; }

    /// <summary>What was told as missing and has not turned up.</summary>
    public IReadOnlyList<Missing> Short { get; init; } = [];

    /// <summary>The part whose joint was spoken of last, for "those are M10" and "no, twelve".</summary>
    public string? LastJoint { get; init; }

    /// <summary>The facts of the last note, for "same again".</summary>
    public IReadOnlyList<Fact> Last { get; init; } = [];

    /// <summary>Ids of the parts that are off.</summary>
    public IReadOnlySet<string> Off { get; init; } = new HashSet<string>();

    /// <summary>The fasteners that were undone last, for "same nuts".</summary>
    public Undone? LastUndone { get; init; }

    /// <summary>Where fasteners were put last, for "same tub".</summary>
    public Place? LastPlace { get; init; }

    /// <summary>Whether the work goes back together: the last deed told put a part on or tightened one.</summary>
    public bool Fitting { get; init; }

    /// <summary>Which bank the owner calls left, from 1; null until declared.</summary>
    public int? LeftBank { get; init; }

    /// <summary>Which bank is the far one from where the owner stands; null until declared.</summary>
    public int? FarBank { get; init; }

    /// <summary>What this owner means by "mil": true for millimetre, false for a thousandth of an inch, null until asked.</summary>
    public bool? MilIsMillimetre { get; init; }

    /// <summary>Words that the owner taught, each with the listed term that it stands for.</summary>
    public IReadOnlyDictionary<string, string> Taught { get; init; } = new Dictionary<string, string>();

    /// <summary>Ways of saying that this owner has taken as understood, besides the proven ones.</summary>
    public IReadOnlySet<string> Ways { get; init; } = new HashSet<string>();

    /// <summary>Whether what is said in any way at all is a fact: for finding out which ways are heard rightly.</summary>
    public bool AnyWay { get; init; }

    /// <summary>Nominal size in millimetres by characteristic (<c>bore</c>), to tell figures apart.</summary>
    public IReadOnlyDictionary<string, decimal> Nominals { get; init; } = new Dictionary<string, decimal>();

    /// <summary>The context of the next note: what this one spoke of, and what it took off or put on.</summary>
    public EarContext After(Heard heard)
    {
        var off = new HashSet<string>(Off);
        string? thing = LastThing;
        string? joint = LastJoint;
        bool alone = LastAlone;
        var of = LastOf;
        Thing? asked = null;
        var lacking = Short.ToList();
        foreach (var fact in heard.Spoken)
        {
            if (Listener.About(fact) is not { } about)
                continue;
            if (fact is Missing gone)
                lacking.Add(gone);
            else if (fact is Found)
                lacking.RemoveAll(m => m.Thing.Code == about.Code);
            if (fact is Capture.Off)
                off.UnionWith(about.Ids);
            else if (fact is On)
                off.ExceptWith(about.Ids);
            if (about.Ids.Count > 0 && about.Sort is ThingSort.Part or ThingSort.Fasteners && fact is not (Asked or QuestionToSelf))
                (thing, alone, of) = (about.Ids[0], about.Ids.Count == 1, about);
            if (fact is Capture.Off or Undone or Count or Tightened && about.Ids.Count > 0)
                joint = about.Ids[0];
        }

        if (heard.Spoken is [Asked { Thing: { Ids.Count: > 0 } wondered } question])
            (thing, alone, of, asked) = (wondered.Ids[0], wondered.Ids.Count == 1, wondered, question.Sort == "where" ? wondered : null);
        bool fitting = heard.Spoken.LastOrDefault(f => f is On or Tightened or Capture.Off or Undone or Parted) is { } deed ? deed is On or Tightened : Fitting;
        var last = heard.Spoken.Any(f => f is not (Asked or QuestionToSelf or Planned)) ? heard.Spoken : Last;
        return this with { LastUndone = heard.Spoken.OfType<Undone>().LastOrDefault(u => u.Lots.Count > 0) ?? LastUndone, LastPlace = heard.Spoken.OfType<Undone>().LastOrDefault(u => u.Place is { Sort: PlaceSort.Container })?.Place ?? LastPlace, Off = off, Fitting = fitting, LastThing = thing, LastAlone = alone, LastOf = of, Sought = asked, Short = lacking, LastJoint = joint, Last = last };
    }
}
