using System.Text.Json;

namespace Gudgeon.Tests.Commands;

/// <summary>The way back by command line. The engine and its figures are invented.</summary>
public class RefitCommandTests
{
    private static Shell Started()
    {
        var shell = new Shell();
        File.WriteAllText(shell.File("answers.json"), """{"layout": "inline", "n": 4}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
        return shell;
    }

    private static Shell HeadIn()
    {
        var shell = Started();
        shell.Good("off", "head", "--fasteners", "10 M10x90 bag 1", "--to", "bench");
        shell.Good("fitted", "head", "--fasteners", "10", "--override", "an invented reason");
        return shell;
    }

    private static JsonElement Json(Shell shell, params string[] args) => JsonDocument.Parse(shell.Run([.. args, "--json"]).Output).RootElement;

    [Fact]
    public void Tighten_goes_through_its_stages_in_the_order_and_ends_final()
    {
        using var shell = HeadIn();
        shell.Good("wrench", "long", "--least", "20 Nm", "--most", "100 Nm");
        Assert.Contains("long: Wrench long: 20 to 100\u00A0N·m", shell.Good("wrench"), StringComparison.Ordinal);
        shell.Good("tighten", "head", "--set", "30 Nm; 90 deg", "--threads", "oiled", "--source", "invented book");
        shell.Good("tighten", "head", "--pattern", "5x2");
        shell.Good("tighten", "head", "--stage", "1", "--numbers", "1,2,3", "--wrench", "long");
        Assert.Contains("1. 30\u00A0N·m: 3 of 10 done", shell.Run("tighten", "head").Output, StringComparison.Ordinal);
        var (early, _, why) = shell.Run("tighten", "head", "--stage", "2");
        Assert.Equal(1, early);
        Assert.Contains("one stage all round before the next", why, StringComparison.Ordinal);
        shell.Good("tighten", "head", "--stage", "1", "--wrench", "long");
        shell.Good("tighten", "head", "--stage", "2");
        var told = Json(shell, "tighten", "head");
        Assert.True(told.GetProperty("final").GetBoolean());
        Assert.Equal(10, told.GetProperty("order").GetArrayLength());
        // Two rows of five: the order begins in the middle column, as the rule of the middle outwards has it.
        Assert.Contains(told.GetProperty("order")[0].GetInt32(), new[] { 3, 8 });
    }

    [Fact]
    public void Studs_are_counted_missed_and_bought_by_command()
    {
        using var shell = Started();
        shell.Good("off", "head", "--fasteners", "10 M10 bag 1", "--to", "bench");
        Assert.Contains("10 studs counted, in the ", shell.Good("tighten", "head", "--studs", "10"), StringComparison.Ordinal);
        Assert.Contains("2 studs came out with their nuts, 1 of them broken", shell.Good("tighten", "head", "--studs-out", "2", "--studs-broken", "1"), StringComparison.Ordinal);
        var studs = Json(shell, "tighten", "head").GetProperty("studs");
        Assert.Equal((10, 2, 1), (studs.GetProperty("counted").GetInt32(), studs.GetProperty("out").GetInt32(), studs.GetProperty("broken").GetInt32()));
        Assert.Contains("10 studs, 2 of them out, 1 broken", shell.Run("tighten", "head").Output, StringComparison.Ordinal);
        Assert.Contains("(stud j-head.1)", shell.Good("buy"), StringComparison.Ordinal);
        shell.Good("buy", "stud j-head.1", "--at-hand", "1");
        Assert.Contains("stud-out: ", shell.Run("check", "--back").Output, StringComparison.Ordinal);
        Assert.Contains("2 studs screwed in again, 1 of them new", shell.Good("tighten", "head", "--studs-back", "2", "--studs-new", "1"), StringComparison.Ordinal);
        Assert.DoesNotContain("stud-out: ", shell.Run("check", "--back").Output, StringComparison.Ordinal);
        Assert.Contains("blind holes blown out and dry", shell.Good("tighten", "head", "--holes-blown"), StringComparison.Ordinal);
    }

    [Fact]
    public void Tighten_tells_the_setting_with_an_extension_and_keeps_lengths_and_inserts()
    {
        using var shell = HeadIn();
        shell.Good("tighten", "head", "--set", "60 Nm", "--threads", "oiled");
        shell.Good("tighten", "head", "--lever", "300 mm", "--extension", "100 mm");
        // Lever: 60 · 300/400 = 45.
        Assert.Contains("set the wrench to 45\u00A0N·m", shell.Run("tighten", "head").Output, StringComparison.Ordinal);
        shell.Good("tighten", "head", "--bolts", "92.1 92.9", "--most", "92.6 mm");
        shell.Good("tighten", "head", "--insert", "M10 wire", "--hole", "3");
        var output = shell.Run("tighten", "head").Output;
        Assert.Contains("1 not to be used again", output, StringComparison.Ordinal);
        Assert.Contains("thread insert M10 wire in hole 3", output, StringComparison.Ordinal);
        Assert.Contains("bolt-stretched", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--pattern", "five by two", "5x2, circle 8, row 6 or rim 6x5")]
    [InlineData("--bolts", "long", "length 1")]
    [InlineData("--extension", "50 mm", "--lever")]
    public void Tighten_refuses_what_it_cannot_read_and_says_how_to_write_it(string option, string text, string expected)
    {
        using var shell = HeadIn();
        var (exit, _, errors) = shell.Run("tighten", "head", option, text);
        Assert.Equal(1, exit);
        Assert.Contains(expected, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Trace_follows_the_oil_and_says_what_is_not_closed()
    {
        using var shell = Started();
        var way = shell.Good("trace", "oil-pump.1.out");
        Assert.Contains("oil filter", way, StringComparison.Ordinal);
        Assert.Contains("back to", way, StringComparison.Ordinal);
        Assert.EndsWith("Closed.", shell.Good("trace", "--of", "oil"), StringComparison.Ordinal);
        shell.Good("off", "oil-filter", "--to", "bin");
        var (exit, ports, _) = shell.Run("trace", "--of", "oil");
        Assert.Equal(1, exit);
        Assert.Contains("Not closed", ports, StringComparison.Ordinal);
        Assert.Equal(1, shell.Run("trace", "no.such.port").Exit);
    }

    [Fact]
    public void Timing_finds_top_reads_a_lobe_and_counts_the_tooth()
    {
        using var shell = Started();
        shell.Good("timing", "--before", "322.5", "--after", "41");
        shell.Good("timing", "--lobe", "inlet 1", "--lift", "1", "--opening", "-2", "--closing", "258", "--card", "108");
        shell.Good("timing", "--teeth", "18", "--pitch", "9.525", "--centres", "300", "--stretch", "0.5", "--skim", "0.2");
        shell.Good("timing", "--static", "ignition", "--at", "8° before top");
        var told = Json(shell, "timing");
        // Halves and differences by hand; stretch and skim solved by bisection in python, see the sums' own tests.
        Assert.Equal(1.75, told.GetProperty("disc_at_top_deg").GetDouble(), 1e-9);
        Assert.Equal((128.0, 1), (told.GetProperty("lobes")[0].GetProperty("centre_deg").GetDouble(), told.GetProperty("lobes")[0].GetProperty("teeth_late").GetInt32()));
        Assert.Equal(20, told.GetProperty("one_tooth_deg").GetDouble(), 1e-9);
        Assert.Equal(3.132638, told.GetProperty("late_by_stretch_deg").GetDouble(), 1e-6);
        Assert.Equal(0.417684, told.GetProperty("late_by_skim_deg").GetDouble(), 1e-6);
        Assert.Contains("ignition set: 8° before top", shell.Good("timing"), StringComparison.Ordinal);
    }

    [Fact]
    public void Lash_reads_valves_and_chooses_shims_and_the_new_ones_are_on_the_buy_list()
    {
        using var shell = Started();
        shell.Good("limit", "valve-clearance", "--low", "0.15", "--high", "0.25", "--source", "invented book");
        shell.Good("lash", "valve-in.1.1", "--clearance", "0.10", "--shim", "2.50");
        shell.Good("lash", "--shop", "2", "3", "0.05", "--spare", "2.00");
        // 0.10 + 2.50 - 0.20 = 2.40: the middle of the limits.
        Assert.Contains("buy 2.4\u00A0mm", shell.Run("lash").Output, StringComparison.Ordinal);
        Assert.Contains("shim 2.4 mm", shell.Good("buy"), StringComparison.Ordinal);
        Assert.Equal(1, shell.Run("lash", "--shop", "2", "3").Exit);
    }

    [Fact]
    public void Gate_names_what_keeps_it_open_and_a_page_gate_is_closed_by_command()
    {
        using var shell = Started();
        shell.Good("off", "sump", "--to", "floor");
        Assert.Equal(1, shell.Run("gate", "GA2").Exit);
        Assert.Contains("look-open", shell.Run("gate", "GA2").Output, StringComparison.Ordinal);
        for (var look = 1; look <= 6; look++)
            shell.Good("gate", "GA2", "--look", $"{look}");
        Assert.Contains("GA2 long block closed: clear", shell.Good("gate", "GA2"), StringComparison.Ordinal);
        var (exit, _, errors) = shell.Run("gate", "GA2", "--close");
        Assert.Equal(1, exit);
        Assert.Contains("which a part or an operation closes", errors, StringComparison.Ordinal);
        Assert.Equal(1, shell.Run("gate", "GA7", "--close").Exit);
        shell.Good("gate", "GA7", "--close", "--because", "an invented reason");
        Assert.Contains("gate-overridden", shell.Run("check").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Buy_lists_what_broke_and_at_hand_settles_it()
    {
        using var shell = Started();
        shell.Good("off", "head", "--fasteners", "9 M10x90 bag 1", "--fasteners", "1 broken", "--to", "bench");
        Assert.Contains("to buy", shell.Good("buy"), StringComparison.Ordinal);
        shell.Good("buy", "j-head.1", "--ordered", "1");
        shell.Good("buy", "j-head.1", "--at-hand", "1");
        var line = Json(shell, "buy").GetProperty("lines").EnumerateArray().Single(l => l.GetProperty("thing").GetString() == "j-head.1");
        Assert.Equal(("at hand", 1, 1), (line.GetProperty("stand").GetString(), line.GetProperty("need").GetInt32(), line.GetProperty("at_hand").GetInt32()));
        Assert.Equal(1, shell.Run("buy", "j-head.1").Exit);
    }

    [Fact]
    public void Built_keeps_a_batch_and_small_counts_rags_in_and_out()
    {
        using var shell = Started();
        shell.Good("built", "main cap 3", "--with", "0.25 undersize", "--batch", "4711");
        Assert.Contains("main cap 3: 0.25 undersize (batch 4711)", shell.Good("built"), StringComparison.Ordinal);
        shell.Good("small", "--in", "rag", "--where", "bore 3", "--count", "2");
        var still = Json(shell, "small").GetProperty("still_in")[0];
        Assert.Equal(2, still.GetProperty("left").GetInt32());
        shell.Good("small", "--out", $"{still.GetProperty("entry").GetInt64()}");
        Assert.Contains("Nothing is in", shell.Good("small"), StringComparison.Ordinal);
    }

    [Fact]
    public void Accept_lets_a_finding_stand_for_a_reason_and_not_a_rag()
    {
        using var shell = Started();
        shell.Good("off", "starter", "--to", "shelf");
        shell.Good("accept", "part-off", "starter", "--because", "the vehicle is pushed");
        Assert.DoesNotContain("part-off: starter", shell.Run("check", "--back").Output, StringComparison.Ordinal);
        Assert.Contains("because the vehicle is pushed", shell.Good("built"), StringComparison.Ordinal);
        shell.Good("small", "--in", "rag", "--where", "bore 3");
        Assert.Equal(1, shell.Run("accept", "still-in", "--because", "it will burn").Exit);
        Assert.Equal(1, shell.Run("accept", "part-off", "no such part", "--because", "x").Exit);
    }
}
