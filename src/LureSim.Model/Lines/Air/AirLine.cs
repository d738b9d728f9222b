using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Numerics.Steps;
using LureSim.Numerics.Tension;

namespace LureSim.Model.Lines.Air;

/// <summary>
/// Lure and line in the air: point 0 is the lure, points 1..N line nodes toward the rod, segment s joins point s with
/// point s + 1, the last one with the tip. Line comes into the last segment from the reel. N = 0 is the straight line
/// (chord). Segments pull or are slack; their tensions are the only stiff unknowns of a step.
/// </summary>
/// <remarks>
/// T = max(0, k e + c e') with e at the midpoint and e' at the end of the step (the late dashpot keeps short stiff segments from
/// ringing). On the chord: (k e + c e')/(1 + (h^2/4 k + h c) W), W the sum of inverse masses of lure, tip and reel.
/// Line in the last segment moves along itself as one, so its whole mass goes with its node. The chord swings like a rod hinged
/// at the tip: mass mu l along, mu l/3 across. Across the last segment the air acts on a third of its length for the same reason.
/// </remarks>
internal sealed class AirLine
{
    private const int CurvedCapacity = 400;

    // Segments are as short as asked for within so many metres of line from the tip, where line joins with the reel's speed and bows; farther out they
    // may grow in proportion, up to so many times. Two become one only where they lie in a line to this share.
    private const double FineM = 3.0;
    private const double MostGrowth = 4.0;
    private const double Straightness = 1e-3;
    private const int MergesPerNode = 2;

    private readonly LineSpec _line;
    private readonly LineAir _air;
    private readonly int _capacity;
    private readonly double _mu, _inside, _gravity, _spacing;
    private readonly double[] _along, _across, _weight, _dragAlong, _dragAcross, _wind;
    private readonly double[] _tx, _tz, _ux, _uz, _gxx, _gxz, _gzz, _fx, _fz, _gap;
    private readonly UnilateralTridiagonal _pull;

    /// <summary>Creates the line with the lure alone at its end.</summary>
    /// <param name="line">Material and size.</param>
    /// <param name="air">Air forces.</param>
    /// <param name="mass">Masses that fly.</param>
    /// <param name="insideM">Line between reel and tip, which stretches too, m.</param>
    /// <param name="gravity">g, m/s2.</param>
    /// <param name="spacingM">Node spacing, m; infinity keeps the line straight and leaves its sideways drag out.</param>
    public AirLine(LineSpec line, LineAir air, CastLineMass mass, double insideM, double gravity, double spacingM)
    {
        _line = line;
        _air = air;
        _mu = mass.LineKgM;
        LureKg = mass.LureKg;
        _inside = insideM;
        _gravity = gravity;
        _spacing = spacingM;
        _capacity = double.IsPositiveInfinity(spacingM) ? 1 : CurvedCapacity;
        double[] New() => new double[_capacity];
        (X, Z, Vx, Vz, Ax, Az, RestM) = (New(), New(), New(), New(), New(), New(), New());
        (_along, _across, _weight, _dragAlong, _dragAcross, _wind) = (New(), New(), New(), New(), New(), New());
        (_tx, _tz, _ux, _uz) = (New(), New(), New(), New());
        (_gxx, _gxz, _gzz, _fx, _fz, _gap) = (New(), New(), New(), New(), New(), New());
        _pull = new UnilateralTridiagonal(1, _capacity, 0);
    }

    public double LureKg { get; }

    /// <summary>N + 1, points with the lure.</summary>
    public int Count => _pull.Count;

    public double[] X { get; }

    public double[] Z { get; }

    public double[] Vx { get; }

    public double[] Vz { get; }

    public double[] Ax { get; }

    public double[] Az { get; }

    /// <summary>Unstretched length of the segments, m.</summary>
    public double[] RestM { get; }

    /// <summary>Tension at the tip in the last step, N.</summary>
    public double TipTensionN => _pull.Tension[Count - 1];

    /// <summary>Tension at the lure in the last step, N.</summary>
    public double LureTensionN => _pull.Tension[0];

