using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Lures.Free;

/// <summary>
/// The lure in six degrees of freedom at the end of the line. One step of BDF2: (M + q D) nu = M nu* + q (f + J'F), M, D and f at the extrapolated
/// guess (order 2), tie velocity J nu, yield W = J (M + q D)^-1 J'. The attitude is a rotation vector from that at n: phi' = omega + phi x omega / 2 + ...,
/// so that n-1 lies at minus the turn of the last step.
/// </summary>
internal sealed class FreeLure : ILineEnd
{
    // Steeper than this the heading of the axis means little; the turn about the vertical goes on counting.
    private const double LeastLevel = 0.5;

    private readonly FreeHull _hull;
    private readonly FreeForces _forces;
    private readonly Symmetric6 _matrix = new();
    private readonly double[] _history = new double[6], _right = new double[6];
    private readonly Vector256<double>[] _columns = new Vector256<double>[6];
    private FreeMotionState _before, _now, _next, _guess;
    private Vec3 _turnBefore, _turn, _turnGuess, _originHistory, _turnHistory;
    private Vec3 _freeVelocity, _freeRate;
    private bool _fresh;
    private double _heading, _dt;

    /// <summary>Sets the lure at rest or on its way.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="start">State at the start.</param>
    /// <param name="headingRad">Its heading, not wrapped, rad.</param>
    public FreeLure(FreeHull hull, FreeMotionState start, double headingRad)
    {
        ArgumentNullException.ThrowIfNull(hull);
        (_hull, _forces) = (hull, new FreeForces(hull));
        _forces.Set(start);
        _before = _now = _next = _guess = start;
        _heading = headingRad;
    }

    /// <summary>Only surge, sway and yaw move: for the comparison with the planar hull, of a lure that lies level.</summary>
    public bool IsLevelled { get; init; }

    /// <summary>State taken over last.</summary>
    public FreeMotionState Now => _now;

    /// <summary>Forces of the last step.</summary>
    public FreeForces Forces => _forces;

    /// <inheritdoc/>
    public HullPose Pose
    {
        get
        {
            Vec3 up = _now.Frame.Up;
            Vec3 v = _now.VelocityOf(_hull.Centre);
            (double s, double c) = Math.SinCos(_heading);
            return new HullPose(
                _now.Place(_hull.Centre),
                _heading,
                Math.Asin(Math.Clamp(up.X, -1.0, 1.0)),
                Math.Atan2(up.Y, up.Z),
                (v.X * c) + (v.Y * s),
                (v.Y * c) - (v.X * s),
                Vec3.Dot(_now.Rate, up),
                _now.Place(_hull.Tie),
                _now.Place(_hull.Nose),
                _now.Frame,
                Math.Clamp(_forces.VolumeM3 / _hull.VolumeM3, 0.0, 1.0));
        }
    }

    /// <inheritdoc/>
    public Vec3 Tie => _next.Place(_hull.Tie);

    /// <inheritdoc/>
    public Vec3 Axis => _next.Frame.X;

    /// <inheritdoc/>
    public bool IsFinite
    {
        get
        {
            Vec3 sum = _next.Origin + _next.Velocity + _next.Rate + _next.Frame.X;
            return double.IsFinite(sum.X + sum.Y + sum.Z);
        }
    }

    /// <inheritdoc/>
    public double HeldJ
    {
        get
        {
            var forces = new FreeForces(_hull);
            forces.Set(_now);
            return forces.Energy(_now);
        }
    }

    /// <inheritdoc/>
    public double StirW => _forces.WaterPower(_now);

    /// <inheritdoc/>
    public void Guess(Bdf2 step)
    {
        _dt = step.Dt;
        _fresh = true;
        Vec3 velocity = Extrapolate(step, _now.Velocity, _before.Velocity), rate = Extrapolate(step, _now.Rate, _before.Rate);
        _turnGuess = (0.5 * step.Dt) * (_now.Rate + rate);
        Frame3 frame = _now.Frame.Turned(_turnGuess);
        Vec3 origin = _now.Origin + ((0.5 * step.Dt) * (_now.Frame.ToWorld(_now.Velocity) + frame.ToWorld(velocity)));
        _next = _guess = new FreeMotionState(origin, frame, velocity, rate);
        _originHistory = (step.HistoryNow * _now.Origin) + (step.HistoryBefore * _before.Origin);
        _turnHistory = -step.HistoryBefore * _turnBefore;
    }

    /// <inheritdoc/>
    public LineEnd Begin(Bdf2 step, Vec3 tieForce, Vec3 knotMomentNm)
    {
        if (_fresh)
        {
            Evaluate(step);
            _fresh = false;
        }

        SetRightSide(step.Q, tieForce, knotMomentNm);
        _matrix.Solve(_columns);
        _freeVelocity = new Vec3(_columns[0][0], _columns[1][0], _columns[2][0]);
        _freeRate = new Vec3(_columns[3][0], _columns[4][0], _columns[5][0]);
        return End(step.Q);
    }

    /// <inheritdoc/>
    public void Finish(Bdf2 step, Vec3 force)
    {
        double q = step.Q;
        Vec3 v = _freeVelocity + (q * new Vec3(Answer(0, force), Answer(1, force), Answer(2, force)));
        Vec3 w = _freeRate + (q * new Vec3(Answer(3, force), Answer(4, force), Answer(5, force)));
        _turn = _turnHistory + (q * Turning(_turnGuess, w));
        Frame3 frame = _now.Frame.Turned(_turn);
        _next = new FreeMotionState(_originHistory + (q * frame.ToWorld(v)), frame, v, w);
    }

