using System.Net;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>Every page there is, with the demo book, on a phone: none is left out because somebody forgot to list it.</summary>
public sealed class EveryPageTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    private const string Demo = "/books/demo";

    /// <summary>Routes that no page links to, and why.</summary>
    private static readonly Dictionary<string, string> NotLinked = new()
    {
        ["/assets/{**path}"] = "style sheets and scripts",
        ["/app.webmanifest"] = "read by the browser",
        ["/sw.js"] = "read by the browser",
        ["/ca.crt"] = "a file, and only over the shop's network",
        ["/others/{book}"] = "asked by a script",
        ["/picture/{book}/{hash:length(64)}/{size}"] = "a picture; its page is looked at with the photos",
        ["/books/{book}/photo/{hash}"] = "the demo has no photos; looked at with the photos",
        ["/books/{book}/running-in.ics"] = "a calendar, once the running in is planned",
        ["/k"] = "goes on to the label's code",
    };

    private async Task<IReadOnlyDictionary<string, List<FoundPage>>> All()
    {
        await workshop.Client.PostAsync("/demo", new FormUrlEncodedContent([]));
        var labels = await workshop.Client.PostAsync($"{Demo}/labels", new FormUrlEncodedContent([new("sender", "labels"), new("place", "shelf 3"), new("sheet", "a4-70x37"), new("from", "1")]));
        var pages = new Pages(workshop);
        var found = await pages.Find("/", Demo, "/pair", labels.Headers.Location!.OriginalString, $"/k/{labels.Headers.Location.OriginalString.Split('=')[^1]}", $"{Demo}/find?q=bag+12");
        // A card is linked from a part that has photos; the demo has none.
        return await pages.Find(found["/books/{book}/tighten/{joint}"][0].Address.Replace("/tighten/", "/card/", StringComparison.Ordinal).Split('?')[0]);
    }

    [Fact]
    public async Task Every_route_is_reached_by_a_link_or_has_a_reason()
    {
        var found = await All();
        Assert.DoesNotContain(new Pages(workshop).Routes("GET"), route => !found.ContainsKey(route) && !NotLinked.ContainsKey(route));
    }

    [Fact]
    public async Task Every_page_has_its_landmarks_headings_and_names_before_any_script()
    {
        var pages = (await All()).Values.SelectMany(list => list).Where(page => page.Html.Length > 0).ToArray();
        Assert.True(pages.Length >= 60, $"only {pages.Length} pages found");
        Assert.Empty(pages.SelectMany(page => PageText.Faults(page.Html).Select(fault => $"{page.Address}: {fault}")));
    }

    [Fact]
    public async Task Every_form_sent_empty_is_answered_with_a_page_that_reads_well()
    {
        await workshop.Client.PostAsync("/demo", new FormUrlEncodedContent([]));
        var faults = new List<string>();
        var refused = 0;
        foreach (var route in new Pages(workshop).Routes("POST").Where(route => !route.Replace("{book}", "", StringComparison.Ordinal).Contains('{', StringComparison.Ordinal)))
        {
            var address = route.Replace("{book}", "demo", StringComparison.Ordinal);
            var answer = await workshop.Client.PostAsync(address, new FormUrlEncodedContent([new("sender", $"empty {route}"), new("back", "strip")]));
            if (answer.StatusCode >= HttpStatusCode.InternalServerError)
                faults.Add($"{address}: {answer.StatusCode}");
            if (answer.Content.Headers.ContentType?.MediaType != "text/html" || answer.StatusCode is HttpStatusCode.SeeOther or HttpStatusCode.Redirect)
                continue;
            refused += answer.StatusCode == HttpStatusCode.UnprocessableEntity ? 1 : 0;
            faults.AddRange(PageText.Faults(await answer.Content.ReadAsStringAsync()).Select(fault => $"{address}: {fault}"));
        }

        Assert.Empty(faults);
        Assert.True(refused >= 30, $"only {refused} forms refused");
    }

    [Fact]
    public async Task Every_page_passes_axe_and_stays_on_the_phone()
    {
        var page = await browser.Open(workshop.Address, Phone);
        var faults = new List<string>();
        foreach (var list in (await All()).Values)
        {
            if (list.FirstOrDefault(p => p.Html.Length > 0) is not { } shown)
                continue;
            // The finished book is a file to keep: a browser saves it instead of showing it.
            if (shown.Address.EndsWith(".html", StringComparison.Ordinal))
                await page.SetContentAsync(shown.Html);
            else
                await page.GotoAsync(shown.Address);
            try
            {
                await page.LookAt("every-" + shown.Address.Trim('/').Replace('/', '-').Split('?')[0]);
            }
            catch (Xunit.Sdk.TrueException fault)
            {
                faults.Add($"{shown.Address}: {fault.Message}");
            }
        }

        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    [Fact]
    public async Task Refused_page_passes_axe_and_stays_on_the_phone()
    {
        await workshop.Client.PostAsync("/demo", new FormUrlEncodedContent([]));
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{Demo}/journal");
        await page.EvaluateAsync("() => { const f = document.createElement('form'); f.method = 'post'; f.action = '/books/demo/off'; f.innerHTML = '<input name=\"part\" value=\"a part with a name that nobody ever gave to any part of any engine\"><input name=\"back\" value=\"strip\">'; document.body.append(f); HTMLFormElement.prototype.submit.call(f); }");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Not recorded");
        await page.LookAt("every-refused");
    }
}
