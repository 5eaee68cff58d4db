using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Fasteners;

/// <summary>The workings of a tightened joint.</summary>
public static class TighteningWorkings
{
    /// <summary>How the preload of a torque was reached.</summary>
    public static Working Preload(Torque torque, double wrenchTolerance, ScrewThread thread, JointFriction friction, Preload preload) => Workings.Of(
        "fasteners.preload-by-friction", $"preload of {thread.Designation}",
        [
            new("T", "torque", torque.NewtonMetres, "N·m", torque.NewtonMetres * wrenchTolerance / Math.Sqrt(3)),
            new("P", "thread pitch", thread.PitchMm, "mm"),
            new("d2", "pitch diameter", thread.PitchDiameterMm, "mm"),
            new("μG", "friction in the thread", friction.Thread.Mid, "1", friction.Thread.StandardUncertainty),
            new("μK", "friction under the head", friction.Bearing.Mid, "1", friction.Bearing.StandardUncertainty),
            new("Db", "mean bearing diameter", friction.BearingDiameter.Millimetres, "mm"),
        ],
        new("F", "preload", preload.Likely.Newtons, "N", preload.StandardUncertainty.Newtons));
}
