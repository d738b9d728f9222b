using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Studies.Fit;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Fit;

/// <summary>Films of walks whose figures are known in closed form, and one of the model's own.</summary>
public sealed class WalkFilmTests
{
    private const double TwitchS = 0.65, AdvanceM = 0.24, HalfWidthM = 0.09, HalfSwingRad = 1.3, Degree = Math.PI / 180.0;

    private static double Sine(double pairs) => Math.Sin(2.0 * Math.PI * pairs);

    // -1 to 1 and back, straight.
    private static double Zigzag(double pairs) => (4.0 * Math.Abs(pairs - Math.Floor(pairs + 0.5))) - 1.0;

    private sealed record Made(double Noise = 0.0, double Turn = 0.4, bool Mirrored = false, double Gaps = 0.0, double Twitches = 12.0, int Seed = 1, double PerS = 15.0, Func<double, double>? Across = null, double Surge = 0.03);

    private static WalkSamples Film(Made made)
    {
        var luck = new Random(made.Seed);
        double Error(double sigma) => sigma * Math.Sqrt(-2.0 * Math.Log(1.0 - luck.NextDouble())) * Math.Cos(2.0 * Math.PI * luck.NextDouble());
        double[] t = [.. Enumerable.Range(0, (int)(made.Twitches * TwitchS * made.PerS) + 1).Select(i => i / made.PerS).Where(_ => luck.NextDouble() >= made.Gaps)];
        double[] x = new double[t.Length], y = new double[t.Length], heading = new double[t.Length];
        double side = made.Mirrored ? -1.0 : 1.0;
        (double sin, double cos) = Math.SinCos(made.Turn);
        for (int i = 0; i < t.Length; i++)
        {
            double pairs = t[i] / (2.0 * TwitchS), along = (AdvanceM * t[i] / TwitchS) + (made.Surge * Math.Cos(4.0 * Math.PI * pairs)), across = HalfWidthM * (made.Across ?? Sine)(pairs);
            x[i] = 3.0 + (cos * along) - (sin * across) + Error(made.Noise);
            y[i] = side * (7.0 + (sin * along) + (cos * across) + Error(made.Noise));
            heading[i] = side * (made.Turn + (HalfSwingRad * Math.Cos((2.0 * Math.PI * pairs) + 0.3)) + Error(10.0 * made.Noise));
        }

        return new(t, x, y, t, heading);
    }

    private static WalkFilm Read(WalkSamples samples, double? cadence = null)
    {
        (WalkFilm? film, string? refusal) = WalkFilm.Of(samples, cadence, 0.003, 3.0 * Degree);
        Assert.Null(refusal);
        return film!;
    }

    private static string Refused(WalkSamples samples, double? cadence = null)
    {
        (WalkFilm? film, string? refusal) = WalkFilm.Of(samples, cadence, 0.003, 3.0 * Degree);
        Assert.Null(film);
        return refusal!;
    }

    // A wave along the way of twice the rhythm is no advance, and axes are nothing. What is left is the grid of the turning point and the last digit of the rhythm.
    [Theory]
    [InlineData(0.0, false, 0.0)]
    [InlineData(2.6, false, 0.0)]
    [InlineData(-1.9, true, 0.0)]
    [InlineData(0.4, true, 0.3)]
    public void A_sine_has_its_figures_wherever_its_axes_lie(double turn, bool mirrored, double gaps)
    {
        WalkFilm film = Read(Film(new(Turn: turn, Mirrored: mirrored, Gaps: gaps)));
        Assert.Equal(1.0 / TwitchS, film.RhythmPerS, 2e-3 / TwitchS);
        Assert.Equal(6.0, film.Pairs, 0.2);
        Assert.Equal(AdvanceM, film.Figures.AdvanceM, 4e-3 * AdvanceM);
        Assert.Equal(2.0 * HalfWidthM, film.Figures.WidthM, 4e-3 * HalfWidthM);
        Assert.Equal(2.0 * HalfSwingRad, film.Figures.SwingRad, 4e-3 * HalfSwingRad);
    }

    // Of a zigzag the first and third harmonic are 8/pi^2 and 8/(9 pi^2), in step where it turns.
    [Fact]
    public void A_zigzag_has_the_width_of_its_first_harmonics()
    {
        double width = 2.0 * HalfWidthM * 8.0 / (Math.PI * Math.PI) * (1.0 + (1.0 / 9.0));
        Assert.Equal(width, Read(Film(new(Across: Zigzag, PerS: 60.0))).Figures.WidthM, 0.01 * width);
    }

    // Errors as said: over many films the misses scatter as the errors that each film gives itself.
    [Fact]
    public void The_error_that_a_film_finds_is_the_one_it_was_made_with()
    {
        const int films = 60;
        WalkFilm[] all = [.. Enumerable.Range(1, films).Select(seed => Read(Film(new(Noise: 0.01, Gaps: 0.1, Seed: seed))))];
        foreach ((string what, Func<WalkFilm, double> of, Func<WalkFilm, double> sigma, double truth) in ((string, Func<WalkFilm, double>, Func<WalkFilm, double>, double)[])
        [
            ("advance", f => f.Figures.AdvanceM, f => f.AdvanceSigmaM, AdvanceM),
            ("width", f => f.Figures.WidthM, f => f.WidthSigmaM, 2.0 * HalfWidthM),
            ("swing", f => f.Figures.SwingRad, f => f.SwingSigmaRad, 2.0 * HalfSwingRad),
        ])
        {
            double off = Math.Sqrt(all.Average(f => Math.Pow((of(f) - truth) / sigma(f), 2.0)));
            Assert.True(off is > 0.55 and < 1.3, $"{what}: {off} of its errors");
        }
    }

