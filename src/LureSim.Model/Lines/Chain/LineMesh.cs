using System.Numerics;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lines.Chain;

/// <summary>
/// The line cut into segments: main line of N equal unstretched lengths that shrink together as the reel takes line up,
/// then the leader with lengths of its own. Node 0 is the rod tip, node N the line tie. Masses are lumped half and half.
/// Shrinking every main segment keeps the step smooth; the flow of material past the nodes is put into the drag
/// (<see cref="FeedShare"/>), its inertia, mu V^2 (under 1e-4 N), is left out. See docs/line.md. Line that a clutch gives enters the first segment.
/// </summary>
internal sealed class LineMesh
{
    private readonly LineSpec[] _piece;
    private readonly int _mainSegments;
    private readonly NodeSum _mass, _dragArea, _volume, _tangentialArea, _filmLength;

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
        _mainSegments = segments - leaderSegments;
        _piece = new LineSpec[segments];
        Array.Fill(_piece, main);
        for (int j = _mainSegments; j < segments; j++)
        {
            _piece[j] = leader!.Line;
        }

        int size = segments + 1 + (2 * Vector<double>.Count);
        NodeSum Sum() => new(segments + 1, size);
        Rest = new double[size];
        Stiffness = new double[size];
        Damping = new double[size];
        Diameter = new double[size];
        FeedShare = new double[size];
        (_mass, _dragArea, _volume, _tangentialArea, _filmLength) = (Sum(), Sum(), Sum(), Sum(), Sum());
        for (int i = 0; i <= segments; i++)
        {
            SetNode(i);
        }

