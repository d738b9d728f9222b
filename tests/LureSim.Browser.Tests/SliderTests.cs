using LureSim.Browser.Tests.Support;
using Microsoft.Playwright;

namespace LureSim.Browser.Tests;

/// <summary>A slider, the solver inside the page and the players together.</summary>
[Collection(AllInOneBrowser.Name)]
public sealed class SliderTests(BrowserFixture browser)
{
    private const string SecondName = "document.querySelectorAll('#pair .name b')[1].textContent";

    [BrowserFact]
    public async Task A_slider_puts_its_run_beside_the_own_one_without_a_jump_of_the_clock()
    {
        await using OpenPage open = await browser.Open(file: browser.ComputingPage);
        await open.StandAt(8.0);
        ILocator second = open.Page.Locator("#pair .above").Nth(1).Locator(".lure").First;
        string before = (await second.GetAttributeAsync("transform"))!, own = await open.LurePlace();
        await open.Page.Locator("#sliders input[type=range]").First.FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        await open.Until($"{SecondName}.startsWith('your change')");
        Assert.Equal(8.0, await open.Time());
        Assert.False(await open.Plays());
        Assert.Equal(own, await open.LurePlace());
        Assert.NotEqual(before, await second.GetAttributeAsync("transform"));
        Assert.Empty(open.Complaints);
    }
}
