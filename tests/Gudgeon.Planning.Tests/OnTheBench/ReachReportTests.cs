using Gudgeon.Engine;
using Gudgeon.Journal;
using Gudgeon.Planning.OnTheBench;

namespace Gudgeon.Planning.Tests.OnTheBench;

public class ReachReportTests
{
    private static readonly Circumstances Today = new(BenchBook.Now);

    private static ReachReport Reach(BenchBook book, string id, Circumstances? circumstances = null) =>
        ReachReport.Of(book.Bench, ReachTarget.Of(book.Bench, book.First(id) ?? id).Value, circumstances ?? Today) ?? throw new InvalidOperationException($"no way to {id}");

    [Theory]
    [MemberData(nameof(BenchBook.Engines), MemberType = typeof(BenchBook))]
    public void Way_to_anything_replayed_in_the_book_holds_and_ends_there(string engine)
    {
        foreach (var kind in new[] { "starter", "thermostat", "head", "valve-ex", "piston", "crank", "main-cap", "gudgeon" })
        {
            using var book = new BenchBook(engine);
            if (book.First(kind) is not { } part || ReachReport.Of(book.Bench, ReachTarget.Of(book.Bench, part).Value, Today) is not { } report)
                continue;
            Assert.True(report.IsProven, $"{part}: {report.BoundSeconds} of {report.Seconds}");
            Assert.Equal(report.BoundSeconds, report.Seconds);
            BenchReplay.Holds(book, report.Steps.Select(s => s.Work));
            Assert.False(book.Bench.Part(part).IsOn);
        }
    }

    [Fact]
    public void Way_is_the_same_each_time_it_is_asked_for()
    {
        using var one = new BenchBook("layout=inline n=4");
        using var other = new BenchBook("layout=inline n=4");
        Assert.Equal(Reach(one, "crank").Steps.Select(s => s.Work.Id), Reach(other, "crank").Steps.Select(s => s.Work.Id));
    }

    [Theory]
    [MemberData(nameof(BenchBook.Engines), MemberType = typeof(BenchBook))]
    public void Ways_kept_for_a_state_of_the_book_answer_as_those_built_anew(string engine)
    {
        using var book = new BenchBook(engine);
        book.Tell(new OperationDone("op:battery-off"));
        var kept = new BenchWays(new BenchRules(book.Bench), Today);
        foreach (var part in book.Bench.Engine.Parts.Values.DistinctBy(p => p.Kind).Select(p => p.Id))
        {
            var target = ReachTarget.Of(book.Bench, part).Value;
            var (one, other) = (ReachReport.Of(kept, target), ReachReport.Of(book.Bench, target, Today));
            Assert.Equal(other?.Steps.Select(s => s.Work.Id), one?.Steps.Select(s => s.Work.Id));
            Assert.Equal(other?.Seconds, one?.Seconds);
            Assert.Equal(other?.Looks?.SavesSeconds, one?.Looks?.SavesSeconds);
        }
    }

    [Theory]
    [MemberData(nameof(BenchBook.Engines), MemberType = typeof(BenchBook))]
    public void Where_no_question_is_offered_yes_to_all_saves_no_more_than_the_looking(string engine)
    {
        using var book = new BenchBook(engine);
        var before = book.Bench.Engine.Parts.Values.DistinctBy(p => p.Kind)
            .Select(p => ReachReport.Of(book.Bench, ReachTarget.Of(book.Bench, p.Id).Value, Today)).OfType<ReachReport>().Where(r => r.Looks is null).ToArray();
        Assert.NotEmpty(before);
        var looks = book.Bench.Engine.Facts.Keys.ToArray();
        book.Tell([.. looks.Select(id => new FactAnswered(id, true))]);
        // A look takes two minutes: what all of them save together is less, or they would have been offered.
        Assert.All(before, r => Assert.InRange(r.Seconds - ReachReport.Of(book.Bench, r.Target, Today)!.Seconds, 0, looks.Length * 120));
    }

