using System.Globalization;
using CsCheck;

namespace Gudgeon.Engine.Tests;

/// <summary>Answers to all the questions, one by one and at random.</summary>
internal static class Answers
{
    /// <summary>Every option of every question; of numbers a few from both ends.</summary>
    public static IReadOnlyList<(string Question, string Answer)> Every { get; } =
        [.. Questions.All.SelectMany(q => Of(q).Select(a => (q.Id, a)))];

    /// <summary>Some questions answered, the rest left to the defaults.</summary>
    public static Gen<Dictionary<string, string>> Some { get; } =
        Gen.Int[0, 2].Array[Questions.All.Count].SelectMany(asked =>
            Gen.Int[0, 1000].Array[Questions.All.Count].Select(picks => Questions.All
                .Select((q, i) => (Question: q, Asked: asked[i] > 0, Pick: picks[i]))
                .Where(x => x.Asked)
                .ToDictionary(x => x.Question.Id, x => Of(x.Question) is var of ? of[x.Pick % of.Count] : "")));

    private static IReadOnlyList<string> Of(Question question) => question.Kind switch
    {
        QuestionKind.One => [.. question.Options.Select(o => o.Id)],
        QuestionKind.Many => ["", .. question.Options.Select(o => o.Id), string.Join(',', question.Options.Select(o => o.Id))],
        QuestionKind.Count => [.. new[] { 0, 1, 2, 3, 4, 5, 6, 8, 12 }.Where(n => n >= question.Range.From && n <= question.Range.To).Select(n => n.ToString(CultureInfo.InvariantCulture))],
        _ => [.. new[] { question.Range.From, question.Range.To }.Select(n => n.ToString(CultureInfo.InvariantCulture))],
    };
}
