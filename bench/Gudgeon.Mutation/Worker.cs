using System.Text.Json;

namespace Gudgeon.Mutation;

/// <summary>Tries mutants one after another in a process of its own, which an endless or a crashing one takes down with it.</summary>
internal sealed class Worker
{
    // A test that takes this much longer than without the mutant, and more than a moment, will not end.
    private const int Factor = 5;
    private static readonly TimeSpan s_moment = TimeSpan.FromSeconds(3);

    private readonly string _folder;
    private readonly IReadOnlyList<Timing> _tests;
    private readonly TextWriter _out;
    private readonly Watchdog _watchdog;
    private World? _shared;

    private Worker(string folder, IReadOnlyList<Timing> tests, TextWriter output)
    {
        (_folder, _tests, _out) = (folder, tests, output);
        _watchdog = new(test => Say(new Answer(Verdict.Timeout, test)));
    }

    private World Shared
    {
        get
        {
            if (_shared is null)
            {
                _shared = new(_folder);
                _shared.SetUp();
            }
            return _shared;
        }
    }

    /// <summary>Answers trials, one a line, until there are no more.</summary>
    /// <param name="folder">The built tests with the changed sums.</param>
    /// <param name="timings">File of the tests and their times.</param>
    public static void Run(string folder, string timings)
    {
        // What a test prints must not come between the answers.
        var output = Console.Out;
        Console.SetOut(TextWriter.Null);
        var worker = new Worker(folder, JsonSerializer.Deserialize<Timing[]>(File.ReadAllText(timings))!, output);
        _ = worker.Shared;
        worker.Say("ready");
        while (Console.ReadLine() is { } line)
            worker.Say(worker.Try(JsonSerializer.Deserialize<Trial>(line)!));
    }

    private void Say<T>(T what)
    {
        _out.WriteLine(JsonSerializer.Serialize(what));
        _out.Flush();
    }

    private Answer Try(Trial trial)
    {
        if (trial.Tests.Length == 0 && trial.Fresh.Length == 0)
            return new(Verdict.NoCoverage);
        var fresh = trial.Fresh;
        foreach (var test in trial.Tests)
        {
            Shared.Active = trial.Mutant;
            var passes = Passes(Shared, test);
            Shared.Active = World.None;
            if (passes)
                continue;
            if (Passes(Shared, test))
                return new(Verdict.Killed, _tests[test].Name);
            // It fails without the mutant too: either by chance, or because the mutant left something behind in what is set up once.
            // Only a fresh world can tell, and this one is spent.
            Leave(_shared!);
            _shared = null;
            fresh = fresh.Length > 0 ? fresh : trial.Tests;
            break;
        }
        return fresh.Length > 0 ? TryFresh(trial.Mutant, fresh) : new(Verdict.Survived);
    }

    private Answer TryFresh(int mutant, int[] tests)
    {
        var world = new World(_folder, mutant);
        try
        {
            foreach (var test in tests)
                if (!Passes(world, test) && Passes(Shared, test))
                    return new(Verdict.Killed, _tests[test].Name);
            return new(Verdict.Survived);
        }
        finally
        {
            Leave(world);
        }
    }

    private bool Passes(World world, int test)
    {
        var (name, own) = _tests[test];
        return _watchdog.Within(name, s_moment + TimeSpan.FromMilliseconds(Factor * own), () =>
        {
            try
            {
                // A row that is gone tells nothing: the rows that are left are tried by their own numbers.
                return world.Test(name)?.Passes() ?? true;
            }
            catch (Exception)
            {
                // The test's data cannot be made: xunit fails such a test.
                return false;
            }
        });
    }

    private static void Leave(World world) => world.Unload();
}
