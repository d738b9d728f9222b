using System.Numerics;
using LureSim.Numerics;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lines.Chain;

/// <summary>What the forces of the last step do, for the energy account. The forces are those that the step used; the motion is that of its end.</summary>
internal sealed partial class LinePass
{
    private double[]? _acrossSquared;

    /// <summary>Powers at the end of a step, before the film is updated; call once per accepted step.</summary>
    /// <param name="end">State that <see cref="Solve"/> wrote, both ends included.</param>
    public LinePower Power(LineState end)
    {
        (double fluid, double wind, double weight, double added) = NodePower(end);
        (double stretch, double reel) = SegmentPower(end);
        return new(fluid, wind, weight, stretch, reel, added);
    }

    private (double Fluid, double Wind, double Weight, double Added) NodePower(LineState end)
    {
        double[] before = _acrossSquared ??= new double[_mesh.Rest.Length];
        ref double vx = ref First(end.VX), vy = ref First(end.VY), vz = ref First(end.VZ), height = ref First(end.Z), old = ref First(before);
        ref double ux = ref First(_ux), uy = ref First(_uy), uz = ref First(_uz), wet = ref First(_wet), across = ref First(_drag), slip = ref First(_slipT);
        ref double wx = ref First(WindX), wy = ref First(WindY), share = ref First(_mesh.FeedShare), mass = ref First(_mesh.Mass);
        ref double held = ref First(AlongFriction), volume = ref First(_mesh.Volume), tangential = ref First(_mesh.TangentialArea), filmLength = ref First(_mesh.FilmLength), film = ref First(Film);
        double rhoAir = _medium.Air.DensityKgM3, rhoWater = _medium.Water.DensityKgM3, g = _medium.GravityMS2, halfAdded = 0.5 * rhoWater * _medium.AddedMassCoefficient;
        double shed = 0.5 * FeedMS * _mesh.ShareOfFeed / _mesh.ShortestMainM;
        Vector<double> one = Vector<double>.One, zero = Vector<double>.Zero, fluid = zero, wind = zero, weight = zero, added = zero;
        for (nuint i = 1; i < (nuint)_mesh.Segments; i += (nuint)Width)
        {
            Vector<double> x = Load(ref vx, i), y = Load(ref vy, i), z = Load(ref vz, i), tx = Load(ref ux, i), ty = Load(ref uy, i), tz = Load(ref uz, i);
            Vector<double> h = Load(ref wet, i), m = Load(ref mass, i), vol = Load(ref volume, i), cn = Load(ref across, i), feed = Load(ref share, i);
            Vector<double> ct = (new Vector<double>(0.5 * rhoAir) + (new Vector<double>(0.5 * (rhoWater - rhoAir)) * h)) * Load(ref tangential, i) * Vector.Abs(Load(ref slip, i));
            Vector<double> along = (x * tx) + (y * ty) + (z * tz), speed2 = (x * x) + (y * y) + (z * z), square = speed2 - (along * along);
            Vector<double> windX = (one - h) * Load(ref wx, i), windY = (one - h) * Load(ref wy, i), windAlong = (windX * tx) + (windY * ty);
            Vector<double> slipAlong = along - windAlong, fed = new Vector<double>(FeedMS) * feed, run = (ct * (slipAlong - fed)) + (Load(ref held, i) * (along - fed));
            Vector<double> forceX = (cn * (x - windX - (slipAlong * tx))) + (run * tx), forceY = (cn * (y - windY - (slipAlong * ty))) + (run * ty);
            Vector<double> forceZ = (cn * (z - (slipAlong * tz))) + (run * tz);
            Vector<double> depth = Vector.Max(-Load(ref height, i), zero), ratio = depth * new Vector<double>(0.5 * _inverseCapillary);
            Vector<double> arch = Vector.SquareRoot(Vector.Max(one - (ratio * ratio), zero));
            Vector<double> carried = new Vector<double>(_filmStiffness) * Load(ref filmLength, i) * Load(ref film, i) * arch * depth;

            // A node of the main line hands its share of moving mass to the reel.
            Vector<double> lost = Vector.ConditionalSelect(Vector.GreaterThan(feed, zero), new Vector<double>(shed) * m * speed2, zero);
            Vector<double> inner = LanesBefore(i, _mesh.Segments);
            fluid -= Vector.ConditionalSelect(Vector.GreaterThan(inner, zero), (forceX * x) + (forceY * y) + (forceZ * z) + lost, zero);
            wind -= Vector.ConditionalSelect(Vector.GreaterThan(inner, zero), (forceX * windX) + (forceY * windY), zero);
            weight += Vector.ConditionalSelect(Vector.GreaterThan(inner, zero), (carried + (new Vector<double>(g) * ((new Vector<double>(rhoWater) * vol * h) - m))) * z, zero);
            added += Vector.ConditionalSelect(Vector.GreaterThan(inner, zero), new Vector<double>(halfAdded) * vol * h * (square - Load(ref old, i)), zero);
            Store(square, ref old, i);
        }

        return (Vector.Sum(fluid), Vector.Sum(wind), Vector.Sum(weight), Vector.Sum(added));
    }

