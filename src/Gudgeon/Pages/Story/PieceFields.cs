using Gudgeon.Capture;

namespace Gudgeon.Pages.Story;

/// <summary>The fields in which a form carries what was made of a line's pieces. An unticked box sends nothing: what was shown and is not kept was left out.</summary>
internal static class PieceFields
{
    public const string Piece = "piece";
    public const string Keep = "keep";

    /// <summary>With the number of the doubt behind it.</summary>
    public const string Meant = "meant.";

    /// <summary>Each that was only offered, as it was shown.</summary>
    public const string Offer = "offer";

    /// <summary>Ticked: whatever was shown as only offered is so; not what the line may come to later.</summary>
    public const string All = "meant-all";

    public static Choices Read(IFormCollection form) => new(
        [.. form[Piece].Except(form[Keep]).Select(key => PieceKey.Read(key!))],
        [.. form.Where(f => f.Key.StartsWith(Meant, StringComparison.Ordinal) || (f.Key == Offer && form[All].Count > 0)).SelectMany(f => f.Value).OfType<string>().Where(key => key.Length > 0).Distinct().Select(PieceKey.Read)]);

    public static bool Holds(string field) => field is Piece or Keep or Offer or All || field.StartsWith(Meant, StringComparison.Ordinal);
}
