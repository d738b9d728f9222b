using LureSim.Model.Hands;
using LureSim.Model.Lines.Air;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Assembly;

/// <summary>
/// One cast on its way: hands and rod, line and lure, reel. A step is two passes of the linearly implicit midpoint rule, joined
/// by the tensions of the line. The same step serves swing, release, flight, slack and taut.
/// </summary>
internal sealed class AirStep(ChainRod? rod, AirLine line, ReelFeed reel)
{
    private const int Passes = 2;

    private TipLink? _rest;

    /// <summary>Hands and rod; absent in a flight from a tip at rest.</summary>
    public ChainRod Rod => rod ?? throw new InvalidOperationException("this cast has no rod");

    public AirLine Line { get; } = line;

    public ReelFeed Reel { get; } = reel;

    /// <summary>t from the start of the swing, s.</summary>
    public double TimeS { get; private set; }

    /// <summary>True once the rod has been brought to rest.</summary>
    public bool RodAtRest => _rest is not null;

    /// <summary>Tip place and speed now.</summary>
    public (double X, double Z, double Vx, double Vz) Tip() =>
        _rest is null ? Rod.Tip() : (_rest.X, _rest.Z, 0.0, 0.0);

    /// <summary>A flight from a tip that stays at rest.</summary>
    public static AirStep AtRest(TipLink tip, AirLine line, ReelFeed reel) => new(null, line, reel) { _rest = tip };

    /// <summary>Holds the rod where it is from now on.</summary>
    public void RestRod()
    {
        (double x, double z, _, _) = Rod.Tip();
        _rest = new TipLink { X = x, Z = z };
    }

    // Where the rod comes to rest at least and at most, rad from the vertical.
    private const double LeastAimRad = 0.3, MostAimRad = 1.4, UsualAimRad = 0.8;

    /// <summary>Tells the hands when the line will be let go.</summary>
    public void Plan(double releaseS) => Rod.LetGo = new LetGo(releaseS, UsualAimRad);

    /// <summary>Lets the line go; the hands come to rest with the rod along the line, toward where the lure flies.</summary>
    public void Release()
    {
        double vx = Line.Vx[0], vz = Line.Vz[0];
        Reel.LetGo(Math.Sqrt((vx * vx) + (vz * vz)));
        if (rod is not null)
        {
            rod.LetGo = new LetGo(TimeS, Math.Clamp((0.5 * Math.PI) - Math.Atan2(vz, vx), LeastAimRad, MostAimRad));
        }
    }

    /// <summary>One step of h seconds.</summary>
    /// <exception cref="ModelException">The state is no longer finite.</exception>
    public void Step(double h)
    {
        var step = new Midpoint(h);
        TipLink tip = _rest ?? Rod.Link;
        (double X, double Z) force = default;
        Line.Begin(step);
        for (int pass = 0; pass < Passes; pass++)
        {
            if (_rest is null)
            {
                Rod.Free(step, TimeS);
            }

            Reel.Free(h);
            Line.Free(step, tip, Reel);
            force = Line.Pull(step, tip, Reel);
            if (_rest is null)
            {
                Rod.Pull(force.X, force.Z);
            }
        }

        double ax = tip.FreeAx + (tip.Gxx * force.X) + (tip.Gxz * force.Z);
        double az = tip.FreeAz + (tip.Gxz * force.X) + (tip.Gzz * force.Z);
        Line.Advance(step, tip, (ax, az), Reel);
        if (_rest is null)
        {
            Rod.Advance(step);
        }

        Reel.Advance(h, Line.TipTensionN);
        TimeS += h;
        (double x, double z, double vx, double vz) = Tip();
        if (!Reel.Locked)
        {
            Line.Grow(x, z, vx, vz, Reel.SpeedMS);
        }

        if (!double.IsFinite(Line.X[0] + Line.Z[0] + x + Reel.SpeedMS))
        {
            throw new ModelException("The cast is no longer finite; a smaller step may help.", TimeS - h);
        }
    }

    /// <summary>Copies the state of another cast of the same spec.</summary>
    public void CopyFrom(AirStep other)
    {
        Rod.CopyFrom(other.Rod);
        Line.CopyFrom(other.Line);
        Reel.CopyFrom(other.Reel);
        TimeS = other.TimeS;
        _rest = other._rest;
    }
}
