using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Reports.Cover;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Cover;

namespace LureSim.Cli.Cover;

/// <summary><c>cover</c>: one person's tackle at an open edge, among sparse plants and over a thick mat.</summary>
internal static class CoverCommand
{
    private const string Name = "cover";

    /// <summary>The capability: a study of three covers, so it has no figures to sweep.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var command = new Command(Name, "Which cover wants which rig: open edge, sparse plants, thick mat; what works, what gives first, what to change.");
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            CommonValues values = options.Read(parsed, Name);
            return ScenarioInput.Read(values, [], terminal, Activities.Strike) is ScenarioResult scenario
                ? ScenarioInput.Guarded(values, terminal, () => Run(values, scenario, terminal, stop))
                : ExitCode.BadInput;
        });
        return command;
    }

    private static int Run(CommonValues values, ScenarioResult scenario, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        CoverReport report;
        using (var progress = new ProgressLine(Name, terminal, values.Quiet))
        {
            report = CoverStudy.Run(scenario, 0, progress.Report, stop).Demand();
        }

        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Notes(scenario, effective) with { Shown = values.ShownFor(scenario) };
        if (folder is not null)
        {
            CoverFiles.Write(folder, report, effective.ToToml(), notes, values.Plots);
        }

        terminal.Print(values, stream => CoverJson.Write(stream, report, notes), () => CoverText.Build(report, notes));
        return ExitCode.Done;
    }

    private static RunNotes Notes(ScenarioResult scenario, EffectiveScenario effective) => new(
        [.. ScenarioFault.Lines(scenario.Notes), .. scenario.Values.Overridden.Where(k => !CoverKeysRead.Reads(k, scenario)).Select(k => $"{k.Path} does not enter {Name}")],
        [.. effective.Guesses.Where(g => CoverKeysRead.Reads(g.Key, scenario)).Select(g => g.ToString())]);
}
