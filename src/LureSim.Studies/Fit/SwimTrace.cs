namespace LureSim.Studies.Fit;

/// <summary>A value of a trace between its times.</summary>
internal static class SwimTrace
{
    /// <summary>The value at a time, straight between rows; at an end that of the end.</summary>
    public static double At(IReadOnlyList<double> times, IReadOnlyList<double> values, double t)
    {
        double step = times.Count > 1 ? times[1] - times[0] : 1.0;
        int i = Math.Clamp((int)(t / step), 0, Math.Max(0, times.Count - 2));
        return times.Count < 2 ? values[0] : values[i] + ((values[i + 1] - values[i]) * Math.Clamp((t - times[i]) / step, 0.0, 1.0));
    }
}
