namespace Gudgeon.Sums.Quantities;

/// <summary>What was made of something typed or said. The text stays beside it, as it was.</summary>
/// <typeparam name="T">What was looked for.</typeparam>
/// <param name="Text">The text as it was typed.</param>
public abstract record Parsed<T>(string Text)
{
    /// <summary>The value when there is exactly one reading; otherwise nothing.</summary>
    /// <param name="value">The value.</param>
    /// <returns>True when there is exactly one reading.</returns>
    public bool TryGet(out T value)
    {
        value = this is Understood<T> understood ? understood.Value : default!;
        return this is Understood<T>;
    }
}

/// <summary>There is one reading.</summary>
/// <typeparam name="T">What was looked for.</typeparam>
/// <param name="Text">The text as it was typed.</param>
/// <param name="Value">What it means.</param>
/// <param name="Unit">The unit that was read, by its usual sign.</param>
/// <param name="UnitAssumed">True when no unit was typed and the book's own was taken.</param>
public sealed record Understood<T>(string Text, T Value, string Unit, bool UnitAssumed) : Parsed<T>(Text);

/// <summary>It can be read in several ways; the person is asked.</summary>
/// <typeparam name="T">What was looked for.</typeparam>
/// <param name="Text">The text as it was typed.</param>
/// <param name="Readings">The ways, likeliest first.</param>
/// <param name="Why">Why it is open, as a sentence.</param>
public sealed record Ambiguous<T>(string Text, IReadOnlyList<Reading<T>> Readings, string Why) : Parsed<T>(Text);

/// <summary>It cannot be read.</summary>
/// <typeparam name="T">What was looked for.</typeparam>
/// <param name="Text">The text as it was typed.</param>
/// <param name="Reason">The message.</param>
public sealed record Refused<T>(string Text, Refusal Reason) : Parsed<T>(Text);

/// <summary>One way to read an ambiguous text.</summary>
/// <typeparam name="T">What was looked for.</typeparam>
/// <param name="Words">The reading in words that settle it, such as "0.1 mm each".</param>
/// <param name="Value">What it would mean.</param>
public sealed record Reading<T>(string Words, T Value);

/// <summary>The units a book speaks: they are taken where none is typed.</summary>
public enum BookUnits
{
    /// <summary>Millimetres, newton metres, bar, degrees Celsius.</summary>
    Metric,

    /// <summary>Inches, pound-force feet, psi, degrees Fahrenheit.</summary>
    Inch,
}
