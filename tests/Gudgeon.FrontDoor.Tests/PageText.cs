using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>What a page must hold as it leaves the workshop, before any script or style: landmarks, headings, names of all that can be typed into or tapped.</summary>
internal static class PageText
{
    public static IHtmlDocument Read(string html) => new HtmlParser().ParseDocument(html);

    public static IReadOnlyList<string> Faults(string html) => [.. All(Read(html))];

    private static IEnumerable<string> All(IHtmlDocument page)
    {
        if (page.DocumentElement.GetAttribute("lang") is not { Length: > 0 })
            yield return "html without lang";
        if (string.IsNullOrWhiteSpace(page.Title))
            yield return "no title";
        foreach (var (name, count) in new[] { ("main", 1), ("h1", 1) })
        {
            if (page.QuerySelectorAll(name).Length != count)
                yield return $"{page.QuerySelectorAll(name).Length} of {name}";
        }

        var level = 0;
        foreach (var heading in page.QuerySelectorAll("h1, h2, h3, h4, h5"))
        {
            var here = heading.LocalName[1] - '0';
            if (here > level + 1)
                yield return $"{heading.LocalName} \"{Short(heading)}\" after h{level}";
            if (Name(heading).Length == 0)
                yield return $"empty {heading.LocalName}";
            level = here;
        }

        foreach (var twice in page.All.Select(e => e.Id).Where(id => id is { Length: > 0 }).GroupBy(id => id).Where(g => g.Count() > 1))
            yield return $"id {twice.Key} {twice.Count()} times";
        foreach (var box in page.QuerySelectorAll("input:not([type=hidden]):not([type=submit]), select, textarea").Where(box => Label(page, box).Length == 0))
            yield return $"no label: {box.OuterHtml[..Math.Min(90, box.OuterHtml.Length)]}";
        foreach (var tap in page.QuerySelectorAll("button, a[href], summary").Where(tap => Name(tap).Length == 0))
            yield return $"nothing to say for: {tap.OuterHtml[..Math.Min(90, tap.OuterHtml.Length)]}";
        foreach (var picture in page.QuerySelectorAll("img:not([alt])"))
            yield return $"no alt: {picture.OuterHtml}";
        foreach (var drawing in page.QuerySelectorAll("svg[role=img]").Where(svg => svg.GetAttribute("aria-label") is not { Length: > 0 } && svg.GetAttribute("aria-labelledby") is null && svg.QuerySelector("title") is null))
            yield return $"drawing without words: {drawing.OuterHtml[..Math.Min(90, drawing.OuterHtml.Length)]}";
        foreach (var nav in page.QuerySelectorAll("nav").Where(nav => page.QuerySelectorAll("nav").Length > 1 && nav.GetAttribute("aria-label") is null && nav.GetAttribute("aria-labelledby") is null))
            yield return $"one nav of several without a name: {Short(nav)}";
        foreach (var form in page.QuerySelectorAll("form").Where(form => form.QuerySelector("button:not([type=button]), input[type=submit], input[type=image]") is null && page.QuerySelector($"button[form='{form.Id}']") is null))
            yield return $"form that nothing sends without script: {form.GetAttribute("action")}";
        foreach (var pointer in page.QuerySelectorAll("[aria-labelledby], [aria-describedby]"))
        {
            foreach (var id in $"{pointer.GetAttribute("aria-labelledby")} {pointer.GetAttribute("aria-describedby")}".Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(id => page.GetElementById(id) is null))
                yield return $"points at {id}, which is not there";
        }
    }

    private static string Label(IHtmlDocument page, IElement box) =>
        box.GetAttribute("aria-label") is { Length: > 0 } said ? said
        : box.GetAttribute("aria-labelledby") is { } by ? string.Join(' ', by.Split(' ').Select(id => page.GetElementById(id)?.TextContent)).Trim()
        : box.Id is { Length: > 0 } id && page.QuerySelector($"label[for='{id}']") is { } label ? Name(label)
        : box.Closest("label") is { } around ? Name(around)
        : "";

    private static string Name(IElement e) => e.GetAttribute("aria-label") is { Length: > 0 } label ? label
        : $"{e.TextContent} {string.Join(' ', e.QuerySelectorAll("img[alt]").Select(i => i.GetAttribute("alt")))} {string.Join(' ', e.QuerySelectorAll("svg[aria-label]").Select(i => i.GetAttribute("aria-label")))}".Trim();

    private static string Short(IElement e) => string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Take(6));
}
