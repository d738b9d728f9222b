using LureSim.Model.Assembly;
using LureSim.Model.Reels;

namespace LureSim.Model.Landing;

/// <summary>A reel against a fish that swims at the angler.</summary>
/// <param name="Ratio">Spool turns per handle turn.</param>
/// <param name="PerTurnM">Line won per handle turn with that line out, m.</param>
/// <param name="SteadyMS">Line won per second at the turns that are kept up, m/s: a faster fish makes slack.</param>
/// <param name="BurstMS">The same in a short burst, m/s.</param>
public sealed record TakeUpRace(double Ratio, double PerTurnM, double SteadyMS, double BurstMS)
{
    /// <summary>Ratios that are compared.</summary>
    public static ValueList<double> Ratios { get; } = [6.3, 7.0, 8.0];

    /// <summary>Slack that builds up in a second in a short burst, m/s; 0 while the line stays tight.</summary>
    /// <param name="fishMS">Speed of the fish toward the angler, m/s.</param>
    public double SlackMS(double fishMS) => Math.Max(0.0, fishMS - BurstMS);

    /// <summary>Of a set-up with another ratio.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Where, and turns of the handle.</param>
    /// <param name="ratio">Spool turns per handle turn.</param>
    public static TakeUpRace Of(Setup setup, LandingTask task, double ratio)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        double turn = HandleTurn.TakeUpM(setup.Reel with { Ratio = ratio }, setup.Line, task.DistanceM);
        return new(ratio, turn, task.SteadyTurnsS * turn, task.BurstTurnsS * turn);
    }

    /// <summary>Line won once by sweeping the rod back, m: an unbent rod's tip along the line, and the way of the hands. It is given back when the rod goes
    /// forward again, unless the reel takes it.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Angles and travel of the sweep.</param>
    public static double SweepM(Setup setup, LandingTask task)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        return (setup.Rod.FreeLengthM * (Math.Sin(task.StopRad) - Math.Sin(task.StartRad))) + task.TravelM;
    }
}
