using LureSim.Model.Trim;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Plans;
using LureSim.Reports.Kit.Text;
using static LureSim.Reports.Design.TemplatePens;

namespace LureSim.Reports.Design;

/// <summary>A lure from the side and from above at true scale, stations and their sizes between, nose to the right as in every picture.</summary>
internal sealed class TemplateViews
{
    // Room for the names of rows, behind the tail, ahead of the nose, over and under each view.
    private const double RowNames = 30.0, Tail = 8.0, Nose = 12.0, Edge = 5.0;
    private const double StationMm = 10.0, LeastStepMm = 6.0, Cross = 1.5, WaterOverhang = 5.0, RowPitch = 3.2;
    private readonly TemplateBody _body;
    private readonly IReadOnlyList<TemplateMark> _marks;
    private readonly TrimResult _trim;
    private readonly List<PlanItem> _items = [];

    private TemplateViews(TrimResult trim, TemplateBody body, IReadOnlyList<TemplateMark> marks) => (_trim, _body, _marks) = (trim, body, marks);

    /// <summary>Draws both views.</summary>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="body">Its outlines.</param>
    /// <param name="marks">Its marks.</param>
    public static PlanBlock Build(TrimResult trim, TemplateBody body, IReadOnlyList<TemplateMark> marks) => new TemplateViews(trim, body, marks).Draw();

    private PlanBlock Draw()
    {
        double high = Math.Max(_body.Sections.Max(s => s.BackMm), _marks.Max(m => m.ZMm + m.RadiusMm));
        double low = Math.Min(_body.Sections.Min(s => s.BellyMm), _marks.Min(m => m.ZMm - m.RadiusMm));
        double half = Math.Max(0.5 * _body.BreadthMm, _marks.Max(m => m.RadiusMm));
        double sideAxis = Edge + high, sideEnd = sideAxis - low + Edge;
        double topStart = sideEnd + (4 * RowPitch) + 2.0, topAxis = topStart + Edge + half, end = topAxis + half + Edge;
        Stations(2.0, sideEnd, topStart, end - 2.0);
        View("side", sideAxis, s => s.BackMm, s => s.BellyMm, m => m.ZMm);
        View("top", topAxis, s => s.HalfBreadthMm, s => -s.HalfBreadthMm, _ => 0.0);
        Water(sideAxis, high, low);
        return new(RowNames + Tail + _body.LengthMm + Nose, end, _items);
    }

    private double Px(double xMm) => RowNames + Tail + (0.5 * _body.LengthMm) + xMm;

    private void View(string view, double axis, Func<TemplateSection, double> upper, Func<TemplateSection, double> lower, Func<TemplateMark, double> height)
    {
        _items.Add(Words(0.0, axis + 1.0, $"From {(view == "side" ? "the side" : "above")}", bold: true));
        _items.Add(PlanPath.Line($"{view}-axis", Px(-0.5 * _body.LengthMm) - 3.0, axis, Px(0.5 * _body.LengthMm) + 3.0, axis, Axis));
        PlanPoint At(int i, Func<TemplateSection, double> edge) => new(Px(_body.X[i]), axis - edge(_body.Sections[i]));
        int[] along = [.. Enumerable.Range(0, _body.X.Count)];
        _items.Add(new PlanPath(view, [.. along.Select(i => At(i, upper)), .. along.Reverse().Select(i => At(i, lower))], true, Outline));
        var places = new LabelPlaces();
        foreach (TemplateMark m in _marks)
        {
            places.Take(Px(m.XMm), axis - height(m), Math.Max(Cross, m.RadiusMm));
        }

        foreach (TemplateMark m in _marks)
        {
            double x = Px(m.XMm), y = axis - height(m);
            if (m.RadiusMm > 0.0)
            {
                _items.Add(new PlanCircle($"{view}-hole-{m.Name}", new(x, y), m.RadiusMm, Mark));
            }

            _items.Add(PlanPath.Line($"{view}-{m.Name}", x - Cross, y, x + Cross, y, Mark));
            _items.Add(PlanPath.Line(null, x, y - Cross, x, y + Cross, Mark));
            _items.Add(new PlanText(null, places.Place(x, y, Math.Max(Cross, m.RadiusMm), m.Name, Name), m.Name, Name, PlanAnchor.Start, true, ChartStyle.Vermilion));
        }
    }

    private void Stations(double sideStart, double sideEnd, double topStart, double topEnd)
    {
        string[] rows = ["from the nose, mm", "back over axis", "belly under axis", "half breadth"];
        for (int r = 0; r < rows.Length; r++)
        {
            _items.Add(Words(0.0, Row(r), rows[r], Small));
        }

        foreach (double from in Places())
        {
            double x = Px((0.5 * _body.LengthMm) - from);
            TemplateSection s = _body.At((0.5 * _body.LengthMm) - from);
            _items.Add(PlanPath.Line(null, x, sideStart, x, sideEnd, Station));
            _items.Add(PlanPath.Line(null, x, topStart, x, topEnd, Station));
            string[] numbers = [Trade.Fixed(from, from == Math.Floor(from) ? 0 : 1), Trade.Fixed(s.BackMm, 1), Trade.Fixed(-s.BellyMm, 1), Trade.Fixed(s.HalfBreadthMm, 1)];
            for (int r = 0; r < rows.Length; r++)
            {
                _items.Add(Words(x, Row(r), numbers[r], Small, PlanAnchor.Middle, bold: r == 0));
            }
        }

        double Row(int r) => sideEnd + 0.3 + (RowPitch * (r + 0.9));
    }

    // Every centimetre from the nose, and the tail where its numbers have room.
    private IEnumerable<double> Places()
    {
        double last = 0.0;
        for (int i = 0; i * StationMm <= _body.LengthMm + 1e-9; i++)
        {
            yield return last = i * StationMm;
        }

        if (_body.LengthMm - last >= LeastStepMm)
        {
            yield return _body.LengthMm;
        }
    }

    // The line of all points of the middle plane at the height of the water: z0 + x sin(trim) + z cos(trim) = 0.
    private void Water(double axis, double high, double low)
    {
        if (!_trim.IsUpright)
        {
            return;
        }

        (double sin, double cos) = Math.SinCos(_trim.Rest.TrimRad);
        double z0 = (1000.0 * _trim.Rest.NoseHeightM) - (0.5 * _body.LengthMm * sin);
        double reach = (0.5 * _body.LengthMm) + WaterOverhang, from = double.NegativeInfinity, to = double.PositiveInfinity;
        bool seen = Within(-z0 * sin, cos, -reach, reach, ref from, ref to) && Within(-z0 * cos, -sin, low - 2.0, high + 2.0, ref from, ref to);
        if (seen)
        {
            PlanPoint At(double t) => new(Px((-z0 * sin) + (t * cos)), axis - ((-z0 * cos) - (t * sin)));
            _items.Add(new PlanPath("water", [At(from), At(to)], false, TemplatePens.Water));
            _items.Add(new PlanText(null, new(At(to).X + 0.6, At(to).Y + 0.8), "water", Small, PlanAnchor.Start, false, ChartStyle.Blue));
        }
    }

    // Clips the line point + t way to a band; false where nothing is left.
    private static bool Within(double point, double way, double least, double most, ref double from, ref double to)
    {
        if (Math.Abs(way) < 1e-12)
        {
            return point >= least && point <= most;
        }

        double a = (least - point) / way, b = (most - point) / way;
        from = Math.Max(from, Math.Min(a, b));
        to = Math.Min(to, Math.Max(a, b));
        return from < to;
    }
}