    [Fact]
    public void What_is_no_walk_is_refused_with_its_reason()
    {
        Assert.StartsWith("2.3 pairs of twitches; at least 3 are due", Refused(Film(new(Twitches: 4.6))), StringComparison.Ordinal);
        Assert.Contains("pictures to a pair of twitches", Refused(Film(new(Twitches: 30.0, PerS: 4.0))), StringComparison.Ordinal);

        // Counted twitches say that it turns to and fro at each of them.
        Assert.Contains("does not alternate: 0.77 twitches a second are said", Refused(Film(new()), 0.5 / TwitchS), StringComparison.Ordinal);

        WalkSamples made = Film(new(Surge: 0.0));
        double[] quiet = [.. made.HeadingRad.Select(h => 0.4 + (0.1 * (h - 0.4)))];
        Assert.Contains("its heading swings by 15 deg", Refused(made with { HeadingRad = quiet }), StringComparison.Ordinal);
        var luck = new Random(3);
        double[] drunk = [.. made.HeadingRad.Select(_ => 2.0 * luck.NextDouble())];
        Assert.Contains("no rhythm holds more than", Refused(made with { HeadingRad = drunk }), StringComparison.Ordinal);

        // One pull to a turn: the surge comes once for each turn to and fro.
        double[] surged = [.. made.XM.Select((x, i) => x + (0.05 * Math.Cos(0.4) * Math.Sin(Math.PI * made.PlaceTimeS[i] / TwitchS)))];
        double[] too = [.. made.YM.Select((y, i) => y + (0.05 * Math.Sin(0.4) * Math.Sin(Math.PI * made.PlaceTimeS[i] / TwitchS)))];
        Assert.EndsWith("it keeps to one side", Refused(made with { XM = surged, YM = too }), StringComparison.Ordinal);
    }

    // The figures of a retrieve's summary count from pull to pull; a film's are of pairs. The advance is one, and the others lie a little above.
    [Fact]
    public void A_run_of_the_model_has_the_figures_of_its_summary()
    {
        var model = new FitModel(ScenarioSource.Load(Shipped.File("large-walker.toml"), Activities.All), [], null, true);
        FitCandidate candidate = model.Candidate(new double[model.Unknowns.Count])!;
        var test = new WalkTest(true, 1.5, null) { Readings = [] };
        RetrieveResult run = StationaryOutcome.Whole(candidate.SetupOn, test.Task(candidate.Retrieve!, new StationaryPlan()), default).Demand();
        WalkFilm film = Read(test.Seen(run, candidate));
        Assert.Equal(WalkPattern.Alternating, run.Summary.Pattern);
        Assert.Equal(1.5, film.RhythmPerS, 0.02);
        Assert.Equal(run.Summary.AdvancePerTwitchM, film.Figures.AdvanceM, 0.02 * film.Figures.AdvanceM);
        Assert.InRange(film.Figures.WidthM / run.Summary.WidthM, 0.95, 1.2);
        Assert.InRange(film.Figures.SwingRad / (run.Summary.HeadingSwingDeg * Degree), 0.85, 1.15);
    }

    // What WalkTest adds to every error: settled runs of one walk from other starts.
    [Fact]
    public void Settled_runs_of_one_walk_differ_by_about_what_is_said()
    {
        var model = new FitModel(ScenarioSource.Load(Shipped.File("large-walker.toml"), Activities.All), [], null, true);
        FitCandidate candidate = model.Candidate(new double[model.Unknowns.Count])!;
        var shares = new List<double>();
        foreach (double cadence in (double[])[1.2, 1.5, 2.0])
        {
            var test = new WalkTest(true, cadence, null) { Readings = [] };
            WalkFigures[] runs = [.. Enumerable.Range(0, 6).Select(start => StationaryOutcome.Whole(candidate.SetupOn, test.Task(candidate.Retrieve!, new StationaryPlan(), start), default).Demand())
                .Where(r => r.Summary.Pattern == WalkPattern.Alternating).Select(r => WalkFigures.Of(test.Seen(r, candidate), 1.0 / cadence))];
            foreach (Func<WalkFigures, double> of in (Func<WalkFigures, double>[])[f => f.AdvanceM, f => f.WidthM, f => f.SwingRad])
            {
                double mean = runs.Average(of);
                shares.Add(runs.Average(f => Math.Pow((of(f) / mean) - 1.0, 2.0)));
            }
        }

        double share = Math.Sqrt(shares.Average());
        Assert.True(share > 0.3 * WalkTest.RunShare && share < 1.2 * WalkTest.RunShare, $"{share}: {string.Join(", ", shares.Select(Math.Sqrt))}");
    }
}
