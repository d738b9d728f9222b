using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;

namespace LureSim.Reports.Retrieve;

/// <summary>An instant of a run worth a look at the lure's attitude.</summary>
/// <param name="Label">Why: the hardest pull, the deepest nose, ...</param>
/// <param name="TimeS">t, s.</param>
/// <param name="Pose">Height of the centre of gravity over the water, pitch and roll.</param>
/// <param name="NoseZM">Foremost point of the axis over the water, m.</param>
/// <param name="Line">The line, where its shape was kept at this instant.</param>
internal sealed record LureInstant(string Label, double TimeS, Attitude Pose, double NoseZM, Snapshot? Line)
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>Instants wanted.</summary>
    public const int Wanted = 4;

    /// <summary>
    /// Up to four instants of the first twitch after warm-up (of the whole run when it has none), in order of time: hardest pull at the rod tip (of a
    /// steady pull: rest), deepest nose, highest nose, and the end. One that coincides with another shares its place, and the widest roll or the middle fills up.
    /// </summary>
    /// <param name="result">Retrieve.</param>
    public static IReadOnlyList<LureInstant> Choose(RetrieveResult result)
    {
        TwitchWindow window = TwitchWindow.ChooseOrWhole(result, 1);
        (int from, int last) = (window.From, Math.Max(window.From, window.To - 2));
        ReadOnlySpan<double> nose = result.Series["nose_z_m"], roll = result.Series["roll_deg"], pull = result.Series["tip_tension_N"];
        var labels = new SortedDictionary<int, string>();
        Add(labels, result.Task.IsTow ? from : Highest(pull, from, last, v => v), result.Task.IsTow ? "at rest" : "hardest pull");
        Add(labels, Highest(nose, from, last, v => -v), "deepest nose");
        Add(labels, Highest(nose, from, last, v => v), "highest nose");
        Add(labels, last, window.Count == 0 ? "end of the run" : "just before the next pull");
        (int At, string Label)[] fill = [(Highest(roll, from, last, Math.Abs), "widest roll"), ((from + last) / 2, "half-way")];
        foreach ((int at, string label) in fill.Where(f => labels.Count < Wanted && !labels.ContainsKey(f.At)))
        {
            labels.Add(at, label);
        }

        return [.. labels.Select(l => At(result, l.Key, l.Value))];
    }

    private static void Add(SortedDictionary<int, string> labels, int at, string label) =>
        labels[at] = labels.TryGetValue(at, out string? first) ? $"{first}, {label}" : label;

    private static int Highest(ReadOnlySpan<double> values, int from, int last, Func<double, double> of)
    {
        int best = from;
        for (int i = from; i <= last; i++)
        {
            best = of(values[i]) > of(values[best]) ? i : best;
        }

        return best;
    }

    private static LureInstant At(RetrieveResult result, int i, string label)
    {
        Series s = result.Series;
        double time = s["time_s"][i];
        return new LureInstant(
            label, time, new Attitude(s["lure_z_m"][i], s["pitch_deg"][i] * Degree, s["roll_deg"][i] * Degree), s["nose_z_m"][i],
            result.Snapshots.FirstOrDefault(shot => Math.Abs(shot.TimeS - time) < 1e-6));
    }
}
