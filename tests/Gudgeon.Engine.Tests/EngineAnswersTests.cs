using Gudgeon.Sums;

namespace Gudgeon.Engine.Tests;

public class EngineAnswersTests
{
    private static IReadOnlyList<Refusal> Refused(string line) => EngineAnswers.Read(NamedEngines.Parse(line)).Refusals;

    [Fact]
    public void Nothing_answered_is_an_in_line_four()
    {
        var answers = NamedEngines.FromLine("");
        Assert.Equal("inline", answers["layout"]);
        Assert.Equal(4, answers.Cylinders);
        Assert.Equal(1, answers.Banks);
        Assert.Equal(5, answers.Figure("m"));
        Assert.Empty(answers.Given);
    }

    /// <summary>4 * pi/4 * 86 mm * 86 mm * 86 mm = 1,998.2 cm3, by hand with a table of circle areas (86 mm: 5,808.8 mm2).</summary>
    [Fact]
    public void Swept_volume_of_four_square_cylinders_of_86_mm() =>
        Assert.Equal(1998.2, NamedEngines.FromLine("n=4 D=86 S=86").SweptVolumeCm3, 0.05);

    [Theory]
    [InlineData("layout=radial", "layout: met radial; expected in line, vee, flat or single. Start from nothing and let the engine grow as it is stripped: the tables do not know radials well enough yet.")]
    [InlineData("vt=ohv act=direct", "cam to valve: met direct with pushrods; expected a rocker with pushrods. Answer rocker.")]
    [InlineData("vt=ohv act=finger", "cam to valve: met a finger with the cam in the block; expected a finger only with the cam in the head. Answer rocker for pushrods, direct for side valves.")]
    [InlineData("vt=sv valves=1+1 act=rocker", "cam to valve: met a rocker with side valves; expected side valves worked straight by the follower. Answer direct.")]
    [InlineData("vt=sv", "valves per cylinder: met more than two with side valves; expected one inlet and one exhaust with side valves. Look at the valve train again.")]
    [InlineData("vt=sohc vvt=both", "cam phasing: met both, with no inlet and exhaust cam of their own; expected one phaser on a single cam. Answer inlet or exhaust.")]
    [InlineData("fuel=diesel ign=coil", "ignition: met a spark with diesel; expected compression. Answer compression.")]
    [InlineData("ign=compression", "ignition: met compression without diesel; expected coils, a distributor or a magneto. Answer what makes the spark.")]
    [InlineData("lube=splash lash=hydraulic", "clearance setting: met hydraulic with splash oil; expected shims or screws, since splash has no oil pressure. Answer shims or screws.")]
    [InlineData("lube=splash ind=turbo", "induction: met a turbocharger with splash oil; expected no turbocharger, since splash has no oil pressure. Look at the lubrication again.")]
    [InlineData("lube=splash vvt=in", "cam phasing: met a phaser with splash oil; expected none, since splash has no oil pressure. Look at the lubrication again.")]
    [InlineData("lube=splash opt=oiljets", "ancillaries: met piston oil jets with splash oil; expected none, since splash has no oil pressure. Look at the lubrication again.")]
    [InlineData("cyl=barrel case=tunnel", "crankcase: met a tunnel under separate barrels; expected caps, case halves or a bedplate under barrels. Look at the crankcase again.")]
    [InlineData("vt=sv valves=1+1 fuel=direct", "fuel: met direct injection with side valves; expected a carburettor or port injection with side valves. Look at the valve train again.")]
    [InlineData("layout=single n=2", "cylinders: met 2 in a single; expected 1. Answer 1, or in line for more.")]
    [InlineData("n=1", "cylinders: met 1 in line; expected 2 or more. Answer single for one cylinder.")]
    [InlineData("layout=vee n=5 pinshare=own", "cylinders: met 5 in two banks; expected an even number. Count them again.")]
    [InlineData("n=3 heads=pair", "heads: met pairs of cylinders out of 3; expected an even number of cylinders in each row. Answer one head for a row or for each cylinder.")]
    [InlineData("n=3 pinshare=shared", "rods on a crankpin: met two rods to a pin with 3 cylinders; expected an even number of cylinders. Answer that each rod has its own.")]
    [InlineData("fuel=steam", "fuel: met 'steam'; expected one of carb, port, direct, diesel. Answer it again, or leave it out to take what is usual.")]
    [InlineData("opt=starter,kettle", "ancillaries: met 'starter,kettle'; expected any of starter, alternator, steering, aircon, oilcooler, secair, egr, vacpump, mechpump, oiljets, fan, with commas between. Answer it again, or leave it out to take what is usual.")]
    [InlineData("n=four", "cylinders: met 'four'; expected a whole number from 1 to 28. Answer it again, or leave it out to take what is usual.")]
    [InlineData("n=29", "cylinders: met '29'; expected a whole number from 1 to 28. Answer it again, or leave it out to take what is usual.")]
    [InlineData("D=19.9", "bore: met '19.9'; expected a number from 20 to 500. Answer it again, or leave it out to take what is usual.")]
    [InlineData("count.core-plug=many", "count.core-plug: met 'many'; expected a whole number from 0 to 200. Count them, or leave it out to take what is usual.")]
    [InlineData("count.kettle=1", "count.kettle: met no such part kind as 'kettle'; expected the id of a part kind, as in count.core-plug. Correct the name or leave it out.")]
    public void Wrong_answer_is_refused_with_what_to_do(string line, string message) => Assert.Contains(message, Refused(line).Select(r => r.ToString()));

    [Fact]
    public void Unknown_question_is_named()
    {
        var refusal = Assert.Single(Refused("colour=red"));
        Assert.Equal(("colour", "a question that is not asked"), (refusal.Where, refusal.Met));
    }

    [Fact]
    public void All_faults_come_at_once() => Assert.Equal(["fuel", "bore", "cylinders"], Refused("fuel=steam D=0 layout=single n=2").Select(r => r.Where));

    [Fact]
    public void Numbering_not_sure_yet_is_an_answer()
    {
        var answers = NamedEngines.FromLine("layout=vee n=8 numbering=unsure banks=unsure numberingFrom=unsure");
        var model = Anatomy.Build(answers);
        Assert.Equal("head 2", model.Parts["head.2"].Name);
        Assert.Equal(1, model.Parts["piston.4"].Bank);
    }

    [Fact]
    public void Given_answers_read_again_build_the_same_engine()
    {
        var once = NamedEngines.Answers("flat six, mixed cooling, twin plugs");
        var again = EngineAnswers.Read(once.Given).Value;
        Assert.Equal(Anatomy.Build(once).Parts.Values.Select(p => (p.Id, p.Name)), Anatomy.Build(again).Parts.Values.Select(p => (p.Id, p.Name)));
    }

    [Fact]
    public void Capitals_and_spaces_in_an_answer_are_taken() =>
        Assert.Equal("starter,fan", EngineAnswers.Read(new Dictionary<string, string> { ["opt"] = " Fan, STARTER" }).Value.Given["opt"]);
}
