using System.Runtime.CompilerServices;

namespace Gudgeon.Sums.Quantities;

/// <summary>Arithmetic that every quantity shares. Two measured values are compared with a tolerance, so <c>==</c> is nothing to lean on.</summary>
public static class QuantityMath
{
    extension<T>(T self) where T : struct, IQuantity<T>
    {
        /// <summary>Sum of two amounts of one kind.</summary>
        public static T operator +(T left, T right) => T.OfAmount(left.Amount + right.Amount);

        /// <summary>Difference of two amounts of one kind.</summary>
        public static T operator -(T left, T right) => T.OfAmount(left.Amount - right.Amount);

        /// <summary>The same amount with the other sign.</summary>
        public static T operator -(T value) => T.OfAmount(-value.Amount);

        /// <summary>A multiple of an amount.</summary>
        public static T operator *(T value, double factor) => T.OfAmount(value.Amount * factor);

        /// <summary>A multiple of an amount.</summary>
        public static T operator *(double factor, T value) => T.OfAmount(value.Amount * factor);

        /// <summary>A part of an amount.</summary>
        public static T operator /(T value, double divisor) => T.OfAmount(value.Amount / divisor);

        /// <summary>How many times one amount goes into another.</summary>
        public static double operator /(T left, T right) => left.Amount / right.Amount;

        /// <summary>Less than.</summary>
        public static bool operator <(T left, T right) => left.Amount < right.Amount;

        /// <summary>More than.</summary>
        public static bool operator >(T left, T right) => left.Amount > right.Amount;

        /// <summary>Not more than.</summary>
        public static bool operator <=(T left, T right) => left.Amount <= right.Amount;

        /// <summary>Not less than.</summary>
        public static bool operator >=(T left, T right) => left.Amount >= right.Amount;

        /// <summary>The amount without its sign.</summary>
        /// <returns>The amount, never negative.</returns>
        public T Abs() => T.OfAmount(Math.Abs(self.Amount));

        /// <summary>Whether two measured values agree within a tolerance, the edge included.</summary>
        /// <param name="other">The other value.</param>
        /// <param name="tolerance">The largest difference that still agrees; not negative.</param>
        /// <returns>True when they agree.</returns>
        public bool IsWithin(T other, T tolerance) => Math.Abs(self.Amount - other.Amount) <= tolerance.Amount;
    }

    /// <summary>Refuses a value that is no number: such a quantity is a fault in the program, never something typed.</summary>
    internal static double Finite(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "A quantity must be a finite number.");
}
