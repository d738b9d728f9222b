using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Cover;
using LureSim.Model.Crawl;
using LureSim.Model.Fish;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Pool;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Model.Strike;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Mapping;

/// <summary>From values to a set-up and its tasks: missing keys, every table, checks across tables.</summary>
internal static class ScenarioMapper
{
    /// <summary>Maps; null when a fault of what was asked for was found, before or here. A task that was not asked for and has faults is left out.</summary>
    public static Scenario? Map(MapContext c, Activities asked)
    {
        foreach (KeySpec key in ScenarioSchema.Keys)
        {
            if (key.Required && !c.Values.Has(key))
            {
                c.Fault(key, $"missing; {EntryReader.ShortMeaning(key)}");
            }
        }

        RodSpec? rod = RodMapper.Map(c);
        LineSpec? line = LineMapper.MapMain(c);
        ReelSpec reel = ReelMapper.Map(c, line);
        LeaderSpec? leader = LeaderMapper.Map(c);
        LureSpec? lure = LureMapper.Map(c);
        HandsSpec hands = HandsMapper.Map(c);
        RetrieveTask retrieve = RetrieveMapper.Map(c, rod);
        CastTask cast = CastMapper.Map(c, rod, hands);
        PoolTask pool = PoolMapper.Map(c);
        StrikeTask strike = StrikeMapper.Map(c);
        CrawlTask crawl = CrawlMapper.Map(c, retrieve.TakeUp, rod);
        HookHold hook = StrikeMapper.MapHook(c);
        FishSpec fish = FishMapper.Map(c);
        CoverSpec cover = FishMapper.MapCover(c);
        CrossChecks.Run(c, rod, leader, lure, retrieve, strike, crawl);
        if (c.IsRefused(asked) || rod is null || line is null || lure is null)
        {
            return null;
        }

        var setup = new Setup(
            Title: c.Values.Text(TopKeys.Title),
            Water: new(c[WaterKeys.Temperature], c[WaterKeys.Salinity], c[WaterKeys.ContactHeight]),
            Air: new(c[AirKeys.Temperature], c[AirKeys.Altitude], c[AirKeys.Wind], c[AirKeys.WindFrom], c[AirKeys.Roughness]),
            Angler: HandsMapper.MapAngler(c),
            Hands: hands,
            Rod: rod,
            Reel: reel,
            Line: line,
            Leader: leader,
            Lure: lure,
            Seed: (ulong)c[TopKeys.Seed])
        {
            Hook = hook,
            Fish = fish,
            Cover = cover,
        };
        return new(
            setup,
            c.IsRefused(Activities.Retrieve) ? null : retrieve,
            c.IsRefused(Activities.Cast) ? null : cast,
            c.IsRefused(Activities.Pool) ? null : pool,
            c.IsRefused(Activities.Strike) ? null : strike,
            c.IsRefused(Activities.Crawl) ? null : crawl);
    }
}
