using LureSim.Studies.Doubt;
using LureSim.Studies.Sampling;

namespace LureSim.Studies.Tests.Doubt;

public class DoubtAnalysisTests
{
    private static readonly string[] Figures = ["falls", "constant"];

    [Fact]
    public void Bands_of_a_known_law()
    {
        // falls = exp(-s): quantiles of exp(-u) are exp(-0.9), exp(-0.5), exp(-0.1) within one slice, 1/200.
        DoubtReport report = DoubtAnalysis.Analyse(Figures, Samples(200));
        Assert.Equal(Math.Exp(-0.9), report["falls"].P10, 0.005);
        Assert.Equal(Math.Exp(-0.5), report["falls"].P50, 0.005);
        Assert.Equal(Math.Exp(-0.1), report["falls"].P90, 0.005);
        Assert.Equal(new Band("constant", 4.0, 4.0, 4.0, 200), report["constant"]);
        Assert.Throws<ArgumentException>(() => report["nothing"]);
    }

    [Fact]
    public void The_set_up_as_it_stands_goes_with_its_band_and_is_told_when_it_lies_outside()
    {
        DoubtReport report = DoubtAnalysis.Analyse(Figures, Samples(200), [Math.Exp(-0.5), 4.1]);
        Assert.Equal(Math.Exp(-0.5), report["falls"].Given);
        Assert.False(report["falls"].IsGivenOutside);
        Assert.True(report["constant"].IsGivenOutside);
        Assert.False(DoubtAnalysis.Analyse(Figures, Samples(200))["falls"].IsGivenOutside);
    }

    [Fact]
    public void Failed_runs_count_but_do_not_speak()
    {
        List<DoubtSample> samples = [.. Samples(99), new([], "", null, "it sinks")];
        DoubtReport report = DoubtAnalysis.Analyse(Figures, samples);
        Assert.Equal((100, 1, "it sinks"), (report.Runs, report.Failed, report.Reason));
        Assert.Equal(1.0, report.Shares.Sum(s => s.Value), 1e-12);
        Assert.Equal(new("walks", 66.0 / 99.0), report.Shares[0]);
    }

    // Two that differ in their numbers alone outweigh one of each other kind.
    [Fact]
    public void The_commonest_reason_is_counted_whatever_its_numbers()
    {
        string[] reasons = ["it sinks", "93.2 m do not fit", "no rhythm", "-1e-3 m do not fit"];
        DoubtReport report = DoubtAnalysis.Analyse(Figures, [.. Samples(20), .. reasons.Select(r => new DoubtSample([], "", null, r))]);
        Assert.Equal((4, "93.2 m do not fit"), (report.Failed, report.Reason));
        Assert.Equal("", DoubtAnalysis.Analyse(Figures, Samples(20)).Reason);
    }

    [Fact]
    public void When_all_fail_there_are_no_bands() => Assert.Empty(DoubtAnalysis.Analyse(Figures, [new([], "", null)]).Bands);

    [Fact]
    public void A_figure_that_some_runs_lack_is_read_from_the_others()
    {
        List<DoubtSample> samples = [.. Samples(200), .. Samples(50).Select(s => s with { Figures = [double.NaN, 4.0] })];
        DoubtReport report = DoubtAnalysis.Analyse(Figures, samples);
        Assert.Equal(200, report["falls"].Count);
        Assert.Equal(Math.Exp(-0.5), report["falls"].P50, 0.005);
        Assert.Equal(0, DoubtAnalysis.Analyse(["f"], [new([], "", [double.NaN])])["f"].Count);
    }

    private static List<DoubtSample> Samples(int count)
    {
        var design = new LatinHypercube(count, 11);
        return [.. Enumerable.Range(0, count).Select(i => new DoubtSample([], i % 3 < 2 ? "walks" : "still", [Math.Exp(-design.Share(i, 0)), 4.0]))];
    }
}
