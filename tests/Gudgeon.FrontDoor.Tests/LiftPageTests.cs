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
        var book = await workshop.StartBook("Lift");
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/lift");
        await page.LookAt("lift-empty");
        await Assertions.Expect(page.Locator(".answer")).ToContainTextAsync("Not all told yet");
        foreach (var form in Forms)
        {
            await page.GotoAsync($"{book}/lift/{form}");
            await page.LookAt($"lift-{form}");
        }

        await Tell(book, guess: false);
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
        // The running line stands in the margin of every sheet, not over the work.
        await Assertions.Expect(page.Locator(".running")).ToBeHiddenAsync();
        Assert.StartsWith("\"Lift · Lift · ", await page.EvaluateAsync<string>("() => getComputedStyle(document.documentElement).getPropertyValue('--running')"), StringComparison.Ordinal);
        await page.PdfAsync(new() { Path = Path.Combine(Screens, "lift-page.pdf"), Format = "A4", PreferCSSPageSize = true });
        Assert.Equal(0, await page.Locator("button:visible").CountAsync());
        await Assertions.Expect(page.Locator(".caution").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Picture_moves_without_script_too()
    {
        var book = await workshop.StartBook("Lift without script");
        await Tell(book, guess: false);
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
        var book = await workshop.StartBook("Lift that fails");
        await Tell(book, guess: false, ("leg1-length", "240"), ("leg2-length", "240"));
        var page = await browser.Open(workshop.Address, Phone, night: true);
        await page.GotoAsync($"{book}/lift");
        await Assertions.Expect(page.Locator(".answer")).ToContainTextAsync("Not possible as it stands");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("480 mm of legs over a span of 500 mm");
        Assert.Equal(0, await page.Locator("[name=override]").CountAsync());
        Assert.DoesNotContain("largest pull", await page.Locator("main").InnerTextAsync());
        await page.LookAt("lift-fails");
    }

    // Each rig is invented. What the page says of it is looked at, and the pictures of it are there to be looked at.
    [Theory]
    [InlineData("two legs", "Every check passes", "Front: largest pull")]
    [InlineData("spreader", "Every check passes", "Carrier that hangs the engine level")]
    [InlineData("choked", "Every check passes", "textile sling of rear")]
    [InlineData("side pull", "Not possible as it stands", "pull off the shank")]
    [InlineData("wide", "Every check passes", "45° or less")]
    [InlineData("guess", "Every check passes, on a guess", "Counted with a guess")]
    [InlineData("unread", "Not possible as it stands", "unfit for lifting until its grade can be read")]
    public async Task Every_way_to_hang_reads_well_on_a_phone(string way, string verdict, string part)
    {
        var book = await workshop.StartBook($"Lift {way}");
        await Tell(book, guess: way == "guess");
        await Good($"{book}/lift/rig", Rig(way));
        await Good($"{book}/lift/place", Place);
        var page = await browser.Open(workshop.Address, Phone, night: way == "wide");
        await page.GotoAsync($"{book}/lift");
        await page.LookAt($"lift-way-{way.Replace(' ', '-')}");
        await Assertions.Expect(page.Locator(".answer")).ToHaveTextAsync(verdict);
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync(part);
        Assert.Equal(0, await page.GetByText("override", new() { Exact = false }).And(page.Locator("button, a, input")).CountAsync());
        await page.GotoAsync($"{book}/lift/rig");
        await page.LookAt($"lift-rig-{way.Replace(' ', '-')}");
    }

    [Fact]
    public async Task Part_that_gives_height_links_to_the_way_it_comes_off()
    {
        var book = await workshop.StartBook("Lift with gains");
        await Tell(book, guess: false);
        await Good($"{book}/lift/rig", Rig("two legs"));
        await Good($"{book}/lift/place", [.. Place.Where(f => f.Item1 is not ("sill" or "under" or "heights")), ("sill", "300"), ("under", "900"), ("heights", "engine: 450 -250\ninlet manifold: 720 300")]);
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/lift#headroom");
        await page.LookAt("lift-gains");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Tightest: hook over the engine, 17 mm short");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("270 mm gained");
        await page.GetByRole(AriaRole.Link, new() { Name = "The way there" }).First.ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Get at the inlet manifold");
    }

    [Fact]
    public async Task Form_that_is_not_taken_comes_back_with_everything_that_was_typed()
    {
        var book = await workshop.StartBook("Lift typed");
        var page = await browser.Open(workshop.Address, Phone);
        await page.GotoAsync($"{book}/lift/rig");
        await page.Locator("[name=leg1-name]").FillAsync("at the front");
        await page.Locator("[name=leg1-x]").FillAsync("about there");
        await page.Locator("[name=gear1-sort]").SelectOptionAsync("eye bolt");
        await page.Locator("[name=gear1-grade]").FillAsync("DIN 580");
        await page.Locator("[name=gear-mass]").FillAsync("10");
        await page.GetByRole(AriaRole.Button, new() { Name = "It hangs so" }).ClickAsync();
        await Assertions.Expect(page.Locator(".refusal")).ToContainTextAsync("about there");
        await Assertions.Expect(page.Locator("[name=leg1-name]")).ToHaveValueAsync("at the front");
        await Assertions.Expect(page.Locator("[name=leg1-x]")).ToHaveValueAsync("about there");
        await Assertions.Expect(page.Locator("[name=gear1-sort]")).ToHaveValueAsync("eye bolt");
        await Assertions.Expect(page.Locator("[name=gear1-grade]")).ToHaveValueAsync("DIN 580");
        await page.LookAt("lift-rig-not-taken");
    }

    [Theory]
    [InlineData("lift/mass", "mass", "-5", "more than 0 kg")]
    [InlineData("lift/weighed", "front", "heavy", "Where")]
    [InlineData("lift/stand", "finger-wide", "-40", "a figure")]
    [InlineData("lift/crane", "holes", "twelve", "boom in mm, then kg on the plate: 1200 500")]
    [InlineData("lift/place", "heights", "dynamo: 300 200", "engine, or a part of this engine by its name")]
    public async Task Figure_that_cannot_be_is_refused_in_four_parts(string form, string field, string typed, string expected)
    {
        var book = await workshop.StartBook($"Refused {form}");
        var answer = await Post($"{book}/{form}", (field, typed));
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(expected, page);
        Assert.Contains(typed, page);
    }

    private static (string, string)[] Place =>
    [
        ("roof", "2700"), ("sill", "500"), ("under", "220"), ("clearance", "30"), ("length", "600"), ("width", "500"), ("heights", "engine: 450 -250"),
        ("room-length", "8000"), ("room-width", "4000"), ("things", "bench: 2000 3200 2000 600"), ("way", "500 1500 0\n3000 1500 0"),
    ];

    private static (string, string)[] Rig(string way)
    {
        (string, string)[] Legs(double length) =>
        [
            ("leg1-name", "front"), ("leg1-x", "500"), ("leg1-z", "300"), ("leg1-length", $"{length}"), ("leg2-name", "rear"), ("leg2-x", "0"), ("leg2-z", "300"), ("leg2-length", $"{length}"), ("gear-mass", "10"),
            .. Piece(1, "other, rated", "hook", rating: "1000"), .. Piece(2, "chain", "front", "8", "8"),
        ];
        return way switch
        {
            "spreader" => [.. Legs(400), .. Piece(3, "chain", "rear", "8", "8"), ("bar-span", "500"), ("bar-over", "150"), ("bar-forward", "0"), ("bar-mass", "8"), ("bar-rating", "500")],
            "choked" => [.. Legs(500), .. Piece(3, "choked textile sling", "rear", rating: "1000"), ("gear3-angle", "100")],
            "side pull" => [.. Legs(500), .. Piece(3, "chain", "rear", "8", "8"), .. Piece(4, "eye bolt", "front", "DIN 580", "M16"), ("gear4-shank", "front")],
            "wide" => [.. Legs(350), .. Piece(3, "chain", "rear", "8", "8")],
            "unread" => [.. Legs(500), .. Piece(3, "chain", "rear", "", "8")],
            // A guess reaches far: four legs well outside it.
            "guess" => [.. Corners(), ("gear-mass", "10"), .. Piece(1, "other, rated", "hook", rating: "1000"), .. Enumerable.Range(1, 4).SelectMany(i => Piece(i + 1, "chain", $"leg {i}", "8", "10"))],
            _ => [.. Legs(500), .. Piece(3, "chain", "rear", "8", "8")],
        };

        static IEnumerable<(string, string)> Corners() => new[] { (500, 250), (500, -250), (-350, 250), (-350, -250) }.SelectMany((at, i) => new[]
        {
            ($"leg{i + 1}-name", $"leg {i + 1}"), ($"leg{i + 1}-x", $"{at.Item1}"), ($"leg{i + 1}-y", $"{at.Item2}"), ($"leg{i + 1}-z", "450"), ($"leg{i + 1}-length", "800"),
        });
    }

    private async Task Tell(string book, bool guess, params (string Name, string Value)[] other)
    {
        if (!guess)
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
}
