using System.Globalization;
using Microsoft.Playwright;

namespace LureSim.Browser.Tests.Support;

/// <summary>A page in a browser, with what it said and asked for, and the player on it.</summary>
public sealed class OpenPage : IAsyncDisposable
{
    private readonly IBrowserContext _context;
    private readonly List<string> _complaints = [];
    private readonly List<string> _requests = [];

    private OpenPage(IBrowserContext context, IPage page) => (_context, Page) = (context, page);

    public IPage Page { get; }

    /// <summary>A phone, a tablet, a projector, in pixels.</summary>
    public static IReadOnlyList<int> Widths { get; } = [360, 768, 1920];

    /// <summary>Errors and warnings of the console, and exceptions nobody caught.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    /// <summary>Everything asked for.</summary>
    public IReadOnlyList<string> Requests => _requests;

    public static async Task<OpenPage> At(IBrowserContext context, Uri file)
    {
        var open = new OpenPage(context, await context.NewPageAsync());
        open.Page.Console += (_, m) => open.Note(m.Type is "error" or "warning" ? $"{m.Type}: {m.Text}" : null);
        open.Page.PageError += (_, e) => open.Note(e);
        open.Page.Dialog += async (_, d) =>
        {
            open.Note("dialog: " + d.Message);
            await d.DismissAsync();
        };
        open.Page.Request += (_, r) => open._requests.Add(r.Url);
        await open.Page.GotoAsync(file.AbsoluteUri);
        return open;
    }

    public async ValueTask DisposeAsync() => await _context.CloseAsync();

    /// <summary>Seconds on the player's clock.</summary>
    public async Task<double> Time() => double.Parse((await Page.Locator("#player").GetAttributeAsync("data-time"))!, CultureInfo.InvariantCulture);

    /// <summary>The phase shown.</summary>
    public async Task<string> Phase() => (await Page.Locator("#player").GetAttributeAsync("data-phase"))!;

    /// <summary>Whether it plays.</summary>
    public async Task<bool> Plays() => await Page.Locator("#player").GetAttributeAsync("data-playing") == "true";

    /// <summary>The button Play or Pause of the player.</summary>
    public ILocator PlayButton => Page.Locator("#player .play");

    /// <summary>Stands still at a time, whatever it did before.</summary>
    /// <param name="seconds">s.</param>
    public async Task StandAt(double seconds)
    {
        await Page.Locator("#player .time").FillAsync(seconds.ToString("0.##", CultureInfo.InvariantCulture));
        await Until("document.getElementById('player').dataset.playing === 'false'");
    }

    /// <summary>Makes the window so wide and lets the pictures follow.</summary>
    /// <param name="width">Pixels.</param>
    public async Task Widen(int width)
    {
        await Page.SetViewportSizeAsync(width, 900);
        await Until("Math.abs(document.querySelector('#player .above').viewBox.baseVal.width - document.querySelector('#player .above').clientWidth) < 2");
    }

    /// <summary>Plays, whatever it did before.</summary>
    public async Task PlayOn()
    {
        if (!await Plays())
        {
            await PlayButton.ClickAsync();
        }
    }

    /// <summary>Where the lure is drawn in the picture from above.</summary>
    public async Task<string> LurePlace() => (await Page.Locator("#player .above .lure").First.GetAttributeAsync("transform"))!;

    /// <summary>Waits, frame by frame, until something holds; the page's policy forbids the driver's own way, which builds code from text.</summary>
    /// <param name="condition">An expression of the page.</param>
    public Task Until(string condition) => Page.EvaluateAsync($$$"""
        () => new Promise((done, fail) => {
          const last = performance.now() + 120000;
          const look = () => ({{{condition}}}) ? done() : performance.now() > last ? fail(new Error('waited in vain')) : requestAnimationFrame(look);
          look();
        })
        """);

    /// <summary>Lets the browser draw some frames.</summary>
    /// <param name="count">Frames.</param>
    public Task Frames(int count) => Page.EvaluateAsync("n => new Promise(done => { const next = () => n-- > 0 ? requestAnimationFrame(next) : done(); next(); })", count);

    private void Note(string? text)
    {
        if (text is not null)
        {
            _complaints.Add(text);
        }
    }
}
