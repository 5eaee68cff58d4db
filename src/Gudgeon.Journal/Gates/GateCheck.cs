using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>One thing that keeps a gate open.</summary>
/// <param name="IsFirm">True where no override helps.</param>
public sealed record GateFinding(Finding Finding, bool IsFirm)
{
    /// <summary>The characteristic that was never read; empty for other findings.</summary>
    public string Characteristic { get; init; } = "";

    /// <summary>Ids of the parts on which it was never read.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];
}

/// <summary>What must be true before a point of no easy return, and is not.</summary>
public static class GateCheck
{
    /// <summary>The findings of a gate when this part (or operation) is about to close it.</summary>
    public static IReadOnlyList<GateFinding> Of(Bench bench, Gate gate, string closing)
    {
        var closer = bench.Engine.Parts.GetValueOrDefault(closing);
        var soft = Parts(bench, gate, closer)
            .Concat(Plugs(bench, gate, closer))
            .Concat(StillIn(bench, gate, closer))
            .Concat(BeforeItCloses(bench, gate, closer))
            .Concat(Bags(bench, gate, closer))
            .Concat(Ports(bench, gate))
            .Concat(MeasureFindings.Against(bench, gate.Readings))
            .Concat(Washed(bench, gate, closer))
            .Concat(Looks(bench, gate, closing))
            .Where(f => Exceptions.Of(bench, f) is null)
            .Select(f => new GateFinding(f, false));
        return [.. Joints(bench, gate, closer), .. GateReadings.NotTaken(bench, gate, closer, p => Concerns(p, closer)), .. soft];
    }

    /// <summary>Readings that a gate asks for before this part closes it and that were never taken: part, characteristic, how many spots wait.</summary>
    public static IReadOnlyList<(string Part, Characteristic Characteristic, int Missing)> ReadingsBefore(Bench bench, Gate gate, Part closer)
    {
        var assessor = new Assessor(bench);
        return
        [
            .. from finding in GateReadings.NotTaken(bench, gate, closer, p => Concerns(p, closer))
               let characteristic = Characteristics.Find(finding.Characteristic)!
               from part in finding.Parts
               let places = bench.Places.On(bench.Engine.Parts[part], characteristic)
               select (part, characteristic, characteristic.IsRead ? places.Sum(place => assessor.Of(characteristic, place).Missing) : 0),
        ];
    }

    /// <summary>What lies on another bank than the closing part is none of its business.</summary>
    private static bool Concerns(Part part, Part? closer) =>
        closer?.Bank is not { } bank || part.Bank is not { } other || bank == other;

    private static IEnumerable<GateFinding> Joints(Bench bench, Gate gate, Part? closer) =>
        from joint in bench.Engine.Joints.Values
        let firm = gate.Firm.Contains(joint.Kind)
        where (firm || gate.Final.Contains(joint.Kind)) && joint.Part != closer?.Id
        where Concerns(bench.Engine.Parts[joint.Part], closer) && !bench.Part(joint.Part).IsAbsent
        from finding in NotTight(bench, joint)
        select new GateFinding(finding, firm);

    private static IEnumerable<Finding> NotTight(Bench bench, Joint joint)
    {
        var state = bench.Joint(joint.Id);
        if (state.IsOpen)
            yield return new(FindingNames.JointOpen, joint.Id, bench.NameOf(joint.Id), state.Required is { } n ? $"{state.In} of {n} fasteners in" : "not counted, not tight", "Tighten it, and say how many");
        else if (!bench.IsFinal(joint.Id))
            yield return TighteningFindings.NotFinal(bench, joint);
        if (TighteningFindings.UsedAgain(bench, joint) is { } again && Exceptions.Of(bench, again) is null)
            yield return again;
        if (TighteningFindings.Stretched(bench, joint) is { } stretched && Exceptions.Of(bench, stretched) is null)
            yield return stretched;
    }

