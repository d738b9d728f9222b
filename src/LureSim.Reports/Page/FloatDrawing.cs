using LureSim.Model.Trim;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Trim;
using LureSim.Scenarios.Keys;
using OxyPlot;

namespace LureSim.Reports.Page;

/// <summary>The lure at rest from the side as SVG in the page, to scale: outline, axis, water, freeboard, centres, tie, weights and hooks, each named. Drawn once wide and once
/// narrow.</summary>
internal static class FloatDrawing
{
    /// <summary>Both sizes; the style sheet shows one.</summary>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="hooks">Which of its hooks are known to be hooks; the others may be skirts.</param>
    /// <param name="shown">Units.</param>
    public static Markup Both(TrimResult trim, HookSizes hooks, Shown shown)
    {
        HashSet<int> sized = [.. hooks.Hooks.Select(h => h.Index)];
        return Markup.Tag("figure", "window afloat", new Frame(trim, sized, shown, 760).Draw("wide"), new Frame(trim, sized, shown, 344).Draw("narrow"));
    }

    private sealed class Frame
    {
        private const double Side = 12, Head = 22, Names = 40, Room = 12, Most = 280, Foot = 34, Dot = 5, Ring = 8, Arc = 46, Letters = 14;

        // From this trim on the angle is wide enough to be seen as one, rad.
        private const double SeenFromRad = 0.1;

        private readonly TrimResult _trim;
        private readonly HashSet<int> _sized;
        private readonly Shown _shown;
        private readonly double _width, _leftM, _rightM, _lowM, _highM;

        public Frame(TrimResult trim, HashSet<int> sized, Shown shown, double width)
        {
            (_trim, _sized, _shown, _width) = (trim, sized, shown, width);
            HullProfile p = trim.Profile;
            double[] x = [.. p.BackXM, .. p.BellyXM, .. p.Marks.Select(m => m.XM)], z = [0.0, .. p.BackZM, .. p.BellyZM, .. p.Marks.Select(m => m.ZM)];
            (_leftM, _rightM, _lowM, _highM) = (x.Min(), x.Max(), z.Min(), z.Max());
        }

        // px per m, one for both directions.
        private double Scale => Math.Min((_width - (4 * Side)) / (_rightM - _leftM), Most / (_highM - _lowM));

        private static double Top => Head + Names + Room;

        private double SceneFoot => Top + (Scale * (_highM - _lowM)) + Room;

        private ScreenPoint BackAmidships => At(_trim.Profile.BackXM[_trim.Profile.BackXM.Count / 2], _trim.FreeboardM);

        private string Freeboard => _trim.FreeboardM >= 0.0 ? $"freeboard {_shown.OneFamily.Size(_trim.FreeboardM)}" : $"back {_shown.OneFamily.Size(-_trim.FreeboardM)} under";

        public Markup Draw(string @class) => PageSvg.Drawing(
            @class, _width, SceneFoot + Names + Foot, $"The lure at rest from the side. {TrimText.Headline(_trim, _shown)}; {Freeboard}", [.. Ground(), .. Body(), .. Labels(), .. Marks()]);

        private IEnumerable<Markup> Ground()
        {
            double water = At(0.0, 0.0).Y, bottom = SceneFoot + Names + Foot;
            yield return PageSvg.Box(0.0, water, _width, bottom - water, "water");
            yield return PageSvg.Text(Side, Letters, "start", $"floats {TrimText.Angle(_trim.Rest.TrimRad)}", "strong");
            ShownUnit unit = _shown.OneFamily.Unit(ShownQuantity.Size, _rightM - _leftM);
            double bar = PageSvg.Step(unit.Of(0.1 * (_rightM - _leftM))), end = Side + (bar * unit.Si * Scale);
            yield return PageSvg.Line(Side, bottom - 13, end, bottom - 13, "bar");
            yield return PageSvg.Text(end + 8, bottom - 8, "start", $"{Trade.Fixed(bar, bar < 1.0 ? 1 : 0)} {unit.Name}", "");
            yield return PageSvg.Text(_width - Side, bottom - 8, "end", "water at rest", "soft");
        }

        private IEnumerable<Markup> Body()
        {
            HullProfile p = _trim.Profile;
            ScreenPoint[] back = [.. p.BackXM.Zip(p.BackZM, At)], belly = [.. p.BellyXM.Zip(p.BellyZM, At)];
            yield return PageSvg.Path([.. back, .. belly.Reverse(), back[0]], "hull");
            double water = At(0.0, 0.0).Y;
            yield return PageSvg.Line(0.0, water, _width, water, "surface");
            foreach (Markup line in _trim.IsUpright ? Axis() : [])
            {
                yield return line;
            }

            ScreenPoint high = BackAmidships;
            yield return PageSvg.Line(high.X, high.Y, high.X, water, "height");
        }

