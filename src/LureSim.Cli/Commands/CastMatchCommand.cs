using LureSim.Cli.Running;
using LureSim.Reports.Cast;
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
            faults.ForEach(terminal.Error.WriteLine);
            return ExitCode.BadInput;
        }

        EffectiveScenario effective = scenario.Effective();
        MatchReport report;
        try
        {
            using var progress = new ProgressLine("match", terminal, values.Quiet);
            report = match.Run(scenario, measured, threads, progress.Report, stop);
        }
        catch (AggregateException e) when (e.Flatten().InnerExceptions.FirstOrDefault(MatchOfScenario.Explains) is Exception inner)
        {
            terminal.Error.WriteLine($"--match: {inner.Message.Split('\n')[0]}");
            return ExitCode.BadInput;
        }

        RunNotes notes = Capabilities.Notes(Capabilities.Cast, scenario, effective);
        if (values.Folder is not null)
        {
            MatchFiles.Write(values.Folder, report, effective.ToToml(), notes, values.Plots);
        }

        terminal.Print(values, stream => MatchFiles.WriteJson(stream, report, notes), () => MatchText.Build(report, notes, values.Folder));
        return ExitCode.Done;
    }
}
