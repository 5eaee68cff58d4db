using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(EndJoined), "end-joined")]
[JsonDerivedType(typeof(PortLeftOpen), "port-left-open")]
[JsonDerivedType(typeof(FluidMoved), "fluid")]
public abstract partial record Entry;

/// <summary>Where one end of a line was found to be joined, or what the tag at that port says.</summary>
/// <param name="Port">The port that this end belongs on.</param>
/// <param name="At">The port that it is on.</param>
/// <param name="Tag">What the tag at the port says; empty when there is none.</param>
public sealed record EndJoined(string Line, string Port, string At, string Tag = "") : Entry
{
    public override IEnumerable<string> About() => [Line];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchLine(Line) is { } missing)
            return missing;
        var line = bench.Engine.Lines[Line];
        return Port != line.From.Id && Port != line.To.Id ? new Refusal(bench.NameOf(Line), $"its end \"{Port}\"", $"{line.From.Id} or {line.To.Id}", "Choose one of its ends")
            : bench.PortName(At) is null ? new Refusal(bench.NameOf(Line), $"the port \"{At}\"", "a port of this engine", "Look at the list of ports")
            : null;
    }

    public override string Words(Bench bench) => At == Port
        ? $"{bench.NameOf(Line)} is on its own port, {bench.PortName(Port)}{(Tag.Length > 0 ? $", tag \"{Tag}\"" : "")}"
        : $"{bench.NameOf(Line)} is on {bench.PortName(At)} instead of {bench.PortName(Port)}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.ChangeLine(Line).Found[Port] = (At, Tag);
}

/// <summary>A port is left open on purpose, or no longer.</summary>
/// <param name="Why">Why it is open; empty takes the name back.</param>
public sealed record PortLeftOpen(string Port, string Why) : Entry
{
    public override IEnumerable<string> About() => [Port];

    public override Refusal? Check(Bench bench) =>
        bench.PortName(Port) is null ? new Refusal("port", $"\"{Port}\"", "a port of this engine", "Look at the list of ports")
        : Why.Trim().Length == 0 && !bench.LeftOpen.ContainsKey(Port) ? new Refusal(bench.PortName(Port)!, "no reason", "why it is left open", "Give the reason")
        : null;

    public override string Words(Bench bench) => Why.Trim().Length == 0
        ? $"{bench.PortName(Port)} is no longer left open"
        : $"{bench.PortName(Port)} is left open on purpose: {Why}";

    internal override void Apply(Bench bench, Recorded recorded)
    {
        if (Why.Trim().Length == 0)
            bench.LeftOpen.Remove(Port);
        else
            bench.LeftOpen[Port] = Why.Trim();
    }
}

/// <summary>What became of a fluid.</summary>
public enum FluidWay
{
    Drained,
    Filled,
}

/// <summary>An amount of a fluid was drained or filled.</summary>
/// <param name="Fluid">oil, coolant, fuel, or as said.</param>
/// <param name="Cm3">Amount.</param>
/// <param name="AsTyped">As typed.</param>
public sealed record FluidMoved(string Fluid, FluidWay Way, double Cm3, string AsTyped, string Note = "") : Entry
{
    private const double Most = 1_000_000;

    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(Fluid) ? new Refusal("fluid", "no name", "oil, coolant, fuel", "Say which fluid")
        : !(Cm3 > 0 && Cm3 <= Most) ? new Refusal(Fluid, $"\"{AsTyped}\"", "more than 0 and at most 1000 litres", "Measure it again")
        : null;

    public override string Words(Bench bench) =>
        $"{FluidAccount.Litres(Cm3)} of {FluidAccount.Key(Fluid)} {(Way == FluidWay.Drained ? "drained" : "filled")}{(Note.Length > 0 ? $", {Note}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Fluids.Add(recorded);
}
