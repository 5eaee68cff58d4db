using Gudgeon.Commands;

namespace Gudgeon.Tests.Commands;

/// <summary>Runs command lines as a user would, on a books folder of its own.</summary>
internal sealed class Shell : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gudgeon-cli-").FullName;

    public string File(string name) => Path.Combine(folder, name);

    public (int Exit, string Output, string Errors) Run(params string[] args)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var exit = CommandLine.Run([.. args, "--books", Path.Combine(folder, "books")], output, errors, TimeProvider.System);
        return (exit, output.ToString().Trim(), errors.ToString().Trim());
    }

    public string Good(params string[] args)
    {
        var (exit, output, errors) = Run(args);
        Assert.True(exit == 0, $"gudgeon {string.Join(' ', args)} gave {exit}: {output} {errors}");
        return output;
    }

    public void Dispose() => Directory.Delete(folder, true);
}
