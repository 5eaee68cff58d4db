namespace Gudgeon.Labels;

/// <summary>A label paper, in millimetres. Papers of these sizes come from many makers; measure yours before printing a whole sheet.</summary>
/// <param name="Id">In addresses and as the class of its print page.</param>
/// <param name="Left">From the paper's left edge to the first label.</param>
/// <param name="Top">From the paper's top edge to the first label.</param>
/// <param name="PitchX">From one label's left edge to the next one's.</param>
/// <param name="PitchY">From one label's top edge to the next one's.</param>
public sealed record LabelSheet(string Id, string Name, double PaperWidth, double PaperHeight, double Width, double Height, int Columns, int Rows, double Left, double Top, double PitchX, double PitchY)
{
    /// <summary>Sizes and margins from memory of common papers; 70 × 37 and 2⅝ × 1 in fill the paper by their own sums.</summary>
    public static IReadOnlyList<LabelSheet> All { get; } =
    [
        new("a4-70x37", "A4, 24 labels of 70 × 37 mm", 210, 297, 70, 37, 3, 8, 0, 0.5, 70, 37),
        new("a4-63x38", "A4, 21 labels of 63.5 × 38.1 mm", 210, 297, 63.5, 38.1, 3, 7, 7.25, 15.15, 66, 38.1),
        new("a4-99x38", "A4, 14 labels of 99.1 × 38.1 mm", 210, 297, 99.1, 38.1, 2, 7, 4.65, 15.15, 101.6, 38.1),
        new("a4-48x25", "A4, 40 labels of 48.5 × 25.4 mm", 210, 297, 48.5, 25.4, 4, 10, 8, 21.5, 48.5, 25.4),
        new("letter-67x25", "Letter, 30 labels of 2⅝ × 1 in", 215.9, 279.4, 66.675, 25.4, 3, 10, 4.7625, 12.7, 69.85, 25.4),
        new("roll-62x29", "Roll, 62 × 29 mm each", 62, 29, 62, 29, 1, 1, 0, 0, 62, 29),
        new("roll-57x32", "Roll, 57 × 32 mm each", 57, 32, 57, 32, 1, 1, 0, 0, 57, 32),
    ];

    public int Each => Columns * Rows;

    public double LabelLeft(int place) => Left + place % Columns * PitchX;

    public double LabelTop(int place) => Top + place / Columns * PitchY;
}
