using Gudgeon.Journal;

namespace Gudgeon.Pages.Circuits;

/// <summary>One station of a way round as it is drawn: trunk straight down, branches to the right.</summary>
/// <param name="Column">0 for the trunk.</param>
/// <param name="From">Row that it hangs on; null for the start.</param>
public sealed record TraceRow(int Column, int? From, TraceStep Step);

/// <summary>Lays a trace out: the longest way goes straight on, what branches off comes before it, one column to the right.</summary>
public static class TraceRows
{
    public static IReadOnlyList<TraceRow> Of(TraceStep start)
    {
        var rows = new List<TraceRow>();
        Put(start, 0, null);
        return rows;

        void Put(TraceStep step, int column, int? from)
        {
            var at = rows.Count;
            rows.Add(new TraceRow(column, from, step));
            var trunk = step.Next.MaxBy(Length);
            foreach (var branch in step.Next.Where(n => n != trunk))
                Put(branch, column + 1, at);
            if (trunk is not null)
                Put(trunk, column, at);
        }
    }

    private static int Length(TraceStep step) => 1 + step.Next.Sum(Length) + (step.ClosesAt ? 1 : 0);
}
