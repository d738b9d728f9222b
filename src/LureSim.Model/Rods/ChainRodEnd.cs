using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Rods;

/// <summary>
/// Hands and rod of a strike as an end of the line: <see cref="ChainMotion"/> in linearly implicit steps of the two-step backward differentiation
/// formula, v = v_h + q a, x = x_h + q v. The chain lives in the plane of the stroke, bends there as far as it likes, and is taken as rigid across it.
/// </summary>
/// <remarks>
/// Masses, centrifugal terms, weight and air are taken at the guess of each pass: order 2 already in the first pass, whose guess is extrapolated.
/// </remarks>
internal sealed class ChainRodEnd
{
    /// <summary>Work of the accepted steps.</summary>
    public RodWork Work;

    private readonly ChainMotion _motion;
    private readonly StrokeHands _hands;
    private readonly double[] _pastQ, _pastV, _freeV, _shift, _a;
    private readonly LetGo _eases;
    private DriveLoad _turn, _pull;
    private RodWork _powerNow;
    private double _timeEnd, _dt;

    /// <summary>Prepares the rod; <see cref="Start"/> places it.</summary>
    /// <param name="motion">Equations; z of the turning point is 0 in them.</param>
    /// <param name="hands">Hands.</param>
    /// <param name="frame">Plane of the stroke.</param>
    public ChainRodEnd(ChainMotion motion, StrokeHands hands, StrokeFrame frame)
    {
        (_motion, _hands, Frame) = (motion, hands, frame);
        _eases = new LetGo(hands.HoldS, 0.0);
        int n = motion.Size;
        (_pastQ, _pastV, _freeV, _shift, _a) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
        (Before, Now, Next) = (new ChainRodState(n), new ChainRodState(n), new ChainRodState(n));
    }

    /// <summary>Plane of the stroke.</summary>
    public StrokeFrame Frame { get; }

    /// <summary>State at n-1.</summary>
    public ChainRodState Before { get; private set; }

    /// <summary>State at n.</summary>
    public ChainRodState Now { get; private set; }

    /// <summary>Guess of the state at n+1; the state itself after the last <see cref="Finish"/>.</summary>
    public ChainRodState Next { get; private set; }

    /// <summary>Tip at the guess of the pass, after <see cref="Begin"/>; the tip at n after <see cref="Commit"/>, m.</summary>
    public Vec3 Tip { get; private set; }

    /// <summary>Tip at n, m.</summary>
    public Vec3 TipNow { get; private set; }

    /// <summary>Velocity of the tip at n, m/s.</summary>
    public Vec3 TipVelocityNow { get; private set; }

    /// <summary>Torque of the hands at n, away from the fish positive, N m.</summary>
    public double HandTorqueNm { get; private set; }

    /// <summary>Torque of the rod on the hands at n, toward the fish positive: the bending moment at the grip, N m.</summary>
    public double RodTorqueNm { get; private set; }

    /// <summary>Pull of the body at n, away from the fish positive, N.</summary>
    public double PullN { get; private set; }

    /// <summary>Energy of motion of hands and rod at n, J.</summary>
    public double KineticJ => _motion.KineticJ(Now.Q, Now.V);

    /// <summary>The rod's chain.</summary>
    public RodChain Chain => _motion.Chain;

    /// <summary>Energy of bending at n, J.</summary>
    public double SpringJ => _motion.SpringJ(Now.Q);

    /// <summary>Places the rod without a pull on its tip, with no history.</summary>
    /// <param name="place">Travel of the hands, then angle of each link, m and rad.</param>
    /// <param name="rate">Their rates.</param>
    public void Start(ReadOnlySpan<double> place, ReadOnlySpan<double> rate)
    {
        foreach (ChainRodState state in (ReadOnlySpan<ChainRodState>)[Before, Now, Next])
        {
            place.CopyTo(state.Q);
            rate.CopyTo(state.V);
        }

        Work = default;
        Solve(new StepGains(0.0, 0.0), 0.0, Now.Q, Now.V);
        _motion.Pull(0.0, 0.0, _a);
        _powerNow = Powers(Now);
        (double vx, double vz) = _motion.AtTip(Now.V);
        (TipNow, TipVelocityNow) = (Tip, Frame.Vector(vx, vz));
    }

    /// <summary>Begins a step: what history fixes of its end, and the guess of the first pass.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="timeEndS">Time at the end of the step, s.</param>
    public void Guess(Bdf2 step, double timeEndS)
    {
        (_timeEnd, _dt) = (timeEndS, step.Dt);
        for (int i = 0; i < _a.Length; i++)
        {
            _pastQ[i] = step.History(Now.Q[i], Before.Q[i]);
            _pastV[i] = step.History(Now.V[i], Before.V[i]);
            Next.V[i] = step.Extrapolate(Now.V[i], Before.V[i]);
            Next.Q[i] = _pastQ[i] + (step.Q * Next.V[i]);
        }
    }

