namespace LureSim.Model.Reels;

/// <summary>
/// A revolving spool: I(P) w' = R(P) T - c_m w - c_c w^2 - M_0 - thumb, u = R w. Radius and inertia fall as line leaves;
/// leaving line carries its own momentum with it, so no term of I' is left in w'. I is that of the bare spool and of the line left on
/// it, so that no line can carry off more than it brought (I' = -mu R^2).
/// </summary>
internal sealed class FreeSpool : ReelFeed
{
    private readonly SpoolSpec _spec;
    private readonly WoundLine _wound;
    private double _thumb;

    /// <summary>Creates the spool.</summary>
    /// <param name="spec">Inertia, brakes, thumb.</param>
    /// <param name="radiusM">R_0, radius of the wound line at the start, m.</param>
    /// <param name="linearDensityKgM">mu of the wet line, kg/m.</param>
    /// <param name="diameterM">Outer diameter of the line, m.</param>
    public FreeSpool(SpoolSpec spec, double radiusM, double linearDensityKgM, double diameterM)
    {
        _spec = spec;
        _wound = new WoundLine(radiusM, spec.WidthM, spec.Packing, diameterM, linearDensityKgM, spec.LineM);
        LineM = spec.LineM;
        if (_wound.CoreSquaredM2 <= 0.0)
        {
            double most = WoundLine.Capacity(0.0, radiusM, spec.WidthM, spec.Packing, diameterM);
            throw new ArgumentException($"{LineM} m of this line do not fit on the spool, which holds {most:F0} m down to its axle.", nameof(spec));
        }
    }

    /// <summary>R, radius of the wound line now, m.</summary>
    public double RadiusM => _wound.RadiusM(GoneM);

    /// <summary>I, inertia of spool and line now, kg m2.</summary>
    public double InertiaKgM2 => _spec.InertiaKgM2 + _wound.InertiaKgM2(GoneM);

    public override double SpinRadS => SpeedMS / RadiusM;

    public override double LoopM => 2.0 * Math.PI * RadiusM;

    public override double KineticJ => 0.5 * InertiaKgM2 * SpinRadS * SpinRadS;

    private double GoneM => Math.Min(PaidM, LineM);

    public override void CopyFrom(ReelFeed other)
    {
        base.CopyFrom(other);
        _thumb = ((FreeSpool)other)._thumb;
    }

    protected override (double Free, double Inverse) Linearise(double h)
    {
        double r = RadiusM, w = SpeedMS / r, mid = Math.Max(0.0, (SpeedMS + (0.5 * h * Accel)) / r);
        double viscous = _spec.MagneticNms + (_spec.CentrifugalNms2 * mid);
        double dry = Dry();
        double inertia = InertiaKgM2 + (0.5 * h * viscous);

        // R' w from the falling radius: u' = R w' + R' w, with R' = -slope u / (2 R).
        double shrink = -0.5 * _wound.SlopeM * mid * mid;
        return ((-r * ((viscous * w) + dry) / inertia) + shrink, r * r / inertia);
    }

    protected override void Settle(double h, double tensionN, double looseM, double before)
    {
        double w = 0.5 * (before + SpeedMS) / RadiusM;
        LossJ += h * w * (((_spec.MagneticNms + (_spec.CentrifugalNms2 * w)) * w) + Dry());
        double u = 0.5 * (before + SpeedMS);
        GivenJ += 0.5 * _wound.LineKgM * u * u * u * h;
        double wish = Math.Clamp(looseM / _spec.ThumbFullM, 0.0, 1.0);
        _thumb += (wish - _thumb) * (_spec.ThumbDelayS > 0.0 ? 1.0 - Math.Exp(-h / _spec.ThumbDelayS) : 1.0);
    }

    private double Dry() => _spec.FrictionNm + (_spec.ThumbNm * _thumb);
}
