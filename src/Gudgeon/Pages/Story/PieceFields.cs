using Gudgeon.Capture;

namespace Gudgeon.Pages.Story;

/// <summary>The fields in which a form carries what was made of a line's pieces. An unticked box sends nothing: what was shown and is not kept was left out.</summary>
internal static class PieceFields
{
    public const string Piece = "piece";
    public const string Keep = "keep";

    /// <summary>With the number of the doubt behind it.</summary>
    public const string Meant = "meant.";

    /// <summary>Ticked: whatever was only offered is so.</summary>
    public const string All = "meant-all";

    public static Choices Read(IFormCollection form) => new(
        [.. form[Piece].Except(form[Keep]).Select(key => PieceKey.Read(key!))],
        [.. form.Where(f => f.Key.StartsWith(Meant, StringComparison.Ordinal)).Select(f => f.Value.ToString()).Where(key => key.Length > 0).Select(PieceKey.Read)],
        form[All].Count > 0);

    public static bool Holds(string field) => field is Piece or Keep or All || field.StartsWith(Meant, StringComparison.Ordinal);
}
