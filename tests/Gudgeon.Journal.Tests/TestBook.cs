using System.Globalization;

namespace Gudgeon.Journal.Tests;

/// <summary>A book in a folder of its own, with an invented small engine told by its owner: block, head, cover on the head, starter, manifold with two injectors.</summary>
public sealed class TestBook : IDisposable
{
    private static readonly DateTimeOffset began = new(2026, 1, 10, 18, 0, 0, TimeSpan.FromHours(1));
    private int sent;

    public TestBook(bool engine = true)
    {
        Folder = Path.Combine(Path.GetTempPath(), $"gudgeon-{Guid.NewGuid():N}");
        Book = Book.Open(Folder);
        if (engine)
        {
            Good(new Tell(new BookStarted("Invented single", new Dictionary<string, string>())));
            Good(new Tell(
                new PartAdded("own.block", "block", null, 0),
                new PartAdded("own.head", "head", "own.block", 4, "M10x90"),
                new PartAdded("own.cover", "cam cover", "own.head", 6, "M6x25"),
                new PartAdded("own.manifold", "inlet manifold", "own.head"),
                new PartAdded("own.rail", "fuel rail", "own.manifold", 2, "M6x16"),
                new PartAdded("own.injector", "injector", "own.rail", 0),
                new PartAdded("own.starter", "starter", "own.block", 3, "M10x60"),
                new LineAdded("own.feed", "fuel feed hose", Gudgeon.Engine.Circuit.Fuel, "own.rail", "ext")));
        }
    }

    public string Folder { get; }
    public Book Book { get; private set; }
    public Bench Bench => Book.Bench;

    public Sending Next() => new((++sent).ToString(CultureInfo.InvariantCulture), began.AddMinutes(sent), began.AddMinutes(sent), "test");

    public Reply Good(params IReadOnlyList<Request> requests)
    {
        var outcome = Book.Submit(Next(), requests);
        Assert.True(outcome.Ok, string.Join(" ", outcome.Refusals));
        return outcome.Value;
    }

    public string Refused(params IReadOnlyList<Request> requests)
    {
        var outcome = Book.Submit(Next(), requests);
        Assert.False(outcome.Ok);
        return string.Join(" ", outcome.Refusals);
    }

    public void Reopen()
    {
        Book.Dispose();
        Book = Book.Open(Folder);
    }

    /// <summary>All that can be seen of a bench, as text: two benches that tell the same are the same.</summary>
    public static string Tell(Bench bench)
    {
        var lines = new List<string> { bench.Title };
        lines.AddRange(bench.Engine.Parts.Values.Select(p => $"{p.Id} {p.Name} {bench.Part(p.Id).Where} {bench.Part(p.Id).OffBy} {string.Join(',', bench.Part(p.Id).OffBefore)}"));
        lines.AddRange(bench.Engine.Joints.Keys.Where(bench.IsTouched).Select(j => $"{j} {bench.Joint(j).Phase} {bench.Joint(j).Required} {bench.Joint(j).Fresh} {string.Join(',', bench.Joint(j).Lots)}"));
        lines.AddRange(bench.Engine.Lines.Keys.Select(l => $"{l} {bench.Line(l).IsParted} {bench.Line(l).IsImplied} {bench.Line(l).Tag} {string.Join(',', bench.Line(l).Caps)}"));
        lines.AddRange(bench.Engine.Access.Values.Select(a => $"{a.Target}: {string.Join(',', a.First)}"));
        lines.AddRange(bench.OpenQuestions.Keys.Select(q => $"? {q}"));
        lines.AddRange(bench.Waits.Keys.Select(w => $"wait {w}"));
        return string.Join('\n', lines);
    }

    public void Dispose()
    {
        Book.Dispose();
        Directory.Delete(Folder, true);
    }
}
