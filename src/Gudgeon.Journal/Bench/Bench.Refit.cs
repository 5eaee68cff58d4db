namespace Gudgeon.Journal;

/// <summary>One part on its way back.</summary>
/// <param name="WaitsFor">Parts that must be on first; empty when it can go on now.</param>
public sealed record RefitStep(string Part, IReadOnlyList<string> WaitsFor)
{
    public bool IsReady => WaitsFor.Count == 0;
}

public sealed partial class Bench
{
    /// <summary>
    /// The way back: the other way round than it came apart. A part waits for every part that needed it off first,
    /// for those are deeper in; what came off last and waits for nothing is next.
    /// </summary>
    public IReadOnlyList<RefitStep> WayBackOn()
    {
        var off = Engine.Parts.Values.Where(p => Part(p.Id).IsOff).Select(p => p.Id).ToArray();
        var waits = off.ToDictionary(id => id, _ => new List<string>());
        foreach (var deeper in off)
        {
            foreach (var outer in Part(deeper).OffBefore)
            {
                if (outer != deeper && waits.TryGetValue(outer, out var list))
                {
                    list.Add(deeper);
                }
            }
        }

        return
        [
            .. off
                .Select(id => new RefitStep(id, waits[id]))
                .OrderBy(s => !s.IsReady)
                .ThenByDescending(s => Part(s.Part).OffAt)
                .ThenByDescending(s => Part(s.Part).OffBy),
        ];
    }

    /// <summary>Whether a joint was ever counted, undone or done.</summary>
    public bool IsTouched(string joint) => joints.ContainsKey(joint);
}
