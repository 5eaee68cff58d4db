using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>What a piece of work takes for one, from low to high.</summary>
/// <param name="IsGuess">True while it comes from the tables; false when the owner said it.</param>
public readonly record struct Span(double Low, double High, bool IsGuess)
{
    /// <summary>The middle, in whole seconds: what plans count with.</summary>
    public long Seconds => (long)Math.Round((Low + High) * 30);
}

/// <summary>
/// Minutes for parts, lines and operations: the owner's where told, else the tables' guess by kind, else from the
/// fasteners. The tables' minutes are common practice, no source.
/// </summary>
internal static class WorkMinutes
{
    private static readonly Dictionary<string, string> idOfOperation = new()
    {
        ["op:drain-oil"] = "drain",
        ["op:drain-coolant"] = "drain",
        ["op:engine-out"] = "engine-out",
        ["op:gearbox-down"] = "gearbox",
        ["op:on-stand"] = "stand",
        ["op:set-tdc"] = "set-tdc",
        ["op:mark-rods"] = "label",
    };

    /// <summary>Where the tables say nothing: an operation of its own, minutes (common practice, no source).</summary>
    private static readonly Span plainOperation = new(5, 15, true);

    /// <summary>A look at the engine to answer a yes or no, minutes (common practice, no source).</summary>
    public static readonly Span Look = new(1, 3, true);

    public static Span OfPart(Bench bench, Part part)
    {
        if (Told(bench, part.Id) is { } told)
            return told;
        if (Guides.MinutesFor(part.Kind) is { } usual)
            return Of(usual);
        var (low, high) = (0.0, 0.0);
        foreach (var joint in bench.Engine.JointsOf(part.Id).Select(id => bench.Engine.Joints[id]).Where(j => j.IsCounted))
        {
            var state = bench.Joint(joint.Id);
            var bolt = Guides.Minutes(joint.Tightening.Any(t => t is "TA" or "ST") ? "staged-bolt" : "bolt")!;
            low += bolt.Low * (state.Required is { } counted ? Math.Max(state.In, state.Phase == JointPhase.AsFound ? counted : 0) : joint.Guess.Fewest);
            high += bolt.High * (state.Required is { } known ? Math.Max(state.In, state.Phase == JointPhase.AsFound ? known : 0) : joint.Guess.Most);
        }

        var label = Guides.Minutes("label")!;
        return new Span(low + label.Low, high + label.High, true);
    }

    public static Span OfLine(Bench bench, Line line) =>
        Told(bench, line.Id) ?? Of(Guides.Minutes(line.Circuit == Circuit.Electrical ? "wire" : line.Kind.StartsWith("l-hp", StringComparison.Ordinal) ? "union" : "hose")!);

    public static Span OfOperation(Bench bench, Operation operation) =>
        Told(bench, operation.Id) ?? (idOfOperation.TryGetValue(operation.Id, out var id) ? Of(Guides.Minutes(id)!) : plainOperation);

    public static Span OfWashing(Bench bench) => Told(bench, MinutesTold.Washing) ?? Of(Guides.Minutes(MinutesTold.Washing)!);

    /// <summary>So many studs in, each as long as a bolt out.</summary>
    public static Span OfStuds(int count) => Guides.Minutes("bolt") is { } bolt ? new Span(bolt.Low * count, bolt.High * count, true) : default;

    /// <summary>So many readings, one after the other.</summary>
    public static Span OfReadings(Bench bench, int count)
    {
        var one = Told(bench, MinutesTold.Reading) ?? Of(Guides.Minutes(MinutesTold.Reading)!);
        return new Span(one.Low * count, one.High * count, one.IsGuess);
    }

    private static Span? Told(Bench bench, string id) => bench.MinutesOf(id) is { } minutes ? new Span(minutes, minutes, false) : null;

    private static Span Of(UsualMinutes usual) => new(usual.Low, usual.High, true);
}
