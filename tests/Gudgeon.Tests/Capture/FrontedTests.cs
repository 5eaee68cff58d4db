using Gudgeon.Capture;

namespace Gudgeon.Tests.Capture;

/// <summary>The thing first, then who does what with it; and words of condition that tell of none. Sentences invented, common practice, no source.</summary>
public class FrontedTests
{
    private static readonly Gudgeon.Engine.EngineModel Engine = Story.Build("layout=flat n=4 opt=starter,alternator,oilcooler cool=air");

    private static string Codes(string note) => string.Join(" & ", Ear.Hear(note, Engine, new EarContext { Now = Story.Now, AnyWay = true }).Facts.Select(f => f.Code));

    [Theory]
    [InlineData("oil cooler I do not mount today", "planned oil-cooler.1")]
    [InlineData("the right head we'll do Monday night", "planned head.2")]
    [InlineData("piston one is on, number two I'll do after my lunch", "on piston.1 & planned piston.2")]
    [InlineData("left head is on, right one I will do tomorrow", "on head.1 & planned head.2")]
    [InlineData("crank I will send to the grinder on Friday", "planned crank.1")]
    [InlineData("the starter I have taken off", "off starter.1")]
    [InlineData("starter I must buy new", "buy starter.1")]
    public void What_is_named_first_is_what_is_meant(string note, string due) => Assert.Equal(due, Codes(note));

    [Theory]
    [InlineData("pushrods out, poked them through a box in order")]
    [InlineData("hammered a socket on it, starter's out")]
    [InlineData("head on in two rounds")]
    [InlineData("found the key, stuck to the magnet")]
    [InlineData("wiped down the starter")]
    [InlineData("enough, my back is finished")]
    [InlineData("the alternator, you had it last")]
    public void Tells_of_no_condition(string note) => Assert.DoesNotMatch("^(damaged|seen) | & (damaged|seen) ", Codes(note));

    [Theory]
    [InlineData("starter is shot", "damaged starter.1: damaged")]
    [InlineData("crank key is in two", "damaged key.1: broken")]
    [InlineData("starter is stuck", "seen starter.1: stuck")]
    public void Tells_of_one(string note, string due) => Assert.Equal(due, Codes(note));
}
