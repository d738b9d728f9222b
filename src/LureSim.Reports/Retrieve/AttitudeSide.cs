using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Retrieve;

/// <summary>The hull at four instants of one twitch, or of a steady pull: from its own side with pitch and dip, and from ahead with roll.</summary>
public static class AttitudeSide
{
    private const int Columns = 2;

    // Gap between the columns and rim of the board; title, header and padding around it, px.
    private const double Gutter = 36.0, Rim = 16.0, Wide = (Columns * AttitudeCell.Width) + Gutter + (2.0 * Rim), Around = 170.0;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Retrieve with a hull that pitches or rolls.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        TwitchWindow window = TwitchWindow.ChooseOrWhole(result, 1);
        IReadOnlyList<LureInstant> instants = LureInstant.Choose(result);
        var words = AttitudeWords.Of(result, window.From, window.To);
        PlotModel model = ChartStyle.NewModel(words.Title(shown), Subtitle(result, window, words));
        // One scale on both axes: a pitch of 20 degrees must look like one.
        model.PlotType = PlotType.Cartesian;
        var frame = AttitudeFrame.Around(LureBody.Of(result.Setup.Lure), instants);
        int rows = (instants.Count + Columns - 1) / Columns;
        double height = (rows * frame.CellHeight) + AttitudeCell.ScaleRow;
        LinearAxis up = Hidden(AxisPosition.Left, 0.0, height + Rim), across = Hidden(AxisPosition.Bottom, 0.0, Wide);
        int picture = (int)Math.Ceiling(height + Rim + Around);
        var panels = new Panels(model, picture, [up]);
        model.Axes.Add(across);
        for (int i = 0; i < instants.Count; i++)
        {
            new AttitudeCell(model, frame, Left(i % Columns), height - (i / Columns * frame.CellHeight)).Draw(instants[i], shown.OneFamily);
        }

        new AttitudeCell(model, frame, Left(0), AttitudeCell.ScaleRow).DrawScales(Left(1), shown.Choice == UnitChoice.Trade);
        panels.Header(0, "From its left side, and from ahead", Legend(instants));
        return new Chart("attitude_side", model, Height: picture);
    }

    private static HeaderEntry[] Legend(IReadOnlyList<LureInstant> instants) =>
    [
        new("line tie", ChartStyle.Ink, Swatch.Dot), new("centre of gravity", ChartStyle.Vermilion, Swatch.Dot),
        .. instants.Any(i => i.Line is not null) ? new HeaderEntry[] { new("line", ChartStyle.Blue) } : [],
        new("nose to water", ChartStyle.Green), new("back", AttitudeCell.Back, Swatch.Box),
    ];

    private static double Left(int column) => Rim + (column * (AttitudeCell.Width + Gutter));

    // Lengths are read from the scale bars: side and section have scales of their own.
    private static LinearAxis Hidden(AxisPosition position, double from, double to)
    {
        LinearAxis axis = ChartStyle.NewAxis(position, string.Empty, from, to);
        axis.IsAxisVisible = false;
        return axis;
    }

    private static string Subtitle(RetrieveResult result, TwitchWindow window, AttitudeWords words)
    {
        string rest = AttitudeWords.Degrees(result.Series["pitch_deg"][0]);
        return $"{window.Words(result)}: {words.Pitches} (at rest {rest}, nose up positive); {words.Under}";
    }
}
