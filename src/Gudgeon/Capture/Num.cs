namespace Gudgeon.Capture;

internal enum NumSort
{
    Whole,
    Decimal,
    Fraction,
    Ordinal,

    /// <summary>A few, some, several: there is a number, but nobody said it.</summary>
    Vague,
}

/// <summary>A number as said, and the tokens it came from.</summary>
internal readonly record struct Num(decimal Value, NumSort Sort, int From, int To)
{
    public bool IsCount => Sort == NumSort.Whole && Value is >= 0 and <= 999;
    public int Int => (int)Value;
}
