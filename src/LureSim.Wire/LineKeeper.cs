using LureSim.Model.Retrieve;

namespace LureSim.Wire;

/// <summary>
/// Keeps points of the line while a retrieve runs; give <see cref="See"/> to the run as its observer. Points are nodes of the solver, so that a
/// point stays at its share of the line, and stand closer toward the lure, where the leader is and where line falls slack first.
/// </summary>
/// <param name="outputStepS">Spacing of the recorded channels, s: a row is kept at each of their times.</param>
/// <param name="longestS">Rows are kept up to this time, s.</param>
public sealed class LineKeeper(double outputStepS, double longestS = Film.LongestS)
{
    /// <summary>Most points kept.</summary>
    public const int MostPoints = 24;

    // Shares of the nodes from the lure grow with this power.
    private const double Closeness = 1.5;

    private readonly List<double[]> _rows = [];
    private int[] _nodes = [];

    /// <summary>Rows: point by point, x y z, m.</summary>
    internal IReadOnlyList<double[]> Rows => _rows;

    /// <summary>Spacing of the rows, s.</summary>
    internal double SpacingS => outputStepS;

    /// <summary>Looks at a step and keeps the points when a recorded time is reached. The row of the start is the first step's end: the line
    /// has hardly moved by then.</summary>
    /// <param name="view">View.</param>
    public void See(RetrieveView view)
    {
        if (_rows.Count == 0)
        {
            _nodes = Nodes(view.LineXM.Length - 1);
            Keep(view);
        }

        double next = _rows.Count * outputStepS;
        if (view.TimeS >= next - (1e-6 * outputStepS) && next <= longestS + (0.5 * outputStepS))
        {
            Keep(view);
        }
    }

    /// <summary>Nodes from 0 to the last, closer toward the last: all where there are few.</summary>
    /// <param name="last">N.</param>
    internal static int[] Nodes(int last)
    {
        int points = Math.Min(last + 1, MostPoints);
        int[] nodes = new int[points];
        for (int i = 0; i < points; i++)
        {
            // At least one node farther from the lure than the point before.
            double share = (double)i / (points - 1);
            int fromLure = Math.Max(i, (int)Math.Round(last * Math.Pow(share, Closeness)));
            nodes[points - 1 - i] = last - fromLure;
        }

        return nodes;
    }

    private void Keep(RetrieveView view)
    {
        ReadOnlySpan<double> x = view.LineXM, y = view.LineYM, z = view.LineZM;
        double[] row = new double[3 * _nodes.Length];
        int at = 0;
        foreach (int node in _nodes)
        {
            row[at++] = x[node];
            row[at++] = y[node];
            row[at++] = z[node];
        }

        _rows.Add(row);
    }
}
