using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.RegularExpressions;
using Gudgeon.Commands;
using Gudgeon.Journal;

namespace Gudgeon.Tests.House;

/// <summary>What the docs say can be run is run through the parser, and what they list is counted.</summary>
public partial class DocsTests
{
    private static readonly CommandLine line = new(new Desk(TextWriter.Null, TextWriter.Null, TimeProvider.System, () => "docs"));

    [Fact]
    public void Commands_in_the_docs_are_commands_of_the_program()
    {
        var seen = 0;
        foreach (var file in Repository.Files(".md"))
        {
            foreach (Match command in CommandInText().Matches(Repository.Read(file)))
            {
                seen++;
                Parses(command.Groups["args"].Value, file);
            }
        }

        Assert.True(seen >= 10, $"only {seen} commands found in the docs");
    }

    [Fact]
    public void Every_command_helps_with_an_example_that_parses()
    {
        var all = Under(line.Root).ToArray();
        Assert.True(all.Length >= 15);
        foreach (var command in all.Where(c => c.Subcommands.Count == 0 || c.Action is not null))
        {
            var example = command.Description!.Split("Example: gudgeon ");
            Assert.True(example.Length == 2, $"{command.Name} has no example");
            Parses(example[1], command.Name);
        }
    }

    [Fact]
    public void Findings_are_listed_in_the_docs_with_their_meaning()
    {
        var page = Repository.Read("docs/findings.md");
        Assert.All(FindingNames.Meanings, m => Assert.Contains($"| `{m.Key}` | {m.Value} |", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Json_shapes_of_the_commands_are_listed_in_the_docs()
    {
        var page = Repository.Read("docs/json.md");
        var shapes = Repository.Files(".cs").Where(f => f.StartsWith("src/Gudgeon/", StringComparison.Ordinal))
            .SelectMany(f => Shape().Matches(Repository.Read(f)).Select(m => m.Groups["name"].Value))
            .Distinct()
            .ToArray();
        Assert.True(shapes.Length >= 15, $"only {shapes.Length} shapes found in the code");
        Assert.All(shapes, shape => Assert.Contains($"`{shape}`", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Json_fields_that_the_commands_write_are_listed_in_the_docs()
    {
        var page = Repository.Read("docs/json.md");
        var fields = Repository.Files(".cs").Where(f => f.StartsWith("src/Gudgeon/Commands/", StringComparison.Ordinal) || f.EndsWith("PhotosCommand.cs", StringComparison.Ordinal))
            .SelectMany(f => Field().Matches(Repository.Read(f)).Select(m => m.Groups["name"].Value))
            .Distinct()
            .ToArray();
        Assert.True(fields.Length >= 80, $"only {fields.Length} fields found in the code");
        Assert.All(fields, field => Assert.Contains($"`{field}`", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Readme_has_the_job_the_picture_and_then_exactly_two_commands()
    {
        var readme = Repository.Read("README.md");
        var (job, picture, commands, rest) = (readme.IndexOf("You take a whole engine", StringComparison.Ordinal), readme.IndexOf("![", StringComparison.Ordinal), readme.IndexOf("## Two commands", StringComparison.Ordinal), readme.IndexOf("## What it does", StringComparison.Ordinal));
        Assert.True(job > 0 && picture > job && commands > picture && rest > commands);
        Assert.Equal(
            ["dotnet run --project src/Gudgeon -c Release", "./check.sh"],
            CodeBlock().Matches(readme[commands..rest]).Select(m => m.Groups["code"].Value.Trim()));
        Assert.True(File.Exists(Path.Combine(Repository.Root, "docs/pictures/strip.png")));
    }

    private static IEnumerable<Command> Under(Command command) => command.Subcommands.SelectMany(c => Under(c).Prepend(c));

    private static void Parses(string text, string where)
    {
        var words = CommandLineParser.SplitCommandLine(text.Trim()).ToArray();
        var parsed = line.Root.Parse(words);
        Assert.True(parsed.Errors.Count == 0, $"{where}: gudgeon {text.Trim()}: {string.Join(' ', parsed.Errors.Select(e => e.Message))}");
    }

    [GeneratedRegex(@"(?:^|`)gudgeon (?<args>[a-z][^`\n]*)(?=`|$)", RegexOptions.Multiline)]
    private static partial Regex CommandInText();

    [GeneratedRegex("""Show\(\s*(?:json|true|line\.Json\(parsed\)),\s*"(?<name>[a-z-]+)",""")]
    private static partial Regex Shape();

    [GeneratedRegex("""\["(?<name>[a-z][a-z0-9_]*)"\]\s*=(?!=)""")]
    private static partial Regex Field();

    [GeneratedRegex("```\n(?<code>.*?)```", RegexOptions.Singleline)]
    private static partial Regex CodeBlock();
}
