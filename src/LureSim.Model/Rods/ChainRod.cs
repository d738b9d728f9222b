using LureSim.Model.Hands;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Rods;

/// <summary>
/// Hands and rod chain: coordinate 0 is the turning point's travel x_h, coordinate i + 1 the angle alpha_i of link i from
/// the vertical, forward positive. One linearly implicit midpoint step; the line acts through the tip.
/// </summary>
/// <remarks>
/// (M(q*) + h/2 C + h^2/4 K) a = f(q*, v*) - K (q + h/2 v) - C v, q+ = q + h v + h^2/2 a, v+ = v + h a. Springs and dashpots
/// are linear in the joint angles, so the chain's fastest modes, damped at beta w^2, do not limit the step.
/// </remarks>
internal sealed class ChainRod
{
    private readonly RodChain _chain;
    private readonly int _size;
    private readonly double _beta, _gravity, _push, _turn;
    private readonly HandDrive _turning, _pushing;
    private readonly double[] _dragArea;
    private double _dragPower;
    private readonly double[] _moment, _inertia;
    private readonly double[] _sin, _cos, _rhs, _yx, _yz, _jx, _jz, _mid, _rate, _factor;

    public ChainRod(RodChain chain, double beta, HandDrive turning, HandDrive pushing, HandInertia hands, RodAir air, double gravity)
    {
        _chain = chain;
        _size = chain.Links + 2;
        _beta = beta;
        _turning = turning;
        _pushing = pushing;
        _gravity = gravity;
        _push = hands.PushedMassKg;
        _turn = hands.InertiaKgM2;
        Air = air;
        _dragArea = [.. chain.DragAreaM2.Select(a => 0.5 * air.DensityKgM3 * air.Cd * a)];
        (Q, V, A) = (new double[_size], new double[_size], new double[_size]);
        (_sin, _cos, _mid, _rate) = (new double[_size], new double[_size], new double[_size], new double[_size]);
        (_rhs, _yx, _yz, _jx, _jz) = (new double[_size], new double[_size], new double[_size], new double[_size], new double[_size]);
        _factor = new double[_size * _size];

        // First moments and inertias of the links at the coordinates' own places, row by row.
        _moment = [0.0, .. chain.FirstMomentKgM];
        _inertia = new double[_size * _size];
        for (int i = 1; i < _size; i++)
        {
            for (int j = 1; j < _size; j++)
            {
                _inertia[(i * _size) + j] = chain.InertiaKgM2[i - 1, j - 1];
            }
        }
    }

    public RodAir Air { get; }

    public double HandHeightM { get; init; }

    /// <summary>Work booked so far.</summary>
    public RodWork Work;

    /// <summary>Torque of the hands in the last step, N m.</summary>
    public double HandTorqueNm { get; private set; }

    /// <summary>When the line is let go, as far as the hands know.</summary>
    public LetGo LetGo { get; set; } = LetGo.Never;

    /// <summary>Coordinates, speeds, accelerations of the last pass.</summary>
    public double[] Q { get; }

    public double[] V { get; }

    public double[] A { get; }

    /// <summary>The tip as the line meets it.</summary>
    public TipLink Link { get; } = new();

    /// <summary>Loads of hands at the midpoint of the last pass.</summary>
    public DriveLoad Turn, Push;

    /// <summary>Assembles and solves everything but the line's pull.</summary>
    public void Free(Midpoint step, double time)
    {
        int n = _size;
        for (int i = 0; i < n; i++)
        {
            _mid[i] = step.PlaceOf(Q[i], V[i], A[i]);
            _rate[i] = step.RateOf(V[i], A[i]);
            (_sin[i], _cos[i]) = Math.SinCos(_mid[i]);
        }

        Turn = _turning.About(time + step.Half, _mid[1], _rate[1], LetGo);
        Push = _pushing.About(time + step.Half, _mid[0], _rate[0], LetGo);
        Inertia();
        Loads();
        Implicit(step);
        Cholesky();
        Levers();
        Array.Copy(_jx, _yx, n);
        Array.Copy(_jz, _yz, n);
        Solve(_rhs, _yx, _yz);
        Response();
    }

    /// <summary>Adds the line's pull on the tip, N, to the accelerations.</summary>
    public void Pull(double forceX, double forceZ)
    {
        for (int i = 0; i < _size; i++)
        {
            A[i] = _rhs[i] + (forceX * _yx[i]) + (forceZ * _yz[i]);
        }
    }

