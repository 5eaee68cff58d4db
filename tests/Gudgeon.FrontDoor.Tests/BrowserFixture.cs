using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Gudgeon.FrontDoor.Tests.BrowserFixture))]

namespace Gudgeon.FrontDoor.Tests;

/// <summary>One Chromium for the whole run; a fresh profile a page.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    public static readonly ViewportSize Phone = new() { Width = 390, Height = 844 };
    public static readonly ViewportSize Tablet = new() { Width = 768, Height = 1024 };
    public static readonly ViewportSize Desk = new() { Width = 1366, Height = 900 };

    /// <summary>An ignored folder at the root of the repository: every screenshot is there to be looked at.</summary>
    public static string Screens { get; } = Path.Combine(Root(), "out", "screens");

    public async ValueTask InitializeAsync()
    {
        Directory.CreateDirectory(Screens);
        playwright = await Playwright.CreateAsync();
        browser = await Launch();
    }

    /// <summary>A browser of its own for a person who has set letters to twice the usual size.</summary>
    public Task<IBrowser> LaunchWithLargeLetters() => Launch("--blink-settings=defaultFontSize=32");

    /// <summary>A browser of its own whose camera shows a film over and over.</summary>
    public Task<IBrowser> LaunchWithCamera(string film) => Launch("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream", $"--use-file-for-fake-video-capture={film}");

    private Task<IBrowser> Launch(params string[] more) => playwright!.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
    {
        ExecutablePath = "/usr/bin/chromium",
        Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", .. more],
    });

    public Task<IPage> Open(Uri address, ViewportSize size, bool night = false, bool script = true) => Open(browser!, address, size, night, script);

    public static async Task<IPage> Open(IBrowser browser, Uri address, ViewportSize size, bool night = false, bool script = true)
    {
        var context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = address.ToString(),
            ViewportSize = size,
            HasTouch = size.Width < 800,
            JavaScriptEnabled = script,
            ColorScheme = night ? ColorScheme.Dark : ColorScheme.Light,
        });
        context.SetDefaultTimeout(10_000);
        return await context.NewPageAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
    }

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Gudgeon.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("the tests run inside the repository");
        return folder;
    }
}

/// <summary>What every page must pass, and the picture of it to look at.</summary>
public static class PageChecks
{
    /// <summary>Waits until the page stands. A form that is sent by script leaves its page a moment after the words it waits for are there.</summary>
    private static async Task Settled(this IPage page)
    {
        for (var left = 3; ; left--)
        {
            try
            {
                await page.WaitForLoadStateAsync(LoadState.Load);
                await page.WaitForTimeoutAsync(300);
                await page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
                return;
            }
            catch (PlaywrightException e) when (left > 0 && e.Message.Contains("navigation", StringComparison.Ordinal))
            {
                // It went on to the next page just now: wait for that one.
            }
        }
    }

    /// <summary>Writes the screenshot, then holds the page against axe, against sideways scrolling and against small hits.</summary>
    public static async Task LookAt(this IPage page, string name)
    {
        var size = page.ViewportSize!;
        await page.Settled();
        await page.ScreenshotAsync(new() { Path = Path.Combine(BrowserFixture.Screens, $"{name}-{size.Width}.png"), FullPage = false });
        await page.ScreenshotAsync(new() { Path = Path.Combine(BrowserFixture.Screens, $"{name}-{size.Width}-full.png"), FullPage = true });

        var axe = await page.RunAxe();
        Assert.True(axe.Violations.Length == 0, $"{name}: {string.Join("; ", axe.Violations.Select(Describe))}");

        var overflow = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(overflow <= 0, $"{name}: {overflow} px wider than the screen");

        var small = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('button, summary, nav a, a.do, a.next, a.name, input:not([type=hidden]):not([type=radio]):not([type=checkbox]), textarea, select, .picks label')]
              .map(e => [e, e.getBoundingClientRect()])
              .filter(([e, r]) => r.width > 1 && r.height > 1 && r.height < 47.5)
              .map(([e, r]) => `${e.tagName} "${e.textContent.trim().slice(0, 30)}" ${Math.round(r.height)} px high`)
            """);
        Assert.True(small.Length == 0, $"{name}: {string.Join("; ", small)}");
    }

    private static string Describe(AxeResultItem item) =>
        $"{item.Id}: {item.Help} ({string.Join(" | ", item.Nodes.Take(3).Select(n => n.Html))})";
}
