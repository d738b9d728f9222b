namespace LureSim.Model.Reels;

/// <summary>
/// A fixed spool: the line leaves it against T = c_g (T_0 + K mu u^2). A small pseudo-mass carries the speed u, since the
/// bare law u(T) chatters.
/// </summary>
/// <param name="spec">K, T_0, c_g.</param>
/// <param name="linearDensityKgM">mu of the wet line, kg/m.</param>
/// <param name="pseudoMassKg">Carrier of u, a thousandth of the lure.</param>
/// <param name="radiusM">Radius of the wound line, m.</param>
internal sealed class FixedSpool(FixedSpoolSpec spec, double linearDensityKgM, double pseudoMassKg, double radiusM) : ReelFeed
{
    private readonly double _square = spec.RingFactor * spec.PickUpFactor * linearDensityKgM;
    private readonly double _rest = spec.RingFactor * spec.RestTensionN;

    public override double KineticJ => 0.5 * pseudoMassKg * SpeedMS * SpeedMS;

    public override double LoopM => 2.0 * Math.PI * radiusM;

    protected override (double Free, double Inverse) Linearise(double h)
    {
        // Newton's slope of u^2 about the last midpoint keeps the stiff law in the step.
        double mid = Math.Max(0.0, SpeedMS + (0.5 * h * Accel)), slope = 2.0 * _square * mid;
        double mass = pseudoMassKg + (0.5 * h * slope);
        double drag = _rest - (_square * mid * mid) + (slope * SpeedMS);
        return (-drag / mass, 1.0 / mass);
    }

    protected override void Settle(double h, double tensionN, double before)
    {
        double reaction = SpeedMS > 0.0 ? tensionN - (pseudoMassKg * (SpeedMS - before) / h) : 0.0;
        LossJ += reaction * 0.5 * (before + SpeedMS) * h;
    }
}
