namespace LureSim.Model.Pool;

/// <summary>Every number of a pool test, in the order of the files; the tows one by one come apart.</summary>
public static class PoolFigures
{
    /// <summary>All.</summary>
    public static IReadOnlyList<Figure<PoolResult>> All { get; } =
    [
        new("sheer_deg", "sheer off the line", "largest mean angle between axis and tow line over the tow speeds", p => p.SheerDeg) { Headline = new("sheer on the tow line", "deg", 1.0) },
        new("tow_trim_deg", "trim at the fastest tow", "trim at the highest tow speed, nose up positive", p => p.Tow[^1].TrimDeg),
        new("tow_pull_N", "pull at the fastest tow", "tension of the tow line at the highest tow speed", p => p.Tow[^1].PullN),
        new("push_turn_m", "pushed, until turned 45 deg", "way after a push along the axis until the heading has turned 45 deg; none where it never does", p => p.Push.TurnM)
        {
            Headline = new("way until turned 45 deg", "cm", 100.0),
        },
        new("push_turned_deg", "turned in the end", "how far the heading has turned when a tenth of the speed is left", p => Math.Abs(p.Push.TurnedDeg)),
        new("push_offset_m", "pushed, beside its line", "distance from the line of the push when a tenth of the speed is left", p => Math.Abs(p.Push.OffsetM)),
        new("coast_per_m", "coast-down", "k of u0/(1 + k u0 t) on a straight way", p => p.Coast.PerM)
        {
            Headline = new("coast-down", "1/m", 1.0),
        },
        new("coast_half_m", "way to half speed", "way on which it loses half of its speed", p => p.Coast.HalfM),
        new("roll_period_s", "roll period", "time of a roll to and fro, let go heeled", p => p.Roll.PeriodS),
        new("roll_loss_share", "roll lost per swing", "what a roll to and fro loses of its size", p => p.Roll.LossShare),
        new("heave_period_s", "heave period", "time of a bob to and fro, let go pressed down", p => p.Heave.PeriodS),
        new("heave_loss_share", "heave lost per swing", "what a bob to and fro loses of its size", p => p.Heave.LossShare),
        new("pitch_period_s", "pitch period", "time of a nod to and fro, let go with the nose pressed down", p => p.Pitch.PeriodS),
        new("pitch_loss_share", "pitch lost per swing", "what a nod to and fro loses of its size", p => p.Pitch.LossShare),
    ];

    /// <summary>A course as files name it.</summary>
    /// <param name="course">Course.</param>
    public static string Name(TowCourse course) => course switch
    {
        TowCourse.Straight => "straight",
        TowCourse.Sheers => "sheers",
        TowCourse.Fishtails => "fishtails",
        TowCourse.NoseUnder => "nose-under",
        TowCourse.Dives => "dives",
        _ => "rolls-over",
    };
}
