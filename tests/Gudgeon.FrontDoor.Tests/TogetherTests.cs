using Gudgeon.Journal;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>The way back on a phone: a head in three stages by its picture, the oil traced round, gates closed and overridden. The engine and its figures are invented.</summary>
public sealed class TogetherTests(BrowserFixture browser) : IAsyncLifetime
{
    private const string Slug = "invented-four";
    private readonly Workshop workshop = new();

    public ValueTask InitializeAsync() => workshop.InitializeAsync();

    public ValueTask DisposeAsync() => workshop.DisposeAsync();

    /// <summary>A book made before the workshop opens it: the head is off with its ten bolts, the sump is off.</summary>
    private async Task<IPage> Begun(bool headOn)
    {
        var at = new DateTimeOffset(2026, 4, 1, 18, 0, 0, TimeSpan.Zero);
        var sent = 0;
        using (var shelf = new Bookshelf(workshop.BooksFolder))
        {
            var book = shelf.Start("Invented four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" }, new Sending("start", at, at, "test")).Value;
            Send(book, new TakeOff("sump.1", To: "floor"));
            Send(book, new TakeOff("head.1", [new OutLot(10, "M10x90", "", "bag 1")], "bench"));
            if (headOn)
                Send(book, new PutBack("head.1", Override: "begun elsewhere"));
        }

        return await browser.Open(workshop.Address, Phone);

        void Send(Book book, Request request)
        {
            var reply = book.Submit(new Sending($"s{++sent}", at.AddMinutes(sent), at.AddMinutes(sent), "test"), request);
            Assert.True(reply.Ok, string.Join(" ", reply.Refusals));
        }
    }

    [Fact]
    public async Task Ten_bolt_head_is_tightened_in_three_stages_by_its_picture()
    {
        var page = await Begun(headOn: true);
        await page.GotoAsync($"/books/{Slug}/tighten");
        await page.LookAt("20-tighten-list");
        await page.GotoAsync($"/books/{Slug}/tighten/j-head.1");
        await page.LookAt("21-tighten-empty");
        await page.GetByLabel("Stages, one a line").FillAsync("30 Nm\n60 Nm\n90 deg");
        await page.GetByLabel("State of the threads").FillAsync("oiled");
        await page.GetByLabel("new fasteners each time").CheckAsync();
        await page.GetByLabel("Book and page").FillAsync("own book, page 45");
        await Tap(page, "That is what it says");
        await page.GetByText("How they sit", new() { Exact = true }).ClickAsync();
        await Tap(page, "They sit so");
        await page.GetByText("Add a torque wrench", new() { Exact = true }).ClickAsync();
        await page.GetByLabel("What you call it").FillAsync("the long one");
        await page.GetByLabel("Lowest mark").FillAsync("40 Nm");
        await page.GetByLabel("Highest mark").FillAsync("210 Nm");
        await Tap(page, "Put it into the list");
        await page.GetByText("Some of them, new ones, how tight").ClickAsync();
        await page.GetByLabel("How many went in").FillAsync("10");
        await page.GetByLabel("New ones of them").FillAsync("10");
        await Tap(page, "They are in");

        for (var stage = 1; stage <= 3; stage++)
        {
            await page.GetByLabel("With the wrench").SelectOptionAsync("the long one");
            for (var number = 1; number <= 10; number++)
            {
                await Tap(page, $"Number {number} of the order done");
                if ((stage, number) is (1, 1) or (2, 5))
                    await page.LookAt($"22-tighten-stage-{stage}");
            }
        }

        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Final.");
        // 30 N·m is below a fifth of 210 N·m and below the scale's first mark: asked about, not refused.
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("wrench-range");
        await page.LookAt("23-tighten-final");
    }

    [Fact]
    public async Task Oil_is_traced_round_from_the_pump()
    {
        var page = await Begun(headOn: true);
        await page.GotoAsync($"/books/{Slug}/circuits?of=oil");
        await page.LookAt("24-circuits");
        await page.GetByLabel("Any port of the oil").SelectOptionAsync("oil-pump.1.out");
        await page.GetByRole(AriaRole.Button, new() { Name = "See where it leads" }).ClickAsync();
        await Assertions.Expect(page.Locator("svg.trace").First).ToContainTextAsync("Oil filter");
        await Assertions.Expect(page.Locator("svg.trace").First).ToContainTextAsync("back to");
        await page.LookAt("25-trace");
    }

    [Fact]
    public async Task Gate_is_closed_when_its_findings_are_clear_and_overridden_with_a_reason()
    {
        var page = await Begun(headOn: false);
        await page.GotoAsync($"/books/{Slug}/small");
        await page.GetByLabel("Where").FillAsync("bore 3");
        await Tap(page, "It went in");
        await page.LookAt("26-small");
        await page.GotoAsync($"/books/{Slug}/gate/GA2?part=sump.1");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("still-in");
        await page.LookAt("27-gate-open");
        await page.GotoAsync($"/books/{Slug}/small");
        await Tap(page, "It is out rag");
        await page.GotoAsync($"/books/{Slug}/gate/GA2?part=sump.1");
        foreach (var look in await page.GetByRole(AriaRole.Checkbox).AllAsync())
            await look.CheckAsync();
        await Tap(page, "I looked at what is ticked");
        await Tap(page, "Sump back on");
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Gate passed");

        await page.GotoAsync($"/books/{Slug}/gate/GA3?part=head.1");
        await page.GetByLabel("Why it is closed all the same").FillAsync("an invented reason");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Close it over") }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Gate overridden");
        await page.LookAt("28-gate-overridden");
    }

    private static async Task Tap(IPage page, string name)
    {
        var before = page.Url;
        await page.Locator("main").GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();
        await page.WaitForURLAsync(url => url != before && url.Contains("told=", StringComparison.Ordinal), new() { WaitUntil = WaitUntilState.DOMContentLoaded });
    }
}
