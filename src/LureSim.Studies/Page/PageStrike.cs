using LureSim.Model;
using LureSim.Scenarios;
using LureSim.Studies.Strike;

namespace LureSim.Studies.Page;

/// <summary>The strike of a file for its page.</summary>
/// <param name="Report">Strike without curves over the distance, or null.</param>
/// <param name="Fault">Why there is none, or null.</param>
internal sealed record PageStrike(StrikeReport? Report, string? Fault)
{
    /// <summary>Computes it, on one thread.</summary>
    /// <param name="file">The file whose strike it is.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static PageStrike Of(PageFile file, CancellationToken stop)
    {
        ScenarioResult scenario = ScenarioSource.Read(file.Source.Name, file.Overrides, Activities.Strike);
        if (scenario.Strike is null || scenario.Setup is null)
        {
            return new(null, scenario.Errors.Count > 0 ? scenario.Errors[0].ToString() : "the file says nothing about it");
        }

        try
        {
            Outcome<StrikeReport> outcome = StrikeStudy.Run(scenario, threads: 1, null, stop, withCurves: false);
            return new(outcome.Result, outcome.Failure?.Reason);
        }
        catch (ArgumentException e)
        {
            // What no single key could tell: a rod tip higher than the strike is far.
            return new(null, e.Message.Split('\n')[0]);
        }
    }
}
