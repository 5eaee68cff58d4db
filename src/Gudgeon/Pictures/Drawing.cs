using System.Globalization;

namespace Gudgeon.Pictures;

/// <summary>One closed outline that stands for a part.</summary>
/// <param name="Part">The part's id; null for what is only drawn to make the rest readable.</param>
/// <param name="Path">The outline, as SVG path data.</param>
public sealed record Outline(string? Part, string Path);

/// <summary>Words in a picture.</summary>
public sealed record Caption(double X, double Y, string Text, bool Small = false);

/// <summary>A picture before it is shown: outlines from back to front, centre lines, words.</summary>
public sealed record Drawing(string Title, double Width, double Height, IReadOnlyList<Outline> Outlines, IReadOnlyList<string> CentreLines, IReadOnlyList<Caption> Captions);

/// <summary>
/// A place to draw in: own millimetres, up is up, turned about the crank centre, brought to the picture's units.
/// </summary>
/// <param name="X">Where the crank centre lies in the picture.</param>
/// <param name="Y">The same, downward.</param>
/// <param name="Scale">Picture units a millimetre.</param>
/// <param name="Turn">Radians clockwise from upright.</param>
public readonly record struct Frame(double X, double Y, double Scale, double Turn = 0)
{
    public (double X, double Y) At(double u, double v)
    {
        var (sin, cos) = Math.SinCos(Turn);
        return (X + (Scale * ((u * cos) + (v * sin))), Y + (Scale * ((u * sin) - (v * cos))));
    }

    public string Polygon(params ReadOnlySpan<(double U, double V)> corners)
    {
        var path = new System.Text.StringBuilder();
        foreach (var (u, v) in corners)
        {
            var (x, y) = At(u, v);
            path.Append(CultureInfo.InvariantCulture, $"{(path.Length == 0 ? 'M' : 'L')}{x:0.#} {y:0.#}");
        }

        return path.Append('Z').ToString();
    }

    /// <summary>A box by its lower left corner and its size.</summary>
    public string Box(double u, double v, double width, double height) =>
        Polygon((u, v), (u + width, v), (u + width, v + height), (u, v + height));

    public string Disc(double u, double v, double radius)
    {
        var (x, y) = At(u, v);
        var r = radius * Scale;
        return string.Create(CultureInfo.InvariantCulture, $"M{x - r:0.#} {y:0.#}a{r:0.#} {r:0.#} 0 1 0 {2 * r:0.#} 0a{r:0.#} {r:0.#} 0 1 0 {-2 * r:0.#} 0Z");
    }

    public string Line(double u1, double v1, double u2, double v2)
    {
        var (x1, y1) = At(u1, v1);
        var (x2, y2) = At(u2, v2);
        return string.Create(CultureInfo.InvariantCulture, $"M{x1:0.#} {y1:0.#}L{x2:0.#} {y2:0.#}");
    }
}
