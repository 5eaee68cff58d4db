using System.Globalization;
using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>How the engine lies on its stand.</summary>
public enum Turned
{
    /// <summary>Heads up.</summary>
    Up,

    /// <summary>Sump up.</summary>
    Down,
    Side,

    /// <summary>Crank upright.</summary>
    End,
    Any,
}

/// <summary>How the engine is best turned for a piece of work.</summary>
/// <param name="ClutchEndFree">The stand must leave the clutch end free: a side plate or the bench.</param>
public sealed record Turn(Turned Position, bool ClutchEndFree, string Why);

/// <summary>What a piece of work usually takes, in minutes for one.</summary>
public sealed record UsualMinutes(string Id, string What, int Low, int High, string Per);

/// <summary>What something may weigh, in kilograms, and how it is lifted.</summary>
public sealed record MassGuess(double LowKg, double HighKg, string How);

/// <summary>Habits of the trade for planning: turning, time, weight. All of it common practice, with no source.</summary>
public static class Guides
{
    internal static IReadOnlyList<Row> Turns { get; } = Table.Read("turning.psv", Table.Own("turning.psv"));
    internal static IReadOnlyList<Row> Masses { get; } = Table.Read("masses.psv", Table.Own("masses.psv"));
    internal static IReadOnlyList<Row> Times { get; } = Table.Read("minutes.psv", Table.Own("minutes.psv"));

    private static readonly Dictionary<string, UsualMinutes> TimeOf = Times.ToDictionary(r => r["id"], r => new UsualMinutes(r["id"], r["what"], Whole(r["low"]), Whole(r["high"]), r["per"]));

    private static readonly Dictionary<string, string> TimeOfKind = Times.SelectMany(r => r.List("kinds").Select(k => (k, r["id"]))).ToDictionary(x => x.k, x => x.Item2);

    /// <summary>How to turn the engine for work on a part kind, or null where it does not matter.</summary>
    public static Turn? TurnFor(string partKind, EngineAnswers answers) => Turns
        .Where(r => r.List("work").Contains(partKind) && answers.Holds(r["if"]))
        .Select(r => new Turn(Enum.Parse<Turned>(r["position"], ignoreCase: true), r["clutch"] == "yes", r["why"]))
        .LastOrDefault();

    /// <summary>What taking one part of a kind off usually takes, or null where only its fasteners count.</summary>
    public static UsualMinutes? MinutesFor(string partKind) => TimeOfKind.TryGetValue(partKind, out var id) ? TimeOf[id] : null;

    /// <summary>A usual time by its id: <c>bolt</c>, <c>staged-bolt</c>, <c>engine-out</c>, <c>seized</c>...</summary>
    public static UsualMinutes? Minutes(string id) => TimeOf.GetValueOrDefault(id);

    /// <summary>What the dressed engine may weigh.</summary>
    public static MassGuess MassOfEngine(EngineAnswers answers) => Mass(Masses.First(r => r["id"] == "engine" && answers.Holds(r["if"])));

    /// <summary>What one part of a kind may weigh, or null where nobody needs to know.</summary>
    public static MassGuess? MassOf(string partKind, EngineAnswers answers) =>
        Masses.Where(r => r["kind"] == partKind && answers.Holds(r["if"])).Select(Mass).FirstOrDefault();

    private static MassGuess Mass(Row row) => new(Figures.Number(row["low"]), Figures.Number(row["high"]), row["how"]);

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
