using Gudgeon.Journal;
using Gudgeon.Planning.OnTheBench;

namespace Gudgeon.Planning.Tests.OnTheBench;

/// <summary>Does what a plan says, step by step, in a real book, and holds each step against the book's own rules.</summary>
internal static class BenchReplay
{
    public static void Holds(BenchBook book, IEnumerable<BenchWork> steps)
    {
        foreach (var step in steps)
        {
            var blockers = book.Bench.BlockersOf(step.Id);
            Assert.True(blockers.IsNone, $"{step.Doing}: {Journal.WhyNot.Words(book.Bench, step.Id)}");
            switch (step.Sort)
            {
                case WorkSort.Part or WorkSort.Split:
                    Assert.False(Hangs(book.Bench) && book.Bench.Engine.Access.TryGetValue(step.Id, out var access) && access.Holds.Contains("eye"), $"{step.Doing}, while the engine hangs from it");
                    book.Send(new TakeOff(step.Id));
                    break;
                case WorkSort.Line:
                    book.Tell(new LineParted(step.Id));
                    break;
                case WorkSort.Operation:
                    book.Tell(new OperationDone(step.Id));
                    break;
            }
        }
    }

    private static bool Hangs(Bench bench) => bench.IsDone("op:hang") && !bench.IsDone("op:engine-out");
}
