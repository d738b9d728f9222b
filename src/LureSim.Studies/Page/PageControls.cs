using System.Globalization;
using LureSim.Model.Assembly;
using LureSim.Model.Lures;

namespace LureSim.Studies.Page;

/// <summary>The sliders of a page: everyday values around the file's own, each resolved by the same reader as the file.</summary>
public static class PageControls
{
    private const double InchM = 0.0254;

    // Two values nearer than this share of their step are one stop.
    private const double Near = 0.25;

    /// <summary>The sliders of a file; a slider without a second stop that the file bears is left out.</summary>
    /// <param name="file">Valid file, twitched.</param>
    /// <param name="trade">True: stops in inches.</param>
    public static IReadOnlyList<PageControl> Of(PageFile file, bool trade)
    {
        ArgumentNullException.ThrowIfNull(file);
        Setup s = file.Here.Setup!;
        return
        [
            .. new[]
            {
                Numbers(ControlKind.Rhythm, file.Here.Retrieve!.CadencePerS, Steps(0.6, 0.2, 17), 0.2, v => [string.Create(CultureInfo.InvariantCulture, $"retrieve.cadence={v:0.##} /s")]),
                Lengths(ControlKind.Slack, file.Here.Retrieve.TakeUp.SlackM, trade, "retrieve.slack"),
                Lengths(ControlKind.Stroke, file.Here.Retrieve.StrokeM, trade, "retrieve.stroke"),
                Words(ControlKind.Line, file, ChangeGroup.Line, PageVariants.OfLine()),
                Words(ControlKind.Leader, file, ChangeGroup.Leader, PageVariants.OfLeader()),
                Rods(file),
                Ballast(s.Lure),
                Tie(s.Lure),
            }.OfType<PageControl>().Select(c => Sound(c, file)).Where(c => c.Stops.Count > 1),
        ];
    }

    private static IEnumerable<double> Steps(double from, double step, int count) => Enumerable.Range(0, count).Select(i => Math.Round(from + (i * step), 6));

    // Slack and stroke: from (almost) none to what an arm can do.
    private static PageControl Lengths(ControlKind kind, double own, bool trade, string key)
    {
        double unit = trade ? InchM : 0.02;
        int first = kind == ControlKind.Slack ? 0 : 2;
        return Numbers(kind, own, Enumerable.Range(first, trade ? 15 : 19).Select(i => i * unit), unit, v => [$"{key}={Length(v, trade)}"]);
    }

    private static PageControl? Ballast(LureSpec lure)
    {
        if (lure.Ballast.Count == 0)
        {
            return null;
        }

        int heaviest = Enumerable.Range(0, lure.Ballast.Count).MaxBy(i => lure.Ballast[i].MassKg);
        double step = Millimetres(0.05 * lure.LengthM);
        return Numbers(ControlKind.Ballast, lure.Ballast[heaviest].XM, Steps(-7 * step, step, 12), step, v => [$"lure.ballast[{heaviest + 1}].x={Length(v, trade: false)}"]);
    }

    private static PageControl Tie(LureSpec lure)
    {
        double step = Millimetres(0.1 * lure.HeightM);
        return Numbers(ControlKind.Tie, lure.TieZM, Steps(-3 * step, step, 7), step, v => [$"lure.tie.x={Length(lure.TieXM, trade: false)}", $"lure.tie.z={Length(v, trade: false)}"]);
    }

    private static PageControl Rods(PageFile file)
    {
        PageStop own = new(OwnTackle.Name(ChangeGroup.Rod, file), file.Here.Setup!.Rod.LengthM, []);
        return new(ControlKind.Rod, [.. PageVariants.OfRod(file).Select(v => new PageStop(v.Label, PageVariants.LengthM(v.Label), v.Set)).Append(own).OrderBy(s => s.Si)]);
    }

    private static PageControl Words(ControlKind kind, PageFile file, ChangeGroup group, IEnumerable<Variant> variants)
    {
        var own = new Variant(group, OwnTackle.Name(group, file), []);
        return new(kind, [.. PageVariants.With(own, variants).Select(v => new PageStop(v.Label, double.NaN, v.Set))]);
    }

    private static PageControl Numbers(ControlKind kind, double own, IEnumerable<double> values, double step, Func<double, IReadOnlyList<string>> set) =>
        new(kind, [.. values.Where(v => Math.Abs(v - own) > Near * step).Select(v => new PageStop("", v, set(v))).Append(new("", own, [])).OrderBy(s => s.Si)]);

    private static PageControl Sound(PageControl control, PageFile file) => control with { Stops = [.. control.Stops.Where(s => s.IsOwn || file.With(s.Set).IsValid)] };

    private static double Millimetres(double m) => Math.Max(1.0, Math.Round(1e3 * m)) / 1e3;

    private static string Length(double m, bool trade) => trade
        ? string.Create(CultureInfo.InvariantCulture, $"{m / InchM:0.##} in")
        : string.Create(CultureInfo.InvariantCulture, $"{1e3 * m:0.###} mm");
}
