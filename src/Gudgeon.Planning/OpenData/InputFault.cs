using System.Collections.Immutable;

namespace Gudgeon.Planning.OpenData;

/// <summary>One fault in what was handed in: where it is, what stood there, what was expected, what to do.</summary>
public sealed record InputFault(string Where, string Met, string Expected, string ToDo)
{
    public override string ToString() => $"{Where}: {Met}; expected {Expected}. {ToDo}";
}

/// <summary>The outcome of a reading: the thing read, or every fault that was met on the way (never both).</summary>
public sealed class Reading<T>
    where T : class
{
    private readonly T? value;

    private Reading(T? value, ImmutableArray<InputFault> faults)
    {
        this.value = value;
        Faults = faults;
    }

    public ImmutableArray<InputFault> Faults { get; }

    public bool IsRead => value is not null;

    /// <summary>The thing read. Asking for it when there are faults is a bug in the caller.</summary>
    public T Value => value ?? throw new InvalidOperationException("nothing was read: " + string.Join("; ", Faults));

    public static Reading<T> Of(T value) => new(value, []);

    public static Reading<T> Failed(IEnumerable<InputFault> faults) => new(null, [.. faults]);
}
