using System.Globalization;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Fit;

/// <summary>Walks of made-up lures and hands whose numbers are known.</summary>
public sealed class WalkFitTests
{
    private const double Cadence = 1.5;
    private static readonly string Stroke = RetrieveKeys.Stroke.Path, Slack = RetrieveKeys.Slack.Path;

    // A value that is given without a range is taken as known: what is left is the hand and the place of the ballast, and a fit takes seconds.
    private static readonly string[] Known =
    [
        "lure.stern_shedding=0.8", "lure.stern_place=0.34", "lure.added_mass_factor=0.7", "lure.axial_drag_factor=1", "lure.cross_flow_cd=1.1", "lure.form_drag=0.05", "lure.friction_speed=0.5 m/s",
        "lure.hook_drag=1", "lure.hook_along_share=0.7", "lure.hook_reach=10 mm", "lure.roll_damping=3", "lure.nose_damping=0.2",
    ];

    private static MadeUpPool Pool(Func<FitUnknown, double> truth, int seed = 1, bool known = false, double noise = 1.0) =>
        new(Shipped.File("large-walker.toml"), truth, seed, true, known ? Known : []) { Noise = noise };

    private static FitReport Fit(MadeUpPool pool, bool known = false, int threads = 0) =>
        FitStudy.Run(pool.File(), pool.Source, known ? Known : [], threads, _ => { }, default).Demand();

    private static FitEstimate Of(FitReport report, string name) => Assert.Single(report.Values, v => v.Unknown.Name == name);

    private static double Sigma(FitEstimate value) => (value.HighZ - value.LowZ) / (2.0 * FitUnknown.Band);

    private static Func<FitUnknown, double> Hand(double stroke, double slack) => u => u.Name == Stroke ? stroke : u.Name == Slack ? slack : 0.0;

    // A hand inside the window of walking; next to its edge slopes to one side are those of no walk, and the band is wide.
    [Fact]
    public void A_walk_alone_tells_stroke_and_slack_of_a_lure_that_is_known()
    {
        MadeUpPool pool = Pool(Hand(0.5, 0.3), known: true).Walks(1, 6, Cadence);
        FitReport report = Fit(pool, true);
        foreach (string name in (string[])[Stroke, Slack])
        {
            FitEstimate value = Of(report, name);
            Assert.True(value.IsTold, $"{name}: {value.LeftShare}");
            Assert.InRange((value.Z - pool.Truth[name]) / Sigma(value), -3.0, 3.0);
        }

        FitWalkFilm film = Assert.Single(report.Walks!.Films);
        Assert.Equal(Cadence, film.RhythmPerS, 0.03);
        Assert.Contains("rod.bend_load", report.Walks.RestsOn);
        Assert.DoesNotContain(Stroke, report.Walks.RestsOn);
    }

    // Truths from the even ranges that have the standard deviation of what is known before. Two numbers of a fit share its readings: they count as one.
    [Fact]
    public void Bands_of_the_hand_hold_the_truth_as_often_as_they_say()
    {
        const int fits = 6;
        const double said = 0.8;
        var off = new List<double>();
        for (int seed = 1; seed <= fits; seed++)
        {
            var luck = new Random(seed);
            MadeUpPool pool = Pool(u => u.IsOfHand ? 0.8 * FitUnknown.Even * ((2.0 * luck.NextDouble()) - 1.0) : 0.0, seed, true).Walks(1, 6, Cadence);
            if (FitStudy.Refusal(pool.File(), pool.Source.Resolve(Known)) is not null)
            {
                // This hand gives no walk, and its film is refused.
                continue;
            }

            FitReport report = Fit(pool, true);
            off.AddRange(((string[])[Stroke, Slack]).Select(n => (Of(report, n).Z - pool.Truth[n]) / Sigma(Of(report, n))));
        }

        double inside = off.Count(o => Math.Abs(o) <= FitUnknown.Band) / (double)off.Count, spread = 4.0 * Math.Sqrt(said * (1.0 - said) / (0.5 * off.Count));
        string all = string.Join(", ", off.Select(o => FormattableString.Invariant($"{o:F2}")));
        Assert.True(off.Count >= fits, all);
        Assert.True(Math.Abs(inside - said) < spread, all);
        Assert.All(off, o => Assert.True(Math.Abs(o) < 4.0, all));
    }

    [Fact]
    public void Counted_by_eye_it_tells_something()
    {
        MadeUpPool eye = Pool(Hand(1.2, 0.0), known: true, noise: 0.3).WalkByEye(4, Cadence);
        FitReport counted = Fit(eye, true);
        FitEstimate stroke = Of(counted, Stroke);
        Assert.True(stroke.IsTold, $"{stroke.LeftShare}");
        Assert.InRange((stroke.Z - eye.Truth[Stroke]) / Sigma(stroke), -2.0, 2.0);
        Assert.Empty(counted.Walks!.Films);
    }

