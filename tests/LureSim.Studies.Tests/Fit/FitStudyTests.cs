using LureSim.Model.Pool;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Fit;

/// <summary>Measurements of made-up lures whose numbers are known.</summary>
public sealed class FitStudyTests
{
    private static readonly string[] Held = [LureKeys.FormDrag.Path, LureKeys.FrictionSpeed.Path];

    private static MadeUpPool Pool(Func<FitUnknown, double> truth, int seed = 1, double noise = 1.0) => new(Shipped.File("large-walker.toml"), truth, seed) { Noise = noise };

    private static FitReport Fit(MadeUpPool pool, int threads = 0) => FitStudy.Run(pool.File(), pool.Source, [], threads, _ => { }, default).Demand();

    private static FitEstimate Of(FitReport report, string name) => Assert.Single(report.Values, v => v.Unknown.Name == name);

    // Truths from the even ranges that have the standard deviation of what is known before; the guesses that the fit holds stay where they are held.
    private static Func<FitUnknown, double> Draw(int seed)
    {
        var luck = new Random(seed);
        return u =>
        {
            double z = Math.Clamp(FitUnknown.Even * ((2.0 * luck.NextDouble()) - 1.0), u.LeastZ, u.MostZ);
            return Held.Contains(u.Name) ? 0.0 : z;
        };
    }

