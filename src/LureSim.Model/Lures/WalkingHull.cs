using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Lures;

/// <summary>
/// The planar walk of the floating lure: surge, sway and yaw about the centre of gravity with added mass, full Coriolis
/// terms (the Munk moment comes out of them), cross-flow drag on strips, cross-flow shed at the stern, hooks; nose bob as a spring at the line tie.
/// m11 u' = r (m22 v + m23 r) + X,  m22 v' + m23 r' = -r m11 u + Y,  m23 v' + m33 r' = -(m22 - m11) u v - m23 u r + N
/// (Newman 1977, Marine Hydrodynamics, sec. 4.13, from memory; Fossen's Coriolis matrix of a planar body).
/// Coriolis terms and secant drag are taken at the end-of-step guess of each pass.
/// </summary>
internal sealed class WalkingHull
{
    private readonly WalkHull _hull;
    private HullState _history;
    private double _a11, _a22, _a23, _a33, _det, _az;
    private double _cos, _sin;
    private double _facing = double.NaN, _facingCos, _facingSin;
    private double _freeU, _freeV, _freeR, _freeW, _shedMomentNm;
    private (double Surge, double Sway, double Coupling, double Yaw) _drag;

    /// <summary>Prepares the step of one lure.</summary>
    /// <param name="hull">Coefficients.</param>
    public WalkingHull(WalkHull hull)
    {
        ArgumentNullException.ThrowIfNull(hull);
        _hull = hull;
    }

    /// <summary>Coefficients.</summary>
    public WalkHull Hull => _hull;

    /// <summary>Guess of the first pass: positions moved on, rates extrapolated.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="before">State at n-1.</param>
    /// <param name="now">State at n.</param>
    public HullState Guess(Bdf2 step, in HullState before, in HullState now)
    {
        (double s, double c) = Face(now.Psi);
        return new HullState(
            now.X + (step.Dt * ((now.U * c) - (now.V * s))),
            now.Y + (step.Dt * ((now.U * s) + (now.V * c))),
            now.Psi + (step.Dt * now.R),
            step.Extrapolate(now.U, before.U),
            step.Extrapolate(now.V, before.V),
            step.Extrapolate(now.R, before.R),
            now.Zeta + (step.Dt * now.W),
            step.Extrapolate(now.W, before.W));
    }

    /// <summary>Position of the line tie, m.</summary>
    /// <param name="state">Hull.</param>
    public Vec3 Tie(in HullState state)
    {
        (double s, double c) = Face(state.Psi);
        return new Vec3(state.X + (_hull.TieArmM * c), state.Y + (_hull.TieArmM * s), _hull.TieHeightM + state.Zeta);
    }

    /// <summary>Velocity of the line tie, m/s.</summary>
    /// <param name="state">Hull.</param>
    public Vec3 TieVelocity(in HullState state)
    {
        (double s, double c) = Math.SinCos(state.Psi);
        double lateral = state.V + (_hull.TieArmM * state.R);
        return new Vec3((state.U * c) - (lateral * s), (state.U * s) + (lateral * c), state.W);
    }

    /// <summary>Hull drag at a velocity: matrix (surge; sway, coupling, yaw) of secant coefficients, kg/s, kg m/s, kg m2/s.</summary>
    /// <param name="u">Surge, m/s.</param>
    /// <param name="v">Sway, m/s.</param>
    /// <param name="r">Yaw rate, rad/s.</param>
    public (double Surge, double Sway, double Coupling, double Yaw) Drag(double u, double v, double r)
    {
        double surge = _hull.AxialDragKgM * Math.Abs(u), sway = 0.0, coupling = 0.0, yaw = 0.0;
        double[] x = _hull.StripXM, k = _hull.StripDragKgM;
        for (int i = 0; i < x.Length; i++)
        {
            double s = k[i] * Math.Abs(v + (r * x[i]));
            sway += s;
            coupling += s * x[i];
            yaw += s * x[i] * x[i];
        }

        x = _hull.HookXM;
        k = _hull.HookDragKgM;
        double[] along = _hull.HookAlongKgM;
        for (int i = 0; i < x.Length; i++)
        {
            double w = v + (r * x[i]);
            double speed = Math.Sqrt((u * u) + (w * w));
            double s = k[i] * speed;
            surge += along[i] * speed;
            sway += s;
            coupling += s * x[i];
            yaw += s * x[i] * x[i];
        }

        SternShedding stern = Stern(u);
        double shed = stern.AtKgM * Math.Abs(u);
        sway += shed;
        coupling += shed * stern.XM;
        yaw += shed * stern.XM * stern.XM;
        return (surge, sway, coupling, yaw);
    }

    /// <summary>Power that the hull puts into the water, W: drag, hooks and what the stern sheds.</summary>
    /// <param name="u">Surge, m/s.</param>
    /// <param name="v">Sway, m/s.</param>
    /// <param name="r">Yaw rate, rad/s.</param>
    public double Power(double u, double v, double r)
    {
        (double surge, double sway, double coupling, double yaw) = Drag(u, v, r);
        return (surge * u * u) + (sway * v * v) + (2.0 * coupling * v * r) + (yaw * r * r) - (r * Stern(u).MomentNm(u, v, r));
    }

    /// <summary>Power that the hull puts into the water at a velocity with the drag that the last step used, W.</summary>
    /// <param name="end">State at the end of that step.</param>
    public double StepPower(in HullState end) =>
        (_drag.Surge * end.U * end.U) + (_drag.Sway * end.V * end.V) + (2.0 * _drag.Coupling * end.V * end.R) + (_drag.Yaw * end.R * end.R)
        - (end.R * _shedMomentNm);

