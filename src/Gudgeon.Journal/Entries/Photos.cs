using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(PhotoTaken), "photo-taken")]
[JsonDerivedType(typeof(PhotoAbout), "photo-about")]
[JsonDerivedType(typeof(CameraClock), "camera-clock")]
public abstract partial record Entry;

/// <summary>A photo came into the book. Its file lies in the book's folder under its hash.</summary>
/// <param name="Photo">SHA-256 of the file as it came, in lower-case hex: the photo's id.</param>
/// <param name="Type">jpeg, png, webp or heic, by content.</param>
/// <param name="Width">Pixels, turned upright; 0 where the picture cannot be opened here.</param>
/// <param name="Height">Pixels, turned upright; 0 where the picture cannot be opened here.</param>
/// <param name="Name">What the file was called.</param>
/// <param name="Camera">What the file says of its camera; its clock is corrected as a whole.</param>
/// <param name="CameraTime">When it was taken by the camera's own clock; null where the file does not say.</param>
/// <param name="Of">What it shows, where the sender said so.</param>
public sealed record PhotoTaken(
    string Photo, string Type, int Width, int Height, string Name = "", string Camera = "", DateTimeOffset? CameraTime = null, IReadOnlyList<string>? Of = null) : Entry
{
    private const int HashLength = 64;

    public override IEnumerable<string> About() => Of ?? [];

    public override Refusal? Check(Bench bench) =>
        Photo.Length != HashLength || !Photo.All(c => char.IsAsciiDigit(c) || c is >= 'a' and <= 'f')
            ? new Refusal("photo", $"\"{Photo}\"", "the SHA-256 of its file in lower-case hex", "Add the file again")
            : bench.Photos.ContainsKey(Photo) ? new Refusal("photo", "it is in the book already", "a photo that is new to the book", "Nothing to do here")
            : Width < 0 || Height < 0 ? new Refusal("photo", $"{Width} by {Height} pixels", "a size of 0 or more", "Add the file again")
            : (Of ?? []).FirstOrDefault(id => !bench.Knows(id)) is { } stranger ? new Refusal("photo", $"\"{stranger}\"", "a thing of this engine", "Look at its name")
            : null;

    public override string Words(Bench bench) =>
        $"Photo{(Name.Length > 0 ? $" \"{Name}\"" : "")} added{(Of is { Count: > 0 } of ? $", of {bench.Several(of)}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Add(new PhotoState(this, recorded));
}

/// <summary>What a photo shows was said, or said again: the whole list.</summary>
public sealed record PhotoAbout(string Photo, IReadOnlyList<string> Of) : Entry
{
    public override IEnumerable<string> About() => Of;

    public override Refusal? Check(Bench bench) => bench.NoSuchPhoto(Photo)
        ?? (Of.FirstOrDefault(id => !bench.Knows(id)) is { } stranger ? new Refusal("photo", $"\"{stranger}\"", "a thing of this engine", "Look at its name") : null);

    public override string Words(Bench bench) => $"Photo shows {bench.Several(Of)}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Photos[Photo].Of = Of;
}

/// <summary>How far the clock of a camera is ahead, learned from a photo of the book's clock page or told. Holds for every photo of that camera.</summary>
/// <param name="Ahead">Negative for a clock that is behind.</param>
public sealed record CameraClock(string Camera, TimeSpan Ahead) : Entry
{
    /// <summary>A clock further out than this is a wrong year: a mistake is likelier than such a camera.</summary>
    private static readonly TimeSpan Furthest = TimeSpan.FromDays(40 * 366);

    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench) => Ahead.Duration() > Furthest
        ? new Refusal("camera clock", $"{Ahead.TotalDays:0} days out", "less than forty years", "Look at both times again")
        : null;

    public override string Words(Bench bench) => Ahead == TimeSpan.Zero
        ? $"The clock of {CameraName} is right"
        : $"The clock of {CameraName} is {Ahead.Duration():d\\.hh\\:mm\\:ss} {(Ahead > TimeSpan.Zero ? "ahead" : "behind")}";

    private string CameraName => Camera.Length > 0 ? $"the camera \"{Camera}\"" : "a camera that does not name itself";

    internal override void Apply(Bench bench, Recorded recorded) => bench.CameraClocks[Camera] = Ahead;
}
