using LureSim.Model.Assembly;

namespace LureSim.Model.Cast;

/// <summary>What a brake does to many casts.</summary>
/// <param name="Strength">s, torque at the launch over that of the brake which matches the lure.</param>
/// <param name="DistanceMeanM">Mean distance, m.</param>
/// <param name="LoopsMean">Mean loose line, in loops.</param>
/// <param name="TangleShare">Share of casts that tangle.</param>
public sealed record BrakePoint(double Strength, double DistanceMeanM, double LoopsMean, double TangleShare);

/// <summary>Distance and loose line of a revolving spool against the strength of its brake, each with its own best release, thumb as given.</summary>
public static class CastBrakes
{
    /// <summary>Tangles that people put up with, share of casts: one in twenty (guess).</summary>
    public const double BearableTangles = 0.05;

    /// <summary>Strengths that show the curve.</summary>
    public static IReadOnlyList<double> Strengths { get; } = [0.0, 0.5, 1.0, 2.0, 4.0, 8.0];

    /// <summary>The set-up with another brake; brakes given in numbers are taken off.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="strength">s, 0 or more.</param>
    public static Setup With(Setup setup, double strength)
    {
        ArgumentNullException.ThrowIfNull(setup);
        return setup with { Reel = setup.Reel with { Spool = setup.Reel.Spool with { BrakeStrength = strength, MagneticNms = 0.0, CentrifugalNms2 = 0.0 } } };
    }

    /// <summary>The point of the curve that a cast is.</summary>
    /// <param name="strength">s, 0 or more.</param>
    /// <param name="cast">Cast with that brake.</param>
    public static BrakePoint Point(double strength, CastResult cast)
    {
        ArgumentNullException.ThrowIfNull(cast);
        return new(strength, cast.DistanceMeanM, cast.LoopsMean, cast.TangleShare);
    }

    /// <summary>Least strength from which on no more than <see cref="BearableTangles"/> tangle, straight between the points; null when even the strongest
    /// tangles more.</summary>
    /// <param name="curve">Points, strength rising.</param>
    public static double? Least(IReadOnlyList<BrakePoint> curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        int above = curve.Count - 1;
        while (above >= 0 && curve[above].TangleShare <= BearableTangles)
        {
            above--;
        }

        if (above < 0)
        {
            return curve.Count > 0 ? curve[0].Strength : null;
        }

        if (above == curve.Count - 1)
        {
            return null;
        }

        BrakePoint from = curve[above], to = curve[above + 1];
        double share = (from.TangleShare - BearableTangles) / (from.TangleShare - to.TangleShare);
        return from.Strength + (share * (to.Strength - from.Strength));
    }
}
