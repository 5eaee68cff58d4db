using System.Collections.Immutable;
using System.Globalization;
using Gudgeon.Planning.Scheduling;
using Gudgeon.Sums;

namespace Gudgeon.Planning.OpenData;

/// <summary>
/// Reads the public <c>.sm</c> form of single-mode project scheduling instances: sections headed
/// <c>PRECEDENCE RELATIONS:</c>, <c>REQUESTS/DURATIONS:</c> and <c>RESOURCEAVAILABILITIES:</c>, numbers apart by
/// blanks, lines of <c>*</c> or <c>-</c> between. Jobs are numbered from 1.
/// </summary>
public static class ProjectFile
{
    private const string FileWord = "project file";
    private const int MostJobs = 2000;
    private const long MostTime = 1_000_000;

    public static Outcome<Project> Read(string text) => new Reader(text).Read();

    private sealed class Reader(string text)
    {
        private readonly string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        private readonly List<Refusal> faults = [];

        public Outcome<Project> Read()
        {
            var precedence = Section("PRECEDENCE RELATIONS");
            var requests = Section("REQUESTS/DURATIONS");
            var capacity = Section("RESOURCEAVAILABILITIES");
            if (faults.Count > 0)
                return Outcome.Refused<Project>(faults);
            RefuseUsedUp();
            // A long row of capacities may be broken.
            int[] capacities = [.. capacity.SelectMany(row => row.Numbers)];
            if (capacities.Any(amount => amount < 0))
                Fault(capacity[0].Line, $"a capacity of {capacities.Min()}", "zero or more", "Correct the number");
            var successors = Successors(precedence);
            var tasks = Tasks(requests, successors, capacities);
            if (faults.Count > 0)
                return Outcome.Refused<Project>(faults);
            try
            {
                return Outcome.Of(new Project(tasks, capacities));
            }
            catch (ArgumentException fault)
            {
                return Outcome.Refused<Project>([new Refusal(
                    $"{FileWord}, line {precedence[0].Line}", fault.Message, "jobs that can be put in an order and run within the capacities", "Correct the section")]);
            }
        }

        /// <summary>Rows of numbers after the heading, up to the next line of stars.</summary>
        private List<(int Line, int[] Numbers)> Section(string heading)
        {
            var rows = new List<(int, int[])>();
            var at = Array.FindIndex(lines, line => line.TrimStart().StartsWith(heading, StringComparison.OrdinalIgnoreCase));
            if (at < 0)
            {
                faults.Add(new Refusal(FileWord, $"no section {heading}", "the three sections of the .sm form", "Check that the file is whole"));
                return rows;
            }
            for (var k = at + 1; k < lines.Length && !IsEnd(lines[k]); k++)
            {
                var words = lines[k].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
                // Column titles ("jobnr.", "R 1 R 2") and rules are no data.
                if (words.Length == 0 || !(char.IsAsciiDigit(words[0][0]) || words[0][0] is '-' or '+') || words[0].All(c => c == '-'))
                    continue;
                var numbers = new int[words.Length];
                for (var w = 0; w < words.Length; w++)
                {
                    if (!int.TryParse(words[w], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out numbers[w]))
                        Fault(k + 1, words[w], "a whole number", "Correct the number");
                }
                rows.Add((k + 1, numbers));
            }
            if (rows.Count == 0)
                Fault(at + 1, $"section {heading} without a row of numbers", "at least one", "Check that the file is whole");
            return rows;
        }

        /// <summary>A line of stars, or the heading of another section where the stars were left out.</summary>
        private static bool IsEnd(string line) =>
            line.TrimStart() is ['*', ..] || (line.TrimStart() is [var first, ..] && char.IsAsciiLetter(first) && line.TrimEnd().EndsWith(':'));

        /// <summary>Column titles that speak of resources that are used up: "N 1" beside "R 1".</summary>
        private void RefuseUsedUp()
        {
            for (var k = 0; k < lines.Length; k++)
            {
                var words = lines[k].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
                var titles = words.Where((word, at) => at + 1 < words.Length && word is "R" or "N" or "D" && int.TryParse(words[at + 1], out _)).ToArray();
                if (titles.FirstOrDefault(title => title != "R") is { } other)
                {
                    Fault(k + 1, $"a column {other}", "columns R: resources that are free again when a job ends", "Use a file with renewable resources only");
                    return;
                }
            }
        }

        private int[][] Successors(List<(int Line, int[] Numbers)> rows)
        {
            var successors = new int[rows.Count][];
            for (var k = 0; k < rows.Count; k++)
            {
                var (line, numbers) = rows[k];
                successors[k] = [];
                if (numbers[0] != k + 1)
                    Fault(line, $"job {numbers[0]}", $"job {k + 1}, as jobs are numbered from 1", "Put the rows in order");
                else if (numbers.Length < 3 || numbers.Length != 3 + numbers[2])
                    Fault(line, $"{Math.Max(0, numbers.Length - 3)} successors", $"{(numbers.Length < 3 ? "a job, its modes and a count of successors" : $"{numbers[2]}, as counted in the row")}", "Correct the count or the list");
                else if (numbers[1] != 1)
                    Fault(line, $"{numbers[1]} modes", "1: this form holds one way to do each job", "Use a single-mode file");
                else if (numbers.Skip(3).FirstOrDefault(next => next < 1 || next > rows.Count, -1) is var wrong && wrong >= 0)
                    Fault(line, $"successor {wrong}", $"a job from 1 to {rows.Count}", "Correct the number");
                else
                    successors[k] = [.. numbers.Skip(3).Select(next => next - 1)];
            }
            return successors;
        }

        private List<ProjectTask> Tasks(List<(int Line, int[] Numbers)> rows, int[][] successors, int[] capacities)
        {
            var tasks = new List<ProjectTask>();
            if (rows.Count > MostJobs)
                Fault(rows[MostJobs].Line, $"{rows.Count} jobs", $"up to {MostJobs}", "Use a smaller file");
            if (rows.Sum(row => row.Numbers.Length > 2 ? (long)row.Numbers[2] : 0) > MostTime)
                Fault(rows[0].Line, "durations that add up to more", $"up to {MostTime} units in all", "Use a coarser unit of time");
            if (rows.Count != successors.Length)
                Fault(rows[^1].Line, $"{rows.Count} rows of durations", $"{successors.Length}, one for each job of the precedence section", "Add or take out rows");
            for (var k = 0; k < Math.Min(rows.Count, successors.Length); k++)
            {
                var (line, numbers) = rows[k];
                if (numbers.Length != 3 + capacities.Length || numbers[0] != k + 1)
                {
                    Fault(line, $"a row of {numbers.Length} numbers for job {numbers[0]}", $"job {k + 1}, its mode, its duration and {capacities.Length} demands", "Correct the row");
                    continue;
                }
                var demands = numbers.Skip(3).ToImmutableArray();
                if (numbers[2] < 0 || demands.Any(demand => demand < 0))
                    Fault(line, "a number below zero", "durations and demands of zero or more", "Correct the number");
                for (var resource = 0; numbers[2] > 0 && resource < capacities.Length; resource++)
                {
                    if (demands[resource] > capacities[resource])
                        Fault(line, $"a demand of {demands[resource]} on resource {resource + 1}", $"at most its capacity, {capacities[resource]}", "Correct the demand or the capacity");
                }
                tasks.Add(new ProjectTask(numbers[2], demands, [.. successors[k]]));
            }
            return tasks;
        }

        private void Fault(int line, string met, string expected, string remedy) =>
            faults.Add(new Refusal($"{FileWord}, line {line}", met, expected, remedy));
    }
}