    /// <summary>Motion of the tip without the line at the end of the step and how it yields, about the guess of this pass.</summary>
    /// <param name="step">Step coefficients.</param>
    public LineEnd Begin(Bdf2 step)
    {
        Solve(step.Gains, _timeEnd, _pastQ, _pastV);
        double[] free = _motion.Free;
        for (int i = 0; i < free.Length; i++)
        {
            _freeV[i] = _pastV[i] + (step.Q * free[i]);
            _shift[i] = _pastQ[i] + (step.Q * _freeV[i]) - Next.Q[i];
        }

        (double vx, double vz) = _motion.AtTip(_freeV);
        (double dx, double dz) = _motion.AtTip(_shift);
        (double xx, double xz, double zz) = _motion.Yield();
        var end = new LineEnd { FreePosition = Tip + Frame.Vector(dx, dz), FreeVelocity = Frame.Vector(vx, vz) };

        // xz (a b' + b a') = xz [(a + b)(a + b)' - a a' - b b'].
        end.AddYield(xx - xz, Frame.Away);
        end.AddYield(zz - xz, Frame.Square);
        end.AddYield(xz, Frame.Away + Frame.Square);
        return end;
    }

    /// <summary>Ends a pass: adds the force of the line and leaves the end of the step as the next guess.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="force">Force of the line on the tip, N.</param>
    public void Finish(Bdf2 step, Vec3 force)
    {
        _motion.Pull(Vec3.Dot(force, Frame.Away), Vec3.Dot(force, Frame.Square), _a);
        for (int i = 0; i < _a.Length; i++)
        {
            Next.V[i] = _pastV[i] + (step.Q * _a[i]);
            Next.Q[i] = _pastQ[i] + (step.Q * Next.V[i]);
        }
    }

    /// <summary>Takes the finished step over and books its work by the trapezoid rule.</summary>
    public void Commit()
    {
        (Before, Now, Next) = (Now, Next, Before);
        RodWork power = Powers(Now);
        double half = 0.5 * _dt;
        Work.Add(_powerNow, half);
        Work.Add(power, half);
        (double x, double z, double vx, double vz) = _motion.Tip(Now.Q, Now.V);
        (Tip, TipVelocityNow) = (Frame.Place(x, z), Frame.Vector(vx, vz));
        (TipNow, _powerNow) = (Tip, power);
    }

    /// <summary>Turn of the line along a rod: the joints' turns from grip to tip, and that from the last link into the line, rad.</summary>
    /// <param name="state">State of the rod.</param>
    /// <param name="line">Direction of the line from the tip, unit vector.</param>
    public double TurnRad(ChainRodState state, Vec3 line)
    {
        double[] q = state.Q;
        double sum = 0.0;
        for (int i = 2; i < q.Length; i++)
        {
            sum += Math.Abs(q[i] - q[i - 1]);
        }

        (double sin, double cos) = Math.SinCos(q[^1]);
        Vec3 last = Frame.Vector(sin, cos);
        return sum + Math.Atan2(Vec3.Cross(last, line).Length, Vec3.Dot(last, line));
    }

    /// <summary>Joints of the rod from the turning point to the tip, m.</summary>
    /// <param name="place">Travel of the hands, then angle of each link, m and rad.</param>
    public Vec3[] Joints(double[] place) => [.. _motion.Joints(place).Select(p => Frame.Place(p.X, p.Z))];

    private void Solve(StepGains gains, double time, double[] place, double[] rate)
    {
        Next.Q.CopyTo(_motion.Place, 0);
        Next.V.CopyTo(_motion.Rate, 0);
        _turn = _hands.Turning.About(time, Next.Q[1], Next.V[1], _eases);
        _pull = _hands.Pulling.About(time, Next.Q[0], Next.V[0], _eases);
        _motion.Solve(gains, place, rate, _pull, _turn);
        (double x, double z) = _motion.TipPlace();
        Tip = Frame.Place(x, z);
    }

    // Work per second at a state, with the air and the weight's levers of the last pass.
    private RodWork Powers(ChainRodState state)
    {
        state.Q.CopyTo(_motion.Place, 0);
        state.V.CopyTo(_motion.Rate, 0);
        HandTorqueNm = _turn.At(state.Q[1], state.V[1]);
        RodTorqueNm = HandTorqueNm - (_motion.Hands.InertiaKgM2 * _a[1]);
        PullN = _pull.At(state.Q[0], state.V[0]);
        var power = new RodWork { HandsJ = (HandTorqueNm * state.V[1]) + (PullN * state.V[0]) };
        _motion.Book(ref power, 1.0);
        return power;
    }
}

/// <summary>Hands of a strike.</summary>
/// <param name="Turning">Turning.</param>
/// <param name="Pulling">Pulling away from the fish.</param>
/// <param name="HoldS">Time after which they ease and only hold the rod, s.</param>
internal sealed record StrokeHands(HandDrive Turning, HandDrive Pulling, double HoldS);

/// <summary>Hands and rod at one time.</summary>
/// <param name="size">Number of coordinates.</param>
internal sealed class ChainRodState(int size)
{
    /// <summary>Travel of the hands, then angle of each link from the square, away from the fish positive, m and rad.</summary>
    public double[] Q { get; } = new double[size];

    /// <summary>Their rates.</summary>
    public double[] V { get; } = new double[size];
}
