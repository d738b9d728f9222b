using LureSim.Model.Retrieve;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[retrieve]</c>.</summary>
public static class RetrieveKeys
{
    /// <summary>Distance.</summary>
    public static readonly KeySpec Distance = new("retrieve.distance", QuantityKind.Length, "m", "Straight distance from rod tip to line tie at the start.")
    {
        Default = "15 m",
        Low = 2,
        High = 80,
        FromSpec = s => s.Retrieve.DistanceM,
    };

    /// <summary>Rhythm.</summary>
    public static readonly KeySpec Cadence = new("retrieve.cadence", QuantityKind.Frequency, "/s", "Twitches per second or minute.")
    {
        Default = "2 /s",
        Low = 0.3,
        High = 6,
        FromSpec = s => s.Retrieve.CadencePerS,
    };

    /// <summary>Stroke.</summary>
    public static readonly KeySpec Stroke = new(
        "retrieve.stroke", QuantityKind.Length, "cm", "Rigid tip travel of a twitch; or a wrist angle, times the free length of the rod; 0: a steady pull.")
    {
        Default = "0.20 m",
        Low = 0,
        High = 1,
        OtherKind = QuantityKind.Angle,
        OtherRange = (0, 0.8),
        FromSpec = s => s.Retrieve.StrokeM,
    };

    /// <summary>Slack.</summary>
    public static readonly KeySpec Slack = new("retrieve.slack", QuantityKind.Length, "cm", "Mean slack the angler keeps: unstretched line out minus straight distance.")
    {
        Default = "0.14 m",
        Low = 0,
        High = 2,
        FromSpec = s => s.Retrieve.SlackM,
    };

    /// <summary>Take-up.</summary>
    public static readonly KeySpec TakeUp = new("retrieve.take_up", QuantityKind.Choice, "", "How the reel is worked: keep the slack, constant speed, or a length per twitch.")
    {
        Default = "gather",
        Choices =
        [
            new("gather", (int)TakeUpMode.Gather), new("steady", (int)TakeUpMode.Steady), new("per_twitch", (int)TakeUpMode.PerTwitch),
        ],
        FromSpec = s => (int)s.Retrieve.TakeUp,
    };

    /// <summary>Steady take-up.</summary>
    public static readonly KeySpec TakeUpSpeed = new("retrieve.take_up_speed", QuantityKind.Speed, "m/s", "Line speed of take_up = \"steady\" and of a steady pull (stroke 0).")
    {
        Default = "0.3 m/s",
        Low = 0,
        High = 2,
        FromSpec = s => s.Retrieve.TakeUpSpeedMS,
    };

    /// <summary>Take-up per twitch.</summary>
    public static readonly KeySpec TakeUpPerTwitch = new("retrieve.take_up_per_twitch", QuantityKind.Length, "cm", "Line won per twitch of take_up = \"per_twitch\".")
    {
        Default = "0.2 m",
        Low = 0,
        High = 1,
        FromSpec = s => s.Retrieve.TakeUpPerTwitchM,
    };

    /// <summary>Duration.</summary>
    public static readonly KeySpec Duration = new("retrieve.duration", QuantityKind.Time, "s", "Simulated time.")
    {
        Default = "15 s",
        Low = 0.5,
        High = 600,
        FromSpec = s => s.Retrieve.DurationS,
    };

    /// <summary>Hold the distance.</summary>
    public static readonly KeySpec HoldDistance = new("retrieve.hold_distance", QuantityKind.Flag, "", "true: the angler backs away instead of reeling (rhythm studies).")
    {
        Default = "false",
        FromSpec = s => s.Retrieve.HoldDistance ? 1 : 0,
    };

    /// <summary>Start heading.</summary>
    public static readonly KeySpec StartHeading = new("retrieve.start_heading", QuantityKind.Angle, "deg", "Nose from \"pointing at the rod\" at the start, counter-clockwise.")
    {
        Default = "0.15 rad",
        Low = -Math.PI,
        High = Math.PI,
        FromSpec = s => s.Retrieve.StartHeadingRad,
    };

    /// <summary>Start offset.</summary>
    public static readonly KeySpec StartSideways = new("retrieve.start_sideways", QuantityKind.Length, "m", "Sideways offset of the lure at the start, to the angler's left.")
    {
        Default = "0 m",
        Low = -5,
        High = 5,
        FromSpec = s => s.Retrieve.StartSidewaysM,
    };

    /// <summary>Warm-up.</summary>
    public static readonly KeySpec WarmUp = new("retrieve.warm_up", QuantityKind.Time, "s", "Time before twitches count; at most two thirds of the duration is used.")
    {
        Default = "6 s",
        Low = 0,
        High = 120,
        FromSpec = s => s.Retrieve.WarmUpS,
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Distance, Cadence, Stroke, Slack, TakeUp, TakeUpSpeed, TakeUpPerTwitch, Duration, HoldDistance, StartHeading, StartSideways, WarmUp,
    ];
}
