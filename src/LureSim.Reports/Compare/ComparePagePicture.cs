using LureSim.Model.Assembly;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using LureSim.Studies.Compare;
using OxyPlot;

namespace LureSim.Reports.Compare;

/// <summary>The drawing of <see cref="ComparePage"/>: columns side by side, a row for each set-up, verdicts at the foot.</summary>
internal sealed class ComparePagePicture
{
    private const double Head = 78, Foot = 96, Gap = 18;
    private readonly CompareResult _result;
    private readonly CompareNumbers _numbers;
    private readonly int _rows;
    private readonly PageColumn[] _columns;

    public ComparePagePicture(CompareResult result, CompareNumbers numbers)
    {
        (_result, _numbers, _rows) = (result, numbers, Math.Min(result.SetUps.Count, ComparePage.MostRows));
        _columns =
        [
            new("Rod tip\nover the water", 0.21, [RodMeasures.Clearance, RodMeasures.LowClearance], DrawRod),
            new("How far\nyou cast", 0.20, [CastMeasures.Distance], DrawDistance),
            new("Twitches/s\nthat walk", 0.19, [RetrieveMeasures.Slowest, RetrieveMeasures.Fastest, RetrieveMeasures.KeptUp], DrawRhythms),
            new("How wide\nit walks", 0.12, [RetrieveMeasures.Width], DrawWidth),
            new("How heavy\nit swings", 0.13, [RodMeasures.SwingWeight, RodMeasures.TipHeaviness], DrawSwing),
            new("Turns of\nthe handle", 0.15, [RetrieveMeasures.Turns, RetrieveMeasures.TakeUp, RetrieveMeasures.SlackBudget], DrawHandle),
        ];
    }

    /// <summary>Draws it.</summary>
    /// <param name="brush">Page.</param>
    /// <param name="area">Where.</param>
    public void Draw(PageBrush brush, OxyRect area)
    {
        double names = 0.13 * area.Width, width = area.Width - names, row = (area.Height - Head - Foot) / _rows, left = area.Left + names;
        double bottom = area.Bottom - Foot;
        for (int i = 0; i < _rows; i++)
        {
            double top = area.Top + Head + (i * row);
            brush.Box(area.Left, top + 2, area.Width, row - 4, i % 2 == 0 ? OxyColor.FromRgb(246, 246, 246) : OxyColors.White);
            brush.Words(area.Left + 8, top + (0.5 * row), _result.SetUps[i].Label, names - Gap, HorizontalAlignment.Left, ChartStyle.HeaderSize, bold: true);
        }

        brush.Words(area.Left + 8, bottom + (0.5 * Foot), "Will you\nnotice it?", names - Gap, HorizontalAlignment.Left, ChartStyle.HeaderSize, bold: true);
        foreach (PageColumn column in _columns)
        {
            double wide = column.Share * width;
            brush.Words(left + (0.5 * wide), area.Top + (0.5 * Head), column.Title, wide - Gap, HorizontalAlignment.Center, ChartStyle.TextSize, bold: true);
            for (int i = 0; i < _rows; i++)
            {
                column.Draw(brush, i, new OxyRect(left + (0.5 * Gap), area.Top + Head + (i * row) + 8, wide - Gap, row - 16));
            }

            DrawVerdict(brush, column, new OxyRect(left + (0.5 * Gap), bottom + 10, wide - Gap, Foot - 14));
            left += wide;
        }
    }

    private void DrawVerdict(PageBrush brush, PageColumn column, OxyRect cell)
    {
        CompareVerdict verdict = CompareWords.Strongest(_result.Differences.Where(d => column.Measures.Contains(d.Measure)));
        (OxyColor fill, OxyColor ink, string words) = verdict switch
        {
            CompareVerdict.Will => (ChartStyle.Blue, OxyColors.White, "yes"),
            CompareVerdict.May => (ChartStyle.Orange, ChartStyle.Ink, "perhaps"),
            CompareVerdict.WillNot => (ChartStyle.Grid, ChartStyle.Ink, "no"),
            _ => (OxyColors.White, ChartStyle.Ink, "cannot\nbe told"),
        };
        brush.Box(cell.Left, cell.Top, cell.Width, cell.Height, fill, ChartStyle.Grey);
        brush.Words(cell.Center.X, cell.Center.Y, words, cell.Width - 12, HorizontalAlignment.Center, ChartStyle.HeaderSize, bold: true, color: ink);
    }

