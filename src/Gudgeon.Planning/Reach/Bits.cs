using System.Numerics;

namespace Gudgeon.Planning.Reach;

/// <summary>Sets of small numbers as rows of bits: union, subset and weight run a word at a time.</summary>
internal static class Bits
{
    public static IEqualityComparer<ulong[]> Comparer { get; } = new RowComparer();

    public static ulong[] Empty(int count) => new ulong[(count + 63) >> 6];

    public static bool Has(ulong[] row, int item) => (row[item >> 6] & (1UL << (item & 63))) != 0;

    public static void Add(ulong[] row, int item) => row[item >> 6] |= 1UL << (item & 63);

    public static void Unite(ulong[] row, ulong[] other)
    {
        for (var word = 0; word < row.Length; word++)
            row[word] |= other[word];
    }

    public static void Intersect(ulong[] row, ulong[] other)
    {
        for (var word = 0; word < row.Length; word++)
            row[word] &= other[word];
    }

    public static bool IsSubset(ulong[] small, ulong[] large)
    {
        for (var word = 0; word < small.Length; word++)
        {
            if ((small[word] & ~large[word]) != 0)
                return false;
        }
        return true;
    }

    public static bool Meets(ulong[] one, ulong[] other)
    {
        for (var word = 0; word < one.Length; word++)
        {
            if ((one[word] & other[word]) != 0)
                return true;
        }
        return false;
    }

    public static bool Same(ulong[] one, ulong[] other) => one.AsSpan().SequenceEqual(other);

    /// <summary>Weight of what <paramref name="row"/> holds beyond <paramref name="without"/>.</summary>
    public static long WeightBeyond(ulong[] row, ulong[] without, long[] weights)
    {
        var sum = 0L;
        for (var word = 0; word < row.Length; word++)
        {
            var left = row[word] & ~without[word];
            while (left != 0)
            {
                sum += weights[(word << 6) + BitOperations.TrailingZeroCount(left)];
                left &= left - 1;
            }
        }
        return sum;
    }

    public static void AddItemsBeyond(ulong[] row, ulong[] without, List<int> items)
    {
        for (var word = 0; word < row.Length; word++)
        {
            var left = row[word] & ~without[word];
            while (left != 0)
            {
                items.Add((word << 6) + BitOperations.TrailingZeroCount(left));
                left &= left - 1;
            }
        }
    }

    public static int Hash(ReadOnlySpan<ulong> row)
    {
        var hash = 14695981039346656037UL;
        foreach (var word in row)
            hash = BitOperations.RotateLeft((hash ^ word) * 0x9E3779B97F4A7C15UL, 29);
        return (int)(hash ^ (hash >> 32));
    }

    private sealed class RowComparer : IEqualityComparer<ulong[]>
    {
        public bool Equals(ulong[]? x, ulong[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(ulong[] row) => Hash(row);
    }
}
