using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>What somebody wants to get at.</summary>
/// <param name="Id">Its node in the network.</param>
/// <param name="Name">In words.</param>
public sealed record ReachTarget(string Id, string Name)
{
    /// <summary>True for a place that has to be open, with nothing undone by it: a joint, a measuring place.</summary>
    public bool IsPlace { get; init; }

    /// <summary>The thing whose access rule holds for the place; empty for none.</summary>
    public string AccessOf { get; init; } = "";

    /// <summary>What has to be off for the place to be open.</summary>
    public IReadOnlyList<string> Needs { get; init; } = [];

    /// <summary>A part off, a line parted, an operation done, a joint or a port in reach, by id.</summary>
    public static Outcome<ReachTarget> Of(Bench bench, string id)
    {
        if (bench.Engine.Joints.TryGetValue(id, out var joint) && bench.NoSuchJoint(id) is null)
            return Outcome.Of(new ReachTarget($"at:{id}", bench.NameOf(id)) { IsPlace = true, AccessOf = joint.Part });
        if (bench.Engine.Lines.TryGetValue(id, out var line) && !line.IsPassage && !bench.Line(id).IsAbsent)
            return Outcome.Of(new ReachTarget(id, line.Name));
        if (bench.Engine.Operations.TryGetValue(id, out var operation))
            return Outcome.Of(new ReachTarget(id, operation.Name));
        if (bench.Engine.Lines.Values.FirstOrDefault(l => l.From.Id == id || l.To.Id == id) is { } opened && !bench.Line(opened.Id).IsAbsent)
            return opened.IsPassage ? OpenPassage(bench, opened, id) : Outcome.Of(new ReachTarget(opened.Id, opened.Name));
        return bench.NoSuchPart(id) is { } missing ? Outcome.Refused<ReachTarget>(missing) : Outcome.Of(new ReachTarget(id, bench.NameOf(id)));
    }

    /// <summary>A characteristic on one place of a part: the part off, or what works in the place off where the part stays.</summary>
    public static Outcome<ReachTarget> Measuring(Bench bench, string part, string characteristic, int place = 1)
    {
        if (bench.NoSuchPart(part) is { } missing)
            return Outcome.Refused<ReachTarget>(missing);
        var found = Characteristics.All.Where(c => c.Id == characteristic || string.Equals(c.Name, characteristic, StringComparison.OrdinalIgnoreCase))
            .Select(c => (Characteristic: c, Places: bench.Places.On(bench.Engine.Parts[part], c))).FirstOrDefault(x => x.Places.Count > 0);
        if (found.Characteristic is null)
        {
            var there = bench.Places.On(bench.Engine.Parts[part]).Select(x => x.Characteristic.Name);
            return Outcome.Refused<ReachTarget>(new Refusal(bench.NameOf(part), $"\"{characteristic}\"", $"what is measured on it: {string.Join(", ", there.DefaultIfEmpty("nothing"))}", "Choose one of these"));
        }

        if (found.Places.FirstOrDefault(p => p.Number == place) is not { } at)
            return Outcome.Refused<ReachTarget>(new Refusal(bench.NameOf(part), $"{found.Characteristic.Place} {place}", $"1 to {found.Places.Count}", "Count them again"));
        var stays = bench.Engine.CarrierOf(part) is null;
        var needs = InTheWay(bench, at.Key).Concat(stays ? [] : [part]).Where(id => bench.NoSuchPart(id) is null);
        return Outcome.Of(new ReachTarget($"at:{part}:{found.Characteristic.Id}:{place}", $"{found.Characteristic.Name}, {at.Name}") { IsPlace = true, Needs = [.. needs.Distinct()] });
    }

    private static Outcome<ReachTarget> OpenPassage(Bench bench, Line passage, string port)
    {
        // A drilled passage opens with the joint between its ends: the outer of the two comes off.
        var (here, there) = port == passage.From.Id ? (passage.From.Part, passage.To.Part) : (passage.To.Part, passage.From.Part);
        var outer = bench.Engine.CarrierOf(here) == there ? here : bench.Engine.CarrierOf(there) == here ? there : here;
        return bench.NoSuchPart(outer) is { } missing
            ? Outcome.Refused<ReachTarget>(missing)
            : Outcome.Of(new ReachTarget($"at:{port}", $"port {port}") { IsPlace = true, Needs = [outer] });
    }

    /// <summary>What works in a place and hides it while it is there. Common practice, no source.</summary>
    private static IEnumerable<string> InTheWay(Bench bench, string key)
    {
        var words = key.Split(' ');
        var index = words.Length > 1 ? words[1] : "";
        var parts = bench.Engine.Parts.Values;
        return (words[0] switch
        {
            "cyl" => parts.Where(p => p.Kind == "piston" && string.Join('.', p.Index) == index),
            "main" => parts.Where(p => p.Kind == "crank"),
            "pin" => parts.Where(p => p.Kind == "rod-cap" && string.Join('.', p.Index) == index),
            "valve" => parts.Where(p => p.Kind is "valve-in" or "valve-ex" && string.Join('.', p.Index) == index),
            "cam" => parts.Where(p => p.Kind == "cam" && (index.Length == 0 || string.Join('.', p.Index) == index)),
            _ => [],
        }).Select(p => p.Id);
    }
}