    private (double Stretch, double Reel) SegmentPower(LineState end)
    {
        ref double px = ref First(end.X), py = ref First(end.Y), pz = ref First(end.Z), vx = ref First(end.VX), vy = ref First(end.VY), vz = ref First(end.VZ);
        ref double dx = ref First(_tx), dy = ref First(_ty), dz = ref First(_tz);
        ref double rest = ref First(_mesh.Rest), stiffness = ref First(_mesh.Stiffness), tension = ref First(Solver.Tension);
        double shortening = FeedMS * _mesh.ShareOfFeed;
        var half = new Vector<double>(0.5);
        Vector<double> zero = Vector<double>.Zero, damped = zero, reeled = zero;
        for (nuint j = 0; j < (nuint)_mesh.Segments; j += (nuint)Width)
        {
            // Along the directions of the step; those of its end differ in the second order.
            Vector<double> x = Load(ref dx, j), y = Load(ref dy, j), z = Load(ref dz, j);
            Vector<double> length = (x * (Load(ref px, j + 1) - Load(ref px, j))) + (y * (Load(ref py, j + 1) - Load(ref py, j)))
                + (z * (Load(ref pz, j + 1) - Load(ref pz, j)));
            Vector<double> rate = (x * (Load(ref vx, j + 1) - Load(ref vx, j))) + (y * (Load(ref vy, j + 1) - Load(ref vy, j)))
                + (z * (Load(ref vz, j + 1) - Load(ref vz, j)));
            Vector<double> l = Load(ref rest, j), over = Vector.Max(length - l, zero), elastic = Load(ref stiffness, j) * over, pull = Load(ref tension, j);
            Vector<double> main = Vector.ConditionalSelect(Vector.GreaterThan(LanesBefore(j, _mesh.FirstLeaderSegment), zero), new Vector<double>(shortening), zero);
            Vector<double> held = LanesBefore(j, _mesh.Segments);
            damped -= Vector.ConditionalSelect(Vector.GreaterThan(held, zero), (pull - elastic) * (rate + main), zero);

            // A stiffer, shorter segment holds more at the same stretch.
            reeled += Vector.ConditionalSelect(Vector.GreaterThan(held, zero), main * (pull + (half / l * elastic * over)), zero);
        }

        (double evenStretch, double evenReel) = EvenMS == 0.0 ? default : EvenPower(end);
        return (Vector.Sum(damped) + evenStretch, Vector.Sum(reeled) + evenReel);
    }

    /// <summary>How the energy held grows with the length of the first segment while its ends and its stretch stay, J/m: a longer one is softer, and its node
    /// moves more line. Line that leaves the reel unstretched takes that.</summary>
    /// <param name="end">State that <see cref="Solve"/> wrote, both ends included.</param>
    public double HeldPerFirstM(LineState end)
    {
        double over = FirstOver(end), speed2 = (end.VX[1] * end.VX[1]) + (end.VY[1] * end.VY[1]) + (end.VZ[1] * end.VZ[1]);
        double moving = _mesh.Segments > 1 ? 0.25 * _mesh.Piece(0).LinearDensityKgM * speed2 : 0.0;
        return moving - (0.5 * _mesh.Stiffness[0] * over * over / _mesh.Rest[0]);
    }

    // What the first segment hands to the others on top of the feed.
    private (double Stretch, double Reel) EvenPower(LineState end)
    {
        double pull = Solver.Tension[0];
        return (((_mesh.Stiffness[0] * FirstOver(end)) - pull) * EvenMS, (pull - HeldPerFirstM(end)) * EvenMS);
    }

    private double FirstOver(LineState end)
    {
        double length = Vec3.Dot(Direction(0), new Vec3(end.X[1] - end.X[0], end.Y[1] - end.Y[0], end.Z[1] - end.Z[0]));
        return Math.Max(0.0, length - _mesh.Rest[0]);
    }
}
