using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(LabelMade), "label-made")]
public abstract partial record Entry;

/// <summary>A thing or a place got a code of its own, for a label to be printed or written.</summary>
/// <param name="Code">See <see cref="LabelCode"/>.</param>
/// <param name="What">Id of a part, joint or line; null for a place.</param>
/// <param name="Place">A bag, tray, box, shelf; null for a thing.</param>
/// <param name="Port">Which end of the line, by port id; hose and port carry the same code there.</param>
public sealed record LabelMade(string Code, string? What = null, string? Place = null, string? Port = null) : Entry
{
    public override IEnumerable<string> About() => What is null ? [] : [What];

    public override Refusal? Check(Bench bench)
    {
        var read = LabelCode.Read(Code);
        var place = Whereabouts.Place(Place);
        return !read.Ok ? read.Refusals[0]
            : bench.Labels.TryGetValue(Code, out var other) ? new Refusal($"label {Code}", $"it is on the {bench.LabelName(other)}", "a code of its own", "Take the next code")
            : (What is null) == (Place is null) ? new Refusal($"label {Code}", "neither a thing nor a place, or both", "one of them", "Say what the label is for")
            : Place is not null && place.Spot != Spot.Place ? new Refusal($"label {Code}", $"\"{Place}\"", "a bag, tray, box or shelf", "Say what is written on it")
            : What is not null && !bench.Knows(What) ? new Refusal($"label {Code}", $"\"{What}\"", "a thing of this engine", "Look at its name")
            : Port is not null && !(bench.Engine.Lines.TryGetValue(What ?? "", out var line) && (line.From.Id == Port || line.To.Id == Port)) ? new Refusal($"label {Code}", $"\"{Port}\"", "an end of that line", "Choose one of its ends")
            : bench.LabelOn(What, Place, Port) is { } there ? new Refusal($"label {Code}", $"label {there} is on it already", "a thing without a label", $"Print {there} again")
            : null;
    }

    public override string Words(Bench bench) => $"Label {Code} for {bench.LabelName(this)}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Labels[Code] = this;
}
