namespace Gudgeon.Engine.Building;

/// <summary>A row of a table, by column name.</summary>
internal sealed record Row(string Where, IReadOnlyDictionary<string, string> Cells)
{
    public string this[string column] => Cells[column];

    /// <summary>A comma list; a lone dash is an empty one.</summary>
    public IReadOnlyList<string> List(string column) =>
        this[column] is "-" or "" ? [] : this[column].Split(',', StringSplitOptions.TrimEntries);

    public string Text(string column) => this[column] is "-" ? "" : this[column];
}

/// <summary>
/// The tables are bar-separated text: a hash starts a remark, the first other line names the columns.
/// They are read so strictly because a misplaced bar would otherwise shift a count into another column unseen.
/// </summary>
internal static class Table
{
    public static IReadOnlyList<Row> Read(string name, string text)
    {
        string[]? columns = null;
        var rows = new List<Row>();
        var number = 0;
        foreach (var line in text.Split('\n'))
        {
            number++;
            if (line.Length == 0 || line[0] == '#')
                continue;

            var cells = line.Split('|');
            if (columns is null)
            {
                columns = cells;
                continue;
            }

            if (cells.Length != columns.Length)
                throw new FormatException($"{name}, line {number}: {cells.Length} cells under {columns.Length} columns");

            rows.Add(new Row($"{name}, line {number}", columns.Zip(cells).ToDictionary(x => x.First, x => x.Second.Trim())));
        }

        return rows;
    }

    /// <summary>The text of one of the project's own tables.</summary>
    public static string Own(string name)
    {
        using var stream = typeof(Table).Assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentException($"no table {name}", nameof(name));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
