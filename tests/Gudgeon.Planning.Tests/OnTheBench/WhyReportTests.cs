using Gudgeon.Journal;
using Gudgeon.Planning.OnTheBench;
using Gudgeon.Planning.Reach;

namespace Gudgeon.Planning.Tests.OnTheBench;

public class WhyReportTests
{
    private static readonly Circumstances Today = new(BenchBook.Now);

    private static WhyReport Why(BenchBook book, string id, Circumstances circumstances) =>
        WhyReport.Of(book.Bench, ReachTarget.Of(book.Bench, book.First(id) ?? id).Value, circumstances);

    [Theory]
    [MemberData(nameof(BenchBook.Engines), MemberType = typeof(BenchBook))]
    public void Reasons_taken_away_make_it_possible_and_fewer_do_not(string engine)
    {
        using var book = new BenchBook(engine);
        string[] missing = ["engine stand", "hoist", "spring compressor", "pan", "dial gauge or pin"];
        foreach (var part in book.Bench.Engine.Parts.Values.Where(p => p.Kind is "crank" or "valve-ex" or "starter" or "head" or "cam").DistinctBy(p => p.Kind))
        {
            var why = Why(book, part.Id, Today with { Without = missing, Alone = true });
            Assert.Empty(why.Rules);
            var equipment = why.Reasons.Where(r => r.Kind == BlockKind.Equipment).Select(r => missing.Single(m => r.Words.Contains(m.Split(" or ")[0], StringComparison.Ordinal))).ToArray();
            var person = why.Reasons.Any(r => r.Kind == BlockKind.Person);
            var facts = why.Reasons.Count(r => r.Kind == BlockKind.Fact);
            if (facts > 0 || why.Reasons.IsEmpty)
                continue;
            var lifted = Today with { Without = [.. missing.Except(equipment)], Alone = !person };
            Assert.NotNull(ReachReport.Of(book.Bench, why.Target, lifted));
            foreach (var kept in equipment)
                Assert.Null(ReachReport.Of(book.Bench, why.Target, lifted with { Without = [.. lifted.Without, kept] }));
            if (person)
                Assert.Null(ReachReport.Of(book.Bench, why.Target, lifted with { Alone = true }));
        }
    }

    [Fact]
    public void Equipment_that_is_due_says_when_and_no_longer_holds_then()
    {
        using var book = new BenchBook("layout=inline n=4");
        book.Tell(new EquipmentTold("engine stand", true, new DateTimeOffset(2026, 11, 13, 17, 0, 0, TimeSpan.FromHours(1))));
        var why = Why(book, "crank", Today);
        Assert.Contains(why.Reasons, r => r.Words == "needs the engine stand, due Fri 13 Nov");
        Assert.Empty(Why(book, "crank", new Circumstances(new DateTimeOffset(2026, 11, 13, 18, 0, 0, TimeSpan.FromHours(1)))).Reasons);
    }

    [Fact]
    public void Wait_for_equipment_counts_as_equipment_that_is_not_there()
    {
        using var book = new BenchBook("layout=inline n=4");
        book.Tell(new Waiting("engine stand"));
        Assert.Contains(Why(book, "crank", Today).Reasons, r => r.Words == "needs the engine stand, waited for");
        book.Tell(new Waiting("engine stand", Over: true));
        Assert.Empty(Why(book, "crank", Today).Reasons);
    }

    [Fact]
    public void Part_that_bears_the_hanging_engine_is_held()
    {
        using var book = new BenchBook("layout=inline n=4");
        book.Tell(new OperationDone("op:hang"));
        var why = Why(book, book.First("inlet-manifold")!, Today);
        Assert.Contains(why.First, r => r.StartsWith("held: the engine hangs from the", StringComparison.Ordinal));
    }

    [Fact]
    public void Rules_that_contradict_each_other_are_named_with_their_entry()
    {
        using var book = new BenchBook("layout=flat n=4 case=split vt=dohc drive=belt ind=turbo");
        book.Tell(new AccessLearned("case-half.2", ["rod-cap.1"]));
        var number = book.Book.Entries[^1].Number;
        var why = Why(book, "rod-cap.1", Today);
        Assert.Equal(2, why.Rules.Length);
        Assert.Contains(why.Rules, r => r.StartsWith($"entry {number}: ", StringComparison.Ordinal));
        Assert.Equal([number], why.MadeBy);
        book.Send(new StrikeOut(number));
        Assert.Empty(Why(book, "rod-cap.1", Today).Rules);
    }

    [Fact]
    public void Rule_learned_twice_names_both_entries()
    {
        using var book = new BenchBook("layout=flat n=4 case=split vt=dohc drive=belt ind=turbo");
        book.Tell(new AccessLearned("case-half.2", ["rod-cap.1"]));
        book.Tell(new AccessLearned("case-half.2", ["rod-cap.1"]));
        long[] both = [.. book.Book.Entries.Where(r => r.Entry is AccessLearned).Select(r => r.Number)];
        Assert.Equal(both, Why(book, "rod-cap.1", Today).MadeBy);
        book.Send(new StrikeOut(both[0]));
        Assert.Equal([both[1]], Why(book, "rod-cap.1", Today).MadeBy);
    }

    [Fact]
    public void Words_never_are_a_bare_no()
    {
        using var book = new BenchBook("layout=inline n=4");
        foreach (var part in book.Bench.Engine.Parts.Keys)
            Assert.True(PlanWords.Why(Why(book, part, Today with { Alone = true })).First().Length > 20, part);
    }
}