    /// <summary>Ends the step and books its work.</summary>
    public void Advance(Midpoint step)
    {
        double h = step.Dt;
        for (int i = 0; i < _size; i++)
        {
            _rate[i] = step.RateOf(V[i], A[i]);
            _mid[i] = step.PlaceOf(Q[i], V[i], A[i]);
            Q[i] += step.Way(V[i], A[i]);
            V[i] += h * A[i];
        }

        HandTorqueNm = Turn.At(_mid[1], _rate[1]);
        Work.HandsJ += h * ((HandTorqueNm * _rate[1]) + (Push.At(_mid[0], _rate[0]) * _rate[0]));
        Work.AirJ += h * _dragPower;
        for (int i = 1; i < _size; i++)
        {
            Work.RaisedJ -= h * _gravity * _chain.FirstMomentKgM[i - 1] * _sin[i] * _rate[i];
        }

        for (int j = 0; j < _chain.Links; j++)
        {
            double bend = _rate[j + 2] - _rate[j + 1];
            Work.DampingJ += h * _beta * _chain.SpringNm[j] * bend * bend;
        }
    }

    /// <summary>Energy of motion of hands and rod, J.</summary>
    public double KineticJ()
    {
        double sum = (_push + _chain.MassKg) * V[0] * V[0] + (_turn * V[1] * V[1]);
        for (int i = 1; i < _size; i++)
        {
            sum += 2.0 * _chain.FirstMomentKgM[i - 1] * Math.Cos(Q[i]) * V[0] * V[i];
            for (int j = 1; j < _size; j++)
            {
                sum += _chain.InertiaKgM2[i - 1, j - 1] * Math.Cos(Q[i] - Q[j]) * V[i] * V[j];
            }
        }

        return 0.5 * sum;
    }

    /// <summary>Energy of bending, J.</summary>
    public double SpringJ() => _chain.SpringEnergyJ(Q.AsSpan(1));

    /// <summary>Copies the state of another one of the same rod.</summary>
    public void CopyFrom(ChainRod other)
    {
        other.Q.CopyTo(Q, 0);
        other.V.CopyTo(V, 0);
        other.A.CopyTo(A, 0);
        Work = other.Work;
        LetGo = other.LetGo;
        HandTorqueNm = other.HandTorqueNm;
    }

    /// <summary>Tip place and speed of the present state.</summary>
    public (double X, double Z, double Vx, double Vz) Tip()
    {
        double x = Q[0], z = HandHeightM, vx = V[0], vz = 0.0;
        for (int i = 1; i < _size; i++)
        {
            (double sin, double cos) = Math.SinCos(Q[i]);
            double l = _chain.LengthM[i - 1];
            x += l * sin;
            z += l * cos;
            vx += l * cos * V[i];
            vz -= l * sin * V[i];
        }

        return (x, z, vx, vz);
    }

    // Mass matrix at the midpoint, lower triangle.
    private void Inertia()
    {
        int n = _size;
        _factor[0] = _push + _chain.MassKg;
        for (int i = 1; i < n; i++)
        {
            _factor[i * n] = _moment[i] * _cos[i];
            double cos = _cos[i], sin = _sin[i];
            Span<double> row = _factor.AsSpan(i * n, i + 1);
            ReadOnlySpan<double> inertia = _inertia.AsSpan(i * n, i + 1);
            for (int j = 1; j < row.Length; j++)
            {
                row[j] = inertia[j] * ((cos * _cos[j]) + (sin * _sin[j]));
            }
        }

        _factor[n + 1] += _turn;
    }

    // Centrifugal terms, weight and air drag of the rod at the midpoint.
    private void Loads()
    {
        int n = _size;
        Array.Clear(_rhs);
        for (int i = 1; i < n; i++)
        {
            double squared = _rate[i] * _rate[i], g = _moment[i], cos = _cos[i], sin = _sin[i];
            ReadOnlySpan<double> inertia = _inertia.AsSpan(i * n, n);
            _rhs[0] += g * _sin[i] * squared;
            _rhs[i] += _gravity * g * _sin[i];
            for (int j = 1; j < inertia.Length; j++)
            {
                _rhs[j] -= inertia[j] * ((_sin[j] * cos) - (_cos[j] * sin)) * squared;
            }
        }

        AirDrag();
    }

    private void AirDrag()
    {
        int n = _size;
        double vx = _rate[0], vz = 0.0;
        for (int i = 1; i < n; i++)
        {
            double half = 0.5 * _chain.LengthM[i - 1] * _rate[i];
            double across = ((vx - Air.WindMS) * _cos[i]) - (vz * _sin[i]) + half;
            _yx[i] = -_dragArea[i - 1] * Math.Abs(across) * across;
            vx += 2.0 * half * _cos[i];
            vz -= 2.0 * half * _sin[i];
        }

        double fx = 0.0, fz = 0.0;
        _dragPower = 0.0;
        for (int i = n - 1; i >= 1; i--)
        {
            double torque = _chain.LengthM[i - 1] * ((fx * _cos[i]) - (fz * _sin[i]) + (0.5 * _yx[i]));
            _rhs[i] += torque;
            _dragPower -= torque * _rate[i];
            fx += _yx[i] * _cos[i];
            fz -= _yx[i] * _sin[i];
        }

        _rhs[0] += fx;
        _dragPower -= fx * _rate[0];
    }

