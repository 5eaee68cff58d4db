using Gudgeon.Journal;
using Gudgeon.Sums;
using Gudgeon.Sums.Shapes;

namespace Gudgeon.Pages.Measure.Work;

/// <summary>A shape that is asked for, as it stands in the address.</summary>
/// <param name="Kind">One of <see cref="Kinds"/>.</param>
/// <param name="Part">The part that it is about, or empty.</param>
/// <param name="Data">Readings as typed; for a Union Jack a text for each of its eight lines.</param>
public sealed record ShapeAsked(string Kind, string Part, string Data, string Unit, string Radius, string Foot, IReadOnlyDictionary<string, string> Lines)
{
    /// <summary>The shapes with their names.</summary>
    public static readonly IReadOnlyDictionary<string, string> Kinds = new Dictionary<string, string>
    {
        ["roundness"] = "Roundness of a section",
        ["cylinder"] = "Cylinder from several sections",
        ["flatness"] = "Flatness from heights on a grid",
        ["union-jack"] = "Flatness by a Union Jack",
    };

    /// <summary>The eight lines in the order in which the foot walks them.</summary>
    public static readonly IReadOnlyList<(string Id, string Name)> Walks =
    [
        ("nwse", "Diagonal, north-west to south-east"), ("nesw", "Diagonal, north-east to south-west"), ("n", "North edge, east to west"), ("e", "East edge, north to south"),
        ("s", "South edge, east to west"), ("w", "West edge, north to south"), ("ca", "Centre, east to west"), ("cd", "Centre, north to south"),
    ];

    /// <summary>What one unit of a reading is: mm for a dial, radians for a level or an autocollimator.</summary>
    public static readonly IReadOnlyDictionary<string, (string Name, double Value)> Units = new Dictionary<string, (string, double)>
    {
        ["um"] = ("µm", 0.001),
        ["mm"] = ("mm", 1),
        ["thou"] = ("thou", 0.0254),
    };

    public static readonly IReadOnlyDictionary<string, (string Name, double Value)> Slopes = new Dictionary<string, (string, double)>
    {
        ["s"] = ("seconds of arc", Math.PI / 180 / 3600),
        ["s10"] = ("tenths of a second of arc", Math.PI / 180 / 36000),
        ["um"] = ("µm to the metre", 1e-6),
        ["mm"] = ("hundredths of a mm to the metre", 1e-5),
    };

    public bool IsAsked => Data.Length > 0 || Lines.Values.Any(l => l.Length > 0);

    public static ShapeAsked Of(IQueryCollection query, string kind)
    {
        string Text(string name) => query[name].ToString();
        var units = kind == "union-jack" ? Slopes : Units;
        return new ShapeAsked(kind, Text("part"), Text("data"), units.ContainsKey(Text("unit")) ? Text("unit") : units.Keys.First(), Text("radius"), Text("foot"), Walks.ToDictionary(w => w.Id, w => Text(w.Id)));
    }

    /// <summary>Works it out.</summary>
    public Outcome<ShapeView> View(Sums.Quantities.BookUnits book) => Kind switch
    {
        "roundness" => Size(Radius, "radius", book).Then(r => ShapeText.Section(Data, r, Units[Unit].Value)).Then(p => Outcome.Of(ShapeView.Section(p))),
        "cylinder" => Size(Radius, "radius", book).Then(r => ShapeText.Cylinder(Data, r, Units[Unit].Value)).Then(p => Outcome.Of(ShapeView.Cylinder(p))),
        "flatness" => ShapeText.Face(Data).Then(rows => Outcome.Of(ShapeView.Grid(rows, Units[Unit].Value))),
        _ => Jack(book),
    };

    private Outcome<ShapeView> Jack(Sums.Quantities.BookUnits book)
    {
        var foot = Size(Foot, "length of the foot", book);
        var lines = Walks.Select(w => ShapeText.Line(Lines[w.Id], w.Name)).ToArray();
        var faults = foot.Refusals.Concat(lines.SelectMany(l => l.Refusals)).ToArray();
        if (faults.Length > 0)
            return Outcome.Refused<ShapeView>(faults);
        var r = lines.Select(l => l.Value).ToArray();
        return Outcome.Of(ShapeView.EightLines(new UnionJack(new UnionJackReadings(r[0], r[1], r[2], r[3], r[4], r[5], r[6], r[7])), r[2].Length * foot.Value, r[3].Length * foot.Value, Slopes[Unit].Value * foot.Value));
    }

    private static Outcome<double> Size(string text, string where, Sums.Quantities.BookUnits book) => SpotText.Read(text, "mm", book, null, where).Then(mm => mm > 0
        ? Outcome.Of(mm)
        : Outcome.Refused<double>(new Refusal(where, Journal.Units.Show(mm, "mm"), "above zero", "Type the size")));
}
