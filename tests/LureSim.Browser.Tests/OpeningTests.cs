using LureSim.Browser.Tests.Support;
using Microsoft.Playwright;

namespace LureSim.Browser.Tests;

/// <summary>A page opened from the disk.</summary>
[Collection(AllInOneBrowser.Name)]
public sealed class OpeningTests(BrowserFixture browser)
{
    [BrowserFact]
    public async Task It_opens_without_a_complaint_and_asks_for_nothing_but_itself()
    {
        await using OpenPage open = await browser.Open();
        await open.Page.Locator("#player .above .lure").First.WaitForAsync();
        await open.Frames(5);
        Assert.Empty(open.Complaints);
        Assert.Equal([new Uri(browser.Page).AbsoluteUri], open.Requests.Where(r => !r.StartsWith("data:", StringComparison.Ordinal)));
    }

    [BrowserFact]
    public async Task Without_a_script_the_words_are_there_and_say_what_is_missing()
    {
        await using OpenPage open = await browser.Open(change: o => o.JavaScriptEnabled = false);
        string text = await open.Page.Locator("main").InnerTextAsync();
        Assert.Contains("drawn by a script", text, StringComparison.Ordinal);
        Assert.Contains("twitch", text, StringComparison.Ordinal);
    }

    [BrowserFact]
    public async Task Titles_that_want_to_be_markup_are_text()
    {
        await using OpenPage open = await browser.Open(file: browser.HostilePage);
        await open.Page.Locator("#player .above .lure").First.WaitForAsync();
        await open.StandAt(3.0);
        Assert.Empty(open.Complaints);
        Assert.Equal(0, await open.Page.Locator("img").CountAsync());
        Assert.True(await open.Page.EvaluateAsync<bool>("window.hacked === undefined"));
        foreach (ILocator place in (ILocator[])[open.Page.Locator("h1"), open.Page.Locator("#player select option").First, open.Page.Locator("#pair .name b").First])
        {
            string text = (await place.TextContentAsync())!;
            Assert.Contains("</script><script>window.hacked=1</script>", text, StringComparison.Ordinal);
            Assert.Contains("\"<img src=x onerror=window.hacked=2>\"", text, StringComparison.Ordinal);
            Assert.Contains("\u05e9\u05dc\u05d5\u05dd \U0001F41F", text, StringComparison.Ordinal);
        }
    }
}
