namespace Gudgeon.Planning.Reach;

/// <summary>
/// Branch and bound over the alternatives. A state is a set of nodes that must be undone (closed under what every
/// way has in common) and the choices it leaves open. Choices that cannot touch each other are solved apart;
/// parts already solved are remembered. The bound of a state also points to a completion, the limit for what follows.
/// </summary>
internal sealed class Search
{
    // All weights together stay below the half of this: a limit above that says that nothing is known yet.
    private const long Unlimited = long.MaxValue / 4;
    private const long NoLimit = Unlimited / 2;
    private const int RememberedParts = 50_000;

    private readonly ReducedNetwork network;
    private readonly Wiring wiring;
    private readonly long[] weights;
    private readonly CutBound cutBound;
    private readonly int[] ignored;
    private readonly Dictionary<ulong[], Remembered> memory = new(Bits.Comparer);
    private readonly long budget;
    private long rootBound;

    public Search(ReducedNetwork network, long budget)
    {
        this.network = network;
        this.budget = budget;
        wiring = network.Wiring;
        weights = network.Weights;
        cutBound = new CutBound(wiring);
        ignored = new int[wiring.Owner.Length];
    }

    public long Steps { get; private set; }

    /// <summary>False when the budget of steps ran out first; the bound then says how far off the answer may be.</summary>
    public bool IsProven => Steps <= budget;

    public (ulong[] Chosen, long Weight, long Bound) Run()
    {
        var start = (ulong[])network.MustOf[network.Goal].Clone();
        var forced = network.FreeWeight + Bits.WeightBeyond(start, Bits.Empty(wiring.Count), weights);
        var open = new List<int>();
        OpenChoicesOf(start, Bits.Empty(wiring.Count), open);

        var best = Best(start, open, Unlimited);
        return (best.Chosen!, forced + best.Extra, forced + (IsProven ? best.Extra : Math.Min(rootBound, best.Extra)));
    }

    /// <summary>Least extra weight below <paramref name="limit"/> that meets all open choices; no set when there is none.</summary>
    private Completion Best(ulong[] from, List<int> open, long limit)
    {
        var chosen = (ulong[])from.Clone();
        var extra = 0L;
        var unmet = new List<int>(open);
        var best = Completion.None(limit);
        while (true)
        {
            Steps++;
            if (!Propagate(chosen, unmet, ref extra, best.Extra))
                return best;

            // Circles that stay even if every open choice were met are broken first, so that no part has to answer for them.
            var founded = Founded(chosen, unmet);
            if (!Bits.IsSubset(chosen, founded))
                return BranchOnSupport(unmet, chosen, founded, extra, best);
            if (unmet.Count == 0)
                return new Completion(extra, chosen);

            // A way that alone costs the limit cannot be part of anything better, so the regions leave it out.
            var regions = new Regions(wiring, chosen, unmet, ignored, way => Marginal(way, chosen) >= best.Extra - extra);
            var (bounds, found) = (new long[regions.Parts.Count], new Completion[regions.Parts.Count]);
            var (bound, together) = (extra, new Completion(extra, chosen));
            for (var k = 0; k < bounds.Length; k++)
            {
                bounds[k] = cutBound.Of(regions.Parts[k], regions, chosen, weights, best.Extra - bound);
                if (bounds[k] >= best.Extra - bound)
                {
                    rootBound = Steps == 1 ? best.Extra : rootBound;
                    return best;
                }
                bound += bounds[k];
                found[k] = Paid(regions.Parts[k], chosen);
                together = together.With(found[k]);
            }
            if (Steps == 1)
                rootBound = bound;
            if (together.Extra < best.Extra)
                best = together;
            if (bound >= best.Extra)
                return best;
            var over = Over(unmet, chosen);
            if (Take(over, unmet, chosen, ref extra, best.Extra - bound) is { } isPossible)
            {
                if (!isPossible)
                    return best;
                continue;
            }
            return Parts(regions, bounds, found, over, chosen, extra, bound, best);
        }
    }

    /// <summary>A completion out of what the cuts have counted to the last: often the best, or near it.</summary>
    private Completion Paid(Regions.Part part, ulong[] chosen)
    {
        var set = (ulong[])chosen.Clone();
        cutBound.AddPaid(part, set, network.MustOfAlternative, weights);
        return new Completion(Bits.WeightBeyond(set, chosen, weights), set);
    }

