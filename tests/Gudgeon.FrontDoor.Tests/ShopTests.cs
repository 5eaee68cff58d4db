using System.Net;
using Gudgeon.Journal;
using Gudgeon.Shop;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

public sealed class ShopTests(BrowserFixture browser)
{
    private static readonly string[] everyAddress =
    [
        "/", "/start", "/phones", $"/books/{ShopFloor.Slug}", $"/books/{ShopFloor.Slug}/strip", $"/books/{ShopFloor.Slug}/photos", $"/books/{ShopFloor.Slug}/labels",
        $"/picture/{ShopFloor.Slug}/{new string('a', 64)}/view", $"/others/{ShopFloor.Slug}", "/k/3334", "/clock.svg", "/nowhere", "/PAIRS", "/assets/../books",
    ];

    [Fact]
    public async Task Phone_that_is_not_paired_is_refused_at_every_address()
    {
        await using var floor = await ShopFloor.Open();
        using var phone = Client(floor.Lan);
        foreach (var path in everyAddress)
        {
            var answer = await phone.GetAsync(path);
            Assert.True(answer.StatusCode == HttpStatusCode.Unauthorized, $"{path} answered {answer.StatusCode}");
            Assert.DoesNotContain("Invented single", await answer.Content.ReadAsStringAsync());
        }

        foreach (var path in new[] { $"/books/{ShopFloor.Slug}/off", $"/intake/{ShopFloor.Slug}/photos", "/phones/offer", "/phones/revoke", "/start", $"/books/{ShopFloor.Slug}/not-taken" })
            Assert.Equal(HttpStatusCode.Unauthorized, (await phone.PostAsync(path, new FormUrlEncodedContent([new("part", "own.head")]))).StatusCode);
        Assert.DoesNotContain(floor.Journal(), r => r.Entry is PartOff);
    }

    [Fact]
    public async Task Made_up_key_is_refused()
    {
        await using var floor = await ShopFloor.Open();
        floor.PairedKey("mine");
        using var phone = Client(floor.Lan, new string('0', 64));

        Assert.Equal(HttpStatusCode.Unauthorized, (await phone.GetAsync("/")).StatusCode);
    }