        // Through the middle of the length, which lies at x = 0 of the profile; the tie tells how high.
        private IEnumerable<Markup> Axis()
        {
            (double sin, double cos) = Math.SinCos(_trim.Rest.TrimRad);
            HullMark tie = _trim.Profile.Marks.First(m => m.Name == "line tie");
            double middle = tie.ZM - (_trim.Lure.TieXM * sin) - (_trim.Lure.TieZM * cos), half = 0.5 * _trim.Lure.LengthM;
            ScreenPoint tail = At(-half * cos, middle - (half * sin)), nose = At(half * cos, middle + (half * sin));
            yield return PageSvg.Line(tail.X, tail.Y, nose.X, nose.Y, "axis");
            if (Math.Abs(_trim.Rest.TrimRad) >= SeenFromRad && Math.Abs(middle) < half * Math.Abs(sin))
            {
                ScreenPoint corner = At(-middle * cos / sin, 0.0);
                yield return PageSvg.Path(Enumerable.Range(0, 13).Select(i => _trim.Rest.TrimRad * i / 12.0).Select(a => new ScreenPoint(corner.X + (Arc * Math.Cos(a)), corner.Y - (Arc * Math.Sin(a)))), "arc");
            }
        }

        // The larger ring of buoyancy around the dot of gravity: at rest they lie over each other, often within a millimetre.
        private IEnumerable<Markup> Marks() => Marked().OrderByDescending(m => m.Kind == "buoyancy").Select(m => m.Kind == "weight"
            ? PageSvg.Box(m.At.X - Dot, m.At.Y - Dot, 2 * Dot, 2 * Dot, m.Kind)
            : Markup.Tag("circle", [("class", m.Kind), ("cx", PageSvg.N(m.At.X)), ("cy", PageSvg.N(m.At.Y)), ("r", PageSvg.N(m.Kind == "buoyancy" ? Ring : Dot))]));

        private IEnumerable<Markup> Labels()
        {
            Mark[] marks = [.. Marked()];
            SideLabel[] above = [.. marks.Where(m => m.Kind == "tie").Select(Label), new(Freeboard, Freeboard, [BackAmidships])];
            SideLabel[] below = [.. marks.Where(m => m.Kind is not ("tie" or "hanger")).Select(Label), .. Hangers(marks)];
            return [.. Drawn(above, Side, _width - Side, Head + Letters, Head + Letters + 6), .. Drawn(below, Side, _width - Side, SceneFoot + Names - 4, SceneFoot + Names - Letters - 6)];

            static SideLabel Label(Mark mark) => new(mark.Name, mark.Short, [mark.At]);
        }

        // A ring and the hook on it hang at one place.
        private static IEnumerable<SideLabel> Hangers(Mark[] marks)
        {
            var left = marks.Where(m => m.Kind == "hanger").ToList();
            while (left.Count > 0)
            {
                Mark[] here = [.. left.Where(m => m.At.DistanceTo(left[0].At) < Dot)];
                yield return new(Trade.And([.. here.Select(m => m.Name).Distinct()]), here[0].Short, [here[0].At]);
                left.RemoveAll(here.Contains);
            }
        }

        private static IEnumerable<Markup> Drawn(SideLabel[] labels, double left, double right, double foot, double from)
        {
            foreach ((SideLabel label, string text, double x) in SideLabel.Place(labels, left, right))
            {
                foreach (ScreenPoint at in label.At)
                {
                    yield return PageSvg.Line(x, from, at.X, at.Y, "lead");
                }

                yield return PageSvg.Text(x, foot, "middle", text, "");
            }
        }

        // In the order of the profile; its hooks are those of the lure, rings and skirts among them.
        private IEnumerable<Mark> Marked()
        {
            int hook = 0;
            foreach (HullMark mark in _trim.Profile.Marks)
            {
                ScreenPoint at = At(mark.XM, mark.ZM);
                yield return mark.Name switch
                {
                    "centre of gravity" => new(at, "gravity", mark.Name, "gravity"),
                    "centre of buoyancy" => new(at, "buoyancy", mark.Name, "buoyancy"),
                    "line tie" => new(at, "tie", mark.Name, mark.Name),
                    "ballast" => new(at, "weight", "weight", "weight"),
                    _ => Hanger(at, hook++),
                };
            }
        }

        private Mark Hanger(ScreenPoint at, int hook) => _sized.Contains(hook) ? new(at, "hanger", "hook", "hook")
            : _trim.Lure.Hooks[hook].HasPoints ? new(at, "hanger", "hook or skirt", "hanger")
            : new(at, "hanger", "ring", "ring");

        private sealed record Mark(ScreenPoint At, string Kind, string Name, string Short);

        private ScreenPoint At(double xM, double zM) => new((0.5 * _width) + ((xM - (0.5 * (_leftM + _rightM))) * Scale), Top + ((_highM - zM) * Scale));
    }
}
