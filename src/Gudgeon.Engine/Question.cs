using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Gudgeon.Engine;

public enum QuestionKind
{
    /// <summary>One of the options.</summary>
    One,

    /// <summary>Any of the options, parted by commas; none is an answer.</summary>
    Many,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A number.</summary>
    Figure,
}

/// <summary>One of the answers that a question offers.</summary>
public sealed record Option(string Id, string Label);

/// <summary>
/// A question that starts a book. <see cref="IsBasic"/> ones are asked of everybody; the others have defaults that follow
/// from the answers and are there for those who know.
/// </summary>
public sealed record Question(string Id, string Name, QuestionKind Kind, string Ask, string Help, bool IsBasic, IReadOnlyList<Option> Options)
{
    /// <summary>Smallest and largest number taken; 0 and 0 where no number is asked.</summary>
    public (double From, double To) Range { get; init; }

    internal string When { get; init; } = "*";
    internal string FixedDefault { get; init; } = "";

    /// <summary>What can be answered, for a message.</summary>
    public string Expects => Kind switch
    {
        QuestionKind.One => $"one of {OptionIds}",
        QuestionKind.Many => $"any of {OptionIds}, with commas between",
        QuestionKind.Count => string.Create(CultureInfo.InvariantCulture, $"a whole number from {Range.From} to {Range.To}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"a number from {Range.From} to {Range.To}"),
    };

    private string OptionIds => string.Join(", ", Options.Select(o => o.Id));

    /// <summary>Whether the text answers the question, and the answer in its plain form.</summary>
    internal bool Takes(string text, [NotNullWhen(true)] out string? answer)
    {
        answer = null;
        switch (Kind)
        {
            case QuestionKind.One:
                answer = Options.FirstOrDefault(o => Same(o.Id, text))?.Id;
                break;
            case QuestionKind.Many:
                var parts = text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
                if (parts.All(p => Options.Any(o => Same(o.Id, p))))
                    answer = string.Join(',', Options.Where(o => parts.Any(p => Same(o.Id, p))).Select(o => o.Id));
                break;
            default:
                var style = Kind == QuestionKind.Count ? NumberStyles.Integer : NumberStyles.Float;
                if (double.TryParse(text, style, CultureInfo.InvariantCulture, out var number) && number >= Range.From && number <= Range.To)
                    answer = number.ToString(CultureInfo.InvariantCulture);
                break;
        }

        return answer is not null;
    }

    private static bool Same(string id, string text) => string.Equals(id, text.Trim(), StringComparison.OrdinalIgnoreCase);
}
