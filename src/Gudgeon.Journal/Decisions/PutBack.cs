using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>A part goes back on, and its fasteners when they were told.</summary>
/// <param name="Fasteners">How many went in; null when nobody said.</param>
/// <param name="Fresh">How many of them are new.</param>
/// <param name="All">False when some are still to come.</param>
/// <param name="How">Torque, angle, wrench, as said.</param>
/// <param name="Override">Why a gate is closed over its findings; null to let the gate refuse.</param>
public sealed record PutBack(string Part, int? Fasteners = null, int Fresh = 0, bool All = true, string How = "", string? Override = null) : Request
{
    public override Outcome<IReadOnlyList<Entry>> Decide(Bench bench)
    {
        if (bench.NoSuchPart(Part) is { } missing)
        {
            return Outcome.Refused<IReadOnlyList<Entry>>(missing);
        }

        var entries = new List<Entry>();
        var state = bench.Part(Part);
        var joint = bench.Engine.JointsOf(Part).FirstOrDefault(id => bench.Joint(id).IsOpen) ?? bench.Engine.JointsOf(Part).FirstOrDefault();
        if (state.IsOff || Fasteners is null || joint is null)
        {
            if (bench.GateClosedBy(Part) is { } gate)
            {
                var (closed, refusals) = GateDecision.Close(bench, gate, Part, Override);
                if (closed is null)
                {
                    return Outcome.Refused<IReadOnlyList<Entry>>(refusals);
                }

                entries.Add(closed);
            }

            entries.Add(new PartOn(Part));
        }

        if (Fasteners is { } count && joint is not null)
        {
            entries.Add(new FastenersIn(joint, count, Fresh, All, How));
        }

        return Outcome.Of<IReadOnlyList<Entry>>(entries);
    }
}
