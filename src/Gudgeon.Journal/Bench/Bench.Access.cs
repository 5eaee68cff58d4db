using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>What still stands in the way of one target: all of <see cref="First"/>, and one way through each of <see cref="Choices"/>.</summary>
public sealed record Blockers(IReadOnlyList<Need> First, IReadOnlyList<Choice> Choices)
{
    public static readonly Blockers None = new([], []);

    public bool IsNone => First.Count == 0 && Choices.Count == 0;
}

public sealed partial class Bench
{
    /// <summary>Whether one need is met as things stand. A way of working (spring compressor) is met whenever it is wanted.</summary>
    public bool IsMet(Need need) => need.Sort switch
    {
        NeedSort.PartOff => !Engine.Parts.ContainsKey(need.Id) || !Part(need.Id).IsOn,
        NeedSort.LineParted => !Engine.Lines.ContainsKey(need.Id) || Line(need.Id) is { IsParted: true } or { IsAbsent: true },
        NeedSort.Fact => Answer(need.Id) == true,
        _ => !Engine.Operations.TryGetValue(need.Id, out var op) || !op.Lasts || IsDone(need.Id),
    };

    /// <summary>Why this part cannot come off yet, or this operation be done; nothing when it can.</summary>
    public Blockers BlockersOf(string target)
    {
        if (!Engine.Access.TryGetValue(target, out var access))
        {
            return Blockers.None;
        }

        // A part that is off already, with this one riding on it, stands in nobody's way.
        var first = access.First.Where(n => !IsMet(n)).ToArray();
        var choices = access.Choices.Where(c => !c.Sets.Any(set => set.All(IsMet))).ToArray();
        return first.Length + choices.Length == 0 ? Blockers.None : new Blockers(first, choices);
    }

    /// <summary>Every part that the tables or the owner say must or may be off before this one.</summary>
    private IEnumerable<string> NeedsOff(string target)
    {
        if (!Engine.Access.TryGetValue(target, out var access))
        {
            return [];
        }

        return access.First
            .Concat(access.Choices.SelectMany(c => c.Sets).SelectMany(s => s))
            .Where(n => n.Sort == NeedSort.PartOff && Engine.Parts.ContainsKey(n.Id))
            .Select(n => n.Id);
    }

    /// <summary>Parts on the engine, or riding on something off, that can be taken off now.</summary>
    public IEnumerable<Part> CanComeOff() =>
        Engine.Parts.Values.Where(p => Part(p.Id) is { } s && (s.IsOn || s.IsRiding) && BlockersOf(p.Id).IsNone && HasCarrier(p.Id));

    /// <summary>Parts still on that cannot come off yet.</summary>
    public IEnumerable<Part> HeldBack() =>
        Engine.Parts.Values.Where(p => Part(p.Id).IsOn && !BlockersOf(p.Id).IsNone && HasCarrier(p.Id));

    private bool HasCarrier(string part) => !IsBase(part);

    /// <summary>The block itself comes off nothing: it carries the rest and nothing carries it.</summary>
    public bool IsBase(string part) => Engine.CarrierOf(part) is null && Engine.CarriedBy(part).Count > 0;
}
