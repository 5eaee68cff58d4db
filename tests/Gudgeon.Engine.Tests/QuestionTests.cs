namespace Gudgeon.Engine.Tests;

public class QuestionTests
{
    private static readonly Dictionary<string, string> None = [];

    [Fact]
    public void Every_question_has_a_default_that_it_takes()
    {
        foreach (var question in Questions.All.Where(q => Questions.IsAsked(q, None)))
            Assert.True(question.Takes(Questions.DefaultOf(question, None), out _), question.Id);
    }

    [Fact]
    public void Bank_angle_is_asked_of_a_vee_only()
    {
        var angle = Questions.Find("angle")!;
        Assert.False(Questions.IsAsked(angle, None));
        Assert.True(Questions.IsAsked(angle, new Dictionary<string, string> { ["layout"] = "vee" }));
    }

    [Theory]
    [InlineData("lash", "vt=ohv", "screw")]
    [InlineData("lash", "act=finger", "hydraulic")]
    [InlineData("act", "vt=ohv", "rocker")]
    [InlineData("act", "vt=sohc valves=2+2", "rocker")]
    [InlineData("act", "vt=sohc valves=1+1", "direct")]
    [InlineData("ign", "fuel=diesel", "compression")]
    [InlineData("p", "fuel=diesel", "0")]
    [InlineData("heads", "cyl=barrel", "each")]
    [InlineData("m", "n=6", "7")]
    [InlineData("m", "layout=vee n=8", "5")]
    [InlineData("m", "layout=flat n=6", "7")]
    [InlineData("m", "layout=single", "2")]
    [InlineData("brg", "crk=built", "rolling")]
    [InlineData("opt", "cool=air", "starter,alternator,fan")]
    public void Default_follows_from_other_answers(string question, string line, string expected) =>
        Assert.Equal(expected, Questions.DefaultOf(Questions.Find(question)!, NamedEngines.Parse(line)));

    [Fact]
    public void Default_does_not_lean_on_the_answer_itself() =>
        Assert.Equal("coil", Questions.DefaultOf(Questions.Find("ign")!, new Dictionary<string, string> { ["ign"] = "dist" }));

    [Fact]
    public void Answer_that_cannot_be_taken_leaves_the_default() =>
        Assert.Equal("5", Questions.DefaultOf(Questions.Find("m")!, new Dictionary<string, string> { ["n"] = "lots" }));

    [Fact]
    public void Every_option_belongs_to_a_question() =>
        Assert.All(Questions.All, q => Assert.Equal(q.Kind is QuestionKind.One or QuestionKind.Many, q.Options.Count > 0));
}
