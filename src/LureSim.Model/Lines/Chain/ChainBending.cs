using LureSim.Numerics;

namespace LureSim.Model.Lines.Chain;

/// <summary>
/// Bending of the leader (in the long segments of the main line it is far below the weight): energy EI |e(i) - e(i-1)|^2 / (2 l) at each
/// node between two bending segments, e the segment over its unstretched length, so that a fine mesh gives the elastica
/// (Bergou et al. 2008, Discrete elastic rods, from memory). Taut, e is the unit direction; in a slack segment that folds
/// together unit directions would ask for forces without bound, or make energy if those were cut. The forces are explicit:
/// their rates (under 100 per second for a leader) are harmless at the step of the line.
/// </summary>
internal sealed class ChainBending
{
    private readonly LineMesh _mesh;
    private readonly bool _fixedKnot;
    private readonly int _first;

    /// <summary>Prepares the bending forces of a line.</summary>
    /// <param name="mesh">The cut line.</param>
    /// <param name="fixedKnot">True when the last piece is clamped to the lure's axis at the tie.</param>
    public ChainBending(LineMesh mesh, bool fixedKnot)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        _mesh = mesh;
        _fixedKnot = fixedKnot;
        int leader = mesh.FirstLeaderSegment;
        bool bends = leader < mesh.Segments && mesh.Piece(leader).BendingStiffnessNm2 > 0.0;
        _first = bends ? leader : mesh.Segments;
    }

    /// <summary>Writes the bending forces of a shape into the pass.</summary>
    /// <param name="pass">Pass that takes the forces.</param>
    /// <param name="shape">Nodes, the tie included.</param>
    /// <param name="nose">Unit vector along the lure, tail to nose.</param>
    /// <returns>Moment of a fixed knot on the lure, world axes, N m; 0 for a loop.</returns>
    public Vec3 Apply(LinePass pass, LineState shape, Vec3 nose)
    {
        ArgumentNullException.ThrowIfNull(pass);
        ArgumentNullException.ThrowIfNull(shape);
        int n = _mesh.Segments;
        if (_first >= n)
        {
            return Vec3.Zero;
        }

        for (int i = _first; i <= n; i++)
        {
            (pass.ForceX[i], pass.ForceY[i], pass.ForceZ[i]) = (0.0, 0.0, 0.0);
        }

        for (int i = Math.Max(1, _first + 1); i < n; i++)
        {
            double stiffness = _mesh.Piece(i).BendingStiffnessNm2 * 2.0 / (_mesh.Rest[i - 1] + _mesh.Rest[i]);
            Vec3 gradient = stiffness * (Edge(shape, i) - Edge(shape, i - 1));
            Couple(pass, i, gradient);
            Couple(pass, i - 1, -gradient);
        }

        return _fixedKnot ? Knot(pass, shape, -nose) : Vec3.Zero;
    }

    private Vec3 Edge(LineState s, int j) =>
        (1.0 / _mesh.Rest[j]) * new Vec3(s.X[j + 1] - s.X[j], s.Y[j + 1] - s.Y[j], s.Z[j + 1] - s.Z[j]);

    /// <summary>A pair of forces on the ends of a segment: gradient is dE/de of its edge.</summary>
    private void Couple(LinePass pass, int segment, Vec3 gradient)
    {
        Vec3 f = (1.0 / _mesh.Rest[segment]) * gradient;
        Add(pass, segment, f);
        Add(pass, segment + 1, -f);
    }

    private Vec3 Knot(LinePass pass, LineState shape, Vec3 axis)
    {
        int last = _mesh.Segments - 1;
        Vec3 e = Edge(shape, last);
        double stiffness = _mesh.Piece(last).BendingStiffnessNm2 * 2.0 / _mesh.Rest[last];
        Couple(pass, last, stiffness * (e - axis));
        return stiffness * Vec3.Cross(axis, e);
    }

    private static void Add(LinePass pass, int node, Vec3 f)
    {
        pass.ForceX[node] += f.X;
        pass.ForceY[node] += f.Y;
        pass.ForceZ[node] += f.Z;
    }
}
