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
    private const int Runs = 5;

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
            var beside = parts.Where((_, k) => k % Math.Max(1, parts.Length / PartsBesideTheModel) == 0).ToArray();
            BenchWays Build()
            {
                var ways = new BenchWays(new BenchRules(bench), today);
                ways.Network();
                return ways;
            }

            // Everything once before it counts, so that nothing answers for what is compiled on the way; then each the shortest of some runs.
            var kept = Build();
            var without = new BenchWays(new BenchRules(bench), today with { Without = ["engine stand", "hoist"] });
            foreach (var part in parts)
            {
                Way(kept, part.Id);
                Tap(without, part.Id);
            }

            var build = Shortest(() => Timed(Build));
            var taps = parts.Select(part => (part.Id, Time: Shortest(() => Timed(() => Way(kept, part.Id))))).OrderBy(t => t.Time).ToArray();
            var whys = parts.Where(part => Way(without, part.Id) is null).Select(part => (part.Id, Time: Shortest(() => Timed(() => Tap(without, part.Id))))).OrderBy(t => t.Time).ToArray();
            var mean = taps.Average(t => t.Time);
            var rebuilt = beside.Average(part => Shortest(() => Timed(() => Way(Build(), part.Id))));
            var net = kept.Network();
            var model = beside.Average(part => Shortest(() => Timed(() => ReachYardstick.Solve(net.Network, net.IndexOf(part.Id), 1, 60)), 2));
            var search = beside.Average(part => Shortest(() => Timed(() => ReachSolver.Solve(net.Network, [net.IndexOf(part.Id)]))));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{name}: {parts.Length} parts, {net.Work.Length} nodes; network {build:0.0} ms once for a state of the book; a tap mean {mean:0.00} ms, p95 {taps[taps.Length * 95 / 100].Time:0.0} ms, worst {taps[^1].Time:0.0} ms ({string.Join(", ", taps[^3..].Select(t => t.Id))})"));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{name}: without hoist and stand {whys.Length} parts are out of reach; a tap that says why mean {whys.Average(t => t.Time):0.00} ms, p95 {whys[whys.Length * 95 / 100].Time:0.0} ms, worst {whys[^1].Time:0.0} ms ({whys[^1].Id})"));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{name}: over {beside.Length} parts a tap that builds anew {rebuilt:0.0} ms, {rebuilt / mean:0.0} times as long; the model {model:0.0} ms, {model / mean:0} times a whole tap, {model / search:0} times the search alone ({search:0.00} ms)"));
            StripReport? strip = null;
            var whole = Timed(() => strip = StripReport.Of(bench, today));
            Send(book, "keep", new PlanKept([.. strip!.Steps.Select(s => s.Work.Id)], strip.Plan.TotalSeconds, strip.Plan.BoundSeconds));
            Send(book, "entry", new OperationDone("op:battery-off"));
            var again = Timed(() => StripReport.Of(book.Bench, today));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{name}: whole strip {whole / 1000:0.0} s, gap {strip.Plan.Gap * 100:0.00} %; again after one entry {again:0} ms"));
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static ReachReport? Way(BenchWays ways, string part) =>
        ReachTarget.Of(ways.Bench, part) is { Ok: true } target ? ReachReport.Of(ways, target.Value) : null;

    /// <summary>What the page works out: the way, or why there is none.</summary>
    private static object? Tap(BenchWays ways, string part) =>
        ReachTarget.Of(ways.Bench, part) is { Ok: true } target ? (object?)ReachReport.Of(ways, target.Value) ?? WhyReport.Of(ways, target.Value) : null;

    private static void Send(Book book, string id, Entry entry) => book.Submit(new Sending(id, now, now, "bench"), new Tell(entry));

    /// <summary>The shortest of some runs, so that nothing answers for what else the machine does.</summary>
    private static double Shortest(Func<double> run, int runs = Runs) => Enumerable.Range(0, runs).Min(_ => run());

    private static double Timed(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }

    private static double Timed<T>(Func<T> work) => Timed(() => { work(); });
}
