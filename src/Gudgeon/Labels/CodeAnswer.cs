using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Pages;

namespace Gudgeon.Labels;

/// <summary>One row of an answer: a thing, where it goes, and the page that knows more.</summary>
public sealed record CodeRow(string Thing, string GoesTo, string Path, string? Card = null);

/// <summary>What a label is on and where that goes, taken out of the bench in one look.</summary>
public sealed record CodeAnswer(string Slug, string Book, string What, string Stands, IReadOnlyList<CodeRow> Rows, IReadOnlyList<string> Photos)
{
    private const int MostPhotos = 6;

    public static CodeAnswer Of(string slug, Bench bench, LabelMade label) =>
        label.Place is { } place ? OfPlace(slug, bench, place)
        : bench.Engine.Lines.TryGetValue(label.What!, out var line) ? OfLine(slug, bench, line, label)
        : bench.Engine.Joints.TryGetValue(label.What!, out var joint) ? OfJoint(slug, bench, joint)
        : OfPart(slug, bench, label.What!);

    private static CodeAnswer OfPlace(string slug, Bench bench, string place)
    {
        var (parts, lots) = bench.ContentsOf(place);
        return new CodeAnswer(slug, bench.Title, place, parts.Count + lots.Count == 0 ? "The book has nothing in it." : $"{Counted(parts.Count, "part")}, {Counted(lots.Sum(l => l.Lot.Count), "fastener")}.",
            [
                .. parts.Select(id => new CodeRow(bench.NameOf(id), GoesTo(bench, id), $"part/{id}")),
                .. lots.Select(l => new CodeRow(l.Lot.Words, $"hold the {bench.NameOf(bench.Engine.Joints[l.Joint].Part)}", $"part/{bench.Engine.Joints[l.Joint].Part}", CardOf(bench, l.Joint))),
            ],
            Seen(bench, [.. parts, .. lots.Select(l => l.Joint)]));
    }

    private static CodeAnswer OfPart(string slug, Bench bench, string part) => new(slug, bench.Title, bench.NameOf(part),
        $"It is {bench.Part(part).Where.Words(bench.NameOf)}; {GoesTo(bench, part)}.",
        [.. bench.Engine.JointsOf(part).Select(id => bench.Engine.Joints[id]).Where(j => j.IsCounted).Select(j => Fasteners(bench, j))],
        Seen(bench, [part, .. bench.Engine.JointsOf(part)]));

    private static CodeAnswer OfJoint(string slug, Bench bench, Joint joint) =>
        new(slug, bench.Title, $"fasteners of the {bench.NameOf(joint.Id)}", $"They hold the {bench.NameOf(joint.Part)}.", [Fasteners(bench, joint)], Seen(bench, [joint.Id, joint.Part]));

    private static CodeAnswer OfLine(string slug, Bench bench, Line line, LabelMade label)
    {
        var state = bench.Line(line.Id);
        var end = label.Port is null ? "" : $" This label is at the end that goes to: {bench.PortName(label.Port)}.";
        var other = new[] { line.From, line.To }.FirstOrDefault(p => p.Id != label.Port);
        return new CodeAnswer(slug, bench.Title, line.Name,
            $"{(state.IsParted ? "Parted" : "Joined")}{(state.Tag.Length > 0 ? $", tag {state.Tag}" : "")}. The same code is on the hose and on the port: they belong together.{end}",
            [.. new[] { line.From, line.To }.Select(p => new CodeRow(p.Id == label.Port ? "this end" : "other end", $"goes to {bench.PortName(p.Id)}{(state.Caps.Contains(p.Id) ? ", a cap is in it: take it out first" : "")}", p.IsOutside ? $"find?q={Uri.EscapeDataString(line.Name)}" : $"part/{p.Part}"))],
            Seen(bench, [line.Id, line.From.Id, line.To.Id]));
    }

    private static CodeRow Fasteners(Bench bench, Joint joint) =>
        new(bench.NameOf(joint.Id).Sentence(), string.Join("; ", bench.Lots(joint)) is { Length: > 0 } lots ? lots : bench.Fasteners(joint), $"part/{joint.Part}", CardOf(bench, joint.Id));

    private static string GoesTo(Bench bench, string part) =>
        bench.Engine.CarrierOf(part) is { } carrier ? $"goes on the {bench.NameOf(carrier)}" : "nothing is known that carries it";

    private static string? CardOf(Bench bench, string joint) => bench.PinPattern(joint).Count > 0 ? $"card/{joint}" : null;

    private static string[] Seen(Bench bench, IReadOnlyList<string> ids) => [.. bench.PhotosOf(ids).Where(p => p.CanBeSeen).Take(MostPhotos).Select(p => p.Hash)];

    private static string Counted(int count, string word) => count == 1 ? $"1 {word}" : $"{count} {word}s";
}
