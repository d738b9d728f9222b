using LureSim.Model.Hands;
using LureSim.Model.Rods;

namespace LureSim.Model.Assembly;

/// <summary>How high the rod tip stands over flat water: hand height, rod angle and length, and the rod's own sag.</summary>
/// <remarks>Static: the bend by the pull lies along the stroke, which is nearly level; a tip that whips past its path is not counted.</remarks>
/// <param name="RestM">At rest, m; negative: under water.</param>
/// <param name="LowM">At the lowest point of the stroke, m.</param>
/// <param name="SagM">Part of both that the rod's own weight takes, m.</param>
public sealed record TipClearance(double RestM, double LowM, double SagM)
{
    /// <summary>Of a set-up.</summary>
    /// <param name="angler">Stance.</param>
    /// <param name="rod">Rod.</param>
    /// <param name="strokeM">B, rigid tip travel of a twitch, m, not negative.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    /// <exception cref="ModelException">The rod bends down under its own weight.</exception>
    public static TipClearance Of(AnglerSpec angler, RodSpec rod, double strokeM)
    {
        ArgumentNullException.ThrowIfNull(angler);
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentOutOfRangeException.ThrowIfNegative(strokeM);
        double length = rod.FreeLengthM;
        var swing = new WristSwing(angler, length, strokeM, new Twitch(1.0, angler.PullTimeS, angler.ReturnTimeS, angler.ReturnShare));
        RodShape shape = RodStatics.Solve(RodChain.Build(rod), angler.RodElevationRad, 0.0, 0.0, RodPower.GravityMS2);
        double sag = (length * Math.Sin(angler.RodElevationRad)) - shape.TipYM, rest = swing.TipHeightM - sag;
        return new(rest, rest + Lowest(swing, length, strokeM / length), sag);
    }

    // Lowest height over the arc, above the height at rest: at an end, or where the arc is level.
    private static double Lowest(WristSwing swing, double length, double angle)
    {
        double Height(double a) => length * ((Math.Cos(a) * swing.Along.Z) + (Math.Sin(a) * swing.Pull.Z) - swing.Along.Z);
        double level = Math.Atan2(-swing.Pull.Z, -swing.Along.Z);
        double low = Math.Min(0.0, Height(angle));
        return level > 0.0 && level < angle ? Math.Min(low, Height(level)) : low;
    }
}
