namespace Gudgeon.Sums.Quantities;

/// <summary>A place in space, or the arrow to it, mm, from any one datum. In lifting x goes to the front, y to the left, z up.</summary>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>Sum of two places as arrows.</summary>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The arrow from one place to another.</summary>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>A multiple of an arrow.</summary>
    public static Point3 operator *(double k, Point3 a) => new(k * a.X, k * a.Y, k * a.Z);

    /// <summary>Length of the arrow, mm.</summary>
    public double Norm => Math.Sqrt(Dot(this));

    /// <summary>True for a place within a kilometre of the datum.</summary>
    internal bool IsFinite => Math.Abs(X) <= 1e6 && Math.Abs(Y) <= 1e6 && Math.Abs(Z) <= 1e6;

    internal Point3 Unit => 1 / Norm * this;

    internal double Dot(Point3 b) => X * b.X + Y * b.Y + Z * b.Z;

    internal Point3 Cross(Point3 b) => new(Y * b.Z - Z * b.Y, Z * b.X - X * b.Z, X * b.Y - Y * b.X);

    internal double AngleTo(Point3 b) => Math.Atan2(Cross(b).Norm, Dot(b));
}
