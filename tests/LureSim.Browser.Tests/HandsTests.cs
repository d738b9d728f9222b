using LureSim.Browser.Tests.Support;
using Microsoft.Playwright;

namespace LureSim.Browser.Tests;

/// <summary>Keyboard alone, less motion, large enough targets.</summary>
[Collection(AllInOneBrowser.Name)]
public sealed class HandsTests(BrowserFixture browser)
{
    [BrowserFact]
    public async Task The_keyboard_alone_does_everything()
    {
        await using OpenPage open = await browser.Open();
        await open.StandAt(6.0);
        await open.Page.EvaluateAsync("document.activeElement.blur()");

        // Reached by tab, seen to be reached, pressed by space.
        await TabTo(open, "play");
        Assert.NotEqual("none", await open.Page.EvaluateAsync<string>("getComputedStyle(document.activeElement).outlineStyle"));
        await open.Page.Keyboard.PressAsync("Space");
        await open.Until("document.getElementById('player').dataset.playing === 'true'");
        await open.Page.Keyboard.PressAsync("Space");
        Assert.False(await open.Plays());

        double at = await open.Time();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal(at + 0.02, await open.Time(), 1e-6 + 1e-3);
        await open.Page.Keyboard.PressAsync("ArrowLeft");
        Assert.Equal(at, await open.Time(), 1e-3);

        var phases = new List<string>();
        for (int i = 0; i < 6; i++)
        {
            await open.Page.Keyboard.PressAsync("Shift+ArrowRight");
            phases.Add(await open.Phase());
        }

        Assert.All(phases.Zip(phases.Skip(1)), p => Assert.NotEqual(p.First, p.Second));
        Assert.Contains("pull", phases);
        Assert.Contains("turn", phases);

        // With the focus on nothing, space still plays while the player is in sight.
        await open.Page.EvaluateAsync("document.activeElement.blur()");
        await open.Page.Keyboard.PressAsync("Space");
        Assert.True(await open.Plays());
    }

    [BrowserFact]
    public async Task The_slider_of_time_obeys_its_own_keys()
    {
        await using OpenPage open = await browser.Open();
        await open.StandAt(6.0);
        await open.Page.Locator("#player .time").FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal(6.02, await open.Time(), 1e-6);
        await open.Page.Keyboard.PressAsync("Home");
        Assert.Equal(0.0, await open.Time());
        Assert.Contains("0.00 s", await open.Page.Locator("#player .time").GetAttributeAsync("aria-valuetext"), StringComparison.Ordinal);
    }

    [BrowserFact]
    public async Task Where_less_motion_is_wished_nothing_moves_by_itself()
    {
        await using OpenPage open = await browser.Open(change: o => o.ReducedMotion = ReducedMotion.Reduce);
        await open.Page.Locator("#player .above .lure").First.WaitForAsync();
        double at = await open.Time();
        string place = await open.LurePlace();
        await open.Frames(12);
        Assert.False(await open.Plays());
        Assert.Equal(at, await open.Time());
        Assert.Equal(place, await open.LurePlace());
        Assert.True(await open.Page.Locator("#stills figure").First.IsVisibleAsync());
        await open.Page.Locator("#player [aria-label='Next phase']").ClickAsync();
        Assert.NotEqual(place, await open.LurePlace());
        Assert.False(await open.Plays());
    }

    [BrowserFact]
    public async Task Otherwise_it_begins_to_play_by_itself()
    {
        await using OpenPage open = await browser.Open();
        await open.Until("document.getElementById('player').dataset.playing === 'true'");
        Assert.False(await open.Page.Locator("#stills figure").First.IsVisibleAsync());
    }

    [BrowserFact]
    public async Task Whatever_is_to_be_hit_is_44_px_large()
    {
        await using OpenPage open = await browser.Open();
        foreach (int width in OpenPage.Widths)
        {
            await open.Widen(width);
            Assert.Empty(await SmallTargets(open));
        }
    }

    private static Task<string[]> SmallTargets(OpenPage open) => open.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('.player button, .player select, .player .time, .speed label, .pair button, .pair select')]
              .filter(e => e.offsetParent && (e.getBoundingClientRect().height < 43.9 || e.getBoundingClientRect().width < 43.9))
              .map(e => `${e.className || e.tagName} ${e.textContent}`)
            """);

    private static async Task TabTo(OpenPage open, string cls)
    {
        for (int i = 0; i < 40; i++)
        {
            await open.Page.Keyboard.PressAsync("Tab");
            if (await open.Page.EvaluateAsync<bool>("c => document.activeElement.classList.contains(c)", cls))
            {
                return;
            }
        }

        Assert.Fail($"{cls} is not reached by tab");
    }
}
