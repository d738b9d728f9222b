using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using OxyPlot;

namespace LureSim.Reports.Cadence;

/// <summary>The colour of every pattern, the same in all pictures of rhythms.</summary>
public static class PatternClasses
{
    private static readonly WalkPattern[] Order =
    [
        WalkPattern.Alternating, WalkPattern.Turning, WalkPattern.Skipping, WalkPattern.Irregular, WalkPattern.OneSided, WalkPattern.Tracking,
        WalkPattern.Spinning, WalkPattern.Still, WalkPattern.Diving, WalkPattern.RolledOver, WalkPattern.Standing, WalkPattern.Fouling,
    ];

    /// <summary>The name in a legend.</summary>
    /// <param name="pattern">Pattern; null = every run failed.</param>
    public static string Name(WalkPattern? pattern) => pattern switch
    {
        null => "failed",
        WalkPattern.Alternating => "walks",
        WalkPattern.Turning => "on the spot",
        WalkPattern.Tracking => "towed",
        WalkPattern.Still => "still",
        WalkPattern.Diving => "dives",
        WalkPattern.RolledOver => "rolls over",
        WalkPattern.Standing => "stands up",
        WalkPattern.Fouling => "fouls",
        WalkPattern p => RetrieveFigures.Name(p),
    };

    /// <summary>The classes that occur, in a fixed order.</summary>
    /// <param name="patterns">Patterns.</param>
    public static StudyClass[] Of(IEnumerable<WalkPattern?> patterns)
    {
        HashSet<WalkPattern?> seen = [.. patterns];
        return
        [
            .. Order.Where(p => seen.Contains(p)).Select(p => new StudyClass(Name(p), Color(p))),
            .. seen.Contains(null) ? new[] { new StudyClass(Name(null), Color(null)) } : [],
        ];
    }

    /// <summary>The colour of a pattern; a test computes how far apart they are, also as colour-blind readers see them.</summary>
    /// <param name="pattern">Pattern; null = every run failed.</param>
    public static OxyColor Color(WalkPattern? pattern) => pattern switch
    {
        WalkPattern.Alternating => ChartStyle.Green,
        WalkPattern.Turning => ChartStyle.Sand,
        WalkPattern.Skipping => ChartStyle.Yellow,
        WalkPattern.Irregular => ChartStyle.Vermilion,
        WalkPattern.OneSided => ChartStyle.Orange,
        WalkPattern.Tracking => ChartStyle.Sky,
        WalkPattern.Spinning => ChartStyle.Purple,
        WalkPattern.Still => ChartStyle.Light,
        WalkPattern.Diving => ChartStyle.Blue,
        WalkPattern.RolledOver => ChartStyle.Ink,
        WalkPattern.Standing => ChartStyle.Cyan,
        WalkPattern.Fouling => ChartStyle.Indigo,
        _ => ChartStyle.Dark,
    };
}
