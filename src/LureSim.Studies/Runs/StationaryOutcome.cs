using LureSim.Model;
using LureSim.Model.Retrieve;

namespace LureSim.Studies.Runs;

/// <summary>What one stationary retrieve gave, small enough to keep by the thousand.</summary>
/// <param name="Summary">Its figures; null when the run failed.</param>
/// <param name="Failure">Why it failed, or null.</param>
public sealed record StationaryOutcome(RetrieveSummary? Summary, string? Failure = null)
{
    /// <summary>Pattern; null when the run failed.</summary>
    public WalkPattern? Pattern => Summary?.Pattern;

    /// <summary>Runs a retrieve and keeps its figures; a model at its end becomes <see cref="Failure"/>.</summary>
    /// <param name="spec">Specification.</param>
    /// <param name="stop">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static StationaryOutcome Of(RunSpec spec, CancellationToken stop)
    {
        try
        {
            RetrieveResult result = RetrieveRun.Execute(spec, null, stop);
            return result.Failure is null ? new(result.Summary) : Failed(result.Failure);
        }
        catch (ModelException e)
        {
            return Failed(e.Message);
        }
    }

    /// <summary>A run without figures.</summary>
    /// <param name="reason">Why.</param>
    public static StationaryOutcome Failed(string reason) => new(null, reason);
}
