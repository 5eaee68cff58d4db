namespace Gudgeon.Planning.Calendar;

/// <summary>
/// A small seeded generator, the same on every platform and release: SplitMix64 (Steele, Lea and Flood, 2014; constants from memory).
/// </summary>
internal sealed class SplitMix(ulong seed)
{
    private ulong state = seed;

    public ulong Next()
    {
        state += 0x9E3779B97F4A7C15UL;
        var mixed = state;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9UL;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL;
        return mixed ^ (mixed >> 31);
    }

    /// <summary>From 0 (within) to 1 (without).</summary>
    public double NextShare() => (Next() >> 11) * (1.0 / (1UL << 53));
}
