using LureSim.Model.Rods;

namespace LureSim.Validation.RodChecks;

/// <summary>What a flexible rod can add to the speed of its tip.</summary>
public static class ShockSpectrum
{
    [PublishedCheck]
    public static Check SuddenlyTurnedButt()
    {
        // A tip mass a thousand times the rod leaves one mode that takes part; its participation must come out as 1.
        RodChain chain = RodChain.Build(new RodTaper(2.0, 10.0, 0.02, 0.25, 3.0, 1.5, 0.01), 10, 30.0);
        RodModeSet modes = RodModes.Compute(chain, 0.0);
        var rows = new List<Row>();
        foreach ((double ratio, double exact) in new[]
        {
            (0.25, 1.90032), (0.5, 1.63662), (0.75, 1.30011), (1.0, 1.0), (1.5, 1.21221), (2.0, 1.0), (2.5, 1.12732),
        })
        {
            rows.Add(new Row($"peak tip speed over butt speed, ramp {ratio} of the period", "-", exact, Peak(modes, ratio, 400), 5e-4, Tol.Absolute));
        }

        return new Check("B8", "Butt turned up to speed in a ramp: gain of the tip of a one-mode rod, never above 2",
            "1 + |sin(pi r)|/(pi r); Chopra, Dynamics of Structures, sec. 4.5; Biggs 1964 (from memory)",
            "The rod still weighs a thousandth of its tip mass, which moves its share in the mode by up to 5e-4; the step adds 1e-6.",
            rows, new Ladder("steps", "peak at ramp 0.5", [.. new[] { 10, 20, 40 }.Select(n => ((double)n, Math.Abs(Peak(modes, 0.5, n) - Peak(modes, 0.5, 3200))))],
                3.8, "the trapezoidal rule errs by order 2 in the phase, and at half a period the gain is stationary in the phase: order 4; 0.2 for the next term"));
    }

    // Trapezoidal steps over the ramp of mode 1 alone, then its free swing in closed form.
    private static double Peak(RodModeSet modes, double ratio, int steps)
    {
        double omega = modes.AngularFrequency(0), ramp = ratio * 2.0 * Math.PI / omega, h = ramp / steps;
        double drive = -modes.BaseParticipationKg[0] / (modes.MassKg[0] * ramp);
        double q = 0.0, v = 0.0;
        for (int i = 0; i < steps; i++)
        {
            double a = (drive - (omega * omega * (q + (0.5 * h * v)))) / (1.0 + (0.25 * h * h * omega * omega));
            q += (h * v) + (0.5 * h * h * a);
            v += h * a;
        }

        return 1.0 + Math.Sqrt((v * v) + (omega * omega * q * q));
    }
}
