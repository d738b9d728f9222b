namespace LureSim.Model.Retrieve;

/// <summary>The figures of a retrieve, over the twitches after warm-up. Definitions: <c>docs/retrieve.md</c>.</summary>
public sealed record RetrieveSummary
{
    /// <summary>Pattern of the answer to the rhythm.</summary>
    public required WalkPattern Pattern { get; init; }

    /// <summary>Share of twitches that end on the other side than the one before, 0 to 1.</summary>
    public required double FlipShare { get; init; }

    /// <summary>Median swing of the heading side to side in a twitch, deg.</summary>
    public required double HeadingSwingDeg { get; init; }

    /// <summary>Mean sideways travel per twitch, m.</summary>
    public required double GlideWidthM { get; init; }

    /// <summary>Mean over the twitches of the centre's path, peak to peak across the line, m: the glide with its arc.</summary>
    public required double WidthM { get; init; }

    /// <summary>The same of the nose, m: what the eye follows.</summary>
    public required double NoseWidthM { get; init; }

    /// <summary>Mean size of the angle between the nose and the bearing of the rod tip, deg; on a steady pull the sheer angle.</summary>
    public required double SheerDeg { get; init; }

    /// <summary>Share of time with the nose pointing away from the rod, more than 90 deg off the line, 0 to 1.</summary>
    public required double AwayShare { get; init; }

    /// <summary>Speed of a steady pull, m/s; 0 when the lure was twitched.</summary>
    public required double TowSpeedMS { get; init; }

    /// <summary>Mean travel toward the rod per twitch, m.</summary>
    public required double AdvancePerTwitchM { get; init; }

    /// <summary>1 - coefficient of variation of the swing, 0 to 1.</summary>
    public required double Regularity { get; init; }

    /// <summary>Share of time with less than 0.02 N at the nose.</summary>
    public required double SlackShare { get; init; }

    /// <summary>Nose travel toward the rod per twitch over rigid tip stroke; 0 on a steady pull.</summary>
    public required double PullReach { get; init; }

    /// <summary>Mean impulse at the nose per twitch, N s.</summary>
    public required double PullImpulseNs { get; init; }

    /// <summary>Highest 5 ms mean tension at the nose, N.</summary>
    public required double NoseTensionPeakN { get; init; }

    /// <summary>Mean of the sum of the drag forces on the line, magnitude of the resultant, N.</summary>
    public required double LineDragMeanN { get; init; }

    /// <summary>Highest 5 ms mean of the same, N.</summary>
    public required double LineDragPeakN { get; init; }

    /// <summary>Mean downward pull on the nose by line and leader, N.</summary>
    public required double NoseDownLoadN { get; init; }

    /// <summary>Deepest dip of the nose below its rest height, m.</summary>
    public required double NoseDipM { get; init; }

    /// <summary>Trim at rest, nose up positive, deg.</summary>
    public required double RestTrimDeg { get; init; }

    /// <summary>Mean pitch, nose up positive, deg.</summary>
    public required double PitchMeanDeg { get; init; }

    /// <summary>Lowest pitch, deg.</summary>
    public required double PitchLowDeg { get; init; }

    /// <summary>Highest pitch, deg.</summary>
    public required double PitchHighDeg { get; init; }

    /// <summary>Median size of the roll, deg.</summary>
    public required double RollTypicalDeg { get; init; }

    /// <summary>Largest size of the roll, deg.</summary>
    public required double RollPeakDeg { get; init; }

    /// <summary>Share of time with more than 90 deg of roll, 0 to 1.</summary>
    public required double BellyUpShare { get; init; }

    /// <summary>Share of time with the foremost point of the axis under water, 0 to 1.</summary>
    public required double NoseUnderShare { get; init; }

    /// <summary>Share of time with all of the hull under water, 0 to 1.</summary>
    public required double UnderShare { get; init; }

    /// <summary>Deepest dip of the centre of gravity below its height at rest, m.</summary>
    public required double DipM { get; init; }

    /// <summary>Share of twitches in which the taut line passes within reach of a hook, 0 to 1.</summary>
    public required double HookedShare { get; init; }

    /// <summary>Mean over time of the line's lowest point below the straight line tip to tie, m.</summary>
    public required double LineSagM { get; init; }

    /// <summary>Highest 5 ms mean tension at the rod tip, N.</summary>
    public required double TipForcePeakN { get; init; }

    /// <summary>Mean travel of the loaded tip in a twitch, m.</summary>
    public required double LoadedTipTravelM { get; init; }

    /// <summary>Largest bend of the rod tip from its straight line over free length.</summary>
    public required double RodBendShare { get; init; }

    /// <summary>Mean power the hull puts into the water, W.</summary>
    public required double WaterStirW { get; init; }

    /// <summary>Mean handle turns per second.</summary>
    public required double HandleTurnsPerS { get; init; }

    /// <summary>Line that slipped through the drag in the whole run, m.</summary>
    public required double DragSlipM { get; init; }

    /// <summary>Highest wrist torque, N m.</summary>
    public required double WristTorquePeakNm { get; init; }

    /// <summary>Root-mean-square wrist torque, N m.</summary>
    public required double WristTorqueRmsNm { get; init; }

    /// <summary>Mean slack, m.</summary>
    public required double MeanSlackM { get; init; }

    /// <summary>Mean length of line in the water, m; a floating line counts by the share of it that is wet.</summary>
    public required double WettedLineM { get; init; }

    /// <summary>Twitches counted.</summary>
    public required int TwitchesCounted { get; init; }

    /// <summary>Distance from tip to lure at the end, m.</summary>
    public required double EndDistanceM { get; init; }
}
