using System.Globalization;
using System.Text;
using Gudgeon.Planning.Scheduling;
using Gudgeon.Planning.Tests.Scheduling;

namespace Gudgeon.Planning.Bench;

/// <summary>Writes invented projects in the public <c>.sm</c> form, so that the command can be measured as it is used: one file, one process.</summary>
internal static class ProjectFiles
{
    public static void Write(string folder, int jobs, int times, int firstSeed)
    {
        Directory.CreateDirectory(folder);
        var number = 0;
        foreach (var (complexity, factor, strength) in RandomProjects.Grid())
        {
            for (var k = 1; k <= times; k++)
            {
                var seed = firstSeed + number * 100 + k;
                File.WriteAllText(Path.Combine(folder, $"invented{jobs}_{number + 1}_{k}.sm"), Text(RandomProjects.Make(seed, jobs, complexity, factor, strength)));
            }
            number++;
        }
    }

    private static string Text(Project project)
    {
        var stars = new string('*', 72);
        var text = new StringBuilder();
        text.AppendLine(stars).AppendLine("PRECEDENCE RELATIONS:").AppendLine("jobnr.    #modes  #successors   successors");
        for (var task = 0; task < project.Tasks.Length; task++)
            text.AppendLine(Row([task + 1, 1, project.Tasks[task].Successors.Length, .. project.Tasks[task].Successors.Select(next => next + 1)]));
        text.AppendLine(stars).AppendLine("REQUESTS/DURATIONS:").AppendLine($"jobnr. mode duration  {Titles(project)}").AppendLine(new string('-', 72));
        for (var task = 0; task < project.Tasks.Length; task++)
            text.AppendLine(Row([task + 1, 1, project.Tasks[task].Duration, .. project.Tasks[task].Demands]));
        return text.AppendLine(stars).AppendLine("RESOURCEAVAILABILITIES:").AppendLine($"  {Titles(project)}").AppendLine(Row(project.Capacities)).AppendLine(stars).ToString();
    }

    private static string Titles(Project project) => string.Join("  ", project.Capacities.Select((_, k) => $"R {k + 1}"));

    private static string Row(IEnumerable<int> numbers) => string.Concat(numbers.Select(number => number.ToString(CultureInfo.InvariantCulture).PadLeft(6)));
}
