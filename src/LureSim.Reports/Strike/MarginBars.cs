using LureSim.Model;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Strike;

/// <summary>What gives first: load of every place against what it bears, the least margin on top.</summary>
public static class MarginBars
{
    private const double Strong = 0.38, Loaded = 0.2, WordsWidth = 360;
    private static readonly OxyColor Bears = ChartStyle.Light;

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(StrikeReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        StrikeResult result = report.Strike;
        ValueList<Margin> margins = result.Summary.Margins;
        int height = SetUpRows.Height(margins.Count);
        PlotModel model = ChartStyle.NewModel(Title(report, shown), $"Largest load of a strike {shown.OneFamily.Distance(result.Task.DistanceM)} away: {result.Setup.Title}");
        CategoryAxis names = SetUpRows.Axis([.. margins.Select(m => StrikeNames.Of(m.Place)[4..])]);
        var panels = new Panels(model, height, [names]);
        double most = 1.02 * margins.Max(m => Math.Max(m.LoadN, Strength(report, m).High));
        ShownUnit pull = shown.Unit(ShownQuantity.Pull, most);
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Bottom, $"Pull, {pull.Name}", 0.0, pull.Of(most));
        axis.EndPosition = SetUpRows.PlotShare(names, WordsWidth);
        model.Axes.Add(axis);
        for (int i = 0; i < margins.Count; i++)
        {
            AddRow(panels, margins.Count - 1 - i, margins[i], Strength(report, margins[i]), pull, pull.Of(most));
        }

        panels.Header(0, string.Empty,
        [
            new("load on hook", Looks.Lure.Color, Swatch.Box), new("on line", Looks.Line.Color, Swatch.Box), new("on rod", Looks.Rod.Color, Swatch.Box),
            new("what it bears", Bears, Swatch.Box),
            .. report.Guesses.Strengths.Count > 0 ? [new("range of that guess", ChartStyle.Ink)] : Array.Empty<HeaderEntry>(),
        ]);
        return new Chart("strike_margins", model, Height: height);
    }

    private static string Title(StrikeReport report, Shown shown)
    {
        StrikeSummary summary = report.Strike.Summary;
        Margin first = summary.FirstToGive;
        string place = StrikeNames.Of(first.Place);
        if (first.LoadN <= 0.0)
        {
            return "The line never pulls: nothing is loaded";
        }

        if (first.Ratio < 1.0)
        {
            return $"{Trade.Capital(place)} {StrikeNames.Gives(first.Place)}: it bears {shown.Pull(first.StrengthN)} and gets {shown.Pull(first.LoadN)}";
        }

        Margin? doubtful = summary.Margins.FirstOrDefault(m => Strength(report, m).Low < m.LoadN);
        return doubtful is null ? $"Nothing gives; first would be {place}, which bears {Times(first)} its load"
            : doubtful == first ? $"{Trade.Capital(place)} bears {Times(first)} its load; at the low end of that guess it {StrikeNames.Gives(first.Place)}"
            : $"{Trade.Capital(place)} bears {Times(first)} its load; at the low end of a guess {StrikeNames.Of(doubtful.Place)} {StrikeNames.Gives(doubtful.Place)}";
    }

    private static Ranged Strength(StrikeReport report, Margin margin)
    {
        PlaceGuess? guess = report.Guesses.Strengths.FirstOrDefault(g => g.Place == margin.Place);
        return new(margin.StrengthN, guess?.LowN ?? margin.StrengthN, guess?.HighN ?? margin.StrengthN);
    }

    private static string Times(Margin margin) => $"{Trade.Digits(margin.Ratio, 1)} times";

    private static void AddRow(Panels panels, int row, Margin margin, Ranged bears, ShownUnit pull, double end)
    {
        SetUpRows.Box(panels, 0.0, pull.Of(bears.Value), row, Strong, Bears);
        SetUpRows.Box(panels, 0.0, pull.Of(margin.LoadN), row, Loaded, LookOf(margin.Place).Color);
        if (bears.Low < bears.High)
        {
            panels.Line(0, [pull.Of(bears.Low), pull.Of(bears.High)], [row, row], ChartStyle.Ink, 3);
            panels.Dots(0, [pull.Of(bears.Low), pull.Of(bears.High)], [row, row], new Look(ChartStyle.Ink), 6);
        }

        bool gives = margin.Ratio < 1.0;
        SetUpRows.Beside(panels, end, row, gives ? StrikeNames.Gives(margin.Place) : margin.LoadN > 0.0 ? $"bears {Times(margin)} its load" : "no load", -1, bold: gives);
        SetUpRows.Beside(panels, end, row, $"gets {pull.Digits(margin.LoadN)}, bears {pull.Text(margin.StrengthN)}", 1);
    }

    private static Look LookOf(WeakPlace place) => place switch
    {
        WeakPlace.HookHold or WeakPlace.HookWire => Looks.Lure,
        WeakPlace.Rod => Looks.Rod,
        _ => Looks.Line,
    };
}
