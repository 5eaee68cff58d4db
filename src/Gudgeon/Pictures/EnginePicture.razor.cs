using System.Globalization;
using Gudgeon.Engine;
using Microsoft.AspNetCore.Components;

namespace Gudgeon.Pictures;

/// <summary>How a part is drawn.</summary>
public enum Drawn
{
    On,
    Waits,
    Off,
}

/// <summary>The engine as on a drawing board: what is on is filled, what is off is an outline, what waits is hatched.</summary>
public sealed partial class EnginePicture
{
    [Parameter, EditorRequired] public required EngineModel Engine { get; set; }
    [Parameter, EditorRequired] public required IReadOnlyDictionary<string, string> Answers { get; set; }
    [Parameter, EditorRequired] public required Func<string, Drawn> StateOf { get; set; }
    [Parameter, EditorRequired] public required Func<string, bool> IsThere { get; set; }
    [Parameter, EditorRequired] public required Func<string, string> Href { get; set; }

    private IEnumerable<Drawing> Drawings
    {
        get
        {
            var size = DrawnSizes.From(Answers);
            Drawing[] all = size.Layout == "radial"
                ? [EndView.Of(Engine, size, IsThere)]
                : [SideView.Of(Engine, size, IsThere), EndView.Of(Engine, size, IsThere)];
            return all.Where(d => d.Outlines.Count > 0);
        }
    }

    private string NameOf(string part) => Engine.Parts[part].Name;

    private static string Words(Drawn state) => state switch { Drawn.On => "on", Drawn.Waits => "waits", _ => "off" };

    private static string Class(Drawn state) => state switch { Drawn.On => "on", Drawn.Waits => "waits", _ => "off" };

    private static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
