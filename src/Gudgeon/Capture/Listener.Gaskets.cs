namespace Gudgeon.Capture;

/// <summary>Gaskets and seals: "its gasket" is a part of its own where the engine has it, so that it can be bought, fitted and closed.</summary>
internal sealed partial class Listener
{
    private Fact WithGasket(Fact fact) => fact switch
    {
        Damaged f => f with { Thing = GasketOf(f.Thing) },
        Seen f => f with { Thing = GasketOf(f.Thing) },
        Missing f => f with { Thing = GasketOf(f.Thing) },
        ToBuy f => f with { Thing = GasketOf(f.Thing) },
        Off f => f with { Thing = GasketOf(f.Thing) },
        On f => f with { Thing = GasketOf(f.Thing) },
        Put f => f with { Thing = GasketOf(f.Thing) },
        LeftOn f => f with { Thing = GasketOf(f.Thing) },
        Planned { Thing: { } thing } f => f with { Thing = GasketOf(thing) },
        _ => fact,
    };

    /// <summary>The gasket or seal of a part: one of its own where it has a name, else a piece.</summary>
    private Thing Gasketed(Thing part, string gasket) => GasketOf(part with { Detail = gasket, Others = [] });

    private Thing GasketOf(Thing thing)
    {
        if (thing is not { Sort: ThingSort.Part, Detail: "gasket" or "seal" or "O-ring", Ids.Count: > 0, Others.Count: 0 })
            return thing;
        var words = Tokeniser.Cut($"{index.NameOf(thing.Kind)} {thing.Detail}");
        var found = Range(0, words.Count - 1).Select(from => index.Book.Longest(words, from)).FirstOrDefault(f => f.To == words.Count && f.Values.Count > 0);
        return found.Values is [var own, ..] && own.Kind != thing.Kind && OfSame(own.Kind, thing) is { } gasket && gasket.Ids.Count == thing.Ids.Count ? gasket : thing;
    }
}
