using CsCheck;
using Gudgeon.Capture;
using Gudgeon.Engine;

namespace Gudgeon.Tests.Capture;

/// <summary>Twelve invented stories of 302 notes, as people speak. The facts were written down before the ear heard them.</summary>
public class StoryTests(ITestOutputHelper output)
{
    private static readonly string[] Files = ["stories-1.txt", "stories-2.txt"];

    /// <summary>Stories by other hands, first heard without a look at them; each file says what came of that first hearing.</summary>
    private static readonly string[] Unseen = ["unseen.txt", "unseen-a.txt", "unseen-b.txt", "unseen-c.txt", "unseen-d.txt", "unseen-e.txt", "unseen-f.txt", "unseen-g.txt", "unseen-h.txt", "unseen-i.txt", "unseen-j.txt", "unseen-k.txt", "unseen-l.txt", "unseen-m.txt", "unseen-n.txt", "unseen-p.txt", "unseen-q.txt", "unseen-r.txt", "unseen-s.txt", "unseen-t.txt", "unseen-u.txt"];

    private static string PathOf(string file) => Path.Combine(AppContext.BaseDirectory, "Capture", "Data", file);

    private static List<Marked> All() => [.. Files.SelectMany(f => Story.Mark(PathOf(f)))];

    private static (double Precision, double Recall) Score(List<Marked> all)
    {
        double expected = all.Sum(m => m.Note.Facts.Count);
        double right = expected - all.Sum(m => m.Missed.Count);
        return (right / (right + all.Sum(m => m.Wrong.Count)), right / expected);
    }

    [Fact]
    public void Stories_are_heard_with_precision_and_recall_of_95_percent()
    {
        var all = All();
        var (precision, recall) = Score(all);
        output.WriteLine($"{all.Count} notes: precision {precision:P1}, recall {recall:P1}");
        Assert.True(all.Count >= 300);
        Assert.True(precision >= 0.95, $"precision {precision:P1}");
        Assert.True(recall >= 0.95, $"recall {recall:P1}");
    }

    /// <summary>
    /// What was reached after the first hearing must not be lost again: of what is recorded so much is right, and of what was
    /// due so much is understood, recorded or offered. The figures of the first hearing stand in the files.
    /// </summary>
    [Theory]
    [InlineData("unseen.txt", 0.94, 0.91)]
    [InlineData("unseen-a.txt", 0.91, 0.76)]
    [InlineData("unseen-b.txt", 0.91, 0.73)]
    [InlineData("unseen-c.txt", 0.92, 0.72)]
    [InlineData("unseen-d.txt", 0.93, 0.74)]
    [InlineData("unseen-e.txt", 0.92, 0.68)]
    [InlineData("unseen-f.txt", 0.91, 0.73)]
    [InlineData("unseen-g.txt", 0.93, 0.82)]
    [InlineData("unseen-h.txt", 0.96, 0.90)]
    [InlineData("unseen-i.txt", 0.98, 0.95)]
    [InlineData("unseen-j.txt", 0.93, 0.77)]
    [InlineData("unseen-k.txt", 0.89, 0.58)]
    [InlineData("unseen-l.txt", 0.94, 0.81)]
    [InlineData("unseen-m.txt", 0.86, 0.62)]
    [InlineData("unseen-n.txt", 0.88, 0.66)]
    [InlineData("unseen-p.txt", 0.87, 0.76)]
    [InlineData("unseen-q.txt", 0.90, 0.69)]
    [InlineData("unseen-r.txt", 0.90, 0.81)]
    [InlineData("unseen-s.txt", 0.93, 0.81)]
    [InlineData("unseen-t.txt", 0.87, 0.67)]
    [InlineData("unseen-u.txt", 0.92, 0.79)]
    public void Stories_by_other_hands_are_heard_no_worse_than_before(string file, double least, double leastRecall)
    {
        var (precision, _) = Score([.. Story.Mark(PathOf(file))]);
        var (_, recall) = Score([.. Story.Mark(PathOf(file), anyWay: true)]);
        output.WriteLine($"{file}: recorded rightly {precision:P1}, understood {recall:P1}");
        Assert.True(precision >= least, $"precision {precision:P1}");
        Assert.True(recall >= leastRecall, $"recall {recall:P1}");
    }

