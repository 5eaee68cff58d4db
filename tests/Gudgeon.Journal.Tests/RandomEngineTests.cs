using CsCheck;
using Gudgeon.Engine;
using Gudgeon.Engine.Tests;

namespace Gudgeon.Journal.Tests;

/// <summary>Random engines, stripped and put back at random: the account ends at zero, and no deed of the way back can be left out unseen.</summary>
public class RandomEngineTests
{
    private static readonly Gen<(Dictionary<string, string> Answers, int Seed)> engines =
        Gen.Select(Answers.Some.Where(a => EngineAnswers.Read(a).Ok), Gen.Int[0, int.MaxValue - 1]);

    [Fact]
    public void Random_engine_stripped_and_put_back_ends_at_zero_and_any_entry_left_out_is_found() =>
        engines.Sample(
            drawn =>
            {
                var model = new RefitModel(drawn.Seed);
                model.Strip(drawn.Answers);
                model.Refit();
                Assert.Empty(AllBack.MissingFrom(model.Bench).Select(f => f.ToString()));
                Assert.DoesNotContain(BenchFindings.Of(model.Bench), f => f.Name != FindingNames.GateOverridden);
                LeaveOut(model, drawn.Seed);
            },
            iter: 100,
            threads: 1,
            print: drawn => $"seed {drawn.Seed}, {string.Join(";", drawn.Answers.Select(a => $"{a.Key}={a.Value}"))}");

    /// <summary>Five entries of any kind, and one of each rarer kind: each fold of the rest must hold something against the work that the whole does not.</summary>
    private static void LeaveOut(RefitModel model, int seed)
    {
        var whole = RefitModel.Findings(model.Bench);
        var back = model.Journal.Where(r => RefitModel.IsBack(r.Entry)).ToArray();
        var pick = new Random(seed);
        var rare = back.Where(r => r.Entry is StudsBack or HolesBlown).GroupBy(r => r.Entry.GetType()).Select(g => g.ElementAt(pick.Next(g.Count())));
        foreach (var left in Enumerable.Range(0, 5).Select(_ => back[pick.Next(back.Length)]).Concat(rare))
        {
            var unfit = new List<string>();
            var rest = Bench.Fold(model.Journal.Where(r => r != left), (recorded, fault) => unfit.Add($"{recorded.Number}: {fault}"));
            Assert.True(unfit.Count > 0 || RefitModel.Findings(rest).Except(whole).Any(), $"entry {left.Number} left out and nothing found: {left.Entry}");
        }
    }
}
