using System.Text.Json.Serialization;
using Gudgeon.Engine;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

[JsonDerivedType(typeof(GradesSet), "grades-set")]
public abstract partial record Entry;

/// <summary>One size grade of a book: a letter, a colour or a number, and the sizes that carry it.</summary>
public sealed record SizeGrade(string Name, double Low, double High);

/// <summary>A table of size grades that the owner typed from a book. The last one for the same thing counts.</summary>
/// <param name="Grades">In the order of the book.</param>
/// <param name="Unit">Unit of the characteristic.</param>
/// <param name="Source">Book or sheet, and its edition.</param>
/// <param name="Page">Page in it.</param>
public sealed record GradesSet(string Characteristic, IReadOnlyList<SizeGrade> Grades, string Unit, string Source, string Page = "") : Entry
{
    public override IEnumerable<string> About() => [];

    public override Refusal? Check(Bench bench)
    {
        if (Characteristics.Find(Characteristic) is not { } characteristic)
            return new Refusal("size grades", $"\"{Characteristic}\"", "a characteristic of the list", "Look at its name on the Measure page");
        var sorted = Grades.OrderBy(g => g.Low).ToArray();
        var over = sorted.Zip(sorted.Skip(1)).Where(p => p.Second.Low < p.First.High).Select(p => $"{p.First.Name} and {p.Second.Name}").FirstOrDefault();
        return Unit != characteristic.Unit ? new Refusal(characteristic.Name, $"the unit {Unit}", characteristic.Unit, "Give the grades in the unit of the figure")
            : characteristic.Limits.HasFlag(LimitKinds.Look) ? new Refusal(characteristic.Name, "size grades", "no grades: it passes or fails by look", "Say pass or fail where it is looked at")
            : Grades.Count < 2 ? new Refusal(characteristic.Name, Grades.Count == 0 ? "no grades" : "one grade", "two or more", "Type a line for each grade of the book")
            : Grades.FirstOrDefault(g => string.IsNullOrWhiteSpace(g.Name)) is not null ? new Refusal(characteristic.Name, "a grade without a name", "its letter, colour or number", "Type the name first on its line")
            : Grades.GroupBy(g => g.Name).FirstOrDefault(g => g.Count() > 1) is { } twice ? new Refusal(characteristic.Name, $"the grade {twice.Key} twice", "each once", "Take one of them out")
            : Grades.FirstOrDefault(g => !(g.High > g.Low) || !double.IsFinite(g.Low) || !double.IsFinite(g.High)) is { } wrong ? new Refusal(characteristic.Name, $"grade {wrong.Name} from {Units.Plain(wrong.Low)} to {Units.Show(wrong.High, Unit)}", "the lower size first", "Look at the book again")
            : over is not null ? new Refusal(characteristic.Name, $"grades {over}, which overlap", "grades that touch at most", "Look at the book again")
            : string.IsNullOrWhiteSpace(Source) ? new Refusal(characteristic.Name, "grades without a source", "the book or sheet that they come from", "Say where they stand; the page too if there is one")
            : null;
    }

    public override string Words(Bench bench) =>
        $"Size grades of {Characteristics.Find(Characteristic)?.Name ?? Characteristic}: {string.Join(", ", Grades.Select(g => $"{g.Name} {Units.Band(g.Low, g.High, Unit)}"))}, by {Source}{(Page.Length > 0 ? $", page {Page}" : "")}";

    internal override void Apply(Bench bench, Recorded recorded) => bench.Set(this, recorded);
}
