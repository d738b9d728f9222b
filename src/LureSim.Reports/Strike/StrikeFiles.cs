using System.Text;
using LureSim.Model.Strike;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Retrieve;
using LureSim.Studies.Doubt;
using LureSim.Studies.Strike;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Strike;

/// <summary>The set of files of a strike.</summary>
public static class StrikeFiles
{
    /// <summary>Writes figures, series, curves, effective scenario and pictures, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="report">Strike.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, StrikeReport report, string effectiveToml, RunNotes notes, PlotFormat plots, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        folder.Add("summary.json", stream => StrikeJson.Write(stream, report, notes, doubt));
        folder.Add("series.csv", stream => SeriesCsv.Write(stream, report.Strike.Series));
        folder.Add("strike_drag.csv", stream => DoubtFiles.Lines(stream, DragLines(report.Window)));
        folder.Add("strike_distance.csv", stream => DoubtFiles.Lines(stream, DistanceLines(report.Curves)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, StrikeCharts.All(report, notes.Shown), plots);
        }

        if (doubt is not null)
        {
            DoubtFiles.Add(folder, doubt, plots, notes.Shown);
        }

        folder.Commit();
    }

    private static IEnumerable<string> DragLines(DragWindow window) =>
    [
        "drag_N,hook_force_N,tip_force_N,rod_use_share,drag_slip_m",
        .. window.Points.Select(p => CsvLine.Join(new[] { p.DragN, p.HookForceN, p.TipForceN, p.RodUse, p.SlipM }.Select(CsvLine.Number))),
    ];

    private static IEnumerable<string> DistanceLines(StrikeCurves curves)
    {
        yield return "line,rod,distance_m,hook_force_peak_N,impulse_Ns,time_to_force_s,line_stretch_m,drag_slip_m,limit";
        foreach (StrikeCurve curve in curves.Lines.Concat(curves.Rods))
        {
            foreach (StrikeCurvePoint p in curve.Points)
            {
                IEnumerable<string> numbers = new[] { p.DistanceM, p.HookForceN, p.ImpulseNs, p.TimeToForceS ?? double.NaN, p.LineStretchM, p.DragSlipM }.Select(CsvLine.Number);
                yield return CsvLine.Join([StrikeWords.Of(curve.LineKind), StrikeWords.Of(curve.RodKind), .. numbers, p.Limit is StrikeLimit limit ? StrikeFigures.Name(limit) : ""]);
            }
        }
    }
}
