namespace LureSim.Model.Strike;

/// <summary>Every number of a strike, in the order of the files.</summary>
public static class StrikeFigures
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>All.</summary>
    public static IReadOnlyList<Figure<StrikeResult>> All { get; } =
    [
        Of("hook_force_peak_N", "pull on the hook, largest", "largest pull of the line on the hook before the hands only hold", s => s.HookForcePeakN) with { Headline = new("largest pull on the hook", "N", 1.0) },
        Of("peak_time_s", "when", "when, from the first movement of the hands", s => s.PeakTimeS),
        Of("hook_force_static_N", "held by the hands alone", "pull that the hands' torque alone holds at the hook at that rod angle, rod bent, nothing moving", s => s.HookForceStaticN),
        Of("impulse_Ns", "impulse", "time integral of the pull on the hook until the hands only hold", s => s.ImpulseNs) with { Headline = new("impulse on the hook", "N s", 1.0) },
        Of("force_per_point_N", "pull per point", "largest pull over the points that share it", s => s.ForcePerPointN),
        Of("time_to_tight_s", "line tight after", "first time with 0.5 N at the hook; none where the line never comes tight", s => s.TimeToTightS),
        Of("time_to_force_s", "points set after", "first time with the pull that sets all points; none where it is never reached", s => s.TimeToForceS) with { Headline = new("time until the points are set", "s", 1.0) },
        Of("set_time_s", "time over that pull", "time over which the pull sets all points", s => s.SetTimeS),
        Of("line_stretch_m", "line stretched", "stretch of line and leader at the peak, from no tension", s => s.LineStretchM) with { Headline = new("stretch of the line", "cm", 100.0) },
        Of("drag_slip_m", "drag slipped", "line that slipped through the drag until the hands only hold", s => s.DragSlipM) with { Headline = new("line that slipped", "cm", 100.0) },
        Of("drag_slip_end_m", "until the end", "line that slipped until the end", s => s.DragSlipEndM),
        Of("tip_travel_m", "tip moved", "way of the rod tip from the start to the peak, along the line to the hook", s => s.TipTravelM),
        Of("rod_turn_deg", "rod turned", "turn of the butt from the start to the peak", s => s.RodTurnRad / Degree),
        Of("tip_force_peak_N", "pull at the tip, largest", "largest pull at the rod tip", s => s.TipForcePeakN),
        Of("reel_force_peak_N", "pull at the reel, largest", "largest pull at the reel", s => s.ReelForcePeakN),
        Of("hand_torque_peak_Nm", "torque of the hands, largest", "largest torque of the hands", s => s.HandTorquePeakNm),
        Of("rod_use_share", "rod, share of what it bears", "torque of the rod on the hands over the one that it bears", s => s.RodUse),
        Of("lost_to_plants_N", "lost on the way", "pull at the tip less pull at the hook at the peak: plants, water and the swing of the line", s => s.LostToPlantsN),
        Of("fish_speed_m_s", "speed of the fish", "largest speed of the fish toward the angler; 0 for a fast hook", s => s.FishSpeedMS),
        Of("fish_way_m", "way of the fish", "way of the fish toward the angler until the hands only hold; negative away", s => s.FishWayM),
        Of("slack_after_share", "slack afterwards", "share of the time after the peak with slack line", s => s.SlackAfterShare),
        .. Enum.GetValues<WeakPlace>().Select(MarginOf),
    ];

    /// <summary>A place as files name it.</summary>
    /// <param name="place">Place.</param>
    public static string Name(WeakPlace place) => place switch
    {
        WeakPlace.Knot => "knot",
        WeakPlace.Line => "line",
        WeakPlace.Leader => "leader",
        WeakPlace.HookWire => "hook-wire",
        WeakPlace.HookHold => "hook-hold",
        _ => "rod",
    };

    /// <summary>A limit as files name it.</summary>
    /// <param name="limit">Limit.</param>
    public static string Name(StrikeLimit limit) => limit switch
    {
        StrikeLimit.Hands => "hands",
        StrikeLimit.Stroke => "stroke",
        _ => "clutch",
    };

    private static Figure<StrikeResult> Of(string key, string label, string meaning, Func<StrikeSummary, double?> value) => new(key, label, meaning, r => value(r.Summary));

    private static Figure<StrikeResult> MarginOf(WeakPlace place) => Of(
        $"margin_{Name(place).Replace('-', '_')}", $"reserve, {Words(place)}", $"strength over largest load, {Words(place)}: below 1 it gives{(place == WeakPlace.Leader ? "; none without a leader" : "")}",
        s => s.Margins.FirstOrDefault(m => m.Place == place) is Margin margin && double.IsFinite(margin.Ratio) ? margin.Ratio : null);

    private static string Words(WeakPlace place) => place switch
    {
        WeakPlace.HookWire => "wire of the hook",
        WeakPlace.HookHold => "hold in the fish",
        _ => Name(place),
    };
}
