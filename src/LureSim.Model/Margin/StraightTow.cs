using LureSim.Model.Lures.Free;
using LureSim.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Margin;

/// <summary>
/// Small motions of a lure towed straight (the question of Strandhagen, Schoenherr, Kobayashi 1950, Trans. SNAME 58:32, for a hull free to heave, pitch
/// and roll too). First the steady tow: height, trim and pull that balance the forces of <see cref="FreeForces"/> at speed U. Then, since both sides are
/// alike, the sideways motion apart from the rest: states Y, roll, yaw and their rates, their slopes by central differences of the same forces, the pull
/// held as it is and turned with the line. Largest real part of the roots: how fast an error grows.
/// </summary>
internal sealed class StraightTow
{
    private const int States = 6, MostRounds = 60;

    // Both sides are alike, so the rates of mirrored errors are mirrored and one of the two is enough for a central difference: of order 2 in a smooth force; the kink of |w| w
    // leaves an error in proportion to the step, 1e-5 of the slope here.
    private const double Difference = 1e-5;

    private const double LargestTurnRad = 0.08, LargestLiftM = 0.003, BalanceShare = 1e-9;

    private static readonly Vec3 Sideways = new(0.0, 1.0, 0.0);

    private readonly FreeHull _hull;
    private readonly FreeForces _forces;
    private readonly MarginTask _task;
    private readonly double[] _nu = new double[States], _drag = new double[States];
    private readonly Symmetric6 _mass = new();
    private readonly System.Runtime.Intrinsics.Vector256<double>[] _right = new System.Runtime.Intrinsics.Vector256<double>[States];
    private FreeMotionState _steady;
    private Vec3 _hand;

    /// <summary>Seeks the balance.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="task">Speed and line.</param>
    /// <param name="near">A tow that is nearly the same, to begin from its balance; null: from rest.</param>
    public StraightTow(FreeHull hull, MarginTask task, StraightTow? near = null)
    {
        (_hull, _task) = (hull, task);
        _forces = new FreeForces(hull);
        Lures.Attitude rest = hull.Float.State.Attitude;
        IsFound = (near is { IsFound: true } && Balance(near._steady.Origin.Z, near.TrimRad)) || Balance(rest.HeightM, rest.TrimRad);
    }

    /// <summary>True when there is a steady tow.</summary>
    public bool IsFound { get; }

    /// <summary>T, N.</summary>
    public double PullN { get; private set; }

    /// <summary>Trim, rad.</summary>
    public double TrimRad { get; private set; }

    /// <summary>The steady state, origin at X = 0.</summary>
    public FreeMotionState Steady => _steady;

    /// <summary>Hand of the steady tow, m.</summary>
    public Vec3 Hand => _hand;

    /// <summary>Foremost point over the water, m.</summary>
    public double NoseHeightM => _steady.Place(_hull.Nose).Z;

    /// <summary>Roots of the sideways motion, least steady first, one of each conjugate pair.</summary>
    public ValueList<TowMode> Modes()
    {
        Matrix<double> a = Matrix<double>.Build.Dense(States, States);
        Span<double> rates = stackalloc double[States];
        for (int j = 0; j < States; j++)
        {
            Rates(j, rates);
            for (int i = 0; i < States; i++)
            {
                a[i, j] = rates[i] / Difference;
            }
        }

        return [.. a.Evd().EigenValues.Where(e => e.Imaginary >= 0.0).Select(e => new TowMode(e.Real, e.Imaginary)).OrderByDescending(m => m.GrowthPerS)];
    }