    // Linear terms: to the right-hand side at the explicit midpoint, to the matrix for the rest.
    private void Implicit(Midpoint step)
    {
        int n = _size;
        StepGains gains = step.Gains;
        AddDrive(0, Push, step);
        AddDrive(1, Turn, step);
        for (int j = 0; j < _chain.Links; j++)
        {
            int a = j + 1, b = j + 2;
            double k = _chain.SpringNm[j], d = _beta * k;
            double moment = (k * (Q[b] - Q[a] + (step.Half * (V[b] - V[a])))) + (d * (V[b] - V[a]));
            double stiff = gains.Mass(k, d);
            _rhs[a] += moment;
            _rhs[b] -= moment;
            _factor[(a * n) + a] += stiff;
            _factor[(b * n) + b] += stiff;
            _factor[(b * n) + a] -= stiff;
        }
    }

    private void AddDrive(int i, DriveLoad load, Midpoint step)
    {
        _rhs[i] += load.At(Q[i] + (step.Half * V[i]), V[i]);
        _factor[(i * _size) + i] += step.Gains.Mass(load.Stiffness, load.Damping);
    }

    private void Levers()
    {
        _jx[0] = 1.0;
        _jz[0] = 0.0;
        Link.X = _mid[0];
        Link.Z = HandHeightM;
        for (int i = 1; i < _size; i++)
        {
            double l = _chain.LengthM[i - 1];
            _jx[i] = l * _cos[i];
            _jz[i] = -l * _sin[i];
            Link.X += l * _sin[i];
            Link.Z += l * _cos[i];
        }
    }

    private void Response()
    {
        (Link.Vx, Link.Vz, Link.FreeAx, Link.FreeAz, Link.LastAx, Link.LastAz) = (0, 0, 0, 0, 0, 0);
        (Link.Gxx, Link.Gxz, Link.Gzz) = (0, 0, 0);
        for (int i = 0; i < _size; i++)
        {
            Link.Vx += _jx[i] * V[i];
            Link.Vz += _jz[i] * V[i];
            Link.FreeAx += _jx[i] * _rhs[i];
            Link.FreeAz += _jz[i] * _rhs[i];
            Link.LastAx += _jx[i] * A[i];
            Link.LastAz += _jz[i] * A[i];
            Link.Gxx += _jx[i] * _yx[i];
            Link.Gxz += _jx[i] * _yz[i];
            Link.Gzz += _jz[i] * _yz[i];
        }
    }

    private void Cholesky()
    {
        int n = _size;
        Span<double> f = _factor;
        for (int i = 0; i < n; i++)
        {
            Span<double> row = f.Slice(i * n, i + 1);
            for (int j = 0; j < i; j++)
            {
                ReadOnlySpan<double> other = f.Slice(j * n, j + 1);
                double sum = row[j];
                for (int k = 0; k < other.Length - 1; k++)
                {
                    sum -= row[k] * other[k];
                }

                row[j] = sum * other[j];
            }

            double pivot = row[i];
            for (int k = 0; k < row.Length - 1; k++)
            {
                pivot -= row[k] * row[k];
            }

            row[i] = 1.0 / Math.Sqrt(pivot);
        }
    }

    // Three right-hand sides at once: their chains of sums run side by side.
    private void Solve(double[] b, double[] c, double[] d)
    {
        int n = _size;
        ReadOnlySpan<double> f = _factor;
        for (int i = 0; i < n; i++)
        {
            double p = b[i], q = c[i], r = d[i];
            ReadOnlySpan<double> row = f.Slice(i * n, i + 1);
            for (int k = 0; k < i; k++)
            {
                double l = row[k];
                p -= l * b[k];
                q -= l * c[k];
                r -= l * d[k];
            }

            (b[i], c[i], d[i]) = (p * row[i], q * row[i], r * row[i]);
        }

        for (int i = n - 1; i >= 0; i--)
        {
            double p = b[i], q = c[i], r = d[i];
            for (int k = i + 1; k < n; k++)
            {
                double l = f[(k * n) + i];
                p -= l * b[k];
                q -= l * c[k];
                r -= l * d[k];
            }

            double pivot = f[(i * n) + i];
            (b[i], c[i], d[i]) = (p * pivot, q * pivot, r * pivot);
        }
    }
}
