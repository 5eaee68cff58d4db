namespace Gudgeon.FrontDoor.Tests;

public sealed class LookTests(BrowserFixture browser, Workshop workshop) : IClassFixture<Workshop>
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Mishap_page_reads_well(bool night)
    {
        var page = await browser.Open(workshop.Address, BrowserFixture.Phone, night);
        await page.GotoAsync("/nowhere");
        await page.LookAt(night ? "mishap-night" : "mishap");
    }

    [Fact]
    public async Task Light_chosen_on_the_page_stays_chosen()
    {
        var page = await browser.Open(workshop.Address, BrowserFixture.Desk);
        await page.GotoAsync("/nowhere");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Night" }).ClickAsync();
        await page.GotoAsync("/nowhere");

        Assert.Equal("night", await page.Locator("html").GetAttributeAsync("data-light"));
        await page.LookAt("mishap-chosen-night");
    }
}
