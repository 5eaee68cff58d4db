using CsCheck;

namespace Gudgeon.Journal.Tests;

/// <summary>Whatever is sent, every thing is in exactly one state and the counts balance; what is refused changes nothing.</summary>
public class BalanceTests
{
    private static readonly string[] parts = ["own.head", "own.cover", "own.manifold", "own.rail", "own.injector", "own.starter", "own.nothing"];
    private static readonly string[] places = ["bag 1", "bag 12", "own holes", "tray", ""];

    private static readonly Gen<string> part = Gen.Int[0, parts.Length - 1].Select(i => parts[i]);
    private static readonly Gen<string> joint = part.Select(p => $"j-{p}");
    private static readonly Gen<string> place = Gen.Int[0, places.Length - 1].Select(i => places[i]);
    private static readonly Gen<int> count = Gen.Int[0, 7];
    private static readonly Gen<OutLot> lot = Gen.Select(count, place, Gen.Enum<Fate>(), (n, to, fate) => new OutLot(n, "", "", to, fate));

    private static readonly Gen<Request> request = Gen.Frequency(
        (4, Gen.Select(part, lot.Array[0, 2], place, Gen.Bool, (p, lots, to, all) => (Request)new TakeOff(p, lots, to, null, all))),
        (3, part.Select(p => (Request)new Tell(new PartOn(p)))),
        (3, Gen.Select(joint, count, count, Gen.Bool, (j, n, fresh, all) => (Request)new Tell(new FastenersIn(j, n, fresh, all)))),
        (2, Gen.Select(joint, lot.Array[1, 2], Gen.Bool, (j, lots, all) => (Request)new Tell(new FastenersOut(j, lots, all)))),
        (1, Gen.Select(joint, place, count, (j, to, n) => (Request)new Tell(new FastenersPut(j, to, n == 0 ? null : n)))),
        (1, Gen.Select(joint, count, place, (j, n, to) => (Request)new Tell(new FastenersFound(j, n, to)))),
        (1, Gen.Select(joint, count, (j, n) => (Request)new Tell(new FastenersCounted(j, n)))),
        (1, part.Select(p => (Request)new Tell(new PartAbsent(p)))),
        (1, part.Select(p => (Request)new Tell(new PartSent(p, "the shop", "skim")))),
        (1, part.Select(p => (Request)new Tell(new PartReturned(p, "the shop", "bench")))),
        (1, part.Select(p => (Request)new Tell(new PartScrapped(p, "cracked")))),
        (1, part.Select(p => (Request)new Tell(new PartRenewed(p, "shelf")))),
        (1, Gen.Select(part, place, (p, to) => (Request)new Tell(new PartPut(p, to)))),
        (1, Gen.Const((Request)new Tell(new LineParted("own.feed", "3")))),
        (1, Gen.Const((Request)new Tell(new LineJoined("own.feed")))),
        (1, Gen.Select(part, part, (a, b) => (Request)new Tell(new AccessLearned(a, [b])))),
        (2, Gen.Int[2, 40].Select(n => (Request)new StrikeOut(n))));

    [Fact]
    public void Any_requests_leave_every_thing_in_one_state_and_the_counts_balanced() =>
        request.Array[1, 40].Sample(
            requests =>
            {
                using var book = new TestBook();
                foreach (var r in requests)
                {
                    var before = TestBook.Tell(book.Bench);
                    var outcome = book.Book.Submit(book.Next(), r);
                    if (!outcome.Ok)
                    {
                        Assert.All(outcome.Refusals, f => Assert.DoesNotContain("", new[] { f.Where, f.Met, f.Expected, f.Remedy }));
                        Assert.Equal(before, TestBook.Tell(book.Bench));
                    }

                    Balanced(book.Bench);
                }

                var live = TestBook.Tell(book.Bench);
                book.Reopen();
                Assert.Equal(live, TestBook.Tell(book.Bench));
                Assert.Empty(book.Book.Unreadable);
            },
            iter: 1000,
            threads: 1);

    private static void Balanced(Bench bench)
    {
        foreach (var id in bench.Engine.Joints.Keys.Where(bench.IsTouched))
        {
            var joint = bench.Joint(id);
            Assert.Equal(joint.Opened, joint.Lots.Sum(l => l.Count));
            Assert.All(joint.Lots, l => Assert.True(l.Count > 0));
            Assert.Equal(joint.Lots.Count, joint.Lots.Select(l => (l.Where, l.Size, l.Fastener)).Distinct().Count());
            if (joint.Required is { } required)
            {
                Assert.Equal(required, joint.Opened - joint.Fresh);
                Assert.True(joint.In <= required, $"{id}: {joint.In} in, {required} needed");
                Assert.Equal(joint.Phase == JointPhase.Done, joint.In == required && joint.Phase is not (JointPhase.AsFound or JointPhase.HalfUndone or JointPhase.Undone));
            }
        }

        foreach (var id in bench.Engine.Parts.Keys)
        {
            var where = bench.Part(id).Where;
            if (where.Spot == Spot.Riding)
            {
                Assert.True(bench.Part(where.Name).IsOff, $"{id} rides on {where.Name}, which is {bench.Part(where.Name).Where}");
            }

            var inAccount = Account.Of(bench).Count(l => l.Thing == id && !l.IsFasteners);
            Assert.Equal(where.Spot is Spot.Engine or Spot.Absent ? 0 : 1, inAccount);
        }
    }
}
