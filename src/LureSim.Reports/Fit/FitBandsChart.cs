using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Fit;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Fit;

/// <summary>One row per number of the lure: its band before and after the measurements, in standard deviations of what was known before.</summary>
public static class FitBandsChart
{
    private const double Reach = 3.2, Half = 0.32, WordsWidth = 460;

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Fit.</param>
    /// <param name="shown">How quantities are told.</param>
    public static Chart Build(FitReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        int rows = report.Values.Count, height = SetUpRows.Height(rows), told = report.Values.Count(v => v.Verdict == FitVerdict.Told);
        PlotModel model = ChartStyle.NewModel(told == 0 ? "Nothing is told well" : $"{told} of {rows} numbers told", report.File.Title);
        CategoryAxis names = SetUpRows.Axis([.. report.Values.Select(v => v.Unknown.Words)]);
        var panels = new Panels(model, height, [names]);
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Bottom, "Standard deviations of what was known before", -Reach, Reach);
        axis.EndPosition = SetUpRows.PlotShare(names, WordsWidth);
        model.Axes.Add(axis);
        for (int i = 0; i < rows; i++)
        {
            FitEstimate value = report.Values[i];
            int row = rows - 1 - i;
            SetUpRows.Box(panels, -FitUnknown.Band, FitUnknown.Band, row, Half, ChartStyle.Light);
            if (value.IsTold)
            {
                SetUpRows.Box(panels, Math.Clamp(value.LowZ, -Reach, Reach), Math.Clamp(value.HighZ, -Reach, Reach), row, 0.6 * Half, ChartStyle.Sky);
                SetUpRows.Dot(panels, Math.Clamp(value.Z, -Reach, Reach), row, ChartStyle.Blue);
            }

            SetUpRows.Beside(panels, Reach, row, value.IsTold ? $"{FitWording.Show(value.Unknown, value.Value, shown)}, {FitWording.Range(value.Unknown, value.Low, value.High, shown)}" : "not told");
        }

        panels.Header(
            0, string.Empty, new HeaderEntry("before, 80 of 100", ChartStyle.Light, Swatch.Box), new HeaderEntry("now, 80 of 100", ChartStyle.Sky, Swatch.Box),
            new HeaderEntry("best", ChartStyle.Blue, Swatch.Dot));
        return new Chart("fit_bands", model, Height: height);
    }
}
