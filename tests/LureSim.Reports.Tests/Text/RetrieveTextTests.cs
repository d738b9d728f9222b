using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;

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
            foreach (string sentence in RetrieveStory.Sentences(Odd(pattern), Shown.Both))
            {
                all.Append("  ").Append(sentence).Append('\n');
            }
        }

        foreach ((WalkPattern pattern, double sheer) in new[] { (WalkPattern.Tracking, 0.4), (WalkPattern.OneSided, 19.6), (WalkPattern.Irregular, 12.0) })
        {
            all.Append("Steady pull, ").Append(pattern).Append('\n');
            RetrieveResult tow = Odd(pattern);
            foreach (string sentence in RetrieveStory.Sentences(tow with { Summary = tow.Summary with { TowSpeedMS = 0.3, SheerDeg = sheer } }, Shown.Both))
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
            Assert.All(text.Split('\n'), line => Assert.True(line.Length <= Closing.Width, line));
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
        Assert.Contains(RetrieveStory.Sentences(tired, Shown.Both), s => s.StartsWith("What limits it: the hand", StringComparison.Ordinal));
        Assert.Contains(RetrieveStory.Sentences(drowned, Shown.Both), s => s.StartsWith("What limits it: the nose", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.0099, false)]
    [InlineData(0.0101, true)]
    public void A_nose_a_centimetre_under_is_the_limit(double dip, bool limit)
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        Assert.Equal(limit, RetrieveStory.Sentences(result with { Summary = result.Summary with { NoseDipM = dip } }, Shown.Both)
            .Any(s => s.StartsWith("What limits it: the nose", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(0.0, null)]
    [InlineData(0.0009, null)]
    [InlineData(0.12, "The drag slipped: set to 6.7 lb (3.1 kg), it gave 4.7 in (12 cm) of line; tighten it.")]
    [InlineData(3.0, "The drag slipped: set to 6.7 lb (3.1 kg), it gave 9.8 ft (3.0 m) of line; tighten it.")]
    public void A_drag_that_slipped_is_said_on_twitches_and_on_a_steady_pull(double slip, string? said)
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        foreach (double tow in new[] { 0.0, 0.3 })
        {
            RetrieveSummary summary = result.Summary with { DragSlipM = slip, TowSpeedMS = tow };
            Assert.Equal(said, RetrieveStory.Sentences(result with { Summary = summary }, Shown.Both).SingleOrDefault(s => s.Contains("drag slipped", StringComparison.Ordinal)));
        }
    }

    // Half a turn from side to side is square to the line on both; beyond it the nose points away from the rod.
    [Theory]
    [InlineData(170, 0.01, false)]
    [InlineData(181, 0.01, true)]
    [InlineData(170, 0.03, true)]
    public void A_nose_that_points_away_from_the_rod_is_said(double swing, double away, bool said)
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        IReadOnlyList<string> story = RetrieveStory.Sentences(
            result with { Summary = result.Summary with { HeadingSwingDeg = swing, AwayShare = away } }, Shown.Both);
        Assert.Equal(said, story.Any(s => s.Contains("points away from the rod", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_steady_pull_prints_its_sheer_and_no_twitches()
    {
        RetrieveResult result = MadeUpRetrieve.Result(pattern: WalkPattern.Tracking);
        string text = RetrieveText.Build(result with { Summary = result.Summary with { TowSpeedMS = 0.3, SheerDeg = 0.4 } }, RunNotes.None);
        Assert.Contains("steady pull", text, StringComparison.Ordinal);
        Assert.Contains("0.4 deg", text, StringComparison.Ordinal);
        Assert.DoesNotContain("glide", text, StringComparison.Ordinal);
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
