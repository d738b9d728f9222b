namespace LureSim.References.Ode;

/// <summary>Equal steps between stops, none above the given one.</summary>
internal sealed class FixedControl(double largest) : IStepControl
{
    private long _left;

    public void Restart(Stepper stepper, double limit)
    {
        // Rounding must not turn n steps into n + 1: a share of 1e-9 of a step is forgiven.
        double count = Math.Ceiling(((limit - stepper.T0) / largest) - 1e-9);
        _left = (long)Math.Clamp(count, 1.0, 1e18);
    }

    // Dividing what is left keeps rounding from piling up and lands on the limit itself.
    public double Next(double t, double limit) => _left <= 1 ? limit : t + ((limit - t) / _left);

    public bool Accepts(Stepper stepper)
    {
        _left--;
        return Finite.All(stepper.Y1);
    }

    public OdeStatus? Failure(double t) => OdeStatus.NotFinite;
}