    // Newton on vertical force and pitching moment over height and trim, steps held to what a lure may move; the pull follows from the force along.
    private bool Balance(double height, double trim)
    {
        double weight = _hull.MassKg * Lures.FloatingLure.GravityMS2;
        for (int round = 0; round < MostRounds; round++)
        {
            (double f, double m) = Unbalanced(height, trim);
            if (Math.Abs(f) < BalanceShare * weight && Math.Abs(m) < BalanceShare * weight * _hull.Float.Hull.LengthM)
            {
                return PullN > 0.0;
            }

            const double dh = 1e-7, dt = 1e-6;
            (double fh, double mh) = Unbalanced(height + dh, trim);
            (double ft, double mt) = Unbalanced(height, trim + dt);
            (double a, double b, double c, double d) = ((fh - f) / dh, (ft - f) / dt, (mh - m) / dh, (mt - m) / dt);
            double det = (a * d) - (b * c), lift = ((b * m) - (d * f)) / det, turn = ((c * f) - (a * m)) / det;
            if (!double.IsFinite(lift + turn))
            {
                return false;
            }

            double share = Math.Min(1.0, Math.Min(LargestLiftM / Math.Abs(lift), LargestTurnRad / Math.Abs(turn)));
            (height, trim) = (height + (share * lift), trim + (share * turn));
        }

        return false;
    }

    // Vertical force and pitching moment about O that are left over, with the pull that balances the force along.
    private (double Force, double Moment) Unbalanced(double height, double trim)
    {
        Frame3 frame = Lures.Attitude.Frame(0.0, trim, 0.0);
        _steady = new FreeMotionState(new Vec3(0.0, 0.0, height), frame, frame.ToBody(new Vec3(_task.SpeedMS, 0.0, 0.0)), Vec3.Zero);
        Vec3 tie = _steady.Place(_hull.Tie);
        double rise = Math.Clamp(Math.Max(_task.HandHeightM, tie.Z) - tie.Z, 0.0, 0.999 * _task.LineM);
        _hand = tie + new Vec3(Math.Sqrt((_task.LineM * _task.LineM) - (rise * rise)), 0.0, rise);
        (Vec3 force, Vec3 moment) = WithoutLine(_steady);
        Vec3 world = frame.ToWorld(force), d = (_hand - tie).Unit();
        (PullN, TrimRad) = (-world.X / d.X, trim);
        return (world.Z + (PullN * d.Z), moment.Y + (PullN * Vec3.Cross(_hull.Tie, frame.ToBody(d)).Y));
    }

    private (Vec3 Force, Vec3 Moment) WithoutLine(in FreeMotionState s)
    {
        _forces.Set(s);
        (_nu[0], _nu[1], _nu[2], _nu[3], _nu[4], _nu[5]) = (s.Velocity.X, s.Velocity.Y, s.Velocity.Z, s.Rate.X, s.Rate.Y, s.Rate.Z);
        _forces.Drag.Multiply(_nu, _drag);
        double[] f = _forces.Force;
        return (new Vec3(f[0] - _drag[0], f[1] - _drag[1], f[2] - _drag[2]), new Vec3(f[3] - _drag[3], f[4] - _drag[4], f[5] - _drag[5]));
    }

    // Rates of the states with one of them off by the difference: Y, roll, yaw, and the rates of sway, roll and yaw.
    private void Rates(int state, Span<double> rates)
    {
        double At(int i) => i == state ? Difference : 0.0;
        FreeMotionState s = new(
            _steady.Origin + (At(0) * Sideways), _steady.Frame, _steady.Velocity + (At(3) * Sideways), new Vec3(At(4), 0.0, At(5)));
        s = s with { Frame = _steady.Frame.Turned(new Vec3(At(1), 0.0, At(2))) };
        (Vec3 force, Vec3 moment) = WithoutLine(s);
        Vec3 pull = s.Frame.ToBody(PullN * (_hand - s.Place(_hull.Tie)).Unit());
        (force, moment) = (force + pull, moment + Vec3.Cross(_hull.Tie, pull));
        _mass.CopyFrom(_forces.Mass);
        _mass.Factor();
        Set(force, moment);
        _mass.Solve(_right);
        Vec3 velocity = s.Frame.ToWorld(s.Velocity);
        (rates[0], rates[1], rates[2]) = (velocity.Y, s.Rate.X, s.Rate.Z);
        (rates[3], rates[4], rates[5]) = (_right[1][0], _right[3][0], _right[5][0]);
    }

    private void Set(Vec3 force, Vec3 moment)
    {
        ReadOnlySpan<double> right = [force.X, force.Y, force.Z, moment.X, moment.Y, moment.Z];
        for (int i = 0; i < States; i++)
        {
            _right[i] = System.Runtime.Intrinsics.Vector256.Create(right[i]);
        }
    }
}
