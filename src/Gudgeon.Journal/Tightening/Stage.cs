using System.Globalization;
using Gudgeon.Sums;
using Gudgeon.Sums.Quantities;

namespace Gudgeon.Journal;

/// <summary>What is done at one stage of a joint.</summary>
public enum StageSort
{
    Torque,
    Angle,

    /// <summary>Slackened again before what follows.</summary>
    Loosen,

    /// <summary>Left alone for so many minutes.</summary>
    Wait,

    /// <summary>Torque again after running or warming.</summary>
    Retorque,
}

/// <summary>One stage as the owner's manual gives it.</summary>
/// <param name="AsTyped">As typed: <c>44 lb ft</c>.</param>
/// <param name="Value">N·m, degrees or minutes; null where the stage has no figure.</param>
public sealed record Stage(StageSort Sort, string AsTyped, double? Value = null)
{
    /// <summary>Whether it is ticked fastener by fastener, or once for the joint.</summary>
    internal bool IsEach => Sort is not StageSort.Wait;

    internal bool HasTorque => Sort is StageSort.Torque or StageSort.Retorque;

    /// <summary>In the book's words: <c>60 N·m</c>, <c>a further 90°</c>.</summary>
    public string Words()
    {
        var figure = Value is { } value ? Sort switch
        {
            StageSort.Angle => Units.Show(value, "deg"),
            StageSort.Wait => string.Create(CultureInfo.InvariantCulture, $"{value:0.##} minutes"),
            _ => Units.Show(Math.Round(value, 1), "Nm"),
        } : "";
        return Sort switch
        {
            StageSort.Torque => figure,
            StageSort.Angle => $"a further {figure}",
            StageSort.Loosen => figure.Length > 0 ? $"loosen, {figure}" : "loosen",
            StageSort.Wait => $"wait {figure}".Trim(),
            _ => $"tighten again to {figure}",
        };
    }
}

/// <summary>Reads the stages of a manual as people type them, one a line or parted by semicolons.</summary>
public static class StageText
{
    private const int MostStages = 20;

    /// <summary>Most that any fastener of an engine gets, and the widest turn of one stage; beyond it a digit is too many.</summary>
    private const double MostNewtonMetres = 5000;

    private const double MostDegrees = 720;
    private const double MostMinutes = 100_000;

    /// <summary><c>30 Nm; 60 Nm; 90 deg; loosen; wait 10 min; again 60 Nm</c>.</summary>
    public static Outcome<IReadOnlyList<Stage>> Read(string text, BookUnits book)
    {
        var lines = text.Split(['\n', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (lines.Length is 0 or > MostStages)
            return Outcome.Refused<IReadOnlyList<Stage>>(new Refusal("stages", $"{lines.Length} stages", $"1 to {MostStages}, one a line", "Type them as your book gives them"));
        var read = lines.Select((line, i) => One(line, book, $"stage {i + 1}")).ToArray();
        var refusals = read.SelectMany(r => r.Refusals).ToArray();
        return refusals.Length > 0 ? Outcome.Refused<IReadOnlyList<Stage>>(refusals) : Outcome.Of<IReadOnlyList<Stage>>([.. read.Select(r => r.Value)]);
    }

    private static Outcome<Stage> One(string line, BookUnits book, string where)
    {
        var lower = line.ToLowerInvariant();
        if (Lead(lower, "wait") is { } waited)
            return Minutes(line, waited, where);
        if (Lead(lower, "loosen", "slacken", "undo") is { } loosened)
            return loosened.Length == 0 ? Outcome.Of(new Stage(StageSort.Loosen, line)) : Angle(StageSort.Loosen, line, loosened, book, where);
        if (Lead(lower, "again", "re-torque", "retorque", "tighten again to") is { } again)
            return Torque(StageSort.Retorque, line, again, book, where);
        var bare = Lead(lower, "then", "a further", "plus", "+") ?? lower;
        return bare.Contains('°', StringComparison.Ordinal) || bare.Contains("deg", StringComparison.Ordinal) || bare.Contains("turn", StringComparison.Ordinal)
            ? Angle(StageSort.Angle, line, bare, book, where)
            : Torque(StageSort.Torque, line, bare, book, where);
    }

    /// <summary>What follows one of the words, or null when the line begins with none.</summary>
    private static string? Lead(string line, params string[] words) =>
        words.FirstOrDefault(w => line.StartsWith(w, StringComparison.Ordinal)) is { } word ? line[word.Length..].Trim(' ', ',', ':') : null;

    private static Outcome<Stage> Torque(StageSort sort, string line, string text, BookUnits book, string where) =>
        Figure(QuantityText.Torque(text, book, where), t => t.NewtonMetres, MostNewtonMetres, "Nm", where).Then(value => Outcome.Of(new Stage(sort, line, value)));

    private static Outcome<Stage> Angle(StageSort sort, string line, string text, BookUnits book, string where) =>
        Figure(QuantityText.Angle(text, book, where), a => a.Degrees, MostDegrees, "deg", where).Then(value => Outcome.Of(new Stage(sort, line, value)));

    private static Outcome<Stage> Minutes(string line, string text, string where)
    {
        if (text.Length == 0)
            return Outcome.Of(new Stage(StageSort.Wait, line));
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var hours = words.Length > 1 && words[1].StartsWith('h');
        return words.Length is 1 or 2 && double.TryParse(words[0].Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var figure) && figure > 0 && figure <= MostMinutes
                && (words.Length == 1 || hours || words[1].StartsWith("min", StringComparison.Ordinal))
            ? Outcome.Of(new Stage(StageSort.Wait, line, hours ? figure * 60 : figure))
            : Outcome.Refused<Stage>(new Refusal(where, $"\"{line}\"", "minutes or hours, such as wait 10 min", "Type how long to wait"));
    }

    internal static Outcome<double> Figure<T>(Parsed<T> parsed, Func<T, double> amount, double most, string unit, string where) => parsed switch
    {
        Understood<T> { Value: var value } when amount(value) > 0 && amount(value) <= most => Outcome.Of(Math.Round(amount(value), 6)),
        Understood<T> { Text: var text } => Outcome.Refused<double>(new Refusal(where, $"\"{text}\"", $"more than 0 and at most {Units.Show(most, unit)}", "Look at your book again")),
        Ambiguous<T> ambiguous => Outcome.Refused<double>(new Refusal(where, $"\"{ambiguous.Text}\", which can be read in {ambiguous.Readings.Count} ways", string.Join(" or ", ambiguous.Readings.Select(r => r.Words)), "Type it with its unit")),
        Refused<T> refused => Outcome.Refused<double>(refused.Reason),
        _ => throw new InvalidOperationException("a parsed text is one of three"),
    };
}
