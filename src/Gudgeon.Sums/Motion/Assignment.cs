namespace Gudgeon.Sums.Motion;

/// <summary>Exact assignment of rows to columns at least total cost.</summary>
internal static class Assignment
{
    /// <summary>The column of each row. Shortest augmenting paths with potentials (Kuhn 1955, Munkres 1957); ties go to the lower column.</summary>
    public static int[] Least(long[,] cost)
    {
        var (rows, columns) = (cost.GetLength(0), cost.GetLength(1));
        var rowPotential = new long[rows + 1];
        var columnPotential = new long[columns + 1];
        var rowOf = new int[columns + 1];
        for (var row = 1; row <= rows; row++)
            Augment(cost, row, rowPotential, columnPotential, rowOf);

        var answer = new int[rows];
        for (var column = 1; column <= columns; column++)
        {
            if (rowOf[column] > 0)
                answer[rowOf[column] - 1] = column - 1;
        }

        return answer;
    }

    private static void Augment(long[,] cost, int row, long[] rowPotential, long[] columnPotential, int[] rowOf)
    {
        var columns = rowOf.Length - 1;
        var slack = new long[columns + 1];
        Array.Fill(slack, long.MaxValue);
        var before = new int[columns + 1];
        var done = new bool[columns + 1];
        var at = 0;
        rowOf[0] = row;
        do
        {
            done[at] = true;
            var (least, next) = (long.MaxValue, 0);
            for (var column = 1; column <= columns; column++)
            {
                if (done[column])
                    continue;
                var reduced = cost[rowOf[at] - 1, column - 1] - rowPotential[rowOf[at]] - columnPotential[column];
                if (reduced < slack[column])
                    (slack[column], before[column]) = (reduced, at);
                if (slack[column] < least)
                    (least, next) = (slack[column], column);
            }

            for (var column = 0; column <= columns; column++)
            {
                if (done[column])
                {
                    rowPotential[rowOf[column]] += least;
                    columnPotential[column] -= least;
                }
                else if (slack[column] != long.MaxValue)
                {
                    slack[column] -= least;
                }
            }

            at = next;
        }
        while (rowOf[at] != 0);

        while (at != 0)
        {
            rowOf[at] = rowOf[before[at]];
            at = before[at];
        }
    }
}
