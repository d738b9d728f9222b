using LureSim.Model.Reels;
using LureSim.Scenarios;
using LureSim.Scenarios.Measured;

namespace LureSim.Studies.Fit;

/// <summary>A walk as it was written down, as a test: figures of its films and what was counted by eye.</summary>
internal static class WalkReader
{
    // Counted from the shore: guesses of what an eye is worth, one standard deviation.
    private const double EyeLengthM = 0.03, EyeAngleRad = 15.0 * Math.PI / 180.0;

    /// <summary>The films of a test.</summary>
    /// <param name="block">Test.</param>
    public static IEnumerable<(string Place, WalkFilm? Film, string? Refusal)> Films(FitBlock block)
    {
        foreach (IGrouping<int, FitRow> run in block.Rows.Where(r => r.Of(FitWord.Time) is not null).GroupBy(r => r.Run))
        {
            var samples = WalkSamples.Of(run);
            double? cadence = block.Of(FitWord.Cadence) ?? (block.Of(FitWord.Twitches) is double count && samples.SpanS > 0.0 ? count / samples.SpanS : null);
            (WalkFilm? film, string? refusal) = WalkFilm.Of(samples, cadence, block.Of(FitWord.PlaceError) ?? FitTests.PlaceErrorM, block.Of(FitWord.AngleError) ?? FitTests.AngleErrorRad);
            yield return (run.First().Place, film, refusal);
        }
    }

    /// <summary>Why the walks of a file cannot be read, with the place; null where they can.</summary>
    /// <param name="file">Measurements.</param>
    /// <param name="scenario">Their scenario.</param>
    public static string? Refusal(FitFile file, ScenarioResult scenario)
    {
        FitBlock[] walks = [.. file.Blocks.Where(b => b.Kind == FitKind.Walk)];
        if (walks.Length == 0)
        {
            return null;
        }

        if (scenario.Retrieve is null || scenario.Retrieve.IsTow || scenario.Retrieve.TakeUp.Mode != TakeUpMode.Gather)
        {
            return "a walk is computed with rod, line and a hand that twitches and gathers: the scenario's retrieve.stroke must not be 0, and its retrieve.take_up must be gather";
        }

        foreach ((string place, _, string? refusal) in walks.SelectMany(Films))
        {
            if (refusal is not null)
            {
                return $"the film of a walk at {Path.GetFileName(place)}: {refusal}";
            }
        }

        return null;
    }

    /// <summary>The test; null where it holds nothing.</summary>
    /// <param name="block">Test.</param>
    /// <param name="scenario">Scenario, whose rhythm holds where nothing else tells one.</param>
    public static WalkTest? Read(FitBlock block, ScenarioResult scenario)
    {
        (string Place, WalkFilm Film)[] films = [.. Films(block).Where(f => f.Film is not null).Select(f => (f.Place, f.Film!))];
        double cadence = block.Of(FitWord.Cadence) ?? (films.Length > 0 ? films.Average(f => f.Film.RhythmPerS) : scenario.Retrieve!.CadencePerS);
        FitReading[] readings = [.. films.SelectMany(f => Filmed(block, f.Place, f.Film, cadence)), .. block.Rows.SelectMany(r => Counted(block, r, cadence))];
        return readings.Length == 0 ? null : new(block.HooksOn, cadence, block.Of(FitWord.Distance)) { Readings = readings };
    }

    private static IEnumerable<FitReading> Filmed(FitBlock block, string place, WalkFilm film, double cadence)
    {
        FitReading Of(FitQuantity quantity, double value, double sigma) => Reading(block, place, quantity, cadence, value, sigma) with { IsOfMany = true };
        yield return Of(FitQuantity.Advance, film.Figures.AdvanceM, film.AdvanceSigmaM);
        yield return Of(FitQuantity.PathWidth, film.Figures.WidthM, film.WidthSigmaM);
        if (!double.IsNaN(film.SwingSigmaRad))
        {
            yield return Of(FitQuantity.HeadingSwing, film.Figures.SwingRad, film.SwingSigmaRad);
        }
    }

    private static IEnumerable<FitReading> Counted(FitBlock block, FitRow row, double cadence)
    {
        double length = block.Of(FitWord.PlaceError) ?? EyeLengthM, angle = block.Of(FitWord.AngleError) ?? EyeAngleRad;
        (FitWord Word, FitQuantity Quantity, double Sigma)[] all =
            [(FitWord.Advance, FitQuantity.Advance, length), (FitWord.Width, FitQuantity.PathWidth, length), (FitWord.HeadingSwing, FitQuantity.HeadingSwing, angle)];
        return all.Where(a => row.Of(a.Word) is not null).Select(a => Reading(block, row.Place, a.Quantity, cadence, row.Of(a.Word)!.Value, a.Sigma));
    }

    private static FitReading Reading(FitBlock block, string place, FitQuantity quantity, double cadence, double value, double sigma)
    {
        double runs = WalkTest.RunShare * value;
        return new(FitKind.Walk, quantity, place, block.HooksOn, cadence, value, Math.Sqrt((sigma * sigma) + (runs * runs)));
    }
}
