using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Rods;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Assembly;

/// <summary>
/// The time step of a retrieve. Two passes; in each the rod tip and the line tie say how they would move without tension
/// and how they yield, the line solves its tensions, and rod and lure take the end forces. States at n-1 and n stay
/// untouched until <see cref="Commit"/>, so a step can be thrown away.
/// </summary>
internal sealed class CoupledStep
{
    private const int PassCount = 2;
    private readonly LineMesh _mesh;
    private readonly LineMedium _medium;
    private readonly ChainBending _bending;

    /// <summary>Joins the parts.</summary>
    /// <param name="mesh">Line.</param>
    /// <param name="medium">Water, air, laws.</param>
    /// <param name="rod">Rod tip.</param>
    /// <param name="lure">Lure, where it starts.</param>
    /// <param name="fixedKnot">True for a tight knot at the line tie.</param>
    /// <param name="clutch">Clutch behind the rod; without one the reel never gives line.</param>
    public CoupledStep(LineMesh mesh, LineMedium medium, ModalRod rod, ILineEnd lure, bool fixedKnot, TipClutch? clutch = null)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(medium);
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(lure);
        (_mesh, _medium, Rod, Lure, Clutch) = (mesh, medium, rod, lure, clutch);
        Pass = new LinePass(mesh, medium);
        _bending = new ChainBending(mesh, fixedKnot);
        (Before, Now, Next) = (new LineState(mesh.Segments), new LineState(mesh.Segments), new LineState(mesh.Segments));
    }

    /// <summary>The cut line.</summary>
    public LineMesh Mesh => _mesh;

    /// <summary>Line at n-1.</summary>
    public LineState Before { get; private set; }

    /// <summary>Line at n.</summary>
    public LineState Now { get; private set; }

    /// <summary>Line at n+1 after <see cref="Try"/>.</summary>
    public LineState Next { get; private set; }

    /// <summary>Lure.</summary>
    public ILineEnd Lure { get; }

    /// <summary>Rod.</summary>
    public ModalRod Rod { get; }

    /// <summary>Clutch behind the rod, or none.</summary>
    public TipClutch? Clutch { get; }

    /// <summary>The line's pass, with tensions and work arrays of the last step.</summary>
    public LinePass Pass { get; }

    /// <summary>Force of the line on the rod tip in the last step, N.</summary>
    public Vec3 TipForce { get; private set; }

    /// <summary>Force of the line on the line tie in the last step, N.</summary>
    public Vec3 TieForce { get; private set; }

    /// <summary>Weight and buoyancy of the half segment at the tie in the last step, N (upward).</summary>
    public double TieWeight { get; private set; }

    /// <summary>Sets the rod tip and lays the line straight between it and the lure, at rest.</summary>
    /// <param name="tip">Rod tip at the start.</param>
    public void Start(in TipFrame tip)
    {
        Vec3 tie = Lure.Tie;
        int n = _mesh.Segments;
        double run = 0.0;
        for (int i = 0; i <= n; i++)
        {
            Vec3 p = tip.Position + (run / _mesh.LengthM * (tie - tip.Position));
            (Now.X[i], Now.Y[i], Now.Z[i]) = (Before.X[i], Before.Y[i], Before.Z[i]) = (p.X, p.Y, p.Z);
            run += _mesh.Rest[i];
        }
    }

    /// <summary>Computes the state at the end of a step; nothing is taken over yet.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="tip">Rigid rod tip at the end of the step.</param>
    public void Try(Bdf2 step, in TipFrame tip)
    {
        Lure.Guess(step);
        Pass.Begin(step, Before, Now, Next);
        LineEnd head = Rod.Begin(step, tip);
        SetNode(Next, 0, Rod.Guess(step.Dt, tip));
        Clutch?.Begin(step, tip);
        for (int pass = 0; pass < PassCount;)
        {
            Vec3 tie = Lure.Tie;
            SetNode(Next, _mesh.Segments, tie);
            Pass.SetDirections(Next);
            Vec3 knotMoment = _bending.Apply(Pass, Next, Lure.Axis);
            TieWeight = EndWeight(tie.Z);
            LineEnd tail = Lure.Begin(step, EndForce(), knotMoment);
            LineEnd given = Clutch is null ? head : Clutch.Give(head, Pass.Direction(0));
            Pass.Solve(step, Next, given, tail, out Vec3 tipForce, out Vec3 tieForce);
            (TipForce, TieForce) = (tipForce, tieForce);
            Lure.Finish(step, tieForce);
            pass += Clutch is not null && Clutch.Finish(Pass.Solver.Tension[0], Pass.Direction(0)) ? 0 : 1;
        }

        Rod.Finish(step, TipForce);
        SetNode(Next, _mesh.Segments, Lure.Tie);
    }

    /// <summary>Largest dt sqrt(T/mu)/l over the segments of the last step: the tension direction is explicit, limit about 0.5.</summary>
    /// <param name="dt">Step, s.</param>
    public double StepRatio(double dt)
    {
        int leader = _mesh.FirstLeaderSegment;
        double rate = Rate(0, leader);
        return dt * (leader < _mesh.Segments ? Math.Max(rate, Rate(leader, _mesh.Segments)) : rate);
    }

    /// <summary>Takes the step over and updates the surface film.</summary>
    public void Commit()
    {
        Clutch?.Commit(Next, Pass.Direction(0));
        (Before, Now, Next) = (Now, Next, Before);
        Lure.Commit();
        Rod.Commit();
        FilmBreak.Update(Pass.Film, Now, _mesh.Segments, _medium.CapillaryLengthM);
    }

    /// <summary>False as soon as any coordinate is not a finite number.</summary>
    public bool IsFinite() => Lure.IsFinite && double.IsFinite(Next.CoordinateSum());

    /// <summary>sqrt(T/mu)/l of equal segments; the first may be longer.</summary>
    private double Rate(int from, int to)
    {
        double largest = Lanes.Largest(Pass.Solver.Tension.AsSpan(from, to - from));
        return Math.Sqrt(largest / _mesh.Piece(from).LinearDensityKgM) / _mesh.Rest[Math.Min(from + 1, to - 1)];
    }

    private Vec3 EndForce()
    {
        int n = _mesh.Segments;
        return new Vec3(Pass.ForceX[n], Pass.ForceY[n], Pass.ForceZ[n] + TieWeight);
    }

    private double EndWeight(double z)
    {
        int n = _mesh.Segments;
        return (_medium.Water.DensityKgM3 * _medium.GravityMS2 * _mesh.Volume[n] * _medium.WetShare(z))
            - (_mesh.Mass[n] * _medium.GravityMS2);
    }

    private static void SetNode(LineState state, int node, Vec3 p) =>
        (state.X[node], state.Y[node], state.Z[node]) = (p.X, p.Y, p.Z);
}
