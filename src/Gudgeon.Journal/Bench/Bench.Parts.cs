using Gudgeon.Engine;

namespace Gudgeon.Journal;

public sealed partial class Bench
{
    /// <summary>Parts that go along when this one comes off: everything that it carries and that is not off by itself.</summary>
    public IReadOnlyList<string> RidersOf(string part)
    {
        var riders = new List<string>();
        Gather(part);
        return riders;

        void Gather(string carrier)
        {
            foreach (var id in Engine.CarriedBy(carrier))
            {
                var state = Part(id);
                if (state.IsOn || (state.IsRiding && CarrierNow(id) == carrier))
                {
                    riders.Add(id);
                    Gather(id);
                }
            }
        }
    }

    /// <summary>The part that this one rides on directly, by the tables or by what was recorded.</summary>
    private string? CarrierNow(string part) => Engine.CarrierOf(part);

    /// <summary>The part that is off and on which this one rides; itself when it does not ride.</summary>
    public string UnitOf(string part)
    {
        var state = Part(part);
        return state.IsRiding ? state.Where.Name : part;
    }

    /// <summary>Parts that ride on this one: some of those that it carries, or that they carry.</summary>
    public IEnumerable<string> RidingOn(string unit)
    {
        var below = new Stack<string>(Engine.CarriedBy(unit));
        while (below.TryPop(out var id))
        {
            if (Part(id).Where == Whereabouts.Riding(unit))
            {
                yield return id;
            }

            foreach (var carried in Engine.CarriedBy(id))
            {
                below.Push(carried);
            }
        }
    }

    /// <summary>Takes a part and what rides on it out of where they were, into one place.</summary>
    internal void MoveOff(string part, IReadOnlyList<string> riders, Whereabouts to, Recorded recorded)
    {
        HashSet<string> unit = [part, .. riders];
        var before = NeedsOff(part).Where(id => !unit.Contains(id) && !Part(id).IsOn).Distinct().ToArray();
        CorrectGuesses(part, unit);
        var state = ChangePart(part);
        state.Where = to;
        state.OffBy = recorded.Number;
        state.OffAt = recorded.At;
        state.OffBefore = before;
        state.Renewed = false;
        foreach (var rider in riders)
        {
            ChangePart(rider).Where = Whereabouts.Riding(part);
        }

        foreach (var id in Engine.JointsOf(part))
        {
            Loosen(ChangeJoint(id));
        }

        foreach (var joint in riders.SelectMany(Engine.JointsOf).Select(id => Engine.Joints[id]))
        {
            // A rider's second joint, to something that stays, had to be undone as well.
            if (joint.FixedTo.Count > 0 && joint.FixedTo.All(to => !unit.Contains(to)))
            {
                Loosen(ChangeJoint(joint.Id));
            }
        }

        foreach (var line in unit.SelectMany(Engine.LinesOf).Distinct().Select(id => Engine.Lines[id]))
        {
            if (!line.IsPassage && unit.Contains(line.From.Part) != unit.Contains(line.To.Part))
            {
                ImplyParted(line, recorded);
            }
        }
    }

    /// <summary>The state of a joint that fasteners are told of: if the tables thought that it has none, they were wrong.</summary>
    internal JointState ChangeCounted(string joint)
    {
        if (!Engine.Joints[joint].IsCounted)
        {
            Engine.Replace(Engine.Joints[joint] with { Fasteners = ["fastener"] });
        }

        return ChangeJoint(joint);
    }

    private static void Loosen(JointState joint)
    {
        // What was counted and not told of is out all the same, and somewhere.
        joint.Move(l => l.Where.Spot == Spot.Engine, joint.In, Whereabouts.Unplaced);
        joint.Phase = JointPhase.Undone;
    }

    private void ImplyParted(Line line, Recorded recorded)
    {
        var state = ChangeLine(line.Id);
        if (!state.IsParted && !state.IsAbsent)
        {
            state.IsParted = true;
            state.IsImplied = true;
            state.Found.Clear();
            state.PartedAt = recorded.At;
        }
    }

    /// <summary>
    /// Reality wins: what the tables held back and came off all the same was a wrong guess, and is taken out of the model.
    /// </summary>
    private void CorrectGuesses(string part, HashSet<string> unit)
    {
        if (!Engine.Access.TryGetValue(part, out var access))
        {
            return;
        }

        var first = access.First.Where(n => IsMet(n) || unit.Contains(n.Id)).ToArray();
        var choices = access.Choices.Where(c => c.Sets.Any(set => set.All(IsMet))).ToArray();
        if (first.Length < access.First.Count || choices.Length < access.Choices.Count)
        {
            Engine.Set(access with { First = first, Choices = choices });
        }
    }

    /// <summary>What is still on the block goes along with it.</summary>
    internal void MoveBaseAway(string part)
    {
        foreach (var rider in RidersOf(part))
        {
            ChangePart(rider).Where = Whereabouts.Riding(part);
        }
    }

    /// <summary>Puts a part, and what rides on it, back where it is carried.</summary>
    internal void MoveOn(string part)
    {
        var state = ChangePart(part);
        var carrier = CarrierNow(part);
        var carrierState = carrier is null ? null : Part(carrier);
        var onEngine = carrierState is null || carrierState.IsOn || carrierState.IsAbsent;
        var to = onEngine ? Whereabouts.Engine : Whereabouts.Riding(UnitOf(carrier!));
        foreach (var rider in RidingOn(part).ToArray())
        {
            ChangePart(rider).Where = to;
        }

        state.Where = to;
        foreach (var id in Engine.JointsOf(part).Where(id => !Engine.Joints[id].IsCounted))
        {
            ChangeJoint(id).Phase = JointPhase.Done;
        }
    }
}
