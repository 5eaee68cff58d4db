using System.Globalization;
using Gudgeon.Engine;
using Gudgeon.Journal;
using J = Gudgeon.Journal;

namespace Gudgeon.Capture;

/// <summary>
/// What a note comes to in the journal: the note itself, the requests that its facts make, and an open question for whatever
/// the journal has no entry for and for every doubt.
/// </summary>
public static class Hearing
{
    /// <summary>The note as it was said, for the journal to keep beside what was made of it.</summary>
    public static Said SaidOf(Heard heard) => new(heard.Text, string.Join(" | ", heard.UnusedWords));

    /// <summary>The same for a line whose pieces were looked at first: what was left out of it, and what no longer fits it, is asked.</summary>
    public static IReadOnlyList<Request> ToRequests(Sifted sifted, Bench bench, TimeSpan offset) =>
    [
        .. OwnWords.Taken(sifted.Settled.Select(s => (s.Key, s.Value)), bench),
        .. ToRequests(sifted.Kept, bench, offset),
        .. sifted.Left.Select(l => Open(l.Fact, sifted.All, l.Why)),
        .. sifted.Unfit.Select(key => new Tell(new J.Asked(key.Words(sifted.All.Text), $"chosen or left out before it was recorded as “{key.Code}”, which the line does not come to any more"))),
    ];

    /// <summary>Requests in the order to decide them. Each is decided against the bench as the one before left it.</summary>
    /// <param name="offset">The owner's offset from UTC, for days that were said.</param>
    public static IReadOnlyList<Request> ToRequests(Heard heard, Bench bench, TimeSpan offset)
    {
        var requests = new List<Request>();
        var lots = heard.Facts.OfType<Undone>().GroupBy(u => u.Of.Ids.Count == 1 ? u.Of.Ids[0] : "").ToDictionary(g => g.Key, g => g.ToList());
        var taken = new HashSet<Fact>();
        foreach (var fact in heard.Facts.Where(f => !taken.Contains(f)))
            requests.AddRange(Of(fact, heard, bench, offset, lots, taken));
        requests.AddRange(heard.Doubts.Select(d => new Tell(new J.Asked(d.Words, d.Readings.Count > 1 ? $"read two ways: {d.Question}" : d.Question))));
        return requests;
    }

    private static IEnumerable<Request> Of(Fact fact, Heard heard, Bench bench, TimeSpan offset, Dictionary<string, List<Undone>> lots, HashSet<Fact> taken) => fact switch
    {
        Off off => TakenOff(off, heard, bench, lots, taken),
        On on => PutOn(on, heard, taken),
        Undone undone => Loosened(undone, heard, bench),
        Count count => Counted(count, heard, bench),
        Tightened tight => Fitted(tight, heard, bench),
        Put put => Placed(put, heard, bench),
        Parted parted => parted.Line.Sort == ThingSort.Line && parted.Line.Ids.Count > 0
            ? [new Tell([.. parted.Line.Ids.Select(id => new LineParted(id, Tag(heard, parted.Line)))])]
            : [Note(parted.Line, "note", fact, heard)],
        Tagged tagged => tagged.Thing.Sort == ThingSort.Line && tagged.Thing.Ids.Count > 0
            ? heard.Facts.Any(f => f is Parted p && p.Line.Ids.SequenceEqual(tagged.Thing.Ids)) ? [] : [new Tell([.. tagged.Thing.Ids.Select(id => new LineTagged(id, tagged.Tag))])]
            : [Note(tagged.Thing, "note", fact, heard)],
        Capped capped => Caps(capped, heard, bench),
        Drained drained => Emptied(drained, heard, bench),
        Found found => FoundAgain(found, heard),
        Damaged damaged => [Note(damaged.Thing, "damaged", fact, heard)],
        Seen seen => [Note(seen.Thing, "odd", fact, heard)],
        Missing missing => [Note(missing.Thing, "missing", fact, heard)],
        ToBuy buy => [Note(buy.Thing, "to buy", fact, heard)],
        LeftOn left => [Note(left.Thing, "left on", fact, heard)],
        Marked marked => [Note(marked.Thing, "marked", fact, heard)],
        Planned planned => [Note(planned.Thing, "planned", fact, heard)],
        Noted noted => [Note(noted.Thing, "note", fact, heard)],
        Measured measured => Readings(measured, heard, bench),
        WaitingFor waiting => [new Tell(new Waiting(waiting.For, At(waiting.Until, offset), waiting.Thing?.Ids.Count == 1 ? waiting.Thing.Ids[0] : null))],
        GoesBack back => [new Tell(new Waiting($"{back.Thing.Full} has to go back", At(back.When, offset)))],
        AccessLearned access => Learned(access, heard),
        Sent sent => Each(sent.Thing, sent, heard, id => new Tell(new PartSent(id, sent.To, string.Join(", ", new[] { sent.Work, sent.Paid }.Where(s => s.Length > 0)), At(sent.Due, offset)))),
        Back back => Each(back.Thing, back, heard, id => new Tell(new PartReturned(id, bench.Part(id).Where.Name))),
        Named named => named.As.Ids.Count == 1 && named.Thing.Sort == ThingSort.Unknown
            ? [new Tell(new PartNamed(named.As.Ids[0], named.As.Name))]
            : [Open(fact, heard, "a name to be put right")],
        Asked asked => [new Tell(new J.Asked(asked.Words, "a question of the owner's", asked.Thing?.Ids.FirstOrDefault()))],
        QuestionToSelf self => [new Tell(new J.Asked(self.Words, "a question to oneself", self.Thing?.Ids.FirstOrDefault()))],
        Taught taught => [new Tell(new WordTaught(taught.Word, taught.Term))],
        Corrected corrected => Amended(corrected, heard, bench),
        StruckOut => Strike(heard, bench),
        Did did => bench.Engine.Operations.ContainsKey(did.Operation) && !bench.IsDone(did.Operation)
            ? [new Tell(new OperationDone(did.Operation))]
            : [Note(null, "note", fact, heard)],
        _ => [Open(fact, heard, "no entry holds this")],
    };

