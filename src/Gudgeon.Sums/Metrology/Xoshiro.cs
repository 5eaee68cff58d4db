using System.Numerics;
using System.Runtime.CompilerServices;

namespace Gudgeon.Sums.Metrology;

/// <summary>
/// xoshiro256++ (Blackman and Vigna, public domain), as a struct so that a draw is a few instructions.
/// The seeded generator of the framework is slower and unfit for long runs; that of the numerics library goes through a virtual call.
/// </summary>
internal struct Xoshiro
{
    private ulong _a, _b, _c, _d;

    internal Xoshiro(ulong seed)
    {
        _a = Mix(ref seed);
        _b = Mix(ref seed);
        _c = Mix(ref seed);
        _d = Mix(ref seed);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal ulong Next()
    {
        var result = unchecked(BitOperations.RotateLeft(_a + _d, 23) + _a);
        var t = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= t;
        _d = BitOperations.RotateLeft(_d, 45);
        return result;
    }

    /// <summary>Above 0 and below 1, so that its logarithm exists.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double Unit() => FromOneToTwo() - (1 - 1.0 / (1UL << 53));

    /// <summary>From 1 up to 2: the bits become the fraction of a double as they are, which is cheaper than to convert a whole number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double FromOneToTwo() => BitConverter.UInt64BitsToDouble(0x3FF0000000000000 | (Next() >> 12));

    // SplitMix64: spreads any seed, zero included, over the whole state.
    private static ulong Mix(ref ulong state)
    {
        unchecked
        {
            var z = state += 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
