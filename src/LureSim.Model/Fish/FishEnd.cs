using LureSim.Model.Cover;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Fish;

/// <summary>
/// The fish with the lure as the end of the line: a mass in water that is drawn, swims, and may be held by plants. Drag 1/2 rho CdA v^2 and the grip of plants
/// are secant coefficients of the step, so they only take energy; out of the water its weight comes back as a spring over the height of its body. A fast hook
/// is an end that does not move.
/// </summary>
internal sealed class FishEnd
{
    // A held fish creeps at less than this, m/s.
    private const double CreepMS = 0.02;

    // A fish that comes is already swimming, at this share of its top speed: guess 0.5 (0.2 to 0.9), nobody has measured it.
    private const double ComingShare = 0.5;

    private readonly FishSpec _fish;
    private readonly double _massKg, _halfRhoArea, _gripN, _weightN;
    private FishState _before, _now, _next;
    private Vec3 _pastX, _pastV, _freeX, _freeV;
    private double _wxx, _wyy, _wzz, _across, _swims;

    /// <summary>Puts the fish at rest, or swimming toward the angler if it comes.</summary>
    /// <param name="fish">Fish.</param>
    /// <param name="cover">Plants that hold it.</param>
    /// <param name="lureKg">Lure that moves with it, kg.</param>
    /// <param name="waterKgM3">rho of the water, kg/m3.</param>
    /// <param name="place">Where it is, m; x points from the angler to it.</param>
    public FishEnd(FishSpec fish, CoverSpec cover, double lureKg, double waterKgM3, Vec3 place)
    {
        _fish = fish;
        _massKg = (fish.MassKg * (1.0 + fish.AddedMassShare)) + cover.WeedKg + lureKg;
        _halfRhoArea = 0.5 * waterKgM3 * fish.DragAreaM2;
        _gripN = cover.GripN;
        _weightN = (fish.MassKg + cover.WeedKg) * Physics.GravityMS2;
        double toward = fish.Way == FishWay.Comes ? ComingShare * fish.SpeedMS : 0.0;
        _before = _now = _next = new(place, new(-toward, 0.0, 0.0));
    }

    /// <summary>State taken over last.</summary>
    public FishState Now => _now;

    /// <summary>Place as the running step sees it, m.</summary>
    public Vec3 Place => _next.Place;

    /// <summary>Speed toward the angler now, m/s.</summary>
    public double TowardMS => -_now.Speed.X;

    private bool IsFast => _fish.Way == FishWay.Fast;

    /// <summary>Starts a step.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="swims">Share of its thrust that the fish uses now, 0 to 1.</param>
    public void Guess(Bdf2 step, double swims)
    {
        _swims = swims;
        _pastX = (step.HistoryNow * _now.Place) + (step.HistoryBefore * _before.Place);
        _pastV = (step.HistoryNow * _now.Speed) + (step.HistoryBefore * _before.Speed);
        _next = IsFast ? _now : new(_now.Place + (step.Dt * _now.Speed), _now.Speed + (step.Ratio * (_now.Speed - _before.Speed)));
    }

    /// <summary>Motion without tension and yield at the guess of this pass.</summary>
    /// <param name="step">Step coefficients.</param>
    public LineEnd Begin(Bdf2 step)
    {
        if (IsFast)
        {
            return LineEnd.Prescribed(_now.Place, Vec3.Zero);
        }

        double q = step.Q, speed = _next.Speed.Length;
        _across = (_halfRhoArea * speed) + (_gripN / Math.Sqrt((speed * speed) + (CreepMS * CreepMS)));
        (double thrust, double slope) = Thrust();
        double lift = Emerged(_next.Place.Z);
        (_wxx, _wyy, _wzz) = (1.0 / (_massKg + (q * (_across + slope))), 1.0 / (_massKg + (q * _across)), 1.0 / (_massKg + (q * _across) + (q * q * lift)));
        _freeV = new(
            _wxx * ((_massKg * _pastV.X) + (q * thrust)), _wyy * _massKg * _pastV.Y, _wzz * ((_massKg * _pastV.Z) - (q * lift * _pastX.Z)));
        _freeX = _pastX + (q * _freeV);
        return new() { FreePosition = _freeX, FreeVelocity = _freeV, Wxx = _wxx, Wyy = _wyy, Wzz = _wzz };
    }

    /// <summary>Adds the pull of the line.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="force">Force of the line on the hook, N.</param>
    public void Finish(Bdf2 step, Vec3 force)
    {
        if (IsFast)
        {
            return;
        }

        Vec3 change = new(step.Q * _wxx * force.X, step.Q * _wyy * force.Y, step.Q * _wzz * force.Z);
        _next = new(_freeX + (step.Q * change), _freeV + change);
    }

    /// <summary>Takes the step over.</summary>
    public void Commit() => (_before, _now) = (_now, _next);

    /// <summary>Energy of motion and of its raised weight at the end of the running step, J.</summary>
    public double HeldJ
    {
        get
        {
            double z = Math.Clamp(_next.Place.Z, 0.0, _fish.DepthM), over = Math.Max(0.0, _next.Place.Z - _fish.DepthM);
            return (0.5 * _massKg * Vec3.Dot(_next.Speed, _next.Speed)) + (_weightN * ((0.5 * z * z / _fish.DepthM) + over));
        }
    }

    /// <summary>Power of thrust, in, and of drag and grip, out (negative), at the end of the running step, W.</summary>
    public (double ThrustW, double LossW) Power()
    {
        if (IsFast)
        {
            return (0.0, 0.0);
        }

        (double thrust, double slope) = Thrust();
        double along = _next.Speed.X;
        return ((thrust - (slope * along)) * along, -_across * Vec3.Dot(_next.Speed, _next.Speed));
    }

    // Level thrust P (1 - v/v_top) in its direction along x, as load and slope; none beyond the top speed.
    private (double Load, double Slope) Thrust()
    {
        double sign = _fish.Way switch { FishWay.Runs => 1.0, FishWay.Comes => -1.0, _ => 0.0 };
        double full = _swims * _fish.PullN;
        return sign * _next.Speed.X < _fish.SpeedMS ? (sign * full, Math.Abs(sign) * full / _fish.SpeedMS) : (0.0, 0.0);
    }

    // Weight over height as a secant, N/m.
    private double Emerged(double z) => z <= 0.0 ? 0.0 : _weightN / Math.Max(z, _fish.DepthM);
}

/// <summary>Place and speed of the fish.</summary>
/// <param name="Place">m.</param>
/// <param name="Speed">m/s.</param>
internal readonly record struct FishState(Vec3 Place, Vec3 Speed);
