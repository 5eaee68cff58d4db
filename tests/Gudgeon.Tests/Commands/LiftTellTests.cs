using System.Text.Json;

namespace Gudgeon.Tests.Commands;

/// <summary>A whole lift told by command alone. Engine, rig, crane and garage are invented.</summary>
public sealed class LiftTellTests : IDisposable
{
    private const string Defer = "Defer to local codes and licensed practice.";

    private static readonly string[] rig =
    [
        "lift", "rig", "--leg", "front: 500 0 300 500", "--leg", "rear: 0 0 300 500", "--gear", "hook: other, rated 1000 kg, called crane hook", "--gear", "front: chain, grade 8, 8 mm", "--gear", "front: eye bolt, DIN 580, M16",
        "--gear", "rear: chain, grade 8, 8 mm", "--gear", "rear: eye bolt, DIN 580, M16", "--gear-mass", "10",
    ];

    private static readonly string[] crane =
    [
        "lift", "crane", "--pivot-up", "1500", "--foot-up", "900", "--pin", "400", "--ram-closed", "550", "--ram-open", "950", "--drop", "120", "--hole", "1000 700", "--hole", "1200 500", "--in-hole", "2",
        "--wheel", "front left: 1600 450", "--wheel", "front right: 1600 -450", "--wheel", "rear right: 0 -350", "--wheel", "rear left: 0 350", "--kg", "75", "--centre-forward", "550", "--centre-up", "500", "--legs-up", "150", "--boom-over", "60",
    ];

    private static readonly string[] place =
        ["lift", "place", "--roof", "2700", "--sill", "850", "--under", "220", "--length", "600", "--width", "500", "--height", "engine: 450 -250", "--height", "inlet manifold: 560 300"];

    private static readonly string[] stand =
    [
        "lift", "stand", "--plate", "1500", "--post", "150", "--free-bolt", "0", "--engagement", "20", "--thread", "M12", "--class", "8.8", "--face", "cast iron", "--bolt", "1: 130 100", "--bolt", "2: -130 100", "--bolt", "3: 130 -100", "--bolt", "4: -130 -100",
        "--bolt-length", "65", "--through", "45", "--arm-reach", "120", "--arm-off", "50", "--arm-wide", "50", "--arm-thick", "50", "--arm-wall", "5",
    ];

    private readonly Shell shell = new();