        SetLeader();
        SetLength(totalLengthM);
    }

    /// <summary>N.</summary>
    public int Segments { get; }

    /// <summary>Index of the first leader segment (N without a leader).</summary>
    public int FirstLeaderSegment => _mainSegments;

    /// <summary>Leader length, m.</summary>
    public double LeaderLengthM { get; }

    /// <summary>Unstretched length out, m.</summary>
    public double LengthM { get; private set; }

    /// <summary>What the first segment is longer than the other main segments, m: line that a clutch has given and that has not yet been shared out.</summary>
    public double TipExtraM { get; private set; }

    /// <summary>l, unstretched segment lengths, m.</summary>
    public double[] Rest { get; }

    /// <summary>k = EA/l, N/m.</summary>
    public double[] Stiffness { get; }

    /// <summary>c = BA/l, N s/m.</summary>
    public double[] Damping { get; }

    /// <summary>m of each node, kg; the end nodes carry half a segment.</summary>
    public double[] Mass => _mass.Values;

    /// <summary>d l of each node times the drag factor, m2.</summary>
    public double[] DragArea => _dragArea.Values;

    /// <summary>d of each node, m.</summary>
    public double[] Diameter { get; }

    /// <summary>Displaced volume of each node when wet, m3.</summary>
    public double[] Volume => _volume.Values;

    /// <summary>Ct pi d l of each node, m2.</summary>
    public double[] TangentialArea => _tangentialArea.Values;

    /// <summary>Length of each node that an intact surface film can carry, m (0 where the line is soaked).</summary>
    public double[] FilmLength => _filmLength.Values;

    /// <summary>Share of the take-up speed at which material runs past each node toward the tip, 1 at the tip, 0 on the leader.</summary>
    public double[] FeedShare { get; }

    /// <summary>Line of a segment.</summary>
    /// <param name="segment">0 to N-1.</param>
    public LineSpec Piece(int segment) => _piece[segment];

    /// <summary>Shortest main segment, m; all are as long but the first, which may be longer.</summary>
    public double ShortestMainM => Rest[Math.Min(1, _mainSegments - 1)];

    /// <summary>Rate at which each main segment shortens when line comes in at 1 m/s.</summary>
    public double ShareOfFeed => 1.0 / _mainSegments;

    /// <summary>Sets the unstretched length out and everything that follows from it.</summary>
    /// <param name="totalLengthM">Main line and leader, m; more than the leader's length.</param>
    /// <param name="tipExtraM">What the first segment is longer than the others, m, 0 or more.</param>
    public void SetLength(double totalLengthM, double tipExtraM = 0.0)
    {
        (LengthM, TipExtraM) = (totalLengthM, tipExtraM);
        double l = (totalLengthM - LeaderLengthM - tipExtraM) / _mainSegments;
        LineSpec main = _piece[0];
        double k = main.AxialStiffnessN / l;
        Rest.AsSpan(0, _mainSegments).Fill(l);
        Stiffness.AsSpan(0, _mainSegments).Fill(k);
        Damping.AsSpan(0, _mainSegments).Fill(main.DampingTimeS * k);
        _mass.SetLength(l);
        _dragArea.SetLength(l);
        _volume.SetLength(l);
        _tangentialArea.SetLength(l);
        _filmLength.SetLength(l);
        if (tipExtraM != 0.0)
        {
            LengthenFirst(tipExtraM);
        }
    }

    /// <summary>Lengthens the first segment alone: line that comes off the reel under tension, faster than the rest could take its share.</summary>
    /// <param name="givenM">Unstretched length, m; not negative.</param>
    public void Give(double givenM)
    {
        (LengthM, TipExtraM) = (LengthM + givenM, TipExtraM + givenM);
        LengthenFirst(givenM);
    }

    private void LengthenFirst(double moreM)
    {
        Rest[0] += moreM;
        Stiffness[0] = _piece[0].AxialStiffnessN / Rest[0];
        Damping[0] = _piece[0].DampingTimeS * Stiffness[0];
        _mass.Give(moreM);
        _dragArea.Give(moreM);
        _volume.Give(moreM);
        _tangentialArea.Give(moreM);
        _filmLength.Give(moreM);
    }

    private static int LeaderSegments(double lengthM, int segments) =>
        Math.Clamp((int)Math.Round(lengthM / (lengthM < 1.0 ? 0.19 : 0.3)), 1, segments - 1);

    private void SetLeader()
    {
        double l = LeaderLengthM / Math.Max(1, Segments - _mainSegments);
        for (int j = _mainSegments; j < Segments; j++)
        {
            Rest[j] = l;
            Stiffness[j] = _piece[j].AxialStiffnessN / l;
            Damping[j] = _piece[j].DampingTimeS * Stiffness[j];
        }
    }

    /// <summary>A node carries half of each neighbouring segment.</summary>
    private void SetNode(int i)
    {
        int first = Math.Max(0, i - 1), last = Math.Min(Segments - 1, i);
        for (int j = first; j <= last; j++)
        {
            LineSpec s = _piece[j];
            bool main = j < _mainSegments;
            double half = main ? 0.5 : 0.5 * LeaderLengthM / (Segments - _mainSegments);
            _mass.Add(i, main, half * s.LinearDensityKgM);
            _dragArea.Add(i, main, half * s.DiameterM * s.NormalDragFactor);
            _volume.Add(i, main, half * s.LinearDensityKgM / s.DensityKgM3);
            _tangentialArea.Add(i, main, half * Math.PI * s.DiameterM * s.TangentialDragCoefficient);
            _filmLength.Add(i, main, s.Film == SurfaceFilm.Dry ? half : 0.0);
            Diameter[i] += s.DiameterM / (last - first + 1);
        }

        FeedShare[i] = Math.Max(0.0, 1.0 - ((double)i / _mainSegments));
    }

    /// <summary>A quantity of every node that is linear in the length of a main segment: the leader's share stays.</summary>
    private sealed class NodeSum(int nodes, int size)
    {
        private readonly double[] _perMetre = new double[size];
        private readonly double[] _leader = new double[size];

        public double[] Values { get; } = new double[size];

        public void Add(int node, bool main, double amount) => (main ? _perMetre : _leader)[node] += amount;

        // Half of it to either end of the first segment; what node 0 has per metre is such a half.
        public void Give(double given)
        {
            Values[0] += _perMetre[0] * given;
            Values[1] += _perMetre[0] * given;
        }

        public void SetLength(double l)
        {
            ref double slope = ref First(_perMetre), fixedPart = ref First(_leader), value = ref First(Values);
            var length = new Vector<double>(l);
            for (nuint i = 0; i < (nuint)nodes; i += (nuint)Width)
            {
                Store((Load(ref slope, i) * length) + Load(ref fixedPart, i), ref value, i);
            }
        }
    }
}
