using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Cadence;

/// <summary>Wrist torque that can be kept up, N m: most likely, and the ends of the guess (equal when it was measured).</summary>
/// <param name="Nm">Most likely.</param>
/// <param name="LowNm">Weak end.</param>
/// <param name="HighNm">Strong end.</param>
public readonly record struct SustainedTorque(double Nm, double LowNm, double HighNm)
{
    /// <summary>What the wrist of a scenario sustains: the value with the range of its guess, or as measured.</summary>
    /// <param name="scenario">Valid scenario.</param>
    public static SustainedTorque Of(ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        double torque = scenario.Setup!.Angler.SustainedTorqueNm;
        return scenario.Values.Has(AnglerKeys.SustainedTorque)
            ? new(torque, torque, torque)
            : new(torque, AnglerKeys.SustainedTorque.GuessLow, AnglerKeys.SustainedTorque.GuessHigh);
    }
}

/// <summary>
/// Up to which rhythm the wrist keeps up: where its root-mean-square torque first exceeds what it sustains, by linear
/// interpolation between the sampled rhythms.
/// </summary>
/// <param name="ToPerS">Fastest rhythm from the slow end, twitches per second; NaN when even the slowest is too much.</param>
/// <param name="ToIsRangeEnd">Every rhythm tried can be kept up.</param>
public readonly record struct WristLimit(double ToPerS, bool ToIsRangeEnd)
{
    /// <summary>Finds it.</summary>
    /// <param name="points">Sampled rhythms, rising.</param>
    /// <param name="torqueNm">Torque that can be kept up, N m.</param>
    public static WristLimit Find(IReadOnlyList<RhythmPoint> points, double torqueNm)
    {
        ArgumentNullException.ThrowIfNull(points);
        double[] at = [.. points.Select(p => p.PerS)], torque = [.. points.Select(p => p.Median(o => o.WristTorqueRmsNm))];
        double crossing = Interpolation.FirstAbove(at, torque, torqueNm);
        return double.IsNaN(crossing) ? new(at[^1], true) : crossing <= at[0] ? new(double.NaN, false) : new(crossing, false);
    }
}
