using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Studies.Doubt;
using OxyPlot;

namespace LureSim.Reports.Sweep;

/// <summary>Which guess moves a figure most over the draws of a sweep: for each, the figure's mean with the guess in its lower and in its upper
/// third.</summary>
public static class RankChart
{
    /// <summary>Builds the chart.</summary>
    /// <param name="figure">Figure to show.</param>
    /// <param name="subtitle">The sentence to take home.</param>
    /// <param name="guesses">Each guess with what it does to the figure, in any order.</param>
    /// <param name="chance">Magnitude of a rank correlation below which it may be chance.</param>
    public static Chart Build(HeadlineFigure figure, string subtitle, IReadOnlyList<(string Label, GuessRank Rank)> guesses, double chance)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(guesses);
        GuessBar[] rows = [.. guesses.OrderByDescending(r => r.Rank.Weight).Take(GuessBars.MostRows).Select(r => Row(r.Label, r.Rank, r.Rank.Weight > chance))];
        PlotModel model = GuessBars.Build(
            figure,
            $"Which guess moves the {figure.Words} most",
            subtitle,
            $"Shift of the mean {figure.Words}",
            rows,
            "Pale: may be chance",
            new HeaderEntry("lower third of guess", ChartStyle.Blue, Swatch.Box),
            new HeaderEntry("upper third", ChartStyle.Orange, Swatch.Box));
        return new(GuessBars.Name(figure), model, Height: GuessBars.Height(rows.Length));
    }

    private static GuessBar Row(string label, GuessRank rank, bool told) =>
        new(label, rank.LowShift, rank.HighShift, double.NaN, Shade(ChartStyle.Blue, told), Shade(ChartStyle.Orange, told));

    private static OxyColor Shade(OxyColor color, bool told) => told ? color : ChartStyle.Faint(color, 0.3);
}
