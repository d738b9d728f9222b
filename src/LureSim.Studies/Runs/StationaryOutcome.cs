using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;

namespace LureSim.Studies.Runs;

/// <summary>What one stationary retrieve gave, small enough to keep by the thousand.</summary>
/// <param name="Pattern">Pattern; null when the run failed.</param>
/// <param name="GlideM">Mean sideways travel per twitch, m.</param>
/// <param name="SwingDeg">Median swing of the heading, deg.</param>
/// <param name="Regularity">1 - coefficient of variation of the swing.</param>
/// <param name="AdvanceM">Mean travel toward the rod per twitch, m.</param>
/// <param name="PullReach">The same over the rigid stroke.</param>
/// <param name="ImpulseNs">Mean impulse at the nose per twitch, N s.</param>
/// <param name="WristRmsNm">Root-mean-square wrist torque, N m.</param>
/// <param name="SlackM">Mean slack, m.</param>
/// <param name="NoseDownN">Mean downward pull of line and leader on the nose, N.</param>
/// <param name="NoseDipM">Deepest dip of the line tie below its place afloat, m.</param>
/// <param name="SlackShare">Share of time with the line slack at the nose.</param>
/// <param name="LoadedTipM">Mean travel of the bent tip in a twitch, m.</param>
/// <param name="Failure">Why the run failed, or null.</param>
public sealed record StationaryOutcome(
    WalkPattern? Pattern,
    double GlideM,
    double SwingDeg,
    double Regularity,
    double AdvanceM,
    double PullReach,
    double ImpulseNs,
    double WristRmsNm,
    double SlackM,
    double NoseDownN,
    double NoseDipM,
    double SlackShare,
    double LoadedTipM,
    string? Failure = null)
{
    /// <summary>Runs a retrieve and keeps its figures; a model at its end becomes <see cref="Failure"/>.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <param name="stop">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static StationaryOutcome Of(Setup setup, RetrieveTask task, CancellationToken stop)
    {
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(setup, task, new(null, stop));
        return outcome.IsWhole ? From(outcome.Result.Summary) : Failed(outcome.Failure.Reason);
    }

    /// <summary>A run without figures.</summary>
    /// <param name="reason">Why.</param>
    public static StationaryOutcome Failed(string reason) => new(
        null, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, reason);

    private static StationaryOutcome From(RetrieveSummary s) => new(
        s.Pattern, s.GlideWidthM, s.HeadingSwingDeg, s.Regularity, s.AdvancePerTwitchM, s.PullReach, s.PullImpulseNs,
        s.WristTorqueRmsNm, s.MeanSlackM, s.NoseDownLoadN, s.NoseDipM, s.SlackShare, s.LoadedTipTravelM);
}
