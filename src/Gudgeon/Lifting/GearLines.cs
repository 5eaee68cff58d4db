using Gudgeon.Journal;

namespace Gudgeon.Lifting;

/// <summary>Pieces of gear as a person writes them, one a line: <c>front: chain, grade 8, 8 mm</c>.</summary>
internal static class GearLines
{
    private const string Shape = "leg or hook: sort, then what is read on it: front: chain, grade 8, 8 mm";
    private static readonly string[] Patterns = ["DIN 580", "BS 4278", "AS 2317", "AS 2317.1", "machinery"];

    public static IReadOnlyList<RigGear> Read(LiftFields fields)
    {
        var gear = new List<RigGear>();
        foreach (var (line, i) in fields.Text("gear").Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select((l, i) => (l, i + 1)))
        {
            var pieces = line.Split([':'], 2) is [var on, var rest]
                ? new[] { on.Trim() }.Concat(rest.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).ToList()
                : [];
            if (pieces.Count < 2)
                fields.Refuse($"gear, line {i}", $"\"{line}\"", Shape, "Write one piece a line");
            else
                gear.Add(Piece(fields, i, pieces));
        }

        return gear;
    }

    /// <summary>The same lines from what was told, so that one of them can be changed.</summary>
    public static string Write(RigGear piece) => $"{piece.On}: {string.Join(", ", new[]
    {
        piece.Sort == RigGear.OtherRated ? "other" : piece.Sort,
        piece.Grade.Length == 0 ? "" : Patterns.Contains(piece.Grade, StringComparer.OrdinalIgnoreCase) ? piece.Grade : $"grade {piece.Grade.Replace("grade", "", StringComparison.OrdinalIgnoreCase).Trim()}",
        piece.Size,
        piece.RatingKg is { } kg ? $"rated {Units.Plain(kg)} kg" : "",
        piece.OffLineDeg is { } off ? $"{(piece.Sort.StartsWith("choked", StringComparison.Ordinal) ? "choke" : "off")} {Units.Plain(off)}" : "",
        piece.Shank == "up" ? "" : $"shank {piece.Shank}",
        piece.Name == piece.Sort ? "" : $"called {piece.Name}",
    }.Where(mark => mark.Length > 0))}";

    private static RigGear Piece(LiftFields all, int i, IReadOnlyList<string> pieces)
    {
        var sort = pieces[1].Equals("other", StringComparison.OrdinalIgnoreCase) ? RigGear.OtherRated : pieces[1].ToLowerInvariant();
        var piece = new RigGear(sort, pieces[0], sort);
        // "other, rated" is one sort with a comma in it.
        foreach (var mark in pieces.Skip(2).Where(mark => !mark.Equals("rated", StringComparison.OrdinalIgnoreCase)))
        {
            string? After(string word) => mark.StartsWith(word + " ", StringComparison.OrdinalIgnoreCase) ? mark[(word.Length + 1)..].Trim() : null;
            LiftFields One(string text) => all.With(_ => text);
            if (After("grade") is { } grade)
                piece = piece with { Grade = grade };
            else if (Patterns.Contains(mark, StringComparer.OrdinalIgnoreCase))
                piece = piece with { Grade = mark };
            else if (After("rated") is { } rating)
                piece = piece with { RatingKg = One(rating).Kg("", $"rating of piece {i}") };
            else if ((After("off") ?? After("choke")) is { } angle)
                piece = piece with { OffLineDeg = One(angle).Degrees("", $"angle of piece {i}") };
            else if (After("shank") is { } shank)
                piece = piece with { Shank = shank.ToLowerInvariant() };
            else if (After("called") is { } name)
                piece = piece with { Name = name };
            else if (mark.EndsWith("mm", StringComparison.OrdinalIgnoreCase) || (mark.Length is > 1 and < 5 && mark[0] is 'M' or 'm' && mark[1..].All(char.IsDigit)))
                piece = piece with { Size = mark };
            else
                all.Refuse($"gear, line {i}", $"\"{mark}\"", "grade 8, DIN 580, 8 mm, M12, rated 1000 kg, off 30, choke 120, shank front, called NAME", "Write what is read on the piece; leave out what cannot be read");
        }

        return piece;
    }
}
