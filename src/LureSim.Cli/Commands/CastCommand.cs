using System.CommandLine;
using LureSim.Cli.Running;
using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Cast;
using LureSim.Studies.Doubt;

namespace LureSim.Cli.Commands;

/// <summary><c>cast</c>: one cast from back-swing to splash, with figures, series and pictures.</summary>
public static class CastCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var doubt = new DoubtOptions();
        var comparing = new ComparisonOptions();
        var match = new Option<string?>("--match")
        {
            Description = "Find the effort at which this set-up casts as far as you measured, and write it as a part to reuse: a distance, a mean (\"31 m mean of 12\"), or a CSV of several casts.",
            HelpName = "distance|csv",
        };
        var power = new Option<bool>("--rod-power") { Description = "Cast lures of 7 to 40 g, of the shape and make of this one, on rods of every power." };
        var command = new Command("cast", "Cast the lure: how far, why, what the release, the reel and the line cost.");
        options.AddTo(command);
        doubt.AddTo(command);
        comparing.AddTo(command);
        command.Add(match);
        command.Add(power);
        command.SetAction(parsed =>
        {
            var faults = new List<ScenarioFault>();
            (int runs, int threads) = doubt.Read(parsed, faults);
            string kind = parsed.GetValue(match) is not null ? "cast-match" : parsed.GetValue(power) ? "cast-power" : parsed.GetValue(comparing.Across) is { Length: > 0 } ? "cast-across" : "cast";
            CommonValues values = options.Read(parsed, kind);
            IReadOnlyList<MeasuredCastText>? measured = parsed.GetValue(match) is string text ? MeasuredCasts.Read(text, faults) : null;
            Comparison asked = comparing.Read(Capabilities.Cast, values, parsed, faults);
            if (ScenarioInput.Read(values, faults, terminal, Activities.Cast) is not ScenarioResult scenario)
            {
                return ExitCode.BadInput;
            }

            return ScenarioInput.Guarded(
                values, terminal, () => asked.Axes.Count > 0 ? CastAcrossCommand.Run(values, scenario, asked, runs > 0 ? runs : CastAcrossCommand.Draws, threads, terminal, stop)
                    : parsed.GetValue(power) ? CastPowerCommand.Run(values, scenario, threads, terminal, stop)
                    : measured is not null ? CastMatchCommand.Run(values, scenario, measured, threads, terminal, stop)
                    : Run(values, scenario, runs, threads, terminal, stop));
        });
        command.Validators.Add(result =>
        {
            if (result.GetResult(match) is not null && (result.GetResult(doubt.Runs) is not null || result.GetResult(comparing.Across) is not null))
            {
                result.AddError("--match goes with neither --doubt nor --across; it shows by itself what the leading guesses change");
            }

            if (result.GetResult(power) is not null && (result.GetResult(match) ?? result.GetResult(doubt.Runs) ?? result.GetResult(comparing.Across)) is not null)
            {
                result.AddError("--rod-power goes with none of --match, --doubt and --across");
            }
        });
        return command;
    }

    private static int Run(CommonValues values, ScenarioResult scenario, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        CastReport report = CastStudy.Run(scenario.Setup!, scenario.Cast!, threads, new(null, stop)).Demand();
        DoubtStudy? doubt = runs > 0 ? Doubt(values, runs, threads, terminal, stop) : null;
        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Capabilities.Notes(Capabilities.Cast, scenario, effective, values);
        if (folder is not null)
        {
            CastFiles.Write(folder, report, effective.ToToml(), notes, values.Plots, doubt);
        }

        terminal.Print(values, stream => CastJson.Write(stream, report, notes, doubt), () => CastText.Build(report, notes, doubt));
        return ExitCode.Done;
    }

    private static DoubtStudy Doubt(CommonValues values, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using var progress = new ProgressLine("doubt", terminal, values.Quiet);
        return DoubtRuns.Run(ScenarioSource.Load(values.File, Activities.Cast), values.Overrides, Capabilities.Cast, runs, threads, progress.Report, stop);
    }
}
