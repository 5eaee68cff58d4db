using System.Diagnostics.CodeAnalysis;

namespace Gudgeon.Sums;

/// <summary>
/// What a sum gives back: a value, or every refusal that stood in its way. Bad input is expected at a bench, so it is
/// a value here; an exception from a sum is a bug.
/// </summary>
public sealed class Outcome<T>
{
    private Outcome(T? value, IReadOnlyList<Refusal> refusals) => (ValueOrDefault, Refusals) = (value, refusals);

    private T? ValueOrDefault { get; }

    /// <summary>Every refusal, in the order of the inputs; empty when there is a value.</summary>
    public IReadOnlyList<Refusal> Refusals { get; }

    /// <summary>True when there is a value.</summary>
    public bool Ok => Refusals.Count == 0;

    /// <summary>The value. Asking for it when there are refusals is a bug in the caller.</summary>
    public T Value => Ok ? ValueOrDefault! : throw new InvalidOperationException(string.Join(" ", Refusals));

    /// <summary>The value or the refusals, in one question.</summary>
    public bool TryGet([MaybeNullWhen(false)] out T value)
    {
        value = ValueOrDefault;
        return Ok;
    }

    /// <summary>The next sum on this value; refusals pass through untouched.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> next) => Ok ? next(Value) : Outcome.Refused<TNext>(Refusals);

    internal static Outcome<T> Of(T value) => new(value, []);

    internal static Outcome<T> Not(IReadOnlyList<Refusal> refusals) => new(default, refusals);
}

/// <summary>Makes outcomes.</summary>
public static class Outcome
{
    /// <summary>A sum that came out.</summary>
    public static Outcome<T> Of<T>(T value) => Outcome<T>.Of(value);

    /// <summary>A sum that was refused, for one reason or several.</summary>
    public static Outcome<T> Refused<T>(params IReadOnlyList<Refusal> refusals) =>
        refusals.Count > 0 ? Outcome<T>.Not(refusals) : throw new ArgumentException("a refusal needs a reason", nameof(refusals));
}