    /// <summary>Work booked so far.</summary>
    public LineWork Work;

    private bool Straight => double.IsPositiveInfinity(_spacing);

    /// <summary>Masses, weights and drag secants of the step, at its predicted midpoint.</summary>
    public void Begin(Midpoint step)
    {
        for (int p = 0; p < Count; p++)
        {
            double near = p > 0 ? 0.5 * RestM[p - 1] : 0.0;
            bool last = p == Count - 1;
            double along = near + (last ? RestM[p] : 0.5 * RestM[p]), across = near + (last ? RestM[p] / 3.0 : 0.5 * RestM[p]);
            double body = p == 0 ? LureKg : 0.0;
            _along[p] = body + (_mu * along);
            _across[p] = body + (_mu * (Straight ? across : along));
            _weight[p] = _gravity * (body + (_mu * (near + (0.5 * RestM[p]))));
            _wind[p] = _air.Wind(Z[p]);
            Drag(p, step, along, Straight ? 0.0 : across);
        }
    }

    /// <summary>Everything but the tensions, at the midpoint with the last accelerations.</summary>
    public void Free(Midpoint step, TipLink tip, ReelFeed reel)
    {
        int last = Count - 1;
        double px = step.PlaceOf(X[0], Vx[0], Ax[0]), pz = step.PlaceOf(Z[0], Vz[0], Az[0]);
        double beforeX = 0.0, beforeZ = 0.0;
        for (int s = 0; s < Count; s++)
        {
            bool end = s == last;
            double nx = end ? tip.X : step.PlaceOf(X[s + 1], Vx[s + 1], Ax[s + 1]);
            double nz = end ? tip.Z : step.PlaceOf(Z[s + 1], Vz[s + 1], Az[s + 1]);
            double dx = nx - px, dz = nz - pz, distance = Math.Sqrt((dx * dx) + (dz * dz));
            if (distance > 1e-9)
            {
                double per = 1.0 / distance;
                (_tx[s], _tz[s]) = (dx * per, dz * per);
            }

            double feed = end ? step.PlaceOf(0.0, reel.SpeedMS, reel.Accel) : 0.0;
            _gap[s] = distance - RestM[s] - feed;
            Respond(s, step.Gains.Rate, _tx[s] + beforeX, _tz[s] + beforeZ);
            (beforeX, beforeZ, px, pz) = (_tx[s], _tz[s], nx, nz);
        }

        Rows(step, tip, reel);
    }

    /// <summary>Solves the tensions and adds their pull to the accelerations; returns the force on the tip.</summary>
    public (double X, double Z) Pull(Midpoint step, TipLink tip, ReelFeed reel)
    {
        int last = Count - 1;
        _pull.Solve();
        if (reel.SpeedMS + (step.Dt * (reel.FreeAccel + (reel.InverseMass * _pull.Tension[last]))) < 0.0)
        {
            // The reel comes to rest inside the step: it holds the line like a lock.
            (reel.FreeAccel, reel.InverseMass) = (-reel.SpeedMS / step.Dt, 0.0);
            Rows(step, tip, reel);
            _pull.Solve();
        }

        double fromX = 0.0, fromZ = 0.0;
        for (int p = 0; p < Count; p++)
        {
            double fx = (_pull.Tension[p] * _tx[p]) - fromX, fz = (_pull.Tension[p] * _tz[p]) - fromZ;
            Ax[p] = _fx[p] + (_gxx[p] * fx) + (_gxz[p] * fz);
            Az[p] = _fz[p] + (_gxz[p] * fx) + (_gzz[p] * fz);
            (fromX, fromZ) = (_pull.Tension[p] * _tx[p], _pull.Tension[p] * _tz[p]);
        }

        reel.Accel = reel.FreeAccel + (reel.InverseMass * _pull.Tension[last]);
        return (-fromX, -fromZ);
    }

