using System.Numerics;
using System.Runtime.CompilerServices;
using LureSim.Numerics;
using LureSim.Numerics.Steps;
using LureSim.Numerics.Tension;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lines.Chain;

/// <summary>
/// One pass of the tension-implicit step: node masses, drag and film from the guess, one unknown tension per segment,
/// T at least 0, then positions and velocities at the end of the step. Drag is a secant coefficient inverted node by node,
/// so that it can only take energy; the film is a vertical secant spring inside the same inverse (Sherman-Morrison).
/// A row is that of <see cref="StepGains"/> times q, with the history's length in the place of the free one.
/// Equations: docs/line-solver.md. Loops run over Vector&lt;double&gt;; only the drag table and the tridiagonal sweep are scalar.
/// </summary>
internal sealed partial class LinePass
{
    private readonly LineMesh _mesh;
    private readonly LineMedium _medium;
    private readonly double[] _tx, _ty, _tz;
    private readonly double[] _ux, _uy, _uz, _wet, _reynolds, _slipT, _drag;
    private readonly double[] _v0x, _v0y, _v0z, _px, _py, _pz, _qx, _qy, _qz;
    private readonly LineHistory _past;
    private readonly double _filmStiffness;
    private readonly double _inverseCapillary;

    /// <summary>Allocates the work arrays of one line.</summary>
    /// <param name="mesh">The cut line.</param>
    /// <param name="medium">Water, air, laws.</param>
    public LinePass(LineMesh mesh, LineMedium medium)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(medium);
        _mesh = mesh;
        _medium = medium;
        int size = mesh.Rest.Length;
        double[] New() => new double[size];
        (_tx, _ty, _tz) = (New(), New(), New());
        (_ux, _uy, _uz, _wet, _reynolds, _slipT, _drag) = (New(), New(), New(), New(), New(), New(), New());
        (_v0x, _v0y, _v0z) = (New(), New(), New());
        (_px, _py, _pz, _qx, _qy, _qz) = (New(), New(), New(), New(), New(), New());
        (ForceX, ForceY, ForceZ, WindX, WindY, AlongFriction) = (New(), New(), New(), New(), New(), New());
        _past = new LineHistory(mesh.Segments);
        Film = New();
        Array.Fill(Film, 1.0);
        Solver = new UnilateralTridiagonal(mesh.Segments, size - mesh.Segments);
        _inverseCapillary = 1.0 / medium.CapillaryLengthM;
        _filmStiffness = 2.0 * medium.Water.SurfaceTensionNM * _inverseCapillary;
    }

    /// <summary>The tension solve with its counters.</summary>
    public UnilateralTridiagonal Solver { get; }

    /// <summary>1 where the surface film under a node is intact, 0 where the node has been drawn through.</summary>
    public double[] Film { get; }

    /// <summary>Further forces on the nodes (leader bending), N.</summary>
    public double[] ForceX { get; }

    /// <summary>Further forces on the nodes, N.</summary>
    public double[] ForceY { get; }

    /// <summary>Further forces on the nodes, N.</summary>
    public double[] ForceZ { get; }

    /// <summary>Wind at each node, m/s.</summary>
    public double[] WindX { get; }

    /// <summary>Wind at each node, m/s.</summary>
    public double[] WindY { get; }

    /// <summary>Friction on each node along the line besides the fluid's, as a secant coefficient, kg/s: what plants under the line hold.</summary>
    public double[] AlongFriction { get; }

    /// <summary>Speed at which line comes in, m/s.</summary>
    public double FeedMS { get; set; }

    /// <summary>Speed at which the first segment hands what it is longer (<see cref="LineMesh.TipExtraM"/>) to all main segments, m/s; the other half of
    /// that exchange, a feed of as much outward, is the caller's to put into <see cref="FeedMS"/>.</summary>
    public double EvenMS { get; set; }

    /// <summary>Unit directions of the segments at the last guess.</summary>
    /// <param name="segment">0 to N-1.</param>
    public Vec3 Direction(int segment) => new(_tx[segment], _ty[segment], _tz[segment]);

    /// <summary>Wet share of a node at the last guess.</summary>
    /// <param name="node">1 to N-1.</param>
    public double WetShare(int node) => _wet[node];

    /// <summary>Unit tangent of a node at the last guess.</summary>
    /// <param name="node">1 to N-1.</param>
    public Vec3 Tangent(int node) => new(_ux[node], _uy[node], _uz[node]);

    /// <summary>Secant drag coefficients (across, along) of a node at the last guess, kg/s.</summary>
    /// <param name="node">1 to N-1.</param>
    public (double Across, double Along) Drag(int node) => (_drag[node], TangentialDrag(node));

    /// <summary>Begins a step: what history fixes of its end, and the guess of the first pass (positions moved on,
    /// velocities extrapolated). The end nodes of the guess are the caller's.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="before">State at n-1.</param>
    /// <param name="now">State at n.</param>
    /// <param name="guess">Receives the guess.</param>
    public void Begin(Bdf2 step, LineState before, LineState now, LineState guess) => _past.Begin(step, before, now, guess);

    /// <summary>
    /// First half of a pass: segment directions at the guess, needed by the ends before they say how they yield.
    /// </summary>
    /// <param name="guess">Guess of the end-of-step state; its end nodes are set.</param>
    public void SetDirections(LineState guess)
    {
        ref double x = ref First(guess.X), y = ref First(guess.Y), z = ref First(guess.Z);
        ref double ox = ref First(_tx), oy = ref First(_ty), oz = ref First(_tz);
        for (nuint j = 0; j < (nuint)_mesh.Segments; j += (nuint)Width)
        {
            Vector<double> dx = Load(ref x, j + 1) - Load(ref x, j);
            Vector<double> dy = Load(ref y, j + 1) - Load(ref y, j);
            Vector<double> dz = Load(ref z, j + 1) - Load(ref z, j);
            Vector<double> length = Vector.SquareRoot((dx * dx) + (dy * dy) + (dz * dz));
            Vector<double> inverse = Vector<double>.One / Vector.Max(length, new Vector<double>(1e-12));
            Store(dx * inverse, ref ox, j);
            Store(dy * inverse, ref oy, j);
            Store(dz * inverse, ref oz, j);
        }
    }

    /// <summary>Second half: solves the tensions and writes the end-of-step state.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="guess">On entry the guess, on return the end-of-step state.</param>
    /// <param name="head">Rod tip.</param>
    /// <param name="tail">Line tie.</param>
    /// <param name="headForce">Force of the line on the rod tip, N.</param>
    /// <param name="tailForce">Force of the line on the line tie, N.</param>
    public void Solve(
        Bdf2 step, LineState guess, in LineEnd head, in LineEnd tail, out Vec3 headForce, out Vec3 tailForce)
    {
        int n = _mesh.Segments;
        SetTangentsAndFlow(guess);
        SetDrag();
        SetFreeMotion(step, guess);
        Vec3 first = Direction(0);
        Vec3 last = Direction(n - 1);
        SetEnd(0, head, first, _px, _py, _pz);
        SetEnd(n, tail, last, _qx, _qy, _qz);
        SetRows(step, head, tail);
        Solver.Solve();
        Advance(step, guess);
        headForce = Solver.Tension[0] * first;
        tailForce = -Solver.Tension[n - 1] * last;
        PlaceEnd(0, step.Q, head, headForce, guess);
        PlaceEnd(n, step.Q, tail, tailForce, guess);
    }

    private void SetTangentsAndFlow(LineState guess)
    {
        ref double vx = ref First(guess.VX), vy = ref First(guess.VY), vz = ref First(guess.VZ), z = ref First(guess.Z);
        ref double ox = ref First(_ux), oy = ref First(_uy), oz = ref First(_uz);
        ref double ow = ref First(_wet), oRe = ref First(_reynolds), oDrag = ref First(_drag), ot = ref First(_slipT);
        ref double diameter = ref First(_mesh.Diameter), area = ref First(_mesh.DragArea);
        ref double sx = ref First(_tx), sy = ref First(_ty), sz = ref First(_tz);
        ref double wx = ref First(WindX), wy = ref First(WindY), feed = ref First(_mesh.FeedShare);
        var inverseLayer = new Vector<double>(1.0 / _medium.LayerM);
        var half = new Vector<double>(0.5);
        var two = new Vector<double>(2.0);
        var three = new Vector<double>(3.0);
        var feedSpeed = new Vector<double>(FeedMS);
        var nuAir = new Vector<double>(_medium.Air.KinematicViscosityM2S);
        var nuStep = new Vector<double>(_medium.Water.KinematicViscosityM2S - _medium.Air.KinematicViscosityM2S);
        var halfRhoAir = new Vector<double>(0.5 * _medium.Air.DensityKgM3);
        var halfRhoStep = new Vector<double>(0.5 * (_medium.Water.DensityKgM3 - _medium.Air.DensityKgM3));
        for (nuint i = 1; i < (nuint)_mesh.Segments; i += (nuint)Width)
        {
            Vector<double> x = Load(ref sx, i - 1) + Load(ref sx, i);
            Vector<double> y = Load(ref sy, i - 1) + Load(ref sy, i);
            Vector<double> w = Load(ref sz, i - 1) + Load(ref sz, i);
            Vector<double> norm = Vector.Max((x * x) + (y * y) + (w * w), new Vector<double>(1e-18));
            Vector<double> inverse = Vector<double>.One / Vector.SquareRoot(norm);
            x *= inverse;
            y *= inverse;
            w *= inverse;
            Vector<double> s = half - (Load(ref z, i) * inverseLayer);
            s = Vector.Min(Vector.Max(s, Vector<double>.Zero), Vector<double>.One);
            s = s * s * (three - (two * s));
            Vector<double> dry = Vector<double>.One - s;
            Vector<double> rx = Load(ref vx, i) - (dry * Load(ref wx, i));
            Vector<double> ry = Load(ref vy, i) - (dry * Load(ref wy, i));
            Vector<double> rz = Load(ref vz, i);
            Vector<double> along = (rx * x) + (ry * y) + (rz * w);
            Vector<double> across = (rx * rx) + (ry * ry) + (rz * rz) - (along * along);
            Store(x, ref ox, i);
            Store(y, ref oy, i);
            Store(w, ref oz, i);
            Store(s, ref ow, i);
            Vector<double> speed = Vector.SquareRoot(Vector.Max(across, Vector<double>.Zero));
            Store(speed * Load(ref diameter, i) / (nuAir + (nuStep * s)), ref oRe, i);
            Store(speed * Load(ref area, i) * (halfRhoAir + (halfRhoStep * s)), ref oDrag, i);
            Store(along - (feedSpeed * Load(ref feed, i)), ref ot, i);
        }
    }

    private void SetDrag()
    {
        DragCurve curve = _medium.NormalDrag;
        double[] c = _drag, re = _reynolds;
        for (int i = 1; i < _mesh.Segments; i++)
        {
            c[i] *= curve.At(re[i]);
        }
    }

    private double TangentialDrag(int i) => AlongFriction[i] + (
        0.5 * (_medium.Air.DensityKgM3 + ((_medium.Water.DensityKgM3 - _medium.Air.DensityKgM3) * _wet[i]))
        * _mesh.TangentialArea[i] * Math.Abs(_slipT[i]));

    private void SetFreeMotion(Bdf2 step, LineState guess)
    {
        ref double pastX = ref First(_past.VX), pastY = ref First(_past.VY), pastW = ref First(_past.VZ), pastZ = ref First(_past.Z);
        ref double z = ref First(guess.Z), mass = ref First(_mesh.Mass), volume = ref First(_mesh.Volume);
        ref double tangential = ref First(_mesh.TangentialArea), filmLength = ref First(_mesh.FilmLength), film = ref First(Film);
        ref double aux = ref First(_ux), auy = ref First(_uy), auz = ref First(_uz), wetShare = ref First(_wet);
        ref double slip = ref First(_slipT), cnr = ref First(_drag), feed = ref First(_mesh.FeedShare);
        ref double fx = ref First(ForceX), fy = ref First(ForceY), fz = ref First(ForceZ);
        ref double wx = ref First(WindX), wy = ref First(WindY), held = ref First(AlongFriction);
        ref double sx = ref First(_tx), sy = ref First(_ty), sz = ref First(_tz);
        ref double ovx = ref First(_v0x), ovy = ref First(_v0y), ovz = ref First(_v0z);
        ref double opx = ref First(_px), opy = ref First(_py), opz = ref First(_pz);
        ref double oqx = ref First(_qx), oqy = ref First(_qy), oqz = ref First(_qz);
        double rhoAir = _medium.Air.DensityKgM3;
        var halfRhoAir = new Vector<double>(0.5 * rhoAir);
        var halfRhoStep = new Vector<double>(0.5 * (_medium.Water.DensityKgM3 - rhoAir));
        var rhoWater = new Vector<double>(_medium.Water.DensityKgM3);
        var added = new Vector<double>(_medium.Water.DensityKgM3 * _medium.AddedMassCoefficient);
        var g = new Vector<double>(_medium.GravityMS2);
        var q = new Vector<double>(step.Q);
        var stiffness = new Vector<double>(_filmStiffness);
        var halfInverse = new Vector<double>(0.5 * _inverseCapillary);
        var feedSpeed = new Vector<double>(FeedMS);
        Vector<double> one = Vector<double>.One, zero = Vector<double>.Zero;
        for (nuint i = 1; i < (nuint)_mesh.Segments; i += (nuint)Width)
        {
            Vector<double> h = Load(ref wetShare, i), m = Load(ref mass, i), vol = Load(ref volume, i);
            Vector<double> x = Load(ref aux, i), y = Load(ref auy, i), w = Load(ref auz, i);
            Vector<double> cn = Load(ref cnr, i);
            Vector<double> fluid = (halfRhoAir + (halfRhoStep * h)) * Load(ref tangential, i) * Vector.Abs(Load(ref slip, i));
            Vector<double> ct = fluid + Load(ref held, i);
            Vector<double> mn = m + (added * vol * h);
            Vector<double> across = mn + (q * cn), lengthwise = m + (q * ct);
            Vector<double> both = one / (across * lengthwise);
            Vector<double> a = lengthwise * both;
            Vector<double> b = across * both;
            Vector<double> ba = b - a;

            // Film: F(depth) = 2 sigma l (depth/lc) sqrt(1 - (depth/2lc)^2), as a spring through the guess.
            Vector<double> depth = Vector.Max(-Load(ref z, i), zero);
            Vector<double> ratio = depth * halfInverse;
            Vector<double> arch = Vector.SquareRoot(Vector.Max(one - (ratio * ratio), zero));
            Vector<double> under = Vector.ConditionalSelect(Vector.GreaterThan(depth, zero), one, zero);
            Vector<double> kz = stiffness * Load(ref filmLength, i) * Load(ref film, i) * arch * under;

            Vector<double> hx = Load(ref pastX, i), hy = Load(ref pastY, i), hw = Load(ref pastW, i), hz = Load(ref pastZ, i);
            Vector<double> dry = one - h;
            Vector<double> windX = dry * Load(ref wx, i), windY = dry * Load(ref wy, i);
            Vector<double> windAlong = (windX * x) + (windY * y);
            Vector<double> historyAlong = (hx * x) + (hy * y) + (hw * w);
            Vector<double> along = ((m - mn) * historyAlong)
                + (q * (((fluid - cn) * windAlong) + (ct * feedSpeed * Load(ref feed, i))));
            Vector<double> weight = (g * ((rhoWater * vol * h) - m)) - (kz * hz);
            Vector<double> gx = (mn * hx) + (q * (Load(ref fx, i) + (cn * windX))) + (along * x);
            Vector<double> gy = (mn * hy) + (q * (Load(ref fy, i) + (cn * windY))) + (along * y);
            Vector<double> gz = (mn * hw) + (q * (Load(ref fz, i) + weight)) + (along * w);

            Vector<double> eX = ba * w * x, eY = ba * w * y, eZ = a + (ba * w * w);
            Vector<double> q2k = q * q * kz;
            Vector<double> kappa = q2k / (one + (q2k * eZ));
            Inverse(gx, gy, gz, a, ba, x, y, w, eX, eY, eZ, kappa, ref ovx, ref ovy, ref ovz, i);
            Inverse(Load(ref sx, i), Load(ref sy, i), Load(ref sz, i), a, ba, x, y, w, eX, eY, eZ, kappa, ref opx, ref opy, ref opz, i);
            Inverse(Load(ref sx, i - 1), Load(ref sy, i - 1), Load(ref sz, i - 1), a, ba, x, y, w, eX, eY, eZ, kappa, ref oqx, ref oqy, ref oqz, i);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Inverse(
        Vector<double> fx, Vector<double> fy, Vector<double> fz, Vector<double> a, Vector<double> ba,
        Vector<double> x, Vector<double> y, Vector<double> z, Vector<double> eX, Vector<double> eY, Vector<double> eZ,
        Vector<double> kappa, ref double ox, ref double oy, ref double oz, nuint i)
    {
        Vector<double> along = ba * ((fx * x) + (fy * y) + (fz * z));
        Vector<double> rx = (a * fx) + (along * x);
        Vector<double> ry = (a * fy) + (along * y);
        Vector<double> rz = (a * fz) + (along * z);
        Vector<double> held = kappa * rz;
        Store(rx - (held * eX), ref ox, i);
        Store(ry - (held * eY), ref oy, i);
        Store(rz - (held * eZ), ref oz, i);
    }

    private void SetRows(Bdf2 step, in LineEnd head, in LineEnd tail)
    {
        int n = _mesh.Segments;
        var q = new Vector<double>(step.Q);
        double shrink = -FeedMS * _mesh.ShareOfFeed;
        for (int j = 0; j < n; j += Width)
        {
            SetRowBlock((nuint)j, q);
        }

        Solver.OffDiagonal[n - 1] = 0.0;
        AddStretch(step, head, tail, shrink);
    }

    private void SetRowBlock(nuint j, Vector<double> q)
    {
        Vector<double> x = Load(ref First(_tx), j), y = Load(ref First(_ty), j), z = Load(ref First(_tz), j);
        Vector<double> px0 = Load(ref First(_px), j), py0 = Load(ref First(_py), j), pz0 = Load(ref First(_pz), j);
        Vector<double> px1 = Load(ref First(_px), j + 1), py1 = Load(ref First(_py), j + 1), pz1 = Load(ref First(_pz), j + 1);
        Vector<double> qx1 = Load(ref First(_qx), j + 1), qy1 = Load(ref First(_qy), j + 1), qz1 = Load(ref First(_qz), j + 1);
        Vector<double> dvx = Load(ref First(_v0x), j + 1) - Load(ref First(_v0x), j);
        Vector<double> dvy = Load(ref First(_v0y), j + 1) - Load(ref First(_v0y), j);
        Vector<double> dvz = Load(ref First(_v0z), j + 1) - Load(ref First(_v0z), j);
        Vector<double> sx = Load(ref First(_past.X), j + 1) - Load(ref First(_past.X), j);
        Vector<double> sy = Load(ref First(_past.Y), j + 1) - Load(ref First(_past.Y), j);
        Vector<double> sz = Load(ref First(_past.Z), j + 1) - Load(ref First(_past.Z), j);
        Vector<double> k = Load(ref First(_mesh.Stiffness), j);
        Vector<double> soft = Vector<double>.One / ((q * k) + Load(ref First(_mesh.Damping), j));
        Vector<double> yield = (x * (px0 + qx1)) + (y * (py0 + qy1)) + (z * (pz0 + qz1));
        Vector<double> stretch = (x * sx) + (y * sy) + (z * sz) - Load(ref First(_mesh.Rest), j);
        Store(soft + (q * yield), ref First(Solver.Diagonal), j);
        Store(-q * ((x * px1) + (y * py1) + (z * pz1)), ref First(Solver.OffDiagonal), j);
        Store((x * dvx) + (y * dvy) + (z * dvz) + (k * stretch * soft), ref First(Solver.RightSide), j);
    }

    private void Advance(Bdf2 step, LineState guess)
    {
        var q = new Vector<double>(step.Q);
        AdvanceComponent(q, _v0x, _px, _qx, _past.X, guess.VX, guess.X);
        AdvanceComponent(q, _v0y, _py, _qy, _past.Y, guess.VY, guess.Y);
        AdvanceComponent(q, _v0z, _pz, _qz, _past.Z, guess.VZ, guess.Z);
    }

    private void AdvanceComponent(
        Vector<double> q, double[] free, double[] outgoing, double[] incoming, double[] history, double[] velocity, double[] position)
    {
        ref double t = ref First(Solver.Tension);
        ref double f = ref First(free), o = ref First(outgoing), c = ref First(incoming);
        ref double h = ref First(history), v = ref First(velocity), x = ref First(position);
        for (nuint i = 1; i < (nuint)_mesh.Segments; i += (nuint)Width)
        {
            Vector<double> push = (Load(ref o, i) * Load(ref t, i)) - (Load(ref c, i) * Load(ref t, i - 1));
            Vector<double> speed = Load(ref f, i) + (q * push);
            Store(speed, ref v, i);
            Store(Load(ref h, i) + (q * speed), ref x, i);
        }
    }
}
