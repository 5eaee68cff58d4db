using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Bench;

/// <summary>
/// All verdicts of a book with 1,000 characteristics in 10,000 readings worked out afresh: figures, budgets, verdicts, what would settle them.
/// Against the bare sums of the same job: mean, budget of five lines, verdict and next step of 1,000 times ten readings, no book behind them.
/// </summary>
internal static class AssessBench
{
    private const int Wanted = 1000;
    private const int Each = 10;
    private const int Rounds = 21;

    /// <summary>Runs before the count begins: the compiler comes to rest.</summary>
    private const int Warm = 30;

    public static void Run()
    {
        var folder = Directory.CreateTempSubdirectory("gudgeon-bench-").FullName;
        try
        {
            using var book = Books.Start(folder, "measured", cylinders: "12");
            Fill(book);
            var (ours, yardstick) = (new Sample(), new Sample());
            var (figures, judged, kept) = (0, 0, 0.0);
            for (var i = 0; i < Rounds + Warm; i++)
            {
                var began = Environment.CpuUsage.TotalTime;
                var started = book.Read(bench => new Assessor(bench).Started().ToArray());
                var mine = Environment.CpuUsage.TotalTime - began;
                began = Environment.CpuUsage.TotalTime;
                kept += Verdicts.All();
                var bare = Environment.CpuUsage.TotalTime - began;
                (figures, judged) = (started.Sum(a => a.Figures.Count), started.Sum(a => a.Figures.Count(f => f.Call != Call.None)));
                if (i >= Warm)
                {
                    ours.Add(mine);
                    yardstick.Add(bare);
                }
            }

            if (judged < Wanted || !double.IsFinite(kept))
                throw new InvalidOperationException($"{judged} figures judged, {Wanted} wanted");
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"assess: {Wanted} characteristics, {book.Bench.Readings.Count} readings, {figures} figures with {judged} verdicts in {Sample.Show(ours.Median)} ms (guide 50 ms), bare sums of {Wanted} verdicts {Sample.Show(yardstick.Median)} ms (processor time, medians of {Rounds}), ratio {Sample.Show(ours.Median / yardstick.Median)}"));
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    /// <summary>Ten readings at each of a thousand places of many characteristics, spread over their spots, with a limit and an instrument for each.</summary>
    private static void Fill(Book book)
    {
        var places = book.Bench.Places;
        var at = Characteristics.All.Where(c => c.IsRead && c.Unit != Units.Look).SelectMany(c => places.All(c).Select(p => (Characteristic: c, Place: p))).Take(Wanted).ToArray();
        if (at.Length < Wanted)
            throw new InvalidOperationException($"{at.Length} places to measure at, {Wanted} wanted");
        var units = at.SelectMany(x => x.Characteristic.Spots.Select(s => s.Unit)).Distinct().ToArray();
        var n = 0;
        Books.Sure(book.Submit(Books.Sending(n++), new Tell([.. units.Select(u => new InstrumentKept(u, $"gauge for {u}", "", u, 0.001, 0.004))])));
        Books.Sure(book.Submit(Books.Sending(n++), new Tell([.. at.Select(x => x.Characteristic).Distinct().Where(c => c.Limits.HasFlag(LimitKinds.Low) || c.Limits.HasFlag(LimitKinds.High)).Select(Limit)])));
        foreach (var some in at.Chunk(100))
        {
            Books.Sure(book.Submit(Books.Sending(n++), new Tell([.. some.SelectMany((x, i) => Enumerable.Range(0, Each).Select(k =>
            {
                var spot = x.Characteristic.Spots[k % x.Characteristic.Spots.Count];
                var value = Math.Round(40 + 0.004 * Math.Sin(i) + 0.002 * Math.Sin(17.3 * k + i), 4);
                return new ReadingTaken(x.Place.Part, x.Characteristic.Id, x.Place.Number, spot.Id, Units.Plain(value), value, spot.Unit, spot.Unit, (k / x.Characteristic.Spots.Count) + 1);
            }))])));
        }
    }

    private static LimitSet Limit(Characteristic characteristic) => new(
        characteristic.Id, [], LimitState.Service, characteristic.Limits.HasFlag(LimitKinds.Low) ? 39.99 : null, characteristic.Limits.HasFlag(LimitKinds.High) ? 40.005 : null, null, characteristic.Unit, "", "invented book");
}
