using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Model.Assembly;

/// <summary>Rod, line and lure as a twitching angler joins them, set at their start: what a walk in the water and a crawl over plants have in common.</summary>
internal sealed class TwitchedLine
{
    /// <summary>Shortest segment that is worth its step, m (docs/line-solver.md).</summary>
    private const double ShortestSegmentM = 0.25;

    private readonly WindProfile _wind;
    private readonly bool _mainSoaked, _leaderSoaked;

    /// <summary>Joins them, at rest, the line straight.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="water">Its water.</param>
    /// <param name="swing">The turning rod.</param>
    /// <param name="lengthM">Unstretched line out with its leader, m.</param>
    /// <param name="nodes">Wanted number of segments.</param>
    /// <param name="lure">Lure, where it starts.</param>
    /// <exception cref="ArgumentException">The leader is as long as the line.</exception>
    public TwitchedLine(Setup setup, WaterState water, WristSwing swing, double lengthM, int nodes, ILineEnd lure)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(swing);
        Medium = new LineMedium(water, AirModel.Evaluate(setup.Air), Cylinder, LayerM: 2.0 * setup.Water.ContactHeightM);
        (_mainSoaked, _leaderSoaked) = (setup.Line.Film == SurfaceFilm.Wetted, setup.Leader?.Line.Film == SurfaceFilm.Wetted);
        Mesh = NewMesh(setup, lengthM, SegmentCount(nodes, lengthM, setup.Leader));
        (Swing, IsKnotFixed) = (swing, setup.Leader?.Knot == TieKnot.Fixed);
        var clutch = new TipClutch(new DragClutch(setup.Reel, setup.Line), Mesh, setup.Rod.FreeLengthM);
        Step = new CoupledStep(Mesh, Medium, new ModalRod(RodModes.Compute(setup.Rod)), lure, IsKnotFixed, clutch);
        Step.Start(swing.At(0.0));
        _wind = new WindProfile(setup.Air);
        Plants = new PlantFriction(setup.Cover, Mesh, Step.Pass);
    }

    /// <summary>Water, air and drag laws.</summary>
    public LineMedium Medium { get; }

    /// <summary>The turning rod.</summary>
    public WristSwing Swing { get; }

    /// <summary>The cut line.</summary>
    public LineMesh Mesh { get; }

    /// <summary>The coupled step.</summary>
    public CoupledStep Step { get; }

    /// <summary>True for a tight knot at the line tie.</summary>
    public bool IsKnotFixed { get; }

    /// <summary>Wind.</summary>
    public WindProfile Wind => _wind;

    /// <summary>Plants under the line.</summary>
    public PlantFriction Plants { get; }

    /// <summary>Unstretched line out minus straight distance from tip to tie, m.</summary>
    public double SlackM => Mesh.LengthM - StraightM;

    /// <summary>Straight distance from tip to tie, m.</summary>
    public double StraightM
    {
        get
        {
            LineState s = Step.Now;
            int n = Mesh.Segments;
            return (new Vec3(s.X[n], s.Y[n], s.Z[n]) - new Vec3(s.X[0], s.Y[0], s.Z[0])).Length;
        }
    }

    /// <summary>Sets what surrounds the line in the coming step: plants and wind.</summary>
    public void SetSurroundings()
    {
        Plants.Update(Step.Now);
        if (!Plants.IsFree)
        {
            Carry();
        }

        if (_wind.IsCalm)
        {
            return;
        }

        for (int i = 1; i < Mesh.Segments; i++)
        {
            (Step.Pass.WindX[i], Step.Pass.WindY[i]) = _wind.Velocity(Step.Now.Z[i]);
        }
    }

    // Plants carry a line as a film does that is never drawn through; a soaked line has none but over plants.
    private void Carry()
    {
        double[] film = Step.Pass.Film;
        for (int i = 1; i < Mesh.Segments; i++)
        {
            bool soaked = i > Mesh.FirstLeaderSegment ? _leaderSoaked : _mainSoaked;
            film[i] = Plants.IsOver(i) ? 1.0 : soaked ? 0.0 : film[i];
        }
    }

    private static LineMesh NewMesh(Setup setup, double lengthM, int segments)
    {
        if (setup.Cover.LineOverM <= 0.0)
        {
            return new LineMesh(setup.Line, setup.Leader, lengthM, segments);
        }

        static LineSpec Carried(LineSpec line) => line with { Film = SurfaceFilm.Dry };
        return new LineMesh(Carried(setup.Line), setup.Leader is { } leader ? leader with { Line = Carried(leader.Line) } : null, lengthM, segments);
    }

    private static DragCurve Cylinder { get; } = DragCurve.FromLaw(CylinderDrag.Cd);

    private static int SegmentCount(int wanted, double lengthM, LeaderSpec? leader) =>
        Math.Max(leader is null ? 2 : 4, Math.Min(wanted, (int)(lengthM / ShortestSegmentM)));
}
