using System.Runtime.CompilerServices;

namespace Gudgeon.Tests.House;

/// <summary>The checkout that these tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(Here());

    /// <summary>Files of the repository that people wrote, by path from the root with forward slashes.</summary>
    public static IEnumerable<string> Files(params string[] endings) =>
        Directory.EnumerateFiles(Root, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Root, f).Replace('\\', '/'))
            .Where(f => !f.Split('/').Any(p => p is "bin" or "obj" or ".git" or "out" or "books" or "node_modules" or "TestResults" or "BenchmarkDotNet.Artifacts" or "StrykerOutput"))
            .Where(f => endings.Length == 0 || endings.Any(e => f.EndsWith(e, StringComparison.Ordinal)))
            .Order(StringComparer.Ordinal);

    public static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    private static string Here([CallerFilePath] string file = "") => file;

    private static string Find(string from)
    {
        for (var folder = Path.GetDirectoryName(from); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (File.Exists(Path.Combine(folder, "Gudgeon.slnx")))
            {
                return folder;
            }
        }

        throw new InvalidOperationException($"no Gudgeon.slnx above {from}");
    }
}
