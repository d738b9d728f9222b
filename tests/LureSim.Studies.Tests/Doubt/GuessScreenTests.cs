using LureSim.Studies.Doubt;

namespace LureSim.Studies.Tests.Doubt;

/// <summary>Runs made to see which guess matters, on functions whose effects are known by hand.</summary>
public sealed class GuessScreenTests
{
    // From the 10 to the 90 % end a linear term c u changes by 0.8 c, wherever the others are.
    [Fact]
    public void A_linear_function_has_its_coefficients_alone_and_together()
    {
        ScreenReport report = Screen(3, s => (10.0 * s[0]) - (3.0 * s[1]));
        GuessEffect first = report.Effects[0][0], second = report.Effects[1][0], none = report.Effects[2][0];
        Assert.Equal(-4.0, first.LowShift, 1e-9);
        Assert.Equal(4.0, first.HighShift, 1e-9);
        Assert.Equal(8.0, first.Alone, 1e-9);
        Assert.Equal(8.0, first.MeanEffect, 1e-9);
        Assert.Equal(0.0, first.EffectSpread, 1e-9);
        Assert.Equal(1.2, second.LowShift, 1e-9);
        Assert.Equal(2.4, second.Size, 1e-9);
        Assert.Equal(new(0.0, 0.0, 0.0, 0.0), none);
        Assert.Equal([0, 1, 2], report.Ranking("y").Select(r => r.Index));
        Assert.Equal([false, false, true], report.Ranking("y").Select(r => r.IsNoise));
    }

    // Ishigami and Homma 1990 (from memory): sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1, x from -pi to pi. In the middle sin x1 = 0, so x3 does nothing alone;
    // its ends and inner levels are 0.8 pi and 0.8 pi / 3, a step changes 0.1 x3^4 by 3.94 and sin x1 is 0.588 or 0.743 there.
    [Fact]
    public void A_guess_that_matters_only_beside_others_is_seen()
    {
        static double Ishigami(double[] s)
        {
            double[] x = [.. s.Select(u => Math.PI * ((2.0 * u) - 1.0))];
            return Math.Sin(x[0]) + (7.0 * Math.Pow(Math.Sin(x[1]), 2)) + (0.1 * Math.Pow(x[2], 4) * Math.Sin(x[0]));
        }

        ScreenReport report = Screen(3, Ishigami);
        GuessEffect x1 = report.Effects[0][0], x2 = report.Effects[1][0], x3 = report.Effects[2][0];
        double end = 0.8 * Math.PI, inner = end / 3.0;
        Assert.Equal(2.0 * Math.Sin(end), x1.Alone, 1e-9);
        Assert.Equal(7.0 * Math.Pow(Math.Sin(end), 2), x2.Alone, 1e-9);
        Assert.Equal(0.0, x3.Alone, 1e-9);
        double change = 0.1 * (Math.Pow(end, 4) - Math.Pow(inner, 4)) / (2.0 / 3.0);
        Assert.InRange(x3.MeanEffect, (change * Math.Sin(end)) - 1e-9, (change * Math.Sin(inner)) + 1e-9);
        RankedGuess third = report.Ranking("y").Single(r => r.Index == 2);
        Assert.True(third.OnlyTogether);
        Assert.False(report.Ranking("y").Single(r => r.Index == 1).OnlyTogether);

        // x1 acts beside x3, x2 alone: the spread of the effects tells it.
        Assert.True(x1.EffectSpread > x1.Alone);
    }

    // Jitter of up to 0.5 either way (uniform, sigma 0.29): a guess worth 0.1 drowns, one worth 40 does not.
    [Fact]
    public void What_jitter_does_as_well_is_called_noise()
    {
        static double Jitter(double[] s) => new Random(s.Aggregate(17, (h, u) => (h * 31) + u.GetHashCode())).NextDouble() - 0.5;
        ScreenReport report = Screen(3, s => (50.0 * s[0]) + (0.1 * s[1]) + Jitter(s));
        Assert.InRange(report.Noise[0], 4.04 * 0.1, 4.04 * 0.6);
        IReadOnlyList<RankedGuess> ranked = report.Ranking("y");
        Assert.Equal(0, ranked[0].Index);
        Assert.Equal([false, true, true], ranked.Select(r => r.IsNoise));
    }

    [Fact]
    public void A_run_that_fails_takes_its_own_effect_along_and_no_other()
    {
        var screen = new GuessScreen(2, GuessScreen.UsualTrajectories, 5);
        List<IReadOnlyList<double>?> runs = [.. Enumerable.Range(0, screen.Count).Select(i => (IReadOnlyList<double>?)[screen.Shares(i)[0] + screen.Shares(i)[1]])];
        int low = Enumerable.Range(0, screen.Count).First(i => screen.Shares(i)[0] == GuessScreen.LowEnd && screen.Shares(i)[1] == 0.5);
        runs[low] = null;
        ScreenReport report = screen.Analyse(["y"], runs);
        Assert.Equal(1, report.Failed);
        Assert.Equal(double.NaN, report.Effects[0][0].LowShift);
        Assert.Equal(0.4, report.Effects[0][0].Alone, 1e-9);
        Assert.Equal(0.8, report.Effects[1][0].Alone, 1e-9);
    }

    // Morris: k + 1 runs a trajectory; each step moves one guess by two thirds of 0.8, each guess once; over four trajectories from every level once.
    [Fact]
    public void Each_trajectory_moves_every_guess_once()
    {
        const int guesses = 5;
        var screen = new GuessScreen(guesses, GuessScreen.UsualTrajectories, 9);
        Assert.Equal(1 + 8 + (2 * guesses) + (4 * (2 + guesses)), screen.Count);
        Assert.All(Enumerable.Range(0, screen.Count), i => Assert.All(screen.Shares(i), s => Assert.InRange(s, 0.099, 0.901)));
        int first = screen.Count - (4 * (2 + guesses));
        double[][] starts = [.. Enumerable.Range(0, 4).Select(t => screen.Shares(first + (t * (2 + guesses))))];
        for (int g = 0; g < guesses; g++)
        {
            Assert.Equal([0.1, 0.1 + (0.8 / 3.0), 0.9 - (0.8 / 3.0), 0.9], starts.Select(s => s[g]).Order(), (a, b) => Math.Abs(a - b) < 1e-12);
        }

        for (int t = 0; t < 4; t++)
        {
            int at = first + (t * (2 + guesses));
            int[] moved = [.. Enumerable.Range(2, guesses).Select(i => Moved(screen.Shares(i == 2 ? at : at + i - 1), screen.Shares(at + i)))];
            Assert.Equal(Enumerable.Range(0, guesses), moved.Order());
        }

        static int Moved(double[] a, double[] b)
        {
            int g = Assert.Single(Enumerable.Range(0, a.Length), i => a[i] != b[i]);
            Assert.Equal(0.8 * 2.0 / 3.0, Math.Abs(a[g] - b[g]), 1e-12);
            return g;
        }
    }

    private static ScreenReport Screen(int guesses, Func<double[], double> function)
    {
        var screen = new GuessScreen(guesses, GuessScreen.UsualTrajectories, 3);
        return screen.Analyse(["y"], [.. Enumerable.Range(0, screen.Count).Select(i => (IReadOnlyList<double>?)[function(screen.Shares(i))])]);
    }
}
