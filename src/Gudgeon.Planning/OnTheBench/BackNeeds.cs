using Gudgeon.Engine;
using Gudgeon.Journal;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>
/// What a refit asks for beside putting on: what is back from a shop is washed before it goes on, studs that came out
/// are screwed in, and what a gate asks
/// for and nobody has read is read before the gate is closed, at the latest.
/// </summary>
internal static class BackNeeds
{
    private const string Washing = "wash:";
    private const string Studs = "studs:";
    private const string Reading = "read:";
    private const int Named = 3;

    /// <summary>The steps with washing and reading put in before what waits for them.</summary>
    public static IReadOnlyList<JobStep> With(Bench bench, IReadOnlyList<JobStep> steps)
    {
        var all = new List<JobStep>();
        var bases = Bases(bench, steps).ToArray();
        all.AddRange(bases.Where(b => bench.Part(b).NeedsWash && bench.Part(b).IsOn).Select(b => Wash(bench, b)));
        // All goes onto the block, so the block itself waits for nothing but its washing.
        string[] first = [.. all.Select(s => s.Id), .. bases.Select(b => WayBack.Mark + b).Where(id => steps.Any(s => s.Id == id))];
        var read = new Dictionary<(string Part, string Characteristic), string>();
        foreach (var step in steps)
        {
            var after = step.After.ToList();
            if (step.Work.Sort == WorkSort.Part)
            {
                if (first.Contains(step.Id))
                    after.Clear();
                else
                    after.AddRange(first);
                // What is away comes back unwashed.
                if (bench.Part(step.Work.Id) is { NeedsWash: true } or { Where.Spot: Spot.Shop })
                {
                    all.Add(Wash(bench, step.Work.Id));
                    after.Add(all[^1].Id);
                }

                if (bench.Engine.JointsOf(step.Work.Id).Sum(id => bench.Joint(id).Studs.Out) is > 0 and var studs)
                {
                    var id = $"{Studs}{step.Work.Id}";
                    all.Add(new JobStep(id, Phase.Between, new BenchWork(id, WorkSort.Ready, $"screw {studs} {(studs == 1 ? "stud" : "studs")} of the {step.Work.Name} in again", WorkMinutes.OfStuds(studs)), []));
                    after.Add(id);
                }

                foreach (var reading in Readings(bench, step, after, read))
                {
                    if (reading.New is { } added)
                        all.Add(added);
                    after.Add(reading.Id);
                }
            }

            all.Add(step with { After = [.. after.Distinct()] });
        }

        return all;
    }

    /// <summary>The part that a step washes; null for other steps.</summary>
    public static string? Washed(JobStep step) => step.Id.StartsWith(Washing, StringComparison.Ordinal) ? step.Id[Washing.Length..] : null;

    /// <summary>The block: all the rest goes onto it.</summary>
    private static IEnumerable<string> Bases(Bench bench, IReadOnlyList<JobStep> steps) =>
        steps.Count == 0 ? [] : bench.Engine.Parts.Keys.Where(id => bench.IsBase(id) && !bench.Part(id).IsAbsent);

    private static JobStep Wash(Bench bench, string part) =>
        new($"{Washing}{part}", Phase.Between, new BenchWork($"{Washing}{part}", WorkSort.Ready, $"wash the {bench.NameOf(part)}, back from its shop", WorkMinutes.OfWashing(bench)), []);

    /// <summary>Readings before a part closes its gate; those that an earlier part waits for already are not told twice.</summary>
    private static IEnumerable<(string Id, JobStep? New)> Readings(Bench bench, JobStep closer, IReadOnlyList<string> after, Dictionary<(string, string), string> read)
    {
        if (bench.GateClosedBy(closer.Work.Id) is not { } gate)
            yield break;
        var missing = GateCheck.ReadingsBefore(bench, gate, bench.Engine.Parts[closer.Work.Id]);
        foreach (var earlier in missing.Select(m => read.GetValueOrDefault((m.Part, m.Characteristic.Id))).OfType<string>().Distinct())
            yield return (earlier, null);
        var open = missing.Where(m => !read.ContainsKey((m.Part, m.Characteristic.Id))).ToArray();
        if (open.Length == 0)
            yield break;
        var id = $"{Reading}{closer.Work.Id}";
        foreach (var m in open)
            read[(m.Part, m.Characteristic.Id)] = id;
        // What a name says behind its comma is how it is read: told on the page where it is read.
        var names = open.Select(m => m.Characteristic.Name.Split(',')[0]).Distinct().ToArray();
        var count = open.Sum(m => m.Missing);
        var words = $"read, before the {closer.Work.Name} goes on: {string.Join(", ", names.Take(Named))}{(names.Length > Named ? $" and {names.Length - Named} more" : "")}{(count > 0 ? $" ({count} {(count == 1 ? "reading" : "readings")})" : "")}";
        yield return (id, new JobStep(id, Phase.Between, new BenchWork(id, WorkSort.Read, words, WorkMinutes.OfReadings(bench, count)), [.. after]));
    }
}
