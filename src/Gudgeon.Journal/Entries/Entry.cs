using System.Text.Json.Serialization;
using Gudgeon.Sums;

namespace Gudgeon.Journal;

/// <summary>
/// One past fact. Never edited, never deleted; a mistake is struck out by a later entry. Its name on disk (<c>kind</c>) never changes,
/// whatever the class is called. Each kind says what it needs, what it changes, and how the book tells it.
/// </summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
public abstract partial record Entry
{
    /// <summary>What the entry is about: ids of parts, joints, lines, characteristics.</summary>
    public abstract IEnumerable<string> About();

    /// <summary>Why this cannot have happened as things stand, or null.</summary>
    public abstract Refusal? Check(Bench bench);

    /// <summary>The entry in the book's own words, one sentence, as things stood before it or stand after it.</summary>
    public abstract string Words(Bench bench);

    /// <summary>Changes the bench. Only called after <see cref="Check"/> found nothing.</summary>
    internal abstract void Apply(Bench bench, Recorded recorded);
}

/// <summary>An entry with its place in the journal.</summary>
/// <param name="Number">1, 2, 3... in the order of recording.</param>
/// <param name="Id">Given by the sender; recorded once however often it is sent.</param>
/// <param name="Act">The id that all entries of one sending have in common.</param>
/// <param name="At">When the work was done, with the offset of the place where it was.</param>
/// <param name="EnteredAt">When it was written down.</param>
/// <param name="By">Who or what sent it.</param>
public sealed record Recorded(long Number, string Id, string Act, DateTimeOffset At, DateTimeOffset EnteredAt, string By, Entry Entry)
{
    private static readonly TimeSpan soon = TimeSpan.FromHours(1);

    /// <summary>Whether it was written down more than an hour after the work, from memory or from paper: worth less than a note made at the bench.</summary>
    public bool IsWrittenUpLater => EnteredAt - At > soon;
}
