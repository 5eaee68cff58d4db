namespace Gudgeon.Journal;

public sealed partial class Bench
{
    /// <summary>Ports that are open on purpose, with the reason.</summary>
    public SortedDictionary<string, string> LeftOpen { get; } = new(StringComparer.Ordinal);

    /// <summary>Fluids drained and filled, in order.</summary>
    internal List<Recorded> Fluids { get; } = [];
}
