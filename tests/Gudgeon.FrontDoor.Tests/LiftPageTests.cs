using System.Net;
using Microsoft.Playwright;
using static Gudgeon.FrontDoor.Tests.BrowserFixture;

namespace Gudgeon.FrontDoor.Tests;

/// <summary>The Lift page under a phone: forms, pictures, cautions, refusals. Engine, rig, crane and garage are invented.</summary>
public sealed class LiftPageTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    private static readonly string[] Forms = ["mass", "rig", "crane", "place", "stand"];

    [Fact]
    public async Task Lift_told_on_a_phone_passes_and_its_picture_moves()
    {
        var book = await Start("Lift");
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/lift");
        await page.LookAt("lift-empty");
        await Assertions.Expect(page.Locator(".answer")).ToContainTextAsync("Not all told yet");
        foreach (var form in Forms)
        {
            await page.GotoAsync($"{book}/lift/{form}");
            await page.LookAt($"lift-{form}");
        }

        await Tell(book);
        await page.GotoAsync($"{book}/lift");
        await Assertions.Expect(page.Locator(".answer")).ToContainTextAsync("Every check passes");
        await Assertions.Expect(page.Locator(".caution").First).ToContainTextAsync("Defer to local codes and licensed practice.");
        await page.LookAt("lift-passes");
        await page.Locator("svg.lift").ScreenshotAsync(new() { Path = Path.Combine(Screens, "lift-picture-closed.png") });

        var low = await page.Locator("p.pose.now").TextContentAsync();
        await page.Locator("#stroke").FillAsync("12");
        Assert.NotEqual(low, await page.Locator("p.pose.now").TextContentAsync());
        await page.Locator("svg.lift").ScreenshotAsync(new() { Path = Path.Combine(Screens, "lift-picture-open.png") });
        await page.Locator("svg.floor").ScreenshotAsync(new() { Path = Path.Combine(Screens, "lift-floor.png") });
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.PdfAsync(new() { Path = Path.Combine(Screens, "lift-page.pdf"), Format = "A4", PreferCSSPageSize = true });
        Assert.Equal(0, await page.Locator("button:visible").CountAsync());
        await Assertions.Expect(page.Locator(".caution").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Picture_moves_without_script_too()
    {
        var book = await Start("Lift without script");
        await Tell(book);
        var page = await browser.Open(workshop.Address, Phone, script: false);
        await page.GotoAsync($"{book}/lift");
        var low = await page.Locator("p.pose.now").TextContentAsync();
        await page.GotoAsync($"{book}/lift?stroke=12");
        Assert.NotEqual(low, await page.Locator("p.pose.now").TextContentAsync());
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Show", Exact = true })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Lift_that_fails_is_shown_as_not_possible_and_offers_no_override()
    {
        var book = await Start("Lift that fails");
        await Tell(book, ("leg1-length", "240"), ("leg2-length", "240"));
        var page = await browser.Open(workshop.Address, Phone, night: true);
        await page.GotoAsync($"{book}/lift");
        await Assertions.Expect(page.Locator(".answer")).ToContainTextAsync("Not possible as it stands");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("480 mm of legs over a span of 500 mm");
        Assert.Equal(0, await page.Locator("[name=override]").CountAsync());
        Assert.DoesNotContain("largest pull", await page.Locator("main").InnerTextAsync());
        await page.LookAt("lift-fails");
    }

    [Theory]
    [InlineData("lift/mass", "mass", "-5", "more than 0 kg")]
    [InlineData("lift/weighed", "front", "heavy", "Where")]
    [InlineData("lift/crane", "holes", "twelve", "boom in mm, then kg on the plate: 1200 500")]
    [InlineData("lift/place", "heights", "dynamo: 300 200", "engine, or a part of this engine by its name")]
    public async Task Figure_that_cannot_be_is_refused_in_four_parts(string form, string field, string typed, string expected)
    {
        var book = await Start($"Refused {form}");
        var answer = await Post($"{book}/{form}", (field, typed));
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(expected, page);
        Assert.Contains(typed, page);
    }

    private async Task Tell(string book, params (string Name, string Value)[] other)
    {
        await Good($"{book}/lift/mass", ("what", "engine"), ("mass", "200"), ("spread", "5"), ("how", "invented"), ("x", "250"), ("z", "50"), ("centre-spread", "20"));
        (string, string)[] rig =
        [
            ("leg1-name", "front"), ("leg1-x", "500"), ("leg1-z", "300"), ("leg1-length", "500"), ("leg2-name", "rear"), ("leg2-x", "0"), ("leg2-z", "300"), ("leg2-length", "500"), ("gear-mass", "10"),
            ("leg3-name", "left"), ("leg3-x", "250"), ("leg3-y", "200"), ("leg3-z", "300"), ("leg3-length", "478"), ("leg4-name", "right"), ("leg4-x", "250"), ("leg4-y", "-200"), ("leg4-z", "300"), ("leg4-length", "478"),
            .. Piece(1, "other, rated", "hook", rating: "1000"), .. Piece(2, "chain", "front", "8", "8"), .. Piece(3, "chain", "rear", "8", "8"), .. Piece(4, "chain", "left", "8", "8"), .. Piece(5, "chain", "right", "8", "8"),
        ];
        await Good($"{book}/lift/rig", [.. rig.Where(field => other.All(o => o.Name != field.Item1)), .. other]);
        await Good($"{book}/lift/crane", ("pivot-z", "1500"), ("foot-z", "900"), ("pin", "400"), ("ram-closed", "550"), ("ram-open", "950"), ("drop", "120"), ("holes", "1000 700\n1200 500"), ("hole", "2"),
            ("wheels", "front left: 1600 450\nfront right: 1600 -450\nrear right: 0 -350\nrear left: 0 350"), ("mass", "75"), ("centre-x", "550"), ("centre-z", "500"), ("legs", "150"), ("boom-over", "60"), ("swing", "3"), ("slope", "1"));
        await Good($"{book}/lift/place", ("roof", "2700"), ("sill", "850"), ("under", "220"), ("clearance", "30"), ("length", "600"), ("width", "500"), ("heights", "engine: 450 -250\ninlet manifold: 560 300"),
            ("room-length", "8000"), ("room-width", "4000"), ("things", "bench: 2000 3200 2000 600"), ("way", "500 1500 0\n3000 1500 0"));
        await Good($"{book}/lift/stand", ("plate", "1500"), ("post", "150"), ("arm", "0"), ("engagement", "20"), ("thread", "M12"), ("strength", "8.8"), ("face", "cast iron"), ("bolts", "1: 130 100\n2: -130 100\n3: 130 -100\n4: -130 -100"));
    }

    private static (string, string)[] Piece(int i, string sort, string on, string grade = "", string size = "", string rating = "") =>
        [($"gear{i}-sort", sort), ($"gear{i}-on", on), ($"gear{i}-grade", grade), ($"gear{i}-size", size), ($"gear{i}-rating", rating)];

    private async Task Good(string path, params (string Name, string Value)[] fields)
    {
        var answer = await Post(path, fields);
        Assert.True(answer.StatusCode == HttpStatusCode.SeeOther, $"{path}: {answer.StatusCode} {WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync())}");
    }

    private Task<HttpResponseMessage> Post(string path, params (string Name, string Value)[] fields) =>
        workshop.Client.PostAsync(path, new FormUrlEncodedContent(fields.Append(("back", "lift")).Select(f => new KeyValuePair<string, string>(f.Item1, f.Item2))));

    private async Task<string> Start(string title)
    {
        var answer = await workshop.Client.PostAsync("/start", new FormUrlEncodedContent(new Dictionary<string, string> { ["sender"] = title, ["title"] = title, ["layout"] = "inline", ["n"] = "4" }));
        return answer.Headers.Location!.OriginalString.Replace("/strip", "", StringComparison.Ordinal);
    }
}
