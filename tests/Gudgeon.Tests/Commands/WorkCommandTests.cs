using System.Text.Json;

namespace Gudgeon.Tests.Commands;

/// <summary>Fits, shapes and repeats by command. Expected figures come from the sources named beside them.</summary>
public class WorkCommandTests
{
    // ISO 286-2 tables as read in two public transcriptions that agree (seen).
    [Fact]
    public void Fit_shows_limits_and_what_they_do_together()
    {
        using var shell = new Shell();
        var text = shell.Good("fit", "36", "H7/p6").Replace('\u00a0', ' ');
        Assert.Contains("36.000 to 36.025 mm", text);
        Assert.Contains("36.026 to 36.042 mm", text);
        Assert.Contains("an interference of 0.001 to 0.042 mm", text);
        Assert.Contains("a clearance of 0.007 to 0.041 mm", shell.Good("fit", "25", "H7/g6").Replace('\u00a0', ' '));
        Assert.Contains("anything from an interference of 0.018 mm to a clearance of 0.023 mm", shell.Good("fit", "36", "H7/k6").Replace('\u00a0', ' '));
        var json = JsonDocument.Parse(shell.Good("fit", "36", "H7/p6", "--json")).RootElement;
        Assert.Equal(-0.042, json.GetProperty("clearance_low_mm").GetDouble(), 9);
        Assert.Equal(-0.001, json.GetProperty("clearance_high_mm").GetDouble(), 9);
        Assert.Equal("fit: met \"H7\"; expected a hole and a shaft such as H7/g6. Type the hole in a capital letter, a stroke, the shaft in a small one.", shell.Run("fit", "36", "H7").Errors);
    }

    // Invented profile; recomputed with SciPy (HiGHS and least_squares): 9.000 and 9.789 µm. Grid by exact rational arithmetic: 6.5 and 41/6 µm.
    [Fact]
    public void Shape_is_worked_out_from_a_file()
    {
        using var shell = new Shell();
        File.WriteAllText(shell.File("bore.txt"), "0 3 5 2 -1 -4 -2 1 4 2 -3 -5");
        var text = shell.Good("shape", "roundness", shell.File("bore.txt"), "--radius", "43").Replace('\u00a0', ' ');
        Assert.Contains("narrowest ring: 9.00 µm", text);
        Assert.Contains("least-squares circle: 9.79 µm", text);
        File.WriteAllText(shell.File("face.txt"), "0 3 1\n2 6 4\n1 2 -1\n");
        var face = shell.Good("shape", "flatness", shell.File("face.txt")).Replace('\u00a0', ' ');
        Assert.Contains("narrowest pair of planes: 6.50 µm", face);
        Assert.Contains("least-squares plane: 6.83 µm", face);
        Assert.Equal("shape", JsonDocument.Parse(shell.Good("shape", "flatness", shell.File("face.txt"), "--json")).RootElement.GetProperty("gudgeon").GetString());
        Assert.StartsWith("radius: met nothing", shell.Run("shape", "roundness", shell.File("bore.txt")).Errors, StringComparison.Ordinal);
        Assert.StartsWith("kind: met \"cone\"; expected roundness, cylinder, flatness, union-jack.", shell.Run("shape", "cone", shell.File("bore.txt")).Errors, StringComparison.Ordinal);
        Assert.StartsWith("--unit: met \"mile\"; expected um, mm, thou.", shell.Run("shape", "flatness", shell.File("face.txt"), "--unit", "mile").Errors, StringComparison.Ordinal);
        Assert.Contains("which is not there", shell.Run("shape", "flatness", shell.File("no.txt")).Errors);
    }

    // J. C. Moody, The Tool Engineer, October 1955, Table 1 (seen; the two slips of the print mended): 92 units of 0.1 second times 4 inches, 4.5317 µm; minimum zone 4.1573 and least squares 4.4544 µm recomputed with SciPy.
    [Fact]
    public void Union_jack_of_Moody_is_reproduced()
    {
        using var shell = new Shell();
        File.WriteAllText(shell.File("plate.txt"), """
            65 60 50 52 55 56 55 50 55 48 50 52 53 49 46 42 53 49 45 35
            66 54 54 52 55 57 50 50 54 45 44 45 45 48 42 42 42 48 43 32
            205 197 205 203 202 199 190 195 188 186 187 186 184 185 190 179
            35 21 25 28 34 32 35 40 42 35
            164 150 156 155 151 153 151 146 140 135 135 133 133 134 140 139
            60 46 45 47 50 45 59 60 60 49
            117 124 121 125 120 115 115 113 113 103 108 103 100 107 104 104
            66 64 63 65 66 69 75 74 71 70
            """);
        var text = shell.Good("shape", "union-jack", shell.File("plate.txt"), "--unit", "s10", "--foot", "101.6").Replace('\u00a0', ' ');
        Assert.Contains("narrowest pair of planes: 4.1", text);
        Assert.Contains("plane of the diagonals: 4.5", text);
        File.WriteAllText(shell.File("two.txt"), "1 2\n1 2\n");
        Assert.StartsWith("North edge, east to west: met nothing", shell.Run("shape", "union-jack", shell.File("two.txt"), "--foot", "100").Errors, StringComparison.Ordinal);
    }