    private static IEnumerable<Finding> Parts(Bench bench, Gate gate, Part? closer) =>
        from part in bench.Engine.Parts.Values
        where gate.Back.Contains(part.Kind) && part.Id != closer?.Id && Concerns(part, closer) && bench.Part(part.Id).IsOff
        select new Finding(FindingNames.PartOff, part.Id, part.Name, bench.Part(part.Id).Where.Words(bench.NameOf), "Put it back first");

    private static IEnumerable<Finding> Plugs(Bench bench, Gate gate, Part? closer) => !gate.Empty.Contains(Register.Plugs) ? [] :
        from line in bench.Engine.Lines.Values
        from cap in bench.Line(line.Id) is { IsAbsent: false } state ? state.Caps : []
        let part = bench.Engine.Parts.GetValueOrDefault(cap[..cap.LastIndexOf('.')])
        where part is null || Concerns(part, closer)
        select new Finding(FindingNames.CapIn, line.Id, cap, "a cap or plug is in", "Take it out");

    private static IEnumerable<Finding> StillIn(Bench bench, Gate gate, Part? closer) => !gate.Empty.Contains(Register.Plugs) ? [] :
        from item in bench.Register.Values
        where item.Left > 0
        let part = item.Put.Part is { } id ? bench.Engine.Parts.GetValueOrDefault(id) : null
        where part is null || Concerns(part, closer)
        select SmallThings.StillIn(bench, item);

    /// <summary>Small parts and studs of what is inside, and of the joint that closes it: they go in before the part does.</summary>
    private static IEnumerable<Finding> BeforeItCloses(Bench bench, Gate gate, Part? closer) =>
        from joint in bench.Engine.Joints.Values
        where bench.IsTouched(joint.Id) && bench.Joint(joint.Id) is { Small.Count: > 0 } or { Studs.Out: > 0 }
        let part = bench.Engine.Parts[joint.Part]
        where part.Id == closer?.Id || ((gate.Back.Contains(part.Kind) || gate.Final.Contains(joint.Kind)) && Concerns(part, closer))
        from finding in SmallThings.Short(bench, joint).Concat(StudCount.NotBack(bench, joint))
        select finding;

    private static IEnumerable<Finding> Bags(Bench bench, Gate gate, Part? closer) => !gate.Empty.Contains(Register.Bags) ? [] :
        from joint in bench.Engine.Joints.Values
        where bench.IsTouched(joint.Id) && joint.Part != closer?.Id
        let part = bench.Engine.Parts[joint.Part]
        where (gate.Back.Contains(part.Kind) || gate.Final.Contains(joint.Kind)) && Concerns(part, closer)
        let left = bench.Joint(joint.Id).AtHand
        where left > 0
        select new Finding(FindingNames.BagFull, joint.Id, bench.NameOf(joint.Id), $"{left} fasteners still out", "Fit them, or say that they are scrapped");

    private static IEnumerable<Finding> Ports(Bench bench, Gate gate) => !gate.Empty.Contains(Register.Ports) ? [] :
        from line in bench.Engine.Lines.Values
        where bench.Line(line.Id) is { IsParted: true, IsAbsent: false }
        select new Finding(FindingNames.LineParted, line.Id, line.Name, "parted", "Join it");

    /// <summary>What a shop worked on is washed before it is closed in; the block before the crank lies in it.</summary>
    private static IEnumerable<Finding> Washed(Bench bench, Gate gate, Part? closer) =>
        from part in bench.Engine.Parts.Values
        where bench.Part(part.Id).NeedsWash && part.Id != closer?.Id
        where gate.Back.Contains(part.Kind) || (closer?.Kind == "crank" && bench.IsBase(part.Id))
        where Concerns(part, closer)
        select new Finding(FindingNames.NotWashed, part.Id, part.Name, "back from a shop and not washed since", "Wash it, brush and blow its oilways, oil it at once, and say so");

    private static IEnumerable<Finding> Looks(Bench bench, Gate gate, string closing) =>
        from look in gate.Looks
        where !bench.HasLooked(gate, closing, look)
        select new Finding(FindingNames.LookOpen, gate.Id, gate.Name, $"not yet looked: {look.TrimEnd('.')}", "Look, and tick it");
}
