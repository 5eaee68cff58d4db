using System.Globalization;
using Gudgeon.Engine;

namespace Gudgeon.Journal;

/// <summary>Like fasteners of one joint in one account.</summary>
/// <param name="Size">As said, <c>M6x22</c>; empty where nobody said.</param>
/// <param name="Fastener">bolt, stud, nut...; empty where nobody said.</param>
public sealed record Lot(Whereabouts Where, int Count, string Size = "", string Fastener = "")
{
    /// <summary><c>2 M6x20 bolts</c>, <c>3 fasteners</c>.</summary>
    public string Words => string.Join(' ', new[] { Count.ToString(CultureInfo.InvariantCulture), Size, Fastener.Length > 0 ? Fastener : "fastener" }.Where(w => w.Length > 0))
        + (Count == 1 || Fastener.EndsWith('s') ? "" : "s");

    public bool IsLike(Lot other) => Where == other.Where && Size == other.Size && Fastener == other.Fastener;
}

/// <summary>How far a joint is undone or done.</summary>
public enum JointPhase
{
    /// <summary>Never touched.</summary>
    AsFound,
    HalfUndone,
    Undone,

    /// <summary>Part of its fasteners are back.</summary>
    HalfDone,
    Done,
}

/// <summary>
/// How one joint stands. Its fasteners are held in lots; each move debits one account and credits another, so the sum never changes
/// but by counting (<see cref="Open"/>) and by new fasteners.
/// </summary>
public sealed class JointState
{
    /// <summary>What nobody has touched. Never changed.</summary>
    internal static readonly JointState AsFound = new();

    private readonly List<Lot> lots = [];

    /// <summary>How many the joint needs, once counted; null while it is a guess of the tables.</summary>
    public int? Required { get; internal set; }

    public Standing Standing { get; internal set; }

    /// <summary>Undoing any of it makes whatever stage was done count no more.</summary>
    public JointPhase Phase
    {
        get;
        internal set
        {
            field = value;
            if (value is not (JointPhase.Undone or JointPhase.HalfUndone))
                return;
            Tightening.Undo();
            (How, FreshIn) = ("", 0);
            foreach (var (what, count) in value == JointPhase.Undone ? Small.ToArray() : [])
                Small[what] = count with { Fitted = 0 };
        }
    }

    /// <summary>How it is to be tightened and how far that has come.</summary>
    public TighteningState Tightening { get; } = new();

    /// <summary>Dowels, restrictors, jets and the like between its faces, by what they are.</summary>
    public SortedDictionary<string, SmallCount> Small { get; } = new(StringComparer.Ordinal);

    /// <summary>Its studs, where it has any.</summary>
    public StudCount Studs { get; internal set; }

    /// <summary>How tight, as it was told when they went in; empty where nobody said.</summary>
    public string How { get; internal set; } = "";

    /// <summary>New ones among those that went in since the joint was last undone.</summary>
    public int FreshIn { get; internal set; }

    /// <summary>The last measuring of its fasteners for use again, or null.</summary>
    public BoltsMeasured? Bolts { get; internal set; }

    /// <summary>New ones that were in when they were measured: those since take the place of bad ones.</summary>
    public int FreshAtBolts { get; internal set; }

    /// <summary>Threads that were repaired with an insert.</summary>
    internal List<InsertFitted> Inserts { get; } = [];

    public IReadOnlyList<Lot> Lots => lots;

    /// <summary>Fasteners that were bought new for this joint.</summary>
    public int Fresh { get; internal set; }

    /// <summary>All that were ever counted into this joint: what the lots must add up to.</summary>
    public int Opened { get; private set; }

    public int In => lots.Where(l => l.Where.Spot == Spot.Engine).Sum(l => l.Count);
    public int AtHand => lots.Where(l => l.Where.IsAtHand).Sum(l => l.Count);

    /// <summary>Lost, broken or never accounted for, less the new ones that took their place.</summary>
    public int Short => Required is { } needed ? Math.Max(0, needed - In - AtHand) : 0;

    public bool IsOpen => Phase is JointPhase.HalfUndone or JointPhase.Undone or JointPhase.HalfDone;

    /// <summary>Some are back in: done when none is wanted any more. New ones took the place of what is left over then.</summary>
    internal void Settle()
    {
        Phase = In == Required ? JointPhase.Done : JointPhase.HalfDone;
        if (Phase == JointPhase.Done)
            Move(l => l.Where.IsAtHand, AtHand, Whereabouts.Scrap);
    }

    internal void Open(Lot lot)
    {
        if (lot.Count > 0)
        {
            Opened += lot.Count;
            Put(lot);
        }
    }

    /// <summary>Takes fasteners out of the book again, as never having been: a count that was corrected downward. The least certain go first.</summary>
    internal void Close(int count)
    {
        foreach (var spot in new[] { Spot.Unaccounted, Spot.Unplaced, Spot.Engine, Spot.Place, Spot.OwnHoles, Spot.Shop })
        {
            var n = Math.Min(count, lots.Where(l => l.Where.Spot == spot).Sum(l => l.Count));
            Take(l => l.Where.Spot == spot, n);
            Opened -= n;
            count -= n;
        }
    }

    /// <summary>Gives all fasteners of the joint the size that was said now.</summary>
    internal void Resize(string size)
    {
        var old = lots.ToArray();
        lots.Clear();
        foreach (var lot in old)
        {
            Put(lot with { Size = size });
        }
    }

    /// <summary>Moves fasteners from the lots that match, in order, to another account. Asking for more than there are is a bug.</summary>
    internal void Move(Func<Lot, bool> from, int count, Whereabouts to, string size = "", string fastener = "")
    {
        foreach (var taken in Take(from, count))
        {
            Put(taken with
            {
                Where = to,
                Size = size.Length > 0 ? size : taken.Size,
                Fastener = fastener.Length > 0 ? fastener : taken.Fastener,
            });
        }
    }

    private List<Lot> Take(Func<Lot, bool> from, int count)
    {
        var taken = new List<Lot>();
        for (var i = 0; i < lots.Count && count > 0; i++)
        {
            if (!from(lots[i]))
            {
                continue;
            }

            var n = Math.Min(count, lots[i].Count);
            taken.Add(lots[i] with { Count = n });
            count -= n;
            lots[i] = lots[i] with { Count = lots[i].Count - n };
        }

        lots.RemoveAll(l => l.Count == 0);
        return count == 0 ? taken : throw new InvalidOperationException($"{count} fasteners more were moved than the joint holds");
    }

    private void Put(Lot lot)
    {
        var i = lots.FindIndex(lot.IsLike);
        if (i >= 0)
        {
            lots[i] = lots[i] with { Count = lots[i].Count + lot.Count };
        }
        else
        {
            lots.Add(lot);
        }
    }
}
