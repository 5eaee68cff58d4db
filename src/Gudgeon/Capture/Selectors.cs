namespace Gudgeon.Capture;

/// <summary>Words beside a part that say which one: number three, all six, left, inlet, upper.</summary>
internal sealed record Selectors
{
    public List<int> Numbers { get; } = [];
    public bool All { get; set; }
    public int? AllOf { get; set; }

    /// <summary>left, right, far, near, other, or bank:n.</summary>
    public string Side { get; set; } = "";

    /// <summary>in or ex.</summary>
    public string Gas { get; set; } = "";

    /// <summary>Where words that pick no instance by themselves: upper, front, second.</summary>
    public List<string> Where { get; } = [];
}
