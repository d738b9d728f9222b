using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Doubt;

/// <summary>A row of a chart of guesses that are told from chance.</summary>
/// <param name="Label">What the guess is, with its range.</param>
/// <param name="Low">Shift of the figure at the low end, SI; NaN for none.</param>
/// <param name="High">The same at the high end.</param>
/// <param name="Together">How far the figure moves with the guess beside others, where it does nothing alone, SI; else NaN.</param>
internal sealed record GuessBar(string Label, double Low, double High, double Together = double.NaN)
{
    /// <summary>The guess without its range: what a title calls it.</summary>
    public string Name => Label.LastIndexOf(" (", StringComparison.Ordinal) is > 0 and int at ? Label[..at] : Label;
}

/// <summary>Bars of what guesses do to a figure, the largest on top, and one grey row for all that is not told from chance: those have no order.</summary>
internal static class GuessBars
{
    /// <summary>Most rows of guesses.</summary>
    public const int MostRows = 9;

    private const double Thick = 0.4, Reach = 1.15;

    /// <summary>Name of the picture of a figure.</summary>
    /// <param name="figure">Figure that is moved.</param>
    public static string Name(HeadlineFigure figure) => "doubt_" + Stem(figure.Key);

    /// <summary>The figure in the unit of a picture.</summary>
    /// <param name="figure">Figure.</param>
    /// <param name="shown">Units.</param>
    /// <param name="sizes">Sizes shown, SI; those that are no numbers do not count.</param>
    public static HeadlineFigure In(HeadlineFigure figure, Shown shown, IEnumerable<double> sizes)
    {
        ShownUnit unit = FigureUnit.Of(shown, figure, sizes.Where(double.IsFinite).Select(Math.Abs).DefaultIfEmpty(0.0).Max());
        return unit.Name.Length > 0 ? figure with { Unit = unit.Name, Scale = 1.0 / unit.Si } : figure;
    }

    /// <summary>The title: the guess that matters most, and how far it moves the figure.</summary>
    /// <param name="figure">Figure in the unit of the picture.</param>
    /// <param name="told">Guesses told from chance, the largest first.</param>
    public static string Title(HeadlineFigure figure, IReadOnlyList<GuessBar> told)
    {
        if (told.Count == 0)
        {
            return $"No guess moves the {figure.Words} by more than chance does";
        }

        string name = Trade.Capital(told[0].Name);
        string Show(double value) => $"{Trade.Digits(figure.Scale * value)}";
        if (double.IsFinite(told[0].Together))
        {
            return $"{name} matters most, but only beside others: {Show(told[0].Together)} {figure.Unit}";
        }

        double[] ends = [.. new[] { told[0].Low, told[0].High }.Where(double.IsFinite)];
        double low = ends.Append(0.0).Min(), high = ends.Append(0.0).Max();
        return low < 0.0 && high > 0.0
            ? $"{name} matters most: {Show(low)} to +{Show(high)} {figure.Unit}"
            : $"{name} matters most: {(high > 0.0 ? "+" : "")}{Show(low + high)} {figure.Unit}";
    }

    /// <summary>Draws them: the picture and its height, px.</summary>
    /// <param name="figure">Figure in the unit of the picture.</param>
    /// <param name="subtitle">What the picture is about.</param>
    /// <param name="axis">What the axis counts, without unit.</param>
    /// <param name="told">Guesses told from chance, the largest first.</param>
    /// <param name="rest">Number of guesses that are not.</param>
    /// <param name="criterion">How chance is told, for people.</param>
    /// <param name="entries">Legend.</param>
    public static (PlotModel Model, int Height) Build(
        HeadlineFigure figure, string subtitle, string axis, IReadOnlyList<GuessBar> told, int rest, string criterion, params HeaderEntry[] entries)
    {
        PlotModel model = ChartStyle.NewModel(Title(figure, told), subtitle);
        GuessBar[] rows = [.. told.Take(MostRows)];
        string[] labels = [.. rows.Select(r => r.Label), .. rest > 0 || told.Count > rows.Length ? new[] { "the rest" } : []];
        double reach = Reach * figure.Scale * rows.SelectMany(r => new[] { Math.Abs(r.Low), Math.Abs(r.High), 0.5 * r.Together })
            .Where(double.IsFinite).DefaultIfEmpty(0.0).Max();
        reach = reach > 0.0 ? reach : 1.0;
        int height = SetUpRows.Height(labels.Length);
        var panels = new Panels(model, height, [SetUpRows.Axis(labels)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"{axis}, {figure.Unit}", -reach, reach));
        for (int i = 0; i < rows.Length; i++)
        {
            AddRow(panels, labels.Length - 1 - i, rows[i], figure.Scale);
        }

        if (labels.Length > rows.Length)
        {
            AddRest(panels, told.Count - rows.Length, rest, criterion, reach);
        }

        panels.Header(0, string.Empty, [.. entries, .. rows.Any(r => double.IsFinite(r.Together)) ? new[] { new HeaderEntry("only beside others", ChartStyle.Ink) } : []]);
        return (model, height);
    }

    private static void AddRow(Panels panels, int row, GuessBar bar, double scale)
    {
        SetUpRows.Box(panels, 0.0, scale * bar.Low, row + (0.5 * Thick), 0.5 * Thick, Looks.LowEnd);
        SetUpRows.Box(panels, 0.0, scale * bar.High, row - (0.5 * Thick), 0.5 * Thick, Looks.HighEnd);
        if (double.IsFinite(bar.Together))
        {
            double half = 0.5 * scale * bar.Together;
            panels.Line(0, [-half, half], [row, row], ChartStyle.Ink, 5);
        }
    }

    // One row, one colour, no order.
    private static void AddRest(Panels panels, int smaller, int chance, string criterion, double reach)
    {
        SetUpRows.Box(panels, -reach, reach, 0, Thick, Looks.Chance);
        string[] words =
        [
            .. smaller > 0 ? [$"{smaller} more move it less"] : Array.Empty<string>(),
            .. chance > 0 ? new[] { $"{chance} not told apart from chance ({criterion})" } : [],
        ];
        panels.Model.Annotations.Add(new TextAnnotation
        {
            YAxisKey = Panels.Key(0),
            Text = string.Join("; ", words),
            TextPosition = new DataPoint(0.0, 0.0),
            Stroke = OxyColors.Undefined,
            FontSize = ChartStyle.TextSize,
            TextColor = ChartStyle.Ink,
            TextHorizontalAlignment = HorizontalAlignment.Center,
            TextVerticalAlignment = VerticalAlignment.Middle,
        });
    }

    private static string Stem(string key)
    {
        string? rate = Array.Find(["_per_s", "_m_s"], unit => key.EndsWith(unit, StringComparison.Ordinal));
        return rate is null ? key[..key.LastIndexOf('_')] : key[..^rate.Length];
    }
}
