using System.Numerics;

namespace LureSim.Model.Lines.Chain;

/// <summary>
/// The line cut into segments: main line of N equal unstretched lengths that shrink together as the reel takes line up,
/// then the leader with lengths of its own. Node 0 is the rod tip, node N the line tie. Masses are lumped half and half.
/// Shrinking every main segment keeps the step smooth; the flow of material past the nodes is put into the drag
/// (<see cref="FeedShare"/>), its inertia, mu V^2 (under 1e-4 N), is left out. See docs/line.md.
/// </summary>
public sealed class LineMesh
{
    private readonly LineSpec[] piece;
    private readonly int mainSegments;

    /// <summary>Cuts the line.</summary>
    /// <param name="main">Main line.</param>
    /// <param name="leader">Leader or null.</param>
    /// <param name="totalLengthM">Unstretched length of main line and leader, m.</param>
    /// <param name="segments">N, all segments, at least 1 (at least 2 with a leader).</param>
    /// <exception cref="ArgumentException">The leader is as long as the whole line.</exception>
    public LineMesh(LineSpec main, LeaderSpec? leader, double totalLengthM, int segments)
    {
        ArgumentNullException.ThrowIfNull(main);
        ArgumentOutOfRangeException.ThrowIfLessThan(segments, leader is null ? 1 : 2);
        LeaderLengthM = leader?.LengthM ?? 0.0;
        if (!(totalLengthM > LeaderLengthM))
        {
            throw new ArgumentException("the leader must be shorter than the line out", nameof(leader));
        }

        Segments = segments;
        int leaderSegments = leader is null ? 0 : LeaderSegments(leader.LengthM, segments);
        mainSegments = segments - leaderSegments;
        piece = new LineSpec[segments];
        Array.Fill(piece, main);
        for (int j = mainSegments; j < segments; j++)
        {
            piece[j] = leader!.Line;
        }

        int size = segments + 1 + (2 * Vector<double>.Count);
        Rest = new double[size];
        Stiffness = new double[size];
        Damping = new double[size];
        Mass = new double[size];
        DragArea = new double[size];
        Diameter = new double[size];
        Volume = new double[size];
        TangentialArea = new double[size];
        FilmLength = new double[size];
        FeedShare = new double[size];
        SetLength(totalLengthM);
    }

    /// <summary>N.</summary>
    public int Segments { get; }

    /// <summary>Index of the first leader segment (N without a leader).</summary>
    public int FirstLeaderSegment => mainSegments;

    /// <summary>Leader length, m.</summary>
    public double LeaderLengthM { get; }

    /// <summary>Unstretched length out, m.</summary>
    public double LengthM { get; private set; }

    /// <summary>l, unstretched segment lengths, m.</summary>
    public double[] Rest { get; }

    /// <summary>k = EA/l, N/m.</summary>
    public double[] Stiffness { get; }

    /// <summary>c = BA/l, N s/m.</summary>
    public double[] Damping { get; }

    /// <summary>m of each node, kg; the end nodes carry half a segment.</summary>
    public double[] Mass { get; }

    /// <summary>d l of each node times the drag factor, m2.</summary>
    public double[] DragArea { get; }

    /// <summary>d of each node, m.</summary>
    public double[] Diameter { get; }

    /// <summary>Displaced volume of each node when wet, m3.</summary>
    public double[] Volume { get; }

    /// <summary>Ct pi d l of each node, m2.</summary>
    public double[] TangentialArea { get; }

    /// <summary>Length of each node that an intact surface film can carry, m (0 where the line is soaked).</summary>
    public double[] FilmLength { get; }

    /// <summary>Share of the take-up speed at which material runs past each node toward the tip, 1 at the tip, 0 on the leader.</summary>
    public double[] FeedShare { get; }

    /// <summary>Line of a segment.</summary>
    /// <param name="segment">0 to N-1.</param>
    public LineSpec Piece(int segment) => piece[segment];

    /// <summary>Rate at which each main segment shortens when line comes in at 1 m/s.</summary>
    public double ShareOfFeed => 1.0 / mainSegments;

    /// <summary>Sets the unstretched length out and everything that follows from it.</summary>
    /// <param name="totalLengthM">Main line and leader, m; more than the leader's length.</param>
    public void SetLength(double totalLengthM)
    {
        LengthM = totalLengthM;
        double main = (totalLengthM - LeaderLengthM) / mainSegments;
        double leader = Segments > mainSegments ? LeaderLengthM / (Segments - mainSegments) : 0.0;
        for (int j = 0; j < Segments; j++)
        {
            double l = j < mainSegments ? main : leader;
            Rest[j] = l;
            Stiffness[j] = piece[j].AxialStiffnessN / l;
            Damping[j] = piece[j].DampingTimeS * Stiffness[j];
        }

        for (int i = 0; i <= Segments; i++)
        {
            SetNode(i);
        }
    }

    private static int LeaderSegments(double lengthM, int segments) =>
        Math.Clamp((int)Math.Round(lengthM / (lengthM < 1.0 ? 0.19 : 0.3)), 1, segments - 1);

    private void SetNode(int i)
    {
        double mass = 0.0, drag = 0.0, length = 0.0, volume = 0.0, tangential = 0.0, film = 0.0, diameter = 0.0;
        for (int j = Math.Max(0, i - 1); j <= Math.Min(Segments - 1, i); j++)
        {
            LineSpec s = piece[j];
            double half = 0.5 * Rest[j];
            length += half;
            mass += half * s.LinearDensityKgM;
            drag += half * s.DiameterM * s.NormalDragFactor;
            diameter += half * s.DiameterM;
            volume += half * s.LinearDensityKgM / s.DensityKgM3;
            tangential += half * Math.PI * s.DiameterM * s.TangentialDragCoefficient;
            film += s.Film == SurfaceFilm.Dry ? half : 0.0;
        }

        Mass[i] = mass;
        DragArea[i] = drag;
        Diameter[i] = diameter / length;
        Volume[i] = volume;
        TangentialArea[i] = tangential;
        FilmLength[i] = film;
        FeedShare[i] = Math.Max(0.0, 1.0 - ((double)i / mainSegments));
    }
}
