using LureSim.Browser.Tests.Support;

namespace LureSim.Browser.Tests;

/// <summary>Who may do without a browser.</summary>
public sealed class SkippingTests
{
    [Theory]
    [InlineData(null, null, true)]
    [InlineData(null, "true", false)]
    [InlineData("/usr/bin/chromium", null, false)]
    public void Tests_are_left_out_only_where_there_is_no_browser_and_nobody_insists(string? path, string? ci, bool left) =>
        Assert.Equal(left, BrowserSkip.ReasonFor(path, ci) is not null);
}
