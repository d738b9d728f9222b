using System.Globalization;
using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cadence;

namespace LureSim.Reports.Page;

/// <summary>
/// Which rhythms walk, as SVG in the page: glide over rhythm, under it a bar of what the lure does, the file's own rhythm and the best one marked.
/// Drawn once wide and once narrow, so that its text keeps its size on a phone.
/// </summary>
internal static class RhythmDrawing
{
    private static readonly double[] Ticks = [0.5, 0.6, 0.8, 1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0];

    /// <summary>Both sizes; the style sheet shows one.</summary>
    /// <param name="result">Rhythms of one set-up.</param>
    /// <param name="shown">Units.</param>
    public static Markup Both(CadenceResult result, Shown shown) => Markup.Tag(
        "figure", "window", new Frame(result, shown, 760).Draw("wide"), new Frame(result, shown, 344).Draw("narrow"));

    private sealed class Frame(CadenceResult result, Shown shown, double width)
    {
        private const double Left = 46, Right = 12, Top = 44, Plot = 190, Bar = 34, Foot = 46;

        private readonly double _from = Math.Log(result.Points[0].PerS), _to = Math.Log(result.Points[^1].PerS);
        private readonly ShownUnit _unit = shown.Unit(ShownQuantity.Size, Most(result));
        private readonly double _most = 1.08 * Math.Max(Most(result), 0.01);

        private static double Most(CadenceResult result) => result.Points.Select(p => p.Median(o => o.GlideWidthM)).Where(double.IsFinite).DefaultIfEmpty(0.0).Max();

        public Markup Draw(string @class) =>
            PageSvg.Drawing(@class, width, Top + Plot + Bar + Foot, CadenceStory.Headline(result), [.. Axes(), .. Bands(), .. Curve(), .. Marks()]);

        private IEnumerable<Markup> Axes()
        {
            double step = PageSvg.Step(_unit.Of(_most) / 5.0);
            for (double v = 0.0; _unit.Of(_most) >= v; v += step)
            {
                double y = Y(v * _unit.Si);
                yield return PageSvg.Line(Left, y, width - Right, y, "grid");
                yield return PageSvg.Text(Left - 8, y + 5, "end", v.ToString("0.##", CultureInfo.InvariantCulture), "soft");
            }

            yield return PageSvg.Text(Left, Top - 26, "start", $"glide to the side a twitch, {_unit.Name}", "");
            double last = double.NegativeInfinity;
            foreach (double tick in Ticks.Where(t => t >= result.Points[0].PerS && t <= result.Points[^1].PerS))
            {
                if (X(tick) - last >= 34)
                {
                    last = X(tick);
                    yield return PageSvg.Text(last, Top + Plot + Bar + 18, "middle", CadenceStory.Rate(tick), "soft");
                }
            }

            yield return PageSvg.Text(width - Right, Top + Plot + Bar + 38, "end", "twitches a second", "");
        }

        private IEnumerable<Markup> Bands()
        {
            foreach ((WalkPattern? pattern, double from, double to) in result.Bands())
            {
                double x = X(from), w = Math.Max(1.0, X(to) - x), y = Top + Plot;
                string name = PatternClasses.Name(pattern);
                yield return PageSvg.Box(x, y, w, Bar, pattern == WalkPattern.Alternating ? "walks" : "else");
                if (w > (8.2 * name.Length) + 6)
                {
                    yield return PageSvg.Text(x + (0.5 * w), y + (0.5 * Bar) + 5, "middle", name, pattern == WalkPattern.Alternating ? "on-walks" : "on-else");
                }
            }
        }

        private IEnumerable<Markup> Curve()
        {
            RhythmPoint[] told = [.. result.Points.Where(p => double.IsFinite(p.Median(o => o.GlideWidthM)))];
            for (int i = 1; i < told.Length; i++)
            {
                yield return PageSvg.Line(X(told[i - 1].PerS), Y(Glide(told[i - 1])), X(told[i].PerS), Y(Glide(told[i])), told[i - 1].Walks && told[i].Walks ? "curve" : "curve off");
            }

            foreach (RhythmPoint p in told)
            {
                yield return Markup.Tag("circle", [("class", p.Walks ? "dot" : "dot off"), ("cx", PageSvg.N(X(p.PerS))), ("cy", PageSvg.N(Y(Glide(p)))), ("r", "4")]);
            }
        }

        private IEnumerable<Markup> Marks()
        {
            double own = result.Task.CadencePerS;
            if (own >= result.Points[0].PerS && own <= result.Points[^1].PerS)
            {
                yield return PageSvg.Line(X(own), Top - 2, X(own), Top + Plot + Bar, "own-rhythm");
                bool late = X(own) > 0.6 * width;
                yield return PageSvg.Text(X(own) + (late ? -6 : 6), Top - 6, late ? "end" : "start", $"this set-up: {CadenceStory.Rate(own)}", "strong");
            }
        }

        private static double Glide(RhythmPoint p) => p.Median(o => o.GlideWidthM);

        private double X(double perS) => Left + ((width - Left - Right) * (Math.Log(perS) - _from) / (_to - _from));

        private double Y(double m) => Top + (Plot * (1.0 - (Math.Clamp(m, 0.0, _most) / _most)));
    }
}
