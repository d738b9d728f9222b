using LureSim.Model.Margin;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Design;

/// <summary>One pull at a lure that lies at an angle to its line: how it turns, and how far it comes and glides.</summary>
public static class PullTurnChart
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>Builds the picture.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="margin">Walk margin.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(string title, MarginResult margin, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(margin);
        ArgumentNullException.ThrowIfNull(shown);
        PullResponse pull = margin.Pull;
        double[] t = [.. pull.TimeS], heading = [.. pull.HeadingDeg];
        ShownUnit unit = shown.Unit(ShownQuantity.Size, 1.0);
        double[] along = [.. pull.XM.Select(unit.Of)], across = [.. pull.YM.Select(unit.Of)];
        PlotModel model = ChartStyle.NewModel(
            Message(pull), $"One pull of {shown.OneFamily.Text(ShownQuantity.Impulse, margin.Task.PullNs)}, {Trade.Fixed(margin.Task.AngleRad / Degree, 0)}° off the line, then slack: {title}");
        double least = Math.Min(0.0, heading.Min()), most = Math.Max(0.0, heading.Max()), room = 0.06 * Math.Max(1.0, most - least);
        double low = Math.Min(0.0, Math.Min(along.Min(), across.Min())), high = Math.Max(0.0, Math.Max(along.Max(), across.Max()));
        double edge = 0.06 * Math.Max(unit.LeastSi / unit.Si, high - low);
        var panels = new Panels(
            model,
            ChartStyle.Height,
            [
                ChartStyle.NewAxis(AxisPosition.Left, "Heading off the line, deg", least - room, most + room),
                ChartStyle.NewAxis(AxisPosition.Left, $"Way, {unit.Name}", low - edge, high + edge),
            ]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time from the start of the pull, s", 0.0, t[^1]));
        for (int panel = 0; panel < 2; panel++)
        {
            panels.Shade(panel, 0.0, Math.Min(t[^1], margin.Task.PullS), ChartStyle.Pull);
            panels.Level(panel, 0.0, ChartStyle.Grey);
        }

        panels.Line(0, t, heading, Looks.Lure);
        panels.Line(1, t, along, Looks.Rod);
        panels.Line(1, t, across, Looks.Lure);
        panels.Header(0, "Heading; 0: it points along the line", new HeaderEntry("pull", ChartStyle.Pull, Swatch.Box));
        panels.Header(1, "Centre of gravity", new HeaderEntry("toward the angler", Looks.Rod), new HeaderEntry("across the line", Looks.Lure));
        return new Chart("design_pull", model);
    }

    private static string Message(PullResponse pull) => pull.TurnTimeS is double time
        ? $"One pull turns it {Trade.Fixed(pull.TurnDeg, 0)}°: along the line after {Trade.Fixed(time, 2)} s, {Trade.Fixed(pull.PastDeg, 0)}° past it"
        : $"One pull turns it {Trade.Fixed(pull.TurnDeg, 0)}°: it does not reach the line";
}
