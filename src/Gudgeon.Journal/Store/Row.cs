using System.Globalization;
using System.Text.Json;

namespace Gudgeon.Journal;

/// <summary>One entry as it lies on disk. The body is kept as the text that was first written, so that export gives it back to the byte.</summary>
public sealed record Row(long Number, string Id, string Act, string At, string EnteredAt, string By, string Body)
{
    /// <summary>The round-trip form: it sorts as text, and it is read many times faster than any other.</summary>
    private const string Instant = "O";

    public static Row Of(Recorded recorded) => new(
        recorded.Number,
        recorded.Id,
        recorded.Act,
        recorded.At.ToString(Instant, CultureInfo.InvariantCulture),
        recorded.EnteredAt.ToString(Instant, CultureInfo.InvariantCulture),
        recorded.By,
        JsonSerializer.Serialize(recorded.Entry, JournalJson.Lines.Entry));

    /// <summary>The entry, or null with the reason when this program cannot read it.</summary>
    public Recorded? Read(out string? why)
    {
        try
        {
            why = null;
            var entry = JsonSerializer.Deserialize(Body, JournalJson.Lines.Entry) ?? throw new JsonException("an empty entry");
            var at = When(At);
            return new Recorded(Number, Id, Act, at, ReferenceEquals(At, EnteredAt) ? at : When(EnteredAt), By, entry);
        }
        catch (Exception e) when (e is JsonException or FormatException or NotSupportedException)
        {
            why = e.Message;
            return null;
        }
    }

    private static DateTimeOffset When(string text) => DateTimeOffset.ParseExact(text, Instant, CultureInfo.InvariantCulture);
}
