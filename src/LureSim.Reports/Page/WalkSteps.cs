using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>Pull, turn, glide and wait in the numbers of the run: why it walks, or what keeps it from walking.</summary>
internal static class WalkSteps
{
    /// <summary>Whether the retrieve walks.</summary>
    /// <param name="c">File.</param>
    public static bool Walks(PageCase c) => c.Own.Result?.Summary.Pattern == WalkPattern.Alternating;

    /// <summary>The run in a sentence or two.</summary>
    /// <param name="c">File.</param>
    public static string InShort(PageCase c)
    {
        if (c.Own.Result is not RetrieveResult run || run.Twitches.Count <= run.WarmUpTwitches || run.Task.IsTow)
        {
            return c.Own.Result is null ? "The model could not compute this retrieve." : "A steady pull, without twitches.";
        }

        string share = $"the line is slack {Trade.Fixed(100.0 * run.Summary.SlackShare, 0)} % of the time";
        return run.Summary.Pattern switch
        {
            WalkPattern.Alternating => $"It walks, because {share}: a short pull turns the nose, then nothing holds it, so it turns on, slides off to the side and lies across, just where the next pull needs it.",
            WalkPattern.Turning => $"It turns from side to side with every twitch, almost on the spot; {share}, so that each turn runs on by itself.",
            _ => $"In this retrieve it does not walk: {CadenceStory.Answer(run.Summary.Pattern)}; {share}.",
        };
    }

    /// <summary>A numbered list of what happens in a twitch, or why there is none.</summary>
    /// <param name="c">File.</param>
    /// <param name="shown">Units.</param>
    public static Markup Of(PageCase c, Shown shown)
    {
        if (c.Own.Result is not RetrieveResult run || run.Task.IsTow || run.Twitches.Count <= run.WarmUpTwitches)
        {
            return StorySections.Paragraphs(["There is no twitch to take apart here."]);
        }

        var t = new TwitchMeans(run);
        RetrieveSummary s = run.Summary;
        (string, string)[] steps =
        [
            ("Pull", $"The rod tip, bending, moves by {shown.Size(s.LoadedTipTravelM)} on average. The line comes tight, at the nose with up to {shown.Pull(t.PeakN)} in a typical twitch, and turns the nose by {Trade.Fixed(t.TurnTightDeg, 0)} degrees."),
            ("Turn", $"Then nothing holds the nose: it turns on by another {Trade.Fixed(t.TurnSlackDeg, 0)} degrees on a slack line. Slack is there {Trade.Fixed(100.0 * s.SlackShare, 0)} % of the time."),
            ("Glide", $"Between one pull and the next it gets {shown.Size(s.GlideWidthM)} to the side and {shown.Size(s.AdvancePerTwitchM)} nearer: {Trade.Digits(s.PullReach)} times what the tip of a stiff rod would have moved."),
            ("Next pull", Next(t, s)),
        ];
        return Markup.Of(
            Markup.Tag("ol", "steps", steps.Select(x => Markup.Tag("li", "", Markup.Tag("strong", "", x.Item1), " ", Markup.Prose(x.Item2)))),
            Markup.Tag("p", "key", Markup.Prose($"Means over the {s.TwitchesCounted} twitches after the first {run.WarmUpTwitches}; tight means more than {shown.Pull(Spans.SlackBelowN)} at the nose.")));
    }

    private static string Next(TwitchMeans t, RetrieveSummary s)
    {
        string lies = $"Just before the next pull the nose points {Trade.Fixed(t.EndDeg, 0)} degrees off the line";
        return s.Pattern switch
        {
            WalkPattern.Alternating => $"{lies}, to the other side than a twitch before. So the pull takes it back across, and the walk goes on.",
            WalkPattern.Turning => $"{lies}, to the other side each time, but it travels too little to be called a walk.",
            WalkPattern.Tracking => $"{lies}. That is almost straight, so the pull only tows it: it does not walk.",
            WalkPattern.OneSided => $"{lies}, always to the same side: the line has brought it back before it could cross, so it does not walk.",
            _ => $"{lies}, without a rule that holds from twitch to twitch: it does not walk steadily.",
        };
    }

    // Means over the twitches that count.
    private sealed class TwitchMeans
    {
        public TwitchMeans(RetrieveResult run)
        {
            ValueList<double> heading = run.Series["heading_deg"], pull = run.Series["nose_tension_N"];
            TwitchWindow window = TwitchWindow.Choose(run, run.Twitches.Count - run.WarmUpTwitches);
            var peaks = new List<double>();
            double tight = 0.0, slack = 0.0;
            for (int k = 0; k < window.Count; k++)
            {
                (int from, int to) = window.Twitch(run, k);
                double peak = 0.0;
                for (int i = from + 1; i < to; i++)
                {
                    double turn = Math.Abs(heading[i] - heading[i - 1]);
                    peak = Math.Max(peak, pull[i]);
                    _ = Math.Max(pull[i], pull[i - 1]) < Spans.SlackBelowN ? slack += turn : tight += turn;
                }

                peaks.Add(peak);
            }

            PeakN = PatternFinder.Median(peaks);
            (TurnTightDeg, TurnSlackDeg) = (tight / window.Count, slack / window.Count);
            EndDeg = run.Twitches.Skip(window.First).Take(window.Count).Average(t => Math.Abs(t.EndHeadingRad)) * 180.0 / Math.PI;
        }

        public double PeakN { get; }

        public double TurnTightDeg { get; }

        public double TurnSlackDeg { get; }

        public double EndDeg { get; }
    }
}
