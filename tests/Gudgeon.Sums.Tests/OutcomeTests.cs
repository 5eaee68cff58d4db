namespace Gudgeon.Sums.Tests;

public class OutcomeTests
{
    private static readonly Refusal LongLeg = new("leg", "2 mm", "3 mm or more", "Measure the leg");

    [Fact]
    public void Fault_shown_reads_as_one_line() =>
        Assert.Equal("leg: met 2 mm; expected 3 mm or more. Measure the leg.", LongLeg.ToString());

    [Fact]
    public void Refused_then_next_keeps_the_refusals()
    {
        var next = Outcome.Refused<double>(LongLeg).Then(x => Outcome.Of(x + 1));
        Assert.False(next.Ok);
        Assert.Equal([LongLeg], next.Refusals);
        Assert.Throws<InvalidOperationException>(() => next.Value);
    }

    [Fact]
    public void Of_then_next_goes_on() => Assert.Equal(3.0, Outcome.Of(2.0).Then(x => Outcome.Of(x + 1)).Value);

    [Fact]
    public void Refused_without_a_reason_is_a_bug() => Assert.Throws<ArgumentException>(() => Outcome.Refused<int>());
}
