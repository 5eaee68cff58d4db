using System.Globalization;
using Gudgeon.Journal;
using Gudgeon.Planning.Calendar;

namespace Gudgeon.Planning.OnTheBench;

/// <summary>Who asks, and when: the time and whether there is a second pair of hands.</summary>
/// <param name="Now">By the owner's clock.</param>
/// <param name="Alone">True when only what one person can do counts.</param>
public sealed record Circumstances(DateTimeOffset Now, bool Alone = false)
{
    /// <summary>Equipment that is taken as not there for this question, whatever the book says.</summary>
    public IReadOnlyList<string> Without { get; init; } = [];

    /// <summary>True for a plan over days: what will be there at some time counts as there.</summary>
    public bool AnyTime { get; init; }

    /// <summary>Why equipment is not at hand now, in words fit for the owner; null when it is.</summary>
    /// <param name="bench">The bench with what was told.</param>
    /// <param name="equipment">As the tables word it: <c>hoist or a helper</c> is met by either.</param>
    public string? Lacks(Bench bench, string equipment)
    {
        string? lack = null;
        foreach (var option in Options(equipment))
        {
            if (LackOf(bench, option) is not { } why)
                return null;
            lack ??= why;
        }

        return lack;
    }

    /// <summary>The windows in which equipment is there, from what was told; null when nothing was told of it.</summary>
    internal static Window[]? WindowsOf(Bench bench, string equipment, DateTimeOffset now)
    {
        var all = new List<Window>();
        foreach (var option in Options(equipment))
        {
            if (Told(bench, option) is { } told)
            {
                if (told.Have)
                    all.Add(new Window(told.From?.ToOffset(now.Offset).DateTime ?? DateTime.MinValue, told.Until?.ToOffset(now.Offset).DateTime ?? DateTime.MaxValue));
            }
            else if (WaitFor(bench, option) is { Until: { } until })
                all.Add(new Window(until.ToOffset(now.Offset).DateTime, DateTime.MaxValue));
            else if (WaitFor(bench, option) is null)
                return null;
        }

        return [.. all.OrderBy(w => w.From)];
    }

    private string? LackOf(Bench bench, string option)
    {
        if (Without.FirstOrDefault(w => Names(w, option)) is { } left)
            return $"needs the {option}, which is not at hand";
        if (Told(bench, option) is { } told)
        {
            return !told.Have ? $"needs the {option}, which is not there"
                : AnyTime && !(told.Until <= Now) ? null
                : told.From > Now ? $"needs the {option}, due {Day(told.From.Value)}"
                : told.Until <= Now ? $"needs the {option}, gone since {Day(told.Until.Value)}"
                : null;
        }

        return WaitFor(bench, option) is { } wait && !(wait.Until <= Now || (AnyTime && wait.Until is not null))
            ? $"needs the {option}, waited for{(wait.Until is { } until ? $", due {Day(until)}" : "")}"
            : null;
    }

    internal static string Day(DateTimeOffset time) => time.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    private static EquipmentTold? Told(Bench bench, string option) =>
        bench.Equipment.Where(e => Names(e.Key, option)).OrderBy(e => e.Key.Length).Select(e => e.Value).LastOrDefault();

    private static Waiting? WaitFor(Bench bench, string option) =>
        bench.Waits.Values.Select(r => (Waiting)r.Entry).FirstOrDefault(w => w.What is null && Names(w.For, option));

    private static string[] Options(string equipment) =>
        [.. equipment.Split(" or ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(o => o is "a helper" ? EquipmentTold.SecondPerson : o)];

    /// <summary>Told "stand" means "engine stand", told "the engine stand" as well: one name's words are all in the other.</summary>
    private static bool Names(string told, string wanted)
    {
        var (a, b) = (Words(told), Words(wanted));
        return a.Length > 0 && b.Length > 0 && (a.All(b.Contains) || b.All(a.Contains));
    }

    private static string[] Words(string name) =>
        [.. Whereabouts.PlaceName(name).Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries).Where(w => w is not ("the" or "a" or "an" or "my"))];
}
