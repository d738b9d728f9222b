using LureSim.Cli.Running;
using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Cast;

namespace LureSim.Cli.Commands;

/// <summary><c>cast --rod-power</c>: which power of rod casts lures of 7 to 40 g farthest.</summary>
internal static class CastPowerCommand
{
    /// <summary>Runs the table.</summary>
    /// <param name="values">Common options.</param>
    /// <param name="scenario">The scenario, valid.</param>
    /// <param name="threads">Most threads, at least 1.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static int Run(CommonValues values, ScenarioResult scenario, int threads, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        PowerTable table;
        using (var progress = new ProgressLine("cast", terminal, values.Quiet))
        {
            table = PowerTableStudy.Run(scenario.Setup!, scenario.Cast!, threads, progress.Report, stop);
        }

        EffectiveScenario own = scenario.Effective();
        RunNotes notes = Capabilities.Notes(Capabilities.Cast, scenario, own, values);
        if (folder is not null)
        {
            PowerTableFiles.Write(folder, table, own.ToToml(), notes, values.Plots);
        }

        terminal.Print(values, stream => PowerTableFiles.WriteJson(stream, table, notes), () => PowerTableText.Build(table, notes));
        return table.Cells.All(r => r.All(c => c.Failure is not null)) ? ExitCode.NotFinished : ExitCode.Done;
    }
}
