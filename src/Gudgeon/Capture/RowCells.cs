namespace Gudgeon.Capture;

/// <summary>
/// Says which figure belongs to whom. A word before a figure holds for it and, which one or which side, for those after it; a word
/// behind it, led to by "on" or "at", or where nothing of its sort came before, holds for the figure just told.
/// </summary>
internal sealed class RowCells
{
    private readonly Head head;
    private readonly int count;
    private readonly List<Cell> cells = [];
    private IReadOnlyList<int> which;
    private string gas;
    private string ring;
    private string spot;
    private bool linked;
    private bool own;
    private int from;
    private int cost;

    private RowCells(Head head, int count)
    {
        (this.head, this.count) = (head, count);
        (which, gas, ring, spot) = (head.Which, head.Gas, head.Ring, head.Spot);
    }

    /// <summary>The cells that the steps come to and how odd that way is, or null where they make no row.</summary>
    public static (IReadOnlyList<Cell> Cells, int Cost)? Of(IReadOnlyList<Step> steps, Head head, int count) => new RowCells(head, count).Read(steps);

    private (IReadOnlyList<Cell> Cells, int Cost)? Read(IReadOnlyList<Step> steps)
    {
        bool sidesFirst = steps.FirstOrDefault(s => s.Sort is StepSort.Gas or StepSort.Which) is { Sort: StepSort.Gas };
        for (int i = 0; i < steps.Count; i++)
        {
            var step = steps[i];
            bool behind = i > 0 && steps[i - 1].Sort is StepSort.Figure or StepSort.Same or StepSort.Gas or StepSort.Spot && cells.Count > 0 && !step.Paused && cells[^1].To == steps[i - 1].To;
            if (from == 0)
                from = step.From;
            linked |= step.Linked;
            switch (step.Sort)
            {
                case StepSort.Figure:
                    // "one's four thou": a verb leads from whose it is to how much, not from one figure to the next.
                    cost += (linked && cells.Count > 0 && from == step.From) || (step.And && i > 0 && steps[i - 1].Sort == StepSort.Which) ? 1 : 0;
                    cells.Add(new Cell(which, gas, ring, spot, step, from, step.To) { Linked = linked, Own = own });
                    Next();
                    break;
                case StepSort.Same when !Copy(step, steps, i):
                    return null;
                case StepSort.Same:
                    Next();
                    break;
                case StepSort.Which:
                    if (step.Text != "rest" && steps.Take(i).LastOrDefault() is { Sort: StepSort.Which } && from != step.From)
                    {
                        if (step.Linked || which.Count == 0 || step.Numbers[0] <= which[^1])
                            return null;
                        which = [.. which, .. step.Numbers];
                        break;
                    }

                    List<int> numbers = step.Text == "rest" ? Rest() : [.. step.Numbers];
                    if (numbers.Count == 0)
                        return null;
                    if (behind && step.Led)
                    {
                        // "on one through four, five is eighteen": after a pause the one before a figure begins anew.
                        while (i + 1 < steps.Count && steps[i + 1] is { Sort: StepSort.Which, Linked: false, Numbers: [var more, ..] } next && more > numbers[^1] && !(next.Paused && i + 2 < steps.Count && steps[i + 2].Sort is StepSort.Figure or StepSort.Same))
                            numbers.AddRange(steps[++i].Numbers);
                        if (!Behind(steps[i].To, c => !c.Own, c => c with { Which = numbers, Own = true }))
                            return null;
                        which = numbers;
                        break;
                    }

                    // What is told already is hardly told again, and a row goes upwards.
                    cost += which.Count > 0 && (which.SequenceEqual(numbers) || (cells.Count > 0 && which.Count == 1 && numbers[0] < which[^1] && step.Text.Length == 0)) ? 1 : 0;
                    (which, own) = (numbers, true);
                    if (!sidesFirst)
                        (gas, ring) = (head.Gas, head.Ring);
                    break;
                case StepSort.Unit:
                    for (int k = 0; k < cells.Count; k++)
                        cells[k] = cells[k] with { Figure = cells[k].Figure with { Unit = step.Unit }, To = k == cells.Count - 1 ? step.To : cells[k].To };
                    from = 0;
                    break;
                case StepSort.Gas:
                    if (behind && cells[^1].Gas.Length == 0)
                        Behind(step.To, c => c.Gas.Length == 0, c => c with { Gas = step.Text });
                    else
                    {
                        gas = step.Text;
                        if (sidesFirst)
                            which = head.Which;
                    }

                    break;
                case StepSort.Ring:
                    if (behind && cells[^1].Ring.Length == 0)
                        Behind(step.To, c => c.Ring.Length == 0, c => c with { Ring = step.Text });
                    else
                        ring = step.Text;
                    break;
                case StepSort.Spot:
                    if (behind && cells[^1].Spot.Length == 0)
                        Behind(step.To, c => c.Spot.Length == 0 && c == cells[^1], c => c with { Spot = step.Text });
                    // "top across": a spot on the sheet, which is read elsewhere.
                    else if (spot.Length > 0)
                        return null;
                    else
                        spot = step.Text;
                    break;
            }
        }

        // Words that wait for a figure which never came tell of something else.
        return from == 0 && Holds() ? (cells, cost) : null;
    }