    [Fact]
    public void What_is_done_costs_nothing()
    {
        using var book = new BenchBook("layout=inline n=4");
        var way = Reach(book, "thermostat");
        var first = way.Steps[0];
        BenchReplay.Holds(book, [first.Work]);
        Assert.Equal(way.Seconds - first.Work.Minutes.Seconds, Reach(book, "thermostat").Seconds);
        BenchReplay.Holds(book, way.Steps.Skip(1).Select(s => s.Work));
        Assert.Empty(Reach(book, "thermostat").Steps);
    }

    [Fact]
    public void Owners_minutes_stand_before_the_guess_and_say_so()
    {
        using var book = new BenchBook("layout=inline n=4");
        var part = book.First("starter")!;
        var guessed = Reach(book, part);
        Assert.True(guessed.Steps[^1].Work.Minutes.IsGuess);
        book.Tell(new MinutesTold(part, 95));
        var told = Reach(book, part);
        Assert.False(told.Steps[^1].Work.Minutes.IsGuess);
        Assert.Equal(guessed.Seconds - guessed.Steps[^1].Work.Minutes.Seconds + (95 * 60), told.Seconds);
    }

    [Fact]
    public void Joint_is_reached_without_taking_its_part_off()
    {
        using var book = new BenchBook("layout=inline n=4");
        var part = book.First("head")!;
        var way = Reach(book, book.Bench.Engine.JointsOf(part)[0]);
        Assert.DoesNotContain(way.Steps, s => s.Work.Id == part);
        Assert.Contains(way.Steps, s => s.Work.Id == book.First("cam-cover"));
    }

    [Fact]
    public void Bore_is_measured_with_its_piston_out()
    {
        using var book = new BenchBook("layout=inline n=4");
        var target = ReachTarget.Measuring(book.Bench, book.First("block")!, "bore diameter", 3).Value;
        Assert.Equal("bore diameter, bore 3", target.Name);
        var way = ReachReport.Of(book.Bench, target, Today)!;
        Assert.Contains(way.Steps, s => s.Work.Id == "piston.3");
        Assert.DoesNotContain(way.Steps, s => s.Work.Id == "piston.1");
    }

    [Fact]
    public void Coolant_is_let_out_before_its_hose_is_parted()
    {
        using var book = new BenchBook("layout=inline n=4");
        var steps = Reach(book, book.First("water-pump")!).Steps.Select(s => s.Work.Id).ToList();
        var hose = steps.FindIndex(id => book.Bench.Engine.Lines.TryGetValue(id, out var line) && line.Circuit == Circuit.Coolant);
        Assert.InRange(steps.IndexOf("op:drain-coolant"), 0, hose - 1);
    }

    [Fact]
    public void Question_that_would_shorten_the_way_is_asked_with_what_it_saves()
    {
        using var book = new BenchBook("layout=inline n=4");
        var sump = book.First("sump")!;
        var way = Reach(book, sump);
        Assert.Contains(way.Steps, s => s.Work.Id == "op:engine-out");
        Assert.Contains(way.Looks!.Facts, f => f.Id == "fact:sump-clear");
        book.Tell([.. way.Looks.Facts.Select(f => new FactAnswered(f.Id, true))]);
        var shorter = Reach(book, sump);
        Assert.DoesNotContain(shorter.Steps, s => s.Work.Id == "op:engine-out");
        Assert.Equal(way.Seconds - way.Looks.SavesSeconds!.Value, shorter.Seconds + (way.Looks.Facts.Count * 120));
    }

    [Fact]
    public void Each_step_lies_one_layer_above_what_it_rests_on()
    {
        using var book = new BenchBook("layout=inline n=4");
        var layers = new Dictionary<string, int>();
        foreach (var step in Reach(book, "crank").Steps)
        {
            Assert.Equal(step.After.Select(id => layers[id] + 1).DefaultIfEmpty(0).Max(), step.Layer);
            layers[step.Work.Id] = step.Layer;
        }
    }
}
