namespace LureSim.Model.Landing;

/// <summary>Every number of holding and landing, in the order of the files; tables by angle, speed, mass and ratio come apart.</summary>
public static class LandingFigures
{
    private const double Degree = Math.PI / 180.0;
    private const int Square = 5;

    /// <summary>All.</summary>
    public static IReadOnlyList<Figure<LandingResult>> All { get; } =
    [
        new("lift_limit_kg", "lift limit", "largest mass swung in with the rod, best of rod angles of 10 to 70 deg: what hands, rod, knot, leader and hook bear", l => l.BestLift.MassKg)
        {
            Headline = new("lift limit", "kg", 1.0),
        },
        new("lift_angle_deg", "angle of that lift", "butt over the level in that lift", l => l.BestLift.RodAngleRad / Degree),
        new("hold_limit_kg", "hangs for long", "largest mass held hanging with the torque that is kept up, best angle", l => l.BestHold.MassKg),
        new("heave_square_N", "pull for a moment", "largest pull on a fish along a level line, rod square to it, full strength", l => l.Heave[Square].LoadN),
        new("pull_square_N", "pull for long", "largest pull on a fish along a level line, rod square to it, held for long", l => l.Pull[Square].LoadN)
        {
            Headline = new("pull held for long", "N", 1.0),
        },
        new("pull_6ft6_N", "same hands, rod of 6 ft 6 in", "pull held for long with a rod of 6 ft 6 in and the same power load, square to the line", l => l.Lever.ShortN),
        new("pull_7ft6_N", "same hands, rod of 7 ft 6 in", "pull held for long with a rod of 7 ft 6 in and the same power load, square to the line", l => l.Lever.LongN),
        new("tow_pull_N", "pull that tows it", "pull that tows the tired fish under the surface at the steady speed of the reel", l => l.TowAtReel.PullN.Value),
        new("head_up_speed_m_s", "speed that keeps its head up", "least speed at which half of the head stays out of the water", l => l.OnTop.LeastMS.Value),
        new("head_up_pull_N", "pull that keeps it on top", "steady pull that keeps half of its head out and the fish coming, tired, at the steady speed of the reel or the least speed for it", l => l.OnTop.PullN.Value),
        new("fight_N", "and while it swims away", "thrust of the fish that has to be held on top of that until it turns", l => l.OnTop.FightN.Value),
        new("plants_through_N", "through plants, at the fish", "pull at the fish that drags it through plants", l => l.Plants.Through.FishN),
        new("plants_through_tip_N", "through plants, at the tip", "the same at the rod tip, line laid over plants", l => l.Plants.Through.TipN),
        new("plants_over_tip_N", "over plants, at the tip", "pull at the tip that slides fish and weed over the top, line held up", l => l.Plants.Over.TipN),
        new("plants_out_N", "lifted out", "weight of fish and weed", l => l.Plants.Out.FishN),
        new("take_up_steady_m_s", "reel, kept up", "line won per second at the handle turns that are kept up: a faster fish makes slack", l => l.Reel.SteadyMS),
        new("take_up_burst_m_s", "reel, short burst", "line won per second in a short burst", l => l.Reel.BurstMS),
        new("sweep_m", "won by one sweep", "line won once by sweeping the rod back", l => l.SweepM),
        new("boat_line_give_m_N", "give of the short line", "way that line and leader give per newton with the fish at the boat", l => l.Boat.LineGiveMN),
        new("boat_rod_give_m_N", "give of the rod", "way that the bent rod's tip gives per newton, fish at the boat", l => l.Boat.RodGiveMN),
        new("boat_locked_N", "surge, drag locked", "largest pull when the fish surges at the boat with a locked drag and the butt held fast", l => l.Boat.LockedN)
        {
            Headline = new("surge on a locked drag", "N", 1.0),
        },
        new("boat_pointed_N", "surge, rod pointed at it", "the same with the rod pointed at the fish", l => l.Boat.PointedN),
        new("far_locked_N", "the same surge far out", "the same with the fish at its distance, rod at the same angle to the line", l => l.Boat.FarN),
        new("boat_drag_N", "surge, drag as set", "largest pull of the surge with the drag as it is set", l => l.Boat.WithDragN),
        new("boat_safe_drag_N", "drag that spares all", "setting straight off the reel at which the drag starts below the weakest part at the boat, the rod among them, by the margin", l => l.Boat.SafeDragN)
        {
            Headline = new("drag at the boat", "N", 1.0),
        },
        new("boat_hook_drag_N", "drag that spares the hook", "the same without the rod: hook, knot and leader", l => l.Boat.HookDragN),
    ];

    /// <summary>A limit as files name it.</summary>
    /// <param name="limit">Limit.</param>
    public static string Name(LandingLimit limit) => limit switch
    {
        LandingLimit.Hands => "hands",
        LandingLimit.Arms => "arms",
        LandingLimit.Rod => "rod",
        LandingLimit.Knot => "knot",
        LandingLimit.Leader => "leader",
        LandingLimit.HookWire => "hook-wire",
        _ => "hook-hold",
    };
}
