using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>The way to a part, what to do while waiting and the days, with one thumb on a phone.</summary>
public sealed class PlanPageTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    [Fact]
    public async Task Way_to_the_crank_is_read_and_its_first_step_recorded_with_one_tap()
    {
        var book = await workshop.StartBook("Invented four", sender: Guid.CreateVersion7().ToString());
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/part/crank.1");
        await page.GetByRole(AriaRole.Link, new() { Name = "Get at it: the least work" }).ClickAsync();
        await page.LookAt("reach");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("No way takes less work: proven");

        await page.Locator("button.do").First.ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Get at the crankshaft");
    }

    [Fact]
    public async Task Why_not_names_the_stand_and_its_day()
    {
        var book = await workshop.StartBook("Invented four", sender: Guid.CreateVersion7().ToString());
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/plan");
        await page.GetByText("Equipment or a helper comes or goes").ClickAsync();
        await page.GetByLabel("What", new() { Exact = true }).FillAsync("engine stand");
        await page.GetByLabel("There from").FillAsync("2099-11-13T17:00");
        await page.GetByText("Equipment or a helper comes or goes").Locator("..").GetByRole(AriaRole.Button, new() { Name = "Tell" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Engine stand: there from", new() { IgnoreCase = true, Timeout = 20_000 });
        await page.GotoAsync($"{book}/reach?what=crank.1");
        await page.LookAt("reach-why");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Needs the engine stand, due Fri 13 Nov");
    }

    [Fact]
    public async Task Rules_that_contradict_each_other_are_named_and_the_entry_behind_them_struck_out_with_one_tap()
    {
        var answers = new Dictionary<string, string> { ["sender"] = "clash", ["title"] = "Invented flat four", ["layout"] = "flat", ["n"] = "4", ["vt"] = "dohc", ["case"] = "split", ["drive"] = "belt" };
        var book = (await workshop.Client.PostAsync("/start", new FormUrlEncodedContent(answers))).Headers.Location!.OriginalString.Replace("/strip", "", StringComparison.Ordinal);
        await workshop.Client.PostAsync($"{book}/learned", new FormUrlEncodedContent(new Dictionary<string, string> { ["target"] = "case-half.2", ["need"] = "rod-cap.1" }));
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/reach?what=rod-cap.1");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("these rules contradict each other");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("take off the rod cap 1 before the right case half");
        await page.LookAt("reach-clash");
        await page.GetByRole(AriaRole.Button, new() { Name = "Strike out Rod cap 1 first" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Struck out", new() { Timeout = 20_000 });
        await Assertions.Expect(page.Locator("main")).Not.ToContainTextAsync("contradict");
    }

    [Fact]
    public async Task Wait_and_calendar_fit_a_phone()
    {
        var book = await workshop.StartBook("Invented four", sender: Guid.CreateVersion7().ToString());
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/plan");
        await page.LookAt("plan");
        await page.GetByLabel("Hours at hand").FillAsync("0.5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Ask" }).ClickAsync();
        await Assertions.Expect(page.Locator(".rows").First).ToContainTextAsync("about");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep to this order" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Plan kept", new() { Timeout = 20_000 });
        foreach (var summary in await page.Locator("main details > summary").AllAsync())
            await summary.ClickAsync();
        await page.LookAt("plan-open");

        var ics = await workshop.Client.GetAsync($"{book}/plan.ics");
        Assert.Equal("text/calendar", ics.Content.Headers.ContentType!.MediaType);
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", await ics.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Own_minutes_and_a_lead_time_are_told_with_one_thumb()
    {
        var book = await workshop.StartBook("Invented four", sender: Guid.CreateVersion7().ToString());
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/plan");
        await page.GetByText("Your own minutes for a job").ClickAsync();
        await page.GetByLabel("Part, line or operation").FillAsync("starter");
        await page.GetByLabel("Minutes it takes you").FillAsync("25");
        await page.GetByText("Your own minutes for a job").Locator("..").GetByRole(AriaRole.Button, new() { Name = "Tell" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("25 minutes", new() { Timeout = 20_000 });
        await page.GetByText("Something is on order, or at a shop").ClickAsync();
        await page.GetByLabel("Part that waits for it").FillAsync("head gasket");
        await page.GetByLabel("Days from now, at best").FillAsync("3");
        await page.GetByLabel("Most likely").FillAsync("5");
        await page.GetByLabel("At worst").FillAsync("10");
        await page.LookAt("plan-lead");
        await page.GetByText("Something is on order, or at a shop").Locator("..").GetByRole(AriaRole.Button, new() { Name = "Tell" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("3 to 10 days away, most likely 5", new() { Timeout = 20_000 });
    }
}
