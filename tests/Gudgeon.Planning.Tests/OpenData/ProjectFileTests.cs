using Gudgeon.Planning.OpenData;
using Gudgeon.Planning.Scheduling;

namespace Gudgeon.Planning.Tests.OpenData;

public class ProjectFileTests
{
    private const string Small = """
        ************
        PRECEDENCE RELATIONS:
        jobnr.    #modes  #successors   successors
           1        1          1           2
           2        1          1           3
           3        1          0
        ************
        REQUESTS/DURATIONS:
        jobnr. mode duration  R 1
        ------------
          1      1     0       0
          2      1     4       2
          3      1     0       0
        ************
        RESOURCEAVAILABILITIES:
          R 1
            3
        ************
        """;

    /// <summary>j301_1 of the public set (Kolisch and Sprecher 1996), data as published; headings cut to what is read.</summary>
    internal static Project PublicInstance()
    {
        using var stream = typeof(ProjectFileTests).Assembly.GetManifestResourceStream("j301_1.sm")!;
        using var reader = new StreamReader(stream);
        return ProjectFile.Read(reader.ReadToEnd()).Value;
    }

    [Fact]
    public void ProjectFile_of_the_public_instance_reads_tasks_and_capacities()
    {
        var project = PublicInstance();
        Assert.Equal(32, project.Tasks.Length);
        Assert.Equal([12, 13, 4, 12], project.Capacities);
        Assert.Equal(158, project.Horizon);
        Assert.Equal([0, 0, 0, 3], project.Tasks[3].Demands);
        Assert.Equal([4, 8, 9], project.Tasks[3].Successors);
    }

    [Fact]
    public void ProjectFile_with_carriage_returns_reads_the_same()
    {
        Assert.Equal(4, ProjectFile.Read(Small.Replace("\n", "\r\n")).Value.Tasks[1].Duration);
    }

    [Theory]
    [InlineData("\n", "\r")]
    [InlineData("   2        1 ", "\t2\t1 ")]
    [InlineData("************\nREQUESTS", "REQUESTS")]
    [InlineData("************\nREQUESTS", "   ****\n\n  requests")]
    [InlineData("  R 1\n    3\n************", "R1\n3")]
    [InlineData("    3\n", "  3 \n")]
    public void ProjectFile_written_another_way_reads_the_same(string usual, string other)
    {
        Assert.Contains(usual, Small);
        var project = ProjectFile.Read(Small.Replace(usual, other)).Value;
        Assert.Equal((4, 3, 3), (project.Tasks[1].Duration, project.Capacities[0], project.Tasks.Length));
    }

    [Fact]
    public void ProjectFile_with_more_resources_than_a_line_holds_reads_them_all()
    {
        var wide = Small.Replace("  2      1     4       2", "  2      1     4       2 0 0 7").Replace("  1      1     0       0", "  1 1 0 0 0 0 0")
            .Replace("  3      1     0       0", "  3 1 0 0 0 0 0").Replace("  R 1\n    3", "  R 1 R 2\n    3 10\n  R 3 R 4\n 11 12000");
        Assert.Equal([3, 10, 11, 12000], ProjectFile.Read(wide).Value.Capacities);
        Assert.Equal([2, 0, 0, 7], ProjectFile.Read(wide).Value.Tasks[1].Demands);
    }

    [Theory]
    [InlineData("jobnr. mode duration  R 1", "jobnr. mode duration  R 1  N 1", "project file, line 9: met a column N; expected columns R: resources that are free again when a job ends. Use a file with renewable resources only.")]
    [InlineData("2      1     4       2", "2      1     1000001       2", "project file, line 11: met durations that add up to more; expected up to 1000000 units in all. Use a coarser unit of time.")]
    [InlineData("PRECEDENCE", "OTHER", "project file: met no section PRECEDENCE RELATIONS; expected the three sections of the .sm form. Check that the file is whole.")]
    [InlineData("2        1          1           3", "2        1          1           9", "project file, line 5: met successor 9; expected a job from 1 to 3. Correct the number.")]
    [InlineData("2        1          1           3", "2        1          2           3", "project file, line 5: met 1 successors; expected 2, as counted in the row. Correct the count or the list.")]
    [InlineData("2        1          1           3", "2        1          1           x", "project file, line 5: met x; expected a whole number. Correct the number.")]
    [InlineData("2        1          1           3", "2        2          1           3", "project file, line 5: met 2 modes; expected 1: this form holds one way to do each job. Use a single-mode file.")]
    [InlineData("2        1          1           3", "7        1          1           3", "project file, line 5: met job 7; expected job 2, as jobs are numbered from 1. Put the rows in order.")]
    [InlineData("2      1     4       2", "2      1     4       9", "project file, line 12: met a demand of 9 on resource 1; expected at most its capacity, 3. Correct the demand or the capacity.")]
    [InlineData("2      1     4       2", "2      1    -4       2", "project file, line 12: met a number below zero; expected durations and demands of zero or more. Correct the number.")]
    [InlineData("2      1     4       2", "2      1     4", "project file, line 12: met a row of 3 numbers for job 2; expected job 2, its mode, its duration and 1 demands. Correct the row.")]
    [InlineData("  3      1     0       0\n", "", "project file, line 12: met 2 rows of durations; expected 3, one for each job of the precedence section. Add or take out rows.")]
    [InlineData("    3\n", "\n", "project file, line 15: met section RESOURCEAVAILABILITIES without a row of numbers; expected at least one. Check that the file is whole.")]
    [InlineData("3        1          0", "3        1          1           1", "project file, line 4: met task 1: lies on or after a circle of precedence; no order exists; expected jobs that can be put in an order and run within the capacities. Correct the section.")]
    public void ProjectFile_with_a_fault_says_where_what_and_what_to_do(string good, string bad, string message)
    {
        Assert.Contains(good, Small);
        Assert.Contains(message, ProjectFile.Read(Small.Replace(good, bad)).Refusals.Select(refusal => refusal.ToString()));
    }
}
