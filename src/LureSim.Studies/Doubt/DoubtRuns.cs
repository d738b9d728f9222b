using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Batches;
using LureSim.Studies.Figures;
using LureSim.Studies.Sweep;

namespace LureSim.Studies.Doubt;

/// <summary>Runs one scenario many times, every guess drawn from its range.</summary>
public static class DoubtRuns
{
    /// <summary>Runs the study.</summary>
    /// <param name="source">Scenario file.</param>
    /// <param name="overrides">Overrides.</param>
    /// <param name="figures">What to run.</param>
    /// <param name="samples">Runs.</param>
    /// <param name="threads">Threads, at least 1; the result does not depend on it.</param>
    /// <param name="progress">Gets the share done.</param>
    /// <param name="stop">Stops the study.</param>
    /// <exception cref="SweepException">Nothing is guessed.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DoubtStudy Run(
        ScenarioSource source,
        IReadOnlyList<string> overrides,
        IFigureSource figures,
        int samples,
        int threads,
        Action<double> progress,
        CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(progress);
        ScenarioResult scenario = source.Resolve(overrides);
        GuessedKey[] guesses = GuessDesign.Of(scenario, figures);
        var design = new GuessDesign(samples, scenario.Setup!.Seed);
        var plan = new SweepPlan(source, overrides, [], SweepPoints.OfGrid([]), figures, design);
        var runs = new DoubtSample[samples];
        int done = 0;
        Batch.Execute(Enumerable.Range(0, samples), threads, i => plan.Run(i, stop), Keep, stop);
        DoubtReport report = DoubtAnalysis.Analyse([.. guesses.Select(g => g.Key.Path)], figures.Numbers, runs);
        return new(report, [.. guesses.Select(GuessDesign.Label)], figures.Headlines);

        void Keep(int index, SweepRow row)
        {
            bool good = row.Status == SweepRow.Done;
            double[] values = [.. guesses.Select(g => design.Value(g, index))];
            runs[index] = new(values, good ? row.Words.FirstOrDefault("") : "", good ? [.. row.Numbers] : null);
            progress((double)++done / samples);
        }
    }
}
