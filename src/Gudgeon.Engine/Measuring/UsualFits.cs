using Gudgeon.Engine.Building;

namespace Gudgeon.Engine;

/// <summary>What is usually fitted how, near which fit of ISO 286. Common practice, no source; never a limit.</summary>
/// <param name="Classes">Hole and shaft: <c>H7/p6</c>.</param>
/// <param name="How">How it goes in.</param>
public sealed record UsualFit(string What, string Classes, string How)
{
    public static IReadOnlyList<UsualFit> All { get; } =
        [.. Table.Read("fits.psv", Table.Own("fits.psv")).Select(r => new UsualFit(r["what"], r["fit"], r["how"]))];
}
