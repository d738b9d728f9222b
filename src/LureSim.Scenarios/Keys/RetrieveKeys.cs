using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[retrieve]</c>.</summary>
public static class RetrieveKeys
{
    /// <summary>Distance.</summary>
    public static readonly KeySpec Distance = new("retrieve.distance", QuantityKind.Length, "m", "Straight distance from rod tip to line tie at the start.")
    {
        Parameter = Parameter.Of<RetrieveTask>(nameof(RetrieveTask.DistanceM)),
        Lens = Lens.OfRetrieve(t => t.DistanceM),
    };

    /// <summary>Rhythm.</summary>
    public static readonly KeySpec Cadence = new("retrieve.cadence", QuantityKind.Frequency, "/s", "Twitches per second or minute.")
    {
        Parameter = Parameter.Of<RetrieveTask>(nameof(RetrieveTask.CadencePerS)),
        Lens = Lens.OfRetrieve(t => t.CadencePerS),
    };

    /// <summary>Stroke.</summary>
    public static readonly KeySpec Stroke = new(
        "retrieve.stroke", QuantityKind.Length, "cm", "Rigid tip travel of a twitch; or a wrist angle, times the free length of the rod; 0: a steady pull.")
    {
        Default = "0.20 m",
        OtherKind = QuantityKind.Angle,
        OtherRange = (0, 0.8),
        Parameter = Parameter.Of<RetrieveTask>(nameof(RetrieveTask.StrokeM)),
        Lens = Lens.OfRetrieve(t => t.StrokeM),
    };

    /// <summary>Slack.</summary>
    public static readonly KeySpec Slack = new("retrieve.slack", QuantityKind.Length, "cm", "Mean slack the angler keeps: unstretched line out minus straight distance.")
    {
        Parameter = Parameter.Of<TakeUpSpec>(nameof(TakeUpSpec.SlackM)),
        Lens = Lens.OfRetrieve(t => t.TakeUp.SlackM),
    };

