using LureSim.Reports.Fit;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Text;

/// <summary>What a fit says.</summary>
public sealed class FitTextTests
{
    [Fact]
    public void It_says_what_is_told_what_is_not_and_which_test_would()
    {
        string text = FitText.Build(MadeUpFit.Report(), new(UnitChoice.Metric), ["lure=lure-m.toml"]), words = text.ReplaceLineEndings(" ");
        Assert.Contains("told by your data", text, StringComparison.Ordinal);
        Assert.Contains("hardly told", text, StringComparison.Ordinal);
        Assert.Contains("one reading alone: not taken", text, StringComparison.Ordinal);
        Assert.Contains("not told: stays a guess", text, StringComparison.Ordinal);
        Assert.Contains("Told together rather than each alone: more ", words, StringComparison.Ordinal);
        Assert.Contains("; tows without hooks at two speeds, three times each would.", words, StringComparison.Ordinal);
        Assert.Contains("To use it: --set lure=lure-m.toml", words, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= Closing.Width, line));
        Assert.DoesNotContain("Note:", FitText.Build(MadeUpFit.Report(), new(UnitChoice.Metric), []), StringComparison.Ordinal);
    }

    [Fact]
    public void Scatter_and_outliers_are_named()
    {
        string words = FitText.Build(MadeUpFit.Report(odd: true), new(UnitChoice.Metric), []).ReplaceLineEndings(" ");
        Assert.Contains("Note: the readings scatter 1.3 times as much as their errors say", words, StringComparison.Ordinal);
        Assert.Contains("Note: m.csv(9): period of a bob 0.396 s does not fit the others, which make it about 0.340 s", words, StringComparison.Ordinal);
    }
}
