using System.Globalization;
using Gudgeon.Sums;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Lifting;

/// <summary>Figures out of what was told of a lift, by a form or by a command: each that cannot be read is refused by name, all at once.</summary>
/// <param name="told">The text of a field by its name; empty where nothing was told.</param>
internal sealed class LiftFields(Func<string, string> told, List<Refusal> refusals)
{
    public string Text(string name) => told(name).Trim();

    /// <summary>The same list of refusals, other text.</summary>
    public LiftFields With(Func<string, string> other) => new(other, refusals);

    public bool Has(string name) => Text(name).Length > 0;

    /// <summary>mm unless another unit is typed.</summary>
    public double Mm(string name, string where, double? usual = null) => Read(Text(name), where, usual, text => QuantityText.Length(text, BookUnits.Metric, where), length => length.Millimetres);

    /// <summary>kg unless another unit is typed: nobody weighs an engine in grams.</summary>
    public double Kg(string name, string where, double? usual = null) => Read(Text(name), where, usual, text => QuantityText.Mass(Bare(text) ? $"{text} kg" : text, BookUnits.Metric, where), mass => mass.Kilograms);

    public double Degrees(string name, string where, double? usual = null) => Read(Text(name), where, usual, text => QuantityText.Angle(text, BookUnits.Metric, where), angle => angle.Degrees);

    public double Nm(string name, string where) => Read(Text(name), where, null, text => QuantityText.Torque(text, BookUnits.Metric, where), torque => torque.NewtonMetres);

    /// <summary>
    /// A list, one thing a line: <c>name: figure, figure</c>. A line with another count of figures is refused by its number.
    /// Words after the figures are kept as marks.
    /// </summary>
    /// <param name="needsName">True where each line begins with a name and a colon.</param>
    public IReadOnlyList<ListLine> Lines(string name, string where, string shape, int least, int most, bool needsName = true)
    {
        var lines = new List<ListLine>();
        foreach (var (text, i) in Text(name).Split('\n').Select((line, i) => (line.Trim(), i)).Where(x => x.Item1.Length > 0))
        {
            var colon = needsName ? text.LastIndexOf(':') : -1;
            var pieces = text[(colon + 1)..].Split([';', ' ', '\t'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(piece => piece.TrimEnd(',')).Where(piece => piece.Length > 0).ToList();
            var figures = pieces.TakeWhile(piece => Figure(piece) is not null).Select(piece => Figure(piece)!.Value).ToList();
            if (figures.Count < least || figures.Count > most || (needsName && colon < 1))
                refusals.Add(new Refusal($"{where}, line {i + 1}", $"\"{text}\"", shape, "Write one thing a line, figures parted by spaces"));
            else
                lines.Add(new ListLine(needsName ? text[..colon].Trim() : "", figures, string.Join(' ', pieces.Skip(figures.Count))));
        }

        return lines;
    }

    /// <summary>A whole number; one that cannot be read is refused and counts as the usual one.</summary>
    public int Count(string name, string where, int usual)
    {
        var text = Text(name);
        if (text.Length == 0)
            return usual;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= 999)
            return count;
        Refuse(where, $"\"{text}\"", "a whole number up to 999", "Type it in figures");
        return usual;
    }

    public void Refuse(string where, string met, string expected, string remedy) => refusals.Add(new Refusal(where, met, expected, remedy));

    private double Read<T>(string text, string where, double? usual, Func<string, Parsed<T>> read, Func<T, double> amount)
    {
        if (text.Length == 0 && usual is { } given)
            return given;
        switch (text.Length == 0 ? null : read(text))
        {
            case Understood<T> understood:
                return amount(understood.Value);
            case Refused<T> refused:
                refusals.Add(refused.Reason);
                break;
            case Ambiguous<T> open:
                refusals.Add(new Refusal(where, $"\"{text}\": {open.Why.TrimEnd('.')}", string.Join(" or ", open.Readings.Select(r => r.Words)), "Write it so"));
                break;
            default:
                refusals.Add(new Refusal(where, "nothing", "a figure", "Measure it and fill it in"));
                break;
        }

        return 0;
    }

    private static bool Bare(string text) => text.Length > 0 && !text.Any(char.IsLetter);

    private static double? Figure(string text) =>
        double.TryParse(text.Replace('−', '-'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var figure) ? figure : null;
}

/// <summary>A line of a list as it was read.</summary>
internal sealed record ListLine(string Name, IReadOnlyList<double> Figures, string Marks);
