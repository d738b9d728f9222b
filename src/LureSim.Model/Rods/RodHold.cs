namespace LureSim.Model.Rods;

/// <summary>What a bent rod in the hands holds, by statics: the lever of the bent rod decides, not its length.</summary>
internal static class RodHold
{
    // Beyond this pull the line lies along the rod and no torque limits it, N.
    private const double MostN = 2000.0;

    private const double FirstN = 0.5;
    private const int Halvings = 40;

    /// <summary>Least pull of a given direction at the tip whose torque on the hands, rod bent, reaches what they hold, N; <see cref="MostN"/> where none does.</summary>
    /// <param name="chain">Rod.</param>
    /// <param name="buttRad">Butt over the x axis, rad.</param>
    /// <param name="pullX">Direction of the pull along x, unit.</param>
    /// <param name="pullY">Same along y.</param>
    /// <param name="torqueNm">Torque of the hands against the pull, N m, positive.</param>
    /// <param name="gravityMS2">g along -y on the rod itself, m/s2.</param>
    public static double PullN(RodChain chain, double buttRad, double pullX, double pullY, double torqueNm, double gravityMS2)
    {
        double low = 0.0, high = FirstN;
        while (Torque(high) < torqueNm)
        {
            (low, high) = (high, 1.5 * high);
            if (high > MostN)
            {
                return MostN;
            }
        }

        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Torque(middle) < torqueNm ? (middle, high) : (low, middle);
        }

        return high;

        double Torque(double pull) => Math.Abs(RodStatics.Solve(chain, buttRad, pull * pullX, pull * pullY, gravityMS2).ButtMomentNm);
    }

    /// <summary>Torque on the grip that a rod bears, N m: with so many power loads hung from the tip, butt 45 deg over the level.</summary>
    /// <param name="chain">Rod.</param>
    /// <param name="loadN">Load, N.</param>
    public static double BearsNm(RodChain chain, double loadN) => Math.Abs(RodStatics.Solve(chain, 0.25 * Math.PI, 0.0, -loadN, Physics.GravityMS2).ButtMomentNm);
}
