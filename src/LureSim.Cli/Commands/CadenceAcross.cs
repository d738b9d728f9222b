using LureSim.Cli.Running;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Across;
using LureSim.Studies.Cadence;

namespace LureSim.Cli.Commands;

/// <summary><c>cadence --across</c>: the rhythms of many set-ups.</summary>
internal static class CadenceAcross
{
    /// <summary>Runs the study.</summary>
    /// <param name="values">Common options.</param>
    /// <param name="axes">What differs.</param>
    /// <param name="plan">Search.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static int Run(CommonValues values, IReadOnlyList<AcrossAxis> axes, CadencePlan plan, Terminal terminal, CancellationToken stop)
    {
        ScenarioSource source = ScenarioSource.Load(values.File, Activities.Retrieve);
        var combinations = AcrossAxis.Combine(axes).ToArray();
        ScenarioResult[] scenarios = [.. combinations.Select(c => source.Resolve([.. values.Overrides, .. c.Overrides]))];
        var faults = new List<ScenarioFault>();
        for (int i = 0; i < scenarios.Length; i++)
        {
            string label = string.Join(", ", combinations[i].Values.Select(v => v.Label));
            faults.AddRange(scenarios[i].Errors.Select(e => e with { Place = $"--across {label}: {e.Place}" }));
        }

        if (scenarios.Any(s => !s.IsValid))
        {
            terminal.Tell(faults);
            return ExitCode.BadInput;
        }

        using OutputFolder? folder = values.Open(stop);
        var cases = new AcrossCase[scenarios.Length];
        using (var progress = new ProgressLine("cadence", terminal, values.Quiet))
        {
            int finished = 0;
            CadenceStudy.Search([.. scenarios.Select(s => (s.Setup!, s.Retrieve!))], plan, null, new(progress.Report, null, Finished), stop);

            void Finished(int i, RhythmSearch search)
            {
                cases[i] = AcrossCase.Of(combinations[i].Values, search, SustainedTorque.Of(scenarios[i]));
                string told = cases[i].Result is CadenceResult result ? CadenceStory.Headline(result) : $"failed: {cases[i].Failure}";
                progress.Tell($"{++finished} of {cases.Length}: {cases[i].Label}: {told}");
            }
        }

        return Tell(values, folder, source, new AcrossResult(scenarios[0].Setup!.Title, [.. axes.Select(a => a.Key)], cases), terminal);
    }

    private static int Tell(CommonValues values, OutputFolder? folder, ScenarioSource source, AcrossResult result, Terminal terminal)
    {
        ScenarioResult plain = source.Resolve(values.Overrides);
        EffectiveScenario effective = plain.Effective();
        RunNotes notes = Capabilities.Notes(Capabilities.Cadence, plain, effective, values);
        if (folder is not null)
        {
            CadenceFiles.Write(folder, result, effective.ToToml(), notes, values.Plots);
        }

        terminal.Print(values, stream => AcrossJson.Write(stream, result, notes), () => AcrossText.Build(result, notes));
        return result.Cases.All(c => c.Result is null) ? ExitCode.NotFinished : ExitCode.Done;
    }
}
