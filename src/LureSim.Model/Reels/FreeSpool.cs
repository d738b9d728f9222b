namespace LureSim.Model.Reels;

/// <summary>
/// A revolving spool and the line in the rings, which can pull but not push. While the line is straight between them both move as one,
/// (I/R^2 + m_g) u' = T - F_0 - (brake(w) + M_0 + mu N R)/R, u = R w. Where the spool would have to push it runs ahead: m_g u_g' = T - F_0, I w' = -brake(w) - M_0 -
/// mu N R, and what it gives more than the rings take lies loose on it. That is the loose line that tangles.
/// </summary>
/// <remarks>Radius and inertia fall as line leaves; leaving line carries its own momentum with it, so no term of I' is left in w'. I is that of the bare
/// spool and of the line left on it, loose line included, so that no line can carry off more than it brought (I' = -mu R^2).</remarks>
internal sealed class FreeSpool : ReelFeed
{
    // A brake that is matched at the launch needs one, m/s.
    private const double LeastLaunchMS = 1.0;

    private readonly SpoolSpec _spec;
    private readonly WoundLine _wound;
    private readonly double _matchedNms2, _ringsKg;
    private SpoolBrake _brake;
    private double _thumb, _spoolMS, _spoolAccel, _looseM;
    private bool _runsAhead;

    /// <summary>Creates the spool.</summary>
    /// <param name="spec">Inertia, brakes, thumb.</param>
    /// <param name="slowing">rho CdA/(2 m) of the lure that the brake is set for, 1/m.</param>
    /// <param name="radiusM">R_0, radius of the wound line at the start, m.</param>
    /// <param name="linearDensityKgM">mu of the wet line, kg/m.</param>
    /// <param name="diameterM">Outer diameter of the line, m.</param>
    /// <param name="ringsM">Line between spool and tip, m; 0 when what it weighs is left out.</param>
    public FreeSpool(SpoolSpec spec, double slowing, double radiusM, double linearDensityKgM, double diameterM, double ringsM)
    {
        _spec = spec;
        _wound = new WoundLine(radiusM, spec.WidthM, spec.Packing, diameterM, linearDensityKgM, spec.LineM);
        _ringsKg = linearDensityKgM * ringsM;
        LineM = spec.LineM;
        if (_wound.CoreSquaredM2 <= 0.0)
        {
            double most = WoundLine.Capacity(0.0, radiusM, spec.WidthM, spec.Packing, diameterM);
            throw new ArgumentException($"{LineM} m of this line do not fit on the spool, which holds {most:F0} m down to its axle.", nameof(spec));
        }

        _matchedNms2 = spec.BrakeStrength * InertiaKgM2 * radiusM * slowing;
        _brake = new(spec.Brake, _matchedNms2, 0.0);
    }

    /// <summary>R, radius of the wound line now, m.</summary>
    public double RadiusM => _wound.RadiusM(GoneM);

    /// <summary>I, inertia of spool and line now, kg m2.</summary>
    public double InertiaKgM2 => _spec.InertiaKgM2 + _wound.InertiaKgM2(GoneM);

    public override double LooseM => _looseM;

    public override double SpinRadS => SpoolMS / RadiusM;

    public override double LoopM => 2.0 * Math.PI * RadiusM;

    public override double KineticJ => 0.5 * ((InertiaKgM2 * SpinRadS * SpinRadS) + (_ringsKg * SpeedMS * SpeedMS));

    private double GoneM => Math.Min(PaidM, LineM);

    private double SpoolMS => _runsAhead ? _spoolMS : SpeedMS;

    public override void LetGo(double launchMS)
    {
        base.LetGo(launchMS);
        _brake = new(_spec.Brake, _matchedNms2, Math.Max(LeastLaunchMS, launchMS) / RadiusM);
    }

    public override void CopyFrom(ReelFeed other)
    {
        base.CopyFrom(other);
        var spool = (FreeSpool)other;
        (_thumb, _brake, _spoolMS, _spoolAccel, _looseM, _runsAhead) = (spool._thumb, spool._brake, spool._spoolMS, spool._spoolAccel, spool._looseM, spool._runsAhead);
    }

