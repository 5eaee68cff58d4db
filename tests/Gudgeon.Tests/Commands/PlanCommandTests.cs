using System.Text.Json;

namespace Gudgeon.Tests.Commands;

public class PlanCommandTests
{
    private static Shell Started()
    {
        var shell = new Shell();
        File.WriteAllText(shell.File("answers.json"), """{"layout": "inline", "n": 4}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
        return shell;
    }

    private static JsonElement Json(Shell shell, params string[] args)
    {
        var (_, output, errors) = shell.Run([.. args, "--json"]);
        Assert.Equal("", errors);
        return JsonDocument.Parse(output).RootElement;
    }

    [Fact]
    public void Reach_names_steps_time_tools_and_proof()
    {
        using var shell = Started();
        var told = shell.Good("reach", "starter");
        Assert.Contains("take off the starter", told, StringComparison.Ordinal);
        Assert.Contains("a guess", told, StringComparison.Ordinal);
        Assert.Contains("No way takes less work: proven", told, StringComparison.Ordinal);
        Assert.Contains("Defer to local codes and licensed practice.", told, StringComparison.Ordinal);
        var json = Json(shell, "reach", "starter");
        Assert.Equal("reach", json.GetProperty("gudgeon").GetString());
        Assert.Equal(json.GetProperty("least_seconds").GetInt64(), json.GetProperty("seconds").GetInt64());
        var steps = json.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("id").GetString()).ToList();
        Assert.True(steps.IndexOf("op:battery-off") < steps.FindIndex(s => s!.StartsWith("starter", StringComparison.Ordinal)));
    }

    [Fact]
    public void Reach_of_a_joint_and_of_a_bore_leave_their_parts_on()
    {
        using var shell = Started();
        Assert.DoesNotContain("take off the head,", shell.Good("reach", "joint", "of", "the", "head"), StringComparison.Ordinal);
        Assert.Contains("take off the piston 2", shell.Good("reach", "block", "--measure", "bore diameter", "--place", "2"), StringComparison.Ordinal);
        Assert.Equal("cylinder block: met bore 9; expected 1 to 4. Count them again.", shell.Run("reach", "block", "--measure", "bore", "--place", "9").Errors);
    }

    [Fact]
    public void Why_gives_the_missing_stand_with_its_day()
    {
        using var shell = Started();
        shell.Good("equipment", "engine", "stand", "--from", "2099-11-13");
        Assert.Contains("Needs the engine stand, due Fri 13 Nov", shell.Good("why", "crankshaft"), StringComparison.Ordinal);
        Assert.Contains("Needs a second person", shell.Good("why", "crankshaft", "--alone"), StringComparison.Ordinal);
        Assert.Equal("equipment", Json(shell, "why", "crankshaft").GetProperty("reasons")[0].GetProperty("kind").GetString());
    }

    [Fact]
    public void Rules_that_contradict_each_other_are_named_with_their_entry_and_the_way_out()
    {
        using var shell = new Shell();
        File.WriteAllText(shell.File("answers.json"), """{"layout": "flat", "n": 4, "case": "split", "vt": "dohc", "drive": "belt", "ind": "turbo"}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
        shell.Good("learn", "right", "case", "half", "--first", "rod cap 1");
        foreach (var command in new[] { "why", "reach" })
        {
            var told = shell.Good(command, "rod", "cap", "1");
            Assert.Contains("these rules contradict each other, so it can never be reached", told, StringComparison.Ordinal);
            Assert.Contains("entry 2: take off the rod cap 1 before the right case half", told, StringComparison.Ordinal);
            Assert.Contains("if it is wrong, gudgeon strike 2", told, StringComparison.Ordinal);
        }

        var json = Json(shell, "why", "rod", "cap", "1");
        Assert.Equal(2, json.GetProperty("contradiction").GetArrayLength());
        Assert.Equal([2], json.GetProperty("made_by").EnumerateArray().Select(n => n.GetInt32()));
        shell.Good("strike", "2");
        Assert.DoesNotContain("contradict", shell.Good("why", "rod", "cap", "1"), StringComparison.Ordinal);
    }

    [Fact]
    public void Wait_offers_nothing_that_takes_two()
    {
        using var shell = Started();
        var offers = Json(shell, "wait", "--hours", "2", "--alone").GetProperty("offers");
        Assert.True(offers.GetArrayLength() > 0);
        Assert.Equal("--hours: met 0; expected more than 0 and up to 24 hours. Say how long you have.", shell.Run("wait", "--hours", "0").Errors);
    }

    [Fact]
    public void Plan_on_days_gives_dates_and_a_calendar_file()
    {
        using var shell = Started();
        shell.Good("hours", "mon-sun 9-18");
        var json = Json(shell, "plan", "--days", "--ics", shell.File("plan.ics"));
        Assert.True(string.CompareOrdinal(json.GetProperty("finish_50").GetString(), json.GetProperty("finish_90").GetString()) <= 0);
        var ics = File.ReadAllText(shell.File("plan.ics"));
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", ics, StringComparison.Ordinal);
        Assert.True(ics.Split("BEGIN:VEVENT").Length - 1 >= json.GetProperty("tasks").EnumerateArray().Count());
    }

    [Fact]
    public void Plan_back_gives_the_refit_with_its_proof()
    {
        using var shell = Started();
        Assert.Contains("Nothing is off yet. The refit after the whole strip:", shell.Good("plan", "--back"), StringComparison.Ordinal);
        shell.Good("off", "air", "filter");
        var told = shell.Good("plan", "--back");
        Assert.Contains("The refit of what is off now:", told, StringComparison.Ordinal);
        Assert.Contains("put on the air filter", told, StringComparison.Ordinal);
        Assert.Contains("No order takes less than", told, StringComparison.Ordinal);
        var json = Json(shell, "plan", "--back");
        Assert.True(json.GetProperty("least_seconds").GetInt64() <= json.GetProperty("seconds").GetInt64());
    }

    [Fact]
    public void Plan_back_weighs_what_is_on_order_and_what_has_no_day()
    {
        using var shell = Started();
        shell.Good("hours", "mon-sun 9-18");
        shell.Good("off", "air", "filter");
        shell.Good("off", "exhaust", "pipe", "--fasteners", "2 M8", "--fasteners", "1 lost");
        shell.Good("lead", "3", "5", "10", "air", "filter");
        var day = DateOnly.FromDateTime(DateTimeOffset.Now.AddDays(5).DateTime);
        var told = shell.Good("plan", "--back");
        Assert.Contains($"From {day.ToString("ddd d MMM yyyy", System.Globalization.CultureInfo.InvariantCulture)} on: ", told, StringComparison.Ordinal);
        Assert.Contains("waits: air filter housing: something for it is on order or at a shop; there on ", told, StringComparison.Ordinal);
        var json = Json(shell, "plan", "--back");
        var step = json.GetProperty("steps").EnumerateArray().Single(s => s.GetProperty("doing").GetString() == "put on the air filter housing");
        Assert.Equal(day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), step.GetProperty("not_before").GetString());
        Assert.False(step.GetProperty("held").GetBoolean());
        Assert.Contains("held: exhaust pipe: 1 new fastener to get (1 lost)", told, StringComparison.Ordinal);
        Assert.Contains("No day is known for what these wait for, so the dates leave it out: exhaust pipe.", shell.Good("plan", "--days"), StringComparison.Ordinal);
    }