    // Cano, Moguerza and Redchuk, Six Sigma with R (2012), battery study (seen): measuring 50.38 % of all, by analysis of variance.
    [Fact]
    public void Repeats_work_out_a_study_from_a_file()
    {
        using var shell = new Shell();
        File.WriteAllText(shell.File("answers.json"), """{"layout": "inline", "n": 4}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
        shell.Good("instrument", "mic", "--sort", "mic");
        Assert.Equal("No spot is read twice with it yet.", shell.Good("repeats", "mic"));
        double[][] read = [[1.27, .90, 1.09, 1.34, 1.32, 1.27, 1.09, 1.26, 1.09], [1.12, 1.09, 1.15, 1.24, 1.00, 1.14, 1.48, 1.15, 1.15], [1.73, 1.28, 1.77, 1.64, 1.65, 1.77, 1.64, 1.44, 1.68]];
        File.WriteAllText(shell.File("study.txt"), string.Join('\n', read.SelectMany((row, p) => row.Select((v, i) => FormattableString.Invariant($"P{p};{i / 3};{v}")))));
        Assert.Contains("measuring 50.4 % of all", shell.Good("repeats", "mic", "--table", shell.File("study.txt")));
        var study = JsonDocument.Parse(shell.Good("repeats", "mic", "--table", shell.File("study.txt"), "--json")).RootElement.GetProperty("study");
        Assert.Equal(0.14792656, study.GetProperty("anova").GetProperty("gauge").GetDouble(), 5e-8);
        Assert.Equal("instrument: met \"nope\"; expected one of mic. Put it into the list of instruments first.", shell.Run("repeats", "nope").Errors);
        foreach (var reading in new[] { "57.990", "57.992" })
            shell.Good("measure", "crank", "main-journal", $"front.upright={reading}", "--with", "mic");
        // 2 µm apart: s = 2/√2 = 1.4 µm.
        Assert.Contains("One reading scatters by 0.0014 mm, pooled over 1 spots, 1 degrees of freedom", shell.Good("repeats", "mic").Replace('\u00a0', ' '));
    }

    [Fact]
    public void Repeats_work_out_a_study_by_person_from_the_book()
    {
        using var shell = new Shell();
        File.WriteAllText(shell.File("answers.json"), """{"layout": "inline", "n": 4}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
        shell.Good("instrument", "mic", "--sort", "mic");
        foreach (var (by, over) in new[] { ("Anna", 0), ("Ben", 1) })
            for (var trial = 0; trial < 2; trial++)
                shell.Good("measure", "crank", "main-journal", FormattableString.Invariant($"front.upright={57.985 + 0.001 * over + 0.001 * trial:0.000}"), FormattableString.Invariant($"rear.upright={57.989 + 0.001 * over + 0.001 * trial:0.000}"), "--with", "mic", "--by", by);
        // By hand, µm²: pairs 1 apart pooled over 5 degrees of freedom, 0.4; persons 1 apart, (2 − 0.4)/4 = 0.4.
        var persons = JsonDocument.Parse(shell.Good("repeats", "mic", "--json")).RootElement.GetProperty("study_by_person");
        Assert.Equal(2, persons.GetProperty("operators").GetInt32());
        Assert.Equal(Math.Sqrt(0.4) / 1000, persons.GetProperty("anova").GetProperty("repeatability").GetDouble(), 1e-9);
        Assert.Equal(Math.Sqrt(0.4) / 1000, persons.GetProperty("anova").GetProperty("reproducibility").GetDouble(), 1e-9);
        Assert.Contains("Gauge study of 2 parts by Anna, Ben, 2 readings of each:", shell.Good("repeats", "mic"), StringComparison.Ordinal);
    }

    [Fact]
    public void Grades_by_command_are_told_with_the_verdict()
    {
        using var shell = new Shell();
        File.WriteAllText(shell.File("answers.json"), """{"layout": "inline", "n": 4}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
        shell.Good("instrument", "mic", "--sort", "mic", "--u", "0.002");
        Assert.Contains("A 49.98 to 49.99 mm, B 49.99 to 50 mm", shell.Good("limit", "main-journal", "--grades", "A 49.980 49.990; B 49.990 50.000", "--source", "invented book").Replace('\u00a0', ' '));
        shell.Good("measure", "crank", "main-journal", "front.upright=49.985", "--with", "mic");
        Assert.Contains("no verdict, grade A", shell.Good("verdict"));
        Assert.Contains("grade 1: met \"A 49.98\"", shell.Run("limit", "main-journal", "--grades", "A 49.98", "--source", "x").Errors);
    }
}
