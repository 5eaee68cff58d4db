using System.Text.Json;
using Gudgeon.Sums;

namespace Gudgeon.Tests.Commands;

/// <summary>Measuring by command: readings in, verdicts and budgets out. Engine, readings and limits are invented.</summary>
public class MeasureCommandTests
{
    private const char Nbsp = '\u00a0';

    private static Shell Started()
    {
        var shell = new Shell();
        File.WriteAllText(shell.File("answers.json"), """{"layout": "inline", "n": 4, "D": 86, "S": 86}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
        return shell;
    }

    private static Shell Judged()
    {
        var shell = Started();
        shell.Good("instrument", "bg", "--sort", "bg", "--u", "0,006");
        shell.Good("limit", "bore", "--low", "85.99", "--high", "86.03", "--source", "invented book", "--page", "41");
        return shell;
    }

    [Fact]
    public void Reading_is_recorded_and_judged()
    {
        using var shell = Judged();
        Assert.Contains("bore 3, bore diameter, top, across the crank: 86.012 mm, bore gauge with dial", shell.Good("measure", "block", "bore", "--place", "3", "top.across=86,012", "--with", "bg").Replace(Nbsp, ' '));
        // U = 6 µm with k = 2 and the guard of U (ISO 14253-1, from memory): 12 µm and more inside both limits is within.
        Assert.StartsWith("bore 3, bore diameter, top, across the crank: 86.0120 mm ± 0.0061 mm, within limits", shell.Good("verdict", "block").Replace(Nbsp, ' '));
        Assert.Contains("86.0120 mm", shell.Good("measure").Replace(Nbsp, ' '));
    }

    [Fact]
    public void Doubts_stand_in_the_json_of_what_was_recorded_and_of_what_is_measured()
    {
        using var shell = Judged();
        var told = JsonDocument.Parse(shell.Good("measure", "block", "bore", "top.across=86.012", "top.along=80.612", "--with", "bg", "--by", "Anna", "--json")).RootElement;
        Assert.Contains("by Anna", told.GetProperty("recorded")[1].GetProperty("words").GetString(), StringComparison.Ordinal);
        foreach (var doubts in new[] { told.GetProperty("doubts"), JsonDocument.Parse(shell.Good("measure", "--json")).RootElement.GetProperty("doubts") })
        {
            var doubt = Assert.Single(doubts.EnumerateArray());
            Assert.Equal(told.GetProperty("recorded")[1].GetProperty("number").GetInt64(), doubt.GetProperty("reading").GetInt64());
            Assert.Equal(("block.1", 1, "bore", "top.along", 80.612, "mm"), (doubt.GetProperty("part").GetString(), doubt.GetProperty("place").GetInt32(), doubt.GetProperty("characteristic").GetString(), doubt.GetProperty("spot").GetString(), doubt.GetProperty("value").GetDouble(), doubt.GetProperty("unit").GetString()));
            Assert.NotEmpty(doubt.GetProperty("why").GetString()!);
        }

        Assert.Contains("Is that right?", shell.Good("measure"), StringComparison.Ordinal);
    }

    [Fact]
    public void Verdict_ends_with_1_when_a_figure_is_out_or_too_close()
    {
        using var shell = Judged();
        shell.Good("measure", "block", "bore", "top.across=86.060", "--with", "bg");
        var (exit, output, _) = shell.Run("verdict");
        Assert.Equal(1, exit);
        Assert.Contains("outside limits", output);
        using var close = Judged();
        close.Good("measure", "block", "bore", "top.across=86.029", "--with", "bg");
        Assert.Equal(1, close.Run("verdict").Exit);
    }

    [Fact]
    public void Verdict_json_has_value_call_and_probability()
    {
        using var shell = Judged();
        shell.Good("measure", "block", "bore", "top.across=86.030", "--with", "bg");
        var figure = JsonDocument.Parse(shell.Run("verdict", "--json").Output).RootElement.GetProperty("figures")[0];
        Assert.Equal("bore", figure.GetProperty("characteristic").GetString());
        Assert.Equal(86.03, figure.GetProperty("value").GetDouble(), 12);
        Assert.Equal("too close to call", figure.GetProperty("call").GetString());
        // On the limit itself, the other limit 13 standard uncertainties away: one half (normal distribution; JCGM 106:2012, 7.2, from memory).
        Assert.Equal(0.5, figure.GetProperty("probability").GetDouble(), 9);
    }

    [Fact]
    public void Budget_lists_causes_and_its_sum()
    {
        using var shell = Judged();
        shell.Good("measure", "block", "bore", "top.across=86.012", "--with", "bg", "--part-c", "20", "--gauge-c", "20");
        var text = shell.Good("budget", "block", "bore").Replace(Nbsp, ' ');
        // 0.006/2 shared half and half: 0.003/√2 = 0.00212 each (common practice, no source); with 1 K rectangular of gauge steel on 86 mm beside it.
        Assert.Contains("u 0.00212  scatter of a reading, bore gauge with dial", text);
        Assert.Contains("u 0.00212  bore gauge with dial, common to its readings", text);
        Assert.Contains("together; U ", text);
        var json = JsonDocument.Parse(shell.Good("budget", "block", "bore", "--json")).RootElement.GetProperty("figures")[0];
        Assert.True(json.GetProperty("lines").GetArrayLength() >= 2);
        Assert.Equal("mean of the readings, brought to 20 °C where temperatures were noted", json.GetProperty("formula").GetString());
    }

    [Theory]
    [InlineData("8,5", 8.5)]
    [InlineData("8.5", 8.5)]
    [InlineData("47.3 F", 8.5)]
    public void Temperature_is_read_with_either_mark_and_with_its_unit(string typed, double celsius)
    {
        using var shell = Judged();
        shell.Good("measure", "block", "bore", "top.across=86.012", "--with", "bg", "--part-c", typed);
        shell.Good("journal", "export", shell.File("book.jsonl"));
        var line = File.ReadLines(shell.File("book.jsonl")).Last(l => l.Contains("reading-taken", StringComparison.Ordinal));
        Assert.Equal(celsius, JsonDocument.Parse(line).RootElement.GetProperty("entry").GetProperty("part_c").GetDouble(), 9);
    }

    [Theory]
    [InlineData("measure", "block", "bore", "top.across=86", "--part-c", "warm", "--part-c: met \"warm\", which has no figure; expected a temperature such as 20 °C or 68 °F. Type the figure first, then its unit.")]
    [InlineData("measure", "block", "bore", "top.across=86", "--gauge-c", "12 mm", "--gauge-c: met the unit \"mm\"; expected a temperature such as 20 °C or 68 °F. Use one of °C, °F, K.")]
    [InlineData("instrument", "x", "--sort", "mic", "--u", "small", "--u: met \"small\", which has no figure; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure first, then its unit.")]
    [InlineData("instrument", "x", "--sort", "mic", "--resolution", "-", "--resolution: met \"-\", which has no figure; expected a length such as 86.012, 0.0015 in or 1½ thou. Type the figure first, then its unit.")]
    public void Figure_of_an_option_is_refused_in_four_parts(params string[] args)
    {
        using var shell = Started();
        var (exit, _, errors) = shell.Run(args[..^1]);
        Assert.Equal(1, exit);
        Assert.Equal(args[^1], errors);
    }

    [Fact]
    public void Ambiguous_reading_is_refused_with_its_choices_and_settled_by_one()
    {
        using var shell = Judged();
        var (exit, _, errors) = shell.Run("measure", "block", "bore", "top.across=two thou over", "--with", "bg");
        Assert.Equal(1, exit);
        // 2 thou = 0.0508 mm exactly.
        Assert.Contains("which can be read in 3 ways", errors);
        Assert.Contains("--meant \"two thou over the bore as you told it, 86 mm\": 86.0508 mm", errors.Replace(Nbsp, ' '));
        Assert.Contains("--meant \"two thou over the lower limit in service, 85.99 mm\": 86.0408 mm", errors.Replace(Nbsp, ' '));
        var told = shell.Good("measure", "block", "bore", "top.across=two thou over", "--with", "bg", "--meant", "two thou over the lower limit in service, 85.99 mm");
        Assert.Contains("86.0408 mm (typed \"two thou over\")", told.Replace(Nbsp, ' '));
    }

    [Fact]
    public void Ambiguous_reading_has_its_choices_in_json()
    {
        using var shell = Judged();
        var root = JsonDocument.Parse(shell.Run("measure", "block", "bore", "top.across=two thou over", "--json").Output).RootElement;
        Assert.Equal(["two thou over the bore as you told it, 86 mm", "two thou over the lower limit in service, 85.99 mm", "two thou over the upper limit in service, 86.03 mm"],
            root.GetProperty("refusals")[0].GetProperty("choices").EnumerateArray().Select(c => c.GetProperty("words").GetString()));
    }

    [Fact]
    public void Slip_is_asked_about_kept_as_typed_and_answered()
    {
        using var shell = Judged();
        var told = shell.Good("measure", "block", "bore", "top.across=3.3863", "--with", "bg").Replace(Nbsp, ' ');
        Assert.Contains("it may be in inches. Was it 86.01202 mm? Answer with gudgeon reading", told);
        var number = told.Split("gudgeon reading ")[1].Split(' ')[0];
        Assert.Contains("set aside: meant as 86.01202 mm", shell.Good("reading", number, "--meant").Replace(Nbsp, ' '));
        Assert.Contains("86.0120 mm", shell.Run("verdict").Output.Replace(Nbsp, ' '));
        Assert.Contains("met no other way to read it", shell.Run("reading", number, "--meant").Errors);
    }

    [Fact]
    public void Reading_stands_or_is_set_aside_by_command()
    {
        using var shell = Judged();
        var number = shell.Good("measure", "block", "bore", "top.across=8.6012", "--with", "bg").Trim().Split(' ')[0];
        Assert.Contains("stands as it was read", shell.Good("reading", number, "--stands"));
        Assert.Contains("set aside: dirt", shell.Good("reading", number, "--aside", "dirt"));
        Assert.Equal("reading 5: met no answer; expected one of --stands, --meant, --aside. Say which.", shell.Run("reading", "5").Errors);
        Assert.Equal("reading 5: met 2 answers; expected one of --stands, --meant, --aside. Say which.", shell.Run("reading", "5", "--stands", "--meant").Errors);
    }

    [Fact]
    public void Not_applicable_is_said_for_one_part_or_everywhere()
    {
        using var shell = Started();
        Assert.Contains("crankshaft: crank end float not applicable to this engine, because new washers", shell.Good("measure", "crank", "crank-end-float", "--not-applicable", "new washers"));
        Assert.Contains("piston skirt diameter at its gauge height, square to the pin not applicable to this engine, because new pistons", shell.Good("measure", "piston 1", "piston-skirt", "--not-applicable", "new pistons", "--everywhere"));
        Assert.Contains("met no reason", shell.Run("measure", "crank", "crank-runout", "--not-applicable", " ").Errors);
    }

    [Theory]
    [InlineData("x", "characteristic: met \"x\"; expected one of the list. Look at gudgeon measure PART for its name.")]
    public void Unknown_characteristic_is_refused(string characteristic, string message)
    {
        using var shell = Started();
        Assert.Equal(message, shell.Run("budget", "block", characteristic).Errors);
        Assert.Equal(message, shell.Run("limit", characteristic, "--high", "1", "--source", "s").Errors);
        Assert.Equal("cylinder block: met bore taper, place 9; expected a place that is there. Look at gudgeon measure PART.", shell.Run("budget", "block", "bore-taper", "--place", "9").Errors);
        Assert.StartsWith("--sort: met \"nail\"; expected mic, ", shell.Run("instrument", "n", "--sort", "nail").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Gauge_is_set_and_then_reads_from_its_zero()
    {
        using var shell = Started();
        shell.Good("instrument", "bg", "--sort", "bg", "--set-to", "86.000", "--on", "ring");
        Assert.Contains("86.043 mm (typed \"+43\")", shell.Good("measure", "block", "bore", "top.across=+43", "--with", "bg").Replace(Nbsp, ' '));
    }

    [Fact]
    public void Limit_is_told_with_its_source_and_page()
    {
        using var shell = Started();
        Assert.Contains("limit, in service: 85.99 to 86.03 mm, by invented book, page 41", shell.Good("limit", "bore", "--low", "85,99", "--high", "86.03 mm", "--source", "invented book", "--page", "41").Replace(Nbsp, ' '));
        Assert.Contains("limit, new: at most 0.01 mm", shell.Good("limit", "bore-taper", "--high", "0.01", "--new", "--source", "invented book").Replace(Nbsp, ' '));
    }

    [Fact]
    public void Sums_are_listed_with_formula_and_source()
    {
        using var shell = new Shell();
        var text = shell.Good("sums", "fits");
        Assert.Contains("fits.iso286-clearance", text);
        Assert.Contains("Source: ISO 286-1:2010", text);
        Assert.Equal("No sum has that word.", shell.Good("sums", "zebra"));
        var sums = JsonDocument.Parse(shell.Good("sums", "--json")).RootElement.GetProperty("sums").EnumerateArray().ToArray();
        Assert.Equal(SumCatalogue.All.Count, sums.Length);
        Assert.All(sums, s => Assert.All(["id", "title", "formula", "unit", "valid", "source"], p => Assert.False(string.IsNullOrWhiteSpace(s.GetProperty(p).GetString()))));
    }
}
