using System.Diagnostics.CodeAnalysis;

namespace Gudgeon.Sums;

/// <summary>
/// What a sum gives back: a value, or every fault that stood in its way. Bad input is expected at a bench, so it is
/// a value here; an exception from a sum is a bug.
/// </summary>
public sealed class Outcome<T>
{
    private Outcome(T? value, IReadOnlyList<Fault> faults) => (ValueOrDefault, Faults) = (value, faults);

    private T? ValueOrDefault { get; }

    /// <summary>Every fault found, in the order of the inputs; empty when there is a value.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>True when there is a value.</summary>
    public bool Ok => Faults.Count == 0;

    /// <summary>The value. Asking for it when there are faults is a bug in the caller.</summary>
    public T Value => Ok ? ValueOrDefault! : throw new InvalidOperationException(string.Join(" ", Faults));

    /// <summary>The value or the faults, in one question.</summary>
    public bool TryGet([MaybeNullWhen(false)] out T value)
    {
        value = ValueOrDefault;
        return Ok;
    }

    /// <summary>The next sum on this value; faults pass through untouched.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> next) => Ok ? next(Value) : Outcome.Refused<TNext>(Faults);

    internal static Outcome<T> Of(T value) => new(value, []);

    internal static Outcome<T> Not(IReadOnlyList<Fault> faults) => new(default, faults);
}

/// <summary>Makes outcomes.</summary>
public static class Outcome
{
    /// <summary>A sum that came out.</summary>
    public static Outcome<T> Of<T>(T value) => Outcome<T>.Of(value);

    /// <summary>A sum that was refused, for one reason or several.</summary>
    public static Outcome<T> Refused<T>(params IReadOnlyList<Fault> faults) =>
        faults.Count > 0 ? Outcome<T>.Not(faults) : throw new ArgumentException("a refusal needs a fault", nameof(faults));
}
