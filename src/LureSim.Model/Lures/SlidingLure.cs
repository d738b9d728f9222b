using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Lures;

/// <summary>A lure that slides over plants, and what they do to it.</summary>
/// <param name="MassKg">m with hooks, kg.</param>
/// <param name="Friction">mu_l on the plants, static and sliding alike.</param>
/// <param name="StiffnessNM">k: how much more the plants carry per metre that they are pressed down, N/m.</param>
/// <param name="DampingRatio">zeta of a lure that bobs on them; c = 2 zeta sqrt(k m).</param>
/// <param name="TouchHeightM">Height of the tie where the belly just touches them, m.</param>
/// <param name="CentreBehindM">Centre of gravity behind the tie, m.</param>
internal sealed record SlidingContact(double MassKg, double Friction, double StiffnessNM, double DampingRatio, double TouchHeightM, double CentreBehindM = 0.0)
{
    /// <summary>c, N s/m.</summary>
    public double DampingNsM => 2.0 * DampingRatio * Math.Sqrt(StiffnessNM * MassKg);

    /// <summary>How far its weight presses the plants down, m.</summary>
    public double SinkM => MassKg * Physics.GravityMS2 / StiffnessNM;
}

/// <summary>
/// The lure on plants: a point at its line tie, m a = T - m g + N - mu N v/|v| (Coulomb 1785), N = k d - c z' of plants pressed down by d and never below 0: pulled up
/// harder than it weighs, or thrown up by them, it leaves them. Friction is a secant coefficient of the step, mu N / max(|v|, v0), taken at the speed that the
/// friction of the step itself leaves with the pull of the pass before: so it only takes energy, and holds a lure at rest but for a creep below v0.
/// </summary>
internal sealed class SlidingLure : ILineEnd
{
    /// <summary>v0, m/s: what is pulled at less than mu N creeps more slowly, in a twitch of half a second by less than 0.25 mm, a hundredth of its usual way.</summary>
    public const double CreepMS = 5e-4;

    private readonly SlidingContact _contact;
    private readonly double _creep;
    private PointState _before, _now, _next;
    private Vec3 _positionHistory, _velocityHistory, _pull;
    private double _heading, _rubbing;
    private bool _pressed;
    private LineEnd _end;

    /// <summary>Sets it on the plants, as deep as its weight presses them.</summary>
    /// <param name="contact">Lure and plants.</param>
    /// <param name="xM">x of the tie, m.</param>
    /// <param name="yM">y of the tie, m.</param>
    /// <param name="creepMS">v0, m/s, above 0.</param>
    /// <param name="velocity">Velocity at the start, m/s.</param>
    public SlidingLure(SlidingContact contact, double xM, double yM, double creepMS = CreepMS, Vec3 velocity = default)
    {
        ArgumentNullException.ThrowIfNull(contact);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(creepMS);
        (_contact, _creep, _heading, _pressed) = (contact, creepMS, Math.PI, true);
        _before = _now = _next = new(new Vec3(xM, yM, contact.TouchHeightM - contact.SinkM), velocity);
    }

    /// <summary>N: what the plants carry of it now, N.</summary>
    public double NormalN { get; private set; }

    /// <summary>Velocity of the tie, m/s.</summary>
    public Vec3 Velocity => _now.Velocity;

    /// <summary>Height of its belly over the plants where nothing presses them, m; negative where it presses them down.</summary>
    public double ClearM => _now.Position.Z - _contact.TouchHeightM;

    /// <inheritdoc/>
    public HullPose Pose
    {
        get
        {
            (double s, double c) = Math.SinCos(_heading);
            var ahead = new Vec3(c, s, 0.0);
            Vec3 tie = _now.Position, v = _now.Velocity;
            return new HullPose(
                tie - (_contact.CentreBehindM * ahead), _heading, 0.0, 0.0, Vec3.Dot(v, ahead), (v.Y * c) - (v.X * s), 0.0, tie, tie, Attitude.Frame(_heading, 0.0, 0.0), 0.0);
        }
    }

    /// <inheritdoc/>
    public Vec3 Tie => _next.Position;

    /// <inheritdoc/>
    public Vec3 Axis => new(Math.Cos(_heading), Math.Sin(_heading), 0.0);

    /// <inheritdoc/>
    public bool IsFinite
    {
        get
        {
            Vec3 sum = _next.Position + _next.Velocity;
            return double.IsFinite(sum.X + sum.Y + sum.Z);
        }
    }

