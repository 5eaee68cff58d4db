using System.Globalization;

namespace Gudgeon.Capture;

/// <summary>
/// The size of a fastener as said: thread and, where told, length under the head. Any part may be missing:
/// <c>M8x35</c>, <c>M10x1.25</c>, <c>5/16-18</c>, <c>1/4-20 x 3/4 in</c>, a length alone.
/// </summary>
public sealed record ThreadSize
{
    public bool Inch { get; init; }

    /// <summary>Millimetres for metric threads, inches for inch threads; null when only a length was told.</summary>
    public decimal? Diameter { get; init; }

    /// <summary>Millimetres.</summary>
    public decimal? Pitch { get; init; }
    public int? ThreadsPerInch { get; init; }

    /// <summary>UNF, UNC, BSF, fine, coarse.</summary>
    public string Series { get; init; } = "";

    /// <summary>In the unit of <see cref="LengthInch"/>.</summary>
    public decimal? Length { get; init; }
    public bool LengthInch { get; init; }

    /// <summary>Size of the head across flats, never the thread.</summary>
    public decimal? AcrossFlats { get; init; }
    public bool AcrossFlatsInch { get; init; }

    public bool IsEmpty => Diameter is null && Length is null && AcrossFlats is null && Series.Length == 0 && Pitch is null;

    /// <summary>What is told here, and what the other tells where this is silent.</summary>
    public ThreadSize Or(ThreadSize other) => this with
    {
        Inch = Diameter is null ? other.Inch : Inch,
        Diameter = Diameter ?? other.Diameter,
        Pitch = Pitch ?? (Diameter is null || Diameter == other.Diameter ? other.Pitch : null),
        ThreadsPerInch = ThreadsPerInch ?? (Diameter is null || Diameter == other.Diameter ? other.ThreadsPerInch : null),
        Series = Series.Length > 0 || (Diameter is not null && Diameter != other.Diameter) ? Series : other.Series,
        Length = Length ?? other.Length,
        LengthInch = Length is null ? other.LengthInch : LengthInch,
        AcrossFlats = AcrossFlats ?? other.AcrossFlats,
        AcrossFlatsInch = AcrossFlats is null ? other.AcrossFlatsInch : AcrossFlatsInch,
    };

    public override string ToString()
    {
        var text = "";
        if (Diameter is { } d)
        {
            text = Inch
                ? Fraction(d) + (ThreadsPerInch is { } t ? $"-{t}" : "")
                : "M" + Plain(d) + (Pitch is { } p ? "x" + Plain(p) : "");
        }
        else if (Pitch is { } alone)
            text = $"pitch {Plain(alone)}";

        if (Series.Length > 0)
            text = Join(text, Series);
        if (Length is { } l)
            text = Diameter is not null && !LengthInch && !Inch ? $"{text}x{Plain(l)}" : Join(text, LengthInch ? $"{(text.Length > 0 ? "x " : "")}{Fraction(l)} in" : $"{Plain(l)} mm") + (Diameter is null ? " long" : "");
        return AcrossFlats is { } af ? Join(text, $"{(AcrossFlatsInch ? Fraction(af) + " in" : Plain(af) + " mm")} across flats") : text;
    }

    private static string Join(string left, string right) => left.Length == 0 ? right : $"{left} {right}";

    internal static string Plain(decimal value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>Inches as people write them, to the 64th: 1 1/2, 7/16.</summary>
    internal static string Fraction(decimal inches)
    {
        decimal whole = decimal.Truncate(inches);
        decimal over = (inches - whole) * 64;
        if (over != decimal.Truncate(over))
            return Plain(inches);
        int top = (int)over;
        int under = 64;
        while (top > 0 && top % 2 == 0)
            (top, under) = (top / 2, under / 2);
        string part = top == 0 ? "" : $"{top}/{under}";
        return whole == 0 && top > 0 ? part : part.Length == 0 ? Plain(whole) : $"{Plain(whole)} {part}";
    }
}
