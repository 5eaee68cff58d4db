namespace Gudgeon.Sums.Lifting;

/// <summary>What stands above every figure of a lift. The figures are no training and no release. A test holds the words to the book's own table of cautions.</summary>
public static class LiftingCautions
{
    /// <summary>For everything that hangs.</summary>
    public const string Hanging = "Stand clear of a hanging load, above all never under it; lift a little, stop, look, go on. Defer to local codes and licensed practice.";

    /// <summary>For slings, eyes and shackles.</summary>
    public const string Gear = "Lift only with gear whose rating can be read and is above the load: no shackle, bolt or strap without one. Defer to local codes and licensed practice.";

    /// <summary>For the crane.</summary>
    public const string Crane = "Move a loaded hoist slowly on a clean level floor, with the load as low as it will go. Defer to local codes and licensed practice.";

    /// <summary>For the stand.</summary>
    public const string Stand = "Check the stand's bolts, their length of thread and its pin; turn with both hands and your body aside. Defer to local codes and licensed practice.";
}
