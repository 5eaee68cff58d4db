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
    /// <param name="sump">How the sump's fasteners sit; with it the sump is on and in its first stage.</param>
    private async Task<IPage> Begun(bool headOn, PatternChosen? sump = null, int sumpBolts = 0)
    {
        var at = new DateTimeOffset(2026, 4, 1, 18, 0, 0, TimeSpan.Zero);
        var sent = 0;
        using (var shelf = new Bookshelf(workshop.BooksFolder))
        {
            var book = shelf.Start("Invented four", new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" }, new Sending("start", at, at, "test")).Value;
            Send(book, sump is null ? new TakeOff("sump.1", To: "floor") : new TakeOff("sump.1", [new OutLot(sumpBolts, "M6x20", "", "bag 3")], "floor"));
            Send(book, new TakeOff("head.1", [new OutLot(10, "M10x90", "", "bag 1")], "bench"));
            if (headOn)
                Send(book, new PutBack("head.1", Override: "begun elsewhere"));
            if (sump is not null)
            {
                Send(book, new PutBack("sump.1", sumpBolts, Override: "begun elsewhere"));
                Send(book, new Tell(sump, new ProcedureSet("j-sump.1", [new Stage(StageSort.Torque, "10 Nm", 10)], "dry", false)));
            }
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

    [Fact]
    public async Task Wrench_with_something_on_its_end_is_set_to_the_reckoned_figure()
    {
        var page = await Begun(headOn: true);
        await page.GotoAsync($"/books/{Slug}/tighten/j-head.1");
        await page.GetByLabel("Stages, one a line").FillAsync("60 Nm");
        await page.GetByLabel("State of the threads").FillAsync("oiled");
        await Tap(page, "That is what it says");
        await page.GetByText("Some of them, new ones, how tight").ClickAsync();
        await page.GetByLabel("How many went in").FillAsync("10");
        await Tap(page, "They are in");
        await page.GetByText("Something on the end of the wrench", new() { Exact = true }).ClickAsync();
        await page.GetByLabel("Wrench, square to hand").FillAsync("300 mm");
        await page.GetByLabel("Extension, square to fastener").FillAsync("100 mm");
        await Tap(page, "Reckon the setting");
        // Lever: 60 · 300/(300 + 100) = 45.
        await Assertions.Expect(page.Locator(".setting")).ToContainTextAsync("45\u00A0N·m");
        await page.GetByText("Use the fasteners again? Length and pitch", new() { Exact = true }).ClickAsync();
        await page.GetByLabel("Lengths, hole by hole").FillAsync("92.1 92.9");
        await page.GetByLabel("Longest that goes in again").FillAsync("92.6 mm");
        await Tap(page, "Measured so");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("bolt-stretched");
        await page.LookAt("29-tighten-care");
    }

    [Theory]
    [InlineData("Grid", 10, 2)]
    [InlineData("Grid", 14, 2)]
    [InlineData("Rim", 18, 5)]
    public async Task Bolts_on_the_picture_do_not_overlap_and_are_large_enough_to_tap(string sort, int count, int rows)
    {
        var page = await Begun(headOn: true, new PatternChosen("j-sump.1", Enum.Parse<PatternSort>(sort), count, rows), count);
        await page.GotoAsync($"/books/{Slug}/tighten/j-sump.1");
        var boxes = await page.Locator("svg.bolts button").EvaluateAllAsync<float[][]>("all => all.map(b => { const r = b.getBoundingClientRect(); return [r.left, r.top, r.right, r.bottom]; })");
        Assert.Equal(count, boxes.Length);
        Assert.All(boxes, b => Assert.True(b[2] - b[0] >= 47.5 && b[0] >= 0 && b[2] <= 390, $"{b[0]} to {b[2]}"));
        for (var i = 0; i < boxes.Length; i++)
            for (var j = 0; j < i; j++)
                Assert.False(boxes[i][0] < boxes[j][2] && boxes[j][0] < boxes[i][2] && boxes[i][1] < boxes[j][3] && boxes[j][1] < boxes[i][3], $"holes {j + 1} and {i + 1} overlap");
        await page.LookAt($"30-bolts-{sort}-{count}");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(page.Locator("svg.bolts")).ToBeVisibleAsync();
        // On paper a number stands where the screen has a button.
        Assert.Equal(count, await page.Locator("svg.bolts").EvaluateAsync<int>("svg => [...svg.querySelectorAll('.paper')].filter(t => getComputedStyle(t).display !== 'none').length"));
        await page.ScreenshotAsync(new() { Path = Path.Combine(Screens, $"30-bolts-{sort}-{count}-print.png"), FullPage = true });
    }

    [Fact]
    public async Task Degree_wheel_lobe_and_shims_are_worked_out_from_what_is_read()
    {
        var page = await Begun(headOn: true);
        await page.GotoAsync($"/books/{Slug}/timing");
        await page.GetByLabel("Disc, turned forwards").FillAsync("322.5");
        await page.GetByLabel("Disc, turned backwards").FillAsync("41");
        await Tap(page, "Find top");
        // (322.5 + 401)/2 = 361.75: 1.75 past the zero of the disc.
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Top is at 1.75° of the disc");
        await page.GetByLabel("Lobe", new() { Exact = true }).FillAsync("inlet 1");
        await page.GetByLabel("Lift", new() { Exact = true }).FillAsync("1 mm");
        await page.GetByLabel("Opening, degrees after top").FillAsync("-2");
        await page.GetByLabel("Closing, degrees after top").FillAsync("258");
        await page.GetByLabel("Centre on the card, if there is one").FillAsync("108");
        await Tap(page, "Read it");
        await page.GetByLabel("Teeth on the crank").FillAsync("18");
        await Tap(page, "Reckon it");
        // 128 against 108; 360/18 = 20 to the tooth.
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("1 tooth late");
        await page.LookAt("31-timing");

        await page.GetByText("Limits of your book, and the shims that can be had").ClickAsync();
        await page.GetByLabel("Least", new() { Exact = true }).FillAsync("0.15");
        await page.GetByLabel("Most", new() { Exact = true }).FillAsync("0.25");
        await page.GetByLabel("Book and page").FillAsync("invented book");
        await Tap(page, "That is the limit");
        await page.GetByText("Limits of your book, and the shims that can be had").ClickAsync();
        await page.GetByLabel("Thinnest shim").FillAsync("2");
        await page.GetByLabel("Thickest").FillAsync("3");
        await page.GetByLabel("Step").FillAsync("0.05");
        await Tap(page, "These can be had");
        await page.GetByLabel("Clearance inlet valve 1.1").FillAsync("0.10");
        await page.GetByLabel("Shim inlet valve 1.1").FillAsync("2.50");
        await Tap(page, "Keep what I typed");
        // 0.10 + 2.50 − 0.20 = 2.40, the middle of the limits.
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("buy 2.4\u00A0mm");
        await page.LookAt("32-lash");
        await page.GotoAsync($"/books/{Slug}/buy");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("shim 2.4 mm");
        await Tap(page, "At hand shim 2.4 mm");
        await page.LookAt("33-buy");
    }

    [Fact]
    public async Task First_start_goes_over_its_open_gate_with_a_reason_and_keeps_what_was_seen()
    {
        var page = await Begun(headOn: true);
        await page.GotoAsync($"/books/{Slug}/first-start");
        await Tap(page, "Done filter");
        foreach (var look in await page.GetByRole(AriaRole.Checkbox).AllAsync())
            await look.CheckAsync();
        await Tap(page, "I looked at what is ticked");
        await page.GetByLabel("Why it is closed all the same").FillAsync("an invented reason");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Start over") }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Behind you.");
        await page.GetByLabel("Pressure, temperature, what was seen").First.FillAsync("3.4 bar at 900 rpm");
        await Tap(page, "Done seconds");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Noted: 3.4 bar at 900 rpm");
        await page.GetByLabel("From", new() { Exact = true }).FillAsync("2026-05-01");
        await page.GetByLabel("Hours a week").FillAsync("2");
        await Tap(page, "Plan the running in");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Reminders for your calendar");
        await page.LookAt("34-first-start");
        await page.GetByText("After running in: closing the job").ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("reading-missing");
        await page.GetByLabel("Why it is closed all the same").FillAsync("sold as it is");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Close it over") }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Gate overridden: closing the job");
    }

    [Fact]
    public async Task What_stays_off_is_an_exception_with_its_reason_on_the_built_sheet()
    {
        var page = await Begun(headOn: true);
        await page.GotoAsync($"/books/{Slug}/all-back");
        await page.GetByText("It stays so: sump").First.ClickAsync();
        await page.GetByLabel("Because").First.FillAsync("it goes to a shelf");
        await page.GetByRole(AriaRole.Button, new() { Name = "It stays so" }).First.ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("It stays so, because it goes to a shelf");
        await page.LookAt("35-all-back");
        await page.GotoAsync($"/books/{Slug}/built");
        await Assertions.Expect(page.Locator("table.built")).ToContainTextAsync("it goes to a shelf");
        await page.LookAt("36-built");
    }

    private static async Task Tap(IPage page, string name)
    {
        var before = page.Url;
        await page.Locator("main").GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();
        await page.WaitForURLAsync(url => url != before && url.Contains("told=", StringComparison.Ordinal), new() { WaitUntil = WaitUntilState.DOMContentLoaded });
    }
}
