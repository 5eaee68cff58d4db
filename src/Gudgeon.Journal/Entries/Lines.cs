using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(LineParted), "line-parted")]
[JsonDerivedType(typeof(LineJoined), "line-joined")]
[JsonDerivedType(typeof(LineTagged), "line-tagged")]
[JsonDerivedType(typeof(PortCapped), "port-capped")]
[JsonDerivedType(typeof(PortOpened), "port-opened")]
public abstract partial record Entry;

/// <summary>A hose, pipe or plug was parted.</summary>
/// <param name="Tag">What is written on the tag on both halves; empty for none.</param>
/// <param name="Caps">Ports that were capped at once.</param>
public sealed record LineParted(string Line, string Tag = "", IReadOnlyList<string>? Caps = null) : Entry
{
    public override IEnumerable<string> About() => [Line];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchLine(Line) is { } missing)
        {
            return missing;
        }

        var state = bench.Line(Line);
        return bench.Engine.Lines[Line].IsPassage
            ? new Refusal(bench.NameOf(Line), "it is drilled or cast", "a hose, pipe, wire or plug", "It opens with its joint: record that instead")
            : state.IsParted && !state.IsImplied
            ? new Refusal(bench.NameOf(Line), "it is parted already", "a line that is still joined", "Add a tag or a cap to it, or strike out the entry that parted it")
            : null;
    }

    public override string Words(Bench bench) =>
        $"{bench.NameOf(Line)} parted{(Tag.Length > 0 ? $", tagged \"{Tag}\"" : "")}{(Caps is { Count: > 0 } ? $", capped at {string.Join(" and ", Caps)}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeLine(Line);
        state.IsParted = true;
        state.IsImplied = false;
        state.Found.Clear();
        state.PartedAt = recorded.At;
        state.Tag = Tag;
        state.Caps = Caps ?? [];
    }
}

/// <summary>A line is joined again at both ends. A cap or plug that nobody took out is still in.</summary>
public sealed record LineJoined(string Line) : Entry
{
    public override IEnumerable<string> About() => [Line];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchLine(Line) is { } missing)
        {
            return missing;
        }

        var line = bench.Engine.Lines[Line];
        var off = new[] { line.From, line.To }.FirstOrDefault(p => bench.Engine.Parts.ContainsKey(p.Part) && !bench.Part(p.Part).IsOn && !bench.Part(p.Part).IsRiding && !bench.Part(p.Part).IsAbsent);
        return !bench.Line(Line).IsParted
            ? new Refusal(bench.NameOf(Line), "it is joined already", "a line that is parted", "Nothing to do here, or strike out the entry that joined it")
            : off is null ? null
            : new Refusal(bench.NameOf(Line), $"the {bench.NameOf(off.Part)} is off", "both ends on", "Put the part back first");
    }

    public override string Words(Bench bench) => $"{bench.NameOf(Line)} joined again";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var state = bench.ChangeLine(Line);
        state.IsParted = false;
        state.IsImplied = false;
        state.Found.Clear();
    }
}

/// <summary>A parted line got a tag.</summary>
public sealed record LineTagged(string Line, string Tag) : Entry
{
    public override IEnumerable<string> About() => [Line];

    public override Refusal? Check(Bench bench) => bench.NoSuchLine(Line)
        ?? (string.IsNullOrWhiteSpace(Tag) ? new Refusal(bench.NameOf(Line), "an empty tag", "what is written on both halves", "Write the tag") : null);

    public override string Words(Bench bench) => $"{bench.NameOf(Line)} tagged \"{Tag}\"";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeLine(Line).Tag = Tag;
}

/// <summary>A cap or plug went into an open port. It must come out again.</summary>
public sealed record PortCapped(string Line, string Port) : Entry
{
    public override IEnumerable<string> About() => [Line];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchLine(Line) is { } missing)
        {
            return missing;
        }

        var line = bench.Engine.Lines[Line];
        return line.From.Id != Port && line.To.Id != Port
            ? new Refusal(bench.NameOf(Line), $"port \"{Port}\"", $"{line.From.Id} or {line.To.Id}", "Choose one of its ends")
            : !bench.Line(Line).IsParted ? new Refusal(bench.NameOf(Line), "it is joined", "a line that is parted", "Record it as parted first")
            : bench.Line(Line).Caps.Contains(Port) ? new Refusal(Port, "it is capped already", "an open port", "Nothing to do here")
            : null;
    }

    public override string Words(Bench bench) => $"{bench.NameOf(Line)} capped at {Port}";

    internal override void Apply(Bench bench, Recorded recorded) =>
        bench.ChangeLine(Line).Caps = [.. bench.ChangeLine(Line).Caps, Port];
}

/// <summary>A cap or plug came out of a port.</summary>
public sealed record PortOpened(string Line, string Port) : Entry
{
    public override IEnumerable<string> About() => [Line];

    public override Refusal? Check(Bench bench) => bench.NoSuchLine(Line)
        ?? (bench.Line(Line).Caps.Contains(Port) ? null : new Refusal(Port, "no cap in it", "a port with a cap in", "Look at the tag on the hose"));

    public override string Words(Bench bench) => $"Cap out of {Port}";

    internal override void Apply(Bench bench, Recorded recorded) =>
        bench.ChangeLine(Line).Caps = [.. bench.ChangeLine(Line).Caps.Where(c => c != Port)];
}
