using LureSim.Model.Retrieve;
using LureSim.Reports.Files;
using LureSim.Reports.Tests.Support;
using LureSim.Reports.Text;

namespace LureSim.Reports.Tests.Text;

public sealed class RetrieveTextTests
{
    [Fact]
    public void Summary_of_a_walking_lure_reads_as_expected() => Expected.Matches(
        "walking.txt",
        RetrieveText.Build(MadeUpRetrieve.Result(), new RunNotes(["wind bends the slack line"], ["rod.damping = 0.10 (0.05 to 0.2)"])));

    [Fact]
    public void Sentences_of_every_pattern_read_as_expected()
    {
        var all = new System.Text.StringBuilder();
        foreach (WalkPattern pattern in Enum.GetValues<WalkPattern>())
        {
            all.Append(pattern).Append('\n');
            foreach (string sentence in RetrieveStory.Sentences(Odd(pattern)))
            {
                all.Append("  ").Append(sentence).Append('\n');
            }
        }

        Expected.Matches("patterns.txt", all.ToString());
    }

    [Fact]
    public void Lines_are_short_and_plain()
    {
        foreach (WalkPattern pattern in Enum.GetValues<WalkPattern>())
        {
            string text = RetrieveText.Build(Odd(pattern) with { Failure = "node 3 ran away at 7.1 s" }, RunNotes.None);
            Assert.All(text.Split('\n'), line => Assert.True(line.Length <= RetrieveText.Width, line));
            Assert.True(System.Text.Ascii.IsValid(text));
            Assert.EndsWith("\n", text, StringComparison.Ordinal);
            Assert.Contains("STOPPED EARLY: node 3", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_tired_wrist_and_a_drowned_nose_are_named_as_limits()
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        RetrieveResult tired = result with { Summary = result.Summary with { WristTorqueRmsNm = 3.5 } };
        RetrieveResult drowned = result with { Summary = result.Summary with { NoseDipM = 0.015 } };
        Assert.Contains(RetrieveStory.Sentences(tired), s => s.StartsWith("What limits it: the hand", StringComparison.Ordinal));
        Assert.Contains(RetrieveStory.Sentences(drowned), s => s.StartsWith("What limits it: the nose", StringComparison.Ordinal));
    }

    // The figures that go with a pattern: a towed lure goes far per stroke, one in slack hardly at all.
    private static RetrieveResult Odd(WalkPattern pattern)
    {
        RetrieveResult result = MadeUpRetrieve.Result(pattern: pattern);
        double reach = pattern switch
        {
            WalkPattern.Tracking or WalkPattern.OneSided => 3.1,
            WalkPattern.Still or WalkPattern.Skipping => 0.2,
            _ => 1.2,
        };
        return result with { Summary = result.Summary with { PullReach = reach } };
    }
}
