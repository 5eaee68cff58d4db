using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>"Is it all back?": nothing, or the list of all that is not.</summary>
public static class AllBack
{
    /// <summary>Everything that was taken off, undone, parted or capped and is not back. Empty means that the engine is whole.</summary>
    public static IReadOnlyList<Finding> MissingFrom(Bench bench) => [.. Exceptions.Open(bench, Everything(bench))];

    /// <summary>The same with what stands for a reason.</summary>
    internal static IEnumerable<Finding> Everything(Bench bench) =>
    [
        .. Parts(bench), .. Joints(bench), .. StudCount.NotBack(bench), .. TighteningFindings.NotFinal(bench), .. Lines(bench), .. SmallThings.StillIn(bench), .. SmallThings.Short(bench),
        .. Operations(bench), .. FluidAccount.Short(bench),
    ];

    private static IEnumerable<Finding> Operations(Bench bench) =>
        from operation in bench.Engine.Operations.Values
        where operation.IsTakenBack && bench.IsDone(operation.Id)
        select new Finding(FindingNames.OperationOpen, operation.Id, operation.Name, "done, and not taken back", "Take it back and say so");

    private static IEnumerable<Finding> Parts(Bench bench)
    {
        foreach (var part in bench.Engine.Parts.Values)
        {
            var where = bench.Part(part.Id).Where;
            switch (where.Spot)
            {
                case Spot.Place or Spot.Unplaced:
                    yield return new(FindingNames.PartOff, part.Id, part.Name, $"off, {where.Words(bench.NameOf)}", "Put it back");
                    break;
                case Spot.Shop:
                    yield return new(FindingNames.PartAway, part.Id, part.Name, where.Words(bench.NameOf), "Get it back");
                    break;
                case Spot.Scrap:
                    yield return new(FindingNames.PartScrapped, part.Id, part.Name, "scrapped, no new one on", "Get a new one");
                    break;
                default:
                    break;
            }
        }
    }

    private static IEnumerable<Finding> Joints(Bench bench) =>
        from joint in bench.Engine.Joints.Values
        where bench.IsTouched(joint.Id) && !bench.Part(joint.Part).IsAbsent
        let state = bench.Joint(joint.Id)
        where state.IsOpen
        select new Finding(FindingNames.JointOpen, joint.Id, bench.NameOf(joint.Id), StandWords(joint, state), "Put its fasteners back and say how many");

    private static string StandWords(Joint joint, JointState state) =>
        !joint.IsCounted ? "not back"
        : state.Required is { } required ? $"{state.In} of {required} back{(state.Short > 0 ? $", {state.Short} missing" : "")}"
        : $"{state.In} back, never counted";

    private static IEnumerable<Finding> Lines(Bench bench)
    {
        foreach (var line in bench.Engine.Lines.Values)
        {
            var state = bench.Line(line.Id);
            if (state is { IsParted: true, IsAbsent: false })
            {
                yield return new(FindingNames.LineParted, line.Id, line.Name, $"parted{(state.Tag.Length > 0 ? $", tag \"{state.Tag}\"" : "")}", "Join it");
            }

            foreach (var cap in state.IsAbsent ? [] : state.Caps)
            {
                yield return new(FindingNames.CapIn, line.Id, cap, "a cap or plug is in", "Take it out");
            }
        }
    }
}