    protected override (double Free, double Inverse) Linearise(double h)
    {
        double r = RadiusM, mid = Math.Max(0.0, SpeedMS + (0.5 * h * Accel));
        if (_runsAhead)
        {
            return (-_spec.RingDragN / _ringsKg, 1.0 / _ringsKg);
        }

        // R' w from the falling radius: u' = R w' + R' w, with R' = -slope u / (2 R). The slope of the brake stands on the side of the mass.
        double viscous = Viscous(mid / r), mass = (InertiaKgM2 + (0.5 * h * viscous)) / (r * r);
        double shrink = -0.5 * _wound.SlopeM * mid * mid / (r * r);
        double pull = (mass * shrink) - _spec.RingDragN - (((viscous * SpeedMS / r) + Dry()) / r);
        return (pull / (mass + _ringsKg), 1.0 / (mass + _ringsKg));
    }

    protected override void Settle(double h, double tensionN, double before)
    {
        double line = 0.5 * (before + SpeedMS);
        GivenJ += 0.5 * _wound.LineKgM * line * line * line * h;
        LossJ += h * _spec.RingDragN * line;
        if (_runsAhead)
        {
            RunAhead(h, line);
        }
        else
        {
            Together(h, tensionN, before);
        }

        double wish = Math.Clamp(_looseM / _spec.ThumbFullM, 0.0, 1.0);
        _thumb += (wish - _thumb) * (_spec.ThumbDelayS > 0.0 ? 1.0 - Math.Exp(-h / _spec.ThumbDelayS) : 1.0);
    }

    // Once the line between spool and rings would have to push, the spool runs ahead from the next step on. A line without mass goes with the spool.
    private void Together(double h, double tensionN, double before)
    {
        double r = RadiusM, u = 0.5 * (before + SpeedMS), w = u / r, brakes = (Viscous(w) * w) + Dry();
        LossJ += h * w * brakes;
        double between = tensionN - _spec.RingDragN - (_ringsKg * (SpeedMS - before) / h);
        if (between < 0.0 && SpeedMS > 0.0 && _ringsKg > 0.0)
        {
            (_runsAhead, _spoolMS, _spoolAccel) = (true, SpeedMS, 0.0);
        }
    }

    private void RunAhead(double h, double line)
    {
        double r = RadiusM, before = _spoolMS, mid = Math.Max(0.0, before + (0.5 * h * _spoolAccel)), w = mid / r;
        double viscous = Viscous(w), inertia = InertiaKgM2 + (0.5 * h * viscous);
        double shrink = -0.5 * _wound.SlopeM * (line / r) * w;
        _spoolAccel = (-r * ((viscous * before / r) + Dry()) / inertia) + shrink;
        _spoolMS = Math.Max(0.0, before + (h * _spoolAccel));
        double spool = 0.5 * (before + _spoolMS);
        LossJ += h * ((spool / r * ((Viscous(spool / r) * spool / r) + Dry())) + (0.5 * _wound.LineKgM * ((spool * spool) - (line * line)) * line));
        _looseM += h * (spool - line);
        if (_looseM <= 0.0)
        {
            Join();
        }
    }

    // The rings have taken all that lay loose: both go on at one speed, momentum kept.
    private void Join()
    {
        double before = KineticJ, spoolKg = InertiaKgM2 / (RadiusM * RadiusM);
        SpeedMS = ((_ringsKg * SpeedMS) + (spoolKg * _spoolMS)) / (_ringsKg + spoolKg);
        (_runsAhead, _looseM) = (false, 0.0);
        LossJ += before - KineticJ;
    }

    private double Viscous(double w) => _spec.MagneticNms + (_spec.CentrifugalNms2 * w) + _brake.Secant(w);

    private double Dry() => _spec.FrictionNm + _brake.DryNm + (_spec.ThumbFriction * _spec.ThumbPressN * RadiusM * _thumb);
}
