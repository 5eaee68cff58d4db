using Gudgeon.Capture;

namespace Gudgeon.Tests.Capture;

/// <summary>A value told anew in the note after, in whatever words. Sentences invented, common practice, no source.</summary>
public class RevisionTests
{
    private static readonly Gudgeon.Engine.EngineModel Engine = Story.Build("n=4 opt=starter,alternator");

    private static string Second(string first, string second)
    {
        var context = new EarContext { Now = Story.Now, AnyWay = true };
        context = context.After(Ear.Hear(first, Engine, context));
        return string.Join(" & ", Ear.Hear(second, Engine, context).Facts.Select(f => f.Code));
    }

    [Theory]
    [InlineData("starter off, two bolts", "count again, three", "corrected starter.1: count => 3")]
    [InlineData("starter off, two bolts", "three says the boy, not two", "corrected starter.1: count 2 => 3")]
    [InlineData("starter off, two bolts", "I said two starter bolts, there are three", "corrected starter.1: count 2 => 3")]
    [InlineData("starter off, two bolts", "sorry, in the starter it is three bolts and not two", "corrected starter.1: count 2 => 3")]
    [InlineData("starter off, two bolts", "beg pardon, three", "corrected starter.1: count => 3")]
    [InlineData("starter off, two M8 by 30", "sorry not M8 by 30, M8 by 35", "corrected starter.1: size M8x30 => M8x35")]
    [InlineData("starter off, two bolts in tray two", "starter bolts are not in tray two, tray three", "corrected starter.1: place tray 2 => tray 3")]
    [InlineData("alternator on, two bolts at forty newton metres", "it was fifty newton metres, not forty", "corrected alternator.1: torque 40 N m => 50 N m")]
    [InlineData("bore two is 86.02", "sorry sorry, bore two is 86.04", "corrected block.1/bore 2: bore 86.02 mm => 86.04 mm")]
    public void Is_a_correction_of_what_was_told_before(string first, string second, string due) => Assert.Equal(due, Second(first, second));

    [Theory]
    [InlineData("starter off, two bolts", "pardon my french, two bolts snapped")]
    [InlineData("starter off, two bolts", "alternator off, not in tray two, in tray three")]
    [InlineData("starter off, two bolts", "wait, the sump is off, three bolts")]
    [InlineData("starter off, two bolts", "no idea where the three bolts went")]
    public void Is_none(string first, string second) => Assert.DoesNotContain("corrected", Second(first, second), StringComparison.Ordinal);
}
