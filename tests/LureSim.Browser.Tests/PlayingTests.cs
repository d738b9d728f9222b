using System.Globalization;
using LureSim.Browser.Tests.Support;
using Microsoft.Playwright;

namespace LureSim.Browser.Tests;

/// <summary>The player's clock and what follows it.</summary>
[Collection(AllInOneBrowser.Name)]
public sealed class PlayingTests(BrowserFixture browser)
{
    [BrowserFact]
    public async Task Play_moves_the_lure_and_pause_holds_it()
    {
        await using OpenPage open = await browser.Open();
        await open.StandAt(6.0);
        string before = await open.LurePlace();
        await open.PlayButton.ClickAsync();
        Assert.Equal("Pause", await open.PlayButton.TextContentAsync());
        await open.Until("Number(document.getElementById('player').dataset.time) > 6.1");
        await open.PlayButton.ClickAsync();
        double at = await open.Time();
        string held = await open.LurePlace();
        Assert.NotEqual(before, held);
        await open.Frames(6);
        Assert.Equal(at, await open.Time());
        Assert.Equal(held, await open.LurePlace());
    }

    [BrowserTheory]
    [InlineData(3.0)]
    [InlineData(7.5)]
    [InlineData(14.0)]
    public async Task Scrubbing_shows_the_moment_asked_for(double seconds)
    {
        await using OpenPage open = await browser.Open();
        await open.StandAt(seconds);
        Assert.Equal(seconds, await open.Time());
        Assert.Contains(seconds.ToString("0.00 's'", CultureInfo.InvariantCulture), await open.Page.Locator("#player .clock").TextContentAsync(), StringComparison.Ordinal);

        // The values beside the lanes, in inches and degrees with two digits, against the film read by other code.
        string data = (await open.Page.Locator("#data").TextContentAsync())!;
        double heading = (FilmValues.At(data, "heading", seconds) - Math.PI) * 180.0 / Math.PI;
        Assert.Equal(Math.Abs(heading), Number(await Lane(open, 3)), 0.51);
        Assert.Equal(heading > 0.0, (await Lane(open, 3)).EndsWith("right", StringComparison.Ordinal));
        double slack = Math.Max(0.0, FilmValues.At(data, "slack", seconds)) / 0.0254;
        Assert.Equal(slack, Number(await Lane(open, 1)), slack < 9.95 ? 0.051 : 0.51);
    }

    [BrowserFact]
    public async Task A_pointer_and_a_finger_on_the_lanes_move_the_clock()
    {
        await using OpenPage open = await browser.Open(change: o => o.HasTouch = true);
        await open.StandAt(6.0);
        ILocator lanes = open.Page.Locator("#player .lanes");
        await lanes.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await lanes.BoundingBoxAsync())!;
        await open.Page.Mouse.MoveAsync(box.X + (0.5f * box.Width), box.Y + (0.5f * box.Height));
        await open.Page.Mouse.DownAsync();
        double pressed = await open.Time();
        await open.Page.Mouse.MoveAsync(box.X + (0.8f * box.Width), box.Y + (0.5f * box.Height));
        double drawn = await open.Time();
        await open.Page.Mouse.UpAsync();
        Assert.True(pressed is > 6.0 and < 9.0 && drawn > pressed + 0.2, $"{pressed} then {drawn}");
        await open.Page.Touchscreen.TapAsync(box.X + (0.5f * box.Width), box.Y + (0.5f * box.Height));
        Assert.Equal(pressed, await open.Time(), 0.05);
    }

    [BrowserFact]
    public async Task One_twitch_ends_where_the_next_begins()
    {
        await using OpenPage open = await browser.Open();
        await open.StandAt(6.2);
        await open.Page.Locator("#player .speed input[value='1']").CheckAsync();
        await open.Page.Locator("#player .once").ClickAsync();
        await open.Until("document.getElementById('player').dataset.playing === 'false'");

        // Two twitches a second, the first at 0: the next one after 6.2 s goes from 6.5 to 7 s.
        Assert.Equal(7.0, await open.Time(), 0.021);
    }

    [BrowserFact]
    public async Task Half_and_quarter_speed_are_slower_by_that_much()
    {
        await using OpenPage open = await browser.Open();
        var rates = new List<double>();
        foreach (string speed in (string[])["1", "0.5", "0.25"])
        {
            await open.StandAt(6.0);
            await open.Page.Locator($"#player .speed input[value='{speed}']").CheckAsync();
            await open.PlayButton.ClickAsync();

            // Film time per drawn time, both as the frames see them; no frame counts for more than 60 ms.
            rates.Add(await open.Page.EvaluateAsync<double>("""
                () => new Promise(done => {
                  const root = document.getElementById('player');
                  let last = 0, from = 0, sum = 0, frames = 0;
                  const next = ms => {
                    const t = Number(root.dataset.time);
                    if (last && from) sum += Math.min(ms - last, 60);
                    if (!from && last) from = t;
                    last = ms;
                    if (++frames < 25) requestAnimationFrame(next); else done((t - from) / (sum / 1000));
                  };
                  requestAnimationFrame(next);
                })
                """));
        }

        Assert.Equal(0.5, rates[1] / rates[0], 0.15);
        Assert.Equal(0.25, rates[2] / rates[0], 0.1);
    }

    [BrowserFact]
    public async Task Two_runs_side_by_side_keep_step()
    {
        await using OpenPage open = await browser.Open();
        await open.Page.Locator("#pair .above").First.ScrollIntoViewIfNeededAsync();
        await open.PlayOn();
        string[] seen = await open.Page.EvaluateAsync<string[]>("""
            () => new Promise(done => {
              const seen = [], sides = document.querySelectorAll('#pair .above');
              const next = () => {
                seen.push([...sides].map(s => s.dataset.time + ' ' + s.querySelector('.lure').getAttribute('transform')).join('|'));
                if (seen.length < 30) requestAnimationFrame(next); else done(seen);
              };
              requestAnimationFrame(next);
            })
            """);
        string[][] times = [.. seen.Select(s => s.Split('|').Select(side => side.Split(' ')[0]).ToArray())];
        Assert.All(times, t => Assert.Equal(t[0], t[1]));
        Assert.True(times.Select(t => t[0]).Distinct().Count() > 5);
        Assert.All(Enumerable.Range(0, 2), side => Assert.True(seen.Select(s => s.Split('|')[side].Split(' ', 2)[1]).Distinct().Count() > 3));
    }

    [BrowserFact]
    public async Task At_its_end_a_run_says_that_it_starts_anew()
    {
        await using OpenPage open = await browser.Open();
        await open.StandAt(14.95);
        await open.Page.Locator("#player .speed input[value='1']").CheckAsync();
        await open.PlayButton.ClickAsync();
        await open.Until("document.querySelector('#player .note').textContent.startsWith('Once more from second 6.0')");
        Assert.InRange(await open.Time(), 6.0, 14.0);
    }

    [BrowserFact]
    public async Task Another_run_can_be_shown_without_a_jump_of_the_clock()
    {
        await using OpenPage open = await browser.Open();
        await open.StandAt(8.0);
        string first = await open.LurePlace();
        await open.Page.Locator("#player select").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        Assert.Equal(8.0, await open.Time());
        Assert.NotEqual(first, await open.LurePlace());
    }

    private static async Task<string> Lane(OpenPage open, int index) => (await open.Page.Locator("#player .lanes .lane-value").Nth(index).TextContentAsync())!;

    private static double Number(string text) => double.Parse(text.Split(' ', '\u00b0')[0], CultureInfo.InvariantCulture);
}
