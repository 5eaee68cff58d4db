using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>How one end of a line stands.</summary>
public enum PortStand
{
    Joined,

    /// <summary>A cap or plug is in on purpose.</summary>
    Capped,

    /// <summary>Named as open, with a reason.</summary>
    LeftOpen,

    /// <summary>Open, and nobody said why.</summary>
    Open,

    /// <summary>The line is on another port, or the tags differ.</summary>
    Wrong,

    /// <summary>Inside the engine: a part that the fluid passes through is off, and its seat stands open.</summary>
    PartOff,
}

/// <summary>One port of one circuit.</summary>
/// <param name="Words">What there is to say of it.</param>
public sealed record PortLine(Line Line, Port Port, PortStand Stand, string Words)
{
    /// <summary>Whether the circuit is not closed here.</summary>
    public bool IsToSeeTo => Stand is PortStand.Open or PortStand.Wrong or PortStand.PartOff;
}

/// <summary>"Closed?": every port joined, capped on purpose, or named as open, and no part off that the fluid passes through.</summary>
public static class PortCheck
{
    /// <summary>Whether a line is apart: parted by hand, or a drilled or cast way with a part of it off.</summary>
    public static bool IsApart(Bench bench, Line line) => line.IsPassage
        ? new[] { line.From, line.To }.Any(p => !p.IsOutside && bench.Engine.Parts.ContainsKey(p.Part) && bench.Part(bench.UnitOf(p.Part)).IsOff)
        : bench.Line(line.Id).IsParted;

    /// <summary>Every end of the lines that are parted by hand, by fluid, and once each part of the way that is off.</summary>
    public static IReadOnlyList<PortLine> Of(Bench bench, string? family = null) =>
    [
        .. from line in bench.Engine.Lines.Values
           where !line.IsPassage && !bench.Line(line.Id).IsAbsent && (family is null || Family.Of(line.Circuit) == family)
           from port in new[] { line.From, line.To }
           select Stand(bench, line, port),
        .. PartsOff(bench, family),
    ];

    private static IEnumerable<PortLine> PartsOff(Bench bench, string? family) =>
        from line in bench.Engine.Lines.Values
        where line.IsPassage && (family is null || Family.Of(line.Circuit) == family)
        from port in new[] { line.From, line.To }
        where !port.IsOutside && bench.Part(port.Part) is { IsOn: false, IsAbsent: false, IsRiding: false }
        group (line, port) by (port.Part, Family.Of(line.Circuit)) into off
        select new PortLine(off.First().line, off.First().port, PortStand.PartOff, $"the {bench.NameOf(off.Key.Part)} is off");

    public static IEnumerable<Finding> Wrong(Bench bench) => Of(bench)
        .Where(p => p.Stand == PortStand.Wrong)
        .Select(p => new Finding(FindingNames.PortWrong, p.Line.Id, $"{p.Line.Name}, at {bench.PortName(p.Port.Id)}", p.Words, "Part it and join it where it belongs"));

    private static PortLine Stand(Bench bench, Line line, Port port)
    {
        var state = bench.Line(line.Id);
        if (!state.IsParted && state.Found.TryGetValue(port.Id, out var found))
        {
            if (found.At != port.Id)
                return new(line, port, PortStand.Wrong, $"it is on {bench.PortName(found.At)}");
            if (found.Tag.Length > 0 && state.Tag.Length > 0 && !Same(found.Tag, state.Tag))
                return new(line, port, PortStand.Wrong, $"the tag at the port says \"{found.Tag}\", the tag of the line \"{state.Tag}\"");
        }

        return !state.IsParted ? new(line, port, PortStand.Joined, "joined")
            : state.Caps.Contains(port.Id) ? new(line, port, PortStand.Capped, "capped")
            : bench.LeftOpen.TryGetValue(port.Id, out var why) ? new(line, port, PortStand.LeftOpen, $"left open: {why}")
            : new(line, port, PortStand.Open, "open");
    }

    private static bool Same(string a, string b) => Whereabouts.PlaceName(a) == Whereabouts.PlaceName(b);
}
