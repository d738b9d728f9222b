namespace LureSim.References.Ode;

/// <summary>Proportional-integral step control for a pair whose estimate has order 5.</summary>
/// <remarks>K. Gustafsson, ACM TOMS 17 (1991) 533; constants of Hairer, Norsett, Wanner I, code DOPRI5 (from memory):
/// h_new = 0.9 h err^(-(0.2 - 0.75 beta)) err_old^beta, beta = 0.04.</remarks>
internal sealed class PiControl(AdaptiveSteps rule) : IStepControl
{
    private const double Beta = 0.04;
    private const double Exponent = 0.2 - (0.75 * Beta);
    private const double Safety = 0.9;
    private const double Shrink = 0.2;
    private const double Grow = 10.0;

    /// <summary>Factor after a step that is not finite: nothing is known but that it was too long.</summary>
    private const double ShrinkBlind = 0.1;

    /// <summary>Smallest useful step in units in the last place of t: the stages must still differ in time.</summary>
    private const double SmallestUlps = 16.0;

    private double _h;
    private double _errorOld;
    private bool _rejected;
    private bool _finite;

    public void Restart(Stepper stepper, double limit)
    {
        _errorOld = 1e-4;
        _rejected = false;
        _finite = true;
        _h = Math.Max(InitialStep.Guess(stepper, rule, limit), Smallest(stepper.T0));
    }

    public double Next(double t, double limit)
    {
        double h = Math.Min(_h, rule.LargestStep);
        double left = limit - t;
        if (left <= h)
        {
            return limit;
        }

        // Two even steps instead of one and a sliver.
        return left < 2.0 * h ? t + (0.5 * left) : t + h;
    }

    public bool Accepts(Stepper stepper)
    {
        double tried = stepper.T1 - stepper.T0;
        double error = stepper.Error(rule);
        _finite = double.IsFinite(error) && Finite.All(stepper.Y1);
        if (!_finite)
        {
            _h = ShrinkBlind * tried;
            _rejected = true;
            return false;
        }

        double integral = Math.Pow(error, Exponent);
        if (error > 1.0)
        {
            _h = tried * Math.Max(Shrink, Safety / integral);
            _rejected = true;
            return false;
        }

        // An error of 0 gives infinity here, which the clamp turns into the largest growth.
        double factor = Math.Clamp(Safety * Math.Pow(_errorOld, Beta) / integral, Shrink, _rejected ? 1.0 : Grow);
        _h = tried * factor;
        _errorOld = Math.Max(error, 1e-4);
        _rejected = false;
        return true;
    }

    public OdeStatus? Failure(double t)
    {
        if (_h >= Smallest(t))
        {
            return null;
        }

        return _finite ? OdeStatus.StepTooSmall : OdeStatus.NotFinite;
    }

    private static double Smallest(double t) => SmallestUlps * (Math.BitIncrement(Math.Abs(t)) - Math.Abs(t));
}