    /// <summary>Take-up.</summary>
    public static readonly KeySpec TakeUp = new("retrieve.take_up", QuantityKind.Choice, "", "How the reel is worked: keep the slack, constant speed, or a length per twitch.")
    {
        Default = "gather",
        Choices =
        [
            new("gather", (int)TakeUpMode.Gather), new("steady", (int)TakeUpMode.Steady), new("per_twitch", (int)TakeUpMode.PerTwitch),
        ],
        Lens = Lens.OfRetrieve(t => (int)t.TakeUp.Mode, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Steady take-up.</summary>
    public static readonly KeySpec TakeUpSpeed = new("retrieve.take_up_speed", QuantityKind.Speed, "m/s", "Line speed of take_up = \"steady\" and of a steady pull (stroke 0).")
    {
        Parameter = Parameter.Of<TakeUpSpec>(nameof(TakeUpSpec.SpeedMS)),
        Lens = Lens.OfRetrieve(t => t.TakeUp.SpeedMS, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Take-up per twitch.</summary>
    public static readonly KeySpec TakeUpPerTwitch = new("retrieve.take_up_per_twitch", QuantityKind.Length, "cm", "Line won per twitch of take_up = \"per_twitch\".")
    {
        Parameter = Parameter.Of<TakeUpSpec>(nameof(TakeUpSpec.PerTwitchM)),
        Lens = Lens.OfRetrieve(t => t.TakeUp.PerTwitchM, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Lag of gathering.</summary>
    public static readonly KeySpec GatherLag = new("retrieve.gather_lag", QuantityKind.Time, "s", "Time over which the hand that gathers averages the slack.")
    {
        Words = "lag of the gathering hand",
        Parameter = Parameter.Of<TakeUpSpec>(nameof(TakeUpSpec.LagS)),
        Lens = Lens.OfRetrieve(t => t.TakeUp.LagS, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Gain of gathering.</summary>
    public static readonly KeySpec GatherGain = new("retrieve.gather_gain", QuantityKind.Frequency, "/s", "Take-up speed per slack too much.")
    {
        Words = "eagerness of the gathering hand",
        Parameter = Parameter.Of<TakeUpSpec>(nameof(TakeUpSpec.GainPerS)),
        Lens = Lens.OfRetrieve(t => t.TakeUp.GainPerS, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Reset of gathering.</summary>
    public static readonly KeySpec GatherReset = new("retrieve.gather_reset", QuantityKind.Frequency, "/s", "Rate at which lasting slack becomes lasting take-up speed.")
    {
        Words = "patience of the gathering hand",
        Parameter = Parameter.Of<TakeUpSpec>(nameof(TakeUpSpec.ResetPerS)),
        Lens = Lens.OfRetrieve(t => t.TakeUp.ResetPerS, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Limit of gathering.</summary>
    public static readonly KeySpec GatherFastest = new("retrieve.gather_fastest", QuantityKind.Speed, "m/s", "Fastest take-up of a hand that gathers.")
    {
        Words = "fastest gathering",
        Parameter = Parameter.Of<TakeUpSpec>(nameof(TakeUpSpec.FastestMS)),
        Lens = Lens.OfRetrieve(t => t.TakeUp.FastestMS, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Duration.</summary>
    public static readonly KeySpec Duration = new("retrieve.duration", QuantityKind.Time, "s", "Simulated time.")
    {
        Parameter = Parameter.Of<RetrieveTask>(nameof(RetrieveTask.DurationS)),
        Lens = Lens.OfRetrieve(t => t.DurationS),
    };

    /// <summary>Hold the distance.</summary>
    public static readonly KeySpec HoldDistance = new("retrieve.hold_distance", QuantityKind.Flag, "", "true: the angler backs away instead of reeling (rhythm studies).")
    {
        Default = "false",
        Lens = Lens.OfRetrieve(t => t.HoldDistance ? 1 : 0),
    };

    /// <summary>Motions of the hull.</summary>
    public static readonly KeySpec Hull = new("retrieve.hull", QuantityKind.Choice, "", "How the lure may move: in all six degrees of freedom, or planar (surge, sway, yaw and a bobbing nose), for lures within 12 deg of level.")
    {
        Default = "six",
        Choices = [new("six", (int)HullFreedom.Six), new("planar", (int)HullFreedom.Planar)],
        Lens = Lens.OfRetrieve(t => (int)t.Hull),
    };

    /// <summary>Start heading.</summary>
    public static readonly KeySpec StartHeading = new("retrieve.start_heading", QuantityKind.Angle, "deg", "Nose from \"pointing at the rod\" at the start, counter-clockwise.")
    {
        Parameter = Parameter.Of<RetrieveTask>(nameof(RetrieveTask.StartHeadingRad)),
        Lens = Lens.OfRetrieve(t => t.StartHeadingRad),
    };

    /// <summary>Start offset.</summary>
    public static readonly KeySpec StartSideways = new("retrieve.start_sideways", QuantityKind.Length, "m", "Sideways offset of the lure at the start, to the angler's left.")
    {
        Parameter = Parameter.Of<RetrieveTask>(nameof(RetrieveTask.StartSidewaysM)),
        Lens = Lens.OfRetrieve(t => t.StartSidewaysM),
    };

    /// <summary>Warm-up.</summary>
    public static readonly KeySpec WarmUp = new("retrieve.warm_up", QuantityKind.Time, "s", "Time before twitches count; at most two thirds of the duration is used.")
    {
        Parameter = Parameter.Of<RetrieveTask>(nameof(RetrieveTask.WarmUpS)),
        Lens = Lens.OfRetrieve(t => t.WarmUpS),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Distance, Cadence, Stroke, Slack, TakeUp, TakeUpSpeed, TakeUpPerTwitch, GatherLag, GatherGain, GatherReset, GatherFastest, Duration, HoldDistance, Hull, StartHeading, StartSideways, WarmUp,
    ];
}
