namespace Gudgeon.Journal;

public sealed partial class Bench
{
    /// <summary>What was seen, in order.</summary>
    public List<Recorded> NotesAbout { get; } = [];

    /// <summary>Open questions by the number of the entry that asked.</summary>
    public SortedDictionary<long, Recorded> OpenQuestions { get; } = [];

    /// <summary>What is waited for.</summary>
    public SortedDictionary<string, Recorded> Waits { get; } = [];

    /// <summary>Words of the owner's own, each with the name that it stands for.</summary>
    public SortedDictionary<string, string> Taught { get; } = new(StringComparer.Ordinal);

    /// <summary>Ways of saying that the owner has taken as understood.</summary>
    public SortedSet<string> Ways { get; } = new(StringComparer.Ordinal);

    /// <summary>The owner's answers at the start; empty for a book from nothing.</summary>
    public IReadOnlyDictionary<string, string> Answers { get; internal set; } = new Dictionary<string, string>();

    /// <summary>Whether an id is anything of this engine.</summary>
    public bool Knows(string id) =>
        Engine.Parts.ContainsKey(id) || Engine.Joints.ContainsKey(id) || Engine.Lines.ContainsKey(id) || Engine.Operations.ContainsKey(id);
}
