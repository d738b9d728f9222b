using LureSim.Model.Cover;
using LureSim.Numerics;

namespace LureSim.Model.Lines.Chain;

/// <summary>
/// Line that lies on plants: along it every metre is held by f + mu kappa T, f what clings to it, kappa its turn about stems per metre (the law of a rope
/// about a post, dT = mu T d theta: Euler 1769, Eytelwein 1808, from memory). Coulomb friction as a secant coefficient of the step, F/sqrt(v^2 + v_0^2): it only
/// takes energy and lets held line creep at less than v_0. Tensions are those of the step before.
/// </summary>
internal sealed class PlantFriction
{
    /// <summary>v_0, m/s: creep of a held line, a fiftieth of the speeds that a strike or a twitch gives it.</summary>
    private const double CreepMS = 0.02;

    private readonly CoverSpec _cover;
    private readonly LineMesh _mesh;
    private readonly LinePass _pass;
    private readonly double[] _over;

    /// <summary>Joins plants and line.</summary>
    /// <param name="cover">Plants.</param>
    /// <param name="mesh">Line.</param>
    /// <param name="pass">Its pass; receives <see cref="LinePass.AlongFriction"/>.</param>
    public PlantFriction(CoverSpec cover, LineMesh mesh, LinePass pass)
    {
        (_cover, _mesh, _pass, _over) = (cover, mesh, pass, new double[mesh.Segments]);
        OverM = cover.LineOverM;
    }

    /// <summary>True when there are no plants under the line.</summary>
    public bool IsFree => _cover.LineOverM <= 0.0;

    /// <summary>Length of line, counted from the lure, over which there are plants, m; at first that of the cover.</summary>
    public double OverM { get; set; }

    /// <summary>Line between the lure and the opening in them, m: 0 for a lure in the opening.</summary>
    public double HoleFromM { get; set; }

    /// <summary>Whether a node had plants under it at the last <see cref="Update"/>.</summary>
    /// <param name="node">1 to N-1.</param>
    public bool IsOver(int node) => _over[node] > 0.0;

    /// <summary>Sets the friction of the coming step.</summary>
    /// <param name="now">State at its start.</param>
    public void Update(LineState now)
    {
        if (IsFree)
        {
            return;
        }

        double[] tension = _pass.Solver.Tension, rest = _mesh.Rest;
        double fromLure = 0.5 * rest[_mesh.Segments - 1];
        for (int i = _mesh.Segments - 1; i >= 1; i--)
        {
            double length = 0.5 * (rest[i - 1] + rest[i]);
            _over[i] = Overlap(fromLure, length);
            double over = _over[i] * Lying(now.Z[i]);
            fromLure += length;
            double pull = 0.5 * (tension[i - 1] + tension[i]);
            double force = over * (_cover.DragNM + (_cover.LineFriction * _cover.TurnRadM * pull));
            _pass.AlongFriction[i] = force / Math.Sqrt(Square(now, i) + (CreepMS * CreepMS));
        }
    }

    // Line of a node, of this length and starting so far from the lure, over plants and not over the opening, m.
    private double Overlap(double start, double length)
    {
        double end = Math.Min(start + length, OverM), hole = Math.Min(end, HoleFromM + _cover.OpeningM) - Math.Max(start, HoleFromM);
        return Math.Max(0.0, end - start - Math.Max(0.0, hole));
    }

    // 1 up to the height of the plants, 0 from twice that.
    private double Lying(double z) => Math.Clamp(2.0 - (z / Math.Max(_cover.HeightM, 1e-3)), 0.0, 1.0);

    private double Square(LineState now, int i)
    {
        Vec3 t = _pass.Tangent(i);
        double along = (now.VX[i] * t.X) + (now.VY[i] * t.Y) + (now.VZ[i] * t.Z) - (_pass.FeedMS * _mesh.FeedShare[i]);
        return along * along;
    }
}