    /// <summary>Tension-free motion and yield of the tie at the guess of this pass.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="before">State at n-1.</param>
    /// <param name="now">State at n.</param>
    /// <param name="g">Guess of the end state.</param>
    /// <param name="tieForce">Forces at the tie besides tension: weight and buoyancy of the half segment, leader bending, N.</param>
    /// <param name="yawMomentNm">Moment of a fixed knot, N m.</param>
    public LineEnd Begin(
        Bdf2 step, in HullState before, in HullState now, in HullState g, Vec3 tieForce, double yawMomentNm)
    {
        _history = new HullState(
            step.History(now.X, before.X), step.History(now.Y, before.Y), step.History(now.Psi, before.Psi),
            step.History(now.U, before.U), step.History(now.V, before.V), step.History(now.R, before.R),
            step.History(now.Zeta, before.Zeta), step.History(now.W, before.W));
        double q = step.Q, m11 = _hull.M11, m22 = _hull.M22, m23 = _hull.M23, m33 = _hull.M33;
        (double surge, double sway, double coupling, double yaw) = _drag = Drag(g.U, g.V, g.R);
        _shedMomentNm = Stern(g.U).MomentNm(g.U, g.V, g.R);
        (_a11, _a22, _a23, _a33) = (m11 + (q * surge), m22 + (q * sway), m23 + (q * coupling), m33 + (q * yaw));
        _det = (_a22 * _a33) - (_a23 * _a23);
        (_sin, _cos) = Face(g.Psi);
        double side = (tieForce.Y * _cos) - (tieForce.X * _sin);
        double c1 = (g.R * ((m22 * g.V) + (m23 * g.R))) + (tieForce.X * _cos) + (tieForce.Y * _sin);
        double c2 = (-g.R * m11 * g.U) + side;
        double c3 = (-(m22 - m11) * g.U * g.V) - (m23 * g.U * g.R) + (_hull.TieArmM * side) + yawMomentNm + _shedMomentNm;
        double b2 = (m22 * _history.V) + (m23 * _history.R) + (q * c2);
        double b3 = (m23 * _history.V) + (m33 * _history.R) + (q * c3);
        _freeU = ((m11 * _history.U) + (q * c1)) / _a11;
        _freeV = ((_a33 * b2) - (_a23 * b3)) / _det;
        _freeR = ((_a22 * b3) - (_a23 * b2)) / _det;
        _az = _hull.NoseMassKg + (q * _hull.NoseDampingNsM) + (q * q * _hull.NoseStiffnessNM);
        _freeW = ((_hull.NoseMassKg * _history.W) + (q * (tieForce.Z - (_hull.NoseStiffnessNM * _history.Zeta)))) / _az;
        return TieEnd(q, g);
    }

    /// <summary>Adds the tension force and returns the end-of-step state.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="force">Force of the line on the tie, world axes, N.</param>
    public HullState Finish(Bdf2 step, Vec3 force)
    {
        double q = step.Q, a = _hull.TieArmM;
        double fx = (force.X * _cos) + (force.Y * _sin);
        double fy = (force.Y * _cos) - (force.X * _sin);
        double u = _freeU + (q * fx / _a11);
        double v = _freeV + (q * fy * (_a33 - (_a23 * a)) / _det);
        double r = _freeR + (q * fy * ((_a22 * a) - _a23) / _det);
        double w = _freeW + (q * force.Z / _az);
        double psi = _history.Psi + (q * r);
        (double s, double c) = Face(psi);
        return new HullState(
            _history.X + (q * ((u * c) - (v * s))),
            _history.Y + (q * ((u * s) + (v * c))),
            psi, u, v, r, _history.Zeta + (q * w), w);
    }

    private SternShedding Stern(double u) => u >= 0.0 ? _hull.ShedAhead : _hull.ShedAstern;

    /// <summary>Sine and cosine of a heading; a step asks for each of its three headings several times in a row.</summary>
    private (double Sin, double Cos) Face(double psi)
    {
        if (psi != _facing)
        {
            _facing = psi;
            (_facingSin, _facingCos) = Math.SinCos(psi);
        }

        return (_facingSin, _facingCos);
    }

    private LineEnd TieEnd(double q, in HullState g)
    {
        double a = _hull.TieArmM;
        double lateral = _freeV + (a * _freeR);
        double psi = _history.Psi + (q * _freeR);
        double x = _history.X + (q * ((_freeU * _cos) - (_freeV * _sin)));
        double y = _history.Y + (q * ((_freeU * _sin) + (_freeV * _cos)));
        double turned = psi - g.Psi;
        var end = new LineEnd
        {
            FreeVelocity = new Vec3((_freeU * _cos) - (lateral * _sin), (_freeU * _sin) + (lateral * _cos), _freeW),

            // The tie moved linearly from the guess: J_psi = (1, 1, a (-sin, cos)).
            FreePosition = new Vec3(
                x + (a * _cos) - (a * _sin * turned),
                y + (a * _sin) + (a * _cos * turned),
                _hull.TieHeightM + _history.Zeta + (q * _freeW)),
        };
        end.AddYield(1.0 / _a11, new Vec3(_cos, _sin, 0.0));
        end.AddYield((_a33 - (2.0 * a * _a23) + (a * a * _a22)) / _det, new Vec3(-_sin, _cos, 0.0));
        end.AddYield(1.0 / _az, new Vec3(0.0, 0.0, 1.0));
        return end;
    }
}
