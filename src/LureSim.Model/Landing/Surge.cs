using LureSim.Model.Fish;

namespace LureSim.Model.Landing;

/// <summary>
/// A fish that bolts from a tight line with its drag locked: its mass against the spring of line and rod, with its thrust and the drag of water,
/// dE = (P (1 - v/v_top) - rho CdA v^2/2 - T) dx, E = m v^2/2, m with added water, T(x) the spring. The pull is largest where it stands still.
/// </summary>
internal static class Surge
{
    // The error falls with the square of the step; this one leaves some 1e-4 (a test).
    private const double UsualStep = 0.02, FirstStepsN = 12.5;

    /// <summary>Largest pull, N.</summary>
    /// <param name="fish">Fish; it starts at its top speed.</param>
    /// <param name="densityKgM3">Density of the water, kg/m3.</param>
    /// <param name="startN">Pull at which the line is held when it bolts, N.</param>
    /// <param name="giveM">x(T): way that line and rod give to a pull, m; it grows without end.</param>
    /// <param name="step">Step of the pull over its rise so far.</param>
    public static double PeakN(FishSpec fish, double densityKgM3, double startN, Func<double, double> giveM, double step = UsualStep)
    {
        double mass = fish.MassKg * (1.0 + fish.AddedMassShare), energy = 0.5 * mass * fish.SpeedMS * fish.SpeedMS;
        double Force(double e)
        {
            double v = Math.Sqrt(2.0 * Math.Max(0.0, e) / mass);
            return (fish.PullN * (1.0 - (v / fish.SpeedMS))) - (0.5 * densityKgM3 * fish.DragAreaM2 * v * v);
        }

        double pull = startN, way = giveM(startN), force = Force(energy);
        while (true)
        {
            double next = pull + (step * Math.Max(FirstStepsN, pull - startN)), to = giveM(next), moved = to - way;
            double spent = energy - (0.5 * (pull + next) * moved), guess = Force(spent + (force * moved));
            double left = spent + (0.5 * (force + guess) * moved);
            if (left <= 0.0)
            {
                return pull + ((next - pull) * energy / (energy - left));
            }

            (energy, pull, way, force) = (left, next, to, Force(left));
        }
    }
}
