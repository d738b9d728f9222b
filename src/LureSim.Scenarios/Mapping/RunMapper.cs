using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Mapping;

/// <summary>From values to a run: missing keys, every table, checks across tables.</summary>
internal static class RunMapper
{
    /// <summary>Maps; null when any fault was found, before or here.</summary>
    public static CastRunSpec? Map(MapContext c)
    {
        foreach (KeySpec key in ScenarioSchema.Keys)
        {
            if (key.Required && !c.Values.Has(key))
            {
                c.Fault(key, $"missing; {EntryReader.ShortMeaning(key)}");
            }
        }

        RodSpec? rod = RodMapper.Map(c);
        ReelSpec reel = ReelMapper.Map(c);
        LineSpec? line = LineMapper.Map(c, LineKeys.Set);
        LeaderSpec? leader = LeaderMapper.Map(c);
        LureSpec? lure = LureMapper.Map(c);
        RetrieveSpec retrieve = RetrieveMapper.Map(c, rod);
        CrossChecks.Run(c, rod, leader, lure, retrieve);
        CastSpec? cast = CastMapper.Map(c, rod, reel, line, lure);
        if (c.FaultCount > 0 || rod is null || line is null || lure is null || cast is null)
        {
            return null;
        }

        var run = new RunSpec(
            c.Values.Text(TopKeys.Title),
            new WaterSpec(c[WaterKeys.Temperature], c[WaterKeys.Salinity], c[WaterKeys.ContactHeight]),
            new AirSpec(c[AirKeys.Temperature], c[AirKeys.Altitude], c[AirKeys.Wind], c[AirKeys.WindFrom], c[AirKeys.Roughness]),
            Angler(c),
            rod,
            reel,
            line,
            leader,
            lure,
            retrieve,
            new SolverSpec((int)c[SolverKeys.Nodes], c[SolverKeys.Step], c[SolverKeys.OutputStep]),
            (ulong)c[TopKeys.Seed]);
        return new(run, cast);
    }

    private static AnglerSpec Angler(MapContext c) => new(
        c[AnglerKeys.HandHeight],
        c[AnglerKeys.RodElevation],
        c[AnglerKeys.RodBearing],
        c[AnglerKeys.PullTime],
        c[AnglerKeys.ReturnTime],
        c[AnglerKeys.ReturnShare],
        c[AnglerKeys.SustainedTorque]);
}
