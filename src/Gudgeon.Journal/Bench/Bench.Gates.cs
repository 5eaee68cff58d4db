using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

public sealed partial class Bench
{
    private IReadOnlyList<Gate>? gates;

    /// <summary>What was looked at and said yes to: by gate, closing part and look; the number of the entry.</summary>
    internal Dictionary<(string Gate, string Closing, string Look), long> Looks { get; } = [];

    /// <summary>Gates that were closed, by gate and what closed it; the number of the entry.</summary>
    internal Dictionary<(string Gate, string Closing), long> Closed { get; } = [];

    /// <summary>Gates that were closed over their findings.</summary>
    internal List<Recorded> Overrides { get; } = [];

    /// <summary>The gates of this engine, in the order in which they are met.</summary>
    public IReadOnlyList<Gate> Gates => gates ??= Gudgeon.Engine.Gates.Of(Engine);

    public Gate? Gate(string id) => Gates.FirstOrDefault(g => g.Id == id);

    internal Refusal NoSuchGate(string id) =>
        new("gate", $"\"{id}\"", $"one of {string.Join(", ", Gates.Select(g => g.Id))}", "Choose one of them");

    /// <summary>The gate that this part closes when it goes on, or null.</summary>
    public Gate? GateClosedBy(string part) =>
        Engine.Parts.TryGetValue(part, out var p) ? Gates.FirstOrDefault(g => g.ClosedBy.Contains(p.Kind) || g.ClosedBy.Contains(p.Id)) : null;

    /// <summary>Whether a look was said yes to since the closing part came off.</summary>
    internal bool HasLooked(Gate gate, string closing, string look) =>
        Looks.TryGetValue((gate.Id, closing, look), out var number) && number > (Engine.Parts.ContainsKey(closing) ? Part(closing).OffBy ?? 0 : 0);
}
