namespace Gudgeon.Journal;

/// <summary>What is looked at before each lift. Common practice, no source, but for what the cautions cite.</summary>
public static class LiftList
{
    public static IReadOnlyList<string> Looks { get; } =
    [
        "Nobody stands under or beside the load, nor will on its way",
        "Every line, cable and hose to the vehicle is undone and tied back; drained, capped and tied before it tilts",
        "The mounts are free, and nothing but the hook holds the engine",
        "Every piece of gear is the one in the list, undamaged, its rating read on it",
        "Eye bolts are screwed in to the collar, and each pull lies in the plane of its eye",
        "The hook's catch is shut and the legs lie without twist or sharp edge",
        "The crane's pin is in the hole that the book counts with",
        "The floor is clean and level: no drain, step or stone on the way",
        "The vehicle stands on rated stands or chocked wheels, and they are looked at again once the engine's mass is off it",
        "A second person is here; somebody knows what we do; a charged phone is in reach",
        "Lifted by a hand's breadth, stopped, looked at: level, no leg slack, nothing caught",
    ];

    /// <summary>What was not said yes to since rig, crane or place were told last.</summary>
    public static IReadOnlyList<string> Open(Bench bench) => [.. Looks.Where(look => !bench.LiftLooks.TryGetValue(look, out var number) || number < bench.LiftToldBy)];
}
