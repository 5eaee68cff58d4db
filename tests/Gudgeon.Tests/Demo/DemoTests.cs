using Gudgeon.Journal;
using Gudgeon.Tests.Commands;
using Gudgeon.Tests.House;

namespace Gudgeon.Tests.Demo;

/// <summary>
/// The demo is recorded through the same door as a user's book: its lines are carried out as commands, and what comes of them is
/// the journal file that the pages open. To write that file anew after a change of the lines: GUDGEON_WRITE_DEMO=1.
/// </summary>
public class DemoTests
{
    private static readonly string journal = Path.Combine(Repository.Root, "demo", "hill-climb.jsonl");

    [Fact]
    public void Demo_lines_carried_out_come_to_the_journal_file_to_the_byte()
    {
        using var shell = new Shell();
        var lines = File.ReadAllText(Path.Combine(Repository.Root, "demo", "hill-climb.txt")).Replace("demo/engine.json", Path.Combine(Repository.Root, "demo", "engine.json").Replace('\\', '/'), StringComparison.Ordinal);
        File.WriteAllText(shell.File("hill-climb.txt"), lines);
        shell.Good("replay", shell.File("hill-climb.txt"));
        shell.Good("journal", "export", shell.File("out.jsonl"));
        if (Environment.GetEnvironmentVariable("GUDGEON_WRITE_DEMO") == "1")
        {
            File.Copy(shell.File("out.jsonl"), journal, true);
        }

        Assert.Equal(File.ReadAllText(journal), File.ReadAllText(shell.File("out.jsonl")));
    }

    [Fact]
    public void Demo_holds_what_it_promises()
    {
        var folder = Directory.CreateTempSubdirectory("gudgeon-demo-").FullName;
        using (var book = JournalFile.Import(File.OpenText(journal), journal, folder).Value)
        {
            var bench = book.Bench;
            var entries = book.Entries.Select(r => r.Entry).ToArray();
            Assert.Empty(book.Unreadable);
            Assert.True(entries.Length >= 250, $"{entries.Length} entries");
            Assert.Contains(entries.OfType<FastenersOut>(), e => e.Lots.Any(l => l.Fate == Fate.Broken));
            Assert.NotEmpty(bench.Learned);
            Assert.Contains(entries, e => e is PartSent);
            Assert.NotEmpty(entries.OfType<GateOverridden>());
            Assert.NotEmpty(Account.Find(bench, "bag 12"));
            Assert.Contains(BenchFindings.Of(bench), f => f.Name == FindingNames.ReadingTooClose);
            Assert.Equal(3, BenchFindings.Of(bench).Where(f => f.Name == FindingNames.ReadingOutside && f.Where.Contains("wear", StringComparison.Ordinal)).Select(f => f.Where).Distinct().Count());
            var off = bench.Engine.Parts.Keys.Count(p => bench.Part(p).IsOff);
            Assert.True(off > 20, $"{off} parts off");
            Assert.True(bench.Part("crank.1").IsOn);
            Assert.True(LiftAssessor.Of(bench).Passes);
        }

        Directory.Delete(folder, true);
    }

    /// <summary>What a reader without this program must find in the file: the text is the demo's own, typed in its lines.</summary>
    [Fact]
    public void Book_as_one_file_holds_readings_verdicts_workings_and_overrides()
    {
        using var shell = new Shell();
        shell.Good("journal", "import", journal, "--as", "demo");
        shell.Good("book", shell.File("book.html"));
        var page = File.ReadAllText(shell.File("book.html"));
        string[] wanted =
        [
            "<h2>How it came apart</h2>",
            "outside limits",
            "too close to call",
            "(typed &quot;86.083&quot;)",
            "JCGM 100 (GUM), clause 5",
            "each as a standard uncertainty",
            "by invented sheet for the demo, page 3",
            "because housings, tunnel and shells were measured at the shop",
            "reading-outside: bore 1, bore diameter, top, across the crank",
        ];
        Assert.All(wanted, w => Assert.Contains(w, page, StringComparison.Ordinal));
    }
}
