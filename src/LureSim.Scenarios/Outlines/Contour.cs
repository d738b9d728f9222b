using System.Globalization;

namespace LureSim.Scenarios.Outlines;

/// <summary>A closed outline as a polygon, y up, lying between x = 0 and its length.</summary>
internal sealed class Contour
{
    private const int MostPoints = 50_000, Looks = 400;

    // Chords stay within this share of the outline's size of its curves; ends nearer than the second share count as joined.
    private const double Flat = 2e-5, Gap = 0.005, Inside = 1e-6;

    private readonly Spot[] _points;

    private Contour(Spot[] points, double length) => (_points, Length) = (points, length);

    /// <summary>From end to end, in units of the drawing.</summary>
    public double Length { get; }

    /// <summary>Makes the outline.</summary>
    /// <param name="curves">One piece, y down.</param>
    /// <param name="contour">The outline.</param>
    /// <returns>Null, or what is wrong with it.</returns>
    public static string? Make(IReadOnlyList<Curve> curves, out Contour? contour)
    {
        contour = null;
        Spot[] corners = [.. curves.SelectMany(c => (Spot[])[c.A, c.B, c.C, c.D])];
        double size = corners.Max(p => p.X) - corners.Min(p => p.X);
        double high = corners.Max(p => p.Y) - corners.Min(p => p.Y);
        if (!(size > 0.0) || !(high > 0.0) || !double.IsFinite(size + high))
        {
            return "it encloses nothing";
        }

        double gap = (curves[^1].D - curves[0].A).Length;
        if (gap > Gap * size)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it is not closed: its ends lie {gap:G3} units apart; join them");
        }

        var points = new List<Spot>();
        foreach (Curve c in curves)
        {
            int n = c.Chords(Flat * Math.Max(size, high));
            points.AddRange(Enumerable.Range(0, n).Select(i => c.At((double)i / n)));
        }

        if (points.Count > MostPoints)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it has more than {MostPoints} points; simplify it");
        }

        double left = points.Min(p => p.X), length = points.Max(p => p.X) - left;
        var made = new Contour([.. points.Select(p => new Spot(p.X - left, -p.Y))], length);
        if ((made.Crossing() ?? made.Fold()) is string wrong)
        {
            return wrong;
        }

        contour = made;
        return null;
    }

    /// <summary>Lowest and highest point at a place.</summary>
    /// <param name="share">Place from the left end, 0 to 1; at the ends themselves just inside of them.</param>
    public (double Low, double High) Cut(double share)
    {
        List<double> crossed = Crossed(Math.Clamp(share, Inside, 1.0 - Inside) * Length);
        return (crossed.Min(), crossed.Max());
    }

    // Half-open in x, so that a corner counts once.
    private List<double> Crossed(double x)
    {
        var y = new List<double>(2);
        for (int i = 0; i < _points.Length; i++)
        {
            (Spot a, Spot b) = Edge(i);
            if ((a.X <= x) != (b.X <= x))
            {
                y.Add(a.Y + ((x - a.X) / (b.X - a.X) * (b.Y - a.Y)));
            }
        }

        return y;
    }

    private (Spot A, Spot B) Edge(int i) => (_points[i], _points[i + 1 < _points.Length ? i + 1 : 0]);

    private string? Fold()
    {
        for (int i = 0; i < Looks; i++)
        {
            double share = (i + 0.5) / Looks;
            if (Crossed(share * Length).Count != 2)
            {
                return string.Create(CultureInfo.InvariantCulture,
                    $"it folds back over itself {100.0 * share:F0} % of the way from its left end; at each place a body has one back and one belly (cups, lips and eyes are not drawn)");
            }
        }

        return null;
    }

    // Edges by their left ends, each against those that begin before it ends; neighbours share a corner.
    private string? Crossing()
    {
        int n = _points.Length;
        double[] left = [.. Enumerable.Range(0, n).Select(i => Math.Min(Edge(i).A.X, Edge(i).B.X))];
        int[] order = [.. Enumerable.Range(0, n).OrderBy(i => left[i])];
        for (int k = 0; k < n; k++)
        {
            (Spot a, Spot b) = Edge(order[k]);
            double right = Math.Max(a.X, b.X);
            for (int m = k + 1; m < n && left[order[m]] <= right; m++)
            {
                int apart = Math.Abs(order[k] - order[m]);
                (Spot c, Spot d) = Edge(order[m]);
                if (apart > 1 && apart < n - 1 && Side(a, b, c) * Side(a, b, d) < 0.0 && Side(c, d, a) * Side(c, d, b) < 0.0)
                {
                    return string.Create(CultureInfo.InvariantCulture, $"it crosses itself {100.0 * Meeting(a, b, c, d) / Length:F0} % of the way from its left end");
                }
            }
        }

        return null;
    }

    private static double Meeting(Spot a, Spot b, Spot c, Spot d)
    {
        double from = Side(c, d, a), to = Side(c, d, b);
        return a.X + (from / (from - to) * (b.X - a.X));
    }

    private static double Side(Spot a, Spot b, Spot p) => ((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X));
}
