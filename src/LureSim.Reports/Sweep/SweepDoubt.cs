using System.Globalization;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Sweep;

/// <summary>Bands and ranks of a sweep with doubt, read from its table one point at a time.</summary>
public sealed class SweepDoubt
{
    private readonly SweepTable _table;
    private readonly SweepLayout _layout;
    private readonly RankMean _mean = new();

    /// <summary>Prepares the reading.</summary>
    /// <param name="table">Table whose guesses were sampled.</param>
    public SweepDoubt(SweepTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        (_table, _layout) = (table, table.Header.Layout);
    }

    /// <summary>Lines of <c>bands.csv</c>: per point what varies, runs, failed runs, the share of each word, and three columns per
    /// figure.</summary>
    public IEnumerable<string> BandLines()
    {
        string[] classes = Classes();
        string[] tails = ["p10", "p50", "p90"];
        yield return CsvLine.Join(
        [
            "point", .. _layout.Varied, "runs", "failed", .. classes.Select(c => "share." + c), .. _layout.Numbers.SelectMany(n => tails.Select(t => $"{n}.{t}")),
        ]);
        int point = 0;
        foreach ((DoubtSample[] samples, string[] varied) in Points())
        {
            DoubtReport report = DoubtAnalysis.Analyse(_layout.Numbers, samples);
            _mean.Add(GuessRank.Of(_layout.Guessed.Count, _layout.Numbers.Count, samples));
            double Share(string name) => report.Shares.Where(s => s.Key == name).Sum(s => s.Value);
            IEnumerable<string> bands = report.Bands.Count > 0
                ? report.Bands.SelectMany(b => new[] { b.P10, b.P50, b.P90 }.Select(CsvLine.Number))
                : Enumerable.Repeat("", 3 * _layout.Numbers.Count);
            yield return CsvLine.Join([Text(point++), .. varied, Text(report.Runs), Text(report.Failed), .. classes.Select(c => CsvLine.Number(Share(c))), .. bands]);
        }
    }

    /// <summary>What the guesses do, [guess][figure], mean over the points; complete once <see cref="BandLines"/> was read to its
    /// end.</summary>
    public IReadOnlyList<IReadOnlyList<GuessRank>> Ranks => _mean.Result();

    // One pass for the words that occur, so that the header stands before the first point.
    private string[] Classes()
    {
        int status = _layout.StatusColumn;
        return _layout.Words.Count == 0
            ? []
            : [.. _table.Rows().Select(CsvLine.Split).Where(c => c[status] == SweepRow.Done).Select(c => c[status + 2]).Distinct().Order(StringComparer.Ordinal)];
    }

    private IEnumerable<(DoubtSample[] Samples, string[] Varied)> Points()
    {
        var samples = new List<DoubtSample>(_layout.Samples);
        foreach (string row in _table.Rows())
        {
            List<string> cells = CsvLine.Split(row);
            samples.Add(Sample(cells));
            if (samples.Count == _layout.Samples)
            {
                yield return ([.. samples], [.. cells[3..(3 + _layout.Varied.Count)]]);
                samples.Clear();
            }
        }
    }

    private DoubtSample Sample(List<string> cells)
    {
        int status = _layout.StatusColumn;
        double[] guesses = [.. cells[(status - _layout.Guessed.Count)..status].Select(Number)];
        return cells[status] == SweepRow.Done
            ? new(guesses, _layout.Words.Count > 0 ? cells[status + 2] : "", [.. cells[(status + 2 + _layout.Words.Count)..].Select(Number)])
            : new(guesses, "", null);
    }

    private static double Number(string cell) => cell.Length == 0 ? double.NaN
        : double.TryParse(cell, CultureInfo.InvariantCulture, out double value) ? value
        : throw new SweepException($"a row of the sweep holds '{cell}' where a number is due");

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}
