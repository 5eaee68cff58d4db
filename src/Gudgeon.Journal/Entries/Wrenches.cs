using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(WrenchKept), "wrench-kept")]
public abstract partial record Entry;

/// <summary>A torque wrench of the owner's list. The last entry of its id counts.</summary>
/// <param name="Wrench">Short id: <c>half-inch</c>.</param>
/// <param name="LeastNm">Lowest mark of its scale, N·m.</param>
/// <param name="MostNm">Highest mark of its scale, N·m.</param>
/// <param name="AsTyped">The range as typed.</param>
/// <param name="CalibratedOn">Day of the calibration, year first, or empty.</param>
/// <param name="Gone">True when it is no longer used.</param>
public sealed record WrenchKept(string Wrench, string Name, double LeastNm, double MostNm, string AsTyped = "", string CalibratedOn = "", bool Gone = false) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) =>
        string.IsNullOrWhiteSpace(Wrench) || string.IsNullOrWhiteSpace(Name) ? new Refusal("wrench", "no name", "a name for it", "Call it what you like: the long one")
        : !(LeastNm > 0) || !(MostNm > LeastNm) || double.IsInfinity(MostNm) ? new Refusal(Name, $"a scale from {Units.Plain(LeastNm)} to {Units.Show(MostNm, "Nm")}", "more than 0, lowest mark before highest", "Read its scale again")
        : null;

    public override string Words(Bench bench) => Gone
        ? $"{Name} is no longer used"
        : $"Wrench {Name}: {Units.Plain(Math.Round(LeastNm, 1))} to {Units.Show(Math.Round(MostNm, 1), "Nm")}{(CalibratedOn.Length > 0 ? $", calibrated {CalibratedOn}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Keep(this);
}
