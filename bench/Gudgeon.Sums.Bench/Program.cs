using System.Diagnostics;
using System.Globalization;
using Gudgeon.Sums.Metrology;
using Gudgeon.Sums.Quantities;
using Gudgeon.Sums.Shapes;

// Processor time of several runs, best and median, each beside its yardstick in the same run: the wall clock would time the neighbours too.
// dotnet run --project bench/Gudgeon.Sums.Bench -c Release
const int Trials = 1_000_000;

Show("verdicts of 1,000 characteristics with 10,000 readings", Time(Verdicts.All, 40), "guide 50 ms");

var flatness = Deck();
Show("minimum-zone flatness of 400 points", Time(() => Flatness.MinimumZone(flatness).Zone, 40), "no yardstick");

var normals = Enumerable.Range(0, 4).Select(i => Distribution.Normal(i, 1 + i)).ToArray();
var rectangles = Enumerable.Range(0, 4).Select(i => Distribution.Rectangular(-1 - i, 1 + i)).ToArray();
double[] ones = [1, 1, 1, 1];
Against("Monte Carlo, a million draws of four normals, summed, with mean and u", "normal(i, 1 + i, n)",
    () => MonteCarlo.RunSum(normals, ones, Trials, 1).StandardUncertainty);
Against("Monte Carlo, a million draws of four rectangles, summed, with mean and u", "uniform(-1 - i, 1 + i, n)",
    () => MonteCarlo.RunSum(rectangles, ones, Trials, 1).StandardUncertainty);
Against("the same normals with the 95 % interval (sorted)", "normal(i, 1 + i, n)",
    () => MonteCarlo.RunSum(normals, ones, Trials, 1).Symmetric(0.95).High, "y.sort(); h = y[int(0.975 * n)]");

static void Against(string name, string draw, Func<double> ours, string after = "pass")
{
    var own = Time(ours, 15);
    var numpy = NumPy(draw, after);
    if (numpy is null)
        Show(name, own, "NumPy is not there: apt install python3-numpy");
    else
        Show(name, own, string.Create(CultureInfo.InvariantCulture,
            $"NumPy best {numpy.Value.Best:0.0} ms, median {numpy.Value.Median:0.0} ms; ratio of best {own.Best / numpy.Value.Best:0.00}, of median {own.Median / numpy.Value.Median:0.00}"));
}

static (double Best, double Median)? NumPy(string draw, string after)
{
    var script = $"""
        import time
        import numpy as np
        n = {Trials}
        rng = np.random.default_rng(1)
        times = []
        for k in range(15):
            start = time.process_time()
            y = np.zeros(n)
            for i in range(4):
                y += rng.{draw}
            m, u = y.mean(), y.std(ddof=1)
            {after}
            times.append(1000 * (time.process_time() - start))
        times.sort()
        print(times[0], times[len(times) // 2])
        """;
    try
    {
        var start = new ProcessStartInfo("/usr/bin/python3") { ArgumentList = { "-c", script }, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["OMP_NUM_THREADS"] = "1";
        using var python = Process.Start(start)!;
        var parts = python.StandardOutput.ReadToEnd().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        python.WaitForExit();
        return python.ExitCode == 0
            ? (double.Parse(parts[0], CultureInfo.InvariantCulture), double.Parse(parts[1], CultureInfo.InvariantCulture))
            : null;
    }
    catch (System.ComponentModel.Win32Exception)
    {
        return null;
    }
}

static (double Best, double Median) Time(Func<double> work, int runs)
{
    var kept = 0.0;
    for (var i = 0; i < 5; i++)
        kept += work();
    var times = new double[runs];
    for (var i = 0; i < runs; i++)
    {
        var start = Environment.CpuUsage.TotalTime;
        kept += work();
        times[i] = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
    }
    GC.KeepAlive(kept);
    Array.Sort(times);
    return (times[0], times[runs / 2]);
}

static void Show(string name, (double Best, double Median) time, string beside) =>
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: best {time.Best:0.00} ms, median {time.Median:0.00} ms; {beside}"));

static Point3[] Deck()
{
    var points = new List<Point3>();
    for (var i = 0; i < 20; i++)
        for (var j = 0; j < 20; j++)
            points.Add(new(15.0 * i, 12.0 * j, 0.02 * Math.Sin(0.9 * i) * Math.Cos(0.7 * j) + 0.01 * Math.Sin(2.3 * i + 1.7 * j)));
    return [.. points];
}
