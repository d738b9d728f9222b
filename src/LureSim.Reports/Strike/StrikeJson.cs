using System.Text.Json;
using LureSim.Model.Landing;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Doubt;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>A strike as JSON: flat snake-case keys with the unit at the end; the drag window, curves, and holding and landing beside the figures.</summary>
public static class StrikeJson
{
    /// <summary>Writes the strike.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="report">Strike.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static void Write(Stream stream, StrikeReport report, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        StrikeSummary s = report.Strike.Summary;
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", report.Strike.Setup.Title);
            json.WriteString("style", StrikeWords.Style(report));
            json.WriteNumber("effort", report.Strike.Task.Stroke.Effort);
            json.WriteNumber("points", report.Strike.Setup.Hook.Points);
            json.WriteBoolean("sets", s.Sets);
            json.WriteString("limit", StrikeFigures.Name(s.Limit));
            json.WriteString("first_to_give", StrikeFigures.Name(s.FirstToGive.Place));
            JsonText.Figures(json, StrikeFigures.All, report.Strike);
            DragJson.Write(json, report);
            json.WriteString("lift_ends_with", LandingFigures.Name(report.Landing.BestLift.Limit));
            JsonText.Figures(json, LandingFigures.All, report.Landing);
            Curves(json, report.Curves);
            Solver(json, report.Strike);
            JsonText.Notes(json, notes, doubt);
        });
    }

    private static void Curves(Utf8JsonWriter json, StrikeCurves curves)
    {
        json.WriteStartArray("curves");
        foreach (StrikeCurve curve in curves.Lines.Concat(curves.Rods))
        {
            json.WriteStartObject();
            json.WriteString("line", StrikeWords.Of(curve.LineKind));
            json.WriteString("rod", StrikeWords.Of(curve.RodKind));
            Numbers(json, "distance_m", curve.Points.Select(p => p.DistanceM));
            Numbers(json, "hook_force_peak_N", curve.Points.Select(p => p.HookForceN));
            Numbers(json, "impulse_Ns", curve.Points.Select(p => p.ImpulseNs));
            Numbers(json, "time_to_force_s", curve.Points.Select(p => p.TimeToForceS ?? double.NaN));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Numbers(Utf8JsonWriter json, string key, IEnumerable<double> values)
    {
        json.WriteStartArray(key);
        foreach (double value in values)
        {
            if (double.IsFinite(value))
            {
                json.WriteNumberValue(value);
            }
            else
            {
                json.WriteNullValue();
            }
        }

        json.WriteEndArray();
    }

    private static void Solver(Utf8JsonWriter json, StrikeResult strike)
    {
        json.WriteStartObject("solver");
        json.WriteNumber("steps", strike.Counters.Steps);
        json.WriteNumber("halved", strike.Counters.Halved);
        json.WriteNumber("tridiagonal_solves", strike.Counters.TridiagonalSolves);
        json.WriteNumber("largest_step_ratio", strike.Counters.LargestStepRatio);
        json.WriteNumber("energy_open_share", strike.Counters.EnergyOpenShare);
        json.WriteNumber("nodes", strike.Task.Solver.Nodes);
        json.WriteNumber("step_s", strike.Task.Solver.StepS);
        json.WriteEndObject();
    }
}
