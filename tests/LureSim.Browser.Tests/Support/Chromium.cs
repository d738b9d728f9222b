namespace LureSim.Browser.Tests.Support;

/// <summary>Where the browser is.</summary>
internal static class Chromium
{
    /// <summary>Why a test was left out.</summary>
    public const string Missing = "no Chromium found: install it (Debian: apt-get install chromium) or name it in the variable CHROMIUM";

    /// <summary>Flags with which it neither asks the network nor wants a desktop.</summary>
    public static readonly string[] Flags =
    [
        "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    /// <summary>The program, or null.</summary>
    public static string? Path { get; } = Find();

    private static string? Find()
    {
        string? named = Environment.GetEnvironmentVariable("CHROMIUM");
        IEnumerable<string> places = string.IsNullOrEmpty(named) ? ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"] : [named];
        return places.FirstOrDefault(File.Exists);
    }
}

/// <summary>A test in a real browser: left out with a note where there is none, but never where CI=true.</summary>
internal sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute() => Skip = BrowserSkip.Reason;
}

/// <summary>The same with data.</summary>
internal sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = BrowserSkip.Reason;
}

internal static class BrowserSkip
{
    public static string? Reason { get; } = ReasonFor(Chromium.Path, Environment.GetEnvironmentVariable("CI"));

    public static string? ReasonFor(string? path, string? ci) => path is null && ci != "true" ? Chromium.Missing : null;
}
