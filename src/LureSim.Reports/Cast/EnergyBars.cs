using LureSim.Model.Cast;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Cast;

/// <summary>Where the work of the hands went.</summary>
public static class EnergyBars
{
    private const double Half = 0.36;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Cast.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(CastResult result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        CastEnergy e = result.Energy;
        Part[] parts = [.. Parts(e)];
        PlotModel model = ChartStyle.NewModel(
            Title(parts, e.HandsJ), $"The hands put {shown.Energy(e.HandsJ)} into this cast, what they took back in braking taken off");
        int height = SetUpRows.Height(parts.Length);
        var panels = new Panels(model, height, [SetUpRows.Axis([.. parts.Select(p => p.Label)])]);
        double most = parts.Max(p => Share(p, e)), least = Math.Min(0.0, parts.Min(p => Share(p, e)));
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Share of the work of the hands, %", 1.1 * least, 1.3 * most));
        for (int i = 0; i < parts.Length; i++)
        {
            int row = parts.Length - 1 - i;
            double share = Share(parts[i], e);
            SetUpRows.Box(panels, 0.0, share, row, Half, parts[i].Of.Look.Color);
            SetUpRows.Write(panels, Math.Max(0.0, share) + (0.012 * most), row, $"{Trade.Fixed(share, 0)} %, {shown.OneFamily.Energy(parts[i].J)}");
        }

        panels.Header(0, string.Empty, [.. parts.Select(p => p.Of).Distinct().Select(t => new HeaderEntry(t.Name, t.Look.Color, Swatch.Box))]);
        return new Chart("cast_energy", model, Height: height);
    }

    private static IEnumerable<Part> Parts(CastEnergy e)
    {
        Thing lure = new("lure", Looks.Lure), line = new("line", Looks.Line), reel = new("reel", Looks.Spool), rod = new("rod and hands", Looks.Rod);
        return
        [
            new(lure, "air that the lure parts", e.LureAirJ), new(lure, "lure, still left at the splash", e.LureJ),
            new(line, "air that the line parts", e.LineAirJ), new(line, "line, moved and stretched", e.LineJ),
            new(reel, "brakes, friction, starting the line", e.BrakesJ + e.PickUpJ), new(reel, "spool, still turning", e.SpoolJ),
            new(rod, "rod and hands, left in motion", e.RodJ), new(rod, "air that the rod parts", e.RodAirJ), new(rod, "rod, lost in bending", e.RodLossJ),
        ];
    }

    private static double Share(Part part, CastEnergy e) => 100.0 * part.J / e.HandsJ;

    // The lure, then what takes most of the rest.
    private static string Title(Part[] parts, double handsJ)
    {
        (Thing Of, double J)[] sums = [.. parts.GroupBy(p => p.Of).Select(g => (g.Key, g.Sum(p => p.J)))];
        (Thing other, double taken) = sums.Skip(1).MaxBy(s => s.J);
        string verb = other.Look == Looks.Rod ? "keep" : "takes";
        return $"{Percent(sums[0].J / handsJ)} of the work of the hands flies with the lure; the {other.Name} {verb} {Percent(taken / handsJ)}";
    }

    private static string Percent(double share) => Trade.Fixed(100.0 * share, 0) + " %";

    private sealed record Thing(string Name, Look Look);

    private sealed record Part(Thing Of, string Label, double J);
}