    /// <summary>Ends the step and books its work; the reel must not have advanced yet.</summary>
    public void Advance(Midpoint step, TipLink tip, (double X, double Z) tipAccel, ReelFeed reel)
    {
        int last = Count - 1;
        double h = step.Dt;
        double vx = step.RateOf(Vx[0], Ax[0]), vz = step.RateOf(Vz[0], Az[0]);
        for (int p = 0; p < Count; p++)
        {
            bool end = p == last;
            double nextX = end ? step.RateOf(tip.Vx, tipAccel.X) : step.RateOf(Vx[p + 1], Ax[p + 1]);
            double nextZ = end ? step.RateOf(tip.Vz, tipAccel.Z) : step.RateOf(Vz[p + 1], Az[p + 1]);
            double feed = end ? step.RateOf(reel.SpeedMS, reel.Accel) : 0.0;
            double rate = (_tx[p] * (nextX - vx)) + (_tz[p] * (nextZ - vz)) - feed;
            Work.StretchJ += h * _pull.Tension[p] * rate;
            Work.RaisedJ += h * _weight[p] * vz;
            BookDrag(p, h, vx, vz);
            X[p] += step.Way(Vx[p], Ax[p]);
            Z[p] += step.Way(Vz[p], Az[p]);
            Vx[p] += h * Ax[p];
            Vz[p] += h * Az[p];
            (vx, vz) = (nextX, nextZ);
        }

        double fed = h * Math.Max(0.0, step.RateOf(reel.SpeedMS, reel.Accel));
        double enterX = Vx[last] - (step.Half * Ax[last]), enterZ = Vz[last] - (step.Half * Az[last]);
        RestM[last] += fed;
        Work.FedJ += 0.5 * _mu * fed * ((enterX * enterX) + (enterZ * enterZ));
    }

    /// <summary>Adds a node when the last segment has grown long; its line runs at the reel's speed. Farther out, pairs of short segments become one.</summary>
    public void Grow(double tipX, double tipZ, double tipVx, double tipVz, double feedMS)
    {
        int last = Count - 1;
        double dx = tipX - X[last], dz = tipZ - Z[last], distance = Math.Sqrt((dx * dx) + (dz * dz));
        if (Straight || distance < 1.5 * _spacing || RestM[last] < 1.4 * _spacing || Count >= _capacity)
        {
            return;
        }

        Work.FedJ -= KineticJ().Line;
        double share = _spacing / distance, rest = _spacing * Math.Min(1.0, RestM[last] / distance);
        double tx = dx / distance, tz = dz / distance;
        double wx = Vx[last] + (share * (tipVx - Vx[last])), wz = Vz[last] + (share * (tipVz - Vz[last]));
        double along = (wx * tx) + (wz * tz) + feedMS;
        int p = Count;
        X[p] = X[last] + (share * dx);
        Z[p] = Z[last] + (share * dz);
        Vx[p] = wx - (along * tx);
        Vz[p] = wz - (along * tz);
        (Ax[p], Az[p]) = (Ax[last] * (1.0 - share), Az[last] * (1.0 - share));
        RestM[p] = RestM[last] - rest;
        RestM[last] = rest;
        (_tx[p], _tz[p], _ux[p], _uz[p]) = (tx, tz, tx, tz);
        _pull.Append();
        Coarsen();
        Work.FedJ += KineticJ().Line;
    }

    // From the lure on, so that the oldest, longest pairs come first; a few for each new node keep the count low.
    private void Coarsen()
    {
        double beyond = 0.0;
        for (int p = 0; p < Count; p++)
        {
            beyond += RestM[p];
        }

        int merged = 0;
        for (int p = 1; p < Count - 1 && merged < MergesPerNode; p++)
        {
            beyond -= RestM[p - 1];
            double allowed = _spacing * Math.Clamp(beyond / FineM, 1.0, MostGrowth);
            if (RestM[p - 1] + RestM[p] <= allowed && Merge(p))
            {
                merged++;
                beyond -= RestM[p];
            }
        }
    }

