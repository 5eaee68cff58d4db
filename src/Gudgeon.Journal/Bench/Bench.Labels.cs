namespace Gudgeon.Journal;

public sealed partial class Bench
{
    /// <summary>Labels by code.</summary>
    public SortedDictionary<string, LabelMade> Labels { get; } = new(StringComparer.Ordinal);

    /// <summary>The code of the label on a thing, place or end of a line; null while it has none.</summary>
    public string? LabelOn(string? what, string? place, string? port) => Labels.Values.FirstOrDefault(l =>
        l.What == what && l.Port == port && (l.Place is null ? place is null : place is not null && Whereabouts.PlaceName(l.Place) == Whereabouts.PlaceName(place)))?.Code;

    /// <summary>The plain name on a label.</summary>
    public string LabelName(LabelMade label) =>
        label.Place ?? (label.Port is null ? NameOf(label.What!) : $"{NameOf(label.What!)}, at {PortName(label.Port) ?? label.Port}");

    /// <summary>Places that hold anything, in order: bag 2 before bag 10.</summary>
    public IReadOnlyList<string> PlacesInUse() =>
        [.. Engine.Parts.Keys.Select(id => Part(id).Where).Concat(Engine.Joints.Keys.SelectMany(id => Joint(id).Lots.Select(l => l.Where)))
            .Where(w => w.Spot == Spot.Place).Select(w => w.Name).Distinct().Order(Whereabouts.ByName)];

    /// <summary>Parts and fasteners in a place.</summary>
    public (IReadOnlyList<string> Parts, IReadOnlyList<(string Joint, Lot Lot)> Lots) ContentsOf(string place)
    {
        var there = Whereabouts.Place(place);
        return (
            [.. Engine.Parts.Keys.Where(id => Part(id).Where == there)],
            [.. Engine.Joints.Keys.SelectMany(id => Joint(id).Lots.Where(l => l.Where == there).Select(lot => (id, lot)))]);
    }
}
