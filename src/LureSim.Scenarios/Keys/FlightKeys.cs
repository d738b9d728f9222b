using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Keys of table <c>[lure]</c> that only a cast reads: its drag in the air.</summary>
public static class FlightKeys
{
    /// <summary>Tumbling share.</summary>
    public static readonly KeySpec Tumbling = new(
        "lure.tumbling", QuantityKind.Ratio, "", "Share of the flight in which the lure tumbles; without it 0.1 for a drop, 0.7 for a hollow body, else 0.5.")
    {
        Words = "share of the flight spent tumbling",
        HasNoDefault = true,
        Parameter = Parameter.Of<LureFlightSpec>(nameof(LureFlightSpec.TumblingShare)),
        Lens = Lens.OfSetup(s => s.Lure.Flight.TumblingShare, Activities.Cast),
    };

    /// <summary>Drag from in front.</summary>
    public static readonly KeySpec FrontCd = new(
        "lure.front_cd", QuantityKind.Ratio, "", "Cd in air on the largest section when it flies straight; drop or cigar 0.2 to 0.35, blunt 0.5.")
    {
        Words = "air drag of the lure head on",
        Parameter = Parameter.Of<LureFlightSpec>(nameof(LureFlightSpec.FrontCd)),
        Lens = Lens.OfSetup(s => s.Lure.Flight.FrontCd, Activities.Cast),
    };

    /// <summary>Finite length.</summary>
    public static readonly KeySpec SideFactor = new(
        "lure.side_factor", QuantityKind.Ratio, "", "Factor on the cross-flow drag of the tumbling body for its finite length.")
    {
        Words = "air drag of the lure side on",
        Parameter = Parameter.Of<LureFlightSpec>(nameof(LureFlightSpec.SideFactor)),
        Lens = Lens.OfSetup(s => s.Lure.Flight.SideFactor, Activities.Cast),
    };

    /// <summary>Drag area in air.</summary>
    public static readonly KeySpec AirDragArea = new(
        "lure.air_drag_area", QuantityKind.Area, "cm2", "CdA of the lure in flight, if it is known; without it the shape decides.")
    {
        Parameter = Parameter.Of<LureFlightSpec>(nameof(LureFlightSpec.KnownCdAM2)),
        Lens = Lens.OfSetup(s => FlyingLure.AreaM2(s.Lure), Activities.Cast),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Tumbling, FrontCd, SideFactor, AirDragArea,
    ];
}
