namespace LureSim.Model.Rods;

/// <summary>What a bent rod in the hands holds, by statics: the lever of the bent rod decides, not its length.</summary>
internal static class RodHold
{
    /// <summary>Pulls are looked for up to here, N: beyond it the line lies along the rod and no torque limits it.</summary>
    public const double MostN = 2048.0;

    private const double FirstN = 16.0, AccuracyN = 1e-6, BearingAngleRad = 0.25 * Math.PI;

    /// <summary>Least pull of a given direction at the tip whose torque on the hands, rod bent, reaches what they hold, N; <see cref="MostN"/> where none does.</summary>
    /// <param name="chain">Rod.</param>
    /// <param name="buttRad">Butt over the x axis, rad.</param>
    /// <param name="pullX">Direction of the pull along x, unit.</param>
    /// <param name="pullY">Same along y.</param>
    /// <param name="torqueNm">Torque of the hands against the pull, N m, positive.</param>
    /// <param name="gravityMS2">g along -y on the rod itself, m/s2.</param>
    public static double PullN(RodChain chain, double buttRad, double pullX, double pullY, double torqueNm, double gravityMS2) => PullN(
        pull => RodStatics.Solve(chain, buttRad, pull * pullX, pull * pullY, gravityMS2), shape => Math.Abs(shape.ButtMomentNm), torqueNm);

    /// <summary>Pull at which a measure of the bent rod reaches a limit, N; 0 where the unloaded rod is past it, <see cref="MostN"/> where no pull is.</summary>
    /// <param name="shape">Shape under a pull, N.</param>
    /// <param name="measure">Grows with the pull.</param>
    /// <param name="limit">Limit of the measure.</param>
    public static double PullN(Func<double, RodShape> shape, Func<RodShape, double> measure, double limit)
    {
        double low = 0.0, high = FirstN;
        while (Excess(high) < 0.0)
        {
            if (high >= MostN)
            {
                return MostN;
            }

            (low, high) = (high, 2.0 * high);
        }

        return low == 0.0 && Excess(0.0) >= 0.0 ? 0.0 : MathNet.Numerics.RootFinding.Brent.FindRoot(Excess, low, high, AccuracyN, 200);

        double Excess(double pull) => measure(shape(pull)) - limit;
    }

    /// <summary>The one shape of which is known that the rod bears it: so many power loads hung from the tip, butt 45 deg over the level.</summary>
    /// <param name="chain">Rod.</param>
    /// <param name="loadN">Load, N.</param>
    public static RodShape Borne(RodChain chain, double loadN) => RodStatics.Solve(chain, BearingAngleRad, 0.0, -loadN, Physics.GravityMS2);

    /// <summary>Torque on the grip that a rod bears, N m.</summary>
    /// <param name="chain">Rod.</param>
    /// <param name="loadN">Load that it bears at 45 deg, N.</param>
    public static double BearsNm(RodChain chain, double loadN) => Math.Abs(Borne(chain, loadN).ButtMomentNm);
}
