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
            Add(new Drained(Fluid(at), fluids.Count == 1 ? amount?.Amount : null, from is null ? null : from.Thing with { Others = [] }), Range(start, end));
        topic = from?.Thing ?? (fluids.Any(k => Word(k) == "oil") ? Vessel() : null) ?? topic;
        seen = topic;
    }

    private string Fluid(int at) => Word(at) switch { "water" or "antifreeze" => "coolant", "petrol" or "diesel" => "fuel", var word => word };

    private static readonly HashSet<string> Ran = ["first", "then", "now", "next", "and", "also", "after", "that", "the", "is", "was", "'s", "out", "let", "i", "we", "too", "as", "well", "all", "about", "call", "it", "some"];

    /// <summary>"then the water, eight litres": what else ran out, told like the fluid before.</summary>
    private int AlsoDrained(Stretch clause)
    {
        int end = clause.To;
        if (end < tokens.Count && tokens[end].Sort == TokenSort.Comma && !In(clause.From, end).Any(p => p is AmountPhrase))
        {
            end++;
            while (end < tokens.Count && !tokens[end].IsBreak)
                end++;
        }

        var fluids = Range(clause.From, clause.To).Where(k => Fluids.Contains(Word(k))).ToList();
        var amounts = In(clause.From, end).OfType<AmountPhrase>().Where(a => a.Amount.Unit is "l" or "ml" or "pint" or "quart" or "gallon").ToList();
        int opens = Word(clause.From - 1) == "then" ? clause.From - 1 : Range(clause.From, clause.To).FirstOrDefault(k => Word(k) is "first" or "then", -1);
        if (fluids is not [var at] || amounts is not [var amount] || !(facts.LastOrDefault() is Drained || context.Last.LastOrDefault() is Drained || opens >= 0 && opens < at)
            || In(clause.From, end).Any(p => p is not (WordPhrase or AmountPhrase or BreakPhrase or NumPhrase { Num.IsCount: false }) && p.From != at && !(p is ActPhrase { Act: Act.Drain or Act.Off })) || !Range(clause.From, end).All(k => k == at || tokens[k].IsBreak || Ran.Contains(Word(k)) || k >= amount.From && k < amount.To))
            return -1;
        Flush();
        Add(new Drained(Fluid(at), amount.Amount, null), Range(clause.From, end).Where(k => !tokens[k].IsBreak));
        if (Fluid(at) == "oil" && Vessel() is { } vessel)
            topic = seen = vessel;
        return end;
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
