using LureSim.Cli.Running;
using LureSim.Model;
using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Cast;

namespace LureSim.Cli.Commands;

/// <summary><c>cast --match</c>: the effort that explains measured casts.</summary>
internal static class CastMatchCommand
{
    /// <summary>Runs the fit.</summary>
    /// <param name="values">Common options.</param>
    /// <param name="scenario">The scenario, valid.</param>
    /// <param name="casts">What was measured.</param>
    /// <param name="threads">Most threads, at least 1.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static int Run(
        CommonValues values, ScenarioResult scenario, IReadOnlyList<MeasuredCastText> casts, int threads, Terminal terminal, CancellationToken stop)
    {
        var match = new MatchOfScenario(ScenarioSource.Load(values.File, Activities.Cast), values.Overrides, casts);
        var faults = new List<ScenarioFault>();
        MeasuredCast[] measured = match.Specs([], faults);
        if (faults.Count > 0)
        {
            terminal.Tell(faults);
            return ExitCode.BadInput;
        }

        using OutputFolder? folder = values.Open(stop);
        EffectiveScenario effective = scenario.Effective();
        Outcome<MatchReport> outcome = Fit(values, match, scenario, measured, threads, terminal, stop);
        if (!outcome.IsWhole)
        {
            terminal.Error.WriteLine($"--match: {outcome.Failure.Reason}");
            return ExitCode.BadInput;
        }

        MatchReport report = outcome.Result;
        RunNotes notes = Capabilities.Notes(Capabilities.Cast, scenario, effective, values);
        if (folder is not null)
        {
            MatchFiles.Write(folder, report, effective.ToToml(), notes, values.Plots);
        }

        terminal.Print(values, stream => MatchFiles.WriteJson(stream, report, notes), () => MatchText.Build(report, notes, values.Folder));
        return ExitCode.Done;
    }

    private static Outcome<MatchReport> Fit(
        CommonValues values, MatchOfScenario match, ScenarioResult scenario, MeasuredCast[] measured, int threads, Terminal terminal, CancellationToken stop)
    {
        using var progress = new ProgressLine("match", terminal, values.Quiet);
        try
        {
            return match.Run(scenario, measured, threads, progress.Report, stop);
        }
        catch (ArgumentException e)
        {
            return new(null, new(e.Message.Split('\n')[0], 0.0));
        }
    }
}
