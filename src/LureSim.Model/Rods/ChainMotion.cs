using LureSim.Model.Hands;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Rods;

/// <summary>
/// Equations of hands and rod chain in one plane: coordinate 0 is the turning point's travel x_h, coordinate i + 1 the angle alpha_i of link i from
/// the z axis, toward x positive. A scheme gives the state at which mass and loads are taken, and the start and gains from which springs, dashpots
/// and hands are taken at its own time; the line acts through the tip.
/// </summary>
/// <remarks>
/// (M(q*) + gv C + gx K) a = f(q*, v*) - K (q_0 + gv v_0) - C v_0 with the gains of the scheme, q = q_0 + gv v_0 + gx a, v = v_0 + gv a. Springs and
/// dashpots are linear in the joint angles, so the chain's fastest modes, damped at beta w^2, do not limit the step.
/// </remarks>
internal sealed class ChainMotion
{
    private readonly int _size;
    private readonly double _beta, _gravity;
    private readonly RodAir _air;
    private readonly double[] _dragArea;
    private double _dragPower;
    private readonly double[] _moment, _inertia;
    private readonly double[] _sin, _cos, _yx, _yz, _jx, _jz, _factor;

    /// <summary>Prepares the equations of one rod in its hands.</summary>
    /// <param name="chain">The rod.</param>
    /// <param name="beta">Damping of the joints over their stiffness, s.</param>
    /// <param name="hands">Inertia of the hands.</param>
    /// <param name="air">Air; its wind goes along x.</param>
    /// <param name="gravity">g against z, m/s2; 0 where the plane is level.</param>
    /// <param name="handHeight">z of the turning point, m.</param>
    public ChainMotion(RodChain chain, double beta, HandInertia hands, RodAir air, double gravity, double handHeight = 0.0)
    {
        Chain = chain;
        _size = chain.Links + 2;
        _beta = beta;
        _gravity = gravity;
        Hands = hands;
        _air = air;
        HandHeightM = handHeight;
        _dragArea = [.. chain.DragAreaM2.Select(a => 0.5 * air.DensityKgM3 * air.Cd * a)];
        (Place, Rate, Free) = (new double[_size], new double[_size], new double[_size]);
        (_sin, _cos) = (new double[_size], new double[_size]);
        (_yx, _yz, _jx, _jz) = (new double[_size], new double[_size], new double[_size], new double[_size]);
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

    /// <summary>The rod.</summary>
    public RodChain Chain { get; }

    /// <summary>Number of coordinates.</summary>
    public int Size => _size;

    /// <summary>Inertia of the hands.</summary>
    public HandInertia Hands { get; }

    /// <summary>z of the turning point, m.</summary>
    public double HandHeightM { get; }

    /// <summary>q* and v*, written by the scheme.</summary>
    public double[] Place { get; }

    /// <summary>v*.</summary>
    public double[] Rate { get; }

    /// <summary>Accelerations without the line, of the last <see cref="Solve"/>.</summary>
    public double[] Free { get; }

    /// <summary>Assembles and solves everything but the line's pull.</summary>
    /// <param name="gains">Gains of the scheme; that of places is the square of that of rates.</param>
    /// <param name="place">q_0.</param>
    /// <param name="rate">v_0.</param>
    /// <param name="push">Pushing hands.</param>
    /// <param name="turn">Turning hands.</param>
    public void Solve(StepGains gains, double[] place, double[] rate, DriveLoad push, DriveLoad turn)
    {
        for (int i = 0; i < _size; i++)
        {
            (_sin[i], _cos[i]) = Math.SinCos(Place[i]);
        }

        Inertia();
        Loads();
        AddDrive(0, push, gains, place, rate);
        AddDrive(1, turn, gains, place, rate);
        Joints(gains, place, rate);
        RowCholesky.Factor(_factor, _size);
        Levers();
        Array.Copy(_jx, _yx, _size);
        Array.Copy(_jz, _yz, _size);
        RowCholesky.Solve(_factor, Free, _yx, _yz);
    }

    /// <summary>Accelerations with the line's pull on the tip.</summary>
    /// <param name="forceX">Pull along x, N.</param>
    /// <param name="forceZ">Pull along z, N.</param>
    /// <param name="acceleration">Receives a.</param>
    public void Pull(double forceX, double forceZ, double[] acceleration)
    {
        for (int i = 0; i < _size; i++)
        {
            acceleration[i] = Free[i] + (forceX * _yx[i]) + (forceZ * _yz[i]);
        }
    }

    /// <summary>What the levers at q* make of rates or accelerations of the coordinates: those of the tip.</summary>
    /// <param name="rate">Rates.</param>
    public (double X, double Z) AtTip(double[] rate)
    {
        double x = 0.0, z = 0.0;
        for (int i = 0; i < _size; i++)
        {
            x += _jx[i] * rate[i];
            z += _jz[i] * rate[i];
        }

        return (x, z);
    }

    /// <summary>J A^-1 J', acceleration of the tip per force, 1/kg.</summary>
    public (double Xx, double Xz, double Zz) Yield()
    {
        double xx = 0.0, xz = 0.0, zz = 0.0;
        for (int i = 0; i < _size; i++)
        {
            xx += _jx[i] * _yx[i];
            xz += _jx[i] * _yz[i];
            zz += _jz[i] * _yz[i];
        }

        return (xx, xz, zz);
    }

    /// <summary>Tip at q*, m.</summary>
    public (double X, double Z) TipPlace()
    {
        double x = Place[0], z = HandHeightM;
        for (int i = 1; i < _size; i++)
        {
            double l = Chain.LengthM[i - 1];
            x += l * _sin[i];
            z += l * _cos[i];
        }

        return (x, z);
    }

    /// <summary>Books what weight, air and damping do over a time at q*, v*.</summary>
    /// <param name="work">Account.</param>
    /// <param name="h">Time, s.</param>
    public void Book(ref RodWork work, double h)
    {
        work.AirJ += h * _dragPower;
        for (int i = 1; i < _size; i++)
        {
            work.RaisedJ -= h * _gravity * Chain.FirstMomentKgM[i - 1] * _sin[i] * Rate[i];
        }

        for (int j = 0; j < Chain.Links; j++)
        {
            double bend = Rate[j + 2] - Rate[j + 1];
            work.DampingJ += h * _beta * Chain.SpringNm[j] * bend * bend;
        }
    }

    /// <summary>Energy of motion of hands and rod, J.</summary>
    /// <param name="place">q.</param>
    /// <param name="rate">v.</param>
    public double KineticJ(double[] place, double[] rate)
    {
        double sum = (Hands.PushedMassKg + Chain.MassKg) * rate[0] * rate[0] + (Hands.InertiaKgM2 * rate[1] * rate[1]);
        for (int i = 1; i < _size; i++)
        {
            sum += 2.0 * Chain.FirstMomentKgM[i - 1] * Math.Cos(place[i]) * rate[0] * rate[i];
            for (int j = 1; j < _size; j++)
            {
                sum += Chain.InertiaKgM2[i - 1, j - 1] * Math.Cos(place[i] - place[j]) * rate[i] * rate[j];
            }
        }

        return 0.5 * sum;
    }

    /// <summary>Energy of bending, J.</summary>
    /// <param name="place">q.</param>
    public double SpringJ(double[] place) => Chain.SpringEnergyJ(place.AsSpan(1));

    /// <summary>Tip place and speed of a state.</summary>
    /// <param name="place">q.</param>
    /// <param name="rate">v.</param>
    public (double X, double Z, double Vx, double Vz) Tip(double[] place, double[] rate)
    {
        double x = place[0], z = HandHeightM, vx = rate[0], vz = 0.0;
        for (int i = 1; i < _size; i++)
        {
            (double sin, double cos) = Math.SinCos(place[i]);
            double l = Chain.LengthM[i - 1];
            x += l * sin;
            z += l * cos;
            vx += l * cos * rate[i];
            vz -= l * sin * rate[i];
        }

        return (x, z, vx, vz);
    }

    /// <summary>Places of the joints from the turning point to the tip, m.</summary>
    /// <param name="place">q.</param>
    public (double X, double Z)[] Joints(double[] place)
    {
        var joint = new (double X, double Z)[_size];
        joint[0] = (place[0], HandHeightM);
        for (int i = 1; i < _size; i++)
        {
            (double sin, double cos) = Math.SinCos(place[i]);
            double l = Chain.LengthM[i - 1];
            joint[i] = (joint[i - 1].X + (l * sin), joint[i - 1].Z + (l * cos));
        }

        return joint;
    }

    // Mass matrix at q*, lower triangle.
    private void Inertia()
    {
        int n = _size;
        _factor[0] = Hands.PushedMassKg + Chain.MassKg;
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

        _factor[n + 1] += Hands.InertiaKgM2;
    }

    // Centrifugal terms, weight and air drag of the rod at q*, v*.
    private void Loads()
    {
        int n = _size;
        Array.Clear(Free);
        for (int i = 1; i < n; i++)
        {
            double squared = Rate[i] * Rate[i], g = _moment[i], cos = _cos[i], sin = _sin[i];
            ReadOnlySpan<double> inertia = _inertia.AsSpan(i * n, n);
            Free[0] += g * _sin[i] * squared;
            Free[i] += _gravity * g * _sin[i];
            for (int j = 1; j < inertia.Length; j++)
            {
                Free[j] -= inertia[j] * ((_sin[j] * cos) - (_cos[j] * sin)) * squared;
            }
        }

        AirDrag();
    }

    private void AirDrag()
    {
        int n = _size;
        double vx = Rate[0], vz = 0.0;
        for (int i = 1; i < n; i++)
        {
            double half = 0.5 * Chain.LengthM[i - 1] * Rate[i];
            double across = ((vx - _air.WindMS) * _cos[i]) - (vz * _sin[i]) + half;
            _yx[i] = -_dragArea[i - 1] * Math.Abs(across) * across;
            vx += 2.0 * half * _cos[i];
            vz -= 2.0 * half * _sin[i];
        }

        double fx = 0.0, fz = 0.0;
        _dragPower = 0.0;
        for (int i = n - 1; i >= 1; i--)
        {
            double torque = Chain.LengthM[i - 1] * ((fx * _cos[i]) - (fz * _sin[i]) + (0.5 * _yx[i]));
            Free[i] += torque;
            _dragPower -= torque * Rate[i];
            fx += _yx[i] * _cos[i];
            fz -= _yx[i] * _sin[i];
        }

        Free[0] += fx;
        _dragPower -= fx * Rate[0];
    }

    // Linear terms: to the right-hand side at what the scheme knows of its own time, to the matrix for the rest.
    private void Joints(StepGains gains, double[] place, double[] rate)
    {
        int n = _size;
        for (int j = 0; j < Chain.Links; j++)
        {
            int a = j + 1, b = j + 2;
            double k = Chain.SpringNm[j], d = _beta * k;
            double moment = (k * (place[b] - place[a] + (gains.Rate * (rate[b] - rate[a])))) + (d * (rate[b] - rate[a]));
            double stiff = gains.Mass(k, d);
            Free[a] += moment;
            Free[b] -= moment;
            _factor[(a * n) + a] += stiff;
            _factor[(b * n) + b] += stiff;
            _factor[(b * n) + a] -= stiff;
        }
    }

    private void AddDrive(int i, DriveLoad load, StepGains gains, double[] place, double[] rate)
    {
        Free[i] += load.At(place[i] + (gains.Rate * rate[i]), rate[i]);
        _factor[(i * _size) + i] += gains.Mass(load.Stiffness, load.Damping);
    }

    private void Levers()
    {
        _jx[0] = 1.0;
        _jz[0] = 0.0;
        for (int i = 1; i < _size; i++)
        {
            double l = Chain.LengthM[i - 1];
            _jx[i] = l * _cos[i];
            _jz[i] = -l * _sin[i];
        }
    }
}