    private void Next() => (spot, linked, own, from) = ("", false, false, 0);

    /// <summary>Gives a word to the figures just told that lack one.</summary>
    private bool Behind(int to, Func<Cell, bool> lacks, Func<Cell, Cell> told)
    {
        from = 0;
        bool any = false;
        for (int i = cells.Count - 1; i >= 0 && lacks(cells[i]); i--)
        {
            cells[i] = told(cells[i]);
            any = true;
        }

        cells[^1] = cells[^1] with { To = to };
        return any;
    }

    private List<int> Rest()
    {
        var told = cells.SelectMany(c => c.Which).ToHashSet();
        return told.Count == 0 ? [] : [.. Enumerable.Range(1, count).Where(n => !told.Contains(n))];
    }

    /// <summary>"two same", "three the same as one", "same at the bottom": the figures again, of another or at another spot.</summary>
    private bool Copy(Step step, IReadOnlyList<Step> steps, int at)
    {
        if (cells.Count == 0)
            return false;
        var model = step.Numbers is [var like] ? cells.FindLast(c => c.Which.Contains(like))?.Which : cells[^1].Which;
        if (model is null)
            return false;
        bool other = !which.SequenceEqual(cells[^1].Which) && which.Count > 0;
        bool side = other && steps.Take(at).LastOrDefault(s => s.Sort is StepSort.Which or StepSort.Gas) is { Sort: StepSort.Gas };
        var copies = cells.Where(c => c.Which.SequenceEqual(model)).ToList();
        if (!other)
            copies = [cells[^1]];
        else if (side)
            copies = [.. copies.Where(c => c.Gas == gas)];
        foreach (var copy in copies)
            cells.Add(copy with { Which = which, Gas = other ? copy.Gas : gas, Spot = other ? copy.Spot : spot, From = from, To = step.To, Copied = true, Own = own });
        return copies.Count > 0;
    }

    /// <summary>No two figures for one place, none without a place beside such as have one.</summary>
    private bool Holds()
    {
        var groups = new List<List<Cell>>();
        foreach (var cell in cells)
        {
            if (groups.Count > 0 && groups[^1][0].IsBeside(cell))
                groups[^1].Add(cell);
            else
                groups.Add([cell]);
        }

        if (groups.Select(g => (string.Join(",", g[0].Which), g[0].Gas, g[0].Ring)).Distinct().Count() < groups.Count)
            return false;
        foreach (var side in groups.GroupBy(g => (g[0].Gas, g[0].Ring)))
        {
            var all = side.SelectMany(g => g[0].Which).ToList();
            if (all.Distinct().Count() < all.Count || (side.Count() > 1 && side.Any(g => g[0].Which.Count == 0)))
                return false;
        }

        foreach (var group in groups.Where(g => g.Count > 1))
        {
            int spots = group.Select(c => c.Spot).Where(s => s.Length > 0 && !s.StartsWith(RowGrammar.Axis, StringComparison.Ordinal)).Distinct().Count();
            if (spots > 0 && (spots < group.Count || group[0].Which.Count > 1))
                return false;
            if (spots == 0 && group[0].Which.Count == 1)
                cost += group.Count - 1;
        }

        return (groups.Select(g => g[0].Gas.Length > 0).Distinct().Count() == 1 || head.Gas.Length > 0) && groups.Select(g => g[0].Ring.Length > 0).Distinct().Count() == 1;
    }
}
