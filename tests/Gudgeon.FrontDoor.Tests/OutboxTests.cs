using System.Diagnostics;
using Gudgeon.Journal;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>A phone in the network that loses the laptop, and two at once.</summary>
public sealed class OutboxTests(BrowserFixture browser) : IDisposable
{
    private static readonly string starter = $"/books/{ShopFloor.Slug}/part/own.starter";
    private readonly string files = Directory.CreateTempSubdirectory("gudgeon-files-").FullName;

    [Fact]
    public async Task What_is_tapped_while_the_laptop_is_away_is_kept_sent_in_order_and_recorded_once()
    {
        await using var floor = await ShopFloor.Open();
        var phone = await Paired(floor, "bench phone");
        await phone.GotoAsync(starter);
        await floor.Stop();

        await phone.GetByRole(AriaRole.Button, new() { Name = "Took it off" }).First.ClickAsync();
        await Assertions.Expect(phone.Locator(".outbox")).ToContainTextAsync("1 not sent yet");
        await phone.GetByText("Note something about it").ClickAsync();
        await phone.GetByLabel("What you saw").FillAsync("a tooth is chipped");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Note it" }).ClickAsync();
        await Assertions.Expect(phone.Locator(".outbox")).ToContainTextAsync("2 not sent yet");
        await Assertions.Expect(phone.Locator(".outbox")).ToContainTextAsync("a tooth is chipped");
        await phone.LookAt("outbox");

        await floor.Start();
        await Assertions.Expect(phone.Locator(".outbox")).ToHaveCountAsync(0, new() { Timeout = 15_000 });

        var told = floor.Journal().Where(r => r.By == "bench phone").ToArray();
        Assert.Equal([typeof(PartOff), typeof(Noted)], told.Select(r => r.Entry.GetType()));
        Assert.True(told[0].At < told[0].EnteredAt, "the work was done before it was written down");
    }

    [Fact]
    public async Task What_was_kept_survives_the_page_and_is_sent_by_the_next_one()
    {
        await using var floor = await ShopFloor.Open();
        var phone = await Paired(floor, "bench phone");
        await phone.GotoAsync(starter);
        await floor.Stop();
        await phone.GetByRole(AriaRole.Button, new() { Name = "Took it off" }).First.ClickAsync();
        await Assertions.Expect(phone.Locator(".outbox")).ToBeVisibleAsync();
        await phone.CloseAsync();
        await floor.Start();

        var next = await phone.Context.NewPageAsync();
        await next.GotoAsync($"/books/{ShopFloor.Slug}/strip");
        await Eventually(() => floor.Journal().Count(r => r.Entry is PartOff) == 1);
    }

    [Fact]
    public async Task What_does_not_fit_any_more_becomes_a_question()
    {
        await using var floor = await ShopFloor.Open();
        var phone = await Paired(floor, "bench phone");
        await phone.GotoAsync(starter);
        await floor.Stop();
        await phone.GetByRole(AriaRole.Button, new() { Name = "Took it off" }).First.ClickAsync();
        await Assertions.Expect(phone.Locator(".outbox")).ToBeVisibleAsync();
        floor.ByCommand(new TakeOff("own.starter", To: "shelf 2"));
        await floor.Start();
        await Assertions.Expect(phone.Locator(".outbox")).ToHaveCountAsync(0, new() { Timeout = 15_000 });

        var asked = Assert.IsType<Asked>(floor.Journal()[^1].Entry);
        Assert.Contains("Took it off", asked.Text);
        Assert.Contains("sent late by a phone and not taken", asked.Why);
        Assert.Single(floor.Journal(), r => r.Entry is PartOff);
    }

    [Fact]
    public async Task Photo_taken_while_the_laptop_is_away_comes_in_later()
    {
        await using var floor = await ShopFloor.Open();
        var phone = await Paired(floor, "bench phone");
        await phone.GotoAsync($"/books/{ShopFloor.Slug}/photos");
        await floor.Stop();
        await phone.GetByLabel("Add photos").SetInputFilesAsync([PhotoFiles.Jpeg(files, "a.jpg", 1), PhotoFiles.Jpeg(files, "b.jpg", 2)]);
        await phone.GetByRole(AriaRole.Button, new() { Name = "Add them" }).ClickAsync();
        await Assertions.Expect(phone.Locator(".photo-progress")).ToContainTextAsync("2 not sent yet");
        await floor.Start();
        await Assertions.Expect(phone.Locator(".outbox")).ToHaveCountAsync(0, new() { Timeout = 15_000 });

        Assert.Equal(["a.jpg", "b.jpg"], floor.Journal().Select(r => r.Entry).OfType<PhotoTaken>().Select(p => p.Name).Order());
    }

    [Fact]
    public async Task Two_phones_and_a_command_see_each_others_entries_within_two_seconds()
    {
        await using var floor = await ShopFloor.Open();
        var one = await Paired(floor, "phone one");
        var two = await Paired(floor, "phone two");
        await one.GotoAsync(starter);
        await two.GotoAsync($"/books/{ShopFloor.Slug}/photos");

        await one.GetByRole(AriaRole.Button, new() { Name = "Took it off" }).First.ClickAsync();
        await Seen(two, "1 new entry");
        await Assertions.Expect(one.Locator(".echo")).ToBeVisibleAsync();
        await one.WaitForTimeoutAsync(1500);
        Assert.Equal(0, await one.Locator(".others").CountAsync());

        floor.ByCommand(new Tell(new Noted("own.head", "note", "by command")), new Tell(new Noted("own.head", "note", "again")));
        await Seen(one, "2 new entries");
        await Seen(two, "3 new entries");
        await two.LookAt("others");
        await two.GetByRole(AriaRole.Link, new() { Name = "Show" }).ClickAsync();
        await Assertions.Expect(two.Locator(".others")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Page_that_was_seen_at_a_secure_address_opens_again_without_the_laptop()
    {
        await using var floor = await ShopFloor.Open();
        var page = await browser.Open(floor.Laptop, Phone);
        await page.GotoAsync(starter);
        await page.EvaluateAsync("() => navigator.serviceWorker.ready");
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Starter", Exact = true })).ToBeVisibleAsync();
        await floor.Stop();

        await page.ReloadAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Starter", Exact = true })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Took it off" }).First.ClickAsync();
        await Assertions.Expect(page.Locator(".outbox")).ToContainTextAsync("1 not sent yet");
        await floor.Start();
        await Assertions.Expect(page.Locator(".outbox")).ToHaveCountAsync(0, new() { Timeout = 15_000 });
        Assert.Single(floor.Journal(), r => r.Entry is PartOff);
    }

    public void Dispose() => Directory.Delete(files, recursive: true);

    private async Task<IPage> Paired(ShopFloor floor, string name)
    {
        var page = await browser.Open(floor.Lan, Phone);
        await page.Context.AddCookiesAsync([new Cookie { Name = Shop.ShopGuard.Cookie, Value = floor.PairedKey(name), Url = floor.Lan.ToString() }]);
        return page;
    }

    private static async Task Seen(IPage page, string words)
    {
        var watch = Stopwatch.StartNew();
        await Assertions.Expect(page.Locator(".others")).ToContainTextAsync(words);
        Assert.InRange(watch.ElapsedMilliseconds, 0, 2000);
    }

    private static async Task Eventually(Func<bool> good)
    {
        for (var i = 0; i < 100 && !good(); i++)
            await Task.Delay(100);
        Assert.True(good(), "it did not come about in 10 s");
    }
}
