namespace LureSim.Model.Retrieve;

/// <summary>Cuts recorded channels into twitches.</summary>
internal static class TwitchReader
{
    /// <summary>One record per complete twitch of a series.</summary>
    /// <param name="series">Channels of a retrieve.</param>
    /// <param name="periodS">Period of the rhythm, s; pulls begin at its multiples.</param>
    public static IReadOnlyList<TwitchRecord> Read(Series series, double periodS)
    {
        ArgumentNullException.ThrowIfNull(series);
        ReadOnlySpan<double> time = series["time_s"];
        var result = new List<TwitchRecord>();
        int from = 0;
        for (int k = 0; ; k++)
        {
            double end = (k + 1) * periodS;
            int to = from;
            while (to < time.Length && time[to] < end - 1e-9)
            {
                to++;
            }

            if (to >= time.Length || to == from)
            {
                return result;
            }

            result.Add(ReadOne(series, from, to, k * periodS));
            from = to;
        }
    }

    /// <summary>The record of one twitch.</summary>
    /// <param name="series">Channels that hold it.</param>
    /// <param name="from">Its first row.</param>
    /// <param name="to">First row of the next twitch, which must be there.</param>
    /// <param name="start">Time of its pull, s.</param>
    public static TwitchRecord ReadOne(Series series, int from, int to, double start)
    {
        ReadOnlySpan<double> time = series["time_s"], heading = series["heading_deg"], tension = series["nose_tension_N"];
        ReadOnlySpan<double> x = series["lure_x_m"], y = series["lure_y_m"], off = series["heading_off_line_deg"], nose = series["nose_y_m"], clearance = series["hook_clearance_m"];
        double low = double.MaxValue, high = double.MinValue, impulse = 0.0, nearest = double.PositiveInfinity;
        int crossings = 0;
        for (int i = from; i < to; i++)
        {
            low = Math.Min(low, heading[i]);
            high = Math.Max(high, heading[i]);
            double dt = i + 1 < time.Length ? time[i + 1] - time[i] : 0.0;
            impulse += i + 1 < time.Length ? tension[i + 1] * dt : 0.0;
            nearest = tension[i] > RetrieveSummarizer.SlackTensionN ? Math.Min(nearest, clearance[i]) : nearest;
            crossings += i > 0 && Math.Abs(off[i] - off[i - 1]) > 180.0 ? 1 : 0;
        }

        double toRad = Math.PI / 180.0;
        return new TwitchRecord(
            start, off[to - 1] * toRad, (high - low) * toRad, impulse, x[from] - x[to], y[to] - y[from], crossings)
        {
            WidthM = Range(y[from..(to + 1)]),
            NoseWidthM = Range(nose[from..(to + 1)]),
            HookClearanceM = nearest,
        };
    }

    private static double Range(ReadOnlySpan<double> values)
    {
        (double low, double high) = (values[0], values[0]);
        foreach (double v in values)
        {
            (low, high) = (Math.Min(low, v), Math.Max(high, v));
        }

        return high - low;
    }
}
