using Gudgeon.Sums;
using Xunit;

namespace Gudgeon.Mutation.HandOver;

/// <summary>
/// Stryker swaps the changed sums in for the built ones while it runs tests, and puts the built ones back at its end.
/// This is the one test that it is given: it keeps the changed sums for the runner.
/// </summary>
public class ChangedSums
{
    private const string Target = "GUDGEON_CHANGED_SUMS";

    [Fact]
    public void Are_kept_for_the_runner()
    {
        // A test that meets no change at all is taken to meet every one, and Stryker would be hours over that.
        Assert.Equal(2, Outcome.Of(1).Then(x => Outcome.Of(x + 1)).Value);
        var sums = typeof(Outcome<>).Assembly;
        var changed = sums.GetTypes().Any(t => t.Name == "MutantControl");
        if (Environment.GetEnvironmentVariable(Target) is not { Length: > 0 } target || !changed)
            // Stryker first runs the tests of the sums as they are: there is nothing to keep yet.
            return;
        if (!File.Exists(target))
            File.Copy(sums.Location, target);
        Assert.Equal(File.ReadAllBytes(sums.Location), File.ReadAllBytes(target));
    }
}
