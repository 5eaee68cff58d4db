using System.Reflection;
using System.Text.RegularExpressions;

namespace Gudgeon.Sums.Tests;

public class CatalogueCoverageTests
{
    private static readonly string[] Subjects = ["Fasteners", "Motion", "Lifting"];

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

    private static string Hyphened(string name) => Regex.Replace(name, "(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])", "-").ToLowerInvariant();
}
