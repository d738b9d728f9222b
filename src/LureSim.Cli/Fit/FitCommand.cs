using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Model;
using LureSim.Reports.Fit;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;

namespace LureSim.Cli.Fit;

/// <summary><c>fit</c>: what measurements in a pool tell of a lure, and of a walk of the hand.</summary>
internal static class FitCommand
{
    private const int MostThreads = 4096;

    /// <summary>The capability.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        options.File.Description = "Measurements (CSV): tests such as \"test, tow\" and their rows; docs/fit.md.";
        var scenario = new Option<string?>("--scenario") { Description = "Scenario file with the lure; default the one that the measurements name.", HelpName = "file" };
        var threads = new Option<string>("--threads")
        {
            Description = "Most threads; 0 uses every core. The result does not depend on it.",
            HelpName = "count",
            DefaultValueFactory = _ => "0",
        };
        var command = new Command("fit", "Turn measurements in a pool (tows, pushes, films, swings) and of a walk into what they tell of a lure and of the hand.");
        options.AddTo(command);
        command.Add(scenario);
        command.Add(threads);
        command.SetAction(parsed =>
        {
            CommonValues values = options.Read(parsed, "fit");
            var faults = new List<ScenarioFault>();
            int most = Counts.Read(parsed.GetValue(threads), 0, "--threads", 0, MostThreads, faults);
            FitFile? file = FitFile.Read(values.File, parsed.GetValue(scenario), faults);
            ScenarioSource? source = file is null ? null : ScenarioSource.Load(file.Scenario, FitStudy.Asked(file));
            ScenarioResult? lure = source?.Resolve(FitStudy.Overrides(file!, values.Overrides));
            terminal.Tell(faults.Concat(lure?.Errors ?? []));
            return faults.Count == 0 && lure is { IsValid: true } ? Run(values, file!, source!, lure, most, terminal, stop) : ExitCode.BadInput;
        });
        return command;
    }

    private static int Run(CommonValues values, FitFile file, ScenarioSource source, ScenarioResult lure, int threads, Terminal terminal, CancellationToken stop)
    {
        if (FitStudy.Refusal(file, lure) is string refusal)
        {
            terminal.Tell([new(values.File, "", refusal)]);
            return ExitCode.BadInput;
        }

        using OutputFolder? folder = values.Open(stop);
        Outcome<FitReport> outcome;
        using (var progress = new ProgressLine("fit", terminal, values.Quiet))
        {
            outcome = FitStudy.Run(file, source, values.Overrides, threads, progress.Report, stop);
        }

        FitReport report = outcome.Demand();
        if (!report.Values.Any(v => v.IsTold))
        {
            terminal.Tell([new(values.File, "", FitText.Nothing(report))]);
            return ExitCode.BadInput;
        }

        Shown shown = values.ShownFor(file.Units);
        if (folder is not null)
        {
            FitFiles.Write(folder, report, values.File, shown, values.Plots);
        }

        IReadOnlyList<string> parts = values.Folder is null ? [] : FitFiles.Overrides(values.Folder, values.File, report);
        terminal.Print(values, stream => FitFiles.WriteJson(stream, report), () => FitText.Build(report, shown, parts));
        return ExitCode.Done;
    }
}
