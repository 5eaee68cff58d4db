namespace Gudgeon.Capture;

/// <summary>The words of the trade that are no parts: what is done, what is found, what things lie in.</summary>
internal static class Lexicon
{
    public static readonly PhraseBook<Act> Acts = Read("deeds", row => Enum.Parse<Act>(row[0], ignoreCase: true));

    public static readonly PhraseBook<(string Fault, bool Damage)> Faults = Read("conditions", row => (row[0], row[1] == "damage"), Denials);

    public static readonly PhraseBook<string> Fasteners = Read("fasteners", row => row[0]);

    /// <summary>Things to put things in or on.</summary>
    public static readonly PhraseBook<string> Containers = Read("containers", row => row[0]);

    /// <summary>Pieces and features of a part that are no parts of their own.</summary>
    public static readonly PhraseBook<string> Details = Read("pieces", row => row[0]);

    /// <summary>Pieces that a kind has whatever else their words name: the shaft of a turbo.</summary>
    public static readonly ILookup<string, string> PiecesOf = Rows("pieces").Where(r => r.Length == 3).SelectMany(r => r[1].Split("; "), (r, kind) => (kind, piece: r[0])).ToLookup(p => p.kind, p => p.piece);

    /// <summary>Words that carry no fact of their own.</summary>
    public static readonly HashSet<string> Fillers =
    [
        "the", "a", "an", "and", "of", "shows", "show", "showing", "sounds", "look", "looks", "seem", "seems", "feel", "feels", "feeling", "hopefully", "probably", "maybe", "i'd", "them all", "is", "are", "was", "were", "be", "been", "it", "'s", "'ve", "'re", "'ll", "'d", "'m", "i", "we", "they", "them", "this", "that", "these", "those", "right", "ok", "okay", "so", "well", "um", "uh", "er", "erm", "now", "then", "just", "all", "too", "also", "has", "have", "had", "got", "get", "with", "to", "in", "into", "on", "at", "by", "for", "from", "my", "its", "their", "there", "here", "did", "do", "does", "as", "but", "plus", "still", "each", "both", "really", "actually", "anyway", "please", "yeah", "yes", "like", "looks", "bit", "quite", "very", "pretty", "finally", "at last", "eventually", "today", "straight", "nicely", "next", "last", "one", "ones", "some", "where", "which", "what", "when", "who", "will", "would", "can", "could", "me", "you", "he", "she", "us", "our", "your", "out", "off", "up", "down", "over", "back", "good", "about", "only", "already", "though", "or", "if", "because", "cos", "since", "went", "go", "gone", "come", "took", "take", "taken", "done", "note", "write", "mark", "first", "job", "put", "marked", "away", "again", "mate", "lovely", "happy", "days", "easy", "after", "more", "than", "other", "another", "any",
    ];

    /// <summary>Words that may be left over beside a deed and leave it certain.</summary>
    public static readonly HashSet<string> Passing = [.. Rows("passing").SelectMany(r => r[1].Split("; "))];

    /// <summary>Who is spoken of and is no thing to be taken off or laid down.</summary>
    public static readonly HashSet<string> Persons = [.. Rows("persons").SelectMany(r => r[1].Split("; "))];

    /// <summary>Predicates that say more than a deed: stays, lacking, closed.</summary>
    public static readonly PhraseBook<string> Frames = Read("frames", row => row[0]);

    /// <summary>What people stop an opening with.</summary>
    public static readonly HashSet<string> Stoppers = [.. Rows("stoppers").SelectMany(r => r[0].Split("; "))];

    /// <summary>Nouns that name no thing by themselves.</summary>
    public static readonly HashSet<string> Vague = ["bit", "end", "piece", "bracket", "seal", "socket", "side", "half", "one", "part", "thing", "gasket", "bolt", "nut", "hole", "bonnet", "hood"];

    /// <summary>Words between what stops an opening and the opening.</summary>
    public static readonly HashSet<string> Openings = ["in", "into", "over", "on", "onto", "round", "across", "down", "up", "inside"];

    /// <summary>How a stopper gets into its opening.</summary>
    public static readonly HashSet<string> Pushing = ["stuck", "stuffed", "shoved", "poked", "pushed", "screwed", "popped", "put", "jammed", "wrapped", "slipped", "rammed", "bunged", "taped", "tied", "stick", "shove", "pop", "wound"];

    /// <summary>What holds a thing out of the way and is no place to look for it.</summary>
    public static readonly HashSet<string> Ties = ["wire", "string", "rope", "cord", "twine", "bungee", "strap", "wires", "strings"];

    /// <summary>What is spent or wasted beside the work.</summary>
    public static readonly HashSet<string> Times = ["hour", "day", "evening", "night", "morning", "afternoon", "weekend", "minute", "time", "patience"];

    /// <summary>Words between which one of a row is told and its figure.</summary>
    public static readonly HashSet<string> RowLinks = [.. Rows("row-links").SelectMany(r => r[0].Split("; "))];

    /// <summary>Words that say how something is, not what was done.</summary>
    public static readonly HashSet<string> Copulas = ["is", "'s", "are", "'re", "was", "were", "lies", "lie", "lives", "live", "sits", "sit", "stands"];

    /// <summary>Stems of plain words and of what is done or found: none of them is a part misspelt.</summary>
    public static readonly HashSet<string> Common =
    [
        .. new[] { "deeds", "conditions", "containers", "fasteners", "pieces", "passing" }.SelectMany(Rows).SelectMany(r => r[^1].Split([' ', ';'], StringSplitOptions.RemoveEmptyEntries)).Concat(Fillers).Select(Token.StemOf),
        "breathe", "balance", "exhausting", "alternate", "starting", "retain", "inject", "springy", "heather", "courier",
    ];

    /// <summary>"not flat" is also "isn't flat" and "aren't flat"; "is bunged up" is also said of several and of what was.</summary>
    private static IEnumerable<string> Denials(string word)
    {
        yield return word;
        string[] forms = word.StartsWith("not ", StringComparison.Ordinal) ? ["isnt", "arent", "wasnt", "werent", "aint"] : word.StartsWith("is ", StringComparison.Ordinal) ? ["are", "was", "were", "'s", "'re"] : [];
        foreach (string form in forms)
            yield return form + word[word.IndexOf(' ', StringComparison.Ordinal)..];
    }

    private static PhraseBook<T> Read<T>(string table, Func<string[], T> value, Func<string, IEnumerable<string>>? forms = null)
    {
        var book = new PhraseBook<T>();
        foreach (string[] row in Rows(table))
        {
            foreach (string word in row[^1].Split("; "))
            {
                foreach (string form in forms?.Invoke(word) ?? [word])
                    book.Add(form, value(row));
            }
        }

        return book;
    }

    /// <summary>All the words of a table, each with its sort.</summary>
    public static PhraseBook<string> Book(string table) => Read(table, row => row[0]);

    /// <summary>The rows of one of the word tables beside the code; lines that start with # are remarks.</summary>
    public static IEnumerable<string[]> Rows(string table)
    {
        using var stream = typeof(Lexicon).Assembly.GetManifestResourceStream($"capture/{table}.psv") ?? throw new InvalidOperationException($"word table {table} is not in the program");
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
                yield return line.Split('|');
        }
    }
}
