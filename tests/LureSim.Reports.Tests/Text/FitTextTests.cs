using LureSim.Reports.Fit;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Tests.Support;
using LureSim.Scenarios;
using LureSim.Studies.Fit;

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

    [Fact]
    public void A_walk_says_what_the_hand_rests_on_and_how_to_use_it()
    {
        FitReport report = MadeUpFit.Walk();
        IReadOnlyList<string> parts = FitFiles.Overrides("out", "my pool.csv", report);
        Assert.Equal([$"lure={Path.Combine("out", "lure-my-pool.toml")}", $"retrieve={Path.Combine("out", "hand-my-pool.toml")}"], parts);
        string text = FitText.Build(report, new(UnitChoice.Metric), parts), words = text.ReplaceLineEndings(" ");
        Assert.Contains("Walks on film: 1.50 twitches a second over 6.2 pairs (m.csv(70)).", words, StringComparison.Ordinal);
        Assert.Contains("guesses that stay at their value here: rod.bend_load and angler.pull_time.", words, StringComparison.Ordinal);
        Assert.Contains($"--set {parts[0]} --set {parts[1]}", words, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= Closing.Width, line));

        string hand = FitPart.Hand(report)!, lure = FitPart.Text(report);
        Assert.Contains("stroke = \"0.2", hand, StringComparison.Ordinal);
        Assert.Contains("# retrieve.slack: not told; the guess stays", hand, StringComparison.Ordinal);
        Assert.DoesNotContain("stroke", lure, StringComparison.Ordinal);
        Assert.Null(FitPart.Hand(MadeUpFit.Report()));
    }

    // What is written is read back by whoever retrieves.
    [Fact]
    public void The_part_of_the_hand_is_one_of_a_retrieve()
    {
        string folder = Directory.CreateTempSubdirectory("fit").FullName, part = Path.Combine(folder, "hand.toml");
        FitReport report = MadeUpFit.Walk();
        File.WriteAllText(part, FitPart.Hand(report));
        ScenarioResult read = ScenarioSource.FromText("[rod]\nlength = \"7 ft\"\npower = \"medium\"\n[line]\nmaterial = \"braid\"\nlabel = \"30 lb\"\n" + MadeUpFit.Lure, asked: Activities.Retrieve).Resolve([$"retrieve={part}"]);
        Directory.Delete(folder, true);
        Assert.Empty(read.Errors);
        FitEstimate stroke = report.Values.Single(v => v.Unknown.Name == "retrieve.stroke");
        Assert.Equal(stroke.Value, read.Retrieve!.StrokeM, 1e-4);
        Assert.Contains(read.Effective().Guesses, g => g.Key.Path == "retrieve.stroke" && g.Low < stroke.Value && g.High > stroke.Value);
    }
}
