using System.Text.Json;

namespace Gudgeon.Mutation;

/// <summary>What became of a mutant.</summary>
internal enum Verdict
{
    /// <summary>A test fails with it that passes without it.</summary>
    Killed,

    /// <summary>A test runs on far beyond its own time with it.</summary>
    Timeout,

    /// <summary>Every test that meets it passes with it.</summary>
    Survived,

    /// <summary>No test meets it.</summary>
    NoCoverage,
}

/// <summary>One change of the sums.</summary>
/// <param name="Id">Its number in the changed assembly.</param>
/// <param name="File">Its file from the folder of the sums, with forward slashes.</param>
/// <param name="Line">Where it starts, from 1.</param>
/// <param name="Kind">What sort of change.</param>
/// <param name="Original">What stood there.</param>
/// <param name="Replacement">What stands there now.</param>
internal sealed record Mutant(int Id, string File, int Line, string Kind, string Original, string Replacement)
{
    /// <summary>The mutants of a Stryker report that can be tried: those that compile and that no other one contains.</summary>
    /// <param name="report">The JSON report (mutation testing elements, schema 2).</param>
    /// <param name="subjects">Folders or files to take, from the folder of the sums; none takes all.</param>
    public static IReadOnlyList<Mutant> Read(string report, IReadOnlyList<string> subjects)
    {
        using var document = JsonDocument.Parse(System.IO.File.ReadAllBytes(report));
        var root = document.RootElement.GetProperty("projectRoot").GetString()!;
        var found = new List<Mutant>();
        foreach (var file in document.RootElement.GetProperty("files").EnumerateObject())
        {
            var name = Path.GetRelativePath(root, file.Name).Replace('\\', '/');
            if (subjects.Count > 0 && !subjects.Any(s => name == s || name.StartsWith(s.TrimEnd('/') + "/", StringComparison.Ordinal)))
                continue;
            var lines = file.Value.GetProperty("source").GetString()!.Split('\n');
            found.AddRange(file.Value.GetProperty("mutants").EnumerateArray()
                .Where(m => m.GetProperty("status").GetString() is not ("CompileError" or "Ignored"))
                .Select(m => One(name, lines, m)));
        }
        return found;
    }

    private static Mutant One(string file, string[] lines, JsonElement mutant)
    {
        var (start, end) = (mutant.GetProperty("location").GetProperty("start"), mutant.GetProperty("location").GetProperty("end"));
        var line = start.GetProperty("line").GetInt32();
        var text = lines[line - 1];
        var from = start.GetProperty("column").GetInt32() - 1;
        var to = end.GetProperty("line").GetInt32() == line ? end.GetProperty("column").GetInt32() - 1 : text.Length;
        var replacement = mutant.TryGetProperty("replacement", out var r) ? r.GetString()! : "";
        return new(int.Parse(mutant.GetProperty("id").GetString()!), file, line, mutant.GetProperty("mutatorName").GetString()!,
            text[from..to].Trim(), string.Join(' ', replacement.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
    }
}