    /// <summary>Readings on their sheet; else a note, and a question where the sheet is there but the words do not say where on it.</summary>
    private static IEnumerable<Request> Readings(Measured measured, Heard heard, Bench bench)
    {
        var sheet = SpokenReadings.Of(measured, heard.Text, bench);
        if (sheet.Takes.Count > 0)
            return sheet.Takes;
        var note = Note(measured.Thing, "note", measured, heard);
        return sheet.Why.Length > 0 ? [note, Open(measured, heard, $"{sheet.Why}; kept as a note")] : [note];
    }

    /// <summary>Where on the book's sheets a fact goes, before it is recorded; nothing for what is no reading.</summary>
    public static IReadOnlyList<string> SpotsOf(Fact fact, Heard heard, Bench bench) =>
        fact is Measured measured ? [.. SpokenReadings.Of(measured, heard.Text, bench).Takes.Select(t => $"{bench.NameOf(t.Slot)}{(t.Instrument is { } gauge ? $", {bench.InstrumentName(gauge)}" : "")}")] : [];

    private static IEnumerable<Request> Each(Thing thing, Fact fact, Heard heard, Func<string, Request> make) =>
        thing is { Sort: ThingSort.Part, Ids.Count: > 0 } ? thing.Ids.Select(make) : [Open(fact, heard, "which part is not known")];

    private static IEnumerable<Request> TakenOff(Off off, Heard heard, Bench bench, Dictionary<string, List<Undone>> lots, HashSet<Fact> taken)
    {
        if (off.Thing is { Sort: ThingSort.Unknown })
        {
            string id = OwnId(off.Thing.Name, bench);
            yield return new Tell(new PartAdded(id, off.Thing.Name), new PartOff(id, []));
            yield break;
        }

        if (off.Thing.Ids.Count == 0 || off.Thing.Sort != ThingSort.Part)
        {
            yield return Open(off, heard, off.Thing.Sort == ThingSort.Lacking ? "the book has no such part" : "which part is not known");
            yield break;
        }

        string? to = heard.Facts.OfType<Put>().FirstOrDefault(p => p.Thing.Ids.SequenceEqual(off.Thing.Ids) && p.Thing.Sort == ThingSort.Part) is { } put ? Name(put.Place) : null;
        foreach (string id in off.Thing.Ids)
        {
            // Fasteners told in the same breath go in the same request, so that the part and its joint agree.
            var own = off.Thing.Ids.Count == 1 && lots.TryGetValue(id, out var told) && told.All(u => u.Lots.All(l => l.Count is not null)) ? told : null;
            var outLots = own?.SelectMany(u => u.Lots.Where(l => l.Fastener is not "washer").Select(l => Lot(l, u.Place))).Concat(Broken(heard, id)).ToList();
            if (own is not null)
                taken.UnionWith(own);
            yield return new TakeOff(id) { Lots = outLots, To = to };
        }
    }

