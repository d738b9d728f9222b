using LureSim.Model.Fish;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Assembly;

/// <summary>
/// The time step of a strike: hands and bent rod, clutch, line, fish. Passes as in a retrieve (<see cref="CoupledStep"/>); the clutch stands between tip and line,
/// and where it begins or ends to slip the pass is repeated. A step can be thrown away until <see cref="Commit"/>.
/// </summary>
internal sealed class StrikeStep
{
    private const int LeastPasses = 2, MostPasses = 6;
    private readonly ChainBending _bending;
    private readonly PlantFriction _plants;
    private readonly LineMedium _medium;

    /// <summary>Joins the parts.</summary>
    public StrikeStep(LineMesh mesh, LineMedium medium, ChainRodEnd rod, DragClutch clutch, FishEnd fish, Cover.CoverSpec cover)
    {
        (Mesh, _medium, Rod, Clutch, Fish) = (mesh, medium, rod, clutch, fish);
        Pass = new LinePass(mesh, medium);
        _bending = new ChainBending(mesh, fixedKnot: false);
        _plants = new PlantFriction(cover, mesh, Pass);
        (Before, Now, Next) = (new LineState(mesh.Segments), new LineState(mesh.Segments), new LineState(mesh.Segments));
    }

    /// <summary>The cut line.</summary>
    public LineMesh Mesh { get; }

    /// <summary>Hands and rod.</summary>
    public ChainRodEnd Rod { get; }

    /// <summary>Drag of the reel.</summary>
    public DragClutch Clutch { get; }

    /// <summary>Fish and lure.</summary>
    public FishEnd Fish { get; }

    /// <summary>The line's pass.</summary>
    public LinePass Pass { get; }

    /// <summary>Line at n-1, n and n+1.</summary>
    public LineState Before { get; private set; }

    /// <summary>Line at n.</summary>
    public LineState Now { get; private set; }

    /// <summary>Line at n+1 after <see cref="Try"/>.</summary>
    public LineState Next { get; private set; }

    /// <summary>Pull of the line on the hook in the last step, N.</summary>
    public double HookN => Pass.Solver.Tension[Mesh.Segments - 1];

    /// <summary>Pull of the line at the tip in the last step, N.</summary>
    public double TipN => Pass.Solver.Tension[0];

    /// <summary>Places the line at rest.</summary>
    /// <param name="place">Place of node 0 to N, m.</param>
    public void Start(Func<int, Vec3> place)
    {
        for (int i = 0; i <= Mesh.Segments; i++)
        {
            SetNode(Now, i, place(i));
            SetNode(Before, i, place(i));
        }
    }

    /// <summary>Computes the state at the end of a step; nothing is taken over yet.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="endS">t at the end of the step, s.</param>
    /// <param name="swims">Share of its thrust that the fish uses, 0 to 1.</param>
    public void Try(Bdf2 step, double endS, double swims)
    {
        FilmBreak.Update(Pass.Film, Now, Mesh.Segments, _medium.CapillaryLengthM);
        _plants.Update(Now);
        Rod.Guess(step, endS);
        Fish.Guess(step, swims);
        Clutch.Begin(step, Mesh.LengthM, Rod.TurnRad(Rod.Now, Edge(Now, 0).Unit()));
        Pass.Begin(step, Before, Now, Next);
        bool settled = false;
        for (int pass = 0; pass < LeastPasses || (!settled && pass < MostPasses); pass++)
        {
            settled = TryPass(step);
        }

    }

    /// <summary>Takes the step over: the line given by the clutch joins the first segment.</summary>
    public void Commit()
    {
        (Before, Now, Next) = (Now, Next, Before);
        Rod.Commit();
        Fish.Commit();

        // The clutch gave line as if the tip had gone toward the hook; the tip itself is where the rod has it.
        SetNode(Now, 0, Rod.TipNow, Rod.TipVelocityNow);
        SetNode(Now, Mesh.Segments, Fish.Now.Place, Fish.Now.Speed);
        double had = Clutch.GivenM;
        Clutch.Commit();
        if (Clutch.GivenM > had)
        {
            Mesh.Give(Clutch.GivenM - had);
        }
    }

    /// <summary>Largest dt sqrt(T/mu)/l of the last step, as in a retrieve.</summary>
    /// <param name="dt">Step, s.</param>
    public double StepRatio(double dt)
    {
        double largest = 0.0;
        for (int j = 0; j < Mesh.Segments; j++)
        {
            largest = Math.Max(largest, Pass.Solver.Tension[j] / (Mesh.Piece(j).LinearDensityKgM * Mesh.Rest[j] * Mesh.Rest[j]));
        }

        return dt * Math.Sqrt(largest);
    }

    /// <summary>False as soon as any coordinate is not a finite number.</summary>
    public bool IsFinite => double.IsFinite(Next.CoordinateSum());

    private bool TryPass(Bdf2 step)
    {
        LineEnd tip = Rod.Begin(step);
        SetNode(Next, 0, Rod.Tip);
        SetNode(Next, Mesh.Segments, Fish.Place);
        Pass.SetDirections(Next);
        _bending.Apply(Pass, Next, Vec3.Zero);
        LineEnd head = Clutch.Give(tip, Pass.Direction(0));
        Pass.Solve(step, Next, head, Fish.Begin(step), out Vec3 tipForce, out Vec3 hookForce);
        Rod.Finish(step, tipForce);
        Fish.Finish(step, hookForce);
        return !Clutch.Finish(Pass.Solver.Tension[0]);
    }

    private static Vec3 Edge(LineState s, int j) => new(s.X[j + 1] - s.X[j], s.Y[j + 1] - s.Y[j], s.Z[j + 1] - s.Z[j]);

    private static void SetNode(LineState s, int i, Vec3 p) => (s.X[i], s.Y[i], s.Z[i]) = (p.X, p.Y, p.Z);

    private static void SetNode(LineState s, int i, Vec3 p, Vec3 v)
    {
        SetNode(s, i, p);
        (s.VX[i], s.VY[i], s.VZ[i]) = (v.X, v.Y, v.Z);
    }
}
