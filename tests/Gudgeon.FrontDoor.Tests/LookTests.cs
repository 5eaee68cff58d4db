using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>Pages under hard light: night, a tablet, letters twice as large, no script, on paper, other layouts.</summary>
public sealed class LookTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    private static readonly string[] BookPages = ["strip", "account", "refit", "findings", "journal", "book", "all-back", "otherwise", "part/cam-cover.1", "gate/GA2"];
    private static readonly string[] LiftPages = ["lift", "lift/mass", "lift/rig", "lift/crane", "lift/place", "lift/stand"];

    [Fact]
    public async Task Mishap_page_reads_well()
    {
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync("/nowhere");
        await page.LookAt("mishap");
    }

    [Fact]
    public async Task Light_chosen_on_the_page_stays_chosen()
    {
        var page = await browser.Open(workshop.Address, Desk);
        await page.GotoAsync("/nowhere");
        await page.GetByRole(AriaRole.Button, new() { Name = "Night" }).ClickAsync();
        await page.GotoAsync("/nowhere");

        Assert.Equal("night", await page.Locator("html").GetAttributeAsync("data-light"));
        await page.LookAt("mishap-chosen-night");
    }

    [Fact]
    public async Task Name_on_the_buy_list_has_the_width_of_the_phone_and_not_what_two_buttons_leave()
    {
        await workshop.Client.PostAsync("/demo", new FormUrlEncodedContent([]));
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync("/books/demo/buy");
        var widths = await page.EvaluateAsync<double[]>("() => [...document.querySelectorAll('.rows > li .name')].map(n => n.parentElement.clientWidth / document.querySelector('main').clientWidth)");
        Assert.NotEmpty(widths);
        Assert.All(widths, width => Assert.True(width > 0.8, $"a name has {width:P0} of the page"));
    }

    [Theory]
    [InlineData("vee", "6", false)]
    [InlineData("flat", "4", true)]
    [InlineData("single", "1", false)]
    public async Task Every_page_of_another_layout_holds_at_night_and_on_a_tablet(string layout, string cylinders, bool night)
    {
        var page = await browser.Open(workshop.Address, Tablet, night);
        var book = await Long(layout, cylinders);
        await workshop.Client.PostAsync($"{book}/off", Form(("back", "strip"), ("part", "exhaust-pipe.1")));
        foreach (var path in BookPages)
        {
            await page.GotoAsync($"{book}/{path}");
            await page.LookAt($"{layout}-{path.Replace('/', '-')}");
        }
    }

    [Fact]
    public async Task Letters_twice_as_large_stay_on_the_phone()
    {
        await using var large = await browser.LaunchWithLargeLetters();
        var page = await large.NewPageAsync(new() { BaseURL = workshop.Address.ToString(), ViewportSize = Phone });
        var book = await Long("inline", "4");
        foreach (var path in BookPages.Concat(LiftPages))
        {
            await page.GotoAsync($"{book}/{path}");
            await page.LookAt($"large-{path.Replace('/', '-')}");
        }
    }

    [Fact]
    public async Task Work_goes_on_without_script()
    {
        var page = await browser.Open(workshop.Address, Phone, script: false);
        var book = await Long("inline", "4");
        await page.GotoAsync($"{book}/strip");
        await page.GetByRole(AriaRole.Button, new() { Name = "Took it off exhaust pipe" }).ClickAsync();

        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Exhaust pipe off");
    }

    [Fact]
    public async Task Keyboard_alone_takes_a_part_off()
    {
        var page = await browser.Open(workshop.Address, Desk);
        var book = await Long("inline", "4");
        await page.GotoAsync($"{book}/strip");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#work")).ToBeFocusedAsync();
        for (var i = 0; i < 4 && !await IsOnTookItOff(page); i++)
            await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("off");
    }

    [Fact]
    public async Task Book_on_paper_carries_no_buttons()
    {
        var page = await browser.Open(workshop.Address, Desk);
        var book = await Long("inline", "4");
        await workshop.Client.PostAsync($"{book}/off", Form(("back", "strip"), ("part", "exhaust-pipe.1")));
        await page.GotoAsync($"{book}/book");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.PdfAsync(new() { Path = Path.Combine(Screens, "book-page.pdf"), Format = "A4", PreferCSSPageSize = true });
        await page.GotoAsync($"{book}/strip");
        await page.PdfAsync(new() { Path = Path.Combine(Screens, "strip-page.pdf"), Format = "Letter", PreferCSSPageSize = true });

        foreach (var button in await page.Locator("button, .verbs, .say").AllAsync())
            Assert.False(await button.IsVisibleAsync());
    }

    private static async Task<bool> IsOnTookItOff(IPage page) =>
        await page.EvaluateAsync<bool>("() => document.activeElement.textContent.startsWith('Took')");

    /// <summary>The page that is open is brought into sight in a row that slides on a phone; at a desk nothing may scroll the work away.</summary>
    [Theory]
    [InlineData("journal")]
    [InlineData("limits")]
    public async Task Page_opens_at_its_top_and_shows_where_one_is(string at)
    {
        var book = await Long("inline", "4");
        foreach (var size in (ViewportSize[])[Phone, Desk])
        {
            var page = await browser.Open(workshop.Address, size);
            await page.GotoAsync($"{book}/{at}");
            await Assertions.Expect(page.Locator("h1")).ToBeInViewportAsync();
            if (size == Phone)
                await Assertions.Expect(page.Locator(".shelf a[aria-current]")).ToBeInViewportAsync();
            Assert.Equal(0, await page.EvaluateAsync<int>("() => Math.round(window.scrollY)"));
        }
    }

    private Task<string> Long(string layout, string cylinders) => workshop.StartBook($"An engine with a name as long as people give, {layout}", layout, cylinders, Guid.CreateVersion7().ToString());

    private static FormUrlEncodedContent Form(params (string Name, string Value)[] fields) =>
        new(fields.Select(f => new KeyValuePair<string, string>(f.Name, f.Value)));
}
