using System.Globalization;
using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>When a step of the first start has its turn.</summary>
public enum StartPhase
{
    Prime,
    Watch,
    After,
}

/// <summary>One step of the first start. Common practice, no source.</summary>
/// <param name="Stop">Stop at once if it shows; empty for nothing.</param>
public sealed record StartStep(string Id, StartPhase Phase, string Do, string Stop);

/// <summary>One thing that falls due while running in, by hours or by distance, whichever is met. Common practice, no source.</summary>
public sealed record RunningInDue(string Id, double Hours, double Km, string Do);

/// <summary>The first start and the running-in.</summary>
public static class FirstStart
{
    public static IReadOnlyList<StartStep> Steps { get; } =
        [.. Table.Read("first-start.psv", Table.Own("first-start.psv")).Select(r => new StartStep(r["id"], Enum.Parse<StartPhase>(r["phase"], ignoreCase: true), r["do"], r.Text("stop")))];

    public static IReadOnlyList<RunningInDue> RunningIn { get; } =
        [.. Table.Read("running-in.psv", Table.Own("running-in.psv")).Select(r => new RunningInDue(r["id"], Number(r["hours"]), Number(r["km"]), r["do"]))];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
