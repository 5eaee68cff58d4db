using System.Diagnostics;

namespace Gudgeon.Mutation;

/// <summary>
/// Ends the process when a test runs on without end: nothing else can stop a loop that never looks up.
/// The limit is processor time, so that a busy machine condemns no mutant; the wall clock is only there for a test that waits.
/// </summary>
internal sealed class Watchdog
{
    private const int WallFactor = 20;

    private readonly Action<string> _last;
    private volatile Watched? _now;

    /// <summary>Starts watching.</summary>
    /// <param name="last">What to do before the process is ended; given the test's name.</param>
    public Watchdog(Action<string> last)
    {
        _last = last;
        new Thread(Watch) { IsBackground = true, Priority = ThreadPriority.AboveNormal }.Start();
    }

    /// <summary>Runs something that may take no longer than its limit.</summary>
    public T Within<T>(string name, TimeSpan limit, Func<T> what)
    {
        _now = new(name, limit);
        var result = what();
        _now = null;
        return result;
    }

    private void Watch()
    {
        Watched? seen = null;
        var (processor, wall) = (TimeSpan.Zero, 0L);
        while (true)
        {
            Thread.Sleep(50);
            var now = _now;
            if (!ReferenceEquals(now, seen))
                (seen, processor, wall) = (now, Environment.CpuUsage.TotalTime, Stopwatch.GetTimestamp());
            else if (now is not null && (Environment.CpuUsage.TotalTime - processor > now.Limit || Stopwatch.GetElapsedTime(wall) > WallFactor * now.Limit))
            {
                _last(now.Name);
                Process.GetCurrentProcess().Kill();
            }
        }
    }

    private sealed record Watched(string Name, TimeSpan Limit);
}
