using LureSim.Model;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;
using OxyPlot;
using OxyPlot.Annotations;

namespace LureSim.Reports.Strike;

/// <summary>The pull that sets all points, as a level with the range of that guess around it.</summary>
internal static class SetLevel
{
    private static readonly OxyColor Range = ChartStyle.Faint(ChartStyle.Orange, 0.22);

    /// <summary>Draws it.</summary>
    /// <param name="panels">Picture.</param>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="report">Strike.</param>
    /// <param name="pull">Unit of the y axis.</param>
    /// <param name="right">Right end of the level, from 0.</param>
    /// <param name="withRange">True draws the range too.</param>
    public static void Draw(Panels panels, int panel, StrikeReport report, ShownUnit pull, double right, bool withRange = true)
    {
        if (withRange && report.Guesses.SettingN is Ranged guess)
        {
            panels.Model.Annotations.Add(new RectangleAnnotation
            {
                YAxisKey = Panels.Key(panel),
                MinimumY = pull.Of(guess.Low),
                MaximumY = pull.Of(guess.High),
                Fill = Range,
                Layer = AnnotationLayer.BelowSeries,
            });
        }

        double level = pull.Of(report.Window.SettingN);
        panels.Line(panel, [0.0, right], [level, level], Looks.Reference, 3);
    }

    /// <summary>Its legend.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="withRange">True names the range too.</param>
    public static HeaderEntry[] Legend(StrikeReport report, bool withRange = true) =>
    [
        new($"sets {StrikeNames.Points(report.Strike.Setup.Hook.Points)}", Looks.Reference),
        .. withRange && report.Guesses.SettingN is not null ? [new HeaderEntry("range of that guess", Range, Swatch.Box)] : Array.Empty<HeaderEntry>(),
    ];
}
