using System.Globalization;
using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>The studs of one joint, which stay in the case, head or block; their nuts are what its lots hold.</summary>
/// <param name="Counted">How many there are; null while nobody counted.</param>
/// <param name="Out">How many came out and are not back.</param>
/// <param name="Broken">How many of those broke: new ones take their place.</param>
public readonly record struct StudCount(int? Counted, int Out, int Broken)
{
    public bool IsKnown => Counted is not null || Out > 0;

    /// <summary>How they stand, in words: <c>10 studs, 2 of them out</c>.</summary>
    public string Words() => string.Concat(
        Counted is { } n ? Many(n) : "studs not counted",
        Out > 0 ? $", {Out}{(Counted is null ? "" : " of them")} out" : Counted is null ? "" : ", all in",
        Broken > 0 ? $", {Broken} broken" : "");

    internal static string Many(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? "stud" : "studs")}");

    /// <summary>Studs that came out and are not back.</summary>
    internal static IEnumerable<Finding> NotBack(Bench bench) =>
        from joint in bench.Engine.Joints.Values
        where bench.IsTouched(joint.Id) && !bench.Part(joint.Part).IsAbsent
        from finding in NotBack(bench, joint)
        select finding;

    internal static IEnumerable<Finding> NotBack(Bench bench, Joint joint)
    {
        var studs = bench.Joint(joint.Id).Studs;
        if (studs.Out > 0)
            yield return new(FindingNames.StudOut, joint.Id, bench.NameOf(joint.Id), $"{Many(studs.Out)} out{(studs.Broken > 0 ? $", {studs.Broken} broken" : "")}", "Screw them in again before their nuts and say so");
    }
}
