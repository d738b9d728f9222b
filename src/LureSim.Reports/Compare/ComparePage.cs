using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Compare;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Compare;

/// <summary>One page of pictures for people who want no numbers explained: each set-up a row, what one sees and feels of it the columns, and under each
/// column whether the difference will be noticed.</summary>
public static class ComparePage
{
    /// <summary>Rows that fit; the others are in the tables.</summary>
    public const int MostRows = 8;

    private const int Width = 1600, Height = 900;
    private const double TitleRoom = Width - 80, PageWidth = Width - 56, PageHeight = Height - 126;

    /// <summary>Builds the page.</summary>
    /// <param name="result">Set-ups compared.</param>
    /// <param name="shown">Whose units.</param>
    public static Chart Build(CompareResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        string title = AdviceText.Heading(result, Advice.Of(result));
        int left = result.SetUps.Count - MostRows;
        PlotModel model = ChartStyle.NewModel(title, left > 0 ? FormattableString.Invariant($"the first {MostRows}; {left} more in compare.csv") : "bars: mean; pale: eight of ten draws of what is guessed");
        model.TitleFontSize = Math.Min(ChartStyle.TitleSize, ChartStyle.TitleSize * TitleRoom / TextLayout.Measure(title, ChartStyle.TitleSize, FontWeights.Bold).Width);
        AddAxis(model, AxisPosition.Bottom, PageWidth);
        AddAxis(model, AxisPosition.Left, PageHeight);
        new ComparePagePicture(result, new(result, shown)).Draw(new PageBrush(model), new OxyRect(0, 0, PageWidth, PageHeight));
        return new Chart("compare_page", model, Width, Height);
    }

    // Axes that nobody sees: they count the pixels below the title, from the upper left.
    private static void AddAxis(PlotModel model, AxisPosition position, double most)
    {
        LinearAxis axis = ChartStyle.NewAxis(position, string.Empty, 0.0, most);
        axis.IsAxisVisible = false;
        (axis.StartPosition, axis.EndPosition) = position == AxisPosition.Left ? (1, 0) : (0, 1);
        model.Axes.Add(axis);
    }
}
