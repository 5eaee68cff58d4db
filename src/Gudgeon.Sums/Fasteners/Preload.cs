using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fasteners;

/// <summary>A preload with the spread that its method leaves.</summary>
/// <param name="Likely">Preload at the middle of every band.</param>
/// <param name="Least">Preload with low torque and high friction.</param>
/// <param name="Most">Preload with high torque and low friction.</param>
/// <param name="StandardUncertainty">Standard uncertainty from friction and wrench, each rectangular and independent.</param>
public sealed record Preload(Force Likely, Force Least, Force Most, Force StandardUncertainty)
{
    /// <summary>Most over least: the tightening factor αA of the joint.</summary>
    public double TighteningFactor => Most / Least;
}
