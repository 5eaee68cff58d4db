using Gudgeon.Engine;

namespace Gudgeon.Journal;

public sealed partial class Bench
{
    private readonly List<AccessLearned> learned = [];

    /// <summary>Access that was learned on this engine, in order.</summary>
    public IReadOnlyList<AccessLearned> Learned => learned;

    internal void Learn(AccessLearned access)
    {
        learned.Add(access);
        var old = Engine.Access.GetValueOrDefault(access.Target) ?? new Access(access.Target, [], [], []);
        var needs = access.Needs.Select(n => new Need(n)).Where(n => !old.First.Contains(n));
        Engine.Set(old with { First = [.. old.First, .. needs] });
        if (Engine.Parts.ContainsKey(access.Target) && !Part(access.Target).IsOn)
        {
            // Learned after the fact: the part is off already, and the way back must keep to it all the same.
            var state = ChangePart(access.Target);
            state.OffBefore = [.. state.OffBefore.Union(access.Needs.Where(Engine.Parts.ContainsKey))];
        }
    }

    /// <summary>
    /// The chain of what must come first from <paramref name="from"/> back to <paramref name="to"/>, in words; null when there is none.
    /// A new rule that makes the chain a ring could never be worked.
    /// </summary>
    internal string? WayBack(string from, string to)
    {
        var cameFrom = new Dictionary<string, string>();
        var queue = new Queue<string>([from]);
        while (queue.TryDequeue(out var at))
        {
            if (at == to)
            {
                return Chain(at);
            }

            foreach (var need in Engine.Access.GetValueOrDefault(at)?.First ?? [])
            {
                if (need.Id != from && cameFrom.TryAdd(need.Id, at))
                {
                    queue.Enqueue(need.Id);
                }
            }
        }

        return null;

        string Chain(string end)
        {
            var names = new List<string> { NameOf(end) };
            while (end != from)
            {
                end = cameFrom[end];
                names.Add(NameOf(end));
            }

            return string.Join(" before ", names);
        }
    }
}
