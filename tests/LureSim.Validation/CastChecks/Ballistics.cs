using LureSim.Model.Cast;

namespace LureSim.Validation.CastChecks;

/// <summary>Flight of the lure without its line.</summary>
public static class Ballistics
{
    private const double Kg = 0.02;
    private const double Straight = double.PositiveInfinity;

    [PublishedCheck]
    public static Check NoDrag()
    {
        var rows = new List<Row>();
        foreach ((double v, double degrees, double height, double range) in new[]
        {
            (10.0, 45.0, 0.0, 10.19716), (20.0, 45.0, 0.0, 40.78865), (30.0, 45.0, 0.0, 91.77446), (40.0, 45.0, 0.0, 163.15459),
            (30.0, 44.69120, 1.0, 92.76907), (30.0, 44.38896, 2.0, 93.75313),
        })
        {
            rows.Add(new Row($"range at {v} m/s, {degrees} deg, from {height} m", "m", range, Fly(v, degrees, height, 0.0, 1e-3).X, 1e-6, Tol.Relative));
        }

        return new Check("P1", "Range without drag, from the water's level and from a height",
            "parabola; recomputed with g = 9.80665 m/s2",
            "The step is exact for constant acceleration; the last digit printed and the straight line through the last step (1e-7).", rows);
    }

    [PublishedCheck]
    public static Check LinearDrag()
    {
        var rows = new List<Row>();
        foreach ((double v, double degrees, double k, double range, double time) in new[]
        {
            (30.0, 45.0, 0.1, 70.69051817, 4.05322566), (30.0, 45.0, 0.5, 34.69207455, 3.40420362), (30.0, 45.0, 1.0, 20.16412847, 3.00671500),
            (20.0, 30.0, 0.25, 26.09942168, 1.89099086), (25.0, 40.0, 0.2, 43.01987504, 2.98253187),
        })
        {
            (double x, double t, _) = FlyLinear(v, degrees, k, 5e-4);
            rows.Add(new Row($"range, {v} m/s, {degrees} deg, k = {k} 1/s", "m", range, x, 2e-7, Tol.Relative));
            rows.Add(new Row($"flight time, {v} m/s, {degrees} deg, k = {k} 1/s", "s", time, t, 2e-7, Tol.Relative));
        }

        return new Check("P2", "Flight with drag that grows with the speed itself: range and time by Lambert's W",
            "Packel and Yuen 2004, College Math. J. 35:337; Warburton and Wang 2004, Am. J. Phys. 72:1404; recomputed",
            "Second order in the step (ladder): below 1e-8 at 0.5 ms; the straight line through the last step and the start a micrometre up leave 7e-8.", rows,
            new Ladder("1/dt, 1/s", "range, k = 1, relative",
                [.. new[] { 1.6e-2, 8e-3, 4e-3, 2e-3 }.Select(h => (1.0 / h, Math.Abs((FlyLinear(30.0, 45.0, 1.0, h).X / 20.16412847) - 1.0)))],
                1.9, "order 2; 0.1 for the next term. Below 2 ms the straight line through the last step and the start a micrometre up leave 1e-8"));
    }

    [PublishedCheck]
    public static Check QuadraticDrag()
    {
        const double v = 30.0;
        var rows = new List<Row>();
        foreach ((double beta, double range, double time, double apex) in new[]
        {
            (0.1, 0.9283813, 1.3857590, 0.2400891), (0.5, 0.7320093, 1.2919744, 0.2092735), (1.0, 0.5890118, 1.2047248, 0.1827636),
            (4.0, 0.2944446, 0.9380417, 0.1127162), (10.0, 0.1595633, 0.7348467, 0.0700330),
        })
        {
            (double x, double t, double z) = Fly(v, 45.0, 0.0, beta, 5e-4);
            double length = v * v / Bench.Gravity;
            rows.Add(new Row($"range, beta = {beta}", "v0^2/g", range, x / length, 5e-6, Tol.Relative));
            rows.Add(new Row($"flight time, beta = {beta}", "v0/g", time, t * Bench.Gravity / v, 5e-6, Tol.Relative));
            rows.Add(new Row($"apex, beta = {beta}", "v0^2/g", apex, z / length, 5e-6, Tol.Relative));
        }

        return new Check("P3", "Flight with drag that grows with the square of the speed, beta = v0^2/v_terminal^2, 45 deg",
            "derived, recomputed with an eighth-order method to 1e-13; no published table of this shape was found",
            "Second order in the step (ladder): below 5e-6 at 0.5 ms for the strongest drag.", rows,
            new Ladder("1/dt, 1/s", "range, beta = 10, relative",
                [.. new[] { 1.6e-2, 8e-3, 4e-3, 2e-3 }.Select(h => (1.0 / h, Math.Abs((Fly(v, 45.0, 0.0, 10.0, h).X * Bench.Gravity / (v * v) / 0.1595633) - 1.0)))],
                1.9, "order 2; 0.1 for the next term. Below 2 ms the seven digits of the expected value leave 2e-7"));
    }

    private static (double X, double Time, double Apex) FlyLinear(double v, double degrees, double k, double h)
    {
        var flight = Bench.Launch(Bench.Nothing, Bench.Free(Kg), Kg, 0.0, 0.0, Bench.Gravity, Straight, 0.0, k * Kg);
        flight.Reel.SpeedMS = 2.0 * v;
        flight.Start(1e-6, Math.PI / 2.0, v, degrees * Math.PI / 180.0);
        return flight.Splash(h);
    }

    // The reel runs ahead of the lure, so the line stays slack.
    private static (double X, double Time, double Apex) Fly(double v, double degrees, double height, double beta, double h)
    {
        var probe = Bench.Launch(Bench.Nothing, Bench.Free(Kg), Kg, 0.0, 0.0, Bench.Gravity, Straight, height);
        double cdA = 2.0 * Kg * Bench.Gravity * beta / (probe.AirDensity * v * v);
        var flight = Bench.Launch(Bench.Nothing, Bench.Free(Kg), Kg, cdA, 0.0, Bench.Gravity, Straight, height);
        flight.Reel.SpeedMS = 2.0 * v;
        double angle = degrees * Math.PI / 180.0;

        // A micrometre above the water, or a start at height 0 would be its own end.
        flight.Start(1e-6, Math.PI / 2.0, v, angle);
        return flight.Splash(h);
    }
}
