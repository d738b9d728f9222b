using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Retrieve;

/// <summary>The short table of a retrieve.</summary>
internal static class RetrieveTable
{
    /// <summary>The table as aligned plain text.</summary>
    /// <param name="s">Figures.</param>
    /// <param name="shown">Units.</param>
    public static string Text(RetrieveSummary s, Shown shown) => AlignedTable.Text([.. s.TowSpeedMS > 0.0 ? Towed(s, shown) : Twitched(s, shown), .. Always(s, shown)]);

    private static TableRow[] Towed(RetrieveSummary s, Shown shown) =>
    [
        shown.Row("steady pull", ShownQuantity.Speed, s.TowSpeedMS),
        new("sheer off the line", $"{Trade.Fixed(s.SheerDeg, 1)} deg", RetrieveFigures.Name(s.Pattern)),
    ];

    private static TableRow[] Twitched(RetrieveSummary s, Shown shown) =>
    [
        new("pattern", RetrieveFigures.Name(s.Pattern), $"{Trade.Fixed(100 * s.FlipShare, 0)} % of {s.TwitchesCounted} twitches change sides"),
        new("swing side to side", $"{Trade.Fixed(s.HeadingSwingDeg, 0)} deg", $"regularity {Trade.Fixed(s.Regularity, 2)}"),
        shown.Row("width of the path", ShownQuantity.Size, s.WidthM),
        shown.Row("width at the nose", ShownQuantity.Size, s.NoseWidthM),
        shown.Row("glide per twitch", ShownQuantity.Size, s.GlideWidthM),
        shown.Row("advance per twitch", ShownQuantity.Size, s.AdvancePerTwitchM),
        new("pull reach", Trade.Digits(s.PullReach), "nose travel over the stroke of a stiff rod"),
        shown.Row("loaded tip travel", ShownQuantity.Size, s.LoadedTipTravelM),
        new("line slack at the nose", $"{Trade.Fixed(100 * s.SlackShare, 0)} % of the time", $"mean slack {shown.Size(s.MeanSlackM)}"),
    ];

    private static TableRow[] Always(RetrieveSummary s, Shown shown) =>
    [
        shown.Row("nose pull, peak", ShownQuantity.Pull, s.NoseTensionPeakN),
        shown.Row("rod tip pull, peak", ShownQuantity.Pull, s.TipForcePeakN),
        shown.Row("line drag, mean", ShownQuantity.Pull, s.LineDragMeanN),
        shown.Row("line drag, peak", ShownQuantity.Pull, s.LineDragPeakN),
        NoseLoad(s.NoseDownLoadN, shown),
        shown.Row("deepest nose dip", ShownQuantity.Size, s.NoseDipM),
        new("pitch", $"{Trade.Fixed(s.PitchLowDeg, 0)} to {Trade.Fixed(s.PitchHighDeg, 0)} deg", $"mean {Trade.Fixed(s.PitchMeanDeg, 0)} deg, at rest {Trade.Fixed(s.RestTrimDeg, 0)} deg"),
        new("roll", $"up to {Trade.Fixed(s.RollPeakDeg, 0)} deg", $"half of the time over {Trade.Fixed(s.RollTypicalDeg, 0)} deg"),
        shown.Row("line sag", ShownQuantity.Size, s.LineSagM),
        shown.Row("line on the water", ShownQuantity.Distance, s.WettedLineM),
        new("water stirred", $"{Trade.Digits(s.WaterStirW)} W", "power that goes into the water"),
        new("reel handle", $"{Trade.Digits(s.HandleTurnsPerS)} turns/s", string.Empty),
        shown.Row("weight on the wrist, peak", ShownQuantity.Torque, s.WristTorquePeakNm),
    ];

    private static TableRow NoseLoad(double n, Shown shown) => Math.Abs(n) < RetrieveStory.LeastNoseLoadN
        ? new("load down on the nose", "none worth naming", string.Empty)
        : shown.Row(n > 0.0 ? "load down on the nose" : "lift up at the nose", ShownQuantity.Pull, Math.Abs(n));
}