    public LiftTellTests()
    {
        File.WriteAllText(shell.File("answers.json"), """{"layout": "inline", "n": 4}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
    }

    public void Dispose() => shell.Dispose();

    // The figures are those that are done by hand beside the tests of the journal: 30° on each leg, 42 % of the plate, 143 mm from hook to manifold.
    [Fact]
    public void Lift_told_by_command_is_judged_like_one_told_on_the_page()
    {
        Whole();
        var root = Judged();
        Assert.Equal("every check passes", root.GetProperty("verdict").GetString());
        Assert.Equal(0, root.GetProperty("guessed").GetArrayLength());
        Assert.Equal("24\u00a0%", Figure(root, "gear", "weakest"));
        Assert.Equal("42\u00a0%", Figure(root, "plate", "load on the plate"));
        Assert.Equal("143\u00a0mm", Figure(root, "headroom", "hook over the engine"));
        Assert.Equal(("crane legs under the car", 40.0), (root.GetProperty("tightest").GetProperty("point").GetString(), root.GetProperty("tightest").GetProperty("spare_mm").GetDouble()));
        Assert.Contains("stress at the root of the worst arm", string.Join('|', Check(root, "stand").GetProperty("figures").EnumerateArray().Select(f => f.GetProperty("what").GetString())), StringComparison.Ordinal);
    }

    [Fact]
    public void One_field_is_changed_and_the_rest_stays()
    {
        Whole();
        shell.Good("lift", "crane", "--in-hole", "1");
        Assert.Equal("30\u00a0%", Figure(Judged(), "plate", "load on the plate"));
        shell.Good("lift", "rig", "--gear-mass", "150");
        Assert.Equal("50\u00a0%", Figure(Judged(), "plate", "load on the plate"));
        shell.Good("lift", "place", "--sill", "300");
        shell.Good("lift", "stand", "--plate", "2000");
    }

    [Fact]
    public void Cautions_stand_before_what_was_recorded()
    {
        var output = shell.Good(crane).ReplaceLineEndings("\n").Split('\n');
        Assert.All(output.Take(2), line => Assert.EndsWith(Defer, line, StringComparison.Ordinal));
        Assert.Contains("Crane: 2 holes", output[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Json_of_a_telling_is_what_was_recorded()
    {
        var root = JsonDocument.Parse(shell.Good([.. rig, "--json"])).RootElement;
        Assert.Equal("recorded", root.GetProperty("gudgeon").GetString());
        Assert.StartsWith("Rig: front 500 mm", root.GetProperty("recorded")[0].GetProperty("words").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("the engine: met a mass of −5 kg; expected more than 0 kg, 100000 kg at most. Read the scale again, in kg.", "lift", "mass", "--kg", "-5")]
    [InlineData("part: met \"dynamo\"; expected a part of this engine. Look at gudgeon next, or at the pages.", "lift", "mass", "--kg", "5", "--of", "dynamo")]
    [InlineData("lift crane: met nothing told; expected one option or more. See gudgeon lift crane --help.", "lift", "crane")]
    [InlineData("before you lift: met 99; expected 1 to 11. See the list with gudgeon lift.", "lift", "looked", "99")]
    [InlineData("legs, line 1: met \"front 500 0\"; expected name: mm forward, left and up to its eye, then its length: front: 500 0 300 500. Write one thing a line, figures parted by spaces.", "lift", "rig", "--leg", "front 500 0", "--gear-mass", "1")]
    [InlineData("gear, line 1: met \"blue\"; expected grade 8, DIN 580, 8 mm, M12, rated 1000 kg, off 30, choke 120, shank front, called NAME. Write what is read on the piece; leave out what cannot be read.", "lift", "rig", "--gear", "hook: chain, blue", "--gear-mass", "1")]
    [InlineData("gear, line 1: met \"a chain\"; expected leg or hook: sort, then what is read on it: front: chain, grade 8, 8 mm. Write one piece a line.", "lift", "rig", "--gear", "a chain", "--gear-mass", "1")]
    [InlineData("hooks: met 20 mm from rear to front; expected 50 mm or more. Measure both forward from the bell-housing face.", "lift", "weighed", "--front", "80", "--front-hook", "60", "--rear", "60", "--rear-hook", "40", "--tolerance", "1", "--up", "0", "--unweighed", "20")]
    public void What_cannot_be_is_refused_in_four_parts(string message, params string[] told)
    {
        var (exit, output, errors) = shell.Run(told);
        Assert.Equal((1, "", message), (exit, output, errors));
    }

    [Theory]
    [InlineData("hang", "legs of 480 mm over a span of 500 mm", "rig", "--leg", "front: 500 0 300 240", "--leg", "rear: 0 0 300 240")]
    [InlineData("hang", "outside the lifting points", "mass", "--kg", "200", "--forward", "600", "--up", "0")]
    [InlineData("gear", "none that can be read", "rig", "--gear", "hook: other", "--gear", "front: chain, 8 mm", "--gear", "rear: chain, grade 8, 8 mm")]
    [InlineData("plate", "200 kg at most by the plate", "crane", "--hole", "1000 300", "--hole", "1200 200")]
    [InlineData("headroom", "short", "place", "--under", "170")]
    public void Lift_that_fails_a_check_is_not_possible_and_nothing_overrides_it(string check, string part, params string[] told)
    {
        Whole();
        shell.Good(["lift", .. told]);
        shell.Good("lift", "looked", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11");
        var (exit, output, _) = shell.Run("lift", "--json");
        var root = JsonDocument.Parse(output).RootElement;
        Assert.Equal((1, "not possible as it stands"), (exit, root.GetProperty("verdict").GetString()));
        var failed = Check(root, check);
        Assert.Equal(("fails", 0), (failed.GetProperty("standing").GetString(), failed.GetProperty("figures").GetArrayLength()));
        Assert.Contains(part.Split(' ')[^1], string.Join('|', failed.GetProperty("refusals").EnumerateArray().Select(r => $"{r.GetProperty("met")} {r.GetProperty("expected")}")), StringComparison.Ordinal);
        Assert.Contains("The lift: not possible as it stands.", shell.Run("lift").Output, StringComparison.Ordinal);
        // No option of any of its commands speaks of going on all the same.
        foreach (var help in new[] { "lift", "lift rig", "lift crane", "lift place", "lift stand", "lift mass", "lift weighed", "lift looked" })
        {
            var text = shell.Good([.. help.Split(' '), "--help"]);
            Assert.DoesNotContain("override", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("force", text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Part_that_gives_height_says_how_much_and_how_long_it_takes()
    {
        Whole();
        shell.Good("lift", "place", "--under", "900", "--sill", "300", "--height", "engine: 450 -250", "--height", "inlet manifold: 690 300");
        var root = Judged();
        Assert.Equal("hook over the engine", root.GetProperty("tightest").GetProperty("point").GetString());
        var gain = root.GetProperty("gains")[0];
        Assert.Equal(("inlet manifold", 240.0), (gain.GetProperty("name").GetString(), gain.GetProperty("gain_mm").GetDouble()));
        Assert.True(gain.GetProperty("steps").GetInt32() >= 1 && gain.GetProperty("high_min").GetDouble() > gain.GetProperty("low_min").GetDouble());
        Assert.Matches(@"inlet manifold off: 240.mm gained; \d+ steps?, about .+ \(gudgeon reach inlet-manifold\.1\)", shell.Run("lift").Output);
    }

    [Fact]
    public void Another_vehicle_in_the_way_gives_a_list_of_moves_and_the_lift_stays_impossible()
    {
        Whole();
        shell.Good("lift", "place", "--room-length", "8000", "--room-width", "4000", "--thing", "other car: 3000 1400 4200 1800 moves", "--stop", "500 1500 0", "--stop", "3000 1500 0");
        var root = Judged();
        Assert.Equal("fails", Check(root, "floor").GetProperty("standing").GetString());
        Assert.Equal("Before anything hangs, move other car off the crane's way and secure it: brake on, wheels chocked", root.GetProperty("moves")[0].GetString());
    }

    private void Whole()
    {
        shell.Good("lift", "mass", "--kg", "200", "--how", "invented", "--forward", "250", "--up", "0");
        shell.Good(rig);
        shell.Good(crane);
        shell.Good(place);
        shell.Good(stand);
    }

    private JsonElement Judged() => JsonDocument.Parse(shell.Run("lift", "--json").Output).RootElement;

    private static JsonElement Check(JsonElement root, string id) => root.GetProperty("checks").EnumerateArray().Single(check => check.GetProperty("id").GetString() == id);

    private static string? Figure(JsonElement root, string id, string what) =>
        Check(root, id).GetProperty("figures").EnumerateArray().Single(f => f.GetProperty("what").GetString()!.Contains(what, StringComparison.Ordinal)).GetProperty("shown").GetString();
}
