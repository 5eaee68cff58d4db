namespace Gudgeon.Capture;

/// <summary>A figure with its unit, and the words it was said in.</summary>
public sealed record Amount(decimal Value, string Unit, string Said)
{
    public bool Rough { get; init; }

    /// <summary>True when the unit was not said and only one fits.</summary>
    public bool UnitTaken { get; init; }

    /// <summary>Which of several: inlet 2, front, 90 degrees.</summary>
    public string At { get; init; } = "";

    public string Code => $"{(Rough ? "~" : "")}{ThreadSize.Plain(Value)}{(Unit.Length > 0 ? " " + Unit : "")}";
    public string Text => $"{(Rough ? "about " : "")}{ThreadSize.Plain(Value)}{(Unit.Length > 0 ? " " + Unit : "")}{(At.Length > 0 ? " " + At : "")}{(UnitTaken ? " (unit not said)" : "")}";
}

/// <summary>A reading or several. <paramref name="What"/> is the characteristic: bore, end float, compression.</summary>
public sealed record Measured(string What, Thing? Thing, IReadOnlyList<Amount> Values, string At, string Words) : Fact
{
    /// <summary>The words number the values: one for each, in order.</summary>
    public bool InOrder { get; init; }

    public override string Code => $"measured {What}{(Thing is null ? "" : " " + Thing.Code)}: {string.Join(" ", Values.Select(v => v.Code))}";
    public override string Echo => $"{What}{(Thing is null ? "" : ", " + Thing.Full)}{(At.Length > 0 ? ", " + At : "")}: {string.Join(", ", Values.Select(v => v.Text))} (“{Words}”)";
}

/// <summary>Work stops until something comes or has to go back.</summary>
public sealed record WaitingFor(string For, Thing? Thing, Due? Until) : Fact
{
    public override string Code => $"waiting {For}{(Until is null ? "" : " until " + Until.Code)}";
    public override string Echo => $"waiting: {For}{(Until is null ? "" : ", until " + Until.Text)}";
}

/// <summary>Something borrowed or hired must go back by a time.</summary>
public sealed record GoesBack(Thing Thing, Due When) : Fact
{
    public override string Code => $"returns {Thing.Code} by {When.Code}";
    public override string Echo => $"{Thing.Full}: has to go back {When.Text}";
}

/// <summary>
/// What must be off or done before <paramref name="Target"/>. Each set of <paramref name="Ways"/> is one way; inside a
/// set all must be done.
/// </summary>
public sealed record AccessLearned(Thing Target, IReadOnlyList<IReadOnlyList<Thing>> Ways, string Words) : Fact
{
    public override string Code => $"access {Target.Code} after {string.Join(" or ", Ways.Select(w => string.Join(",", w.Select(t => t.Code))))}";
    public override string Echo => $"before the {Target.Full}: {string.Join(", or ", Ways.Select(w => string.Join(" and ", w.Select(t => t.Full))))} (“{Words}”)";
}

public sealed record LeftOn(Thing Thing, string Why) : Fact
{
    public override string Code => $"left-on {Thing.Code}";
    public override string Echo => $"{Thing.Full}: stays on{(Why.Length > 0 ? $" (“{Why}”)" : "")}";
}

/// <summary>Takes back something said before. <paramref name="Of"/>: a part whose record is meant, or null for the last note.</summary>
public sealed record Corrected(Thing? Of, string What, string Was, string Now) : Fact
{
    public override string Code => $"corrected {Of?.Code ?? "last"}: {What} {Was}{(Was.Length > 0 ? " => " : "=> ")}{Now}";
    public override string Echo => $"correction of {(Of is null ? "the last note" : "the " + Of.Full)}: {What} {(Was.Length > 0 ? $"not {Was} but " : "")}{Now}";
}

/// <summary>The last note is taken back as a whole.</summary>
public sealed record StruckOut(Thing? Of) : Fact
{
    public override string Code => $"struck {Of?.Code ?? "last"}";
    public override string Echo => Of is null ? "the last note is struck out" : $"the last note about the {Of.Full} is struck out";
}

/// <summary>A thing gets its right name.</summary>
public sealed record Named(Thing Thing, Thing As) : Fact
{
    public override string Code => $"named {Thing.Code} = {As.Code}";
    public override string Echo => $"what was called {Thing.Full} is the {As.Full}";
}

/// <summary>A word of the speaker's own and what it stands for.</summary>
public sealed record Taught(string Word, string Term) : Fact
{
    public override string Code => $"taught '{Word}' = {Term}";
    public override string Echo => $"“{Word}” means {Term} from now on";
}

public sealed record Marked(Thing Thing, string Mark) : Fact
{
    public override string Code => $"marked {Thing.Code}";
    public override string Echo => $"{Thing.Full}: {Mark}";
}

public sealed record Sent(Thing Thing, string To, string Work, Due? Due, string Paid) : Fact
{
    public override string Code => $"sent {Thing.Code}{(Due is null ? "" : " until " + Due.Code)}";
    public override string Echo => $"{Thing.Full}: away at {To}{(Work.Length > 0 ? $" for “{Work}”" : "")}{(Due is null ? "" : ", back " + Due.Text)}{(Paid.Length > 0 ? ", " + Paid : "")}";
}

public sealed record Back(Thing Thing) : Fact
{
    public override string Code => $"back {Thing.Code}";
    public override string Echo => $"{Thing.Full}: back";
}

/// <summary>A question that the book answers. <paramref name="Sort"/>: where, before, way, done, how many, what, goes.</summary>
public sealed record Asked(string Sort, Thing? Thing, string Words) : Fact
{
    public override string Code => $"asked {Sort}{(Thing is null ? "" : " " + Thing.Code)}";
    public override string Echo => $"question: {Sort switch
    {
        "where" => "where is",
        "before" => "what comes before",
        "way" => "which way",
        "done" => "was it done:",
        "how many" => "how many:",
        "size" => "what size:",
        _ => "about",
    }} {Thing?.Full ?? $"“{Words}”"}?";
}

public sealed record QuestionToSelf(Thing? Thing, string Words) : Fact
{
    public override string Code => $"self{(Thing is null ? "" : " " + Thing.Code)}";
    public override string Echo => $"to find out: “{Words}”";
}

public sealed record Planned(Thing? Thing, string Words) : Fact
{
    public override string Code => $"planned{(Thing is null ? "" : " " + Thing.Code)}";
    public override string Echo => $"to do: “{Words}”";
}

/// <summary>A remark about a thing that fits no other kind: kept with it, in the words said.</summary>
public sealed record Noted(Thing Thing, string Words) : Fact
{
    public override string Code => $"noted {Thing.Code}";
    public override string Echo => $"{Thing.Full}: “{Words}”";
}

/// <summary>Something was done to the whole engine: battery off, engine out. <paramref name="Operation"/> is its id in the tables.</summary>
public sealed record Did(string Operation, string Name) : Fact
{
    public override string Code => $"done {Operation}";
    public override string Echo => $"done: {Name}";
}