    /// <summary>One kind of test at a time, without errors in it: what it tells comes back inside its band, near the truth.</summary>
    public static TheoryData<string, string[]> Kinds => new()
    {
        { "tows", ["lure.stern_shedding"] },
        { "pushes", ["lure.stern_shedding"] },
        { "coasts", ["lure.axial_drag_factor"] },
        { "films", ["lure.stern_shedding", "lure.added_mass_factor", "lure.axial_drag_factor"] },
        { "swings", ["lure.roll_damping", "lure.nose_damping", "ballast up"] },
        { "bowl and swings", ["ballast along", "ballast up"] },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_kind_of_test_gives_back_what_it_was_made_with(string kind, string[] tells)
    {
        ArgumentNullException.ThrowIfNull(tells);
        MadeUpPool pool = Pool(u => u.Name switch
        {
            "lure.stern_shedding" => -0.9,
            "lure.axial_drag_factor" => 0.7,
            "lure.roll_damping" or "lure.nose_damping" => -0.8,
            "lure.added_mass_factor" => 0.5,
            "ballast up" or "ballast along" => 0.8,
            _ => 0.0,
        }, noise: 0.0);
        FitReport report = Fit(kind switch
        {
            "tows" => pool.Tows(true, 3, 0.3, 0.6).Tows(false, 3, 0.3, 0.6),
            "pushes" => pool.Pushes(false, 10, 0.5),
            "coasts" => pool.Coasts(false, 3, 1.0),
            "films" => pool.Films(false, 3, 1.2),
            "swings" => pool.Swings(true, 3),
            _ => pool.Bowl().Swings(true, 3),
        });

        // The true lure misses nothing but digits, so the least sum is at most that of its guesses.
        double most = pool.Truth.Values.Sum(z => z * z);
        Assert.True(report.Square < most + 0.1, $"{report.Square}, at most {most}");
        foreach (string name in tells)
        {
            FitEstimate value = Of(report, name);
            Assert.True(value.IsTold, $"{name}: {value.LeftShare}");
            Assert.InRange(pool.Truth[name], value.LowZ, value.HighZ);
            Assert.True(Math.Abs(value.Z - pool.Truth[name]) < Math.Abs(pool.Truth[name]), $"{name}: {value.Z}, truth {pool.Truth[name]}");
        }
    }

    // Of all numbers that a fit calls told, the band holds the truth in 80 of 100. Numbers of one fit share their readings, so they count half: four standard
    // deviations of the binomial law of half as many. More would be too wide as much as fewer would be too narrow.
    [Fact]
    public void Bands_hold_the_truth_as_often_as_they_say()
    {
        const int fits = 16;
        const double said = 0.8;
        int inside = 0, told = 0;
        for (int seed = 1; seed <= fits; seed++)
        {
            MadeUpPool pool = Pool(Draw(seed), seed).Tows(false, 3, 0.6).Films(false, 1, 1.0).Swings(true, 2).Bowl();
            foreach (FitEstimate value in Fit(pool).Values.Where(v => v.IsTold))
            {
                double truth = pool.Truth[value.Unknown.Name];
                told++;
                inside += truth >= value.LowZ && truth <= value.HighZ ? 1 : 0;
            }
        }

        double spread = 4.0 * Math.Sqrt(said * (1.0 - said) / (0.5 * told));
        Assert.True(told > 4 * fits, $"{told} numbers told in {fits} fits");
        Assert.True(Math.Abs((inside / (double)told) - said) < spread, $"{inside} of {told}");
    }

    // Any lure inside the guesses, from swings and a bowl, which are quick: what is called told lies within four standard deviations of the truth.
    [Fact]
    public void What_is_told_is_near_the_truth()
    {
        int[] far = [.. Enumerable.Range(1, 16).Where(seed =>
        {
            MadeUpPool pool = Pool(Draw(seed), seed).Swings(true, 3).Bowl();
            return Fit(pool, 1).Values.Any(v => v.IsTold && Math.Abs(v.Z - pool.Truth[v.Unknown.Name]) > 4.5 * (v.HighZ - v.LowZ) / (2.0 * FitUnknown.Band));
        })];
        Assert.Empty(far);
    }

    // Form drag and skin friction look like the axial factor, which stands for them: the drag itself comes back.
    [Fact]
    public void The_drag_along_the_axis_comes_back_whatever_it_is_made_of()
    {
        MadeUpPool pool = Pool(u => u.Name == LureKeys.FormDrag.Path ? 1.2 : 0.0, seed: 3).Coasts(false, 4, 1.0);
        FitReport report = Fit(pool);
        Assert.Contains(report.Held, h => h.Name == LureKeys.FormDrag.Path);
        FitEstimate axial = Of(report, LureKeys.AxialDragFactor.Path);
        Assert.True(axial.Verdict == FitVerdict.Told && axial.Value > 1.1, $"{axial.Value}, {axial.Verdict}");
        double Drag(string[] overrides)
        {
            ScenarioResult scenario = pool.Source.Resolve(overrides);
            return PoolRun.Run(scenario.Setup!.Lure, Model.Media.WaterModel.Evaluate(scenario.Setup.Water), scenario.Pool! with { SpeedsMS = [0.8] }).Demand().Coast.PerM!.Value;
        }

        double form = report.Held.Single(h => h.Name == LureKeys.FormDrag.Path).At(1.2);
        double truth = Drag(["lure.hook_drag=0", FormattableString.Invariant($"lure.form_drag={form}")]);
        Assert.Equal(truth, Drag(["lure.hook_drag=0", FormattableString.Invariant($"lure.axial_drag_factor={axial.Value}")]), 0.12 * truth);
    }

    [Fact]
    public void Straight_tows_tell_an_end_and_no_more()
    {
        MadeUpPool pool = Pool(u => u.Name == "lure.stern_shedding" ? 1.8 : 0.0).Tows(true, 3, 0.6).Tows(false, 3, 0.3, 0.6);
        FitEstimate chi = Of(Fit(pool), "lure.stern_shedding");
        Assert.True(chi.LowZ > -0.6 && chi.HighZ > 1.0, $"{chi.LowZ} to {chi.HighZ}");
    }

    [Fact]
    public void Three_points_are_refused()
    {
        MadeUpPool tow = Pool(_ => 0.0).Tows(false, 3, 0.6), coast = Pool(_ => 0.0).Coasts(false, 1, 0.4);
        Assert.StartsWith("3 readings, of which 3 say something of the lure", FitStudy.Refusal(tow.File(), tow.Source.Resolve())!, StringComparison.Ordinal);
        Assert.Contains("at least 6 are due", FitStudy.Refusal(coast.File(), coast.Source.Resolve())!, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Fit(tow));
    }

    [Fact]
    public void A_reading_alone_is_not_taken()
    {
        // One row of a roll's loss, and periods that say nothing of its damping.
        MadeUpPool pool = Pool(_ => 0.0).Swings(true, 3);
        string[] lines = pool.Text.Split('\n');
        string one = string.Join('\n', lines.Select((l, i) => l.StartsWith("roll", StringComparison.Ordinal) && lines.Take(i).Any(b => b.StartsWith("roll", StringComparison.Ordinal)) ? l.Split('s')[0] + "s" : l));
        FitFile file = MadeUpPool.Read(one, pool.Source.Name);
        FitEstimate damping = Of(FitStudy.Run(file, pool.Source, [], 0, _ => { }, default).Demand(), LureKeys.RollDamping.Path);
        Assert.Equal((FitVerdict.OneReading, false), (damping.Verdict, damping.IsTold));
    }

    [Fact]
    public void Units_and_gaps_change_nothing()
    {
        MadeUpPool pool = Pool(_ => 0.3).Films(false, 2, 0.8);
        FitReport cm = Fit(pool);
        foreach ((string unit, double of) in ((string, double)[])[("mm", 10.0), ("in", 1.0 / 2.54)])
        {
            FitFile file = MadeUpPool.Read(Scaled(pool.Text, unit, of), pool.Source.Name);
            FitReport other = FitStudy.Run(file, pool.Source, [], 0, _ => { }, default).Demand();
            Assert.All(cm.Values.Zip(other.Values), p => Assert.Equal(p.First.Z, p.Second.Z, 1e-3));
        }

        // Rows in which nothing was seen.
        string gaps = string.Join('\n', pool.Text.Split('\n').SelectMany(l => l.StartsWith("0.2,", StringComparison.Ordinal) ? (string[])["0.19, , , , ", l] : [l]));
        FitReport holes = FitStudy.Run(MadeUpPool.Read(gaps, pool.Source.Name), pool.Source, [], 0, _ => { }, default).Demand();
        Assert.All(cm.Values.Zip(holes.Values), p => Assert.Equal(p.First.Z, p.Second.Z));
    }

    [Fact]
    public void The_same_bits_for_any_number_of_threads()
    {
        MadeUpPool pool = Pool(Draw(5), 5).Swings(true, 2).Bowl();
        FitReport one = Fit(pool, 1), two = Fit(pool, 2);
        Assert.Equal(one.Values.Select(v => (v.Z, v.LowZ, v.HighZ)), two.Values.Select(v => (v.Z, v.LowZ, v.HighZ)));
        Assert.Equal(one.Rows.Select(r => r.Computed), two.Rows.Select(r => r.Computed));
    }

    [Fact]
    public void A_typing_error_is_named()
    {
        MadeUpPool pool = Pool(_ => 0.0).Swings(true, 4).Bowl();
        int first = pool.Text.IndexOf("bob, ", StringComparison.Ordinal);
        string wrong = pool.Text[..first] + "bob, 0.7 s" + pool.Text[pool.Text.IndexOf('\n', first)..];
        FitReport report = FitStudy.Run(MadeUpPool.Read(wrong, pool.Source.Name), pool.Source, [], 0, _ => { }, default).Demand();
        Assert.True(report.ErrorScale > 1.0);
        Assert.Equal(0.7, report.Odd.First().Reading.Measured);
    }

    [Fact]
    public void What_is_not_told_names_the_test_that_would_tell_it()
    {
        FitReport report = Fit(Pool(_ => 0.0).Swings(true, 3));
        FitEstimate chi = Of(report, LureKeys.SternShedding.Path);
        Assert.Equal(FitVerdict.Not, chi.Verdict);
        FitNext next = Assert.Single(report.Next, n => n.Unknown.Name == LureKeys.SternShedding.Path);
        Assert.True(next.Test is FitAdvice.FilmOff or FitAdvice.TowOff or FitAdvice.FilmOn && next.LeftShare < 0.6, $"{next.Test}, {next.LeftShare}");
    }

    [Fact]
    public void It_stops()
    {
        using var stop = new CancellationTokenSource();
        MadeUpPool pool = Pool(_ => 0.0).Swings(true, 3);
        FitFile file = pool.File();
        Assert.ThrowsAny<OperationCanceledException>(() => FitStudy.Run(file, pool.Source, [], 0, _ => stop.Cancel(), stop.Token));
    }

    private static string Scaled(string text, string unit, double of) => string.Join('\n', text.Replace("(cm)", $"({unit})", StringComparison.Ordinal).Split('\n').Select(l =>
        l.Length > 0 && char.IsDigit(l[0])
            ? string.Join(", ", l.Split(',').Select((c, i) => i == 0 || string.IsNullOrWhiteSpace(c) ? c.Trim()
                : (of * double.Parse(c, System.Globalization.CultureInfo.InvariantCulture)).ToString("R", System.Globalization.CultureInfo.InvariantCulture)))
            : l));
}
