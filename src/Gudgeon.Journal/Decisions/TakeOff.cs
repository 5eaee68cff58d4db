using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>
/// A part came off. What is still joined to it comes along; its fasteners are told when they were counted.
/// </summary>
/// <param name="Lots">The fasteners of its joint; empty when nobody counted.</param>
/// <param name="To">Where the part went.</param>
/// <param name="Joint">Which joint the lots belong to; null for the part's own first counted one.</param>
/// <param name="All">False when some are still in.</param>
public sealed record TakeOff(string Part, IReadOnlyList<OutLot>? Lots = null, string? To = null, string? Joint = null, bool All = true) : Request
{
    public override Outcome<IReadOnlyList<Entry>> Decide(Bench bench)
    {
        if (bench.NoSuchPart(Part) is { } missing)
        {
            return Outcome.Refused<IReadOnlyList<Entry>>(missing);
        }

        var entries = new List<Entry>();
        if (Lots is { Count: > 0 })
        {
            var joint = Joint ?? bench.Engine.JointsOf(Part).FirstOrDefault(id => bench.Engine.Joints[id].IsCounted) ?? bench.Engine.JointsOf(Part).FirstOrDefault();
            if (joint is null)
            {
                return Outcome.Refused<IReadOnlyList<Entry>>(new Refusal(bench.NameOf(Part), "fasteners for a part that nothing holds", "a part with a joint", "Say what it is fixed to first"));
            }

            entries.Add(new FastenersOut(joint, Lots, All));
        }

        var riding = bench.Part(Part).IsRiding ? bench.Part(Part).Where.Name : null;
        entries.Add(new PartOff(Part, bench.RidersOf(Part), Whereabouts.PlaceName(To) is { Length: > 0 } place ? place : null, riding));
        return Outcome.Of<IReadOnlyList<Entry>>(entries);
    }
}
