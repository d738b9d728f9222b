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
    private readonly WalkHull hull;
    private HullState history;
    private double a11, a22, a23, a33, det, az;
    private double cos, sin;
    private double facing = double.NaN, facingCos, facingSin;
    private double freeU, freeV, freeR, freeW;

    /// <summary>Prepares the step of one lure.</summary>
    /// <param name="hull">Coefficients.</param>
    public WalkingHull(WalkHull hull)
    {
        ArgumentNullException.ThrowIfNull(hull);
        this.hull = hull;
    }

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
        return new Vec3(state.X + (hull.TieArmM * c), state.Y + (hull.TieArmM * s), hull.TieHeightM + state.Zeta);
    }

    /// <summary>Velocity of the line tie, m/s.</summary>
    /// <param name="state">Hull.</param>
    public Vec3 TieVelocity(in HullState state)
    {
        (double s, double c) = Math.SinCos(state.Psi);
        double lateral = state.V + (hull.TieArmM * state.R);
        return new Vec3((state.U * c) - (lateral * s), (state.U * s) + (lateral * c), state.W);
    }

    /// <summary>Hull drag at a velocity: matrix (surge; sway, coupling, yaw) of secant coefficients, kg/s, kg m/s, kg m2/s.</summary>
    /// <param name="u">Surge, m/s.</param>
    /// <param name="v">Sway, m/s.</param>
    /// <param name="r">Yaw rate, rad/s.</param>
    public (double Surge, double Sway, double Coupling, double Yaw) Drag(double u, double v, double r)
    {
        double surge = hull.AxialDragKgM * Math.Abs(u), sway = 0.0, coupling = 0.0, yaw = 0.0;
        double[] x = hull.StripXM, k = hull.StripDragKgM;
        for (int i = 0; i < x.Length; i++)
        {
            double s = k[i] * Math.Abs(v + (r * x[i]));
            sway += s;
            coupling += s * x[i];
            yaw += s * x[i] * x[i];
        }

        x = hull.HookXM;
        k = hull.HookDragKgM;
        double[] along = hull.HookAlongKgM;
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
        history = new HullState(
            step.History(now.X, before.X), step.History(now.Y, before.Y), step.History(now.Psi, before.Psi),
            step.History(now.U, before.U), step.History(now.V, before.V), step.History(now.R, before.R),
            step.History(now.Zeta, before.Zeta), step.History(now.W, before.W));
        double q = step.Q, m11 = hull.M11, m22 = hull.M22, m23 = hull.M23, m33 = hull.M33;
        (double surge, double sway, double coupling, double yaw) = Drag(g.U, g.V, g.R);
        (a11, a22, a23, a33) = (m11 + (q * surge), m22 + (q * sway), m23 + (q * coupling), m33 + (q * yaw));
        det = (a22 * a33) - (a23 * a23);
        (sin, cos) = Face(g.Psi);
        double side = (tieForce.Y * cos) - (tieForce.X * sin);
        double c1 = (g.R * ((m22 * g.V) + (m23 * g.R))) + (tieForce.X * cos) + (tieForce.Y * sin);
        double c2 = (-g.R * m11 * g.U) + side;
        double c3 = (-(m22 - m11) * g.U * g.V) - (m23 * g.U * g.R) + (hull.TieArmM * side) + yawMomentNm
            + Stern(g.U).MomentNm(g.U, g.V, g.R);
        double b2 = (m22 * history.V) + (m23 * history.R) + (q * c2);
        double b3 = (m23 * history.V) + (m33 * history.R) + (q * c3);
        freeU = ((m11 * history.U) + (q * c1)) / a11;
        freeV = ((a33 * b2) - (a23 * b3)) / det;
        freeR = ((a22 * b3) - (a23 * b2)) / det;
        az = hull.NoseMassKg + (q * hull.NoseDampingNsM) + (q * q * hull.NoseStiffnessNM);
        freeW = ((hull.NoseMassKg * history.W) + (q * (tieForce.Z - (hull.NoseStiffnessNM * history.Zeta)))) / az;
        return TieEnd(q, g);
    }

    /// <summary>Adds the tension force and returns the end-of-step state.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="force">Force of the line on the tie, world axes, N.</param>
    public HullState Finish(Bdf2 step, Vec3 force)
    {
        double q = step.Q, a = hull.TieArmM;
        double fx = (force.X * cos) + (force.Y * sin);
        double fy = (force.Y * cos) - (force.X * sin);
        double u = freeU + (q * fx / a11);
        double v = freeV + (q * fy * (a33 - (a23 * a)) / det);
        double r = freeR + (q * fy * ((a22 * a) - a23) / det);
        double w = freeW + (q * force.Z / az);
        double psi = history.Psi + (q * r);
        (double s, double c) = Face(psi);
        return new HullState(
            history.X + (q * ((u * c) - (v * s))),
            history.Y + (q * ((u * s) + (v * c))),
            psi, u, v, r, history.Zeta + (q * w), w);
    }

    private SternShedding Stern(double u) => u >= 0.0 ? hull.ShedAhead : hull.ShedAstern;

    /// <summary>Sine and cosine of a heading; a step asks for each of its three headings several times in a row.</summary>
    private (double Sin, double Cos) Face(double psi)
    {
        if (psi != facing)
        {
            facing = psi;
            (facingSin, facingCos) = Math.SinCos(psi);
        }

        return (facingSin, facingCos);
    }

    private LineEnd TieEnd(double q, in HullState g)
    {
        double a = hull.TieArmM;
        double lateral = freeV + (a * freeR);
        double psi = history.Psi + (q * freeR);
        double x = history.X + (q * ((freeU * cos) - (freeV * sin)));
        double y = history.Y + (q * ((freeU * sin) + (freeV * cos)));
        double turned = psi - g.Psi;
        var end = new LineEnd
        {
            FreeVelocity = new Vec3((freeU * cos) - (lateral * sin), (freeU * sin) + (lateral * cos), freeW),

            // The tie moved linearly from the guess: J_psi = (1, 1, a (-sin, cos)).
            FreePosition = new Vec3(
                x + (a * cos) - (a * sin * turned),
                y + (a * sin) + (a * cos * turned),
                hull.TieHeightM + history.Zeta + (q * freeW)),
        };
        end.AddYield(1.0 / a11, new Vec3(cos, sin, 0.0));
        end.AddYield((a33 - (2.0 * a * a23) + (a * a * a22)) / det, new Vec3(-sin, cos, 0.0));
        end.AddYield(1.0 / az, new Vec3(0.0, 0.0, 1.0));
        return end;
    }
}
