using Gudgeon.Planning.Calendar;

namespace Gudgeon.Planning.Tests.Calendar;

public class CriticalPathTests
{
    [Fact]
    public void CriticalPath_of_the_handout_network_matches_its_table()
    {
        // Teaching handout "Example 1", tables 1 and 2, hours (seen; its running text swaps the names F and D). Free slack recomputed.
        var times = Times("A 6; B 2 A; C 2 A; D 3 B; F 2 C; E 4 D F; G 1 E");
        Assert.Equal(
            ["A 0/6/0/6/0/0", "B 6/8/6/8/0/0", "C 6/8/7/9/1/0", "D 8/11/8/11/0/0", "F 8/10/9/11/1/1", "E 11/15/11/15/0/0", "G 15/16/15/16/0/0"],
            times);
    }

    [Fact]
    public void CriticalPath_of_the_textbook_case_matches_its_table()
    {
        // Heizer and Render, Operations Management, chapter 3 case, weeks (numbers seen; times and slack recomputed).
        var times = Times("A 2; B 3; C 2 A; D 4 A B; E 4 C; F 3 C; G 5 D E; H 2 F G");
        Assert.Equal(
            ["A 0/2/0/2/0/0", "B 0/3/1/4/1/0", "C 2/4/2/4/0/0", "D 3/7/4/8/1/1", "E 4/8/4/8/0/0", "F 4/7/10/13/6/6", "G 8/13/8/13/0/0", "H 13/15/13/15/0/0"],
            times);
    }

    [Fact]
    public void CriticalPath_of_the_construction_case_is_forty_four_weeks()
    {
        // Hillier and Lieberman, "Reliable Construction" (durations seen, predecessors and path from memory, slack recomputed).
        var tasks = Tasks("A 2; B 4 A; C 10 B; D 6 C; E 4 C; F 5 E; G 7 D; H 9 E G; I 7 C; J 8 F I; K 4 J; L 5 J; M 2 H; N 6 K L");
        var times = CriticalPath.Of(tasks);
        Assert.Equal(44, times.Max(task => task.EarliestFinish));
        Assert.Equal("ABCEFJLN", string.Concat(times.Where(task => task.IsCritical).Select(task => task.Id)));
        Assert.Equal("D4 G4 H4 I2 K1 M4", string.Join(" ", times.Where(task => !task.IsCritical).Select(task => $"{task.Id}{task.TotalSlack}")));
    }

    [Theory]
    // Taylor, Introduction to Management Science, solved problem: inputs and figures seen.
    [InlineData(5, 8, 17, 9.0, 4.0)]
    [InlineData(7, 10, 13, 10.0, 1.0)]
    [InlineData(3, 5, 7, 5.0, 4.0 / 9)]
    [InlineData(1, 3, 5, 3.0, 4.0 / 9)]
    [InlineData(4, 6, 8, 6.0, 4.0 / 9)]
    [InlineData(3, 3, 3, 3.0, 0.0)]
    [InlineData(3, 4, 5, 4.0, 1.0 / 9)]
    public void ThreePoint_gives_the_textbook_mean_and_variance(long best, long likely, long worst, double mean, double variance)
    {
        var estimate = new ThreePoint(best, likely, worst);
        Assert.Equal(mean, estimate.MeanSeconds, 12);
        Assert.Equal(variance, estimate.VarianceSecondsSquared, 12);
    }

    [Theory]
    // Triangle 0, 0, 100: distribution function 1 - (1 - x/100)^2, so the median is 100 (1 - sqrt 1/2) = 29.289 (worked by hand).
    [InlineData(0, 0, 100, 0.5, 29)]
    [InlineData(0, 100, 100, 0.5, 71)]
    [InlineData(0, 50, 100, 0.5, 50)]
    [InlineData(10, 20, 40, 0.0, 10)]
    [InlineData(10, 20, 40, 1.0, 40)]
    [InlineData(7, 7, 7, 0.3, 7)]
    public void ThreePoint_quantile_follows_the_triangle(long best, long likely, long worst, double share, long expected) =>
        Assert.Equal(expected, new ThreePoint(best, likely, worst).Quantile(share));

    [Fact]
    public void CriticalPath_of_tasks_in_a_circle_refuses()
    {
        var fault = Assert.Throws<ArgumentException>(() => CriticalPath.Of(Tasks("A 1 B; B 1 A")));
        Assert.Equal("tasks: some wait for each other in a circle; take one \"after\" out", fault.Message);
    }

    private static List<PlanTask> Tasks(string text) =>
        [.. text.Split("; ").Select(task => task.Split(' ')).Select(words => new PlanTask(words[0], words[0], long.Parse(words[1])) { After = [.. words.Skip(2)] })];

    private static IEnumerable<string> Times(string text) => CriticalPath.Of(Tasks(text)).Select(task =>
        $"{task.Id} {task.EarliestStart}/{task.EarliestFinish}/{task.LatestStart}/{task.LatestFinish}/{task.TotalSlack}/{task.FreeSlack}");
}