    private static IEnumerable<Request> PutOn(On on, Heard heard, HashSet<Fact> taken)
    {
        if (on.Thing.Detail.Length > 0)
            return [Note(on.Thing, "note", on, heard)];
        if (on.Thing is not { Sort: ThingSort.Part, Ids: [var one] })
            return Each(on.Thing, on, heard, id => new PutBack(id));
        var tight = heard.Facts.OfType<Tightened>().FirstOrDefault(t => t.Of.Ids.SequenceEqual(on.Thing.Ids) && t.Lots.Any(l => l.Count > 0));
        if (tight is null)
            return [new PutBack(one)];
        taken.Add(tight);
        return [new PutBack(one, tight.Lots.Sum(l => l.Count ?? 0), tight.Lots.Where(IsNew).Sum(l => l.Count ?? 0), true, string.Join(", then ", tight.Stages))];
    }

    private static bool IsNew(Lot lot) => lot.Note.Split(' ').Contains("new");

    private static IEnumerable<OutLot> Broken(Heard heard, string part) =>
        heard.Facts.OfType<Damaged>().Where(d => d is { Thing.Sort: ThingSort.Fasteners, Count: > 0, Fault: "snapped" or "broken" } && d.Thing.Ids.SequenceEqual([part])).Select(d => new OutLot(d.Count!.Value, Fate: Fate.Broken));

    private static OutLot Lot(Lot lot, Place? place) => new(lot.Count ?? 1, lot.Size.ToString(), lot.Fastener, place is null ? null : Name(place));

    private static string Name(Place place) => place.Sort == PlaceSort.OwnHoles ? Whereabouts.OwnHolesName : place.Label.Replace("“", "", StringComparison.Ordinal).Replace("”", "", StringComparison.Ordinal);

    private static string? JointOf(string part, Bench bench) =>
        bench.Engine.JointsOf(part).FirstOrDefault(id => bench.Engine.Joints[id].IsCounted) ?? bench.Engine.JointsOf(part).FirstOrDefault();

    private static IEnumerable<Request> Loosened(Undone undone, Heard heard, Bench bench)
    {
        var lots = undone.Lots.Where(l => l.Count > 0 && l.Fastener is not "washer").Select(l => Lot(l, undone.Place)).ToList();
        if (undone.Of.Ids is not [var id] || JointOf(id, bench) is not { } joint || lots.Count == 0)
            return [Open(undone, heard, lots.Count == 0 ? "how many is not told" : "which joint is not known")];
        bool all = bench.Joint(joint).Required is not { } needed || lots.Sum(l => l.Count) >= needed;
        return [new Tell(new FastenersOut(joint, [.. lots, .. Broken(heard, id)], all))];
    }

    private static IEnumerable<Request> Counted(Count count, Heard heard, Bench bench)
    {
        var told = count.Lots.Where(l => l.Count is not null && l.Fastener is not ("washer" or "nut")).ToList();
        return count.Of.Ids is [var id] && JointOf(id, bench) is { } joint && told.Count > 0
            ? [new Tell(new FastenersCounted(joint, told.Sum(l => l.Count!.Value), told.Count == 1 ? told[0].Size.ToString() : "", told.Count == 1 ? told[0].Fastener : ""))]
            : [Note(count.Of, "note", count, heard)];
    }

    private static IEnumerable<Request> Fitted(Tightened tight, Heard heard, Bench bench)
    {
        int count = tight.Lots.Sum(l => l.Count ?? 0);
        string how = string.Join(", then ", tight.Stages);
        if (tight.Of.Ids is not [var id] || JointOf(id, bench) is not { } joint || bench.Joint(joint) is not { IsOpen: true } state)
            return [Note(tight.Of, "note", tight, heard)];
        if (count == 0)
            count = (state.Required ?? 0) - state.In;
        int fresh = tight.Lots.Where(IsNew).Sum(l => l.Count ?? 0);
        return count > 0 ? [new Tell(new FastenersIn(joint, count, fresh, false, how))] : [Open(tight, heard, "how many went in is not told")];
    }

    private static IEnumerable<Request> Placed(Put put, Heard heard, Bench bench)
    {
        if (put.Thing.Ids.Count == 0 || put.Place.Sort == PlaceSort.With)
            return [Note(put.Thing, "note", put, heard)];
        if (put.Thing.Sort == ThingSort.Fasteners)
        {
            return put.Thing.Ids.Select<string, Request>(id => JointOf(id, bench) is { } joint && bench.Joint(joint).AtHand > 0
                ? new Tell(new FastenersPut(joint, Name(put.Place)))
                : Open(put, heard, "no fasteners of this joint are told to be out"));
        }

        if (heard.Facts.Any(f => f is Off off && off.Thing.Ids.SequenceEqual(put.Thing.Ids)))
            return [];
        // What lies in a tray is off the engine, whether or not anybody said so.
        return put.Thing is { Sort: ThingSort.Part, Detail.Length: 0 }
            ? put.Thing.Ids.Select<string, Request>(id => bench.Part(id).IsOn ? new TakeOff(id) { To = Name(put.Place) } : new Tell(new PartPut(id, Name(put.Place))))
            : [Note(put.Thing, "note", put, heard)];
    }

