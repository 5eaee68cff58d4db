using System.Text.Json;

namespace Gudgeon.Tests.Commands;

public class CommandTests
{
    private static Shell Started()
    {
        var shell = new Shell();
        File.WriteAllText(shell.File("answers.json"), """{"layout": "inline", "n": 4}""");
        shell.Good("new", "Test engine", "--answers", shell.File("answers.json"));
        return shell;
    }

    [Fact]
    public void Whole_path_by_command_ends_all_back()
    {
        using var shell = Started();
        shell.Good("off", "thermostat", "--fasteners", "2 M6x22 bag 12", "--to", "shelf 2");
        Assert.Contains("2 M6x22 fasteners of the thermostat joint: in bag 12", shell.Good("account"), StringComparison.Ordinal);
        Assert.Equal("2 M6x22 fasteners of the thermostat joint: in bag 12", shell.Good("find", "bag", "12"));
        Assert.Equal(1, shell.Run("check", "--back").Exit);
        Assert.StartsWith("thermostat: on shelf 2", shell.Good("next", "--back"), StringComparison.Ordinal);
        shell.Good("fitted", "thermostat", "--fasteners", "2");
        shell.Good("fitted", "top hose");
        shell.Good("fitted", "bypass hose");
        Assert.Equal("All back: nothing is left over.", shell.Good("check", "--back"));
    }

