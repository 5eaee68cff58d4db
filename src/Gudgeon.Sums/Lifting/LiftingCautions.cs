namespace Gudgeon.Sums.Lifting;

/// <summary>What stands above every figure of a lift. The figures are no training and no release.</summary>
public static class LiftingCautions
{
    /// <summary>For everything that hangs.</summary>
    public const string Hanging = "Keep everybody clear of a hanging load and of the floor below it. Defer to local codes and licensed practice.";

    /// <summary>For slings, eyes and shackles.</summary>
    public const string Gear = "Only gear whose rating can be read on it counts; leave out any other piece. Defer to local codes and licensed practice.";

    /// <summary>For the crane.</summary>
    public const string Crane = "Wheel a loaded crane slowly, load low, over a swept level floor. Defer to local codes and licensed practice.";

    /// <summary>For the stand.</summary>
    public const string Stand = "A heavy side swings round: pin in, two hands, body out of its way. Defer to local codes and licensed practice.";
}
