using Gudgeon.Sums;
using Gudgeon.Sums.Fasteners;

namespace Gudgeon.Journal;

public sealed partial class Bench
{
    /// <summary>A photo further than this from any work is not matched by its time.</summary>
    public static readonly TimeSpan PhotoReach = TimeSpan.FromMinutes(30);

    /// <summary>Photos by hash.</summary>
    public Dictionary<string, PhotoState> Photos { get; } = [];

    /// <summary>How far the clock of each camera is ahead.</summary>
    public Dictionary<string, TimeSpan> CameraClocks { get; } = [];

    internal void Add(PhotoState photo) => Photos[photo.Hash] = photo;

    /// <summary>When a photo was taken: the camera's time, put right by what is known of its clock. Null where its file does not say.</summary>
    public DateTimeOffset? TimeOf(PhotoState photo) =>
        photo.Taken.CameraTime is { } time ? time - CameraClocks.GetValueOrDefault(photo.Taken.Camera) : null;

    /// <summary>The entry about the engine that was done nearest to when the photo was taken, within <see cref="PhotoReach"/>.</summary>
    public Recorded? WorkNear(PhotoState photo) => TimeOf(photo) is not { } time
        ? null
        : told.Where(r => r.Entry is not (PhotoTaken or PhotoAbout or PinSet) && r.Entry.About().Any() && (r.At - time).Duration() <= PhotoReach).MinBy(r => (r.At - time).Duration());

    /// <summary>What a photo shows: what was said, or else what its time says.</summary>
    public IReadOnlyList<string> ShownIn(PhotoState photo) => photo.Of.Count > 0 ? photo.Of : [.. WorkNear(photo)?.Entry.About() ?? []];

    /// <summary>Photos in the order in which they were taken, then as they came.</summary>
    public IReadOnlyList<PhotoState> PhotosInOrder() => [.. Photos.Values.OrderBy(p => TimeOf(p) ?? p.Recorded.At).ThenBy(p => p.Recorded.Number)];

    /// <summary>Photos that show any of these things, or hold a pin on one.</summary>
    public IReadOnlyList<PhotoState> PhotosOf(params IReadOnlyList<string> ids) =>
        [.. PhotosInOrder().Where(p => ShownIn(p).Intersect(ids).Any() || p.Pins.Values.Any(pin => pin.What is not null && ids.Contains(pin.What)))];

    /// <summary>
    /// Where the fasteners of a joint sit, from the photo with the most numbered pins of it: what tightening orders are worked out from.
    /// In pixels of that photo; empty when no photo has two of them.
    /// </summary>
    public IReadOnlyList<(int Number, PlanePoint Place)> PinPattern(string joint)
    {
        var best = Photos.Values.MaxBy(p => Numbered(p, joint).Count());
        var places = best is null ? [] : Numbered(best, joint).OrderBy(pin => pin.Number).Select(pin => (pin.Number!.Value, PlaceOf(best, pin))).ToArray();
        return places.Length > 1 ? places : [];
    }

    private static IEnumerable<PinState> Numbered(PhotoState photo, string joint) =>
        photo.CanBeSeen ? photo.Pins.Values.Where(pin => pin.What == joint && pin.Number is not null) : [];

    private static PlanePoint PlaceOf(PhotoState photo, PinState pin) => new((double)pin.X * photo.Taken.Width, (double)pin.Y * photo.Taken.Height);

    /// <summary>The name of a port, or null when no line ends there. Ends of lines that the owner added have no name of their own.</summary>
    public string? PortName(string port)
    {
        if (Engine.Lines.Values.FirstOrDefault(l => l.From.Id == port || l.To.Id == port) is not { } line)
        {
            return null;
        }

        var found = line.From.Id == port ? line.From : line.To;
        var part = found.IsOutside ? "vehicle" : NameOf(found.Part);
        return found.Name.StartsWith(line.Id, StringComparison.Ordinal) ? part : $"{part}, {found.Name}";
    }

    /// <summary>What a pin is on, in words.</summary>
    public string PinName(string? what, int? number, string name)
    {
        var thing = what is null ? "" : PortName(what) ?? NameOf(what);
        var whole = number is { } n ? $"fastener {n} of the {thing}" : thing;
        return name.Length == 0 ? whole : whole.Length == 0 ? name : $"{name} ({whole})";
    }

    internal string PinName(string photo, string pin) =>
        Photos.GetValueOrDefault(photo)?.Pins.GetValueOrDefault(pin) is { } state ? PinName(state.What, state.Number, state.Name) : pin;

    internal Refusal? NoSuchPhoto(string photo) => Photos.ContainsKey(photo)
        ? null
        : new Refusal("photo", $"\"{photo}\"", "a photo of this book", "Add the photo first");

    internal Refusal? NoSuchPin(string photo, string pin) => NoSuchPhoto(photo)
        ?? (Photos[photo].Pins.ContainsKey(pin) ? null : new Refusal($"pin {pin}", "no such pin", "a pin of this photo", "Open the photo again: it may have been taken out"));
}
