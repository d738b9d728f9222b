using LureSim.Model.Cover;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Retrieve;

/// <summary>What happened, why, and what limits it, in sentences made from the numbers of the run.</summary>
internal static class RetrieveStory
{
    /// <summary>Less than this moves the nose of a small lure by less than a fifth of a millimetre, N.</summary>
    public const double LeastNoseLoadN = 5e-4;

    // Less slip than this is nothing to tighten a drag for, m.
    private const double LeastSlipM = 1e-3;

    /// <summary>Two to five sentences, one per line.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<string> Sentences(RetrieveResult result, Shown shown)
    {
        RetrieveSummary s = result.Summary;
        return s.TowSpeedMS > 0.0
            ? [Tow(s, shown), .. AttitudeStory.Sentences(s), Cost(s, shown), .. Slip(result, shown), .. Plants(result)]
            : AttitudeStory.Trouble(s, shown) is string trouble
                ? [trouble, .. AttitudeStory.Sentences(s), Cost(s, shown), .. Slip(result, shown), .. Plants(result)]
                : [What(s, shown), .. Facing(s), Why(result), .. AttitudeStory.Sentences(s), Cost(s, shown), .. Slip(result, shown), .. Plants(result), Limit(result, shown)];
    }

    private static string[] Slip(RetrieveResult result, Shown shown)
    {
        double slip = result.Summary.DragSlipM;
        return slip < LeastSlipM
            ? []
            : [$"The drag slipped: set to {shown.Pull(result.Setup.Reel.DragN)}, it gave {(slip < 1.0 ? shown.Size(slip) : shown.Distance(slip))} of line; tighten it."];
    }

    // A lure that lies on plants does not float: what is computed here is another thing.
    private static string[] Plants(RetrieveResult result) => result.Setup.Cover is { Kind: CoverKind.Mat, OpeningM: 0.0 }
        ? ["The file has it on a closed mat (cover.opening is 0); here it floats, with plants holding its line. The command crawl draws it over them; cover.opening = \"3 m\" puts it into free water."]
        : [];

    private static string Tow(RetrieveSummary s, Shown shown)
    {
        string pull = $"On a steady pull of {shown.Speed(s.TowSpeedMS)}";
        string off = $"{Trade.Fixed(s.SheerDeg, 0)} deg off its line on average";
        return AttitudeStory.Trouble(s, shown) is string trouble ? $"{pull}: {char.ToLowerInvariant(trouble[0])}{trouble[1..]}" : s.Pattern switch
        {
            WalkPattern.Tracking => $"{pull} it comes straight: {off}.",
            WalkPattern.OneSided => $"{pull} it does not come straight: it sheers to one side, {off}.",
            _ => $"{pull} it does not come straight: it fishtails, {off}.",
        };
    }

    private static string[] Facing(RetrieveSummary s) => s.HeadingSwingDeg <= 180.0 && s.AwayShare < 0.02
        ? []
        :
        [
            $"It turns beyond square to the line: the nose points away from the rod {Trade.Fixed(100 * s.AwayShare, 0)} % of the time.",
        ];

    private static string What(RetrieveSummary s, Shown shown) => s.Pattern switch
    {
        WalkPattern.Alternating =>
            $"It walks: {Trade.Fixed(100 * s.FlipShare, 0)} % of the twitches turn it to the other side, {Trade.Fixed(s.HeadingSwingDeg, 0)} deg from side to "
            + $"side; its path is {shown.Size(s.WidthM)} wide, that of the nose {shown.Size(s.NoseWidthM)}, and it comes "
            + $"{shown.Size(s.AdvancePerTwitchM)} toward the rod each time.",
        WalkPattern.Turning =>
            $"It turns on the spot: {Trade.Fixed(100 * s.FlipShare, 0)} % of the twitches turn it to the other side, {Trade.Fixed(s.HeadingSwingDeg, 0)} deg "
            + $"from side to side, but its path is only {shown.Size(s.WidthM)} wide, less than "
            + "half the hull's length.",
        WalkPattern.Skipping =>
            $"It walks with gaps: some pulls are lost in slack, and {Trade.Fixed(100 * s.FlipShare, 0)} % of the twitches change sides.",
        WalkPattern.OneSided =>
            $"It does not walk: it swings {Trade.Fixed(s.HeadingSwingDeg, 0)} deg but ends each twitch on the same side of the line.",
        WalkPattern.Tracking =>
            $"It does not walk: it is towed {shown.Size(s.AdvancePerTwitchM)} a twitch and stays near the line "
            + $"(median swing {Trade.Fixed(s.HeadingSwingDeg, 0)} deg).",
        WalkPattern.Spinning => $"It spins: a twitch swings it {Trade.Fixed(s.HeadingSwingDeg, 0)} deg, past its own line, and it may foul.",
        WalkPattern.Still => "It stands: hardly any pull reaches the nose.",
        _ => $"It turns without a rule: {Trade.Fixed(100 * s.FlipShare, 0)} % of the twitches change sides, median swing {Trade.Fixed(s.HeadingSwingDeg, 0)} deg.",
    };

