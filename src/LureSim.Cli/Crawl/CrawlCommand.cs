using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Model.Crawl;
using LureSim.Reports.Crawl;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Crawl;
using LureSim.Studies.Doubt;

namespace LureSim.Cli.Crawl;

/// <summary><c>crawl</c>: a lure over a mat, twitch by twitch, to the opening in it.</summary>
internal static class CrawlCommand
{
    /// <summary>The capability: command and summary.</summary>
    public static Capability Capability { get; } = new(Create, new CrawlSource());

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var doubt = new DoubtOptions();
        var command = new Command("crawl", "Twitch a lure over a mat to the opening in it: pull, way per twitch, what gets lost.");
        options.AddTo(command);
        doubt.AddTo(command);
        command.SetAction(parsed =>
        {
            var faults = new List<ScenarioFault>();
            (int runs, int threads) = doubt.Read(parsed, faults);
            CommonValues values = options.Read(parsed, "crawl");
            return Read(values, faults, terminal) is ScenarioResult scenario ? Run(values, scenario, runs, threads, terminal, stop) : ExitCode.BadInput;
        });
        return command;
    }

    private static ScenarioResult? Read(CommonValues values, List<ScenarioFault> faults, Terminal terminal)
    {
        ScenarioResult? scenario = ScenarioInput.Read(values, faults, terminal, Capability.Figures!.Asks);
        if (scenario is null || CrawlSource.Refusal(scenario) is not string refusal)
        {
            return scenario;
        }

        terminal.Error.WriteLine(new ScenarioFault(values.File, CoverKeys.Kind.Path, refusal));
        return null;
    }

    private static int Run(CommonValues values, ScenarioResult scenario, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        CrawlResult crawl;
        using (var progress = new ProgressLine("crawl", terminal, values.Quiet))
        {
            crawl = CrawlSource.OverMat(scenario, new(progress.Report, stop)).DemandAny();
        }

        DoubtStudy? doubt = runs > 0 ? Doubt(values, runs, threads, terminal, stop) : null;
        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Capabilities.Notes(Capability.Figures!, scenario, effective, values);
        if (folder is not null)
        {
            CrawlFiles.Write(folder, crawl, effective.ToToml(), notes, values.Plots, doubt);
        }

        terminal.Print(values, stream => CrawlFiles.WriteJson(stream, crawl, notes, doubt), () => CrawlText.Build(crawl, notes, doubt));
        if (crawl.Failure is not null)
        {
            terminal.Error.WriteLine(FormattableString.Invariant($"the model could not finish; last good time {crawl.Series["time_s"][^1]:F3} s: {crawl.Failure}"));
        }

        return crawl.Failure is null ? ExitCode.Done : ExitCode.NotFinished;
    }

    private static DoubtStudy Doubt(CommonValues values, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using var progress = new ProgressLine("doubt", terminal, values.Quiet);
        return DoubtRuns.Run(ScenarioSource.Load(values.File, Activities.Crawl), values.Overrides, Capability.Figures!, runs, threads, progress.Report, stop);
    }
}
