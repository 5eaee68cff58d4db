using System.Net;
using System.Text.RegularExpressions;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>Forms as they are sent, without a browser: once recorded, always encoded, never lost.</summary>
public sealed partial class FormTests(Workshop workshop) : IClassFixture<Workshop>
{
    private const string Markup = "<b onclick=alert(1)>Tom & \"Jerry\"</b>";

    [Fact]
    public async Task Same_form_sent_twice_starts_one_book()
    {
        var before = await BookCount();
        await workshop.Client.PostAsync("/start", Form(("sender", "twice"), ("title", "Sent twice"), ("layout", "inline"), ("n", "4")));
        await workshop.Client.PostAsync("/start", Form(("sender", "twice"), ("title", "Sent twice"), ("layout", "inline"), ("n", "4")));

        Assert.Equal(before + 1, await BookCount());
    }

    [Fact]
    public async Task Same_tap_sent_twice_is_recorded_once_and_echoed_both_times()
    {
        var book = await Start("Two taps");
        var first = await Post($"{book}/off", ("sender", "tap-1"), ("back", "strip"), ("part", "exhaust-pipe.1"));
        var second = await Post($"{book}/off", ("sender", "tap-1"), ("back", "strip"), ("part", "exhaust-pipe.1"));

        Assert.Equal(HttpStatusCode.SeeOther, first.StatusCode);
        Assert.Equal(first.Headers.Location, second.Headers.Location);
        Assert.Single(OffEntry().Matches(await Get($"{book}/book")));
    }

    [Fact]
    public async Task Text_of_the_owner_is_never_markup()
    {
        var book = await Start(Markup);
        await Post($"{book}/add-part", ("back", "strip"), ("name", Markup), ("off", "yes"));
        await Post($"{book}/say", ("back", "strip"), ("line", Markup));

        foreach (var page in (string[])["strip", "account", "journal", "findings", "book", "book.html", "refit", "all-back", "otherwise", "part/own.b-onclick-alert-1-tom-jerry-b", $"find?q={Uri.EscapeDataString(Markup)}"])
        {
            var html = await Get($"{book}/{page}");
            Assert.DoesNotContain("<b onclick", html);
            Assert.Contains("&lt;b onclick", html);
        }

        Assert.DoesNotContain("<b onclick", await Get("/"));
    }

    [Fact]
    public async Task Refused_form_says_why_in_four_parts_and_keeps_what_was_typed()
    {
        var book = await Start("Refusals");
        var answer = await Post($"{book}/fasteners", ("back", "strip"), ("joint", "j-exh-pipe.1"), ("count", "three"), ("size", "M10"));
        var page = await answer.Content.ReadAsStringAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        foreach (var part in (string[])["Where", "Met", "Expected", "Do", "&quot;three&quot;", "M10"])
            Assert.Contains(part, page);
    }

    [Fact]
    public async Task Empty_form_is_refused()
    {
        var book = await Start("Empty");
        var answer = await Post($"{book}/off", ("back", "strip"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("nothing filled in", await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task Part_that_the_guess_held_back_comes_off_all_the_same()
    {
        var book = await Start("Reality wins");
        var answer = await Post($"{book}/off", ("back", "strip"), ("part", "head.1"));

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Contains("Head off", await Get(answer.Headers.Location!.OriginalString));
    }

    [Fact]
    public async Task Book_kept_as_one_file_needs_nothing_from_outside()
    {
        var book = await Start("One file");
        var answer = await workshop.Client.GetAsync($"{book}/book.html");
        var html = await answer.Content.ReadAsStringAsync();

        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition?.DispositionType);
        Assert.Contains("font/woff2;base64,", html);
        Assert.Empty(OutsideReference().Matches(html));
    }

    [Theory]
    [InlineData("/books/none/strip")]
    [InlineData("/books/..%2f..%2fetc/strip")]
    [InlineData("/books/one-file/part/no-such-part")]
    public async Task Address_of_nothing_is_not_found(string path)
    {
        await Start("One file");

        Assert.Equal(HttpStatusCode.NotFound, (await workshop.Client.GetAsync(path)).StatusCode);
    }

    private async Task<string> Start(string title)
    {
        var answer = await workshop.Client.PostAsync("/start", Form(("sender", title), ("title", title), ("layout", "inline"), ("n", "4")));
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        return answer.Headers.Location!.OriginalString.Replace("/strip", "", StringComparison.Ordinal);
    }

    private async Task<string> Get(string path) => await (await workshop.Client.GetAsync(path)).Content.ReadAsStringAsync();

    private async Task<int> BookCount() => Cover().Count(await Get("/"));

    private Task<HttpResponseMessage> Post(string path, params (string Name, string Value)[] fields) => workshop.Client.PostAsync(path, Form(fields));

    private static FormUrlEncodedContent Form(params (string Name, string Value)[] fields) =>
        new(fields.Select(f => new KeyValuePair<string, string>(f.Name, f.Value)));

    [GeneratedRegex("Exhaust pipe off")]
    private static partial Regex OffEntry();

    [GeneratedRegex("class=\"name\" href=\"/books/")]
    private static partial Regex Cover();

    [GeneratedRegex("(src|href)=\"(?!data:)|url\\((?!data:)")]
    private static partial Regex OutsideReference();
}
