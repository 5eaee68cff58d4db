using System.Xml.Linq;

namespace Gudgeon.Tests.House;

/// <summary>The arrows between rooms run one way: Gudgeon, Planning, Journal, Engine, Sums.</summary>
public class ArrowTests
{
    private static readonly string[] rooms = ["Gudgeon", "Gudgeon.Planning", "Gudgeon.Journal", "Gudgeon.Engine", "Gudgeon.Sums"];

    [Fact]
    public void Projects_point_only_to_rooms_further_in()
    {
        var seen = 0;
        foreach (var (room, at) in rooms.Select((r, i) => (r, i)))
        {
            var project = XDocument.Parse(Repository.Read($"src/{room}/{room}.csproj"));
            foreach (var to in project.Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))))
            {
                seen++;
                Assert.True(Array.IndexOf(rooms, to) > at, $"{room} points to {to}");
            }
        }

        Assert.Equal(rooms.Length - 1, seen);
    }

    [Fact]
    public void Rooms_are_five_and_have_no_catch_all()
    {
        var folders = Directory.GetDirectories(Path.Combine(Repository.Root, "src")).Select(Path.GetFileName).Order(StringComparer.Ordinal);
        Assert.Equal(rooms.Order(StringComparer.Ordinal), folders);
        string[] catchAll = ["Common", "Core", "Shared", "Utils", "Utilities", "Helpers", "Infrastructure", "Misc"];
        Assert.DoesNotContain(Repository.Files(".cs", ".razor").SelectMany(f => f.Split('/')), catchAll.Contains);
    }

    [Fact]
    public void Sums_take_no_file_clock_or_chance()
    {
        var banned = Repository.Read("BannedSymbols.txt");
        Assert.Contains("P:System.DateTime.UtcNow", banned, StringComparison.Ordinal);
        string[] forbidden = ["System.IO", "File.", "DateTimeOffset.", "DateTime.", "Environment.", "Console.", "CultureInfo.CurrentCulture"];
        foreach (var file in Repository.Files(".cs").Where(f => f.StartsWith("src/Gudgeon.Sums/", StringComparison.Ordinal)))
        {
            var code = string.Join('\n', Repository.Read(file).Split('\n').Where(l => !l.TrimStart().StartsWith("//", StringComparison.Ordinal)));
            Assert.DoesNotContain(forbidden, f => code.Contains(f, StringComparison.Ordinal));
        }
    }
}
