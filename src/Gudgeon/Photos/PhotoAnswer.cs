using Gudgeon.Journal;
using Gudgeon.Sums;

namespace Gudgeon.Photos;

/// <summary>What came of one file.</summary>
/// <param name="Hash">Of the photo, when there is one.</param>
/// <param name="WasThere">It was in the book before.</param>
public sealed record PhotoAnswer(string Name, string? Hash, bool WasThere, IReadOnlyList<Refusal> Refusals)
{
    /// <summary>Records a file that is safe in the book's folder, at the time when it was taken by what is known of its camera's clock.</summary>
    public static PhotoAnswer Record(Book book, string name, Outcome<Arrival> outcome, string? of, string sender, string by, DateTimeOffset now)
    {
        if (!outcome.TryGet(out var arrival))
            return new PhotoAnswer(name, null, false, outcome.Refusals);

        book.Refresh();
        if (book.Bench.Photos.ContainsKey(arrival.Hash))
            return new PhotoAnswer(name, arrival.Hash, true, []);

        var notes = arrival.Notes;
        var taken = new PhotoTaken(arrival.Hash, arrival.Type, arrival.Width, arrival.Height, name, notes.Camera, notes.Taken, of is null ? null : [of]);
        var when = notes.Taken is { } time ? time - book.Bench.CameraClocks.GetValueOrDefault(notes.Camera) : now;

        // A clock that is ahead is no reason to write down what has not happened yet.
        var reply = book.Submit(new Sending(sender, when <= now ? when : now, now, by), new Tell(taken));
        return new PhotoAnswer(name, reply.Ok ? arrival.Hash : null, reply.Ok && reply.Value.WasThere, reply.Refusals);
    }
}
