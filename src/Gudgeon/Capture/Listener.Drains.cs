namespace Gudgeon.Capture;

/// <summary>What ran out, how much of it, and out of what.</summary>
internal sealed partial class Listener
{
    private AmountPhrase? Amounted(List<Phrase> clause, int i) =>
        clause.Take(i).OfType<AmountPhrase>().LastOrDefault(a => a.Amount.Unit is "l" or "ml" or "pint" or "quart" or "gallon" or "cc");

    private int DrainOut(AmountPhrase amount, ActPhrase phrase, List<Phrase> clause, int i, int end)
    {
        var from = clause.Skip(i).OfType<ThingPhrase>().FirstOrDefault();
        int fluidAt = Enumerable.Range(clause[0].From, end - clause[0].From).FirstOrDefault(k => Fluids.Contains(Word(k)), -1);
        string fluid = fluidAt >= 0 ? Word(fluidAt) : (from?.Thing ?? topic)?.Kind is "sump" or "oil-filter" or "oil-tank" or "oil-cooler" ? "oil" : "fluid";
        int to = from?.To ?? phrase.To + 1;
        Add(new Drained(fluid, amount.Amount, from is null ? null : from.Thing with { Others = [] }), Range(amount.From, Math.Max(to, fluidAt + 1)));
        if (from is not null)
            (topic, seen) = (from.Thing, from.Thing);
        else
            topic ??= null;
        return from is null ? i : clause.IndexOf(from);
    }

    private void Drain(ActPhrase phrase, List<Phrase> clause, int end)
    {
        int start = clause[0].From;
        var fluids = Range(start, end).Where(k => Fluids.Contains(Word(k))).ToList();
        var amount = clause.OfType<AmountPhrase>().FirstOrDefault(a => a.Amount.Unit is "l" or "ml" or "pint" or "quart" or "gallon" or "cc");
        var from = clause.OfType<ThingPhrase>().FirstOrDefault();
        pending.RemoveAll(p => p.From >= start);
        if (fluids.Count == 0)
        {
            string fluid = from?.Thing.Kind switch { "sump" or "oil-tank" or "oil-cooler" or "oil-filter" => "oil", "block" or "water-pump" or "jacket-drain" => "coolant", "carb" or "fuel-rail" => "fuel", _ => "" };
            if (fluid.Length == 0)
                fluid = topic?.Kind is "sump" or "oil-filter" or "oil-tank" or "oil-cooler" or "drain-plug" ? "oil" : topic?.Kind is "water-pump" or "thermostat" or "jacket-drain" ? "coolant" : "fluid";
            Add(new Drained(fluid, amount?.Amount, from is null ? null : from.Thing with { Others = [] }), Range(start, end));
            return;
        }

        foreach (int at in fluids)
            Add(new Drained(Word(at) is "water" or "antifreeze" ? "coolant" : Word(at), fluids.Count == 1 ? amount?.Amount : null, from is null ? null : from.Thing with { Others = [] }), Range(start, end));
        topic = from?.Thing ?? (fluids.Any(k => Word(k) == "oil") ? Vessel() : null) ?? topic;
        seen = topic;
    }

    /// <summary>Where the oil came out of, for what was seen in it.</summary>
    private Thing? Vessel()
    {
        foreach (string kind in new[] { "sump", "oil-tank", "bottom-cover" })
        {
            if (index.Parts(kind) is [var part, ..])
                return new Thing(ThingSort.Part, kind, [part.Id], part.Name);
        }

        return null;
    }
}
