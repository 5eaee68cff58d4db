namespace Gudgeon.Sums.Quantities;

/// <summary>A measured amount that may be added to its own kind. <see cref="Temperature"/> is not one: a point on a scale has no sum.</summary>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf> : IComparable<TSelf> where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>The amount in the unit that the type keeps inside.</summary>
    double Amount { get; }

    /// <summary>Makes a quantity from an amount in the unit that the type keeps inside.</summary>
    /// <param name="amount">The amount; finite.</param>
    /// <returns>The quantity.</returns>
    static abstract TSelf OfAmount(double amount);
}
