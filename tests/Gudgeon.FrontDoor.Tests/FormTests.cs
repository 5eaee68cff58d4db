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
        var book = await workshop.StartBook("Two taps");
        var first = await Post($"{book}/off", ("sender", "tap-1"), ("back", "strip"), ("part", "exhaust-pipe.1"));
        var second = await Post($"{book}/off", ("sender", "tap-1"), ("back", "strip"), ("part", "exhaust-pipe.1"));

        Assert.Equal(HttpStatusCode.SeeOther, first.StatusCode);
        Assert.Equal(first.Headers.Location, second.Headers.Location);
        Assert.Single(OffEntry().Matches(await Get($"{book}/book")));
    }

    [Fact]
    public async Task Text_of_the_owner_is_never_markup()
    {
        var book = await workshop.StartBook(Markup);
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
        var book = await workshop.StartBook("Refusals");
        var answer = await Post($"{book}/fasteners", ("back", "strip"), ("joint", "j-exh-pipe.1"), ("count", "three"), ("size", "M10"));
        var page = await answer.Content.ReadAsStringAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        foreach (var part in (string[])["Where", "Met", "Expected", "Do", "&quot;three&quot;", "M10"])
            Assert.Contains(part, page);
    }

    [Fact]
    public async Task Empty_form_is_refused()
    {
        var book = await workshop.StartBook("Empty");
        var answer = await Post($"{book}/off", ("back", "strip"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("nothing filled in", await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task Part_that_the_guess_held_back_comes_off_all_the_same()
    {
        var book = await workshop.StartBook("Reality wins");
        var answer = await Post($"{book}/off", ("back", "strip"), ("part", "head.1"));

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Contains("Head off", await Get(answer.Headers.Location!.OriginalString));
    }

    [Fact]
    public async Task Book_kept_as_one_file_needs_nothing_from_outside()
    {
        var book = await workshop.StartBook("One file");
        var answer = await workshop.Client.GetAsync($"{book}/book.html");
        var html = await answer.Content.ReadAsStringAsync();

        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition?.DispositionType);
        Assert.Contains("font/woff2;base64,", html);
        Assert.Empty(OutsideReference().Matches(html));
    }

    [Fact]
    public async Task Form_that_says_when_the_work_was_done_keeps_both_times()
    {
        var book = await workshop.StartBook("Written up");
        await Post($"{book}/off", ("back", "strip"), ("part", "exhaust-pipe.1"), ("done-at", "2026-01-09T21:10"));
        var journal = await Get($"{book}/journal");

        Assert.Contains("Friday 9 January 2026", journal);
        Assert.Contains("21:10", journal);
        Assert.Contains("written up", journal);
    }

    [Theory]
    [InlineData("", "", "a day and a time")]
    [InlineData("2026-01-09", "late", "a day and a time")]
    [InlineData("2999-01-01", "12:00", "a time that has been")]
    public async Task Time_of_the_work_that_cannot_be_is_refused(string day, string time, string expected)
    {
        var book = await workshop.StartBook("No such time");
        var answer = await Post($"{book}/when", ("back", "strip"), ("day", day), ("time", time));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(expected, await answer.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("/books/none/strip")]
    [InlineData("/books/..%2f..%2fetc/strip")]
    [InlineData("/books/one-file/part/no-such-part")]
    public async Task Address_of_nothing_is_not_found(string path)
    {
        await workshop.StartBook("One file");

        Assert.Equal(HttpStatusCode.NotFound, (await workshop.Client.GetAsync(path)).StatusCode);
    }

    private async Task<string> Get(string path) => await (await workshop.Client.GetAsync(path)).Content.ReadAsStringAsync();

    private async Task<int> BookCount() => Cover().Count(await Get("/"));

    private Task<HttpResponseMessage> Post(string path, params (string Name, string Value)[] fields) => workshop.Client.PostAsync(path, Form(fields));

    private static FormUrlEncodedContent Form(params (string Name, string Value)[] fields) =>
        new(fields.Select(f => new KeyValuePair<string, string>(f.Name, f.Value)));

    [GeneratedRegex("\\d\\d:\\d\\d</span>\\s*Exhaust pipe off")]
    private static partial Regex OffEntry();

    [GeneratedRegex("class=\"name\" href=\"/books/")]
    private static partial Regex Cover();

    [GeneratedRegex("(src|href)=\"(?!data:)|url\\((?!data:)")]
    private static partial Regex OutsideReference();
}