    [Fact]
    public void Minutes_of_a_kind_of_work_are_told()
    {
        using var shell = Started();
        Assert.Contains("Washing a part that is back from a shop, its oilways brushed and blown: 20 minutes", shell.Good("minutes", "20", "washing"), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("A reading taken and written down: 3 minutes", shell.Good("minutes", "3", "reading"), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Plan_of_a_network_file_prints_cost_bound_and_order()
    {
        using var shell = new Shell();
        File.WriteAllText(shell.File("net.json"), """{"nodes": [{"id": "a", "cost_s": 5}, {"id": "b", "cost_s": 9}, {"id": "c", "cost_s": 1, "choices": [[["a"], ["b"]]]}], "targets": ["c"]}""");
        Assert.Contains("cost 6 s\nbound 6 s, proven least", shell.Good("plan", "--file", shell.File("net.json")).ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Equal(1, shell.Run("plan", "--file", shell.File("no.sm")).Exit);
        Assert.Contains("--limit: met 0; expected more than 0", shell.Run("plan", "--file", shell.File("net.json"), "--limit", "0").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_of_a_network_that_contradicts_itself_names_the_rules()
    {
        using var shell = new Shell();
        File.WriteAllText(shell.File("net.json"), """{"nodes": [{"id": "a", "cost_s": 5, "needs": ["b"]}, {"id": "b", "cost_s": 9, "needs": ["a"]}, {"id": "c", "cost_s": 1, "blocked": ["needs the stand"]}], "targets": ["a", "c"]}""");
        Assert.Equal(
            "network file, targets: met needs the stand; expected targets that can be reached. Lift this reason, or leave the target out.\nnetwork file, targets: met rules that contradict each other: a waits for b; b waits for a; expected targets that can be reached. Take out one of these rules.",
            shell.Run("plan", "--file", shell.File("net.json")).Errors.ReplaceLineEndings("\n").Trim());
    }

    [Fact]
    public void Lead_time_in_three_figures_is_told()
    {
        using var shell = Started();
        Assert.Contains("3 to 10 days away, most likely 5", shell.Good("lead", "3", "5", "10", "head", "gasket"), StringComparison.Ordinal);
    }
}