    private static string Why(RetrieveResult result)
    {
        RetrieveSummary s = result.Summary;
        string slack = $"the line is slack {Trade.Fixed(100 * s.SlackShare, 0)} % of the time";
        TwitchWindow counted = TwitchWindow.Choose(result, Math.Max(result.Twitches.Count - result.WarmUpTwitches, 1));
        double free = Spans.TurnInSlack(
            result.Series["heading_deg"], result.Series["nose_tension_N"], counted.From, counted.To);
        string turning = $"{Trade.Fixed(100 * free, 0)} % of its turning happens then";
        return s.Pattern switch
        {
            WalkPattern.Alternating or WalkPattern.Turning =>
                $"Why: {slack} and {turning}; each pull turns the nose toward the rod, the turn carries it past, and the next "
                + "pull takes it back.",
            WalkPattern.Spinning => $"Why: {slack} and {turning}, with too little drag on hull and hooks to stop the turn.",
            WalkPattern.Still or WalkPattern.Skipping =>
                $"Why: {slack}, and the nose travels only {Trade.Digits(s.PullReach)} of the tip's stroke; slack takes up the rest.",
            WalkPattern.Tracking or WalkPattern.OneSided when s.PullReach > 1 =>
                $"Why: {slack}, but the nose travels {Trade.Digits(s.PullReach)} times the tip's stroke in each twitch: the line tows "
                + "the nose back before the turn can cross over.",
            _ => $"Why: {slack} and {turning}; the nose travels {Trade.Digits(s.PullReach)} times the tip's stroke.",
        };
    }

    private static string Cost(RetrieveSummary s, Shown shown) =>
        $"The line pulls with up to {shown.Pull(s.TipForcePeakN)} at the rod tip and {shown.Pull(s.NoseTensionPeakN)} at the nose, as a spring scale would read it; "
        + $"water and air drag on it with {shown.Pull(s.LineDragMeanN)} on average, {NoseLoad(s.NoseDownLoadN, shown)}.";

    private static string NoseLoad(double n, Shown shown) => Math.Abs(n) < LeastNoseLoadN
        ? "and line and leader put no load worth naming on the nose"
        : $"and line and leader {(n > 0.0 ? "press the nose down" : "hold the nose up")} with {shown.Pull(Math.Abs(n))}";

    private static string Limit(RetrieveResult result, Shown shown)
    {
        RetrieveSummary s = result.Summary;
        double sustained = result.Setup.Angler.SustainedTorqueNm;
        string wrist = $"the wrist works at {Trade.Fixed(100.0 * s.WristTorqueRmsNm / sustained, 0)} % of what it is guessed to keep up";
        if (s.WristTorqueRmsNm > sustained)
        {
            return $"What limits it: the hand; {wrist}.";
        }

        if (s.NoseDipM > 0.010)
        {
            return $"What limits it: the nose, pulled under by up to {shown.Size(s.NoseDipM)}; the hand has room: {wrist}.";
        }

        return s.Pattern switch
        {
            WalkPattern.Still or WalkPattern.Skipping => "What limits it: slack. Keep less of it, or make a longer stroke.",
            WalkPattern.Tracking or WalkPattern.OneSided when s.PullReach > 1 =>
                "What limits it: too tight a line for this rhythm. Leave more slack, twitch faster, or pull shorter.",
            _ => $"What limits it: neither hand nor nose; {wrist}, and the nose dips {shown.Size(s.NoseDipM)} at most.",
        };
    }
}