    private void DrawRod(PageBrush brush, int setUp, OxyRect cell)
    {
        Setup[] all = [.. _result.SetUps.Take(_rows).Select(s => s.SetUp.Here.Setup!)];
        Setup own = all[setUp];
        double far = all.Max(s => s.Rod.FreeLengthM * Math.Cos(s.Angler.RodElevationRad)), high = all.Max(s => s.Angler.HandHeightM + Math.Max(0.0, s.Rod.FreeLengthM * Math.Sin(s.Angler.RodElevationRad)));
        double scale = Math.Min((cell.Width - 124) / far, (cell.Height - 22) / high), water = cell.Bottom - 8, foot = cell.Left + 14;
        brush.Box(cell.Left, water, cell.Width, 8, ChartStyle.Sky);
        double hand = water - (scale * own.Angler.HandHeightM), rest = _result.Column(RodMeasures.Clearance, setUp).AsItStands.Value;
        double length = scale * own.Rod.FreeLengthM, tipX = foot + (length * Math.Cos(own.Angler.RodElevationRad)), straight = length * Math.Sin(own.Angler.RodElevationRad);
        double sag = double.IsFinite(rest) ? hand - straight - (water - (scale * rest)) : 0.0;
        brush.Line([new(foot, hand), new(foot, water)], ChartStyle.Grey, 5);
        brush.Line([.. Enumerable.Range(0, 13).Select(k => k / 12.0).Select(t => new DataPoint(foot + (t * (tipX - foot)), hand - (t * straight) - (t * t * sag)))], ChartStyle.Ink, 5);
        brush.Disc(foot, hand, 8, ChartStyle.Vermilion);
        if (double.IsFinite(rest))
        {
            double tip = water - (scale * Math.Max(0.0, rest));
            brush.Line([new(tipX, tip + 4), new(tipX, water)], ChartStyle.Blue, 3, dashed: true);
            brush.Words(tipX + 8, 0.5 * (tip + water), rest > 0.0 ? Text(RodMeasures.Clearance, rest) : "in the\nwater", cell.Right - tipX - 8, HorizontalAlignment.Left);
        }
    }

    private void DrawDistance(PageBrush brush, int setUp, OxyRect cell)
    {
        double mean = _result.Column(CastMeasures.Distance, setUp).Mean;
        if (!double.IsFinite(mean))
        {
            brush.Words(cell.Left, cell.Center.Y, "no cast", cell.Width, HorizontalAlignment.Left);
            return;
        }

        Spread band = Spread.Of(_result.Column(CastMeasures.Distance, setUp).Draws.Select(d => d.Value));
        double most = Enumerable.Range(0, _rows).SelectMany(i => new[] { _result.Column(CastMeasures.Distance, i).Mean, Spread.Of(_result.Column(CastMeasures.Distance, i).Draws.Select(d => d.Value)).High })
            .Where(double.IsFinite).Max();
        double scale = cell.Width / Math.Max(1.0, most), thick = Math.Min(34.0, 0.34 * cell.Height), y = cell.Center.Y + 6;
        brush.Box(cell.Left, y, scale * mean, thick, ChartStyle.Blue);
        if (double.IsFinite(band.Low))
        {
            brush.Box(cell.Left + (scale * band.Low), y + (0.28 * thick), scale * (band.High - band.Low), 0.44 * thick, ChartStyle.Faint(ChartStyle.Sky, 0.75));
        }

        brush.Words(cell.Left, y - 18, Text(CastMeasures.Distance, mean), cell.Width, HorizontalAlignment.Left);
    }

