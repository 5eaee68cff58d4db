using Gudgeon.Engine;

namespace Gudgeon.Pictures;

/// <summary>Collects a drawing: an outline is drawn only for a part that this engine has.</summary>
internal sealed class Sketch(EngineModel engine, Func<string, bool> isThere)
{
    private readonly List<Outline> outlines = [];
    private readonly List<string> centres = [];
    private readonly List<Caption> captions = [];

    /// <summary>The engine's parts of one kind, in the order of their places.</summary>
    public IReadOnlyList<Part> Of(params ReadOnlySpan<string> kinds)
    {
        var found = new List<Part>();
        foreach (var kind in kinds)
            found.AddRange(engine.Parts.Values.Where(p => p.Kind == kind && isThere(p.Id)));
        return found;
    }

    /// <summary>The first part of the first kind that there is.</summary>
    public void Draw(string path, params ReadOnlySpan<string> kinds)
    {
        if (Of(kinds) is [{ } part, ..])
            outlines.Add(new Outline(part.Id, path));
    }

    public void Draw(string path, Part part) => outlines.Add(new Outline(part.Id, path));

    public void Centre(string path) => centres.Add(path);

    public void Say(double x, double y, string text, bool small = false) => captions.Add(new Caption(x, y, text, small));

    public Drawing Done(string title, double width, double height) => new(title, width, height, outlines, centres, captions);
}
