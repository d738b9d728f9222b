using LureSim.Model.Cover;
using LureSim.Model.Fish;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Strike;

/// <summary>What happens in a strike, in order, and what limits it, in sentences made from its numbers.</summary>
internal static class StrikeStory
{
    private const double Degree = Math.PI / 180.0;

    // A pull of a quarter pound less at the hook, and slack for a tenth of the time, are worth a word.
    private const double LostWorthN = 1.0, SlackWorth = 0.1, SlipWorthM = 0.01;

    /// <summary>A few sentences, one per line.</summary>
    /// <param name="strike">Strike.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<string> Sentences(StrikeResult strike, Shown shown) =>
        strike.Summary.TimeToTightS is null ? [Loose(strike, shown)] : [What(strike, shown), By(strike.Summary, shown), Limit(strike, shown), .. Plants(strike, shown), .. After(strike, shown), First(strike.Summary)];

    /// <summary>Who strikes how, from where.</summary>
    /// <param name="strike">Strike.</param>
    /// <param name="shown">Units.</param>
    public static string Made(StrikeResult strike, Shown shown) =>
        $"{Trade.Capital(StrikeNames.Of(strike.Task.Stroke.Style))} at {Trade.Fixed(100.0 * strike.Task.Stroke.Effort, 0)} % of full effort, {shown.Distance(strike.Task.DistanceM)} from rod tip to hook";

    private static string Loose(StrikeResult strike, Shown shown) => $"{Made(strike, shown)}: the line never comes tight. Less slack is due, or a longer stroke.";

    private static string What(StrikeResult strike, Shown shown)
    {
        StrikeSummary s = strike.Summary;
        int points = strike.Setup.Hook.Points;
        string tight = strike.Task.SlackM > 0.0 ? $"the slack is gone after {Seconds(s.TimeToTightS)}" : $"the line pulls at the hook after {Seconds(s.TimeToTightS)}";
        string set = s.Sets ? $", {StrikeNames.Points(points)} {(points == 1 ? "is" : "are")} in after {Seconds(s.TimeToForceS)}," : "";
        string each = points == 1 ? "" : $", {shown.Pull(s.ForcePerPointN)} on each of {points} points";
        string due = s.Sets ? "" : $" That does not set {StrikeNames.Points(points)}: {shown.Pull(strike.Setup.Hook.SettingN)} would be due.";
        return $"{Made(strike, shown)}: {tight}{set} and the pull is largest after {Seconds(s.PeakTimeS)}, {shown.Pull(s.HookForcePeakN)}{each}.{due}";
    }

    private static string By(StrikeSummary s, Shown shown)
    {
        string slipped = s.DragSlipM >= SlipWorthM ? $"the drag lets out {shown.Size(s.DragSlipM)} until the hands only hold" : "the drag does not slip";
        return $"By then the rod has turned by {Trade.Fixed(s.RodTurnRad / Degree, 0)} deg, its tip has moved {shown.Distance(s.TipTravelM)} and the line has stretched by {shown.Size(s.LineStretchM)}; {slipped}.";
    }

    private static string Limit(StrikeResult strike, Shown shown)
    {
        StrikeSummary s = strike.Summary;
        return s.Limit switch
        {
            StrikeLimit.Clutch => $"What limits it: the drag. It starts to slip at {shown.Pull(strike.Setup.Reel.DragN * strike.Setup.Reel.Clutch.StaticRatio)} off the reel; more strength only makes it give more line.",
            StrikeLimit.Stroke => "What limits it: the stroke. The rod is at its end before the line is as tight as the hands could make it; less slack, a shorter distance or less stretch helps, more strength little.",
            _ => $"What limits it: the hands. At that rod angle they alone hold {shown.Pull(s.HookForceStaticN)}{Overshoot(s)}; more strength helps, a stiffer rod hardly.",
        };
    }

    private static string Overshoot(StrikeSummary s) =>
        s.HookForcePeakN > s.HookForceStaticN ? $", and the speed of hands and rod makes {Trade.Fixed(s.HookForcePeakN / s.HookForceStaticN, 1)} times that of it" : "";

    private static IEnumerable<string> Plants(StrikeResult strike, Shown shown)
    {
        if (strike.Setup.Cover.Kind != CoverKind.Open && strike.Summary.LostToPlantsN >= LostWorthN)
        {
            yield return $"On its way through plants and water {shown.Pull(strike.Summary.LostToPlantsN)} of the pull is lost.";
        }
    }

    private static IEnumerable<string> After(StrikeResult strike, Shown shown)
    {
        StrikeSummary s = strike.Summary;
        if (strike.Setup.Fish.Way != FishWay.Fast && s.SlackAfterShare >= SlackWorth)
        {
            yield return $"The fish is drawn toward you at up to {shown.Speed(s.FishSpeedMS)}, and for {Trade.Fixed(100.0 * s.SlackAfterShare, 0)} % of the time after the largest pull the line is slack: reel at once.";
        }
    }

    private static string First(StrikeSummary s)
    {
        Margin first = s.FirstToGive;
        return first.Ratio < 1.0
            ? $"{Trade.Capital(StrikeNames.Of(first.Place))} {StrikeNames.Gives(first.Place)}: it bears {Trade.Digits(first.Ratio)} times its load."
            : $"Nearest to giving is {StrikeNames.Of(first.Place)}: it bears {Trade.Digits(first.Ratio)} times its load.";
    }

    private static string Seconds(double? s) => $"{Trade.Fixed(s ?? double.NaN, 2)} s";
}
