using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Model.Trim;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Trim;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Trim;

namespace LureSim.Cli.Trim;

/// <summary><c>trim</c>: how the lure floats at rest.</summary>
internal static class TrimCommand
{
    /// <summary>The capability: command and summary.</summary>
    public static Capability Capability { get; } = new(Create, new TrimSource());

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var command = new Command("trim", "Float the lure at rest: attitude, waterline, what stands it up, what dips its nose.");
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            CommonValues values = options.Read(parsed, "trim");
            return ScenarioInput.Read(values, [], terminal, Capability.Figures!.Asks) is ScenarioResult scenario
                ? Run(values, scenario, terminal, stop)
                : ExitCode.BadInput;
        });
        return command;
    }

    private static int Run(CommonValues values, ScenarioResult scenario, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        TrimResult trim = TrimSource.AtRest(scenario, stop);
        string title = scenario.Setup!.Title;
        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Capabilities.Notes(Capability.Figures!, scenario, effective, values);
        notes = notes with { Warnings = [.. notes.Warnings, .. trim.Rest.Notes] };
        if (folder is not null)
        {
            TrimFiles.Write(folder, title, trim, effective.ToToml(), notes, values.Plots);
        }

        terminal.Print(values, stream => TrimFiles.WriteJson(stream, title, trim, notes), () => TrimText.Build(title, trim, notes));
        return ExitCode.Done;
    }
}
