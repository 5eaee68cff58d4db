using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Gudgeon.Journal;

/// <summary>How entries are written: snake case, no nulls, text as people typed it.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    UseStringEnumConverter = true)]
[JsonSerializable(typeof(Entry))]
[JsonSerializable(typeof(JournalLine))]
[JsonSerializable(typeof(JournalHead))]
internal sealed partial class JournalJson : JsonSerializerContext
{
    /// <summary>The one to use: the journal file is read by people, so letters stay letters.</summary>
    public static JournalJson Lines => field ??= new(new JsonSerializerOptions(Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
}

/// <summary>First line of a journal file.</summary>
internal sealed record JournalHead(int GudgeonJournal);

/// <summary>One further line of a journal file.</summary>
internal sealed record JournalLine(long Number, string Id, string Act, string At, string Entered, string By, JsonElement Entry);
