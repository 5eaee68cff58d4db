namespace Gudgeon.Journal;

/// <summary>How one photo stands: what it shows and the pins in it.</summary>
public sealed class PhotoState(PhotoTaken taken, Recorded recorded)
{
    private readonly SortedDictionary<string, PinState> pins = new(StringComparer.Ordinal);

    public string Hash => taken.Photo;

    public PhotoTaken Taken => taken;

    /// <summary>The entry that brought it in.</summary>
    public Recorded Recorded => recorded;

    /// <summary>What the owner said it shows; empty when nobody said.</summary>
    public IReadOnlyList<string> Of { get; internal set; } = taken.Of ?? [];

    public IReadOnlyDictionary<string, PinState> Pins => pins;

    /// <summary>Whether there is a picture to look at, not only a file that was kept.</summary>
    public bool CanBeSeen => taken.Width > 0;

    internal void Put(PinState pin) => pins[pin.Id] = pin;

    internal void Pull(string pin) => pins.Remove(pin);
}

/// <summary>One pin in a photo.</summary>
/// <param name="X">Part of the width from the left, 0 to 1.</param>
/// <param name="Y">Part of the height from the top, 0 to 1.</param>
/// <param name="What">Joint, port or part; null for a name alone.</param>
/// <param name="Number">Which fastener of the joint, from 1.</param>
/// <param name="Size">Of the fastener, as said; empty while nobody said.</param>
/// <param name="IsBack">Whether the fastener is back in its hole; null while nobody said.</param>
public sealed record PinState(string Id, decimal X, decimal Y, string? What, int? Number, string Name, string Size = "", bool? IsBack = null);
