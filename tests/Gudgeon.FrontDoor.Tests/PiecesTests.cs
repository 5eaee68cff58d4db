using System.Text.RegularExpressions;
using Gudgeon.Journal;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>What a line comes to, seen before it is recorded: pieces tapped away, doubts settled, with script, without, and while the laptop is away.</summary>
public sealed class PiecesTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    private const string Line = "thermostat housing off, two M6 by 22, bag 12, gasket stuck to the head";

    /// <summary>A piece that was tapped away.</summary>
    private const string Away = "label.piece:not(:has(:checked))";

    private static ILocator Box(IPage page) => page.GetByRole(AriaRole.Textbox, new() { Name = "Say what you did" });

    private static ILocator Piece(IPage page, string words) => page.Locator("label.piece", new() { HasText = words });

    public static TheoryData<string> Sizes => ["phone", "desk"];

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Line_is_seen_in_pieces_while_it_is_typed_and_a_piece_is_tapped_away(string size)
    {
        var book = await workshop.StartBook($"Pieces on a {size}");
        var page = await browser.Open(workshop.Address, size == "phone" ? Phone : Desk);
        await page.GotoAsync($"{book}/strip");
        await page.LookAt($"pieces-closed-{size}");
        await Box(page).ClickAsync();
        var bottom = await Foot(page);
        await Box(page).PressSequentiallyAsync(Line, new() { Delay = 5 });
        await Assertions.Expect(Piece(page, "Thermostat: off")).ToBeVisibleAsync();
        await Assertions.Expect(Piece(page, "gasket")).ToHaveCountAsync(1);
        Assert.Equal(bottom, await Foot(page));
        await Assertions.Expect(page.Locator(".say [role=status]")).ToContainTextAsync("3 pieces, 0 questions");

        await Piece(page, "undone").ClickAsync();
        await Assertions.Expect(page.Locator(Away)).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(Away).GetByText("Not this: kept as a question")).ToBeVisibleAsync();
        await page.LookAt($"pieces-{size}");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true })).ToBeInViewportAsync(new() { Ratio = 1 });

        // The line goes on: what was tapped away stays away.
        await Box(page).PressSequentiallyAsync(", flurble wotsit", new() { Delay = 5 });
        await Assertions.Expect(page.Locator(".comes")).ToContainTextAsync("wotsit");
        await Assertions.Expect(page.Locator(Away)).ToContainTextAsync("undone");
        Assert.Equal(bottom, await Foot(page));

        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Thermostat off");
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("left out before it was recorded");
        await Assertions.Expect(page.Locator(".echo li", new() { HasText = "fasteners out" })).ToHaveCountAsync(0);
        await page.LookAt($"pieces-told-{size}");
        await page.GotoAsync($"{book}/journal");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync($"You said: {Line}");
    }

    [Fact]
    public async Task Doubt_is_settled_by_tapping_one_of_its_readings()
    {
        var book = await workshop.StartBook("Pieces in doubt");
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/strip");
        await Box(page).FillAsync("deck one three tenths down");
        await Assertions.Expect(page.Locator("fieldset.doubt")).ToHaveCountAsync(1);
        await page.LookAt("pieces-doubt");
        await Box(page).FillAsync("starter grumpled wobblewise off");
        await Assertions.Expect(page.Locator("fieldset.offered")).ToContainTextAsync("Not sure of this");
        await page.Locator("fieldset.offered label", new() { HasText = "Starter: off" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Starter off");
        await page.GotoAsync($"{book}/findings");
        await Assertions.Expect(page.Locator("main")).Not.ToContainTextAsync("Open questions");
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task What_is_only_offered_is_taken_in_one_go_before_or_after_it_is_recorded(string size)
    {
        const string Odd = "off of there wobbled the starter, off of there wobbled the alternator";
        var book = await workshop.StartBook($"Pieces offered {size}");
        var page = await browser.Open(workshop.Address, size == "phone" ? Phone : Desk);
        await page.GotoAsync($"{book}/strip");
        await Box(page).FillAsync(Odd);
        await Assertions.Expect(page.Locator("fieldset.offered")).ToContainTextAsync("Alternator: off");
        await page.LookAt($"pieces-offered-{size}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Was this meant?");
        await Assertions.Expect(page.Locator(".echo li", new() { HasText = "Starter off" })).ToHaveCountAsync(0);
        await page.LookAt($"pieces-offered-told-{size}");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Yes to both") }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo li", new() { HasText = "Alternator off" })).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("recorded at once from now on");
        await page.LookAt($"pieces-offered-taken-{size}");

        // Another way, taken before it is recorded.
        await page.GotoAsync($"{book}/strip");
        await Box(page).FillAsync("up and away jumped the water pump, up and away jumped the thermostat");
        await page.Locator("fieldset.offered label", new() { HasText = "All of these are so" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo li", new() { HasText = "Thermostat off" })).ToHaveCountAsync(1);
        await page.GotoAsync($"{book}/findings");
        await Assertions.Expect(page.Locator("main")).Not.ToContainTextAsync("Open questions");
    }

    [Fact]
    public async Task Reading_that_is_said_shows_its_spot_and_is_on_the_sheet_once_recorded()
    {
        var book = await workshop.StartBook("Pieces of readings");
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/strip");
        await Box(page).FillAsync("bore one top across eighty six oh one two, bore two 86.02");
        await Assertions.Expect(Piece(page, "on the sheet: bore 1, bore diameter, top, across the crank")).ToHaveCountAsync(1);
        await page.LookAt("pieces-reading");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("Bore 1, bore diameter, top, across the crank: 86.012");
        await Assertions.Expect(page.Locator(".echo .ask")).ToContainTextAsync("bore 2, bore diameter, is read at top, middle, bottom, each across the crank, along the crank");
        await page.LookAt("pieces-reading-told");
        await page.GetByRole(AriaRole.Link, new() { Name = "Sheet of the cylinder block" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("86.012");
    }

    [Fact]
    public async Task Word_that_was_asked_about_is_taught_by_one_button_and_heard_in_the_next_line()
    {
        var book = await workshop.StartBook("Pieces of one's own words");
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/strip");
        await Box(page).FillAsync("flurble wotsit");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await page.GetByLabel("Answer", new() { Exact = true }).First.FillAsync("it's the thermostat");
        await page.GetByRole(AriaRole.Button, new() { Name = "Settled" }).First.ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "\"flurble wotsit\" means thermostat" })).ToBeVisibleAsync();
        await page.LookAt("pieces-teach");
        await page.GetByRole(AriaRole.Button, new() { Name = "\"flurble wotsit\" means thermostat" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("means thermostat from now on");
        await Box(page).FillAsync("flurble wotsit off");
        await Assertions.Expect(Piece(page, "Thermostat: off")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Without_script_a_second_button_reads_first()
    {
        var book = await workshop.StartBook("Pieces without script");
        var page = await browser.Open(workshop.Address, Phone, script: false);
        await page.GotoAsync($"{book}/strip");
        await Box(page).FillAsync(Line);
        var sender = await page.Locator("form.say [name=sender]").GetAttributeAsync("value");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read first" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("What it comes to");

        // The form before can still be sent from the browser's history: both are one sending.
        await Assertions.Expect(page.Locator("form.read-first [name=sender]")).ToHaveAttributeAsync("value", sender!);
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "undone" }).UncheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Read again" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Checkbox, new() { Name = "undone" })).Not.ToBeCheckedAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Record" }).ClickAsync();
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("left out before it was recorded");
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Page_that_reads_first_passes_axe_and_stays_on_the_phone(string size)
    {
        var book = await workshop.StartBook("Pieces read first");
        var page = await browser.Open(workshop.Address, size == "phone" ? Phone : Desk);
        await page.GotoAsync($"{book}/strip");
        await Box(page).FillAsync($"{Line}, deck one three tenths down");
        await page.EvaluateAsync("() => { const f = document.querySelector('form.say'); f.action = f.action.replace('/say', '/read-first'); HTMLFormElement.prototype.submit.call(f); }");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("What it comes to");
        await page.LookAt($"pieces-read-first-{size}");
    }

    [Fact]
    public async Task Keyboard_alone_leaves_a_piece_out()
    {
        var book = await workshop.StartBook("Pieces by keyboard");
        var page = await browser.Open(workshop.Address, Desk);
        await page.GotoAsync($"{book}/strip");
        await Box(page).FocusAsync();
        await page.Keyboard.TypeAsync("starter off, three M10 by 60, bag 4");
        await Assertions.Expect(Piece(page, "Starter: off")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Space");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".echo")).ToContainTextAsync("left out before it was recorded: starter: off");
    }

    [Fact]
    public async Task What_was_tapped_away_travels_with_a_line_that_is_sent_later()
    {
        await using var floor = await ShopFloor.Open();
        var phone = await browser.Open(floor.Lan, Phone);
        await phone.Context.AddCookiesAsync([new Cookie { Name = Shop.ShopGuard.Cookie, Value = floor.PairedKey("bench phone"), Url = floor.Lan.ToString() }]);
        await phone.GotoAsync($"/books/{ShopFloor.Slug}/strip");
        await Box(phone).FillAsync("starter off, three M10 by 60, bag 4");
        await Piece(phone, "Starter: off").ClickAsync();
        await floor.Stop();

        await Box(phone).FillAsync("starter off, three M10 by 60, bag 4, head off");
        await Assertions.Expect(phone.Locator(".comes")).ToContainTextAsync("It is read when it is sent");
        await phone.LookAt("pieces-away");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Record", Exact = true }).ClickAsync();
        await Assertions.Expect(phone.Locator(".outbox")).ToContainTextAsync("1 not sent yet");
        await Assertions.Expect(phone.Locator(".outbox li")).ToHaveTextAsync("starter off, three M10 by 60, bag 4, head off");
        await Assertions.Expect(phone.Locator(".piece")).ToHaveCountAsync(0);
        await floor.Start();
        await Assertions.Expect(phone.Locator(".outbox")).ToHaveCountAsync(0, new() { Timeout = 15_000 });

        var journal = floor.Journal().Select(r => r.Entry).ToArray();
        Assert.DoesNotContain(journal, e => e is PartOff { Part: "own.starter" });
        Assert.Contains(journal, e => e is PartOff { Part: "own.head" });
        Assert.Contains("starter: off", Assert.Single(journal.OfType<Asked>()).Why, StringComparison.Ordinal);
    }

    /// <summary>Where the line ends on the screen: what one types must not move.</summary>
    private static Task<int> Foot(IPage page) => page.EvaluateAsync<int>("() => Math.round(document.getElementById('say-line').getBoundingClientRect().bottom)");
}
