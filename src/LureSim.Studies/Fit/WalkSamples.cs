using LureSim.Model;
using LureSim.Scenarios.Measured;

namespace LureSim.Studies.Fit;

/// <summary>A walk as it is seen from above: places of the middle of the length and headings, each at its own times.</summary>
/// <param name="PlaceTimeS">Times of the places, s, rising.</param>
/// <param name="XM">Places along one axis, m.</param>
/// <param name="YM">Along the other, m.</param>
/// <param name="HeadingTimeS">Times of the headings, s, rising.</param>
/// <param name="HeadingRad">Headings, from the first axis toward the second, rad; whole turns more or less do not matter.</param>
internal sealed record WalkSamples(double[] PlaceTimeS, double[] XM, double[] YM, double[] HeadingTimeS, double[] HeadingRad)
{
    // Every fourth row of a run, 20 ms apart: twelve and more to a twitch.
    private const int Every = 4;

    /// <summary>Time from the first to the last that was seen, s.</summary>
    public double SpanS => PlaceTimeS.Length == 0 ? 0.0 : PlaceTimeS[^1] - PlaceTimeS[0];

    /// <summary>Pictures of a film; those that show too little are gaps.</summary>
    /// <param name="rows">Rows of a run.</param>
    public static WalkSamples Of(IEnumerable<FitRow> rows)
    {
        var places = new List<(double T, double X, double Y)>();
        var headings = new List<(double T, double Rad)>();
        foreach (FitRow row in rows)
        {
            double t = row.Of(FitWord.Time)!.Value;
            double? nx = row.Of(FitWord.NoseX), ny = row.Of(FitWord.NoseY), tx = row.Of(FitWord.TailX), ty = row.Of(FitWord.TailY);
            bool ends = nx is not null && ny is not null && tx is not null && ty is not null;
            if (row.Of(FitWord.MiddleX) is double mx && row.Of(FitWord.MiddleY) is double my)
            {
                places.Add((t, mx, my));
            }
            else if (ends)
            {
                places.Add((t, 0.5 * (nx!.Value + tx!.Value), 0.5 * (ny!.Value + ty!.Value)));
            }

            if (row.Of(FitWord.Heading) is double heading)
            {
                headings.Add((t, heading));
            }
            else if (ends)
            {
                headings.Add((t, Math.Atan2(ny!.Value - ty!.Value, nx!.Value - tx!.Value)));
            }
        }

        return new([.. places.Select(p => p.T)], [.. places.Select(p => p.X)], [.. places.Select(p => p.Y)], [.. headings.Select(h => h.T)], [.. headings.Select(h => h.Rad)]);
    }

    /// <summary>Part of a run, whose headings count from pointing at the rod, against the first axis.</summary>
    /// <param name="series">Its channels.</param>
    /// <param name="fromS">From this time on, s.</param>
    /// <param name="toS">Up to this, s.</param>
    /// <param name="middleAheadM">Middle of the length ahead of the centre of gravity, m.</param>
    public static WalkSamples Of(Series series, double fromS, double toS, double middleAheadM)
    {
        ValueList<double> time = series["time_s"], x = series["lure_x_m"], y = series["lure_y_m"], heading = series["heading_deg"];
        int[] rows = [.. Enumerable.Range(0, time.Count).Where(i => time[i] >= fromS && time[i] <= toS).Where((_, k) => k % Every == 0)];
        double[] t = [.. rows.Select(i => time[i])], psi = [.. rows.Select(i => Math.PI + (heading[i] * Math.PI / 180.0))];
        return new(t, [.. rows.Select((i, k) => x[i] + (middleAheadM * Math.Cos(psi[k])))], [.. rows.Select((i, k) => y[i] + (middleAheadM * Math.Sin(psi[k])))], t, psi);
    }

    /// <summary>Those of the samples whose times are wanted.</summary>
    /// <param name="wanted">Which times.</param>
    public WalkSamples Where(Func<double, bool> wanted)
    {
        int[] p = [.. Enumerable.Range(0, PlaceTimeS.Length).Where(i => wanted(PlaceTimeS[i]))], h = [.. Enumerable.Range(0, HeadingTimeS.Length).Where(i => wanted(HeadingTimeS[i]))];
        return new([.. p.Select(i => PlaceTimeS[i])], [.. p.Select(i => XM[i])], [.. p.Select(i => YM[i])], [.. h.Select(i => HeadingTimeS[i])], [.. h.Select(i => HeadingRad[i])]);
    }
}
