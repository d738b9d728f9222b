using LureSim.Studies.Doubt;
using LureSim.Studies.Sampling;

namespace LureSim.Studies.Tests.Doubt;

public class DoubtAnalysisTests
{
    private static readonly string[] Guesses = ["strong", "weak", "idle"];
    private static readonly string[] Figures = ["rises", "falls", "constant"];

    [Fact]
    public void A_made_up_model_is_seen_through()
    {
        DoubtReport report = DoubtAnalysis.Analyse(Guesses, Figures, Samples(1000));
        Assert.Equal(["strong", "weak", "idle"], report.Ranking("rises").Select(r => r.Guess));

        // rises = 3 s + w, s and w uniform on 0..1: rho between rank of s and the sum is close to Pearson's 3/sqrt(10) = 0.949.
        Assert.Equal(3.0 / Math.Sqrt(10.0), report.Effects[0][0].Rho, 0.02);
        Assert.Equal(1.0 / Math.Sqrt(10.0), report.Effects[1][0].Rho, 3.0 / Math.Sqrt(1000.0));
        Assert.InRange(report.Effects[2][0].Weight, 0.0, 3.0 / Math.Sqrt(1000.0));

        // Thirds of a uniform law have means 1/6 and 5/6: the sum shifts by 3 (1/6 - 1/2) = -1 and +1.
        Assert.Equal(-1.0, report.Effects[0][0].LowShift, 0.06);
        Assert.Equal(1.0, report.Effects[0][0].HighShift, 0.06);
    }

    [Fact]
    public void A_fall_is_a_rank_of_minus_one_and_a_constant_has_none()
    {
        DoubtReport report = DoubtAnalysis.Analyse(Guesses, Figures, Samples(200));
        Assert.Equal(-1.0, report.Effects[0][1].Rho, 1e-12);
        Assert.Equal(1.0, report.Effects[0][1].Weight, 1e-12);
        Assert.All(report.Effects, e => Assert.Equal(0.0, e[2].Rho));
    }

    [Fact]
    public void Bands_of_a_known_law()
    {
        // falls = exp(-s): quantiles of exp(-u) are exp(-0.9), exp(-0.5), exp(-0.1) within one slice, 1/200.
        DoubtReport report = DoubtAnalysis.Analyse(Guesses, Figures, Samples(200));
        Assert.Equal(Math.Exp(-0.9), report["falls"].P10, 0.005);
        Assert.Equal(Math.Exp(-0.5), report["falls"].P50, 0.005);
        Assert.Equal(Math.Exp(-0.1), report["falls"].P90, 0.005);
        Assert.Equal(new Band("constant", 4.0, 4.0, 4.0, 200), report["constant"]);
        Assert.Throws<ArgumentException>(() => report["nothing"]);
    }

    [Fact]
    public void Failed_runs_count_but_do_not_speak()
    {
        List<DoubtSample> samples = [.. Samples(99), new([0.5, 0.5, 0.5], "", null)];
        DoubtReport report = DoubtAnalysis.Analyse(Guesses, Figures, samples);
        Assert.Equal((100, 1), (report.Runs, report.Failed));
        Assert.Equal(1.0, report.Shares.Sum(s => s.Value), 1e-12);
        Assert.Equal(new("walks", 66.0 / 99.0), report.Shares[0]);
        Assert.Equal(1.96 / Math.Sqrt(98.0), report.ChanceRho, 1e-12);
    }

    [Fact]
    public void When_all_fail_there_are_no_bands()
    {
        DoubtReport report = DoubtAnalysis.Analyse(Guesses, Figures, [new([1, 1, 1], "", null)]);
        Assert.Empty(report.Bands);
        Assert.Equal(1.0, report.ChanceRho);
    }

    [Fact]
    public void A_guess_that_some_runs_lack_is_ranked_on_the_others()
    {
        List<DoubtSample> samples = [.. Samples(200), .. Samples(100).Select(s => s with { Guesses = [double.NaN, s.Guesses[1], s.Guesses[2]] })];
        Assert.Equal(-1.0, DoubtAnalysis.Analyse(Guesses, Figures, samples).Effects[0][1].Rho, 1e-12);
    }

    [Fact]
    public void A_figure_that_some_runs_lack_is_read_from_the_others()
    {
        List<DoubtSample> samples = [.. Samples(200), .. Samples(50).Select(s => s with { Figures = [double.NaN, double.NaN, 4.0] })];
        DoubtReport report = DoubtAnalysis.Analyse(Guesses, Figures, samples);
        Assert.Equal(200, report["falls"].Count);
        Assert.Equal(Math.Exp(-0.5), report["falls"].P50, 0.005);
        Assert.Equal(-1.0, report.Effects[0][1].Rho, 1e-12);
        Assert.Equal(0, DoubtAnalysis.Analyse(["g"], ["f"], [new([1.0], "", [double.NaN])])["f"].Count);
    }

    [Fact]
    public void The_mean_over_points_keeps_magnitudes()
    {
        DoubtReport up = DoubtAnalysis.Analyse(["g"], ["f"], [.. Line(1.0)]), down = DoubtAnalysis.Analyse(["g"], ["f"], [.. Line(-1.0)]);
        var sum = new EffectMean();
        sum.Add(up);
        sum.Add(down);
        GuessEffect mean = sum.Result()[0][0];
        Assert.Equal(0.0, mean.Rho, 1e-12);
        Assert.Equal(1.0, mean.Weight, 1e-12);
        Assert.Empty(new EffectMean().Result());

        static IEnumerable<DoubtSample> Line(double slope) => Enumerable.Range(0, 12).Select(i => new DoubtSample([i], "", [slope * i]));
    }

    private static List<DoubtSample> Samples(int count)
    {
        var design = new LatinHypercube(count, 11);
        return
        [
            .. Enumerable.Range(0, count).Select(i =>
            {
                double[] u = [design.Share(i, 0), design.Share(i, 1), design.Share(i, 2)];
                return new DoubtSample(u, i % 3 < 2 ? "walks" : "still", [(3.0 * u[0]) + u[1], Math.Exp(-u[0]), 4.0]);
            }),
        ];
    }
}
