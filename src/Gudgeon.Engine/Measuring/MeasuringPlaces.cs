using System.Globalization;
using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>Where the characteristics of the tables lie on one engine.</summary>
public sealed class MeasuringPlaces
{
    private readonly Dictionary<string, Part> parts;
    private readonly EngineAnswers? answers;
    private readonly Dictionary<string, List<Part>> byKind;

    /// <param name="parts">The parts that are there, in the tables' order.</param>
    /// <param name="answers">What the engine was built from, or null: then the places on one part cannot be counted and one is taken.</param>
    public MeasuringPlaces(IEnumerable<Part> parts, EngineAnswers? answers)
    {
        this.answers = answers;
        this.parts = parts.ToDictionary(p => p.Id);
        byKind = this.parts.Values.GroupBy(p => p.Kind).ToDictionary(g => g.Key, g => g.ToList());
    }

    /// <summary>What can be measured on this part, each with its places there.</summary>
    public IReadOnlyList<(Characteristic Characteristic, IReadOnlyList<MeasuringPlace> Places)> On(Part part) =>
        [.. Characteristics.For(part.Kind).Select(c => (c, On(part, c))).Where(x => x.Item2.Count > 0)];

    /// <summary>The places of one characteristic on one part; empty when it is measured elsewhere on this engine.</summary>
    public IReadOnlyList<MeasuringPlace> On(Part part, Characteristic characteristic)
    {
        if (part.Kind == "own")
            return [new MeasuringPlace(part.Id, 1, part.Name, part.Id)];
        foreach (var options in characteristic.Carriers)
        {
            // The first kind that the engine has: a bore is the liner's where there are liners.
            var carrier = options.FirstOrDefault(o => byKind.ContainsKey(o.Kind));
            if (carrier is null || carrier.Kind != part.Kind || (carrier.Only > 0 && part.Index.FirstOrDefault(1) != carrier.Only))
                continue;
            if (carrier.Count.Length == 0)
                return [new MeasuringPlace(part.Id, 1, part.Name, KeyOf(part, characteristic.Key))];
            var count = answers is null ? 1 : (int)Formula.Value(carrier.Count, answers.AllFigures);
            return [.. Enumerable.Range(1, count).Select(i => new MeasuringPlace(part.Id, i, count == 1 ? characteristic.Place : $"{characteristic.Place} {i}", $"{characteristic.Key} {i}"))];
        }

        return [];
    }

    /// <summary>Every place of a characteristic, in the order of the parts.</summary>
    public IReadOnlyList<MeasuringPlace> All(Characteristic characteristic) =>
        [.. characteristic.Carriers.SelectMany(o => o).Select(o => o.Kind).Append("own").Distinct()
            .SelectMany(k => byKind.GetValueOrDefault(k) ?? []).SelectMany(p => On(p, characteristic))];

    /// <summary>The place of another characteristic that mates with this one: crankpin 2 for rod 2, guide 3.4 for the second exhaust valve of cylinder 3.</summary>
    public MeasuringPlace? Mate(MeasuringPlace place, Characteristic own, Characteristic other)
    {
        var here = parts[place.Part];
        var same = On(here, other);
        if (same.FirstOrDefault(p => p.Number == place.Number) is { } mate)
            return mate;
        var key = own.Key == "cyl" && other.Key == "pin" ? $"pin {PinOf(place.Key)}" : place.Key;
        return All(other).FirstOrDefault(p => p.Key == key);
    }

    private string KeyOf(Part part, string key)
    {
        var index = part.Index.Count == 0 ? [1] : part.Index;
        return key switch
        {
            "valve" => $"valve {index[0]}.{ValveOf(part, index)}",
            "cyl" => $"cyl {part.Cylinder ?? index[0]}",
            "-" => part.Id,
            _ => $"{key} {string.Join('.', index)}",
        };
    }

    /// <summary>Exhaust valves are numbered by themselves; guides, seats and springs count the inlet ones first.</summary>
    private int ValveOf(Part part, IReadOnlyList<int> index)
    {
        var own = index.Count > 1 ? index[1] : 1;
        return part.Kind == "valve-ex" ? own + (byKind.GetValueOrDefault("valve-in") ?? []).Count(p => p.Cylinder == part.Cylinder) : own;
    }

    private string PinOf(string key)
    {
        var cylinder = int.Parse(key.AsSpan(4), CultureInfo.InvariantCulture);
        if (answers is null || answers["pinshare"] != "shared")
            return $"{cylinder}";
        var pins = (int)answers.Figure("pins");
        return answers["numbering"] == "alternating" ? $"{(cylinder + 1) / 2}" : $"{(cylinder - 1) % pins + 1}";
    }
}
