using System.Globalization;
using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Strike;
using LureSim.Studies.Strike;
using OxyPlot;

namespace LureSim.Reports.Page;

/// <summary>A strike as SVG in the page: rod and line at its moments, to scale, and the pull on the hook over time. Drawn once wide and once narrow.</summary>
internal static class PullDrawing
{
    /// <summary>Both sizes; the style sheet shows one.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static Markup Both(StrikeReport report, Shown shown) => Markup.Tag(
        "figure", "window strike", new Frame(report, shown, 760).Draw("wide"), new Frame(report, shown, 344).Draw("narrow"));

    private sealed class Frame(StrikeReport report, Shown shown, double width)
    {
        private const double Left = 46, Right = 12, Head = 28, Scene = 210, Between = 52, Plot = 160, Foot = 46, Letters = 14, Behind = 0.3, Ahead = 0.6;

        private readonly StrikeResult _strike = report.Strike;
        private readonly double _most = Math.Max(1.25 * report.Strike.Series["hook_force_N"].Max(), 1.1 * report.Window.SettingN);
        private readonly (double Low, double High) _reach = StrikeForce.Frame(report.Strike.Moments);

        private ShownUnit Unit => shown.Unit(ShownQuantity.Pull, _most);

        private static double PlotTop => Head + Scene + Between;

        private OxyRect SceneArea => new(Left, Head, width - Left - Right, Scene);

        public Markup Draw(string @class) => PageSvg.Drawing(
            @class, width, PlotTop + Plot + Foot, StrikeForce.Title(_strike, shown), [.. Ground(), .. Shapes(), .. Axes(), .. Curve()]);

        private IEnumerable<Markup> Ground()
        {
            bool side = _strike.Task.Stroke.Plane == StrokePlane.Side;
            double water = side ? Head : At(0.0, 0.0).Y, foot = Head + Scene - 10;
            yield return PageSvg.Text(Left, Head - 12, "start", side ? "rod and line from above, to scale" : "rod and line from the side, to scale", "");
            yield return PageSvg.Box(Left, water, width - Left - Right, Head + Scene - water, "water");
            ShownUnit way = shown.Unit(ShownQuantity.Distance, 1.0);
            double bar = way.Si < 0.5 ? 3.0 : 1.0, end = Left + 8 + (bar * way.Si * Scale);
            yield return PageSvg.Line(Left + 8, foot - 5, end, foot - 5, "bar");
            yield return PageSvg.Text(end + 6, foot, "start", $"{Trade.Fixed(bar, 0)} {way.Name}", "");
            yield return PageSvg.Text(width - Right - 6, foot, "end", $"hook {shown.OneFamily.Distance(_strike.Task.DistanceM)} away", "");
        }

        private IEnumerable<Markup> Shapes()
        {
            var drawn = new List<ScreenPoint>();
            foreach (StrikeMoment moment in _strike.Moments.OrderBy(m => m.Name == StrikeMomentName.Peak))
            {
                string off = moment.Name == StrikeMomentName.Peak ? "" : " off";
                ScreenPoint[] line = [.. Inside(Places(moment.LineX, moment.LineZ))], rod = Places(moment.RodX, moment.RodZ);
                drawn.AddRange(Tags.Along(line).Concat(Tags.Along(rod)));
                yield return PageSvg.Path(line, "thread" + off);
                yield return PageSvg.Path(rod, "rod" + off);
            }

            OxyRect room = new(Left, Head, SceneArea.Width, Scene - 28);
            foreach (Markup tag in Named(room, [.. _strike.Moments.Select((m, i) => new Tag(i + 1, At(m.RodX[^1], m.RodZ[^1]), StrikeNames.Of(m.Name)))], drawn))
            {
                yield return tag;
            }
        }

        private static IEnumerable<Markup> Named(OxyRect room, IReadOnlyList<Tag> tags, IReadOnlyList<ScreenPoint> drawn)
        {
            foreach ((string text, OxyRect box, ScreenPoint at) in Tags.Place(room, tags, drawn, Letters))
            {
                var edge = new ScreenPoint(Math.Clamp(at.X, box.Left, box.Right), Math.Clamp(at.Y, box.Top, box.Bottom));
                yield return edge.DistanceTo(at) > Letters ? PageSvg.Line(edge.X, edge.Y, at.X, at.Y, "lead") : default;
                yield return PageSvg.Text(box.Left + (0.5 * box.Width), box.Bottom - 4, "middle", text, "strong");
            }
        }

        private IEnumerable<Markup> Axes()
        {
            yield return report.Guesses.SettingN is Ranged guess ? PageSvg.Box(Left, Y(guess.High), width - Left - Right, Y(guess.Low) - Y(guess.High), "guess") : default;
            foreach ((double from, double to) in StrikeForce.SlipSpans(_strike))
            {
                yield return PageSvg.Box(X(from), PlotTop, X(to) - X(from), Plot, "slip");
            }

            double step = PageSvg.Step(Unit.Of(_most) / 5.0), end = _strike.Series["time_s"][^1], every = PageSvg.Step(end * 50.0 / (width - Left - Right));
            for (double v = 0.0; Unit.Of(_most) >= v; v += step)
            {
                double y = Y(v * Unit.Si);
                yield return PageSvg.Line(Left, y, width - Right, y, "grid");
                yield return PageSvg.Text(Left - 8, y + 5, "end", v.ToString("0.##", CultureInfo.InvariantCulture), "soft");
            }

            for (double t = 0.0; t < end - (0.2 * every); t += every)
            {
                yield return PageSvg.Text(X(t), PlotTop + Plot + 18, "middle", t.ToString("0.##", CultureInfo.InvariantCulture), "soft");
            }

            yield return PageSvg.Text(Left, PlotTop - 12, "start", $"pull on the hook, {Unit.Name}", "");
            yield return PageSvg.Text(width - Right, PlotTop + Plot + 38, "end", "time from the first movement, s", "");
            yield return PageSvg.Line(Left, Y(report.Window.SettingN), width - Right, Y(report.Window.SettingN), "level");
        }

        private IEnumerable<Markup> Curve()
        {
            ScreenPoint[] curve = [.. _strike.Series["time_s"].Zip(_strike.Series["hook_force_N"], (t, f) => new ScreenPoint(X(t), Y(f)))];
            yield return PageSvg.Path(curve, "pull");
            foreach (StrikeMoment m in _strike.Moments)
            {
                yield return Markup.Tag("circle", [("class", "moment"), ("cx", PageSvg.N(X(m.TimeS))), ("cy", PageSvg.N(Y(m.HookForceN))), ("r", "4")]);
            }

            OxyRect room = new(Left, PlotTop, width - Left - Right, Plot);
            foreach (Markup tag in Named(
                room, [.. _strike.Moments.Select((m, i) => new Tag(i + 1, new(X(m.TimeS), Y(m.HookForceN)), m.Name == StrikeMomentName.Peak ? shown.OneFamily.Pull(m.HookForceN) : ""))], [.. Tags.Along(curve)]))
            {
                yield return tag;
            }
        }

        // Up to the edge of the picture.
        private IEnumerable<ScreenPoint> Inside(ScreenPoint[] points)
        {
            double right = SceneArea.Right;
            for (int i = 0; i < points.Length; i++)
            {
                if (points[i].X > right)
                {
                    yield return points[i - 1] + ((points[i] - points[i - 1]) * ((right - points[i - 1].X) / (points[i].X - points[i - 1].X)));
                    yield break;
                }

                yield return points[i];
            }
        }

        private ScreenPoint[] Places(ValueList<double> xM, ValueList<double> zM) => [.. xM.Zip(zM, At)];

        // px per m, one for both directions: all of the rod and the beginning of the line.
        private double Scale => Math.Min(Scene / (_reach.High - _reach.Low), SceneArea.Width / (_strike.Moments.Max(m => m.RodX.Max()) + Ahead - LeftM));

        private double LeftM => _strike.Moments.Min(m => m.RodX.Min()) - Behind;

        private ScreenPoint At(double xM, double zM) => new(Left + ((xM - LeftM) * Scale), Head + ((_reach.High - zM) * Scale));

        private double X(double s) => Left + ((width - Left - Right) * s / _strike.Series["time_s"][^1]);

        private double Y(double n) => PlotTop + (Plot * (1.0 - Math.Clamp(n / _most, 0.0, 1.0)));
    }
}
