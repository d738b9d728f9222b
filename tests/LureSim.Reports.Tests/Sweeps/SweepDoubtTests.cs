using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Sweep;
using LureSim.Studies.Batches;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Tests.Sweeps;

public sealed class SweepDoubtTests : IDisposable
{
    private const int Samples = 11;
    private static readonly SweepLayout Layout = new(["speed"], ["guess.c"], ["pattern"], ["glide_width_m"], Samples);
    private static readonly HeadlineFigure Glide = new("glide_width_m", "glide per twitch", "cm", 100.0);

    private readonly SweepFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_point_has_its_band_and_shares()
    {
        var doubt = new SweepDoubt(Table());
        string[] lines = [.. doubt.BandLines()];
        Assert.Equal("point,speed,runs,failed,share.still,share.walks,glide_width_m.p10,glide_width_m.p50,glide_width_m.p90", lines[0]);

        // Point 0: glide = c for c = 0..10; quantiles of 0..10 are 1, 5, 9. Point 1: glide = -2 c, c = 10 failed: of 0..9 they are 0.9, 4.5, 8.1,
        // in doubles with the last bits of an interpolation.
        Assert.Equal("0,1.5,11,0,0,1,1,5,9", lines[1]);
        Assert.StartsWith("1,2.5,11,1,1,0,-16.2,-9,-1.8", lines[2], StringComparison.Ordinal);
        Assert.Equal(3, lines.Length);
        GuessRank rank = doubt.Ranks[0][0];
        Assert.Equal(0.0, rank.Rho, 1e-12);
        Assert.Equal(1.0, rank.Weight, 1e-12);
    }

    [Fact]
    public void Files_hold_table_bands_guesses_and_pictures()
    {
        using var folder = new Reports.Kit.Files.OutputFolder(_folder.At("out"), SweepFiles.Kind);
        SweepFiles.Write(folder, Table(), [Glide], PlotFormat.Svg);
        Assert.Equal(
            ["bands.csv", "doubt_glide_width.svg", "guesses.csv", "luresim.sha256", "sweep.csv"],
            Directory.GetFiles(_folder.At("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal("guess,figure,rank_correlation,weight,low_shift,high_shift", File.ReadLines(_folder.At("out/guesses.csv")).First());
    }

    [Fact]
    public void A_tally_counts_words_and_reasons()
    {
        var tally = new SweepTally(Table());
        Assert.Equal((21, 1, 0, "run 21: sinks"), (tally.Done, tally.Failed, tally.Refused, tally.FirstReason));

        // 11 and 10 of the 21 runs with a result.
        Assert.Contains("  walks              11   52 %\n", tally.Text(), StringComparison.Ordinal);
        Assert.Contains("  still              10   48 %\n", tally.Text(), StringComparison.Ordinal);
        Assert.Contains("walks", tally.Text(), StringComparison.Ordinal);
    }

    private SweepTable Table()
    {
        var header = new JournalHeader("p", "retrieve", 2 * Samples, Shard.Whole, Layout);
        using (JournalWriter writer = JournalWriter.Start(_folder.At("j"), header, "here"))
        {
            for (int i = 2 * Samples - 1; i >= 0; i--)
            {
                double c = i % Samples;
                string[] inputs = [i < Samples ? "1.5" : "2.5", CsvLine.Number(c)];
                writer.Write(Layout.Line(i, i == (2 * Samples) - 1
                    ? new(inputs, SweepRow.Failed, "sinks", [], [])
                    : new(inputs, SweepRow.Done, "", [i < Samples ? "walks" : "still"], [i < Samples ? c : -2.0 * c])));
            }
        }

        return SweepTable.Join([Journal.Read(_folder.At("j"))!]);
    }
}
