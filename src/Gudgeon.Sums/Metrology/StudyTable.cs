using System.Globalization;

namespace Gudgeon.Sums.Metrology;

/// <summary>Readings of a gauge study as people write them down: a line for each, with the part, the person (or the day) and the figure.</summary>
/// <param name="Parts">Names of the parts, in the order met.</param>
/// <param name="Operators">Names of the persons or days.</param>
/// <param name="Readings">By part, operator, trial.</param>
public sealed record StudyTable(IReadOnlyList<string> Parts, IReadOnlyList<string> Operators, double[,,] Readings)
{
    /// <summary>True when the range method has factors for so many.</summary>
    public bool SuitsRange => Parts.Count <= 10 && Operators.Count <= 3 && Readings.GetLength(2) <= 3;

    /// <summary>Reads the lines.</summary>
    /// <param name="text">One reading a line: part, person, figure, parted by tab, semicolon or blanks. A first line without a figure is a heading.</param>
    /// <returns>The table, or every line that cannot be taken.</returns>
    public static Outcome<StudyTable> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var faults = new List<Refusal>();
        var rows = new List<(string Part, string Operator, double Value)>();
        var lines = text.Split('\n').Select((line, i) => (Text: line.Trim(), Number: i + 1)).Where(l => l.Text.Length > 0).ToArray();
        foreach (var (line, number) in lines)
        {
            var cells = line.Split(line.Contains('\t', StringComparison.Ordinal) ? '\t' : line.Contains(';', StringComparison.Ordinal) ? ';' : ' ', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (cells is [var part, var person, var figure] && Number(figure) is { } value)
                rows.Add((part, person, value));
            else if (number > lines[0].Number || cells.Length != 3)
                faults.Add(new Refusal($"line {number}", $"\"{line}\"", "a part, a person or day, and a figure", "Mend the line; part the three with tabs or semicolons"));
        }

        var (parts, operators) = (rows.Select(r => r.Part).Distinct().ToArray(), rows.Select(r => r.Operator).Distinct().ToArray());
        if (faults.Count == 0 && (parts.Length < 2 || operators.Length < 2))
            faults.Add(new Refusal("the study", $"{parts.Length} parts and {operators.Length} persons or days", "two or more of each", "Read the same two places on another day, or let another person read them"));
        if (faults.Count > 0)
            return Outcome.Refused<StudyTable>(faults);
        var cell = rows.ToLookup(r => (r.Part, r.Operator), r => r.Value);
        var trials = cell.Max(c => c.Count());
        foreach (var part in parts)
            foreach (var person in operators)
                if (cell[(part, person)].Count() != Math.Max(trials, 2))
                    faults.Add(new Refusal($"{part}, {person}", $"{cell[(part, person)].Count()} readings", $"{Math.Max(trials, 2)}, as many for every part and person", "Read the missing ones, or leave the rest out"));
        if (faults.Count > 0)
            return Outcome.Refused<StudyTable>(faults);
        var readings = new double[parts.Length, operators.Length, trials];
        for (var p = 0; p < parts.Length; p++)
            for (var o = 0; o < operators.Length; o++)
                foreach (var (value, trial) in cell[(parts[p], operators[o])].Select((v, i) => (v, i)))
                    readings[p, o, trial] = value;
        return Outcome.Of(new StudyTable(parts, operators, readings));
    }

    private static double? Number(string text) =>
        double.TryParse(text.Replace(',', '.').Replace('−', '-'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) ? value : null;
}
