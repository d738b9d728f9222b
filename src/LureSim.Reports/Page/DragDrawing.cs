using System.Globalization;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Strike;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Page;

/// <summary>The drag window as SVG in the page: a bar from loose to shut for every reading of the thresholds, the drag now and the recommended one marked. Drawn once
/// wide and once narrow.</summary>
internal static class DragDrawing
{
    /// <summary>Both sizes; the style sheet shows one.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static Markup Both(StrikeReport report, Shown shown) => Markup.Tag(
        "figure", "window strike", new Frame(report, shown, 760).Draw("wide"), new Frame(report, shown, 344).Draw("narrow"));

    /// <summary>What bars and marks mean.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static string Key(StrikeReport report, Shown shown)
    {
        string best = report.Window.Advice.DragN is double drag ? $"; dashed: recommended, {shown.Pull(drag)}" : "";
        return $"Bars run from a loose drag to a shut one ({shown.Pull(report.Window.LockedN)}). Blue: sets the hook, and nothing gives; pale: does not set; red-brown: something gives; grey: neither sets nor spares. "
            + $"Line: drag now, {shown.Pull(report.Strike.Setup.Reel.DragN)}{best}.";
    }

    private sealed class Frame(StrikeReport report, Shown shown, double width)
    {
        private const double Left = 12, Right = 12, Row = 46, Words = 18, Bar = 22, Foot = 46;

        // Of a letter of the names inside bars, px.
        private const double Letter = 8.2;

        private readonly (string Name, DragRange Range)[] _rows = [.. DragWindowWords.Readings(report.Window, shown.OneFamily)];
        private readonly double _shut = Math.Max(report.Window.LockedN, report.Strike.Setup.Reel.DragN);

        private double Bottom => _rows.Length * Row;

        public Markup Draw(string @class) => PageSvg.Drawing(
            @class, width, Bottom + Foot, DragWindowWords.Title(report.Window, report.Strike.Setup.Hook.Points, shown), [.. _rows.SelectMany(Bars), .. Marks(), .. Axis()]);

        private IEnumerable<Markup> Bars((string Name, DragRange Range) row, int index)
        {
            double top = (index * Row) + Words;
            yield return PageSvg.Text(Left, top - 5, "start", row.Name, index == 0 ? "strong" : "");
            foreach (DragZone zone in DragZone.Of(row.Range, report.Window.LockedN))
            {
                string kind = (zone.Sets, zone.Spares) switch { (true, true) => "walks", (false, true) => "else", (true, false) => "gives", _ => "neither" };
                double from = X(zone.FromN), wide = X(zone.ToN) - from;
                yield return PageSvg.Box(from, top, wide, Bar, kind);
                yield return index == 0 ? Name(zone, row.Range, kind, top) : default;
            }
        }

        // In the widest stretch that no mark crosses, where it has room.
        private Markup Name(DragZone zone, DragRange range, string kind, double top)
        {
            double[] ends = [X(zone.FromN), .. Drags.Select(d => X(d.DragN)).Where(x => x > X(zone.FromN) && x < X(zone.ToN)).Order(), X(zone.ToN)];
            (double from, double to) = ends.Zip(ends.Skip(1)).MaxBy(e => e.Second - e.First);
            string name = DragWindowWords.Zone(zone, range, double.PositiveInfinity);
            return (Letter * name.Length) + 12 < to - from ? PageSvg.Text(0.5 * (from + to), top + 16, "middle", name, "on-" + kind) : default;
        }

        private (double DragN, string Class)[] Drags =>
            [(report.Strike.Setup.Reel.DragN, "now"), .. report.Window.Advice.DragN is double best ? [(best, "best")] : Array.Empty<(double, string)>()];

        private IEnumerable<Markup> Marks()
        {
            foreach ((double dragN, string kind) in Drags)
            {
                for (int i = 0; i < _rows.Length; i++)
                {
                    double top = (i * Row) + Words;
                    yield return PageSvg.Line(X(dragN), top - 2, X(dragN), top + Bar + 2, "halo");
                    yield return PageSvg.Line(X(dragN), top - 2, X(dragN), top + Bar + 2, kind);
                }
            }
        }

        private IEnumerable<Markup> Axis()
        {
            ShownUnit unit = shown.Unit(ShownQuantity.Pull, _shut);
            double step = PageSvg.Step(unit.Of(_shut) * 50.0 / (width - Left - Right));
            for (double v = 0.0; v <= unit.Of(_shut); v += step)
            {
                yield return PageSvg.Text(X(v * unit.Si), Bottom + 14, v == 0.0 ? "start" : "middle", v.ToString("0.##", CultureInfo.InvariantCulture), "soft");
            }

            yield return PageSvg.Text(width - Right, Bottom + 34, "end", $"drag, full spool, {unit.Name}", "");
        }

        private double X(double n) => Left + ((width - Left - Right - 14) * n / _shut);
    }
}
