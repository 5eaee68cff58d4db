using System.Globalization;
using Gudgeon.Sums;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>A table of grades with the entry that set it.</summary>
public sealed record StandingGrades(long Number, GradesSet Set);

/// <summary>Reads grades as people type them, and says which one a figure has.</summary>
public static class GradeChooser
{
    /// <summary>Below this chance a grade is not named among those that a figure may have.</summary>
    private const double WorthNaming = 0.05;

    /// <summary>Lines such as <c>A 85.990 86.000</c>: a name, the lower size, the upper.</summary>
    public static Outcome<IReadOnlyList<SizeGrade>> Read(string text, string unit, BookUnits book)
    {
        var faults = new List<Refusal>();
        var grades = new List<SizeGrade>();
        foreach (var (line, i) in text.Split(['\n', ';'], StringSplitOptions.TrimEntries).Select((l, i) => (l, i + 1)).Where(x => x.l.Length > 0))
        {
            var cells = line.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries).Where(c => c is not ("to" or "-" or "–")).ToArray();
            if (cells is not [.. { Length: >= 1 } name, var low, var high])
            {
                faults.Add(new Refusal($"grade {i}", $"\"{line}\"", "a name, the lower size and the upper", "Type it as: A 85.990 86.000"));
                continue;
            }

            var (from, to) = (SpotText.Read(low, unit, book, null, $"grade {i}, lower size"), SpotText.Read(high, unit, book, null, $"grade {i}, upper size"));
            faults.AddRange([.. from.Refusals, .. to.Refusals]);
            if (from.Ok && to.Ok)
                grades.Add(new SizeGrade(string.Join(' ', name), from.Value, to.Value));
        }

        return faults.Count > 0 ? Outcome.Refused<IReadOnlyList<SizeGrade>>(faults) : Outcome.Of<IReadOnlyList<SizeGrade>>(grades);
    }

    /// <summary>The grade of a figure in words; where its uncertainty leaves it open, each that it may be with its chance.</summary>
    /// <param name="standardUncertainty">Null when no instrument was named: then only the figure speaks.</param>
    public static string Of(GradesSet set, double value, double? standardUncertainty)
    {
        if (standardUncertainty is not > 0)
            return set.Grades.FirstOrDefault(g => value >= g.Low && value < g.High) is { } bare ? $"grade {bare.Name} by the figure alone" : "no grade";
        var chances = set.Grades.Select(g => (g.Name, Chance: Conformance.Probability(value, standardUncertainty.Value, Limits.Between(g.Low, g.High)))).OrderByDescending(c => c.Chance).ToArray();
        var named = chances.Where(c => c.Chance >= WorthNaming).ToArray();
        return named switch
        {
            [] => "no grade",
            [var one] when one.Chance >= 1 - WorthNaming => $"grade {one.Name}",
            [var one] => $"grade {one.Name} or none ({Percent(one.Chance)})",
            _ => $"grade {string.Join(" or ", named.Select(c => $"{c.Name} ({Percent(c.Chance)})"))}: too close to call",
        };
    }

    private static string Percent(double chance) => $"{(chance * 100).ToString("0", CultureInfo.InvariantCulture)} %";
}
