using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;

namespace LureSim.Studies.Tests.Support;

/// <summary>Casts without physics: what goes in comes out.</summary>
internal static class MadeUpCast
{
    // P10 to P90 of a normal distribution with a sigma of 1, halved; tables.
    private const double TenthSigmas = 1.2815515655446004;

    /// <summary>A cast as far as said, many of them on the mean as far as said.</summary>
    public static CastResult Result(Setup setup, CastTask task, double distanceM, double meanM, double sigmaM = 1.0, double loops = 0.0) => new()
    {
        Setup = setup,
        Task = task,
        DistanceM = distanceM,
        DistanceMeanM = meanM,
        DistanceP10M = meanM - (TenthSigmas * sigmaM),
        DistanceP90M = meanM + (TenthSigmas * sigmaM),
        LineOutM = distanceM,
        LaunchSpeedMS = 20,
        LaunchAngleRad = 0.6,
        FlightTimeS = 2,
        ApexM = 6,
        StartAngleRad = -1.2,
        ReleaseTimeS = 0.4,
        ReleaseAngleRad = 0.3,
        ReleaseTurnRadS = 12,
        ReleaseCurve = [new(0, 0, loops)],
        PeakBendShare = 0.3,
        PeakBendEnergyJ = 4,
        PeakHandTorqueNm = 16,
        PeakTensionN = 9,
        SpoolPeakRpm = 0,
        LoopsThrown = loops,
        LoopsMean = loops,
        TangleShare = 0.05 * loops,
        Energy = new CastEnergy(10, 10, 0, 0, 0, 0, 0, 0, 0, 0, 0),
        Series = new CastSeries([], [], [], [], [], [], [], [], [], [], [], [], [], [], []),
        Remarks = CastRemarks.None,
    };

    /// <summary>Casts whose distance is a function of the effort, and whose mean is five sixths of it.</summary>
    public static Func<Setup, CastTask, Outcome<CastResult>> OfEffort(Func<double, double> distance) => (setup, task) =>
    {
        double far = distance(setup.Hands.Effort);
        return new(Result(setup, task, far, far * 5.0 / 6.0));
    };
}
