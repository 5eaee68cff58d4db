using System.Text.Json;
using Gudgeon.Journal;

namespace Gudgeon.Tests.Commands;

public class LiftCommandTests
{
    private const string Defer = "Defer to local codes and licensed practice.";

    private static Shell Started()
    {
        var shell = new Shell();
        File.WriteAllText(shell.File("answers.json"), """{"layout": "inline", "n": 4}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
        return shell;
    }

    [Fact]
    public void Cautions_come_first_and_nothing_told_is_no_answer()
    {
        using var shell = Started();
        var (exit, output, errors) = shell.Run("lift");
        var lines = output.ReplaceLineEndings("\n").Split('\n');
        Assert.Equal((1, ""), (exit, errors));
        Assert.All(lines.TakeWhile(line => line.Length > 0), line => Assert.EndsWith(Defer, line, StringComparison.Ordinal));
        Assert.True(lines.TakeWhile(line => line.Length > 0).Count() >= 7);
        Assert.Contains("The lift: not all told yet.", lines);
        Assert.Contains("    rig: met nothing told; expected one to four legs, and where each holds the engine. Tell the rig.", lines);
    }

    [Fact]
    public void Json_carries_cautions_verdict_and_refusals_in_four_parts()
    {
        using var shell = Started();
        using (var book = Book.Open(Path.Combine(shell.File("books"), "test-engine")))
        {
            // Two legs of 240 mm cannot span 500 mm: invented.
            var rig = new RigTold([new("front", new(500, 0, 300), 240), new("rear", new(0, 0, 300), 240)], [], 10);
            var mass = new MassTold(MassTold.WholeEngine, 200, 0, "invented", new EnginePlace(250, 0, 0));
            Assert.True(book.Submit(new Sending("t", DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch, "test"), new Tell(mass, rig)).Ok);
        }

        var root = JsonDocument.Parse(shell.Run("lift", "--json").Output).RootElement;
        Assert.Equal(("lift", 1, "not possible as it stands"), (root.GetProperty("gudgeon").GetString(), root.GetProperty("version").GetInt32(), root.GetProperty("verdict").GetString()));
        Assert.All(root.GetProperty("cautions").EnumerateArray(), caution => Assert.EndsWith(Defer, caution.GetString(), StringComparison.Ordinal));
        var hang = root.GetProperty("checks").EnumerateArray().Single(check => check.GetProperty("id").GetString() == "hang");
        Assert.Equal(("fails", 0, 1), (hang.GetProperty("standing").GetString(), hang.GetProperty("figures").GetArrayLength(), hang.GetProperty("refusals").GetArrayLength()));
        Assert.Equal("Take longer legs", hang.GetProperty("refusals")[0].GetProperty("do").GetString());
    }
}
