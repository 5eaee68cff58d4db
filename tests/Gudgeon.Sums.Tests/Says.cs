namespace Gudgeon.Sums.Tests;

internal static class Says
{
    /// <summary>A refusal for one reason, compared word for word.</summary>
    public static void One<T>(string message, Outcome<T> outcome) => Assert.Equal(message, Assert.Single(outcome.Refusals).ToString());

    /// <summary>A refusal for several reasons, all at once and in order.</summary>
    public static void All<T>(Outcome<T> outcome, params string[] messages) => Assert.Equal(messages, outcome.Refusals.Select(refusal => refusal.ToString()));
}
