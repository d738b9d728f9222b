namespace LureSim.Reports.Retrieve;

/// <summary>Stretches of time in which something holds.</summary>
internal static class Spans
{
    /// <summary>The line counts as slack below this tension at the nose, N.</summary>
    public const double SlackBelowN = 0.02;

    /// <summary>Index ranges [from, to] in which the test holds, inside [start, end).</summary>
    /// <param name="start">First sample.</param>
    /// <param name="end">After the last sample.</param>
    /// <param name="test">Holds at a sample?</param>
    public static List<(int From, int To)> Where(int start, int end, Func<int, bool> test)
    {
        var spans = new List<(int, int)>();
        int open = -1;
        for (int i = start; i < end; i++)
        {
            if (test(i))
            {
                open = open < 0 ? i : open;
            }
            else if (open >= 0)
            {
                spans.Add((open, i));
                open = -1;
            }
        }

        if (open >= 0)
        {
            spans.Add((open, end - 1));
        }

        return spans;
    }

    /// <summary>Share of the turning (summed size of heading changes) that happens while the line is slack, 0 to 1;
    /// 0 when nothing turns.</summary>
    /// <param name="heading">Heading.</param>
    /// <param name="tension">Tension at the nose, N.</param>
    /// <param name="from">First sample.</param>
    /// <param name="to">After the last sample.</param>
    public static double TurnInSlack(ReadOnlySpan<double> heading, ReadOnlySpan<double> tension, int from, int to)
    {
        double slack = 0, all = 0;
        for (int i = from + 1; i < to; i++)
        {
            double turn = Math.Abs(heading[i] - heading[i - 1]);
            all += turn;
            slack += Math.Max(tension[i], tension[i - 1]) < SlackBelowN ? turn : 0;
        }

        return all > 0 ? slack / all : 0;
    }
}
