namespace Gudgeon.Tests.Capture;

/// <summary>The score of the stories counts meaning: grouped or told apart is the same, another part, count, size, value or place is not.</summary>
public class SameMeaningTests
{
    [Theory]
    [InlineData("put starter.1,alternator.1 -> shelf", "put alternator.1 -> shelf & put starter.1 -> shelf")]
    [InlineData("measured valve clearance valve-in.1.1: 0.13 mm & measured valve clearance valve-in.1.2: 0.14 mm", "measured valve clearance valve-in.1.1-2: 0.13 mm 0.14 mm")]
    [InlineData("off rod.1-3", "off rod.1,rod.2,rod.3")]
    [InlineData("left-on injector.3/washer,injector.5/washer", "left-on injector.5/washer & left-on injector.3/washer")]
    [InlineData("undone carb.1: 2 nut 5/16 in -> tin", "undone carb.1: 2 nut 5/16 -> tin")]
    [InlineData("put head.1 -> jar seven", "put head.1 -> jar 7")]
    [InlineData("corrected head.1: count => 12", "corrected head.1: count 10 => 12")]
    [InlineData("asked what first sump.1", "asked before sump.1")]
    [InlineData("buy piston.1-8", "buy piston.1-8: 8")]
    [InlineData("measured crankpin crank.1/crankpin 2: 63.48 mm", "measured big-end journal crank.1/big end 2: 63.48 mm")]
    [InlineData("drained oil 15 qt", "drained oil 15 quart")]
    public void Means_the_same(string due, string heard)
    {
        var (missed, wrong) = SameMeaning.Compare(due.Split(" & "), heard.Split(" & "));
        Assert.Empty(missed);
        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("put starter.1,alternator.1 -> shelf", "put alternator.1 -> shelf & put starter.1 -> bench")]
    [InlineData("measured valve clearance valve-in.1.1: 0.13 mm & measured valve clearance valve-in.1.2: 0.14 mm", "measured valve clearance valve-in.1.1-2: 0.14 mm 0.13 mm")]
    [InlineData("off rod.1-3", "off rod.1-4")]
    [InlineData("buy piston.1-8", "buy piston.1-8: 4")]
    [InlineData("damaged glow-plug.2/thread: stripped", "damaged glow-plug.2: stripped")]
    [InlineData("undone carb.1: 2 1/4 x 1/2 in", "undone carb.1: 2 1/2 x 1/4 in")]
    [InlineData("corrected head.1: count 10 => 12", "corrected head.1: count => 12")]
    [InlineData("corrected head.1: count => 12", "corrected head.1: count => 10")]
    [InlineData("off head.1 & off head.2", "off head.1")]
    [InlineData("damaged crank.1/crankpin 2: scored", "damaged rod-shell.2.1: scored")]
    [InlineData("measured main journal crank.1/main 2: 63.48 mm", "measured big-end journal crank.1/big end 2: 63.48 mm")]
    public void Does_not_mean_the_same(string due, string heard)
    {
        var (missed, wrong) = SameMeaning.Compare(due.Split(" & "), heard.Split(" & "));
        Assert.NotEmpty(missed.Concat(wrong));
    }
}
