using Gudgeon.Sums;

namespace Gudgeon.Journal;

public sealed partial class Bench
{
    /// <summary>Parts away at a shop, with what was sent.</summary>
    internal Dictionary<string, PartSent> Away { get; } = [];

    internal Refusal? NoSuchPart(string id) =>
        !Engine.Parts.ContainsKey(id) ? new Refusal("part", $"\"{id}\"", "a part of this engine", "Look at its name, or add it as a part that the tables lack")
        : Part(id).IsAbsent ? new Refusal(NameOf(id), "this engine does not have it", "a part of this engine", "Strike out the entry that said so if it does")
        : null;

    internal Refusal? NoSuchJoint(string id) =>
        !Engine.Joints.TryGetValue(id, out var joint) ? new Refusal("joint", $"\"{id}\"", "a joint of this engine", "Look at its name, or add the part that it holds")
        : Part(joint.Part).IsAbsent ? new Refusal(NameOf(id), "this engine does not have it", "a joint of this engine", "Strike out the entry that said so if it does")
        : null;

    internal Refusal? NoSuchLine(string id) =>
        !Engine.Lines.ContainsKey(id) ? new Refusal("line", $"\"{id}\"", "a line of this engine", "Look at its name, or add it as a line that the tables lack")
        : Line(id).IsAbsent ? new Refusal(NameOf(id), "this engine does not have it", "a line of this engine", "Strike out the entry that said so if it does")
        : null;

    internal Refusal? NotAtHand(string part) => Part(part).Where.Spot is Spot.Place or Spot.Unplaced
        ? null
        : new Refusal(NameOf(part), $"it is {Part(part).Where.Words(NameOf)}", "a part that is off and at hand", "Take it off first, or say that it came back");

    internal Refusal? NoPlaceForPart(string part, string? to) => Whereabouts.Place(to).Spot == Spot.OwnHoles
        ? new Refusal(NameOf(part), "its own holes as its place", "a bag, tray, box, shelf or other place, for own holes are for fasteners", "Say where the part itself is")
        : null;

    /// <summary>Names in a row; the same kind of thing is counted: <c>fuel rail and 4 injectors</c>.</summary>
    public string Several(IEnumerable<string> ids)
    {
        var groups = ids
            .GroupBy(id => Engine.Parts.TryGetValue(id, out var part) && part.Kind != "own" ? part.Kind : id)
            .Select(g => g.Count() == 1 ? NameOf(g.First()) : $"{g.Count()} {PluralOf(g.Select(NameOf))}")
            .ToArray();
        return groups.Length switch
        {
            0 => "nothing",
            1 => groups[0],
            _ => $"{string.Join(", ", groups[..^1])} and {groups[^1]}",
        };
    }

    /// <summary>The name of many: the words that all have in common, without place numbers; the last takes an s.</summary>
    private static string PluralOf(IEnumerable<string> names)
    {
        var all = names.Select(n => n.Split(' ')).ToArray();
        var words = all[0].Where(w => w.Length > 0 && !char.IsAsciiDigit(w[0])).ToArray();
        var common = words.Where(w => all.All(n => n.Contains(w))).ToArray();
        var plain = string.Join(' ', common.Length > 0 ? common : words);
        return plain.EndsWith('s') || plain.EndsWith('x') || plain.EndsWith("ch", StringComparison.Ordinal) ? $"{plain}es" : $"{plain}s";
    }
}
