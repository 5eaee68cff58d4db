using System.Globalization;
using System.Text;
using QRCoder;

namespace Gudgeon.Pages;

/// <summary>QR squares, drawn as one path so that they print sharp at any size.</summary>
public static class Squares
{
    /// <summary>White around a square without which cameras do not find it: ISO/IEC 18004, four modules.</summary>
    public const int Quiet = 4;

    /// <summary>Modules along one side, the quiet zone included, and the dark ones as a path in modules.</summary>
    public static (int Side, string Path) Draw(string text)
    {
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var path = new StringBuilder();
        for (var y = 0; y < data.ModuleMatrix.Count; y++)
        {
            var row = data.ModuleMatrix[y];
            for (var x = 0; x < row.Count; x++)
            {
                var run = 0;
                while (x + run < row.Count && row[x + run])
                    run++;
                if (run > 0)
                    path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h{run}v1h-{run}z");
                x += run;
            }
        }

        return (data.ModuleMatrix.Count, path.ToString());
    }

    public static string Svg(string text)
    {
        var (side, path) = Draw(text);
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {side} {side}\" shape-rendering=\"crispEdges\"><path fill=\"#fff\" d=\"M0 0h{side}v{side}H0z\"/><path d=\"{path}\"/></svg>";
    }
}
