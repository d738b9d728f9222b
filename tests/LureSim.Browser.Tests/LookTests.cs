using System.Text;
using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using LureSim.Browser.Tests.Support;
using Microsoft.Playwright;

namespace LureSim.Browser.Tests;

/// <summary>Widths, schemes, contrast and paper.</summary>
[Collection(AllInOneBrowser.Name)]
public sealed partial class LookTests(BrowserFixture browser)
{
    [BrowserTheory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task At_every_width_nothing_overflows_and_the_accessibility_tool_finds_nothing(ColorScheme scheme)
    {
        await using OpenPage open = await browser.Open(change: o => o.ColorScheme = scheme);
        await open.StandAt(8.1);
        foreach (int width in OpenPage.Widths)
        {
            await open.Widen(width);
            Assert.True(await open.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{width} px overflow");
            Assert.Empty(await CutTexts(open));
            AxeResult found = await open.Page.RunAxe(new AxeRunOptions { RunOnly = RunOnlyOptions.Tags("wcag2a", "wcag2aa", "wcag21a", "wcag21aa") });
            Assert.Empty(found.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {n.Html}")));
            Assert.Contains(found.Passes, p => p.Id == "color-contrast");
        }
    }

    // What leaves its picture is cut off.
    private static Task<string[]> CutTexts(OpenPage open) => open.Page.EvaluateAsync<string[]>("""
        () => [...document.querySelectorAll('.player svg text, .pair svg text')].filter(e => e.getClientRects().length && e.textContent).filter(e => {
          const a = e.getBoundingClientRect(), b = e.ownerSVGElement.getBoundingClientRect();
          return a.left < b.left - 1 || a.right > b.right + 1 || a.top < b.top - 1 || a.bottom > b.bottom + 3;
        }).map(e => e.textContent)
        """);

    /// <summary>The tool does not look into pictures: their colours by the formula of WCAG 2.2, 1.4.3 (4.5 for text) and 1.4.11 (3 for lines).</summary>
    [BrowserTheory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Colours_of_the_pictures_stand_out(ColorScheme scheme)
    {
        await using OpenPage open = await browser.Open(change: o => o.ColorScheme = scheme);
        (string Front, string[] Grounds, double Least)[] pairs =
        [
            ("ink", ["paper", "card", "water", "deep", "band"], 4.5), ("soft", ["paper", "card", "water"], 4.5),
            ("tight", ["paper", "water", "card"], 4.5), ("slack", ["paper", "water"], 4.5), ("tight", ["deep"], 3.0), ("slack", ["deep"], 3.0), ("back", ["water"], 3.0),
        ];
        foreach ((string front, string[] grounds, double least) in pairs)
        {
            foreach (string ground in grounds)
            {
                double ratio = Contrast(await Colour(open, front), await Colour(open, ground));
                Assert.True(ratio >= least, $"{front} on {ground}: {ratio:0.00}");
            }
        }
    }

    [BrowserFact]
    public async Task Tight_and_slack_differ_in_weight_and_word_too()
    {
        await using OpenPage open = await browser.Open();
        var weights = new Dictionary<bool, double>();
        foreach (double t in (double[])[6.0, 6.1, 6.3])
        {
            await open.StandAt(t);
            string word = (await open.Page.Locator("#player .above .say").TextContentAsync())!;
            bool tight = word.StartsWith("line tight", StringComparison.Ordinal);
            Assert.True(tight || word.StartsWith("line slack", StringComparison.Ordinal), word);
            ILocator line = open.Page.Locator("#player .whole .line");
            Assert.Contains(tight ? "tight" : "slack", await line.GetAttributeAsync("class"), StringComparison.Ordinal);
            weights[tight] = double.Parse((await line.GetAttributeAsync("stroke-width"))!, System.Globalization.CultureInfo.InvariantCulture);
        }

        Assert.True(weights[true] > 1.5 * weights[false]);
    }

    [BrowserTheory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task Paper_takes_two_to_five_pages_with_stills_and_without_buttons(string format)
    {
        await using OpenPage open = await browser.Open();
        byte[] pdf = await open.Page.PdfAsync(new() { Format = format, PreferCSSPageSize = false, PrintBackground = true });
        Assert.InRange(PdfPage().Count(Encoding.Latin1.GetString(pdf)), 2, 5);
        await open.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.Equal(3, await open.Page.Locator("#stills figure:visible").CountAsync());
        Assert.Equal(0, await open.Page.Locator(".player button:visible, .pair button:visible, .pair select:visible").CountAsync());
    }

    [BrowserTheory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task Two_files_take_seven_pages_at_most(string format)
    {
        await using OpenPage open = await browser.Open(file: browser.HostilePage);
        byte[] pdf = await open.Page.PdfAsync(new() { Format = format, PreferCSSPageSize = false, PrintBackground = true });
        Assert.InRange(PdfPage().Count(Encoding.Latin1.GetString(pdf)), 3, 7);
    }

    /// <summary>No cell of the guesses runs into its neighbour on paper.</summary>
    [BrowserFact]
    public async Task Cells_of_the_guesses_keep_apart_on_paper()
    {
        await using OpenPage open = await browser.Open(width: 688);
        await open.Page.EmulateMediaAsync(new() { Media = Media.Print });
        string[] wide = await open.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('#guesses tbody tr > *')].filter(e => e.offsetParent && e.scrollWidth > e.clientWidth + 1).map(e => e.textContent)");
        Assert.Empty(wide);
        Assert.NotEqual(0, await open.Page.Locator("#guesses tbody td:visible").CountAsync());
    }

    private static async Task<double[]> Colour(OpenPage open, string token)
    {
        string hex = (await open.Page.EvaluateAsync<string>("t => getComputedStyle(document.documentElement).getPropertyValue('--' + t)", token)).Trim();
        Assert.Matches("^#[0-9a-f]{6}$", hex);
        return [.. Enumerable.Range(0, 3).Select(i => Convert.ToInt32(hex.Substring(1 + (2 * i), 2), 16) / 255.0)];
    }

    private static double Contrast(double[] a, double[] b)
    {
        double[] l = [.. new[] { Luminance(a), Luminance(b) }.Order()];
        return (l[1] + 0.05) / (l[0] + 0.05);
    }

    private static double Luminance(double[] rgb)
    {
        double[] linear = [.. rgb.Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4))];
        return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
    }

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PdfPage();
}
