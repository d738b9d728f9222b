using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Lures;

/// <summary>The planar hull at the end of the line: keeps the states of <see cref="WalkingHull"/>.</summary>
internal sealed class PlanarLure : ILineEnd
{
    private readonly WalkingHull _walking;
    private readonly WalkHull _hull;
    private HullState _before, _now, _next;

    /// <summary>Sets the lure at rest.</summary>
    /// <param name="walking">Its step.</param>
    /// <param name="start">Where it starts.</param>
    public PlanarLure(WalkingHull walking, HullState start)
    {
        ArgumentNullException.ThrowIfNull(walking);
        (_walking, _hull) = (walking, walking.Hull);
        _before = _now = _next = start;
    }

    /// <summary>State taken over last.</summary>
    public HullState Now => _now;

    /// <inheritdoc/>
    public HullPose Pose
    {
        get
        {
            (double s, double c) = Math.SinCos(_now.Psi);
            return new HullPose(
                new Vec3(_now.X, _now.Y, _hull.CentreHeightM),
                _now.Psi,
                _hull.TrimRad,
                _hull.HeelRad,
                _now.U,
                _now.V,
                _now.R,
                _walking.Tie(_now),
                new Vec3(_now.X + (_hull.NoseM * c), _now.Y + (_hull.NoseM * s), _hull.NoseHeightM + _now.Zeta),
                Attitude.Frame(_now.Psi, _hull.TrimRad, _hull.HeelRad),
                _hull.WetShare);
        }
    }

    /// <inheritdoc/>
    public Vec3 Tie => _walking.Tie(_next);

    /// <inheritdoc/>
    public Vec3 Axis => new(Math.Cos(_next.Psi), Math.Sin(_next.Psi), 0.0);

    /// <inheritdoc/>
    public bool IsFinite => double.IsFinite(_next.X + _next.Y + _next.Psi + _next.U + _next.V + _next.R + _next.Zeta);

    /// <inheritdoc/>
    public double HeldJ => 0.5 * (
        (_hull.M11 * _now.U * _now.U) + (_hull.M22 * _now.V * _now.V) + (2.0 * _hull.M23 * _now.V * _now.R) + (_hull.M33 * _now.R * _now.R)
        + (_hull.NoseMassKg * _now.W * _now.W) + (_hull.NoseStiffnessNM * _now.Zeta * _now.Zeta));

    /// <inheritdoc/>
    public double StirW => _walking.Power(_now.U, _now.V, _now.R);

    /// <inheritdoc/>
    public void Guess(Bdf2 step) => _next = _walking.Guess(step, _before, _now);

    /// <inheritdoc/>
    public LineEnd Begin(Bdf2 step, Vec3 tieForce, Vec3 knotMomentNm) =>
        _walking.Begin(step, _before, _now, _next, tieForce, knotMomentNm.Z);

    /// <inheritdoc/>
    public void Finish(Bdf2 step, Vec3 force) => _next = _walking.Finish(step, force);

    /// <inheritdoc/>
    public void Commit() => (_before, _now) = (_now, _next);

    /// <inheritdoc/>
    public double PowerW(double tieWeightN) =>
        (tieWeightN * _next.W) - (_hull.NoseDampingNsM * _next.W * _next.W) - _walking.StepPower(_next);
}
