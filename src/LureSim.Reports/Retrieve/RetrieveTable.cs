using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Retrieve;

/// <summary>The short table of a retrieve: the trade's unit, then SI.</summary>
internal static class RetrieveTable
{
    /// <summary>The table as aligned plain text.</summary>
    /// <param name="s">Figures.</param>
    public static string Text(RetrieveSummary s) => AlignedTable.Text(Rows(s));

    private static IEnumerable<TableRow> Rows(RetrieveSummary s) => [.. s.TowSpeedMS > 0.0 ? Towed(s) : Twitched(s), .. Both(s)];

    private static TableRow[] Towed(RetrieveSummary s) =>
    [
        new("steady pull", $"{Trade.Fixed(s.TowSpeedMS, 2)} m/s", string.Empty),
        new("sheer off the line", $"{Trade.Fixed(s.SheerDeg, 1)} deg", RetrieveFigures.Name(s.Pattern)),
    ];

    private static TableRow[] Twitched(RetrieveSummary s) =>
    [
        new("pattern", RetrieveFigures.Name(s.Pattern), $"{Trade.Fixed(100 * s.FlipShare, 0)} % of {s.TwitchesCounted} twitches change sides"),
        new("swing side to side", $"{Trade.Fixed(s.HeadingSwingDeg, 0)} deg", $"regularity {Trade.Fixed(s.Regularity, 2)}"),
        Length("width of the path", s.WidthM),
        Length("width at the nose", s.NoseWidthM),
        Length("glide per twitch", s.GlideWidthM),
        Length("advance per twitch", s.AdvancePerTwitchM),
        new("pull reach", Trade.Digits(s.PullReach), "nose travel / rigid tip stroke"),
        Length("loaded tip travel", s.LoadedTipTravelM),
        new("line slack at the nose", $"{Trade.Fixed(100 * s.SlackShare, 0)} % of the time", $"mean slack {Trade.Digits(100 * s.MeanSlackM)} cm"),
    ];

    private static TableRow[] Both(RetrieveSummary s) =>
    [
        Force("nose pull, peak", s.NoseTensionPeakN),
        Force("rod tip pull, peak", s.TipForcePeakN),
        Force("line drag, mean", s.LineDragMeanN),
        Force("line drag, peak", s.LineDragPeakN),
        Force("load down on the nose", s.NoseDownLoadN),
        Length("deepest nose dip", s.NoseDipM),
        new("pitch", $"{Trade.Fixed(s.PitchLowDeg, 0)} to {Trade.Fixed(s.PitchHighDeg, 0)} deg", $"mean {Trade.Fixed(s.PitchMeanDeg, 0)} deg, at rest {Trade.Fixed(s.RestTrimDeg, 0)} deg"),
        new("roll", $"up to {Trade.Fixed(s.RollPeakDeg, 0)} deg", $"half of the time over {Trade.Fixed(s.RollTypicalDeg, 0)} deg"),
        Length("line sag", s.LineSagM),
        new("line on the water", $"{Trade.Digits(Trade.Feet(s.WettedLineM))} ft", $"{Trade.Digits(s.WettedLineM)} m"),
        new("water stirred", $"{Trade.Digits(s.WaterStirW)} W", string.Empty),
        new("reel handle", $"{Trade.Digits(s.HandleTurnsPerS)} turns/s", string.Empty),
        new("wrist torque, peak", $"{Trade.Digits(Trade.PoundInches(s.WristTorquePeakNm))} lb-in", $"{Trade.Digits(s.WristTorquePeakNm)} N m"),
    ];

    private static TableRow Length(string name, double m) => new(
        name, $"{Trade.Digits(Trade.Inches(m))} in", Math.Abs(m) < 0.01 ? $"{Trade.Digits(1000 * m)} mm" : $"{Trade.Digits(100 * m)} cm");

    private static TableRow Force(string name, double n) => new(
        name, $"{Trade.Digits(Trade.OunceForce(n))} oz-force", $"{Trade.Digits(n)} N");
}
