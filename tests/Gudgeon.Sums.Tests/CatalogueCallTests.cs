using System.Reflection;
using System.Runtime.CompilerServices;

namespace Gudgeon.Sums.Tests;

/// <summary>
/// Sums of Metrology, Statistics, Shapes and Fits come in many shapes. What the catalogue's worked numbers call is read from their code:
/// a public sum that none of them calls has no entry with formula and source.
/// </summary>
public class CatalogueCallTests
{
    private static readonly string[] subjects = ["Gudgeon.Sums.Metrology", "Gudgeon.Sums.Statistics", "Gudgeon.Sums.Shapes", "Gudgeon.Sums.Fits"];

    /// <summary>What is public and no sum, with the reason.</summary>
    private static readonly Dictionary<string, string> noSums = new()
    {
        ["ReadingCheck"] = "asks about a reading; gives no figure",
        ["ReadingText"] = "understands text",
        ["StudyTable"] = "understands text",
        ["ShapeText"] = "understands text",
        ["Iso286.Find"] = "Iso286.Of with refusals in place of exceptions",
        ["Fit.Find"] = "Fit.Of with refusals in place of exceptions",
        ["Limits.Of"] = "makes limits",
        ["Limits.AtMost"] = "makes limits",
        ["ExpansionTable.Find"] = "looks a material up; its coefficients have their own source",
        ["Condition.Judge"] = "two verdicts in one word",
        ["RuleOfThumb.Of"] = "says likely or unlikely; gives no figure",
    };

    private static IEnumerable<MethodInfo> Public => typeof(SumCatalogue).Assembly.GetExportedTypes()
        .Where(t => subjects.Contains(t.Namespace) && !typeof(Delegate).IsAssignableFrom(t))
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .Where(m => !m.IsSpecialName && m.ReturnType != typeof(void) && !m.IsDefined(typeof(CompilerGeneratedAttribute)) && m.GetBaseDefinition() == m && m.Name is not ("Equals" or "Deconstruct" or "<Clone>$"));

    private static readonly HashSet<MethodBase> called = CalledBy.All(
        SumCatalogue.All.Select(s => s.Worked.Compute.Method),
        m => m.DeclaringType is { } type && (type.Name.EndsWith("Sums", StringComparison.Ordinal) || type.DeclaringType?.Name.EndsWith("Sums", StringComparison.Ordinal) == true));

    public static TheoryData<string> Names => new(Public.Select(m => $"{m.DeclaringType!.Name}.{m.Name}").Distinct().Where(n => !noSums.ContainsKey(n) && !noSums.ContainsKey(n.Split('.')[0])));

    [Theory]
    [MemberData(nameof(Names))]
    public void Public_sum_is_worked_in_the_catalogue(string name) =>
        Assert.True(called.Any(m => $"{m.DeclaringType!.Name}.{m.Name}" == name), name);

    [Fact]
    public void Everything_left_out_is_there_to_be_left_out() =>
        Assert.All(noSums.Keys, key => Assert.Contains(Public, m => key == m.DeclaringType!.Name || key == $"{m.DeclaringType!.Name}.{m.Name}"));
}
