using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>A page of the workshop as it was found: its route, an address of it, what it sent.</summary>
internal sealed record FoundPage(string Route, string Address, string Html);

/// <summary>Every page that the workshop maps, found by following its own links through the demo book.</summary>
internal sealed partial class Pages(Workshop workshop)
{
    /// <summary>Of one route so many addresses are looked at: the pages of two parts differ, those of two hundred do not.</summary>
    private const int Each = 2;

    private readonly Dictionary<string, List<FoundPage>> found = [];

    /// <summary>Routes that answer a GET, as they are mapped.</summary>
    public IReadOnlyList<string> Routes(string method) =>
    [
        .. workshop.Services.GetServices<EndpointDataSource>().SelectMany(source => source.Endpoints).OfType<RouteEndpoint>()
            .Where(route => route.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains(method) == true).Select(route => "/" + route.RoutePattern.RawText!.TrimStart('/')).Distinct(),
    ];

    /// <summary>Follows the links of each page from the given addresses on.</summary>
    public async Task<IReadOnlyDictionary<string, List<FoundPage>>> Find(params string[] from)
    {
        var routes = Routes("GET").Select(route => (Route: route, Shape: new Regex($"^{Hole().Replace(Regex.Escape(route).Replace("}", "\\}", StringComparison.Ordinal), "[^/]+")}$"))).OrderBy(r => r.Route.Count(c => c == '{')).ToArray();
        var waiting = new Queue<string>(from);
        var seen = new HashSet<string>();
        while (waiting.TryDequeue(out var address))
        {
            var path = address.Split('#')[0];
            var route = routes.FirstOrDefault(r => r.Shape.IsMatch(path.Split('?')[0])).Route;
            if (route is null || !seen.Add(path) || (found.TryGetValue(route, out var there) && there.Count >= Each))
                continue;
            var answer = await workshop.Client.GetAsync(path);
            if (answer.StatusCode is HttpStatusCode.Redirect or HttpStatusCode.SeeOther or HttpStatusCode.MovedPermanently)
            {
                found.TryAdd(route, []);
                waiting.Enqueue(answer.Headers.Location!.OriginalString);
                continue;
            }

            var html = answer.Content.Headers.ContentType?.MediaType == "text/html";
            var page = new FoundPage(route, path, html ? await answer.Content.ReadAsStringAsync() : "");
            (found.TryGetValue(route, out var list) ? list : found[route] = []).Add(page);
            foreach (var link in html ? PageText.Read(page.Html).QuerySelectorAll("a[href], form[method=get], form:not([method]), img[src]").Select(e => e.GetAttribute("href") ?? e.GetAttribute("action") ?? e.GetAttribute("src")) : [])
            {
                if (link is ['/', not '/', ..] or "/")
                    waiting.Enqueue(link);
            }
        }

        return found;
    }

    [GeneratedRegex(@"\\\{[^}]*\\\}")]
    private static partial Regex Hole();
}
