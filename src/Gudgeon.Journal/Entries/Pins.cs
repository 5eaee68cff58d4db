using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(PinSet), "pin-set")]
[JsonDerivedType(typeof(PinMoved), "pin-moved")]
[JsonDerivedType(typeof(PinMarked), "pin-marked")]
[JsonDerivedType(typeof(PinRemoved), "pin-removed")]
public abstract partial record Entry;

/// <summary>A pin went into a photo: on a fastener of a joint, on a port, on a part.</summary>
/// <param name="Pin">The pin's id within its photo, given by the sender.</param>
/// <param name="X">Part of the width from the left of the upright picture, 0 to 1.</param>
/// <param name="Y">Part of the height from the top of the upright picture, 0 to 1.</param>
/// <param name="What">Id of the joint, port or part; null for a pin that only has a name.</param>
/// <param name="Number">Which fastener of the joint, from 1.</param>
/// <param name="Name">What the owner calls it; empty for none.</param>
public sealed record PinSet(string Photo, string Pin, decimal X, decimal Y, string? What = null, int? Number = null, string Name = "") : Entry
{
    private const int MostFasteners = 999;

    public override IEnumerable<string> About() => What is null ? [] : [What];

    public override Refusal? Check(Bench bench)
    {
        if (bench.NoSuchPhoto(Photo) is { } missing)
        {
            return missing;
        }

        var pins = bench.Photos[Photo].Pins;
        return string.IsNullOrWhiteSpace(Pin) ? new Refusal("pin", "no id", "an id of its own", "Send the form again")
            : pins.ContainsKey(Pin) ? new Refusal($"pin {Pin}", "it is in the photo already", "a new pin", "Move it instead")
            : OutsideOf(X, Y)
            ?? (What is not null && !bench.Knows(What) && bench.PortName(What) is null ? new Refusal("pin", $"\"{What}\"", "a joint, port or part of this engine", "Look at its name") : null)
            ?? (Number is not null && (What is null || !bench.Engine.Joints.ContainsKey(What)) ? new Refusal("pin", $"fastener {Number} of nothing", "the joint that the fastener is of", "Choose the joint") : null)
            ?? (Number is < 1 or > MostFasteners ? new Refusal("pin", $"fastener {Number}", $"1 to {MostFasteners}", "Count from 1") : null)
            ?? (Number is not null && pins.Values.Any(p => p.What == What && p.Number == Number)
                ? new Refusal("pin", $"a second pin for fastener {Number} of the {bench.NameOf(What!)}", "one pin for each fastener in a photo", "Move the one that is there, or give the next number")
                : null)
            ?? (What is null && string.IsNullOrWhiteSpace(Name) ? new Refusal("pin", "neither a thing nor a name", "a thing of this engine, or a name", "Say what the pin is on") : null);
    }

    public override string Words(Bench bench) => $"Pin on {bench.PinName(What, Number, Name)}";

    internal override void Apply(Bench bench, Recorded recorded) =>
        bench.Photos[Photo].Put(new PinState(Pin, X, Y, What, Number, Name));

    internal static Refusal? OutsideOf(decimal x, decimal y) =>
        x is < 0 or > 1 || y is < 0 or > 1 ? new Refusal("pin", $"{x}, {y}", "a place on the photo, from 0 to 1 each way", "Put the pin on the photo") : null;
}

/// <summary>A pin was put elsewhere on its photo.</summary>
public sealed record PinMoved(string Photo, string Pin, decimal X, decimal Y) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => bench.NoSuchPin(Photo, Pin) ?? PinSet.OutsideOf(X, Y);

    public override string Words(Bench bench) => $"Pin on {bench.PinName(Photo, Pin)} moved";

    internal override void Apply(Bench bench, Recorded recorded) =>
        bench.Photos[Photo].Put(bench.Photos[Photo].Pins[Pin] with { X = X, Y = Y });
}

/// <summary>What is known of the fastener under a pin: its size, whether it is back, its name.</summary>
/// <param name="Size">As said, <c>M8x45</c>; null to leave it.</param>
/// <param name="IsBack">True when it is back in its hole, false when it is out; null to leave it.</param>
/// <param name="Name">What the owner calls it; null to leave it.</param>
public sealed record PinMarked(string Photo, string Pin, string? Size = null, bool? IsBack = null, string? Name = null) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => bench.NoSuchPin(Photo, Pin)
        ?? (Size is null && IsBack is null && Name is null ? new Refusal("pin", "nothing to change", "a size, a name, or whether it is back", "Fill in what you know") : null);

    public override string Words(Bench bench)
    {
        var told = new[] { Size is { Length: > 0 } ? Size : null, IsBack is null ? null : IsBack.Value ? "back in its hole" : "out", Name is { Length: > 0 } ? $"called {Name}" : null };
        return $"{bench.PinName(Photo, Pin)}: {string.Join(", ", told.Where(t => t is not null))}";
    }

    internal override void Apply(Bench bench, Recorded recorded)
    {
        var pin = bench.Photos[Photo].Pins[Pin];
        bench.Photos[Photo].Put(pin with { Size = Size ?? pin.Size, IsBack = IsBack ?? pin.IsBack, Name = Name ?? pin.Name });
    }
}

/// <summary>A pin was taken out of its photo.</summary>
public sealed record PinRemoved(string Photo, string Pin) : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => bench.NoSuchPin(Photo, Pin);

    public override string Words(Bench bench) =>
        bench.Photos.GetValueOrDefault(Photo)?.Pins.ContainsKey(Pin) == true ? $"Pin on {bench.PinName(Photo, Pin)} taken out" : "Pin taken out";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Photos[Photo].Pull(Pin);
}
