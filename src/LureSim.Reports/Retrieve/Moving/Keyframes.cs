using System.Globalization;
using System.Text;

namespace LureSim.Reports.Retrieve.Moving;

/// <summary>CSS key frames from sampled values: as few as keep the straight lines between them within a tolerance of every sample.</summary>
internal static class Keyframes
{
    /// <summary>Samples to keep, the ends among them.</summary>
    /// <param name="share">Places in the loop, rising.</param>
    /// <param name="channels">Values, each with the largest error that its straight lines may have.</param>
    public static IReadOnlyList<int> Keep(IReadOnlyList<double> share, params IReadOnlyList<(double[] Values, double Error)> channels)
    {
        var kept = new List<int> { 0 };
        for (int end = 2; end < share.Count; end++)
        {
            if (!Holds(share, channels, kept[^1], end))
            {
                kept.Add(end - 1);
            }
        }

        kept.Add(share.Count - 1);
        return kept;
    }

    /// <summary>A rule with a frame per kept sample.</summary>
    /// <param name="name">Name of the animation.</param>
    /// <param name="share">Places in the loop.</param>
    /// <param name="kept">Samples.</param>
    /// <param name="declare">Declarations of a sample.</param>
    public static string Rule(string name, IReadOnlyList<double> share, IReadOnlyList<int> kept, Func<int, string> declare)
    {
        var css = new StringBuilder($"@keyframes {name}{{");
        foreach (int i in kept)
        {
            css.Append(CultureInfo.InvariantCulture, $"{100.0 * share[i]:0.###}%{{{declare(i)}}}");
        }

        return css.Append("}\n").ToString();
    }

    private static bool Holds(IReadOnlyList<double> share, IReadOnlyList<(double[] Values, double Error)> channels, int from, int to)
    {
        for (int i = from + 1; i < to; i++)
        {
            double part = (share[i] - share[from]) / (share[to] - share[from]);
            foreach ((double[] v, double error) in channels)
            {
                if (Math.Abs(v[from] + (part * (v[to] - v[from])) - v[i]) > error)
                {
                    return false;
                }
            }
        }

        return true;
    }
}
