using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>All characteristics of the tables. Choice of rows and places: common practice, no source.</summary>
public static class Characteristics
{
    private static readonly Dictionary<string, string> spotNames = Rows("positions.psv").ToDictionary(r => r["id"], r => r["name"]);
    private static readonly Dictionary<string, RepairAction> actions = Rows("actions.psv").ToDictionary(r => r["id"], r => new RepairAction(r["id"], r["name"], r["who"]));

    private static readonly Dictionary<string, FigureKind> Figures = new()
    {
        ["each"] = FigureKind.Each,
        ["max"] = FigureKind.Max,
        ["min"] = FigureKind.Min,
        ["mean"] = FigureKind.Mean,
        ["look"] = FigureKind.Look,
        ["taper"] = FigureKind.Taper,
        ["ovality"] = FigureKind.OutOfRound,
        ["wear"] = FigureKind.Wear,
        ["loss"] = FigureKind.Loss,
        ["difference"] = FigureKind.Difference,
        ["flatness"] = FigureKind.Flatness,
        ["shortfall"] = FigureKind.Shortfall,
    };

    private static readonly Dictionary<string, LimitKinds> Kinds = new()
    {
        ["low"] = LimitKinds.Low,
        ["high"] = LimitKinds.High,
        ["both"] = LimitKinds.Low | LimitKinds.High,
        ["spread"] = LimitKinds.Spread,
        ["look"] = LimitKinds.Look,
    };

    public static IReadOnlyList<Characteristic> All { get; } = [.. Rows("characteristics.psv").Select(Of)];

    private static readonly Dictionary<string, Characteristic> byId = All.ToDictionary(c => c.Id);

    public static Characteristic? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>What can be measured on a kind of part. A part that the owner added may carry anything.</summary>
    public static IReadOnlyList<Characteristic> For(string kind) =>
        kind == "own" ? All : [.. All.Where(c => c.Carriers.Any(options => options.Any(o => o.Kind == kind)))];

    private static IReadOnlyList<Row> Rows(string name) => Table.Read(name, Table.Own(name));

    private static Characteristic Of(Row row)
    {
        var grid = row["grid"];
        var worked = grid.StartsWith("from ", StringComparison.Ordinal);
        var formula = row["figure"].StartsWith('=') ? row["figure"][1..] : "";
        return new Characteristic
        {
            Id = row["id"],
            Name = row["name"],
            Area = row["area"],
            Place = row.Text("place"),
            Key = row["key"],
            Figure = formula.Length > 0 ? FigureKind.Formula : Figures[row["figure"]],
            Formula = formula,
            Unit = row["unit"],
            Limits = row.List("limits").Aggregate(LimitKinds.None, (all, one) => all | Kinds[one]),
            Tool = row.Text("tool"),
            Actions = [.. row.List("act").Select(a => actions[a])],
            Spots = worked ? [] : Spots(grid, row["unit"]),
            From = worked ? [.. grid[5..].Split(" less ").Select(SourceOf)] : [],
            Carriers = [.. row.List("on").Select(o => (IReadOnlyList<Carrier>)[.. o.Split('/').Select(CarrierOf)])],
        };
    }

    private static Source SourceOf(string text) => text.Split(':') is [var id, var column] ? new Source(id, column) : new Source(text, "");

    private static Carrier CarrierOf(string text)
    {
        var (kind, count) = text.Split('*', 2) is [var before, var formula] ? (before, formula) : (text, "");
        return kind.Split('#') is [var bare, var only] ? new Carrier(bare, only[0] - '0', count) : new Carrier(kind, 0, count);
    }

    private static IReadOnlyList<MeasuringSpot> Spots(string grid, string unit)
    {
        var halves = grid.Split(" + ");
        var axes = halves[0].Split(" x ").Select(a => a.Split(',')).ToArray();
        var spots = axes is [var rows, var columns]
            ? rows.SelectMany(r => columns.Select(c => new MeasuringSpot($"{r}.{c}", r, c, $"{NameOf(r)}, {NameOf(c)}", unit)))
            : axes[0].Select(t => t.Split(':')).Select(t => new MeasuringSpot(t[0], t[0], "", NameOf(t[0]), t.Length == 2 ? t[1] : InputUnit(unit)));
        return [.. spots, .. halves.Skip(1).Select(s => new MeasuringSpot(s, s, "", NameOf(s), unit))];
    }

    /// <summary>Inputs of a share or a plain number are lengths unless they say otherwise.</summary>
    private static string InputUnit(string unit) => unit is "%" or "1" ? "mm" : unit;

    private static string NameOf(string spot) => char.IsAsciiDigit(spot[0]) && spot[^1] != 'h' ? spot : spotNames[spot];
}