    private static string Tag(Heard heard, Thing line) => heard.Facts.OfType<Tagged>().FirstOrDefault(t => t.Thing.Ids.SequenceEqual(line.Ids))?.Tag ?? "";

    private static IEnumerable<Request> Caps(Capped capped, Heard heard, Bench bench)
    {
        if (capped.Thing.Sort != ThingSort.Line || capped.Thing.Ids.Count == 0)
            return [Note(capped.Thing, "note", capped, heard)];
        return capped.Thing.Ids.SelectMany(id => bench.Engine.Lines[id] is var line
            ? new[] { line.From, line.To }.Where(p => !p.IsOutside).Select<Port, Request>(p => new Tell(new PortCapped(id, p.Id)))
            : []);
    }

    private static IEnumerable<Request> Emptied(Drained drained, Heard heard, Bench bench)
    {
        string operation = drained.Fluid switch { "oil" => "op:drain-oil", "coolant" => "op:drain-coolant", _ => "" };
        return bench.Engine.Operations.ContainsKey(operation) && !bench.IsDone(operation)
            ? [new Tell(new OperationDone(operation, drained.Amount?.Text ?? ""))]
            : [Note(drained.From, "note", drained, heard)];
    }

    private static IEnumerable<Request> FoundAgain(Found found, Heard heard) =>
        found is { Thing.Ids: [var id], Lots.Count: > 0 } ? [new Tell(new J.Noted(id, "found", Words(found, heard)))] : [Note(found.Thing, "found", found, heard)];

    private static IEnumerable<Request> Learned(AccessLearned access, Heard heard)
    {
        bool known = access.Target.Ids.Count == 1 && access.Ways is [var way] && way.All(t => t.Ids.Count > 0);
        return known ? [new Tell(new J.AccessLearned(access.Target.Ids[0], [.. access.Ways[0].SelectMany(t => t.Ids)], access.Words))] : [Open(access, heard, "an access whose parts the book does not know yet")];
    }

    private static IEnumerable<Request> Amended(Corrected corrected, Heard heard, Bench bench)
    {
        if (corrected is { What: "count", Of.Ids: [var id] } && JointOf(id, bench) is { } joint && int.TryParse(corrected.Now.Split(' ')[0], CultureInfo.InvariantCulture, out int count))
            return [new Tell(new FastenersCounted(joint, count))];
        if (corrected is { What: "size", Of.Ids: [var sized] } && JointOf(sized, bench) is { } of && bench.Joint(of).Required is { } required)
            return [new Tell(new FastenersCounted(of, required, corrected.Now))];
        return [Open(corrected, heard, "a correction to be made by hand")];
    }

    private static IEnumerable<Request> Strike(Heard heard, Bench bench)
    {
        if (bench.Told.LastOrDefault(r => r.Entry is not (Said or BookStarted)) is not { } last)
            return [Open(heard.Facts.OfType<StruckOut>().First(), heard, "nothing to strike out")];
        return bench.Told.Where(r => r.Act == last.Act && r.Entry is not BookStarted).Reverse().Select(r => new StrikeOut(r.Number, heard.Text));
    }

    /// <summary>The end of the day that was said, where the owner is.</summary>
    private static DateTimeOffset? At(Due? due, TimeSpan offset) => due?.Day is { } day ? new DateTimeOffset(day.ToDateTime(new TimeOnly(23, 59)), offset) : null;

    private static string Words(Fact fact, Heard heard) => string.Join(" … ", fact.Spans.Select(s => s.Of(heard.Text)));

    private static Tell Note(Thing? thing, string mark, Fact fact, Heard heard) =>
        new(thing?.Ids.Count > 1 ? [.. thing.Ids.Select(id => new J.Noted(id, mark, fact.Echo))] : [new J.Noted(thing?.Ids.FirstOrDefault(), mark, fact.Echo)]);

    private static Tell Open(Fact fact, Heard heard, string why) =>
        new(new J.Asked(Words(fact, heard) is { Length: > 0 } words ? words : heard.Text, WhyOpen(why, fact)));

    /// <summary>What a question says of a fact that was not recorded.</summary>
    internal static string WhyOpen(string why, Fact fact) => $"{why}: {fact.Echo}";

    private static string OwnId(string name, Bench bench)
    {
        string plain = string.Concat(name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).Trim('-');
        string id = $"own.{plain}";
        for (int n = 2; bench.Engine.Parts.ContainsKey(id); n++)
            id = $"own.{plain}-{n.ToString(CultureInfo.InvariantCulture)}";
        return id;
    }
}
