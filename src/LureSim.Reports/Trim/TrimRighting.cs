using LureSim.Model.Trim;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Trim;

/// <summary>Righting arm over heel: how hard the water stands the lure up.</summary>
public static class TrimRighting
{
    private const int Height = 700;

    /// <summary>Builds the picture.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(string title, TrimResult trim, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(trim);
        ArgumentNullException.ThrowIfNull(shown);
        ShownUnit unit = shown.Unit(ShownQuantity.Size, trim.Righting.ArmM.Max(Math.Abs));
        double[] heel = [.. trim.Righting.HeelRad.Select(h => h * 180.0 / Math.PI)], arm = [.. trim.Righting.ArmM.Select(unit.Of)];
        string message = trim.RightsItselfToDeg >= 180.0 ? "Stands up by itself from any heel"
            : trim.RightsItselfToDeg <= 0.0 ? "Does not stand up by itself"
            : $"Stands up by itself from heels up to {Trade.Fixed(trim.RightsItselfToDeg, 0)}°";
        PlotModel model = ChartStyle.NewModel(message, title);
        double reach = 1.15 * Math.Max(unit.LeastSi / unit.Si, arm.Max(Math.Abs));
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, $"Righting arm, {unit.Name}", Math.Min(0.0, arm.Min()) - (0.08 * reach), reach)]);
        LinearAxis across = ChartStyle.NewAxis(AxisPosition.Bottom, "Heel, deg", 0.0, 180.0);
        across.MajorStep = 30.0;
        model.Axes.Add(across);
        panels.Level(0, 0.0, ChartStyle.Grey);
        panels.Line(0, heel, arm, ChartStyle.Blue);
        panels.Header(0, $"Weight and buoyancy pull this far apart; GM {shown.OneFamily.Size(trim.Rest.GmTransverseM)}", new HeaderEntry("above 0: turns it upright", ChartStyle.Blue));
        return new Chart("trim_righting", model, Height: Height);
    }
}