    /// <summary>Makes one segment of the two at a node, unless they bend there: momentum is kept, and so is what the pair lacks to being taut.</summary>
    internal bool Merge(int p)
    {
        double chord = Length(p - 1, p + 1), way = Length(p - 1, p) + Length(p, p + 1);
        if (way - chord > Straightness * way)
        {
            return false;
        }

        GiveMomentum(p, p - 1, 0.5 * _mu * RestM[p]);
        GiveMomentum(p, p + 1, 0.5 * _mu * RestM[p - 1]);
        RestM[p - 1] += RestM[p] - (way - chord);
        foreach (double[] values in new[] { X, Z, Vx, Vz, Ax, Az, RestM, _tx, _tz, _ux, _uz })
        {
            Array.Copy(values, p + 1, values, p, Count - 1 - p);
        }

        _pull.RemoveAt(p);
        return true;
    }

    private void GiveMomentum(int from, int to, double kg)
    {
        double near = to > 0 ? 0.5 * RestM[to - 1] : 0.0, own = (to == 0 ? LureKg : 0.0) + (_mu * (near + (0.5 * RestM[to])));
        double share = kg / (own + kg);
        Vx[to] += share * (Vx[from] - Vx[to]);
        Vz[to] += share * (Vz[from] - Vz[to]);
    }

    private double Length(int a, int b) => Math.Sqrt(((X[b] - X[a]) * (X[b] - X[a])) + ((Z[b] - Z[a]) * (Z[b] - Z[a])));

    /// <summary>Energy of motion of lure and line, J.</summary>
    public (double Lure, double Line) KineticJ()
    {
        double line = 0.0;
        for (int p = 0; p < Count; p++)
        {
            double near = p > 0 ? 0.5 * RestM[p - 1] : 0.0, far = p == Count - 1 ? RestM[p] : 0.5 * RestM[p];
            line += 0.5 * _mu * (near + far) * ((Vx[p] * Vx[p]) + (Vz[p] * Vz[p]));
        }

        return (0.5 * LureKg * ((Vx[0] * Vx[0]) + (Vz[0] * Vz[0])), line);
    }

    /// <summary>Copies the state of another one of the same line.</summary>
    public void CopyFrom(AirLine other)
    {
        _pull.CopyFrom(other._pull);
        foreach ((double[] to, double[] from) in new[]
        {
            (X, other.X), (Z, other.Z), (Vx, other.Vx), (Vz, other.Vz), (Ax, other.Ax), (Az, other.Az),
            (RestM, other.RestM), (_tx, other._tx), (_tz, other._tz), (_ux, other._ux), (_uz, other._uz),
        })
        {
            Array.Copy(from, to, Count);
        }

        Work = other.Work;
    }

    private void Drag(int p, Midpoint step, double along, double across)
    {
        double vx = step.RateOf(Vx[p], Ax[p]) - _wind[p], vz = step.RateOf(Vz[p], Az[p]);
        double u = Math.Abs((vx * _ux[p]) + (vz * _uz[p])), w = Math.Abs((vz * _ux[p]) - (vx * _uz[p]));
        double body = p == 0 ? _air.Lure(Math.Sqrt((vx * vx) + (vz * vz))) : 0.0;
        _dragAlong[p] = body + (_air.Along(u) * along);
        _dragAcross[p] = body + (across > 0.0 ? _air.Across(w) * across : 0.0);
    }

    // Inverse of mass and drag slope in the directions of the line, and the acceleration without tensions.
    private void Respond(int p, double gain, double tx, double tz)
    {
        double norm = Math.Sqrt((tx * tx) + (tz * tz)), per = 1.0 / norm;
        (tx, tz) = norm > 1e-9 ? (tx * per, tz * per) : (_tx[p], _tz[p]);
        (_ux[p], _uz[p]) = (tx, tz);
        double a = 1.0 / (_along[p] + (gain * _dragAlong[p])), c = 1.0 / (_across[p] + (gain * _dragAcross[p]));
        _gxx[p] = (a * tx * tx) + (c * tz * tz);
        _gzz[p] = (a * tz * tz) + (c * tx * tx);
        _gxz[p] = (a - c) * tx * tz;
        double rx = Vx[p] - _wind[p], rz = Vz[p];
        double along = -_dragAlong[p] * ((rx * tx) + (rz * tz)), across = -_dragAcross[p] * ((rz * tx) - (rx * tz));
        double fx = (along * tx) - (across * tz), fz = (along * tz) + (across * tx) - _weight[p];
        _fx[p] = (_gxx[p] * fx) + (_gxz[p] * fz);
        _fz[p] = (_gxz[p] * fx) + (_gzz[p] * fz);
    }

