using System.Globalization;
using System.Text;
using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Pages.Measure;

/// <summary>Readings as a table that a spreadsheet opens: written out whole, read back in row by row.</summary>
public static class ReadingTable
{
    private static readonly string[] columns = ["entry", "at", "part", "characteristic", "place", "spot", "reading", "value", "unit", "instrument", "part_c", "gauge_c", "by", "set_aside"];

    /// <summary>All readings, those set aside too; RFC 4180 with CRLF line ends.</summary>
    public static string Write(Bench bench)
    {
        var table = new StringBuilder(string.Join(',', columns)).Append("\r\n");
        foreach (var reading in bench.Readings.Values)
        {
            var taken = reading.Taken;
            string?[] cells =
            [
                Number(reading.Number), reading.At.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture), taken.Part, taken.Characteristic, Number(taken.Place), taken.Spot,
                Typed(taken, bench), Number(taken.Value), taken.Unit, taken.Instrument, Number(taken.PartC), Number(taken.GaugeC), taken.By, reading.SetAside,
            ];
            table.AppendJoin(',', cells.Select(c => Cell(c ?? ""))).Append("\r\n");
        }

        return table.ToString();
    }

    /// <summary>As typed; what was said in words goes out as the figure that they came to, so that it can be read back.</summary>
    private static string Typed(ReadingTaken taken, Bench bench) =>
        taken.AsTyped.Any(char.IsLetter) && !SpotText.Read(taken.AsTyped, taken.Unit, bench.Units, null, "").Ok ? $"{taken.Value.ToString("R", CultureInfo.InvariantCulture)} {taken.Unit}" : taken.AsTyped;

    /// <summary>Readings out of a table: the first row names the columns; part, characteristic and reading are needed. Comma, semicolon or tab parts the cells.</summary>
    public static Outcome<IReadOnlyList<Request>> Read(string text)
    {
        var first = text.Split('\n')[0];
        var mark = first.Contains('\t', StringComparison.Ordinal) ? '\t' : first.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        var rows = Rows(text, mark);
        if (rows.Count < 2)
            return Refused("the table", rows.Count == 0 ? "nothing" : "one row", "a row of column names and a row for each reading", "Copy the table with its heading");
        var names = rows[0].Select(n => n.Trim().ToLowerInvariant()).ToArray();
        int At(params string[] of) => Array.FindIndex(names, of.Contains);
        var (part, what, place, spot, reading, with, partC, gaugeC, by) = (At("part"), At("characteristic"), At("place"), At("spot"), At("reading"), At("instrument"), At("part_c"), At("gauge_c"), At("by"));
        if (part < 0 || what < 0 || reading < 0)
            return Refused("the heading", string.Join(", ", rows[0]), "part, characteristic and reading among the columns", "Name the columns so; write the table out first to see them");
        var faults = new List<Refusal>();
        var requests = new List<Request>();
        foreach (var (row, i) in rows.Skip(1).Select((r, i) => (r, i + 2)))
        {
            string Text(int column) => column >= 0 && column < row.Length ? row[column].Trim() : "";
            var number = Text(place).Length == 0 ? 1 : int.TryParse(Text(place), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 0;
            double? Celsius(int column)
            {
                if (Text(column).Length == 0)
                    return null;
                // The column says °C, whatever the book speaks.
                var read = SpotText.Read(Text(column), "C", Sums.Quantities.BookUnits.Metric, null, $"row {i}, {names[column]}");
                faults.AddRange(read.Refusals);
                return read.Ok ? read.Value : null;
            }

            var (partAt, gaugeAt) = (Celsius(partC), Celsius(gaugeC));
            if (row.Length != names.Length)
                faults.Add(new Refusal($"row {i}", $"{row.Length} cells", $"{names.Length}, as in the heading", "Mend the row; put a cell with a comma in it into quotes"));
            else if (number == 0)
                faults.Add(new Refusal($"row {i}", $"place \"{Text(place)}\"", "a whole number", "Mend the row"));
            else
                requests.Add(new TakeReading(new Slot(Text(part), Text(what), number, Text(spot).Length > 0 ? Text(spot) : "one"), Text(reading).TrimStart('\''), Text(with).Length > 0 ? Text(with) : null, partAt, gaugeAt, By: Text(by)));
        }

        return faults.Count > 0 ? Outcome.Refused<IReadOnlyList<Request>>(faults) : Outcome.Of<IReadOnlyList<Request>>(requests);
    }

    /// <summary>A cell that a spreadsheet would run as a formula gets an apostrophe in front, and so does <c>+43</c>: it would come back as 43.</summary>
    private static string Cell(string text)
    {
        var safe = text.Length > 0 && text[0] is '=' or '@' or '\t' or '+' || text.Length > 1 && text[0] is '-' && text.AsSpan(1).ContainsAnyExceptInRange('0', '9') == false ? $"'{text}" : text;
        return safe.AsSpan().IndexOfAny(",\"\r\n") < 0 ? safe : $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    private static List<string[]> Rows(string text, char mark)
    {
        var rows = new List<string[]>();
        var row = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (quoted && c == '"' && i + 1 < text.Length && text[i + 1] == '"')
                cell.Append(text[++i]);
            else if (c == '"')
                quoted = !quoted;
            else if (!quoted && c == mark)
                Cut();
            else if (!quoted && c is '\n')
                End();
            else if (quoted || c != '\r')
                cell.Append(c);
        }

        End();
        return rows;

        void Cut()
        {
            row.Add(cell.ToString());
            cell.Clear();
        }

        void End()
        {
            Cut();
            if (row.Any(t => t.Trim().Length > 0))
                rows.Add([.. row]);
            row.Clear();
        }
    }

    private static string? Number(double? value) => value?.ToString("R", CultureInfo.InvariantCulture);

    private static Outcome<IReadOnlyList<Request>> Refused(string where, string met, string expected, string remedy) =>
        Outcome.Refused<IReadOnlyList<Request>>(new Refusal(where, met, expected, remedy));
}
