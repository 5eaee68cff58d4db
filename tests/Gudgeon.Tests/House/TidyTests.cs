using System.Text.RegularExpressions;

namespace Gudgeon.Tests.House;

/// <summary>The repository's own rules.</summary>
public partial class TidyTests
{
    /// <summary>Longest file in lines. A file that needs more holds two subjects.</summary>
    private const int LongestFile = 500;

    private static readonly string[] text = [".cs", ".razor", ".css", ".js", ".md", ".sh", ".json", ".psv", ".txt", ".jsonl", ".csproj", ".props", ".yml", ".html"];

    [Fact]
    public void Files_hold_one_subject_each() =>
        Assert.DoesNotContain(Repository.Files(".cs", ".razor", ".js", ".css").Where(f => Repository.Read(f).Count(c => c == '\n') > LongestFile), _ => true);

    [Fact]
    public void Files_end_lines_with_LF_and_the_last_line_too()
    {
        foreach (var file in Repository.Files(text))
        {
            var content = Repository.Read(file);
            Assert.False(content.Contains('\r', StringComparison.Ordinal), $"{file} has a CR");
            Assert.True(content.Length == 0 || content[^1] == '\n', $"{file} does not end with a line end");
        }
    }

    [Fact]
    public void No_maker_or_brand_is_named()
    {
        var denied = Repository.Read("tests/Gudgeon.Tests/House/denied-names.txt").Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(l => l[0] != '#').ToHashSet(StringComparer.OrdinalIgnoreCase);
        Assert.True(denied.Count > 50);
        foreach (var file in Repository.Files(text).Where(f => !f.EndsWith("denied-names.txt", StringComparison.Ordinal)))
        {
            var met = Word().Matches(Repository.Read(file)).Select(m => m.Value).FirstOrDefault(denied.Contains);
            Assert.True(met is null, $"{file} names \"{met}\"");
        }
    }

    [Fact]
    public void No_unfinished_work_is_left_in_the_code()
    {
        // The words are put together here so that this file does not find itself.
        string[] marks = ["TO" + "DO", "FIX" + "ME", "HA" + "CK", "NotImplemented" + "Exception"];
        foreach (var file in Repository.Files(".cs", ".razor", ".js", ".css", ".sh"))
        {
            var content = Repository.Read(file);
            Assert.DoesNotContain(marks, m => Regex.IsMatch(content, $@"\b{m}\b"));
        }
    }

    [GeneratedRegex(@"[\p{L}][\p{L}\p{N}-]+")]
    private static partial Regex Word();
}
