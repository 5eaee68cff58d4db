using Gudgeon.Journal;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>Measuring as a person does it with a phone in one hand. The engine, its readings and its limits are invented.</summary>
public sealed class MeasureTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    // Invented readings; taper 0.013 and out-of-round 0.012 worked by hand as differences (common practice, no standard defines them).
    private static readonly string[] bore = ["86.012", "86,004", "+25", "86.013", "86.018", "86.014"];

    [Fact]
    public async Task Who_reads_is_kept_and_carried_to_the_next_spot()
    {
        var book = await workshop.StartBook("read by two", sender: Guid.CreateVersion7().ToString());
        var sent = await workshop.Client.PostAsync($"{book}/measure/read", new FormUrlEncodedContent(
        [
            new("sender", "read by Anna"), new("part", "crank.1"), new("characteristic", "main-journal"), new("place", "1"), new("spot", "front.upright"), new("reading", "57.990"), new("by", "Anna & Co"),
        ]));
        var next = await workshop.Client.GetStringAsync(sent.Headers.Location);
        Assert.Contains("value=\"Anna &amp; Co\"", next, StringComparison.Ordinal);
        Assert.Contains(",57.990,57.99,mm,,,,Anna & Co,", await workshop.Client.GetStringAsync($"{book}/measure.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whole_bore_sheet_is_typed_by_keypad()
    {
        var page = await Open("bore by keypad", Phone);
        await page.GotoAsync(page.Url.Replace("/strip", "/instruments", StringComparison.Ordinal));
        await page.LookAt("measure-01-instruments-empty");
        await page.GetByLabel("Sort").SelectOptionAsync("bg2");
        await page.GetByLabel("What you call it").FillAsync("bore gauge");
        await page.GetByLabel("U of one reading").FillAsync("0.006");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Instrument bore gauge");
        await page.LookAt("measure-02-instruments");

        await Limit(page, "bore", "85.99", "86.02");
        await Limit(page, "bore-taper", null, "0.05");
        await page.LookAt("measure-03-limits");

        await page.GetByRole(AriaRole.Link, new() { Name = "Measure", Exact = true }).ClickAsync();
        await page.LookAt("measure-04-list");
        await page.GetByRole(AriaRole.Link, new() { Name = "Cylinder block" }).ClickAsync();
        await page.LookAt("measure-05-sheet-empty");
        await page.GetByRole(AriaRole.Link, new() { Name = "Bore diameter of bore 1" }).ClickAsync();
        await page.GetByText("Set the gauge").ClickAsync();
        await page.GetByLabel("Set to, mm").FillAsync("86.000");
        await page.GetByLabel("On", new() { Exact = true }).FillAsync("setting ring");
        await page.GetByRole(AriaRole.Button, new() { Name = "It is set" }).ClickAsync();
        await Assertions.Expect(page.Locator("#aloud")).ToContainTextAsync("set to 86");
        await page.LookAt("measure-06-keypad");

        foreach (var reading in bore)
        {
            foreach (var key in reading)
                await page.Locator(".keys button", new() { HasTextString = key.ToString() }).First.ClickAsync();
            var before = page.Url;
            await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
            await page.WaitForURLAsync(url => url != before);
            await Assertions.Expect(page.Locator("#aloud")).ToContainTextAsync("Bore 1, bore diameter");
            await Assertions.Expect(page.Locator("#reading")).ToHaveValueAsync("");
            if (reading == bore[2])
            {
                await Assertions.Expect(page.Locator("#aloud")).ToContainTextAsync("86.025");
                await page.LookAt("measure-07-instant-verdict");
            }
        }

        await page.GetByRole(AriaRole.Link, new() { Name = "The whole sheet" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure", Exact = true }).ClickAsync();
        await page.LookAt("measure-08-list-begun");
        await page.GetByRole(AriaRole.Link, new() { Name = "Cylinder block" }).ClickAsync();
        await Assertions.Expect(page.Locator("#bore-taper-1")).ToContainTextAsync("0.013");
        await Assertions.Expect(page.Locator("#bore-taper-1")).ToContainTextAsync("within limits");
        await Assertions.Expect(page.Locator("#bore-roundness-1")).ToContainTextAsync("0.012");
        await Assertions.Expect(page.Locator("#bore-1")).ToContainTextAsync("too close to call");
        await Assertions.Expect(page.Locator("#bore-1 figure.chart svg").First).ToHaveAttributeAsync("aria-label", "Bore 1: top across 8, along 0; middle across 21, along 9; bottom across 14, along 10 micrometres over the smallest");
        await page.LookAt("measure-09-sheet");
        await page.Locator("#bore-taper-1 summary", new() { HasTextString = "Working" }).ClickAsync();
        await page.Locator("#bore-taper-1 summary", new() { HasTextString = "Uncertainty budget" }).ClickAsync();
        await page.LookAt("measure-10-working");
    }

    [Fact]
    public async Task Reading_works_without_script_and_keeps_what_was_refused()
    {
        var page = await Open("no script", Phone, script: false);
        await page.GotoAsync(page.Url.Replace("/strip", "/measure/crank.1/crank-end-float/1", StringComparison.Ordinal));
        await page.GetByLabel("Crank end float, mm").FillAsync("three tenths");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync("Type it with its unit");
        await Assertions.Expect(page.Locator("#reading")).ToHaveValueAsync("three tenths");
        await page.Locator("#reading").FillAsync("0.15");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator("#aloud")).ToContainTextAsync("Crankshaft, crank end float: 0.15");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("likely good");
        await page.ScreenshotAsync(new() { Path = Path.Combine(Screens, "measure-12-thumb-390.png"), FullPage = true });
    }

    [Fact]
    public async Task Refused_reading_stays_in_its_box()
    {
        var page = await Open("refused", Phone);
        await page.GotoAsync(page.Url.Replace("/strip", "/measure/crank.1/crank-end-float/1", StringComparison.Ordinal));
        await page.Locator("#reading").FillAsync("three tenths");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync("Type it with its unit");
        await page.LookAt("measure-11-refused");
    }

    [Fact]
    public async Task Pictures_show_journals_clearances_and_a_face()
    {
        var page = await Open("pictures", Phone);
        var book = page.Url.Split("/strip")[0];
        using (var shelf = new Bookshelf(workshop.BooksFolder))
        {
            var requests = new List<Request>
            {
                new Tell(
                    new InstrumentKept("mic", "micrometer", "mic", "mm", 0.001, 0.004),
                    new InstrumentKept("di", "dial gauge", "di", "mm", 0.001, 0.004),
                    new LimitSet("main-journal", [], LimitState.Service, 49.975, 50.000, null, "mm", "", "invented book", "7"),
                    new LimitSet("piston-clearance", [], LimitState.Service, 0.030, 0.070, null, "mm", "", "invented book", "9")),
            };
            for (var i = 1; i <= 4; i++)
            {
                foreach (var (spot, over) in new[] { ("front.upright", 0), ("front.level", 2), ("rear.upright", -3), ("rear.level", 1) })
                    requests.Add(new TakeReading(new Slot("crank.1", "main-journal", i, spot), FormattableString.Invariant($"{49.986 - 0.004 * i + 0.001 * over:0.000}"), "mic"));
                requests.Add(new TakeReading(new Slot("block.1", "bore", i, "bottom.across"), FormattableString.Invariant($"{86.010 + 0.006 * i:0.000}"), "mic"));
                requests.Add(new TakeReading(new Slot($"piston.{i}", "piston-skirt", 1, "one"), "85.960", "mic"));
            }

            foreach (var (row, r) in new[] { ("near", 0), ("middle", 1), ("far", 2) })
                for (var c = 1; c <= 5; c++)
                    requests.Add(new TakeReading(new Slot("block.1", "deck-face", 1, $"{row}.g{c}"), FormattableString.Invariant($"{0.02 * Math.Sin(c) + 0.01 * r * (3 - c):0.000}"), "di"));
            var reply = shelf.Open(Path.GetFileName(new Uri(book).AbsolutePath)).Value.Submit(new Sending("pictures-all", DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch, "test"), requests);
            Assert.True(reply.Ok, string.Join(" ", reply.Refusals));
            for (var day = 1; day <= 3; day++)
            {
                var at = DateTimeOffset.UnixEpoch.AddDays(20 * day);
                Assert.True(shelf.Open(Path.GetFileName(new Uri(book).AbsolutePath)).Value.Submit(new Sending($"pictures-{day}", at, at, "test"),
                    [new TakeReading(new Slot("crank.1", "main-journal", 1, "front.upright"), FormattableString.Invariant($"{49.982 - 0.001 * day:0.000}"), "mic"), new TakeReading(new Slot("crank.1", "main-journal", 1, "rear.level"), "49.983", "mic")]).Ok);
            }
        }

        await page.GotoAsync($"{book}/measure/crank.1");
        await page.LookAt("measure-15-journals");
        await page.Locator("details.place summary", new() { HasTextString = "Main 1" }).First.ClickAsync();
        if (!await page.Locator("#main-journal-1").IsVisibleAsync())
            await page.Locator("details.place summary", new() { HasTextString = "Main 1" }).First.ClickAsync();
        await page.Locator("#main-journal-1 summary", new() { HasTextString = "Over time" }).ClickAsync();
        await Assertions.Expect(page.Locator("#main-journal-1 figure.chart").Last).ToBeVisibleAsync();
        await page.LookAt("measure-15b-over-time");
        await page.GetByLabel("Machined or renewed since?").First.FillAsync("ground 0.25 under");
        await page.GetByRole(AriaRole.Button, new() { Name = "Earlier readings no longer count" }).First.ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("set aside: ground 0.25 under");
        await page.GotoAsync($"{book}/measure/piston.2");
        await page.LookAt("measure-16-clearances");
        await page.GotoAsync($"{book}/measure/block.1#deck-face-1");
        await page.LookAt("measure-17-face");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.ScreenshotAsync(new() { Path = Path.Combine(Screens, "measure-18-print.png"), FullPage = true });
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        await page.GotoAsync($"{book}/measure");
        var table = await page.APIRequest.GetAsync($"{book}/measure.csv");
        var text = await table.TextAsync();
        Assert.StartsWith("entry,at,part,characteristic,place,spot,reading,value,unit,instrument,part_c,gauge_c,by,set_aside\r\n", text, StringComparison.Ordinal);
        Assert.Equal(46, text.Count(c => c == '\n'));
        await page.GetByText("Take readings from a table").ClickAsync();
        await page.GetByLabel("Rows with a heading").FillAsync("part;characteristic;place;spot;reading;instrument\ncrank.1;crankpin;2;front.throw;44,98;mic\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record the table" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Crankpin 2, crankpin diameter, front, through the throw: 44.98");
    }

    [Fact]
    public async Task Slip_is_asked_at_once_and_a_column_is_pasted()
    {
        var page = await Open("slip", Desk);
        await page.GotoAsync(page.Url.Replace("/strip", "/measure/block.1/bore/2", StringComparison.Ordinal));
        await page.GetByText("Paste a column").ClickAsync();
        await page.GetByLabel("One reading a line").FillAsync("86.010\n86.012\n86.011\n86.512");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record the column" }).ClickAsync();
        await Assertions.Expect(page.Locator(".ask")).ToContainTextAsync("a turn of the thimble may have been misread");
        await page.LookAt("measure-13-doubt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Set it aside" }).ClickAsync();
        await Assertions.Expect(page.Locator(".ask")).ToHaveCountAsync(0);
        await page.LookAt("measure-14-set-aside");
    }

    [Fact]
    public async Task Reading_that_can_be_meant_in_several_ways_is_settled_with_a_button()
    {
        var page = await Open("two thou over", Phone);
        var book = page.Url.Split("/strip")[0];
        await Limit(page, "bore", "85.99", "86.06");
        await page.GotoAsync($"{book}/measure/block.1/bore/1");
        await page.Locator("#reading").FillAsync("two thou over");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync("which can be read in 2 ways");
        // The keys are there again after a refusal: the part of the page that was put in place is dressed.
        await Assertions.Expect(page.Locator(".keys button")).ToHaveCountAsync(16);
        await page.LookAt("measure-19-which-is-meant");
        await page.GetByRole(AriaRole.Button, new() { Name = "86.0408" }).ClickAsync();
        await Assertions.Expect(page.Locator("#aloud")).ToContainTextAsync("86.0408");
        await Assertions.Expect(page.Locator(".refusal")).ToHaveCountAsync(0);
        // 3.3874 in are 86.03996 mm (25.4 mm to the inch, exact): typed without the unit among millimetres, it is asked about and kept.
        await page.Locator("#reading").FillAsync("3.3874");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".ask")).ToContainTextAsync("it may be in inches");
        await page.LookAt("measure-20-was-it-inches");
        await page.GetByRole(AriaRole.Button, new() { Name = "It was 86.03996" }).ClickAsync();
        await Assertions.Expect(page.Locator(".ask")).ToHaveCountAsync(0);
        await page.GotoAsync($"{book}/measure/block.1/bore/1?spot=top.along");
        await page.GetByText("Readings of this spot").ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("typed \"3.3874\", set aside: meant as 86.03996");
    }

    [Fact]
    public async Task What_does_not_apply_is_said_once_with_a_reason()
    {
        var page = await Open("not applicable", Phone);
        var book = page.Url.Split("/strip")[0];
        await page.GotoAsync($"{book}/measure/crank.1");
        await page.GetByText("Something here does not apply").ClickAsync();
        await page.GetByLabel("What is not measured here").SelectOptionAsync("crank-end-float");
        await page.GetByLabel("Because").FillAsync("thrust washers are new");
        await page.GetByRole(AriaRole.Button, new() { Name = "It does not apply" }).ClickAsync();
        await Assertions.Expect(page.Locator("section[aria-label='Does not apply to this engine']")).ToContainTextAsync("Thrust washers are new");
        await page.LookAt("measure-21-not-applicable");
        await page.GetByRole(AriaRole.Button, new() { Name = "Strike out Crank end float" }).Or(page.GetByRole(AriaRole.Button, new() { Name = "Strike out crank end float" })).ClickAsync();
        await Assertions.Expect(page.Locator("section[aria-label='Does not apply to this engine']")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Sums_at_hand_are_reached_from_their_sheets()
    {
        var page = await Open("sums at hand", Phone);
        var book = page.Url.Split("/strip")[0];
        await page.GotoAsync($"{book}/measure/block.1");
        await page.GetByRole(AriaRole.Link, new() { Name = "Roundness of a section" }).ClickAsync();
        await page.LookAt("measure-22-roundness-empty");
        // Invented readings; zone 9.000 µm and 9.789 µm by least squares recomputed elsewhere with SciPy (least_squares, and successive linear programmes by HiGHS).
        await page.GetByLabel("Readings at equal steps").FillAsync("0 3 5 2 -1 -4 -2 1 4 2 -3 -5");
        await page.GetByLabel("Radius they are read from").FillAsync("43");
        await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("9.00");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("9.79");
        await page.LookAt("measure-23-roundness");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it with the cylinder block" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("by the narrowest ring");

        // ISO 286-2: 36 H7/p6 is 36.000 to 36.025 and 36.026 to 36.042, interference 1 to 42 µm; seen in two public transcriptions.
        await page.GotoAsync($"{book}/limits?of=liner-housing");
        await page.GetByRole(AriaRole.Link, new() { Name = "Limits of a fit by ISO 286" }).ClickAsync();
        await page.GetByLabel("Size, mm").FillAsync("36");
        await page.GetByLabel("Hole and shaft").FillAsync("H7/p6");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the limits" }).ClickAsync();
        await Assertions.Expect(page.Locator(".answer")).ToContainTextAsync("interference of 0.001 to 0.042");
        await page.LookAt("measure-24-fit");
        await page.GetByRole(AriaRole.Link, new() { Name = "Use as a limit of the hole" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("At most")).ToHaveValueAsync("36.025 mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Set the limit" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("new: 36 to 36.025");
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("ISO 286-2:2010, 36 H7");
    }

    private async Task<IPage> Open(string title, ViewportSize size, bool script = true)
    {
        using var shelf = new Bookshelf(workshop.BooksFolder);
        var started = shelf.Start(title, new Dictionary<string, string> { ["layout"] = "inline", ["n"] = "4" }, new Sending(title, DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch, "test"));
        var page = await browser.Open(workshop.Address, size, script: script);
        await page.GotoAsync($"/books/{started.Value.Name}/strip");
        return page;
    }

    private static async Task Limit(IPage page, string of, string? low, string? high)
    {
        await page.GotoAsync($"{string.Join('/', page.Url.Split('/').Take(5))}/limits?of={of}");
        if (low is not null)
            await page.GetByLabel("At least").FillAsync(low);
        if (high is not null)
            await page.GetByLabel("At most").FillAsync(high);
        await page.GetByLabel("Book or sheet").FillAsync("invented book");
        await page.GetByLabel("Page", new() { Exact = true }).FillAsync("12");
        await page.GetByRole(AriaRole.Button, new() { Name = "Set the limit" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("limit, in service");
    }
}
