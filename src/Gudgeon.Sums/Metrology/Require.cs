using Gudgeon.Sums.Quantities;

namespace Gudgeon.Sums.Metrology;

/// <summary>Says what is out of range by its name in the trade.</summary>
internal static class Require
{
    internal static void Positive<T>(T value, string name) where T : struct, IQuantity<T>
    {
        if (!(value.Amount > 0))
            throw new ArgumentOutOfRangeException(null, $"The {name} must be above zero; it was {value}.");
    }

    internal static void NotNegative<T>(T value, string name) where T : struct, IQuantity<T>
    {
        if (!(value.Amount >= 0))
            throw new ArgumentOutOfRangeException(null, $"The {name} must not be below zero; it was {value}.");
    }
}