    private void DrawRhythms(PageBrush brush, int setUp, OxyRect cell)
    {
        double from = _result.Column(RetrieveMeasures.Slowest, setUp).Mean, to = _result.Column(RetrieveMeasures.Fastest, setUp).Mean, kept = _result.Column(RetrieveMeasures.KeptUp, setUp).Mean;
        double low = _result.Plan.Search.FromPerS, high = _result.Plan.Search.ToPerS, thick = Math.Min(34.0, 0.34 * cell.Height), y = cell.Center.Y + 6;
        double At(double perS) => cell.Left + (cell.Width * Math.Clamp((perS - low) / (high - low), 0.0, 1.0));
        brush.Box(cell.Left, y, cell.Width, thick, ChartStyle.Grid);
        if (!double.IsFinite(from) || !double.IsFinite(to))
        {
            brush.Words(cell.Left, y - 18, "does not walk", cell.Width, HorizontalAlignment.Left);
            return;
        }

        brush.Box(At(from), y, At(to) - At(from), thick, ChartStyle.Orange);
        brush.Box(At(from), y, At(double.IsFinite(kept) ? kept : from) - At(from), thick, ChartStyle.Green);
        string words = $"{Trade.Fixed(from, 1)} to {Trade.Fixed(to, 1)}";
        brush.Words(cell.Left, y - 18, double.IsFinite(kept) && kept < to - 0.05 ? $"{words}, wrist {Trade.Fixed(kept, 1)}" : words, cell.Width, HorizontalAlignment.Left);
    }

    private void DrawWidth(PageBrush brush, int setUp, OxyRect cell)
    {
        double mean = _result.Column(RetrieveMeasures.Width, setUp).Mean, most = Enumerable.Range(0, _rows).Max(i => Finite(_result.Column(RetrieveMeasures.Width, i).Mean));
        double thick = Math.Min(34.0, 0.34 * cell.Height), y = cell.Center.Y + 6, half = most > 0.0 ? 0.5 * cell.Width * Finite(mean) / most : 0.0;
        brush.Box(cell.Center.X - half, y, 2.0 * half, thick, ChartStyle.Green);
        brush.Line([new(cell.Center.X, y - 4), new(cell.Center.X, y + thick + 4)], ChartStyle.Ink, 2);
        brush.Words(cell.Center.X, y - 18, half > 0.0 ? Text(RetrieveMeasures.Width, mean) : "none", cell.Width, HorizontalAlignment.Center);
    }

    private void DrawSwing(PageBrush brush, int setUp, OxyRect cell)
    {
        double own = _result.Column(RodMeasures.SwingWeight, setUp).Mean, most = Enumerable.Range(0, _rows).Max(i => Finite(_result.Column(RodMeasures.SwingWeight, i).Mean));
        double radius = Math.Min(0.5 * cell.Width, 0.5 * (cell.Height - 36)) * Math.Sqrt(most > 0.0 ? Finite(own) / most : 0.0);
        brush.Disc(cell.Center.X, cell.Top + 34 + (0.5 * (cell.Height - 36)), radius, ChartStyle.Purple);
        brush.Words(cell.Center.X, cell.Top + 16, double.IsFinite(own) && most > 0.0 ? $"{Trade.Fixed(100.0 * own / most, 0)} %" : "none", cell.Width, HorizontalAlignment.Center);
    }

    private void DrawHandle(PageBrush brush, int setUp, OxyRect cell)
    {
        double turns = _result.Column(RetrieveMeasures.Turns, setUp).Mean, takeUp = _result.Column(RetrieveMeasures.TakeUp, setUp).Mean;
        string words = double.IsFinite(turns) ? $"{Trade.Fixed(turns, 2)} a second,\n{Text(RetrieveMeasures.TakeUp, takeUp)} each" : "none";
        brush.Words(cell.Center.X, cell.Center.Y, words, cell.Width, HorizontalAlignment.Center);
    }

    private static double Finite(double value) => double.IsFinite(value) ? value : 0.0;

    private string Text(CompareMeasure measure, double value) => _numbers.Value(measure, value);
}

/// <summary>A column of the page.</summary>
/// <param name="Title">Heading.</param>
/// <param name="Share">Share of the width.</param>
/// <param name="Measures">Rows whose strongest verdict stands at its foot.</param>
/// <param name="Draw">Draws a set-up into a cell.</param>
internal sealed record PageColumn(string Title, double Share, IReadOnlyList<CompareMeasure> Measures, Action<PageBrush, int, OxyRect> Draw);
