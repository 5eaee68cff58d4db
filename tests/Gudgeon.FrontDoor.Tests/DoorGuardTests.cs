using System.Net;

namespace Gudgeon.FrontDoor.Tests;

public sealed class DoorGuardTests(Workshop workshop) : IClassFixture<Workshop>
{
    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    public async Task Form_from_another_site_is_refused(string site)
    {
        var answer = await Send(HttpMethod.Post, "/light", ("Sec-Fetch-Site", site));

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains("a form of another site", await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task Form_with_a_foreign_origin_and_no_fetch_headers_is_refused()
    {
        var answer = await Send(HttpMethod.Post, "/light", ("Origin", "http://elsewhere.example"));

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task Form_of_an_opaque_origin_is_refused()
    {
        var answer = await Send(HttpMethod.Post, "/light", ("Origin", "null"));

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task Form_of_our_own_page_is_let_in()
    {
        var answer = await Send(HttpMethod.Post, "/light", ("Sec-Fetch-Site", "same-origin"));

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
    }

    [Theory]
    [InlineData("books.elsewhere.example")]
    [InlineData("127.0.0.1.elsewhere.example")]
    [InlineData("10.1.2.3")]
    public async Task Foreign_name_pointed_at_loopback_is_refused(string host)
    {
        var answer = await Send(HttpMethod.Get, "/", ("Host", host));

        Assert.Equal(HttpStatusCode.MisdirectedRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("[::1]")]
    [InlineData("127.0.0.2")]
    public async Task Loopback_name_is_let_in(string host)
    {
        var answer = await Send(HttpMethod.Get, "/assets/look.css", ("Host", host));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory]
    [InlineData("//elsewhere.example/")]
    [InlineData("https://elsewhere.example/")]
    [InlineData("/\\elsewhere.example")]
    public async Task Form_never_leads_out_of_the_workshop(string back)
    {
        var answer = await workshop.Client.PostAsync("/light", new FormUrlEncodedContent([new("light", "night"), new("back", back)]));

        Assert.Equal("/", answer.Headers.Location?.OriginalString);
    }

    [Fact]
    public async Task Page_carries_a_policy_without_inline_script_or_style()
    {
        var answer = await workshop.Client.GetAsync("/nowhere");

        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy);
        Assert.DoesNotContain("unsafe", policy);
    }

    [Fact]
    public async Task Unknown_address_is_answered_in_four_parts()
    {
        var answer = await workshop.Client.GetAsync("/no<b>where");
        var page = await answer.Content.ReadAsStringAsync();

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("Where", page);
        Assert.Contains("&quot;/no&lt;b&gt;where&quot;", page);
        Assert.DoesNotContain("<b>where", page);
    }

    [Fact]
    public async Task Asset_with_a_matching_tag_is_not_sent_again()
    {
        var first = await workshop.Client.GetAsync("/assets/look.css");
        var second = await Send(HttpMethod.Get, "/assets/look.css", ("If-None-Match", first.Headers.ETag!.ToString()));

        Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        Assert.Equal("text/css", first.Content.Headers.ContentType?.MediaType);
        Assert.Equal(HttpStatusCode.NotModified, second.StatusCode);
    }

    private async Task<HttpResponseMessage> Send(HttpMethod method, string path, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(method, path);
        foreach (var (name, value) in headers)
            request.Headers.TryAddWithoutValidation(name, value);
        if (method == HttpMethod.Post)
            request.Content = new FormUrlEncodedContent([new("light", "day"), new("back", "/")]);
        return await workshop.Client.SendAsync(request);
    }
}
