namespace Gudgeon.Mutation;

/// <summary>What a test needs when no mutant is active.</summary>
/// <param name="Name">The test.</param>
/// <param name="Milliseconds">Its processor time.</param>
internal sealed record Timing(string Name, double Milliseconds);

/// <summary>The tests as they are without a mutant: how long each takes, which mutants it meets, and which fail by themselves.</summary>
internal sealed class Baseline
{
    private readonly Dictionary<int, HashSet<int>> _testsByMutant = [];
    private readonly HashSet<int> _setUp = [];
    private readonly HashSet<int> _failing = [];
    private readonly List<Timing> _tests = [];

    private Baseline()
    {
    }

    /// <summary>Every test, in a steady order; a test is spoken of by its place here.</summary>
    public IReadOnlyList<Timing> Tests => _tests;

    /// <summary>Tests that fail without any mutant. They are left out: they can kill nothing.</summary>
    public IEnumerable<string> Failing => _failing.Order().Select(t => Tests[t].Name);

    /// <summary>Runs every test twice: once to see what it meets, once more for its time alone. What is met before any test acts while static fields are set up.</summary>
    /// <param name="folder">The built tests with the changed sums.</param>
    public static Baseline Measure(string folder)
    {
        var world = new World(folder);
        var baseline = new Baseline();
        IReadOnlyList<TestCase> cases = [];
        baseline._setUp.UnionWith(world.Meeting(() => cases = world.SetUp()));
        for (var test = 0; test < cases.Count; test++)
        {
            var passes = true;
            foreach (var mutant in world.Meeting(() => passes = cases[test].Passes()))
                baseline.ByMutant(mutant).Add(test);
            // Processor time: the wall clock would time the neighbours too, and with them how long a mutant is waited for.
            var start = Environment.CpuUsage.TotalTime;
            if (!cases[test].Passes() || !passes)
                baseline._failing.Add(test);
            baseline._tests.Add(new(cases[test].Name, (Environment.CpuUsage.TotalTime - start).TotalMilliseconds));
        }
        return baseline;
    }

    /// <summary>The tests to try a mutant with, the quickest first.</summary>
    /// <param name="mutant">The mutant.</param>
    /// <param name="mates">All mutants of its file.</param>
    /// <remarks>A mutant that acts while static fields are set up shows in tests that only read them: after the tests that meet its file come all others.</remarks>
    public Trial Trial(int mutant, IReadOnlyList<int> mates)
    {
        var near = Met(mutant);
        if (!_setUp.Contains(mutant))
            return new(mutant, [.. Quickest(near)], []);
        var file = mates.SelectMany(Met).ToHashSet();
        return new(mutant, [.. Quickest(near)], [.. Quickest(file), .. Quickest(Enumerable.Range(0, Tests.Count).Where(t => !file.Contains(t)))]);
    }

    private IEnumerable<int> Met(int mutant) => _testsByMutant.GetValueOrDefault(mutant) ?? [];

    private IEnumerable<int> Quickest(IEnumerable<int> tests) => tests.Where(t => !_failing.Contains(t)).OrderBy(t => Tests[t].Milliseconds);

    private HashSet<int> ByMutant(int mutant) => _testsByMutant.TryGetValue(mutant, out var tests) ? tests : _testsByMutant[mutant] = [];
}
