namespace Gudgeon.Sums.Fasteners;

/// <summary>A preload with the spread that its method leaves.</summary>
/// <param name="LikelyN">Preload at the middle of every band, N.</param>
/// <param name="LeastN">Preload with low torque and high friction, N.</param>
/// <param name="MostN">Preload with high torque and low friction, N.</param>
/// <param name="StandardUncertaintyN">Standard uncertainty from friction and wrench, each rectangular and independent, N.</param>
public sealed record Preload(double LikelyN, double LeastN, double MostN, double StandardUncertaintyN)
{
    /// <summary>Most over least: the tightening factor αA of the joint.</summary>
    public double TighteningFactor => MostN / LeastN;
}