    /// <inheritdoc/>
    public void Commit()
    {
        (_before, _now, _turnBefore) = (_now, _next with { Frame = _next.Frame.Squared() }, _turn);
        Vec3 nose = _now.Frame.X;
        double level = Math.Sqrt((nose.X * nose.X) + (nose.Y * nose.Y));
        _heading += level > LeastLevel
            ? Math.IEEERemainder(Math.Atan2(nose.Y, nose.X) - _heading, 2.0 * Math.PI)
            : _dt * Vec3.Dot(_now.Rate, _now.Frame.Up);
    }

    /// <inheritdoc/>
    public double PowerW(double tieWeightN) => (tieWeightN * _next.VelocityOf(_hull.Tie).Z) - _forces.WaterPower(_next);

    private static Vec3 Extrapolate(Bdf2 step, Vec3 now, Vec3 before) => now + (step.Ratio * (now - before));

    // phi' of a rotation vector at body rate omega, to the second order in phi.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vec3 Turning(Vec3 phi, Vec3 rate)
    {
        Vec3 cross = Vec3.Cross(phi, rate);
        return rate + (0.5 * cross) + ((1.0 / 12.0) * Vec3.Cross(phi, cross));
    }

    private void Evaluate(Bdf2 step)
    {
        _forces.Set(_guess);
        _matrix.SetSum(_forces.Mass, step.Q, _forces.Drag);
        if (IsLevelled)
        {
            Hold(_matrix);
        }

        _matrix.Factor();
        Vec3 v = (step.HistoryNow * _now.Velocity) + (step.HistoryBefore * _before.Velocity);
        Vec3 w = (step.HistoryNow * _now.Rate) + (step.HistoryBefore * _before.Rate);
        (_right[0], _right[1], _right[2], _right[3], _right[4], _right[5]) = (v.X, v.Y, v.Z, w.X, w.Y, w.Z);
        _forces.Mass.Multiply(_right, _history);
        for (int i = 0; i < 6; i++)
        {
            _history[i] += step.Q * _forces.Force[i];
        }
    }

    // Heave, roll and pitch take no part: their rows become those of the unit matrix.
    private static void Hold(Symmetric6 m)
    {
        foreach (int i in (ReadOnlySpan<int>)[2, 3, 4])
        {
            for (int j = 0; j < 6; j++)
            {
                m[i, j] = i == j ? 1.0 : 0.0;
            }
        }
    }

    // Four right-hand sides: the free motion, and unit forces along the world's axes at the tie.
    private void SetRightSide(double q, Vec3 tieForce, Vec3 knotMoment)
    {
        Frame3 r = _guess.Frame;
        Vec3 f = r.ToBody(tieForce), m = Vec3.Cross(_hull.Tie, f) + r.ToBody(knotMoment);
        Vec3 x = Vec3.Cross(_hull.Tie, r.ToBody(new Vec3(1.0, 0.0, 0.0))), y = Vec3.Cross(_hull.Tie, r.ToBody(new Vec3(0.0, 1.0, 0.0)));
        Vec3 z = Vec3.Cross(_hull.Tie, r.Up);
        _columns[0] = Vector256.Create(_history[0] + (q * f.X), r.X.X, r.X.Y, r.X.Z);
        _columns[1] = Vector256.Create(_history[1] + (q * f.Y), r.Y.X, r.Y.Y, r.Y.Z);
        _columns[2] = Vector256.Create(_history[2] + (q * f.Z), r.Z.X, r.Z.Y, r.Z.Z);
        _columns[3] = Vector256.Create(_history[3] + (q * m.X), x.X, y.X, z.X);
        _columns[4] = Vector256.Create(_history[4] + (q * m.Y), x.Y, y.Y, z.Y);
        _columns[5] = Vector256.Create(_history[5] + (q * m.Z), x.Z, y.Z, z.Z);
        if (IsLevelled)
        {
            (_columns[2], _columns[3], _columns[4]) = (default, default, default);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Answer(int row, Vec3 force)
    {
        Vector256<double> c = _columns[row];
        return (c[1] * force.X) + (c[2] * force.Y) + (c[3] * force.Z);
    }

    private LineEnd End(double q)
    {
        Frame3 r = _guess.Frame;
        Vec3 turned = _turnHistory + (q * Turning(_turnGuess, _freeRate)) - _turnGuess;
        var end = new LineEnd
        {
            FreeVelocity = r.ToWorld(_freeVelocity + Vec3.Cross(_freeRate, _hull.Tie)),
            FreePosition = _originHistory + r.ToWorld((q * _freeVelocity) + _hull.Tie + Vec3.Cross(turned, _hull.Tie)),
        };
        Vec3 x = Yield(r, 1), y = Yield(r, 2), z = Yield(r, 3);
        (end.Wxx, end.Wxy, end.Wxz) = (x.X, 0.5 * (x.Y + y.X), 0.5 * (x.Z + z.X));
        (end.Wyy, end.Wyz, end.Wzz) = (y.Y, 0.5 * (y.Z + z.Y), z.Z);
        return end;
    }

    // Velocity of the tie per unit force along one of the world's axes.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vec3 Yield(in Frame3 r, int lane)
    {
        var v = new Vec3(_columns[0][lane], _columns[1][lane], _columns[2][lane]);
        var w = new Vec3(_columns[3][lane], _columns[4][lane], _columns[5][lane]);
        return r.ToWorld(v + Vec3.Cross(w, _hull.Tie));
    }
}
