using Gudgeon.Engine;

namespace Gudgeon.Journal;

public sealed partial class Bench
{
    private readonly SortedDictionary<string, WrenchKept> wrenches = new(StringComparer.Ordinal);

    /// <summary>The owner's torque wrenches by id, those no longer used too.</summary>
    public IReadOnlyDictionary<string, WrenchKept> Wrenches => wrenches;

    public string WrenchName(string wrench) => wrenches.TryGetValue(wrench, out var kept) ? kept.Name : wrench;

    /// <summary>Thread inserts of a joint, in order.</summary>
    public IReadOnlyList<InsertFitted> InsertsOf(string joint) => Joint(joint).Inserts;

    internal void Keep(WrenchKept wrench) => wrenches[wrench.Wrench] = wrench;

    /// <summary>Whether the fasteners of a joint are in and every stage of its procedure is done; where no procedure was typed, whether they are in.</summary>
    public bool IsFinal(string joint)
    {
        var state = Joint(joint);
        return !state.IsOpen && !state.Tightening.IsSpoilt && (!IsTouched(joint) || state.Phase == JointPhase.AsFound || state.Required is null || state.Tightening.Procedure is null || state.Tightening.Next(state.Required.Value) is null);
    }

    /// <summary>Whether the fasteners of a joint are used once: the manual says, else the tables where they are sure.</summary>
    public bool IsOneUse(Joint joint) => Joint(joint.Id).Tightening.Procedure?.Renew ?? joint.OneUse == OneUse.Yes;
}
