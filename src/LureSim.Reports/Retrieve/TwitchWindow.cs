using LureSim.Model.Retrieve;

namespace LureSim.Reports.Retrieve;

/// <summary>The stretch of a run that a picture shows.</summary>
/// <param name="First">Index of the first twitch shown.</param>
/// <param name="Count">Number of twitches shown; 0 when the run has none.</param>
/// <param name="From">Index of the first sample.</param>
/// <param name="To">Index after the last sample.</param>
internal readonly record struct TwitchWindow(int First, int Count, int From, int To)
{
    /// <summary>Samples in the window.</summary>
    public int Length => To - From;

    /// <summary>Chooses up to <paramref name="wanted"/> twitches after warm-up; earlier ones when the run is shorter, and
    /// the whole run when it has no complete twitch.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="wanted">Number of twitches.</param>
    public static TwitchWindow Choose(RetrieveResult result, int wanted)
    {
        int total = result.Twitches.Count;
        if (total == 0)
        {
            return new TwitchWindow(0, 0, 0, result.Series.Count);
        }

        int count = Math.Min(wanted, total);
        int first = Math.Min(Math.Max(result.WarmUpTwitches, 0), total - count);
        ReadOnlySpan<double> time = result.Series["time_s"];
        int from = At(time, result.Twitches[first].StartS);
        int to = first + count < total ? At(time, result.Twitches[first + count].StartS) + 1 : EndOfLast(result, time);
        return new TwitchWindow(first, count, from, Math.Min(to, time.Length));
    }

    /// <summary>The same; of a steady pull, which has no twitches to show, the whole run.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="wanted">Number of twitches.</param>
    public static TwitchWindow ChooseOrWhole(RetrieveResult result, int wanted) =>
        result.Task.IsTow ? new TwitchWindow(0, 0, 0, result.Series.Count) : Choose(result, wanted);

    /// <summary>What the window covers: "Twitches 13 to 16".</summary>
    /// <param name="result">Retrieve.</param>
    public string Words(RetrieveResult result) => result.Task.IsTow ? "Steady pull"
        : Count == 0 ? "The whole run"
        : Count == 1 ? $"Twitch {First + 1}" : $"Twitches {First + 1} to {First + Count}";

    /// <summary>First sample at or after a time.</summary>
    /// <param name="time">Times, rising.</param>
    /// <param name="at">Time.</param>
    public static int At(ReadOnlySpan<double> time, double at)
    {
        int i = time.BinarySearch(at - 1e-9);
        return Math.Min(i < 0 ? ~i : i, time.Length - 1);
    }

    private static int EndOfLast(RetrieveResult result, ReadOnlySpan<double> time) =>
        At(time, result.Twitches[^1].StartS + (1 / result.Task.CadencePerS)) + 1;

    /// <summary>Samples of one twitch of the window.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="k">Twitch, counted from the window's first.</param>
    public (int From, int To) Twitch(RetrieveResult result, int k)
    {
        ReadOnlySpan<double> time = result.Series["time_s"];
        int from = At(time, result.Twitches[First + k].StartS);
        bool last = First + k + 1 >= result.Twitches.Count || k + 1 >= Count;
        return (from, last ? To : At(time, result.Twitches[First + k + 1].StartS));
    }

    /// <summary>Where the hand pulls: from the start of each twitch of the window to the largest stroke.</summary>
    /// <param name="result">Retrieve.</param>
    public IReadOnlyList<(int From, int To)> Pulls(RetrieveResult result)
    {
        ReadOnlySpan<double> rigid = result.Series["rigid_stroke_m"];
        var pulls = new List<(int, int)>();
        for (int k = 0; k < Count; k++)
        {
            (int from, int to) = Twitch(result, k);
            int peak = from;
            for (int i = from; i < to; i++)
            {
                peak = rigid[i] > rigid[peak] + 1e-9 ? i : peak;
            }

            if (peak > from)
            {
                pulls.Add((from, peak));
            }
        }

        return pulls;
    }
}