    // The lure as its pool tells it, and the hand as its walk does, in one.
    [Fact]
    public void Pool_and_walk_together_tell_lure_and_hand()
    {
        MadeUpPool pool = Pool(Hand(0.6, -0.6)).Films(true, 2, 1.0).Walks(1, 6, Cadence);
        FitReport report = Fit(pool);
        Assert.True(Of(report, Stroke).IsTold, $"{Of(report, Stroke).LeftShare}");
        Assert.Contains(report.Values, v => !v.Unknown.IsOfHand && v.IsTold);
        Assert.All(report.Values.Where(v => v.IsTold), v => Assert.InRange((v.Z - pool.Truth[v.Unknown.Name]) / Sigma(v), -4.0, 4.0));
    }

    [Fact]
    public void The_same_bits_for_any_number_of_threads()
    {
        MadeUpPool pool = Pool(Hand(0.0, 0.0), 4, true).Walks(1, 4, Cadence);
        FitReport one = Fit(pool, true, 1), two = Fit(pool, true, 2);
        Assert.Equal(one.Values.Select(v => (v.Z, v.LowZ, v.HighZ)), two.Values.Select(v => (v.Z, v.LowZ, v.HighZ)));
        Assert.Equal(one.Rows.Select(r => r.Computed), two.Rows.Select(r => r.Computed));
    }

    [Fact]
    public void Units_change_no_reading_and_gaps_hardly()
    {
        MadeUpPool pool = Pool(Hand(0.0, 0.0), 4, true).Walks(1, 6, Cadence);
        FitReading[] cm = Readings(pool.Text, pool), inches = Readings(Scaled(pool.Text, 1.0 / 2.54).Replace("(cm)", "(in)", StringComparison.Ordinal), pool);
        Assert.Equal(3, cm.Length);
        Assert.All(cm.Zip(inches), p => Assert.Equal((1.0, 1.0), (Math.Round(p.Second.Measured / p.First.Measured, 9), Math.Round(p.Second.Sigma / p.First.Sigma, 6))));

        // Every seventh picture shows nothing.
        int row = 0;
        string holes = string.Join('\n', pool.Text.Split('\n').Select(l => l.Length > 0 && char.IsDigit(l[0]) && row++ % 7 == 3 ? $"{l.Split(',')[0]}, , , , " : l));
        Assert.All(cm.Zip(Readings(holes, pool)), p => Assert.InRange((p.Second.Measured - p.First.Measured) / p.First.Sigma, -1.0, 1.0));
    }

    private static FitReading[] Readings(string text, MadeUpPool pool) => [.. FitTests.Of(MadeUpPool.Read(text, pool.Source.Name), pool.Source.Resolve()).SelectMany(t => t.Readings)];

    private static string Scaled(string text, double of) => string.Join('\n', text.Split('\n').Select(l => l.Length > 0 && char.IsDigit(l[0])
        ? string.Join(", ", l.Split(',').Select((c, i) => i == 0 || string.IsNullOrWhiteSpace(c) ? c.Trim() : (of * double.Parse(c, CultureInfo.InvariantCulture)).ToString("R", CultureInfo.InvariantCulture)))
        : l));

    [Fact]
    public void Nonsense_is_refused_with_its_place()
    {
        MadeUpPool pool = Pool(_ => 0.0).Walks(1, 2, Cadence);
        string refusal = FitStudy.Refusal(pool.File(), pool.Source.Resolve())!;
        Assert.StartsWith("the film of a walk at made-up.csv(", refusal, StringComparison.Ordinal);
        Assert.Contains("at least 3 are due", refusal, StringComparison.Ordinal);

        // Twice as many twitches as it makes.
        string twice = Pool(_ => 0.0).Walks(1, 4, Cadence).Text.Replace("test, walk", "test, walk\ncadence, 3 /s", StringComparison.Ordinal);
        Assert.Contains("it does not alternate: 3.00 twitches a second are said", FitStudy.Refusal(MadeUpPool.Read(twice, pool.Source.Name), pool.Source.Resolve())!, StringComparison.Ordinal);

        const string eye = "scenario, large-walker.toml\ntest, walk\nadvance, 25 cm\nwidth, 16 cm\n";
        Assert.Contains("readings", FitStudy.Refusal(MadeUpPool.Read(eye, pool.Source.Name), pool.Source.Resolve())!, StringComparison.Ordinal);
        Assert.Contains("retrieve.stroke must not be 0", FitStudy.Refusal(MadeUpPool.Read(eye, pool.Source.Name), pool.Source.Resolve(["retrieve.stroke=0 cm"]))!, StringComparison.Ordinal);
    }
}
