namespace LureSim.Model.Strike;

/// <summary>What limits the pull of a strike.</summary>
public enum StrikeLimit
{
    /// <summary>Strength of hands and body on a line that is tight early.</summary>
    Hands,

    /// <summary>The stroke ended before the line was as tight as hands could make it.</summary>
    Stroke,

    /// <summary>The drag slipped.</summary>
    Clutch,
}

/// <summary>What can give.</summary>
public enum WeakPlace
{
    /// <summary>Knot in the main line.</summary>
    Knot,

    /// <summary>Main line itself.</summary>
    Line,

    /// <summary>Leader with its knots.</summary>
    Leader,

    /// <summary>Wire of the hook, bent open.</summary>
    HookWire,

    /// <summary>Hold of the points in the fish.</summary>
    HookHold,

    /// <summary>Rod.</summary>
    Rod,
}

/// <summary>One place that can give.</summary>
/// <param name="Place">Which.</param>
/// <param name="LoadN">Its largest load, N at the hook for hook and leader, at the tip for line and knot, a pull at 45 deg of rod angle for the rod.</param>
/// <param name="StrengthN">What it bears, N.</param>
public sealed record Margin(WeakPlace Place, double LoadN, double StrengthN)
{
    /// <summary>Strength over load; below 1 it gives.</summary>
    public double Ratio => StrengthN / LoadN;
}

/// <summary>Figures of a strike. Times count from the first movement of the hands.</summary>
public sealed record StrikeSummary
{
    /// <summary>Largest pull of the line on the hook, N.</summary>
    public required double HookForcePeakN { get; init; }

    /// <summary>When, s.</summary>
    public required double PeakTimeS { get; init; }

    /// <summary>Pull that the hands' torque alone holds at the hook, rod bent, nothing moving, N: the static part of the peak.</summary>
    public required double HookForceStaticN { get; init; }

    /// <summary>Time integral of the pull on the hook until the hands only hold, N s.</summary>
    public required double ImpulseNs { get; init; }

    /// <summary>Largest pull per point, N.</summary>
    public required double ForcePerPointN { get; init; }

    /// <summary>First time with a tight line: 0.5 N at the hook, s; null when it never comes tight.</summary>
    public required double? TimeToTightS { get; init; }

    /// <summary>First time with the pull that sets all points, s; null when it is never reached.</summary>
    public required double? TimeToForceS { get; init; }

    /// <summary>Time over which the pull sets all points, s.</summary>
    public required double SetTimeS { get; init; }

    /// <summary>Stretch of line and leader at the peak, m, counted from no tension.</summary>
    public required double LineStretchM { get; init; }

    /// <summary>Line that slipped through the drag until the hands only hold, m.</summary>
    public required double DragSlipM { get; init; }

    /// <summary>Line that slipped until the end, m.</summary>
    public required double DragSlipEndM { get; init; }

    /// <summary>Travel of the rod tip away from the hook from the start to the peak, along the straight line between them, m.</summary>
    public required double TipTravelM { get; init; }

    /// <summary>Turn of the butt from its start to the peak, rad.</summary>
    public required double RodTurnRad { get; init; }

    /// <summary>Largest pull at the rod tip, N.</summary>
    public required double TipForcePeakN { get; init; }

    /// <summary>Largest pull at the reel, N.</summary>
    public required double ReelForcePeakN { get; init; }

    /// <summary>Largest torque of the hands, N m.</summary>
    public required double HandTorquePeakNm { get; init; }

    /// <summary>Torque of the rod on the hands at the pull's peak over the one that the rod bears.</summary>
    public required double RodUse { get; init; }

    /// <summary>Force that line and fish lose to plants at the peak: pull at the tip less pull at the hook, N; may be below 0 while the line swings.</summary>
    public required double LostToPlantsN { get; init; }

    /// <summary>Speed of the fish toward the angler, largest, m/s; 0 for a fast hook.</summary>
    public required double FishSpeedMS { get; init; }

    /// <summary>Way of the fish toward the angler until the hands only hold, m; negative away.</summary>
    public required double FishWayM { get; init; }

    /// <summary>Share of the time after the peak with slack line (under 0.5 N at the hook).</summary>
    public required double SlackAfterShare { get; init; }

    /// <summary>What limited the pull.</summary>
    public required StrikeLimit Limit { get; init; }

    /// <summary>All places that can give, least margin first.</summary>
    public required ValueList<Margin> Margins { get; init; }

    /// <summary>The place with the least margin.</summary>
    public Margin FirstToGive => Margins[0];

    /// <summary>True when the pull reached what sets all points.</summary>
    public bool Sets => TimeToForceS is not null;
}
