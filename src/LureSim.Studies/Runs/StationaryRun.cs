using LureSim.Model.Retrieve;

namespace LureSim.Studies.Runs;

/// <summary>How long a stationary retrieve runs, and on which mesh. The defaults are argued by measurement in
/// <c>docs/cadence.md</c>: with 20 segments the glide of a line on the surface film is up to 40 % off, with 40 within 10 %.</summary>
/// <param name="WarmUpS">Time before twitches count, s, in a run that does not settle before.</param>
/// <param name="Twitches">Twitches counted at least, in such a run.</param>
/// <param name="Nodes">Line segments.</param>
/// <param name="StepS">Time step, s.</param>
/// <param name="ToTheEnd">True: a run goes on to its end even after its walk has settled, to compare with.</param>
public sealed record StationaryPlan(double WarmUpS = 18.0, int Twitches = 24, int Nodes = 40, double StepS = 1e-3, bool ToTheEnd = false);

/// <summary>Makes one retrieve stationary: the distance is held, so that the answer to a rhythm can be counted. It ends when its walk has
/// settled.</summary>
public static class StationaryRun
{
    // A retrieve uses at most two thirds of its duration as warm-up.
    private const double DurationOverWarmUp = 1.5;

    /// <summary>The stationary run of a retrieve at its own rhythm, start, mesh and step.</summary>
    /// <param name="task">Retrieve.</param>
    public static RetrieveTask Make(RetrieveTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        return Make(task, task.CadencePerS, new(task.StartHeadingRad, task.StartSidewaysM), new StationaryPlan(Nodes: task.Solver.Nodes, StepS: task.Solver.StepS));
    }

    /// <summary>The task of a stationary run.</summary>
    /// <param name="task">Retrieve.</param>
    /// <param name="cadencePerS">Rhythm, twitches per second.</param>
    /// <param name="start">How it starts.</param>
    /// <param name="plan">Length and mesh.</param>
    /// <param name="takeUpMS">Take-up speed that the hand starts with, m/s; null = as a retrieve does.</param>
    public static RetrieveTask Make(RetrieveTask task, double cadencePerS, WalkStart start, StationaryPlan plan, double? takeUpMS = null)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(plan);
        double counted = (Math.Ceiling(plan.WarmUpS * cadencePerS) + plan.Twitches + 0.5) / cadencePerS;
        return task with
        {
            CadencePerS = cadencePerS,
            HoldDistance = true,
            StartHeadingRad = start.HeadingRad,
            StartSidewaysM = start.SidewaysM,
            WarmUpS = plan.WarmUpS,
            EndsWhenSettled = !plan.ToTheEnd,
            StartTakeUpMS = takeUpMS,
            DurationS = Math.Max(counted, DurationOverWarmUp * plan.WarmUpS),
            Solver = task.Solver with { Nodes = plan.Nodes, StepS = plan.StepS },
        };
    }
}
