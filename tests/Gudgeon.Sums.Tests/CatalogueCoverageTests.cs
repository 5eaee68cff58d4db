using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Gudgeon.Sums.Tests;

public class CatalogueCoverageTests
{
    private static readonly string[] Subjects = ["Fasteners", "Motion", "Lifting", "Springs", "Fluids"];

    public static TheoryData<string, string> Sums
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var type in typeof(SumCatalogue).Assembly.GetExportedTypes().Where(type => Subjects.Contains(type.Namespace?.Split('.')[^1])))
            {
                foreach (var sum in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
                    .Where(method => method.ReturnType.IsGenericType && method.ReturnType.GetGenericTypeDefinition() == typeof(Outcome<>)))
                {
                    var bare = Hyphened(sum.Name);
                    var owner = Hyphened(type.Name).Replace("-table", "");
                    data.Add(type.Name + "." + sum.Name, type.Namespace!.Split('.')[^1].ToLowerInvariant() + "." + (sum.Name is "Of" or "Find" ? $"{bare}-{owner}" : bare));
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Sums))]
    public void Sum_that_can_be_called_is_in_the_catalogue(string method, string id) =>
        Assert.True(SumCatalogue.All.Any(sum => sum.Id == id), $"{method} has no entry {id}");

    [Fact]
    public void No_two_sums_share_an_entry() =>
        Assert.Empty(Sums.Select(row => row.Data.Item2).GroupBy(id => id).Where(group => group.Count() > 1).Select(group => group.Key));

    [Fact]
    public void Every_sum_says_formula_units_range_errors_and_source()
    {
        var docs = XDocument.Load(Path.Combine(AppContext.BaseDirectory, "Gudgeon.Sums.xml")).Descendants("member")
            .ToLookup(member => Regex.Replace(member.Attribute("name")!.Value, @"\(.*", ""), member => member.Value.ToLowerInvariant());
        Assert.All(Sums.Select(row => row.Data.Item1), sum =>
        {
            var subject = Subjects.Single(name => docs.Contains($"M:Gudgeon.Sums.{name}.{sum}"));
            var text = string.Join(' ', docs[$"M:Gudgeon.Sums.{subject}.{sum}"]);
            // A short form may point at the type or the twin that says it.
            if (text.Contains("as there") || !text.Contains("formula"))
                text += string.Join(' ', docs[$"T:Gudgeon.Sums.{subject}.{sum.Split('.')[0]}"]);
            Assert.All(["formula", "units", "range", "errors", "source"], part => Assert.Contains(part, text));
        });
    }

    private static string Hyphened(string name) => Regex.Replace(name, "(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])", "-").ToLowerInvariant();
}
