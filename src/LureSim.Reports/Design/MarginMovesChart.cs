using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Design;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Design;

/// <summary>What a builder can change, ranked by how far it moves the walk margin: toward leaving the straight line or toward coming straight.</summary>
public static class MarginMovesChart
{
    private const int MostRows = 12;
    private const double Thick = 0.32, Words = 390, Reach = 1.12;

    /// <summary>Builds the picture.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="own">The lure as it is.</param>
    /// <param name="changes">Changes, the one that moves the margin most first.</param>
    /// <param name="name">Tells a change.</param>
    /// <returns>Null where no change has a margin to move.</returns>
    public static Chart? Build(string title, DesignPoint own, IReadOnlyList<RankedChange> changes, Func<DesignChange, string> name)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(changes);
        ArgumentNullException.ThrowIfNull(name);
        RankedChange[] rows = [.. changes.Where(c => c.MarginMove is not null).Take(MostRows)];
        if (rows.Length == 0 || own.SheddingMargin is not double now)
        {
            return null;
        }

        double reach = Reach * Math.Max(0.01, rows.Max(r => Math.Abs(r.MarginMove!.Value)));
        int height = SetUpRows.Height(rows.Length);
        PlotModel model = ChartStyle.NewModel(Message(rows[0], name), $"{title}: side force at the stern is {Trade.Fixed(Math.Abs(now), 2)} {(now > 0.0 ? "over" : "under")} what keeps it straight");
        CategoryAxis names = SetUpRows.Axis([.. rows.Select(r => name(r.Change))]);
        var panels = new Panels(model, height, [names]);
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Bottom, "Move of the side force over critical (chi - critical chi)", -reach, reach);
        axis.EndPosition = SetUpRows.PlotShare(names, Words);
        model.Axes.Add(axis);
        for (int i = 0; i < rows.Length; i++)
        {
            double move = rows[i].MarginMove!.Value;
            int row = rows.Length - 1 - i;
            SetUpRows.Box(panels, 0.0, move, row, Thick, move < 0.0 ? Looks.HighEnd : Looks.LowEnd);
            SetUpRows.Beside(panels, reach, row, $"{(move > 0.0 ? "+" : "")}{Trade.Fixed(move, 2)}{Then(rows[i].After.SheddingMargin)}");
        }

        panels.Header(0, string.Empty, new HeaderEntry("more ready to leave the straight line", Looks.HighEnd, Swatch.Box), new HeaderEntry("more ready to come straight", Looks.LowEnd, Swatch.Box));
        return new Chart("design_margin", model, Height: height);
    }

    private static string Message(RankedChange first, Func<DesignChange, string> name) =>
        $"{Trade.Capital(name(first.Change))} moves the walk margin most, toward {(first.MarginMove < 0.0 ? "leaving the straight line" : "coming straight")}";

    private static string Then(double? margin) => margin is double m ? m > 0.0 ? ", then comes straight" : ", then leaves it" : "";
}
