namespace LureSim.Model.Retrieve;

/// <summary>
/// Names what comes before any walk: a lure that stays under, lies on its back, stands on its tail, or is pulled over its hooks. Shares of the time
/// or of the twitches, each at half or a quarter: these are words, not limits of physics.
/// </summary>
public static class AttitudeFinder
{
    /// <summary>All of the hull under water for this share of the time: it dives.</summary>
    public const double DivingShare = 0.25;

    /// <summary>Belly over the back, more than 90 deg of roll, for this share of the time: it rolls over.</summary>
    public const double RolledOverShare = 0.5;

    /// <summary>Nose higher than <see cref="StandingDeg"/> for this share of the time: it stands up, and its heading means little.</summary>
    public const double StandingShare = 0.5;

    /// <summary>Pitch from which a lure stands, deg.</summary>
    public const double StandingDeg = 60.0;

    /// <summary>Taut line within reach of a hook in this share of the twitches: it fouls.</summary>
    public const double FoulingShare = 0.25;

    /// <summary>The pattern that overrules all others, or null.</summary>
    /// <param name="underShare">Share of the time with all of the hull under water.</param>
    /// <param name="bellyUpShare">Share of the time with more than 90 deg of roll.</param>
    /// <param name="standingShare">Share of the time with the nose higher than 60 deg.</param>
    /// <param name="hookedShare">Share of the twitches with taut line within reach of a hook.</param>
    public static WalkPattern? Find(double underShare, double bellyUpShare, double standingShare, double hookedShare) =>
        underShare >= DivingShare ? WalkPattern.Diving
        : bellyUpShare >= RolledOverShare ? WalkPattern.RolledOver
        : standingShare >= StandingShare ? WalkPattern.Standing
        : hookedShare >= FoulingShare ? WalkPattern.Fouling
        : null;
}
