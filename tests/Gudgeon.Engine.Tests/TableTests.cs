using CsCheck;
using Gudgeon.Engine.Building;

namespace Gudgeon.Engine.Tests;

public class TableTests
{
    [Fact]
    public void Every_id_of_the_tables_leads_somewhere() => Assert.Empty(TableCheck.Faults(AnatomyTables.Own));

    [Theory]
    [MemberData(nameof(NamedEngines.Names), MemberType = typeof(NamedEngines))]
    public void Named_engine_hangs_together(string name) => Assert.Empty(TableCheck.Faults(NamedEngines.Build(name)));

    /// <summary>Every answer with every answer of every other question: what is taken must build and hang together.</summary>
    [Fact]
    public void Every_pair_of_answers_builds_an_engine_that_hangs_together()
    {
        var answers = Answers.Every;
        var built = 0;
        for (var i = 0; i < answers.Count; i++)
        {
            for (var j = i + 1; j < answers.Count; j++)
            {
                if (answers[i].Question == answers[j].Question)
                    continue;
                var given = new Dictionary<string, string> { [answers[i].Question] = answers[i].Answer, [answers[j].Question] = answers[j].Answer };
                given.TryAdd("n", given.GetValueOrDefault("layout") == "single" ? "1" : "2");
                if (!EngineAnswers.Read(given).TryGet(out var read))
                    continue;
                built++;
                var faults = TableCheck.Faults(Anatomy.Build(read));
                Assert.True(faults.Count == 0, $"{string.Join(' ', given)}: {string.Join("; ", faults)}");
            }
        }

        Assert.True(built > 3000, $"only {built} pairs were taken");
    }

    [Fact]
    public void Random_engine_hangs_together_and_comes_apart() =>
        Answers.Some.Where(a => EngineAnswers.Read(a).Ok).Sample(
            given =>
            {
                var model = Anatomy.Build(EngineAnswers.Read(given).Value);
                return TableCheck.Faults(model).Count == 0 && Strip.Stuck(model, facts: false) == "" && Strip.Stuck(model, facts: true) == "";
            },
            iter: 100, print: given => string.Join(' ', given.Select(a => $"{a.Key}={a.Value}")));

    [Fact]
    public void Planted_wrong_id_is_caught()
    {
        var planted = With("access.psv", text => text.Replace("pushrod|*|rocker|-|-", "pushrod|*|rockr|-|-", StringComparison.Ordinal));
        Assert.Contains(TableCheck.Faults(planted), f => f.EndsWith("no rockr", StringComparison.Ordinal));
    }

    [Fact]
    public void Planted_ring_is_caught()
    {
        var planted = With("access.psv", text => text + "breather|*|sump|-|-\nsump|*|breather|-|-\n");
        Assert.Contains("breather.1", TableCheck.Ring(Anatomy.Build(NamedEngines.FromLine(""), planted)));
    }

    [Fact]
    public void Planted_carrier_ring_is_caught()
    {
        var planted = With("joints.psv", text => text.Replace("j-sump|sump|@under|", "j-sump|sump|sump-seal|", StringComparison.Ordinal));
        Assert.Contains("sump.1 hangs in a ring", TableCheck.Faults(Anatomy.Build(NamedEngines.FromLine(""), planted)));
    }

    [Fact]
    public void Planted_formula_with_an_unknown_figure_is_caught()
    {
        var planted = With("parts.psv", text => text.Replace("piston|*|cyl|n|", "piston|*|cyl|nn|", StringComparison.Ordinal));
        var fault = Assert.Throws<FormatException>(() => Anatomy.Build(NamedEngines.FromLine(""), planted));
        Assert.Equal("'nn' is not a formula: no figure 'nn'", fault.Message);
    }

    [Fact]
    public void Row_with_a_bar_too_many_is_caught()
    {
        var fault = Assert.Throws<FormatException>(() => With("facts.psv", text => text + "fact:x|Is it?|yes\n"));
        Assert.EndsWith("3 cells under 2 columns", fault.Message, StringComparison.Ordinal);
    }

    private static AnatomyTables With(string table, Func<string, string> plant) =>
        new(name => name == table ? plant(Table.Own(name)) : Table.Own(name));
}
