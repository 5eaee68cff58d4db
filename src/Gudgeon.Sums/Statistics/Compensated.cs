namespace Gudgeon.Sums.Statistics;

/// <summary>A sum that carries its rounding along, as good as twice the digits of a double.</summary>
internal struct Compensated
{
    private double _sum;
    private double _left;

    internal readonly double Value => _sum + _left;

    internal void Add(double x)
    {
        var sum = _sum + x;
        var part = sum - _sum;
        _left += _sum - (sum - part) + (x - part);
        _sum = sum;
    }

    internal void AddProduct(double a, double b)
    {
        var product = a * b;
        Add(product);
        _left += Math.FusedMultiplyAdd(a, b, -product);
    }
}
