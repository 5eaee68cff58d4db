using System.Runtime.CompilerServices;

namespace Gudgeon.Sums.Metrology;

/// <summary>Normal draws by the ziggurat of Marsaglia and Tsang (Journal of Statistical Software 5, 2000), 256 layers: one draw in a few nanoseconds.</summary>
internal static class Ziggurat
{
    private const int Layers = 256;
    private const double Edge = 3.6541528853610088;
    private const double Area = 0.00492867323399;

    private static readonly double[] s_x = Widths();
    private static readonly double[] s_y = Array.ConvertAll(s_x, Height);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double Normal(ref Xoshiro chance)
    {
        var bits = chance.Next();
        var layer = (int)(bits & (Layers - 1));
        var z = Signed(bits) * s_x[layer];
        return Math.Abs(z) < s_x[layer + 1] ? z : Edges(ref chance, layer, z);
    }

    // The 54 high bits, signed, as a number between -1 and 1.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Signed(ulong bits) => (unchecked((long)bits) >> 10) * (1.0 / (1L << 53));

    private static double Edges(ref Xoshiro chance, int layer, double z)
    {
        while (true)
        {
            if (layer == 0)
                return Tail(ref chance, z < 0);
            if (s_y[layer] + chance.Unit() * (s_y[layer + 1] - s_y[layer]) < Height(z))
                return z;
            var bits = chance.Next();
            layer = (int)(bits & (Layers - 1));
            z = Signed(bits) * s_x[layer];
            if (Math.Abs(z) < s_x[layer + 1])
                return z;
        }
    }

    private static double Tail(ref Xoshiro chance, bool negative)
    {
        double x, y;
        do
        {
            x = -Math.Log(chance.Unit()) / Edge;
            y = -Math.Log(chance.Unit());
        }
        while (y + y < x * x);
        return negative ? -(Edge + x) : Edge + x;
    }

    private static double[] Widths()
    {
        var x = new double[Layers + 1];
        x[0] = Area / Height(Edge);
        x[1] = Edge;
        for (var i = 2; i < Layers; i++)
            x[i] = Math.Sqrt(-2 * Math.Log(Area / x[i - 1] + Height(x[i - 1])));
        return x;
    }

    private static double Height(double x) => Math.Exp(-0.5 * x * x);
}
