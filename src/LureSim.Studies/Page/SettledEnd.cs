using LureSim.Model;
using LureSim.Model.Retrieve;

namespace LureSim.Studies.Page;

/// <summary>Cuts the end of a settled walk so that it can be shown round and round.</summary>
internal static class SettledEnd
{
    // About as long as the eye follows before it has seen the pattern; even numbers of twitches.
    private const double LongEnoughS = 3.0;

    private const double ClosesDeg = 10.0;

    /// <summary>The stretch; null where the run has no pair of whole twitches.</summary>
    /// <param name="result">Retrieve with its distance held.</param>
    public static SettledStretch? Of(RetrieveResult result)
    {
        int pairs = Math.Min(result.Twitches.Count / 2, (int)Math.Ceiling(LongEnoughS * result.Task.CadencePerS / 2.0));
        if (pairs < 1)
        {
            return null;
        }

        double period = 1.0 / result.Task.CadencePerS;
        double to = result.Twitches[^1].StartS + period, from = to - (2 * pairs * period);
        return new(result, from, to, Turned(result.Series, from, to) < ClosesDeg);
    }

    // How far the nose is from where it was, whole turns aside, deg.
    private static double Turned(Series series, double from, double to)
    {
        ValueList<double> heading = series["heading_deg"];
        double step = series["time_s"][1] - series["time_s"][0];
        double At(double t) => heading[Math.Clamp((int)Math.Round(t / step), 0, heading.Count - 1)];
        return Math.Abs(Math.IEEERemainder(At(to) - At(from), 360.0));
    }
}