    /// <summary>
    /// What each way of an open choice costs over the bound: no cut counted this weight, so whoever goes the way pays
    /// the bound and this. Reduced-cost fixing, as in integer programming.
    /// </summary>
    private Dictionary<int, long> Over(List<int> unmet, ulong[] chosen)
    {
        var over = new Dictionary<int, long>();
        foreach (var choice in unmet)
        {
            foreach (var way in wiring.AlternativesOf[choice])
                over[way] = cutBound.Over(network.MustOfAlternative[way], chosen);
        }
        return over;
    }

    /// <summary>Takes the ways of choices that have only one left under the limit. Null when there is no such choice; false when a choice has none left.</summary>
    private bool? Take(Dictionary<int, long> over, List<int> unmet, ulong[] chosen, ref long extra, long slack)
    {
        var forced = new List<int>();
        foreach (var choice in unmet)
        {
            var (left, only) = (0, -1);
            foreach (var way in wiring.AlternativesOf[choice])
            {
                if (over[way] < slack)
                    (left, only) = (left + 1, way);
            }
            if (left == 0)
                return false;
            if (left == 1)
                forced.Add(only);
        }
        foreach (var way in forced)
        {
            extra += Marginal(way, chosen);
            var before = (ulong[])chosen.Clone();
            Bits.Unite(chosen, network.MustOfAlternative[way]);
            unmet.Remove(wiring.ChoiceOf[way]);
            OpenChoicesOf(chosen, before, unmet);
        }
        return forced.Count == 0 ? null : true;
    }

    private Completion Parts(Regions regions, long[] bounds, Completion[] found, Dictionary<int, long> over, ulong[] chosen, long extra, long bound, Completion best)
    {
        var together = new Completion(extra, chosen);
        for (var k = 0; k < bounds.Length; k++)
        {
            Shade(regions, k, 1);
            var part = Part(regions.Parts[k], bounds[k], found[k], over, chosen, best.Extra - bound + bounds[k]);
            Shade(regions, k, -1);
            bound += part.Extra - bounds[k];
            if (part.Chosen is null || bound >= best.Extra)
                return best;
            together = together.With(part);
        }
        // Parts with a circle of support only between them do not exist: such a circle would have joined their regions.
        return together;
    }

    /// <summary>While one part is solved, the open choices of the others count as met.</summary>
    private void Shade(Regions regions, int except, int by)
    {
        for (var k = 0; k < regions.Parts.Count; k++)
        {
            if (k == except)
                continue;
            foreach (var choice in regions.Parts[k].Open)
                ignored[choice] += by;
        }
    }

    private Completion Part(Regions.Part part, long bound, Completion found, Dictionary<int, long> over, ulong[] chosen, long limit)
    {
        var best = found.Extra < limit ? found : Completion.None(limit);
        if (bound >= best.Extra)
            return best;
        var key = part.Key(chosen);
        if (memory.TryGetValue(key, out var known))
        {
            if (known.Added is not null && known.Extra < best.Extra)
            {
                var set = (ulong[])chosen.Clone();
                Bits.Unite(set, known.Added);
                return new Completion(known.Extra, set);
            }
            if (known.Extra >= best.Extra)
                return best;
        }
        var before = IsProven;
        best = BranchOnChoice(part.Open, bound, over, chosen, best);
        if (before && IsProven && memory.Count < RememberedParts)
            memory[key] = new Remembered(best.Extra, best.Chosen is null ? null : Beyond(best.Chosen, chosen));
        return best;
    }

    private Completion BranchOnChoice(List<int> unmet, long bound, Dictionary<int, long> over, ulong[] chosen, Completion best)
    {
        var pick = -1;
        var pickLeast = -1L;
        foreach (var choice in unmet)
        {
            var least = wiring.AlternativesOf[choice].Min(way => Marginal(way, chosen));
            if (least > pickLeast)
                (pick, pickLeast) = (choice, least);
        }
        return BranchOnWays(wiring.AlternativesOf[pick], unmet, chosen, 0, best, way => bound + over[way]);
    }

    /// <summary>
    /// Some nodes only support each other in a circle. Whichever of them is undone first must get a way from
    /// outside the circle: branch on those ways.
    /// </summary>
    private Completion BranchOnSupport(List<int> unmet, ulong[] chosen, ulong[] founded, long extra, Completion best)
    {
        var floating = Beyond(chosen, founded);
        var ways = new SortedSet<int>();
        for (var node = 0; node < wiring.Count; node++)
        {
            if (!Bits.Has(floating, node) || wiring.Needs[node].Any(need => Bits.Has(floating, need)))
                continue;
            var choice = wiring.ChoicesOf[node].FirstOrDefault(
                c => ignored[c] == 0 && !unmet.Contains(c) && !wiring.AlternativesOf[c].Any(way => Bits.IsSubset(network.MustOfAlternative[way], founded)), -1);
            if (choice >= 0)
                ways.UnionWith(wiring.AlternativesOf[choice].Where(way => !Bits.Meets(network.MustOfAlternative[way], floating)));
        }
        return BranchOnWays([.. ways], unmet, chosen, extra, best, _ => 0);
    }

