using System.Text.Json.Nodes;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using LureSim.Browser.Tests.Support;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Wire;
using Microsoft.Playwright;

namespace LureSim.Browser.Tests;

/// <summary>The page that the program serves on this machine, in a browser.</summary>
[Collection(AllInOneBrowser.Name)]
public sealed class ServedTests(BrowserFixture browser, ServedFixture served) : IClassFixture<ServedFixture>
{
    private const string News = "document.querySelector('#studies [role=status]').textContent";

    [BrowserFact]
    public async Task It_asks_nobody_but_its_server_and_hides_its_secret()
    {
        await using OpenPage open = await Open();
        await open.Until("document.querySelector('#player .above .lure')");
        Assert.Equal(served.Base, open.Page.Url);
        Assert.Equal(served.Base, await open.Page.EvaluateAsync<string>("location.href"));
        Assert.All(open.Requests, r => Assert.True(r.StartsWith(served.Base, StringComparison.Ordinal) || r.StartsWith("data:", StringComparison.Ordinal), r));
        Assert.Contains(served.Base + "page.js", open.Requests);
        Assert.Empty(open.Complaints);
    }

    [BrowserFact]
    public async Task A_slider_is_answered_as_the_program_answers()
    {
        await using OpenPage open = await Open();
        await open.Page.Locator("#slider-rhythm, #sliders input[type=range]").First.FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        await open.Until("document.getElementById('sliders').dataset.answer === 'fine'");
        JsonNode page = JsonNode.Parse(await open.Page.EvaluateAsync<string>("() => JSON.stringify(document.getElementById('sliders').answer)"))!;

        JsonNode data = JsonNode.Parse((await open.Page.Locator("#data").TextContentAsync())!)!, control = data["controls"]![0]!;
        string[] set = [.. control["stops"]![control["own"]!.GetValue<int>() + 1]!["set"]!.AsArray().Select(s => s!.GetValue<string>())];
        Scenario native = ScenarioSource.Read(served.Scenario, set).Scenario!;
        JsonNode program = JsonNode.Parse(RunAnswer.Answer(RunJson.Write(native.Setup, native.Retrieve!), coarse: false))!["summary"]!;
        foreach (string key in RetrieveFigures.All.Select(f => f.Key))
        {
            double a = program[key]!.GetValue<double>(), b = page[key]!.GetValue<double>();
            Assert.True(Math.Abs(a - b) <= 1e-9 * Math.Max(1e-6, Math.Abs(a)), $"{key}: {a} at the terminal, {b} on the page");
        }

        Assert.Empty(open.Complaints);
    }

    [BrowserFact]
    public async Task A_study_shows_its_text_and_pictures_and_leaves_the_page_in_order()
    {
        await using OpenPage open = await Open();
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "How it floats" }).ClickAsync();
        await open.Until($"{News} === 'done'");
        Assert.Contains("float", await open.Page.Locator("#studies pre").TextContentAsync(), StringComparison.OrdinalIgnoreCase);
        Assert.NotEqual(0, await open.Page.Locator("#studies img").CountAsync());
        await open.Page.Locator("#studies img").Last.ScrollIntoViewIfNeededAsync();
        await open.Until("[...document.querySelectorAll('#studies img')].every(i => i.complete && i.naturalWidth > 0)");
        foreach (int width in (int[])[360, 1280])
        {
            await open.Widen(width);
            Assert.True(await open.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{width} px overflow");
            Assert.Empty(await SmallTargets(open));
            AxeResult found = await open.Page.RunAxe(new AxeRunOptions { RunOnly = RunOnlyOptions.Tags("wcag2a", "wcag2aa", "wcag21a", "wcag21aa") });
            Assert.Empty(found.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {n.Html}")));
            Assert.Contains(found.Passes, p => p.Id == "color-contrast");
        }

        Assert.Empty(open.Complaints);
    }

    [BrowserFact]
    public async Task A_study_can_be_stopped()
    {
        await using OpenPage open = await Open();
        ILocator stop = open.Page.GetByRole(AriaRole.Button, new() { Name = "Stop", Exact = true });
        Assert.False(await stop.IsVisibleAsync());
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Which rhythms walk" }).ClickAsync();
        await stop.ClickAsync();
        await open.Until($"{News} === 'stopped'");
        Assert.False(await stop.IsVisibleAsync());
        Assert.Equal(0, await open.Page.Locator("#studies pre").CountAsync());
        Assert.Empty(open.Complaints);
    }

    [BrowserFact]
    public async Task A_sweep_that_makes_no_sense_is_answered_in_words()
    {
        await using OpenPage open = await Open();
        await open.Page.Locator("#vary").FillAsync("lure.colour=1:2:3");
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Sweep" }).ClickAsync();
        await open.Until($"{News}.includes('lure.colour')");
        Assert.Equal(0, await open.Page.Locator("#studies pre").CountAsync());
        Assert.Empty(open.Complaints);
    }

    private Task<OpenPage> Open() => browser.Open(change: o => o.Offline = false, address: new Uri(served.Address));

    private static Task<string[]> SmallTargets(OpenPage open) => open.Page.EvaluateAsync<string[]>("""
        () => [...document.querySelectorAll('.studies button, .studies input')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 43.9).map(e => e.textContent || e.id)
        """);
}
