using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Batches;
using LureSim.Studies.Figures;
using LureSim.Studies.Sweep;

namespace LureSim.Studies.Doubt;

/// <summary>Runs one scenario many times: every guess drawn from its range for the bands, and each by itself to see which matters.</summary>
public static class DoubtRuns
{
    /// <summary>Draws from which on a command whose run is a study of many runs is asked which guess matters: it takes several such studies per
    /// guess.</summary>
    public const int FewestDrawsOfStudies = 100;

    /// <summary>Runs the study.</summary>
    /// <param name="source">Scenario file.</param>
    /// <param name="overrides">Overrides.</param>
    /// <param name="figures">What to run.</param>
    /// <param name="samples">Draws.</param>
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
        GuessedKey[] physics = GuessDesign.Of(scenario, figures, hands: false), hands = GuessDesign.Of(scenario, figures, hands: true);
        if (physics.Length == 0)
        {
            throw new SweepException("--doubt: nothing is guessed here, so there is nothing to draw");
        }

        var design = new GuessDesign(samples, scenario.Setup!.Seed);
        var screen = new GuessScreen(physics.Length, figures.IsStudy ? GuessScreen.UsualTrajectories / 2 : GuessScreen.UsualTrajectories, scenario.Setup.Seed);
        bool screens = !figures.IsStudy || samples >= FewestDrawsOfStudies;
        int drawn = hands.Length == 0 ? samples : 2 * samples;
        var runs = new DoubtSample[drawn + (screens ? screen.Count : 1)];
        int done = 0;
        Batch.Execute(Enumerable.Range(0, runs.Length), threads, One, Keep, stop);
        IReadOnlyList<double>? given = runs[drawn].Figures;
        return new(
            DoubtAnalysis.Analyse(figures.Numbers, runs[..samples], given),
            hands.Length == 0 ? null : DoubtAnalysis.Analyse(figures.Numbers, runs[samples..drawn], given),
            screens ? screen.Analyse(figures.Numbers, [.. runs[drawn..].Select(r => r.Figures)]) : null,
            screen.Count,
            [.. physics.Select(g => new GuessName(g.Key.Path, GuessDesign.Label(g)) { Guess = g })],
            figures.Headlines);

        DoubtSample One(int index)
        {
            // The set-up as it stands is run as it stands.
            GuessedKey[] moved = index == drawn ? [] : index >= samples && index < drawn ? hands : physics;
            double[]? shares = index < drawn ? null : screen.Shares(index - drawn);
            GuessDraw draw = GuessDraw.Make(source, overrides, moved, g => shares is null ? design.Share(g, index % samples) : shares[Array.IndexOf(moved, g)]);
            FigureRow row = FigureRow.Of(figures, draw.Scenario, stop);
            return new(draw.Values, row.Words.FirstOrDefault(""), row.Failure is null ? row.Numbers : null, row.Failure ?? "");
        }

        void Keep(int index, DoubtSample run)
        {
            runs[index] = run;
            progress((double)++done / runs.Length);
        }
    }
}
