using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Reels;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>What happened, why, and what limits it, in sentences made from the numbers of the cast.</summary>
internal static class CastStory
{
    private const double Degree = Math.PI / 180.0;

    // Guessed range of everyday efforts, docs/cast.md.
    private const double EverydayLow = 0.35, EverydayHigh = 0.65;

    // Share of the hands' top speed above which less than a third of their torque is left.
    private const double SpeedLimited = 2.0 / 3.0;

    /// <summary>A few sentences, one per line.</summary>
    /// <param name="report">Cast.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<string> Sentences(CastReport report, Shown shown)
    {
        CastResult c = report.Cast;
        return [What(c, shown), Flight(c, shown), Limit(c), Release(c, shown), Spool(report, shown), .. Odd(c, shown)];
    }

    /// <summary>Turning speed in whole turns, which everybody can picture: "1.8".</summary>
    /// <param name="radS">Turning speed, rad/s.</param>
    public static string Turns(double radS) => Trade.Digits(radS / (2.0 * Math.PI));

    private static string What(CastResult c, Shown shown) => c.DistanceMeanM < 0.0
        ? $"Such casts land behind the angler, {shown.Distance(-c.DistanceMeanM)} back on average."
        : $"{Made(c)}, many casts make {shown.Distance(c.DistanceMeanM)} on average; of ten one falls short of {shown.Distance(c.DistanceP10M)} and one goes past {shown.Distance(c.DistanceP90M)}. "
            + $"{(IsBest(c) ? "Let go at the very best moment it is" : "Without the error of the release it is")} {shown.Distance(c.DistanceM)}, with {shown.Distance(c.LineOutM)} of line off the tip.";

    // Who casts: without it a distance says nothing.
    private static string Made(CastResult c)
    {
        HandsSpec hands = c.Setup.Hands;
        string style = hands.Style switch { CastingStyle.WristFlick => "flicked from the wrist", CastingStyle.OneHanded => "cast with one hand", _ => "cast with both hands" };
        string skill = hands.Skill switch { CastingSkill.Beginner => "a beginner", CastingSkill.Expert => "an expert", _ => "practised hands" };
        string effort = hands.Effort is >= EverydayLow and <= EverydayHigh ? "an everyday " : "";
        return $"{Trade.Capital(style)} at {effort}{Trade.Fixed(100.0 * hands.Effort, 0)} % of full effort by {skill}";
    }

    private static string Flight(CastResult c, Shown shown)
    {
        CastEnergy e = c.Energy;
        double lure = e.LureJ + e.LureAirJ;
        return $"The lure leaves at {shown.Speed(c.LaunchSpeedMS)}, {Trade.Fixed(c.LaunchAngleRad / Degree, 0)} deg above the horizontal. "
            + $"Of {shown.Energy(e.HandsJ)} from the hands it carries {Percent(lure, e.HandsJ)} as far as the air and the splash; line and reel take "
            + $"{Percent(e.LineJ + e.LineAirJ + e.SpoolJ + e.BrakesJ + e.PickUpJ, e.HandsJ)}, the air on the rod {Percent(e.RodAirJ, e.HandsJ)}, rod and hands keep or lose the rest.";
    }

    private static string Limit(CastResult c)
    {
        double top = c.Setup.Hands.TopSpeedRadS, share = c.ReleaseTurnRadS / top;
        string turning = $"at release the butt turns at {Turns(c.ReleaseTurnRadS)} of the {Turns(top)} turns a second (a guess) at which the hands have no torque left";
        return share > SpeedLimited
            ? $"What limits it: the speed of the hands; {turning}. A longer lever helps, more strength alone little."
            : $"What limits it: the torque of the hands; {turning}. Less to swing, or more strength, helps more than a longer lever.";
    }

