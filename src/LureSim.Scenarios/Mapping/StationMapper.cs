using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Items of <c>lure.stations</c>.</summary>
internal static class StationMapper
{
    private const int Fewest = 3;

    /// <summary>Stations from tail to nose; null when they are incomplete or out of order.</summary>
    public static List<HullStation>? Map(MapContext c)
    {
        var stations = new List<HullStation>();
        foreach ((ScenarioValues item, _) in c.Values.Items(LureKeys.Stations))
        {
            stations.Add(new(
                item.Number(LureItemKeys.StationX),
                0.5 * item.Number(LureItemKeys.StationBreadth),
                0.5 * item.Number(LureItemKeys.StationHeight),
                item.Number(LureItemKeys.StationCentre)));
        }

        RefuseOuterMeasures(c);
        if (c.Values.Given(LureKeys.Stations) is { Bad: true } || !stations.TrueForAll(s => !double.IsNaN(s.XM + s.HalfBreadthM + s.HalfHeightM + s.CentreZM)))
        {
            return null;
        }

        string? wrong = Wrong(stations);
        if (wrong is not null)
        {
            c.Fault(LureKeys.Stations, wrong);
        }

        return wrong is null ? stations : null;
    }

    /// <summary>Outer measures of stations.</summary>
    public static LureBox? Box(List<HullStation>? stations) => stations is null
        ? null
        : new(stations[^1].XM - stations[0].XM, 2.0 * stations.Max(s => s.HalfBreadthM), 2.0 * stations.Max(s => s.HalfHeightM));

    private static void RefuseOuterMeasures(MapContext c)
    {
        foreach (KeySpec key in (KeySpec[])[LureKeys.Length, LureKeys.Diameter, LureKeys.Height])
        {
            if (c.Values.Has(key))
            {
                c.Fault(key, "given beside lure.stations, which give it; leave it out");
            }
        }
    }

    private static string? Wrong(List<HullStation> stations)
    {
        if (stations.Count < Fewest)
        {
            return $"{stations.Count} sections; at least {Fewest} are due for shape \"stations\"";
        }

        for (int i = 1; i < stations.Count; i++)
        {
            if (!(stations[i].XM > stations[i - 1].XM))
            {
                return "x must rise from tail to nose";
            }
        }

        double length = stations[^1].XM - stations[0].XM;
        if (Math.Abs(stations[^1].XM + stations[0].XM) > 0.02 * length)
        {
            return "x counts from the middle of the lure: the first and the last section must be equally far from 0";
        }

        return length >= LureKeys.Length.Low && length <= LureKeys.Length.High
            ? null
            : $"the body is {MapContext.Show(LureKeys.Length, length)} long; allowed: {RangeText.Of(LureKeys.Length)}";
    }
}
