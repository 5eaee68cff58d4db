using System.Diagnostics;
using System.Globalization;
using Gudgeon.Journal;
using Gudgeon.Planning.OnTheBench;
using Gudgeon.Planning.Reach;
using Gudgeon.Planning.StripOrder;
using Gudgeon.Planning.Tests.Reach;

namespace Gudgeon.Planning.Bench;

/// <summary>Engines as books have them: the way to every part, beside the CP-SAT model of the same question; the whole strip; a plan made again after one entry.</summary>
internal static class BookBench
{
    private const int PartsBesideTheModel = 20;

    private static readonly DateTimeOffset now = new(2026, 11, 9, 18, 0, 0, TimeSpan.Zero);

    public static void Run()
    {
        Measure("vee eight", "layout=vee n=8 vt=ohv valves=1+1 lash=hydraulic fuel=port opt=starter,alternator,steering,aircon");
        Measure("vee twelve", "layout=vee n=12 vt=dohc valves=2+2 ind=turbo fuel=direct vvt=both opt=starter,alternator,oilcooler,vacpump,aircon,steering");
    }

    private static void Measure(string name, string answers)
    {
        var folder = Directory.CreateTempSubdirectory("gudgeon-bench-").FullName;
        try
        {
            using var book = Book.Open(Path.Combine(folder, "book"));
            Send(book, "start", new BookStarted(name, answers.Split(' ').Select(p => p.Split('=', 2)).ToDictionary(p => p[0], p => p[1])));
            var bench = book.Bench;
            var today = new Circumstances(now);
            var parts = bench.Engine.Parts.Values.Where(p => bench.Part(p.Id).IsOn).ToArray();
            foreach (var part in parts)
                Way(bench, today, part.Id);
            var ways = parts.Select(part => Timed(() => Way(bench, today, part.Id))).ToArray();
            var net = BenchNetwork.Of(bench, today);
            var beside = parts.Where((_, k) => k % Math.Max(1, parts.Length / PartsBesideTheModel) == 0).Select(p => net.IndexOf(p.Id)).ToArray();
            var own = beside.Sum(node => Timed(() => ReachSolver.Solve(net.Network, [node])));
            var model = beside.Sum(node => Timed(() => ReachYardstick.Solve(net.Network, node, 1, 60)));
            StripReport? strip = null;
            var whole = Timed(() => strip = StripReport.Of(bench, today));
            Send(book, "keep", new PlanKept([.. strip!.Steps.Select(s => s.Work.Id)], strip.Plan.TotalSeconds, strip.Plan.BoundSeconds));
            Send(book, "entry", new OperationDone("op:battery-off"));
            var again = Timed(() => StripReport.Of(book.Bench, today));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{name}: {parts.Length} parts; a tap's way mean {ways.Average():0.0} ms, worst {ways.Max():0.0} ms; search alone {model / own:0} times faster than the model ({beside.Length} parts); whole strip {whole / 1000:0.0} s, gap {strip.Plan.Gap * 100:0.00} %; again after one entry {again:0} ms"));
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static ReachReport? Way(Journal.Bench bench, Circumstances today, string part) =>
        ReachTarget.Of(bench, part) is { Ok: true } target ? ReachReport.Of(bench, target.Value, today) : null;

    private static void Send(Book book, string id, Entry entry) => book.Submit(new Sending(id, now, now, "bench"), new Tell(entry));

    private static double Timed(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }

    private static double Timed<T>(Func<T> work) => Timed(() => { work(); });
}
