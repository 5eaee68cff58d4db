namespace Gudgeon.Journal;

/// <summary>How one line stands.</summary>
public sealed class LineState
{
    /// <summary>What nobody has touched. Never changed.</summary>
    internal static readonly LineState AsFound = new();

    public bool IsParted { get; internal set; }

    /// <summary>Parted by what came off, without being told.</summary>
    public bool IsImplied { get; internal set; }

    public string Tag { get; internal set; } = "";

    /// <summary>Ends with a cap or plug in, by port id. Each must come out.</summary>
    public IReadOnlyList<string> Caps { get; internal set; } = [];

    /// <summary>Where its ends were found after it was joined, and the tag there, by the port that the end belongs on.</summary>
    public Dictionary<string, (string At, string Tag)> Found { get; } = [];

    public DateTimeOffset? PartedAt { get; internal set; }
    public bool IsAbsent { get; internal set; }
}
