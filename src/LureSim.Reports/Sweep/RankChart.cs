using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;
using OxyPlot;

namespace LureSim.Reports.Sweep;

/// <summary>Which guess moves a figure most over the draws of a sweep: for each that is told from chance, the figure's mean with the guess in its lower
/// and in its upper third.</summary>
public static class RankChart
{
    // One in twenty passes by chance alone.
    private const double ByChance = 0.05;

    /// <summary>Builds the chart.</summary>
    /// <param name="figure">Figure to show.</param>
    /// <param name="subtitle">What the picture is about.</param>
    /// <param name="guesses">Each guess with what it does to the figure, in any order.</param>
    /// <param name="chance">Magnitude of a rank correlation below which it may be chance.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(
        HeadlineFigure figure, string subtitle, IReadOnlyList<(string Label, GuessRank Rank)> guesses, double chance, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(guesses);
        HeadlineFigure inUnit = GuessBars.In(figure, shown ?? Shown.Both, guesses.SelectMany(g => new[] { g.Rank.LowShift, g.Rank.HighShift }));
        GuessBar[] told = [.. guesses.Where(g => g.Rank.Weight > chance).OrderByDescending(g => g.Rank.Weight).Select(g => new GuessBar(g.Label, g.Rank.LowShift, g.Rank.HighShift))];
        string lucky = ByChance * guesses.Count < 0.5 ? "" : $"; of {guesses.Count} guesses about {Trade.Fixed(ByChance * guesses.Count, 0)} would be told by luck";
        (PlotModel model, int height) = GuessBars.Build(
            inUnit, subtitle + lucky, $"Shift of the mean {inUnit.Words}", told, guesses.Count - told.Length,
            $"rank correlation under {Trade.Digits(chance)}",
            new HeaderEntry("guess in its lower third", Looks.LowEnd, Swatch.Box), new HeaderEntry("in its upper third", Looks.HighEnd, Swatch.Box));
        return new(GuessBars.Name(figure), model, Height: height);
    }
}