    /// <summary>What may be recorded at once is what was heard rightly in these files, and nothing else.</summary>
    [Fact]
    public void The_table_of_proven_ways_is_what_the_files_prove()
    {
        var proven = ProvenWays.Rows(Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Capture", "Data"), "*.txt").Order(StringComparer.Ordinal)).ToHashSet();
        var held = Lexicon.Rows("ways").Select(r => string.Join('|', r)).ToHashSet();
        Assert.True(held.Count > 2000);
        Assert.True(held.SetEquals(proven), $"make it again with the bench: {string.Join("; ", held.Except(proven).Take(5))} // {string.Join("; ", proven.Except(held).Take(5))}");
    }

    [Fact]
    public void Every_fact_is_echoed_and_points_at_its_words()
    {
        foreach (var marked in All().Concat(Unseen.SelectMany(f => Story.Mark(PathOf(f)))))
        {
            foreach (var fact in marked.Heard.Facts)
            {
                Assert.NotEmpty(fact.Echo);
                Assert.NotEmpty(fact.Spans);
                Assert.All(fact.Spans, s => Assert.True(s.Start >= 0 && s.Length > 0 && s.End <= marked.Note.Text.Length));
            }
        }
    }

    [Fact]
    public void No_word_of_weight_is_lost_in_any_story()
    {
        foreach (var marked in All().Concat(Unseen.SelectMany(f => Story.Mark(PathOf(f)))))
            Assert.Empty(Lost(marked.Heard));
    }

    /// <summary>Words that are in no fact, no doubt and not listed as unused; small words beside used ones may be.</summary>
    private static List<string> Lost(Heard heard)
    {
        var covered = new bool[heard.Text.Length];
        foreach (var span in heard.Facts.SelectMany(f => f.Spans).Concat(heard.Doubts.SelectMany(d => d.Spans)).Concat(heard.Unused))
            Array.Fill(covered, true, span.Start, span.Length);
        return [.. Tokeniser.Cut(heard.Text).Where(t => !t.IsBreak && t.Text != "-" && !covered[t.Start] && !Lexicon.Fillers.Contains(t.Text)).Select(t => t.Text)];
    }

    [Fact]
    public void Any_words_at_all_are_heard_without_fail_the_same_twice_and_none_is_lost()
    {
        var engines = new[] { "n=4 opt=starter,alternator,oilcooler", "layout=vee n=6 angle=60", "layout=single vt=sohc valves=1+1 act=rocker case=split cyl=barrel cool=air fuel=carb crk=built fw=none opt=" }.Select(Story.Build).ToArray();
        string[] words = [.. Files.Concat(Unseen).SelectMany(f => Story.Read(PathOf(f))).SelectMany(n => n.Text.Split(' ')).Distinct(), "½", "“", "M8x35", "7/16-20", "1 1/2", "?", "—", "0", "999999999", "1/0", "\n", "🔩", "''", "no.", "#"];
        var context = new EarContext { Now = Story.Now };
        Gen.Select(Gen.Int[0, words.Length - 1].Array[0, 24], Gen.Int[0, engines.Length - 1]).Sample(
            (said, e) =>
            {
                string text = string.Join(' ', said.Select(i => words[i]));
                var first = Ear.Hear(text, engines[e], context);
                var second = Ear.Hear(text, engines[e], context);
                return first.Facts.Select(f => f.Code).SequenceEqual(second.Facts.Select(f => f.Code))
                    && first.Doubts.Select(d => d.Code).SequenceEqual(second.Doubts.Select(d => d.Code))
                    && first.Facts.All(f => f.Echo.Length > 0)
                    && Lost(first).Count == 0;
            },
            iter: 400);
    }

    [Fact]
    public void A_word_that_the_owner_taught_stands_for_its_term()
    {
        var engine = Story.Build("n=4 opt=starter,alternator");
        var taught = new EarContext { Now = Story.Now, Taught = new Dictionary<string, string> { ["genny"] = "alternator" } };
        Assert.Equal("off alternator.1", Assert.Single(Ear.Hear("genny's off", engine, taught).Facts).Code);
    }

    [Fact]
    public void A_part_that_the_engine_gained_is_known_at_once()
    {
        var engine = Story.Build("n=4");
        var context = new EarContext { Now = Story.Now };
        Ear.Hear("sump off", engine, context);
        engine.Add(new Part("own.oil-catch-can", "own", "oil catch can", []));
        Assert.Equal("off own.oil-catch-can", Assert.Single(Ear.Hear("oil catch can off", engine, context).Facts).Code);
    }
}
