using MathNet.Numerics;

namespace LureSim.Studies.Fit;

/// <summary>
/// The size of an angle that is read to a normal error, all in standard deviations of it: an angle of nothing is read as two thirds of an error or so, to
/// either side. A miss is the root of twice the logarithm of how much likelier the reading is at the angle that suits it best, which for large angles is
/// their difference. So a lure that comes straight is not made to sheer by its readings' errors.
/// </summary>
internal static class FoldedAngle
{
    private const int Rounds = 60;
    private const double Far = 8.0;

    /// <summary>A size that was read.</summary>
    /// <param name="measured">Size as read, not negative.</param>
    /// <param name="computed">Size computed, not negative.</param>
    public static double Miss(double measured, double computed)
    {
        double best = measured <= 1.0 ? 0.0 : measured;
        for (int i = 0; i < Rounds && best > 0.0; i++)
        {
            best = measured * Math.Tanh(measured * best);
        }

        double miss = Math.Sqrt(Math.Max(0.0, Twice(measured, computed) - Twice(measured, best)));
        return computed > best ? -miss : miss;
    }

    /// <summary>A size that was seen to lie below an end.</summary>
    /// <param name="end">End, positive.</param>
    /// <param name="computed">Size computed, not negative.</param>
    public static double MissBelow(double end, double computed) => -Math.Sqrt(Math.Max(0.0, 2.0 * (LogShare(end, 0.0) - LogShare(end, computed))));

    // Minus twice the logarithm of the density, without what does not depend on the angle.
    private static double Twice(double measured, double angle)
    {
        double off = measured - angle;
        return (off * off) - (2.0 * Math.Log(1.0 + Math.Exp(-2.0 * measured * angle)));
    }

    // Logarithm of the share of readings between -end and end; far out by the leading term of the normal tail.
    private static double LogShare(double end, double angle)
    {
        double off = angle - end;
        return off > Far
            ? (-0.5 * off * off) - Math.Log(off * Math.Sqrt(2.0 * Math.PI))
            : Math.Log(0.5 * (SpecialFunctions.Erfc(off / Math.Sqrt(2.0)) - SpecialFunctions.Erfc((angle + end) / Math.Sqrt(2.0))));
    }
}
