using LureSim.Reports.Kit.Text;
using LureSim.Reports.Page;
using LureSim.Studies.Page;
using Microsoft.Playwright;

namespace LureSim.Browser.Tests.Support;

/// <summary>One browser and one page of the product for all tests; each test opens it in a profile of its own.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private const string HostileTitle = "A </script><script>window.hacked=1</script> \\\"<img src=x onerror=window.hacked=2>\\\" & 'q' \\u05e9\\u05dc\\u05d5\\u05dd \\U0001F41F end";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("luresim-page");
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>The page of a shipped scenario with its runs to compare.</summary>
    public string Page => Path.Combine(_folder.FullName, "page.html");

    /// <summary>A page of two files, the titles of which want to be more than text.</summary>
    public string HostilePage => Path.Combine(_folder.FullName, "hostile.html");

    /// <summary>The page of a shipped scenario with the solver inside.</summary>
    public string ComputingPage => Path.Combine(_folder.FullName, "computing.html");

    public async Task InitializeAsync()
    {
        if (BrowserSkip.Reason is not null)
        {
            return;
        }

        string path = Chromium.Path ?? throw new InvalidOperationException(Chromium.Missing);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = path, Args = Chromium.Flags });
        string scenario = Scenario("large-walker.toml"), hostile = Path.Combine(_folder.FullName, "hostile.toml");
        await File.WriteAllTextAsync(hostile, (await File.ReadAllTextAsync(scenario)).Replace("title = \"Large walker on straight 50-lb braid\"", $"title = \"{HostileTitle}\"", StringComparison.Ordinal));
        await File.WriteAllBytesAsync(Page, Build(PageEngine.None, scenario));
        await File.WriteAllBytesAsync(HostilePage, Build(PageEngine.None, hostile, Scenario("small-walker.toml")));
        await File.WriteAllBytesAsync(ComputingPage, Build(PageEngine.Carried, scenario));
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
        _folder.Delete(recursive: true);
    }

    /// <summary>Opens a page as from a folder of the reader's.</summary>
    /// <param name="width">Pixels.</param>
    /// <param name="change">Other wishes: scheme, motion, touch.</param>
    /// <param name="file">The file; by default <see cref="Page"/>.</param>
    /// <param name="address">An address instead of a file.</param>
    public async Task<OpenPage> Open(int width = 1280, Action<BrowserNewContextOptions>? change = null, string? file = null, Uri? address = null)
    {
        var options = new BrowserNewContextOptions { ViewportSize = new() { Width = width, Height = 900 }, Offline = true };
        change?.Invoke(options);
        IBrowserContext context = await _browser!.NewContextAsync(options);
        return await OpenPage.At(context, address ?? new Uri(file ?? Page));
    }

    // Without the search over rhythms, which would take most of the time and moves nothing.
    private static byte[] Build(PageEngine engine, params string[] scenarios) =>
        PageBuilder.Build(PageStudy.Run([.. scenarios.Select(s => new PageFile(s, []))], new(WithRhythms: false), null, CancellationToken.None), Shown.Both, "luresim page", engine);

    internal static string Scenario(string name)
    {
        string at = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(at, "LureSim.sln")))
        {
            at = Path.GetDirectoryName(at) ?? throw new DirectoryNotFoundException("scenarios");
        }

        return Path.Combine(at, "scenarios", name);
    }
}

[CollectionDefinition(Name)]
public sealed class AllInOneBrowser : ICollectionFixture<BrowserFixture>
{
    public const string Name = "browser";
}
