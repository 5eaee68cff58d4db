namespace Gudgeon.Pictures;

/// <summary>A box of a layered picture.</summary>
/// <param name="Lines">What is written in it, one or two lines.</param>
public sealed record LayerBox(string Id, double X, double Y, IReadOnlyList<string> Lines, bool IsLast);

/// <summary>A line from the foot of one box to the head of another.</summary>
public sealed record LayerEdge(double FromX, double FromY, double ToX, double ToY);

/// <summary>A thing to draw and what it rests on.</summary>
public sealed record LayerItem(string Id, string Label, int Layer, IReadOnlyList<string> After);

/// <summary>
/// What rests on what, in layers from the top down: each box stands below all that it rests on. Two boxes side by side, so
/// that it is read on a phone; links that a longer chain already shows are left out.
/// </summary>
public sealed record Layers(double Height, IReadOnlyList<LayerBox> Boxes, IReadOnlyList<LayerEdge> Edges)
{
    public const double Width = 360;
    public const double BoxWidth = 168;
    public const double BoxHeight = 40;
    private const double Gap = 24;
    private const double Between = 8;
    private const int Columns = 2;
    private const int Letters = 24;

    public static Layers Of(IReadOnlyList<LayerItem> items)
    {
        var place = new Dictionary<string, (double X, double Y)>();
        var links = Needed(items);
        var last = items.Count == 0 ? 0 : items.Max(i => i.Layer);
        var y = 4.0;
        foreach (var layer in items.GroupBy(i => i.Layer).OrderBy(g => g.Key))
        {
            // What rests on the left stands left, so that links cross less.
            var row = layer.OrderBy(i => links[i.Id].Select(id => place[id].X).DefaultIfEmpty(Width / 2).Average()).ToArray();
            for (var k = 0; k < row.Length; k++)
            {
                var alone = row.Length == 1 || (k == row.Length - 1 && k % Columns == 0);
                place[row[k].Id] = (alone ? (Width - BoxWidth) / 2 : 4 + (k % Columns * (Width - BoxWidth - 8)), y + (k / Columns * (BoxHeight + Between)));
            }

            y += ((row.Length + Columns - 1) / Columns * (BoxHeight + Between)) - Between + Gap;
        }

        return new Layers(
            y - Gap + 4,
            [.. items.Select(i => new LayerBox(i.Id, place[i.Id].X, place[i.Id].Y, Wrap(i.Label), i.Layer == last))],
            [.. items.SelectMany(i => links[i.Id].Select(id => new LayerEdge(place[id].X + (BoxWidth / 2), place[id].Y + BoxHeight, place[i.Id].X + (BoxWidth / 2), place[i.Id].Y)))]);
    }

    /// <summary>Links without those that follow from others.</summary>
    private static Dictionary<string, List<string>> Needed(IReadOnlyList<LayerItem> items)
    {
        var below = new Dictionary<string, HashSet<string>>();
        var links = new Dictionary<string, List<string>>();
        foreach (var item in items.OrderBy(i => i.Layer))
        {
            var after = item.After.Where(below.ContainsKey).Distinct().ToList();
            links[item.Id] = [.. after.Where(id => !after.Any(other => other != id && below[other].Contains(id)))];
            below[item.Id] = [.. after, .. after.SelectMany(id => below[id])];
        }

        return links;
    }

    private static List<string> Wrap(string label)
    {
        if (label.Length <= Letters)
            return [label];
        var cut = label.LastIndexOf(' ', Letters);
        cut = cut <= 0 ? Letters : cut;
        var rest = label[cut..].Trim();
        return [label[..cut], rest.Length <= Letters ? rest : rest[..(Letters - 1)] + "\u2026"];
    }
}