    private static string Release(CastResult c, Shown shown)
    {
        string how = IsBest(c) ? "Let go at the best moment" : "Let go as asked";
        double early = c.DistanceChangeM(-0.010), late = c.DistanceChangeM(0.010);
        return $"{how}; 10 ms earlier {Gain(early, shown)}, 10 ms later {Gain(late, shown)}.";
    }

    private static bool IsBest(CastResult c) => c.Task.Release.Mode == ReleaseMode.Best && c.Task.Release.ErrorS == 0.0;

    private static string Spool(CastReport report, Shown shown)
    {
        CastResult c = report.Cast;
        if (c.Setup.Reel.Kind == ReelKind.Fixed)
        {
            CastEnergy e = c.Energy;
            return $"The fixed spool throws no loops; lifting the line over its lip and through the rings takes {shown.Energy(e.BrakesJ + e.PickUpJ)}.";
        }

        return $"The spool peaks at {Trade.Rpm(c.SpoolPeakRpm)}; {Trade.Fixed(c.LoopsMean, 1)} loops lie loose on average, and {Tangles(c.TangleShare)}. {Brake(report, shown)}";
    }

    private static string Tangles(double share) => share < 0.005 ? "hardly a cast tangles" : $"{Trade.Fixed(100.0 * share, 0)} casts in a hundred tangle (a guess)";

    private static string Brake(CastReport report, Shown shown)
    {
        if (report.Brakes.Count == 0)
        {
            return "";
        }

        BrakePoint open = report.Brakes[0], strongest = report.Brakes[^1];
        string from = $"Brake open: {shown.Distance(open.DistanceMeanM)} and {Trade.Fixed(open.LoopsMean, 1)} loops; ";
        return report.LeastBrake is double least
            ? least == 0.0
                ? from + "this thumb needs no brake."
                : from + $"from {Trade.Fixed(least, 1)} times the brake that matches the lure on, fewer than one cast in twenty tangles."
            : from + $"even {Trade.Fixed(strongest.Strength, 0)} times the brake that matches the lure leaves more than one tangle in twenty casts.";
    }

    private static IEnumerable<string> Odd(CastResult c, Shown shown)
    {
        if (c.Remarks.HasFlag(CastRemarks.HitsWaterInSwing))
        {
            yield return "The lure hits the water before the line is let go: raise the hand, or shorten the overhang.";
        }

        if (c.Remarks.HasFlag(CastRemarks.AboveBreakingLoad))
        {
            yield return $"The line is pulled with {shown.Pull(c.PeakTensionN)}, more than the {shown.Pull(c.Setup.Line.BreakN)} it bears: it would break.";
        }

        if (c.Remarks.HasFlag(CastRemarks.Backlash))
        {
            yield return "Backlash: more than five loops lie loose on the spool; the next ones catch them.";
        }

        if (c.Remarks.HasFlag(CastRemarks.BendBeyondRod))
        {
            yield return $"The rod bends by {Trade.Fixed(100.0 * c.PeakBendShare, 0)} % of its length: this is more lure than a rod of its power is made for (above 65 %, a guess). Whatever the distance says, it may break.";
        }

        if (c.Remarks.HasFlag(CastRemarks.LineRunsOut))
        {
            yield return $"All {shown.Distance(c.Setup.Reel.Spool.LineM)} of line leave the spool; its knot stops the lure.";
        }

        if (c.Remarks.HasFlag(CastRemarks.StartRaised))
        {
            yield return $"The swing starts only {Trade.Fixed(-c.StartAngleRad / Degree, 0)} deg back instead of {Trade.Fixed(-c.Setup.Hands.StartRad / Degree, 0)}: farther back the lure would hang in the water.";
        }
    }

    private static string Gain(double m, Shown shown) => Math.Abs(m) < 0.05 ? "changes nothing" : $"{(m < 0.0 ? "costs" : "gains")} {shown.Distance(Math.Abs(m))}";

    private static string Percent(double part, double whole) => $"{Trade.Fixed(100.0 * part / whole, 0)} %";
}
