using Gudgeon.Engine;

namespace Gudgeon.Journal.Tests;

/// <summary>Whole engines of the tables, stripped to the last part and put back.</summary>
public class WholeEngineTests
{
    public static TheoryData<string> Engines => new(
        "layout=inline;n=4",
        "layout=single;n=1",
        "layout=vee;n=8;vt=ohv",
        "layout=flat;n=6");

    [Theory]
    [MemberData(nameof(Engines))]
    public void Strip_and_refit_of_a_whole_engine_ends_at_zero(string text)
    {
        using var book = new TestBook(engine: false);
        var answers = text.Split(';').Select(a => a.Split('=')).ToDictionary(a => a[0], a => a[1]);
        book.Good(new Tell(new BookStarted("Invented engine", answers)));
        var stripped = Strip(book);
        Assert.True(stripped > 50, $"only {stripped} parts came off");
        Assert.DoesNotContain(book.Bench.Engine.Parts.Keys, p => book.Bench.Part(p).IsOn && book.Bench.Engine.CarrierOf(p) is not null);
        Assert.NotEmpty(AllBack.MissingFrom(book.Bench));
        Refit(book);
        Assert.Empty(AllBack.MissingFrom(book.Bench).Select(f => f.ToString()));
        var live = TestBook.Tell(book.Bench);
        book.Reopen();
        Assert.Equal(live, TestBook.Tell(book.Bench));
    }

    private static int Strip(TestBook book)
    {
        var done = 0;
        while (true)
        {
            var bench = book.Bench;
            if (bench.CanComeOff().FirstOrDefault(p => bench.Part(p.Id).IsOn) is { } part)
            {
                var joint = bench.Engine.JointsOf(part.Id).Select(id => bench.Engine.Joints[id]).FirstOrDefault(j => j.IsCounted);
                book.Good(new TakeOff(part.Id, joint is null ? [] : [new OutLot(joint.Guess.Fewest, "M8", "", $"bag {done}")], "shelf"));
                done++;
                continue;
            }

            var blocked = bench.HeldBack().ToArray();
            if (blocked.Length == 0)
            {
                return done;
            }

            // Nothing comes off until a line is parted, something is done to the whole engine, or a question is answered yes.
            var needs = blocked.Select(p => p.Id).Concat(bench.Engine.Operations.Keys)
                .Select(bench.BlockersOf)
                .SelectMany(b => b.First.Concat(b.Choices.SelectMany(c => c.Sets).SelectMany(s => s)))
                .Where(n => !bench.IsMet(n))
                .Distinct()
                .ToArray();
            var line = needs.FirstOrDefault(n => n.Sort == NeedSort.LineParted).Id;
            var operation = needs.FirstOrDefault(n => n.Sort == NeedSort.Operation && bench.BlockersOf(n.Id).IsNone).Id;
            var fact = needs.FirstOrDefault(n => n.Sort == NeedSort.Fact).Id;
            Entry entry = line is not null ? new LineParted(line, "7")
                : operation is not null ? new OperationDone(operation)
                : fact is not null ? new FactAnswered(fact, true)
                : throw new InvalidOperationException($"stuck with {blocked.Length} parts on: {string.Join(", ", blocked.Take(5).Select(p => $"{p.Id} waits for {string.Join(' ', bench.BlockersOf(p.Id).First)}"))}");
            book.Good(new Tell(entry));
        }
    }

    private static void Refit(TestBook book)
    {
        while (book.Bench.WayBackOn() is [var next, ..])
        {
            Assert.True(next.IsReady, $"{next.Part} waits for {string.Join(", ", next.WaitsFor)}");
            book.Good(new Tell(new PartOn(next.Part)));
        }

        foreach (var joint in book.Bench.Engine.Joints.Values.Where(j => book.Bench.Joint(j.Id).IsOpen))
        {
            var state = book.Bench.Joint(joint.Id);
            book.Good(new Tell(new FastenersIn(joint.Id, state.Required ?? joint.Guess.Fewest, All: true)));
        }

        foreach (var line in book.Bench.Engine.Lines.Keys.Where(l => book.Bench.Line(l).IsParted).ToArray())
        {
            book.Good(new Tell(new LineJoined(line)));
        }

        foreach (var operation in book.Bench.Engine.Operations.Values.Where(o => o.IsTakenBack && book.Bench.IsDone(o.Id)).ToArray())
        {
            book.Good(new Tell(new OperationUndone(operation.Id)));
        }
    }
}
