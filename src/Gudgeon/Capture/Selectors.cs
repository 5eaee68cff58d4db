namespace Gudgeon.Capture;

/// <summary>Words beside a part that say which one: number three, all six, left, inlet, upper.</summary>
internal sealed class Selectors
{
    public List<int> Numbers { get; } = [];
    public bool All { get; set; }
    public int? AllOf { get; set; }

    /// <summary>left, right, far, near, other, or bank:n.</summary>
    public string Side { get; set; } = "";

    /// <summary>in or ex.</summary>
    public string Gas { get; set; } = "";

    /// <summary>All but these.</summary>
    public List<int> Except { get; } = [];

    /// <summary>All but the last.</summary>
    public bool ExceptLast { get; set; }

    /// <summary>Whether the figure of <see cref="Except"/> may as well count how many are left out.</summary>
    public bool ExceptCounts { get; set; }

    /// <summary>1 for the odd numbers, 0 for the even ones.</summary>
    public int? Parity { get; set; }

    /// <summary>Where words that pick no instance by themselves: upper, front, second.</summary>
    public List<string> Where { get; } = [];

    /// <summary>One of its own to cross words off.</summary>
    public Selectors Copy()
    {
        var copy = new Selectors { All = All, AllOf = AllOf, Side = Side, Gas = Gas, ExceptLast = ExceptLast, ExceptCounts = ExceptCounts, Parity = Parity };
        copy.Numbers.AddRange(Numbers);
        copy.Where.AddRange(Where);
        copy.Except.AddRange(Except);
        return copy;
    }
}
