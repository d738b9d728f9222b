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
    private const double Gutter = 36.0, Rim = 16.0, Around = 170.0;

    // Cells of a slide.
    private const double NarrowWidth = 624.0, NarrowHeight = 300.0;

    private const string Header = "From its left side, and from ahead";

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Retrieve with a hull that pitches or rolls.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        return Build(result, LureInstant.Choose(result), AttitudeCell.Usual, AttitudeFrame.MostHeight, shown) with { Name = "attitude_side" };
    }

    /// <summary>The same instants two at a time, for pictures that are narrower for their letters.</summary>
    /// <param name="result">Retrieve with a hull that pitches or rolls.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<Chart> InTwos(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        return [.. LureInstant.Choose(result).Chunk(Columns).Select((two, i) => Build(result, two, NarrowWidth, NarrowHeight, shown) with { Name = $"attitude_side_{i + 1}" })];
    }

    private static Chart Build(RetrieveResult result, IReadOnlyList<LureInstant> instants, double cellWidth, double mostHeight, Shown shown)
    {
        TwitchWindow window = TwitchWindow.ChooseOrWhole(result, 1);
        var words = AttitudeWords.Of(result, window.From, window.To);
        PlotModel model = ChartStyle.NewModel(words.Title(shown), Subtitle(result, window, words));
        // One scale on both axes: a pitch of 20 degrees must look like one.
        model.PlotType = PlotType.Cartesian;
        var frame = AttitudeFrame.Around(LureBody.Of(result.Setup.Lure), instants, cellWidth, mostHeight);
        int rows = (instants.Count + Columns - 1) / Columns;
        double height = (rows * frame.CellHeight) + AttitudeCell.ScaleRow;
        LinearAxis up = Hidden(AxisPosition.Left, 0.0, height + Rim), across = Hidden(AxisPosition.Bottom, 0.0, Left(Columns, cellWidth) - Gutter + Rim);
        HeaderEntry[] legend = Legend(instants);
        int picture = (int)Math.Ceiling(height + Rim + Around + Panels.MoreThanOneLine(model, Header, legend));
        var panels = new Panels(model, picture, [up]);
        model.Axes.Add(across);
        for (int i = 0; i < instants.Count; i++)
        {
            new AttitudeCell(model, frame, Left(i % Columns, cellWidth), height - (i / Columns * frame.CellHeight)).Draw(instants[i], shown.OneFamily);
        }

        new AttitudeCell(model, frame, Left(0, cellWidth), AttitudeCell.ScaleRow).DrawScales(Left(1, cellWidth), shown.Choice == UnitChoice.Trade);
        panels.Header(0, Header, legend);
        return new Chart("attitude_side", model, Height: picture);
    }

    private static HeaderEntry[] Legend(IReadOnlyList<LureInstant> instants) =>
    [
        new("line tie", ChartStyle.Ink, Swatch.Dot), new("centre of gravity", ChartStyle.Vermilion, Swatch.Dot),
        .. instants.Any(i => i.Line is not null) ? new HeaderEntry[] { new("line", Looks.Line.Color) } : [],
        new("nose to water", Looks.Lure.Color), new("back", AttitudeCell.Back, Swatch.Box),
    ];

    private static double Left(int column, double cellWidth) => Rim + (column * (cellWidth + Gutter));

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