    [Fact]
    public async Task Headers_do_not_make_a_phone_the_laptop()
    {
        await using var floor = await ShopFloor.Open();
        using var phone = Client(floor.Lan);
        foreach (var (name, value) in new[] { ("X-Forwarded-For", "127.0.0.1"), ("X-Real-IP", "::1"), ("Forwarded", "for=127.0.0.1"), ("Host", "localhost") })
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, "/phones");
            request.Headers.TryAddWithoutValidation(name, value);
            Assert.Equal(HttpStatusCode.Unauthorized, (await phone.SendAsync(request)).StatusCode);
        }
    }

    [Fact]
    public async Task Workshop_without_shop_turns_the_network_away_wherever_it_listens()
    {
        await using var floor = await ShopFloor.Open(shop: false);
        using var phone = Client(floor.Lan, floor.PairedKey("mine"));

        Assert.Equal(HttpStatusCode.Forbidden, (await phone.GetAsync("/")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await phone.GetAsync("/pair")).StatusCode);
    }

    [Fact]
    public async Task Phone_is_paired_by_the_code_on_the_laptop_and_let_out_again()
    {
        await using var floor = await ShopFloor.Open();
        var laptop = await browser.Open(floor.Laptop, Desk);
        await laptop.GotoAsync("/phones");
        await laptop.LookAt("phones");
        await laptop.GetByRole(AriaRole.Button, new() { Name = "Pair a phone" }).ClickAsync();
        var code = (await laptop.Locator(".offer .code").TextContentAsync())!.Trim();
        await laptop.LookAt("phones-offer");

        var phone = await browser.Open(floor.Lan, Phone);
        await phone.GotoAsync("/");
        await Assertions.Expect(phone.Locator("main")).ToContainTextAsync("not paired with this workshop");
        await phone.GotoAsync($"/pair?code={code.Replace(" ", "", StringComparison.Ordinal)}");
        await phone.GetByLabel("What do you call this phone?").FillAsync("bench phone");
        await phone.LookAt("pair");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Pair it" }).ClickAsync();
        await Assertions.Expect(phone.Locator("main")).ToContainTextAsync("Invented single");
        var cookie = Assert.Single((await phone.Context.CookiesAsync()), c => c.Name == ShopGuard.Cookie);
        Assert.True(cookie.HttpOnly);
        Assert.Equal(SameSiteAttribute.Strict, cookie.SameSite);

        await phone.GotoAsync($"/books/{ShopFloor.Slug}/part/own.starter");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Took it off" }).First.ClickAsync();
        await Assertions.Expect(phone.Locator(".echo")).ToBeVisibleAsync();
        Assert.Equal("bench phone", floor.Journal()[^1].By);
        await phone.GotoAsync("/phones");
        await Assertions.Expect(phone.Locator("main")).ToContainTextAsync("Open this page on the laptop");

        var second = await browser.Open(floor.Lan, Phone);
        await second.GotoAsync($"/pair?code={code.Replace(" ", "", StringComparison.Ordinal)}");
        await second.GetByLabel("What do you call this phone?").FillAsync("second phone");
        await second.GetByRole(AriaRole.Button, new() { Name = "Pair it" }).ClickAsync();
        await Assertions.Expect(second.Locator(".refusal")).ToContainTextAsync("no code is open");

        await laptop.GotoAsync("/phones");
        await laptop.GetByRole(AriaRole.Button, new() { NameRegex = new("Let it in no more.*bench phone") }).ClickAsync();
        await phone.GotoAsync("/");
        await Assertions.Expect(phone.Locator("main")).ToContainTextAsync("not paired with this workshop");
    }

    [Fact]
    public async Task Code_tried_too_often_is_no_good_any_more()
    {
        await using var floor = await ShopFloor.Open();
        using var laptop = Client(floor.Laptop);
        await laptop.PostAsync("/phones/offer", null);
        var code = System.Text.RegularExpressions.Regex.Match(await laptop.GetStringAsync("/phones"), "class=\"code\">([^<]+)<").Groups[1].Value;
        using var phone = Client(floor.Lan);
        for (var i = 0; i < 5; i++)
            Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Pair(phone, "33333333")).StatusCode);

        Assert.Contains("no code is open", await (await Pair(phone, code)).Content.ReadAsStringAsync());
        for (var i = 6; i < 10; i++)
            await Pair(phone, code);
        Assert.Equal(HttpStatusCode.TooManyRequests, (await Pair(phone, code)).StatusCode);
    }

    [Fact]
    public async Task Label_code_answers_what_it_is_and_where_it_goes()
    {
        await using var floor = await ShopFloor.Open();
        floor.ByCommand(new TakeOff("own.starter", [new OutLot(3, "M10x60", "bolt", "bag 12")], To: "shelf 2"));
        var page = await browser.Open(floor.Laptop, Phone);
        await page.GotoAsync($"/books/{ShopFloor.Slug}/labels");
        await page.LookAt("labels");
        await page.GetByLabel("bag 12", new() { Exact = true }).CheckAsync();
        await page.GetByText("Hoses, pipes and wires still joined").ClickAsync();
        await page.GetByLabel("fuel feed hose, at vehicle", new() { Exact = false }).First.CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make the print page" }).ClickAsync();
        await Assertions.Expect(page.Locator("svg.sheet .code")).ToHaveCountAsync(3);
        var code = await page.Locator("svg.sheet .code").First.TextContentAsync();
        await page.SetViewportSizeAsync(1366, 900);
        await page.ScreenshotAsync(new() { Path = Path.Combine(Screens, "labels-print-1366-full.png"), FullPage = true });

        Assert.Equal($"{floor.Lan}K/{code}".ToUpperInvariant(), await SquareOn(page));

        await page.SetViewportSizeAsync(Phone.Width, Phone.Height);
        await page.GotoAsync($"/K/{code!.ToLowerInvariant()}");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("3 M10x60 bolt");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("hold the starter");
        await page.LookAt("label-answer");
        await page.GotoAsync("/k/3334");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("whose last sign does not fit");
    }

    /// <summary>What a scanner reads off the first label, printed at 203 dots an inch or less: a QR reader that is another library than the writer.</summary>
    private static async Task<string?> SquareOn(IPage page)
    {
        var sheet = (await page.Locator("svg.sheet").First.BoundingBoxAsync())!;
        var label = await page.ScreenshotAsync(new() { Clip = new() { X = sheet.X, Y = sheet.Y, Width = sheet.Width / 3, Height = sheet.Height / 8 } });
        using var picture = SkiaSharp.SKBitmap.Decode(label);
        using var plain = picture.Copy(SkiaSharp.SKColorType.Rgba8888);
        var reader = new ZXing.BarcodeReaderGeneric { Options = new() { TryHarder = true, PossibleFormats = [ZXing.BarcodeFormat.QR_CODE] } };
        return reader.Decode(new ZXing.RGBLuminanceSource(plain.Bytes, plain.Width, plain.Height, ZXing.RGBLuminanceSource.BitmapFormat.RGBA32))?.Text;
    }

    private static Task<HttpResponseMessage> Pair(HttpClient phone, string code) => phone.PostAsync("/pair", new FormUrlEncodedContent([new("code", code), new("name", "x")]));

    private static HttpClient Client(Uri address, string? key = null)
    {
        var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = address };
        if (key is not null)
            client.DefaultRequestHeaders.Add("Cookie", $"{ShopGuard.Cookie}={key}");
        return client;
    }
}