    [Fact]
    public void Left_says_what_was_done_last_and_what_stands_half_way()
    {
        using var shell = Started();
        Assert.Equal("Nothing has been done in this book yet.", shell.Good("left"));
        shell.Good("off", "starter", "--fasteners", "3 M10x60 bag 4", "--at", "2026-01-09 20:30");
        shell.Good("fitted", "starter", "--fasteners", "2", "--at", "2026-01-09 21:10");
        var told = shell.Good("left");

        Assert.StartsWith("The last work was on Friday 9 January 2026, 21:10:", told, StringComparison.Ordinal);
        Assert.Contains("Left half way: starter joint, 2 of 3 in.", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Note_tried_shows_its_pieces_and_records_nothing_and_a_piece_is_left_out_by_its_code()
    {
        const string Words = "starter off, three M10 by 60, bag 4";
        using var shell = Started();
        Assert.Contains("--without \"off starter.1\"", shell.Good("note", "--try", Words), StringComparison.Ordinal);
        var heard = JsonDocument.Parse(shell.Good("note", "--try", Words, "--without", "off starter.1", "--json")).RootElement;
        Assert.Equal("off starter.1", heard.GetProperty("pieces").EnumerateArray().Single(p => p.GetProperty("left_out").GetBoolean()).GetProperty("code").GetString());
        Assert.Equal("Everything is on the engine.", shell.Good("account"));

        var (exit, _, errors) = shell.Run("note", Words, "--without", "off water-pump.1");
        Assert.Equal(1, exit);
        Assert.Contains("off starter.1", errors, StringComparison.Ordinal);
        Assert.DoesNotContain(Words, shell.Good("journal"), StringComparison.Ordinal);

        Assert.Contains("left out before it was recorded: starter: off", shell.Good("note", Words, "--without", "off starter.1"), StringComparison.Ordinal);
        Assert.DoesNotContain("  starter off", shell.Good("journal"), StringComparison.Ordinal);
    }

    [Fact]
    public void Note_is_settled_by_the_code_of_a_reading()
    {
        using var shell = Started();
        var readings = JsonDocument.Parse(shell.Good("note", "--try", "starter grumpled wobblewise off", "--json")).RootElement.GetProperty("questions")[0].GetProperty("readings");
        shell.Good("note", "starter grumpled wobblewise off", "--meant", readings[0].GetProperty("code").GetString()!);
        Assert.DoesNotContain("Open:", shell.Good("journal"), StringComparison.Ordinal);
    }

    [Fact]
    public void Strike_by_command_puts_it_back_on()
    {
        using var shell = Started();
        var told = shell.Good("off", "starter", "--json");
        var number = JsonDocument.Parse(told).RootElement.GetProperty("recorded")[0].GetProperty("number").GetInt64();
        shell.Good("strike", $"{number}", "--why", "wrong engine");
        Assert.Equal("Everything is on the engine.", shell.Good("account"));
        Assert.Contains("(struck out) starter off", shell.Good("journal"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("new", "A", "--from-nothing")]
    [InlineData("books")]
    [InlineData("next")]
    [InlineData("next", "--back")]
    [InlineData("account")]
    [InlineData("left")]
    [InlineData("find", "starter")]
    [InlineData("check")]
    [InlineData("check", "--back")]
    [InlineData("findings")]
    [InlineData("journal")]
    public void Commands_that_show_something_print_one_versioned_object(params string[] args)
    {
        using var shell = Started();
        var (_, output, errors) = shell.Run([.. args, "--json", .. args[0] is "new" or "books" or "findings" ? [] : new[] { "--book", "test-engine" }]);
        Assert.Equal("", errors);
        var root = JsonDocument.Parse(output).RootElement;
        Assert.Equal(1, root.GetProperty("version").GetInt32());
        Assert.False(string.IsNullOrEmpty(root.GetProperty("gudgeon").GetString()));
    }

    [Theory]
    [InlineData(2, "Unrecognized command or argument 'blah'.\nExpected a command of gudgeon. See gudgeon --help.", "blah")]
    [InlineData(1, "part: met \"dynamo\"; expected a part of this engine. Look at gudgeon next, or at the pages.", "off", "dynamo")]
    [InlineData(1, "part: met \"piston\", which 4 answer to; expected piston 1, piston 2, piston 3, piston 4. Name one of them.", "off", "piston")]
    [InlineData(1, "--fasteners: met \"two M6\"; expected a count first, such as \"2 M6x22 bag 12\". Write the count first.", "off", "starter", "--fasteners", "two M6")]
    [InlineData(1, "--at: met \"yesterday\"; expected a time such as 2026-01-31 19:40. Write it so.", "off", "starter", "--at", "yesterday")]
    [InlineData(1, "book: met \"other\"; expected one of test-engine. Start a book, or name one that is there.", "account", "--book", "other")]
    [InlineData(1, "entry 99: met no such entry; expected an entry that counts. Look at the journal for its number.", "strike", "99")]
    public void Refusals_have_four_parts_and_an_exit_code(int exit, string message, params string[] args)
    {
        using var shell = Started();
        var (code, output, errors) = shell.Run(args);
        Assert.Equal((exit, "", message), (code, output, errors.ReplaceLineEndings("\n")));
    }

    [Fact]
    public void Book_need_not_be_named_where_there_is_only_one_and_must_be_where_there_are_two()
    {
        using var shell = Started();
        shell.Good("account");
        shell.Good("new", "Second", "--from-nothing");
        Assert.Equal("book: met none named; expected one of second, test-engine. Add --book NAME.", shell.Run("account").Errors);
    }

    [Fact]
    public void Journal_goes_out_and_in_to_the_byte()
    {
        using var shell = Started();
        shell.Good("off", "starter", "--fasteners", "3 own holes");
        shell.Good("journal", "export", shell.File("one.jsonl"));
        shell.Good("journal", "verify", shell.File("one.jsonl"));
        shell.Good("journal", "import", shell.File("one.jsonl"), "--as", "copy");
        shell.Good("journal", "export", shell.File("two.jsonl"), "--book", "copy");
        Assert.Equal(File.ReadAllBytes(shell.File("one.jsonl")), File.ReadAllBytes(shell.File("two.jsonl")));
        shell.Good("journal", "backup", shell.File("copy.db"), "--book", "copy");
        Assert.Equal(1, shell.Run("journal", "backup", shell.File("copy.db"), "--book", "copy").Exit);
    }

    [Fact]
    public void Output_shows_control_characters_as_marks()
    {
        using var shell = Started();
        shell.Good("off", "starter", "--to", "box \u001b[31mred");
        Assert.DoesNotContain('\u001b', shell.Good("account"));
    }

    [Fact]
    public void Work_time_and_entry_time_are_two_things()
    {
        using var shell = Started();
        shell.Good("off", "starter", "--at", "2026-01-31 19:40");
        Assert.Contains("2026-01-31 19:40", shell.Good("journal"), StringComparison.Ordinal);
    }
}