    /// <param name="least">No completion that goes a way adds less.</param>
    private Completion BranchOnWays(int[] ways, List<int> unmet, ulong[] chosen, long extra, Completion best, Func<int, long> least)
    {
        foreach (var way in ways.OrderBy(least).ThenBy(way => Marginal(way, chosen)).ThenBy(way => way))
        {
            if (!IsProven && best.Extra < NoLimit)
                break;
            var added = Marginal(way, chosen);
            if (Math.Max(extra + added, least(way)) >= best.Extra)
                continue;
            var next = (ulong[])chosen.Clone();
            Bits.Unite(next, network.MustOfAlternative[way]);
            var open = new List<int>(unmet);
            OpenChoicesOf(next, chosen, open);
            var found = Best(next, open, best.Extra - extra - added);
            if (found.Chosen is not null)
                best = found.Plus(extra + added);
        }
        return best;
    }

    /// <summary>Takes what is forced: a choice with one way left under the limit is no choice. False when none is left.</summary>
    private bool Propagate(ulong[] chosen, List<int> unmet, ref long extra, long limit)
    {
        for (var changed = true; changed;)
        {
            changed = false;
            for (var k = unmet.Count - 1; k >= 0; k--)
            {
                if (IsMet(unmet[k], chosen))
                {
                    unmet.RemoveAt(k);
                    continue;
                }
                var (left, only) = (0, -1);
                foreach (var way in wiring.AlternativesOf[unmet[k]])
                {
                    if (extra + Marginal(way, chosen) < limit)
                        (left, only) = (left + 1, way);
                }
                if (left == 0)
                    return false;
                if (left > 1)
                    continue;
                extra += Marginal(only, chosen);
                var before = (ulong[])chosen.Clone();
                Bits.Unite(chosen, network.MustOfAlternative[only]);
                unmet.RemoveAt(k);
                OpenChoicesOf(chosen, before, unmet);
                changed = true;
                break;
            }
        }
        return extra < limit;
    }

    private bool IsMet(int choice, ulong[] chosen)
    {
        foreach (var way in wiring.AlternativesOf[choice])
        {
            if (Bits.IsSubset(network.MustOfAlternative[way], chosen))
                return true;
        }
        return false;
    }

    private long Marginal(int way, ulong[] chosen) => Bits.WeightBeyond(network.MustOfAlternative[way], chosen, weights);

    private void OpenChoicesOf(ulong[] chosen, ulong[] before, List<int> open)
    {
        var added = new List<int>();
        Bits.AddItemsBeyond(chosen, before, added);
        foreach (var node in added)
            open.AddRange(wiring.ChoicesOf[node]);
    }

    private ulong[] Founded(ulong[] chosen, List<int> takenAsMet)
    {
        foreach (var choice in takenAsMet)
            ignored[choice]++;
        var row = Bits.Empty(wiring.Count);
        foreach (var node in wiring.Derive(node => Bits.Has(chosen, node), ignored))
            Bits.Add(row, node);
        foreach (var choice in takenAsMet)
            ignored[choice]--;
        return row;
    }

    private static ulong[] Beyond(ulong[] row, ulong[] without)
    {
        var left = (ulong[])row.Clone();
        for (var word = 0; word < left.Length; word++)
            left[word] &= ~without[word];
        return left;
    }

    /// <summary>With no set, <c>Extra</c> is a proven lower bound.</summary>
    private readonly record struct Completion(long Extra, ulong[]? Chosen)
    {
        public static Completion None(long bound) => new(bound, null);

        public Completion Plus(long more) => new(Extra + more, Chosen);

        /// <summary>Both, where they share nothing that was not chosen before.</summary>
        public Completion With(Completion other)
        {
            var union = (ulong[])Chosen!.Clone();
            Bits.Unite(union, other.Chosen!);
            return new Completion(Extra + other.Extra, union);
        }
    }

    private readonly record struct Remembered(long Extra, ulong[]? Added);
}