    // Rows of the tension system; the tip and the reel end the last one.
    private void Rows(Midpoint step, TipLink tip, ReelFeed reel)
    {
        StepGains gains = step.LateDamping;
        double h = gains.Rate;
        int last = Count - 1;
        for (int s = 0; s < Count; s++)
        {
            bool end = s == last;
            double nx = end ? tip.FreeAx : _fx[s + 1], nz = end ? tip.FreeAz : _fz[s + 1];
            double gainX = nx - (end ? tip.LastAx : Ax[s + 1]) - _fx[s] + Ax[s];
            double gainZ = nz - (end ? tip.LastAz : Az[s + 1]) - _fz[s] + Az[s];
            double rateX = (end ? tip.Vx : Vx[s + 1]) + (h * nx) - Vx[s] - (h * _fx[s]);
            double rateZ = (end ? tip.Vz : Vz[s + 1]) + (h * nz) - Vz[s] - (h * _fz[s]);
            double gain = (_tx[s] * gainX) + (_tz[s] * gainZ) - (end ? reel.FreeAccel - reel.Accel : 0.0);
            double rate = (_tx[s] * rateX) + (_tz[s] * rateZ) - (end ? reel.SpeedMS + (h * reel.FreeAccel) : 0.0);
            double yield = Quadratic(s, _gxx[s], _gxz[s], _gzz[s])
                + (end ? Quadratic(s, tip.Gxx, tip.Gxz, tip.Gzz) + reel.InverseMass : Quadratic(s, _gxx[s + 1], _gxz[s + 1], _gzz[s + 1]));
            double coupling = end ? 0.0 : -((_tx[s] * ((_gxx[s + 1] * _tx[s + 1]) + (_gxz[s + 1] * _tz[s + 1])))
                + (_tz[s] * ((_gxz[s + 1] * _tx[s + 1]) + (_gzz[s + 1] * _tz[s + 1]))));
            double perLength = 1.0 / (RestM[s] + (end ? _inside : 0.0)), k = _line.AxialStiffnessN * perLength;

            // The dashpot rises with the first 1e-4 of strain, or a segment that comes taut would be hit by it. It is never faster than the step: an
            // undamped short segment rings at a rate that no step resolves, and coming taut and slack in turn it would gain energy.
            double c = Math.Max(_line.DampingTimeS, step.Dt) * k * Math.Clamp(1e4 * _gap[s] * perLength, 0.0, 1.0);
            double perMass = 1.0 / gains.Mass(k, c);
            _pull.Diagonal[s] = perMass + yield;
            _pull.OffDiagonal[s] = coupling;
            _pull.RightSide[s] = ((k * (_gap[s] + (gains.Place * gain))) + (c * rate)) * perMass;
        }
    }

    private double Quadratic(int s, double xx, double xz, double zz) =>
        (_tx[s] * _tx[s] * xx) + (2.0 * _tx[s] * _tz[s] * xz) + (_tz[s] * _tz[s] * zz);

    private void BookDrag(int p, double h, double vx, double vz)
    {
        double rx = vx - _wind[p];
        double body = p == 0 ? _air.Lure(Math.Sqrt((rx * rx) + (vz * vz))) : 0.0;
        double tx = _ux[p], tz = _uz[p];
        double along = (rx * tx) + (vz * tz), across = (vz * tx) - (rx * tz);
        double alongLine = (_dragAlong[p] - body) * along, acrossLine = (_dragAcross[p] - body) * across;
        Work.LureAirJ += h * body * ((rx * vx) + (vz * vz));
        Work.LineAirJ += h * ((alongLine * ((vx * tx) + (vz * tz))) + (acrossLine * ((vz * tx) - (vx * tz))));
    }
}
