using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.Json;

namespace Gudgeon.Mutation;

/// <summary>Hands out trials to workers and starts a new worker when one was taken down by its mutant.</summary>
internal sealed class Foreman(string folder, string timings)
{
    // A list that grows without end is to fail its test soon, not to take the machine's memory.
    private const string HeapLimit = "60000000";

    /// <summary>Tries every mutant.</summary>
    /// <param name="trials">The trials.</param>
    /// <param name="workers">Processes at a time.</param>
    /// <param name="progress">Told how many are done, after each.</param>
    /// <returns>The answers by mutant.</returns>
    public async Task<IReadOnlyDictionary<int, Answer>> Try(IEnumerable<Trial> trials, int workers, Action<int> progress)
    {
        var waiting = new ConcurrentQueue<Trial>(trials);
        var answers = new ConcurrentDictionary<int, Answer>();
        await Task.WhenAll(Enumerable.Range(0, workers).Select(_ => Task.Run(async () =>
        {
            Process? worker = null;
            while (waiting.TryDequeue(out var trial))
            {
                // A crash must come twice: once may be the machine's own trouble.
                Answer? answer = null;
                for (var attempt = 0; attempt < 2 && answer is null; attempt++)
                {
                    worker ??= await Start();
                    answer = await Ask(worker, trial);
                    if (answer is null or { Verdict: Verdict.Timeout })
                    {
                        await worker.WaitForExitAsync();
                        worker.Dispose();
                        worker = null;
                    }
                }
                answers[trial.Mutant] = answer ?? new(Verdict.Killed, "the process ended");
                progress(answers.Count);
            }
            worker?.StandardInput.Close();
        })));
        return answers;
    }

    private static async Task<Answer?> Ask(Process worker, Trial trial)
    {
        try
        {
            await worker.StandardInput.WriteLineAsync(JsonSerializer.Serialize(trial));
            await worker.StandardInput.FlushAsync();
        }
        catch (IOException)
        {
            return null;
        }
        return await worker.StandardOutput.ReadLineAsync() is { } line ? JsonSerializer.Deserialize<Answer>(line) : null;
    }

    private async Task<Process> Start()
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { ArgumentList = { "worker", folder, timings }, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["DOTNET_GCHeapHardLimit"] = HeapLimit;
        var worker = Process.Start(start)!;
        // A stack that overflows is told in thousands of lines, which must be read to be rid of.
        var first = "";
        worker.ErrorDataReceived += (_, e) => first = first.Length > 0 ? first : e.Data ?? "";
        worker.BeginErrorReadLine();
        return await worker.StandardOutput.ReadLineAsync() is not null ? worker : throw new InvalidOperationException($"A worker could not start: {first}");
    }
}
