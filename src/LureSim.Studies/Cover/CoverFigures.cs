using LureSim.Model;

namespace LureSim.Studies.Cover;

/// <summary>The numbers of one cover, in the order of the files.</summary>
public static class CoverFigures
{
    /// <summary>All.</summary>
    public static IReadOnlyList<Figure<CoverCase>> All { get; } =
    [
        new("hook_force_peak_N", "pull on the hook", "largest pull on the hook in the strike", c => c.Own.Strike.Summary.HookForcePeakN),
        new("set_force_N", "sets all points", "pull on the hook that sets all points", c => c.Own[CoverCriterion.Sets].Need.Value),
        new("set_force_low_N", "at least", "the same at the low end of its guess", c => c.Own[CoverCriterion.Sets].Need.Low),
        new("set_force_high_N", "at most", "the same at the high end of its guess", c => c.Own[CoverCriterion.Sets].Need.High),
        new("lost_to_plants_N", "lost on the way", "pull at the tip less pull at the hook at the peak: plants, water and the swing of the line", c => c.Own.Strike.Summary.LostToPlantsN),
        new("first_to_give_reserve", "reserve of what gives first", "its strength over its load in the strike: below 1 it gives", c => c.Own.Strike.Summary.FirstToGive.Ratio),
        new("drag_N", "drag", "slip force of a full spool as set", c => c.Own.Try.Setup.Reel.DragN),
        new("drag_window_low_N", "least drag", "lowest drag that sets all points; none where none does", c => c.Window.Range.LowN),
        new("drag_window_high_N", "most drag", "highest drag at which nothing gives, in the strike and at the boat; none where something gives at any", c => c.Window.Range.HighN),
        new("drag_window_strike_high_N", "most drag in the strike", "the same in the strike alone", c => c.Window.InStrike.HighN),
        new("drag_advised_N", "best drag", "drag to use for the strike; none where none can be told", c => c.Window.Advice.DragN),
        new("drag_boat_eased_N", "drag at the boat", "drag at the boat at which nothing gives, whatever the guesses are", c => c.Own.EasedN),
        new("boat_pull_N", "starts the drag at the boat", "pull at the boat that starts the drag as set", c => c.Own[CoverCriterion.Boat].Need.Value),
        new("boat_bears_N", "borne at the boat", "what the weakest part bears there", c => c.Own[CoverCriterion.Boat].Have.Value),
        new("through_pull_N", "through the plants", "pull at the tip that draws the fish through the plants", c => c.Own[CoverCriterion.Drawn].Need.Value),
        new("through_pull_high_N", "at most", "the same where the plants grip as hard as their guess allows", c => c.Own[CoverCriterion.Drawn].Need.High),
        new("over_pull_N", "over the plants", "pull at the tip that slides fish and weed over the top", c => c.Own.Landing.Plants.Over.TipN),
        new("held_pull_N", "can be held", "largest pull at the tip for a moment: hands, rod, tackle and drag hold it", c => c.Own[CoverCriterion.Drawn].Have.Value),
        new("lift_limit_kg", "lift limit", "largest mass swung in with the rod", c => c.Own.Landing.BestLift.MassKg),
        new("lift_need_kg", "to be lifted", "fish and weed", c => c.Own.DueKg),
        new("take_up_burst_m_s", "reel, short burst", "line won per second in a short burst", c => c.Own[CoverCriterion.Tight].Have.Value),
        new("fish_speed_m_s", "fish that comes", "its top speed", c => c.Own[CoverCriterion.Tight].Need.Value),
        new("crawl_pull_N", "starts it over the mat", "pull at the lure that starts it over the mat; none elsewhere and with trebles", c => c.Crawl?.Statics.PullN),
        new("crawl_way_per_twitch_m", "way per twitch", "way over the mat per twitch; none likewise", c => c.Crawl?.Summary.WayPerTwitchM),
    ];
}
