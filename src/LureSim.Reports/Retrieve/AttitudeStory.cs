using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Retrieve;

/// <summary>How the lure lies in the water, in sentences.</summary>
internal static class AttitudeStory
{
    /// <summary>What goes before any walk, or null: it dives, rolls over, stands up or fouls.</summary>
    /// <param name="s">Figures.</param>
    /// <param name="shown">Units.</param>
    public static string? Trouble(RetrieveSummary s, Shown shown) => s.Pattern switch
    {
        WalkPattern.Diving => $"It dives: all of it is under water {Percent(s.UnderShare)} of the time, up to {shown.Size(s.DipM)} below where it floats.",
        WalkPattern.RolledOver => $"It rolls over: its belly is up {Percent(s.BellyUpShare)} of the time.",
        WalkPattern.Standing =>
            $"It stands up: its nose is more than {Trade.Fixed(AttitudeFinder.StandingDeg, 0)} deg over the water most of the time (mean {Trade.Fixed(s.PitchMeanDeg, 0)} deg); it nods, and side to side means little.",
        WalkPattern.Fouling => $"It fouls: in {Percent(s.HookedShare)} of the twitches the taut line passes within reach of a hook.",
        _ => null,
    };

    /// <summary>Pitch, dip and roll of an ordinary run; nothing for a hull that does neither.</summary>
    /// <param name="s">Figures.</param>
    public static IEnumerable<string> Sentences(RetrieveSummary s)
    {
        if (s.PitchHighDeg - s.PitchLowDeg < 0.1 && s.RollPeakDeg < 0.1)
        {
            yield break;
        }

        yield return $"It rests {Lies(s.RestTrimDeg)} and goes {Lies(s.PitchMeanDeg)} on average, between {Trade.Fixed(s.PitchLowDeg, 0)} and {Trade.Fixed(s.PitchHighDeg, 0)} deg; "
            + $"its nose is under water {Percent(s.NoseUnderShare)} of the time and it rolls up to {Trade.Fixed(s.RollPeakDeg, 0)} deg{BellyUp(s)}.";
    }

    private static string BellyUp(RetrieveSummary s) =>
        s.BellyUpShare >= 0.005 && s.Pattern != WalkPattern.RolledOver ? $", belly up {Percent(s.BellyUpShare)} of the time (the least certain of these numbers)" : string.Empty;

    private static string Lies(double deg) => Math.Abs(deg) < 0.5 ? "level" : $"{Trade.Fixed(Math.Abs(deg), 0)} deg {(deg > 0.0 ? "nose up" : "nose down")}";

    private static string Percent(double share) => $"{Trade.Fixed(100.0 * share, 0)} %";
}