    /// <inheritdoc/>
    public double HeldJ
    {
        get
        {
            double depth = Depth(_now);
            return 0.5 * ((_contact.MassKg * Vec3.Dot(_now.Velocity, _now.Velocity)) + (_contact.StiffnessNM * depth * depth));
        }
    }

    /// <inheritdoc/>
    public double StirW => 0.0;

    /// <inheritdoc/>
    public void Guess(Bdf2 step)
    {
        Vec3 velocity = _now.Velocity + (step.Ratio * (_now.Velocity - _before.Velocity));
        _next = new(_now.Position + (step.Dt * _now.Velocity), velocity);
        _positionHistory = (step.HistoryNow * _now.Position) + (step.HistoryBefore * _before.Position);
        _velocityHistory = (step.HistoryNow * _now.Velocity) + (step.HistoryBefore * _before.Velocity);
    }

    /// <inheritdoc/>
    public LineEnd Begin(Bdf2 step, Vec3 tieForce, Vec3 knotMomentNm)
    {
        double q = step.Q, m = _contact.MassKg, k = _contact.StiffnessNM, c = _contact.DampingNsM;
        _pressed = Depth(_next) > 0.0 && Carried(_next) > 0.0;
        double stiff = _pressed ? q * (c + (q * k)) : 0.0;
        double lift = tieForce.Z - (m * Physics.GravityMS2) + (_pressed ? k * (_contact.TouchHeightM - _positionHistory.Z) : 0.0);
        double freeUp = ((m * _velocityHistory.Z) + (q * lift)) / (m + stiff);
        double normal = _pressed ? Math.Max(0.0, Carried(Moved(q, freeUp + (q * _pull.Z / (m + stiff))))) : 0.0;

        // Momentum along the plants with the pull of the pass before; friction takes it down, at most to a creep.
        double px = (m * _velocityHistory.X) + (q * (tieForce.X + _pull.X)), py = (m * _velocityHistory.Y) + (q * (tieForce.Y + _pull.Y));
        double held = _contact.Friction * normal, speed = (Math.Sqrt((px * px) + (py * py)) - (q * held)) / m;
        _rubbing = held / Math.Max(speed, _creep);
        double along = m + (q * _rubbing);
        var velocity = new Vec3(((m * _velocityHistory.X) + (q * tieForce.X)) / along, ((m * _velocityHistory.Y) + (q * tieForce.Y)) / along, freeUp);
        _end = new LineEnd { FreeVelocity = velocity, FreePosition = _positionHistory + (q * velocity), Wxx = 1.0 / along, Wyy = 1.0 / along, Wzz = 1.0 / (m + stiff) };
        return _end;
    }

    /// <inheritdoc/>
    public void Finish(Bdf2 step, Vec3 force)
    {
        _pull = force;
        Vec3 velocity = _end.FreeVelocity + (step.Q * _end.Yield(force));
        _next = new(_positionHistory + (step.Q * velocity), velocity);
    }

    /// <inheritdoc/>
    public void Commit()
    {
        (_before, _now) = (_now, _next);
        NormalN = _pressed ? Math.Max(0.0, Carried(_now)) : 0.0;

        // Pulled by the nose it turns into its way at once; at rest it stays as it lies.
        Vec3 v = _now.Velocity;
        if ((v.X * v.X) + (v.Y * v.Y) > _creep * _creep && Vec3.Dot(v, _pull) > 0.0)
        {
            _heading = Math.Atan2(_pull.Y, _pull.X);
        }
    }

    /// <inheritdoc/>
    public double PowerW(double tieWeightN)
    {
        Vec3 v = _next.Velocity;
        double depth = Depth(_next), carried = _pressed ? Carried(_next) : 0.0;

        // What plants that it has left give back, and what they damp, is lost with them.
        return ((tieWeightN - (_contact.MassKg * Physics.GravityMS2) + carried - (_contact.StiffnessNM * depth)) * v.Z) - (_rubbing * ((v.X * v.X) + (v.Y * v.Y)));
    }

    private PointState Moved(double q, double upMS) => new(new Vec3(0.0, 0.0, _positionHistory.Z + (q * upMS)), new Vec3(0.0, 0.0, upMS));

    private double Depth(in PointState s) => Math.Max(0.0, _contact.TouchHeightM - s.Position.Z);

    private double Carried(in PointState s) => (_contact.StiffnessNM * (_contact.TouchHeightM - s.Position.Z)) - (_contact.DampingNsM * s.Velocity.Z);

    private readonly record struct PointState(Vec3 Position, Vec3 Velocity);
}
