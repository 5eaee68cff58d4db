using System.Text;
using Gudgeon.Host;
using Gudgeon.Journal;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging.Abstractions;

namespace Gudgeon.Pages.Story;

/// <summary>The whole book as one HTML file, style and letters inside.</summary>
public sealed partial class BookFile
{
    private static readonly string[] Fonts = ["atkinson-hyperlegible-next-latin-wght-normal", "atkinson-hyperlegible-mono-latin-wght-normal"];

    /// <summary>The file. The caller holds the book still meanwhile.</summary>
    public static async Task<string> Html(Book book, DateTimeOffset now)
    {
        using var services = new ServiceCollection().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        var parameters = ParameterView.FromDictionary(new Dictionary<string, object?> { ["Book"] = book, ["Now"] = now, ["Style"] = InlineStyle() });
        return await renderer.Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<BookFile>(parameters)).ToHtmlString());
    }

    private static string InlineStyle()
    {
        var assets = new Assets();
        var style = new StringBuilder();
        foreach (var (font, family) in Fonts.Zip(["Atkinson", "Atkinson Mono"]))
            style.Append($"@font-face{{font-family:\"{family}\";font-weight:200 800;src:url(data:font/woff2;base64,{Convert.ToBase64String(assets.Bytes($"fonts/{font}.woff2"))})}}\n");
        return style.Append(Encoding.UTF8.GetString(assets.Bytes("book.css"))).ToString();
    }
}
