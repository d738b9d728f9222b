using LureSim.Model;
using LureSim.Model.Retrieve;

namespace LureSim.Reports.Retrieve.Moving;

/// <summary>Two twitches of a run that can follow themselves: the pair after warm-up that ends most like it began.</summary>
/// <param name="Result">Retrieve.</param>
/// <param name="First">Index of its first twitch.</param>
/// <param name="From">First sample.</param>
/// <param name="To">Last sample, two periods later.</param>
internal sealed record WalkLoop(RetrieveResult Result, int First, int From, int To)
{
    /// <summary>Twitches of a loop: one to each side.</summary>
    public const int Twitches = 2;

    // As a settled walk is told: 3 degrees and 1 cm of slack weigh the same.
    private const double AngleDeg = 3.0, SlackM = 0.01;

    // Under this a loop is over before the eye has followed it.
    private const double ShortS = 1.5;

    /// <summary>Duration of the loop in the water, s.</summary>
    public double DurationS => Time[To] - Time[From];

    /// <summary>How many times slower it is shown: a pull lasts a tenth of a second.</summary>
    public int Slower => DurationS < ShortS ? 4 : 2;

    /// <summary>Samples of the loop, both ends included.</summary>
    public int Count => To - From + 1;

    private ValueList<double> Time => Result.Series["time_s"];

    /// <summary>The loop of a run; null of a steady pull and of a run that has no two complete twitches.</summary>
    /// <param name="result">Retrieve.</param>
    public static WalkLoop? Choose(RetrieveResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.Task.IsTow || result.Twitches.Count < Twitches)
        {
            return null;
        }

        int last = result.Twitches.Count - Twitches;
        int first = Math.Clamp(result.WarmUpTwitches, 0, last);
        return Enumerable.Range(first, last - first + 1).Select(k => At(result, k)).Where(l => l.Count > Twitches).MinBy(Jump);
    }

    /// <summary>How far a sample lies in the loop, 0 to 1.</summary>
    /// <param name="i">Sample of the loop, 0 and up.</param>
    public double Share(int i) => (Time[From + i] - Time[From]) / DurationS;

    /// <summary>A channel in the loop.</summary>
    /// <param name="channel">Name.</param>
    public double[] Values(string channel) => Result.Series[channel][From..(To + 1)].ToArray();

    private static WalkLoop At(RetrieveResult result, int first)
    {
        ValueList<double> time = result.Series["time_s"];
        double start = result.Twitches[first].StartS, period = 1.0 / result.Task.CadencePerS;
        return new(result, first, TwitchWindow.At(time, start), TwitchWindow.At(time, start + (Twitches * period)));
    }

    // What the eye would see where the end meets the start.
    private static double Jump(WalkLoop loop)
    {
        Series s = loop.Result.Series;
        double Gap(string channel) => Math.Abs(s[channel][loop.To] - s[channel][loop.From]);
        return (Gap("heading_deg") / AngleDeg) + (Gap("slack_m") / SlackM);
    }
}
