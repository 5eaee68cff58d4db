namespace Gudgeon.Engine.Building;

/// <summary>The tables that turn answers into an engine, as read; a test hands in others to see that faults are caught.</summary>
internal sealed class AnatomyTables
{
    public static readonly string[] Names = ["parts.psv", "joints.psv", "aliases.psv", "lines.psv", "access.psv", "operations.psv", "facts.psv"];

    private static readonly Lazy<AnatomyTables> Lazily = new(() => new AnatomyTables(Table.Own));

    public AnatomyTables(Func<string, string> text)
    {
        Parts = Table.Read("parts.psv", text("parts.psv"));
        Joints = Table.Read("joints.psv", text("joints.psv"));
        Lines = Table.Read("lines.psv", text("lines.psv"));
        Access = Table.Read("access.psv", text("access.psv"));
        Operations = Table.Read("operations.psv", text("operations.psv"));
        Facts = Table.Read("facts.psv", text("facts.psv"));
        Aliases = Table.Read("aliases.psv", text("aliases.psv")).ToDictionary(r => r["alias"], r => r.List("first of"));
        PartKinds = Parts.Select(r => r["id"]).ToHashSet();
        LineKinds = Lines.Select(r => r["id"]).ToHashSet();
    }

    public static AnatomyTables Own => Lazily.Value;

    public IReadOnlyList<Row> Parts { get; }
    public IReadOnlyList<Row> Joints { get; }
    public IReadOnlyList<Row> Lines { get; }
    public IReadOnlyList<Row> Access { get; }
    public IReadOnlyList<Row> Operations { get; }
    public IReadOnlyList<Row> Facts { get; }
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Aliases { get; }
    public IReadOnlySet<string> PartKinds { get; }
    public IReadOnlySet<string> LineKinds { get; }

    /// <summary>A kind or an alias as the list of kinds that it may stand for, in order of choice.</summary>
    public IEnumerable<string> Kinds(string name) =>
        name.StartsWith('@') ? Aliases[name].SelectMany(Kinds) : [name];
}
