using System.Diagnostics;
using System.Text.Json;
using Gudgeon.Mutation;

// Tries the mutants that Stryker made of the sums. tests/mutation.sh makes them and calls this:
// Gudgeon.Mutation REPORT TESTS OUT [folders or files of src/Gudgeon.Sums ...]
// REPORT Stryker's JSON report, TESTS the built tests with the changed sums among them, OUT where to write what was not caught.

// Two workers share the machine; CsCheck is not to spread each of them over all of it.
Environment.SetEnvironmentVariable("CsCheck_Threads", "1");

if (args is ["worker", var folder, var times])
{
    World.Share(folder);
    Worker.Run(folder, times);
    return 0;
}

if (args is not [var report, var tests, var output, .. var subjects])
{
    Console.Error.WriteLine("Met " + args.Length + " arguments; expected a report, the folder of the tests, a folder to write to, then what to try. Run tests/mutation.sh.");
    return 2;
}

var clock = Stopwatch.StartNew();
var mutants = Mutant.Read(report, subjects);
if (mutants.Count == 0)
{
    Console.Error.WriteLine($"{string.Join(", ", subjects)}: no mutant there. Name folders or files below src/Gudgeon.Sums, such as Fits or Metrology/Verdict.cs.");
    return 2;
}

World.Share(tests);
var baseline = Baseline.Measure(tests);
Console.WriteLine($"{mutants.Count} mutants, {baseline.Tests.Count} tests, {baseline.Tests.Sum(t => t.Milliseconds) / 1000:0.0} s without a mutant; measured in {clock.Elapsed.TotalMinutes:0.0} min");
foreach (var name in baseline.Failing)
    Console.WriteLine($"left out, for it fails without a mutant: {name}");

var timings = Path.Combine(output, "timings.json");
File.WriteAllText(timings, JsonSerializer.Serialize(baseline.Tests));
var mates = mutants.GroupBy(m => m.File).ToDictionary(g => g.Key, g => g.Select(m => m.Id).ToArray());
var answers = await new Foreman(tests, timings).Try(mutants.Select(m => baseline.Trial(m.Id, mates[m.File])), Environment.ProcessorCount, done =>
{
    if (done % 100 == 0)
        Console.WriteLine($"{done} of {mutants.Count} tried, {clock.Elapsed.TotalMinutes:0.0} min");
});

var tried = mutants.Select(m => (m, answers[m.Id])).ToList();
var missed = Path.Combine(output, "missed.txt");
File.WriteAllLines(missed, Score.Missed(tried));
foreach (var row in Score.Table(tried))
    Console.WriteLine(row);
Console.WriteLine($"{clock.Elapsed.TotalMinutes:0.0} min; what was not caught: {missed}");
return new Score(tried).PerCent >= Score.Least ? 0 : 1;
