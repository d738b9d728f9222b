using System.Text.Json;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>The drag window as JSON.</summary>
internal static class DragJson
{
    /// <summary>Writes it into the object of a strike.</summary>
    /// <param name="json">Writer.</param>
    /// <param name="report">Strike.</param>
    public static void Write(Utf8JsonWriter json, StrikeReport report)
    {
        DragWindow window = report.Window;
        json.WriteNumber("drag_N", report.Strike.Setup.Reel.DragN);
        json.WriteNumber("drag_locked_N", window.LockedN);
        json.WriteNumber("line_label_N", window.LabelN);
        json.WriteNumber("setting_force_N", window.SettingN);
        Range(json, "drag_window", window.Range);
        JsonText.Number(json, "drag_strike_high_N", window.InStrike.HighN);
        json.WriteNumber("boat_force_over_drag", window.BoatFactor);
        json.WriteString("drag_advice", StrikeWords.Of(window.Advice.Reason));
        JsonText.Number(json, "drag_advice_N", window.Advice.DragN);
        JsonText.Number(json, "drag_advice_hook_force_N", window.Advice.At?.HookForceN);
        JsonText.Number(json, "drag_advice_label_share", window.Advice.DragN / window.LabelN);
        Bands(json, window);
        Points(json, window);
        Strike(json, "locked", report.Locked);
        Strike(json, "loose", report.Loose);
        Remedies(json, report);
    }

    private static void Range(Utf8JsonWriter json, string name, DragRange range)
    {
        JsonText.Number(json, name + "_low_N", range.LowN);
        JsonText.Number(json, name + "_high_N", range.HighN);
        json.WriteBoolean(name + "_empty", range.IsEmpty);
        json.WriteString(name + "_gives", range.Gives is WeakPlace place ? StrikeFigures.Name(place) : null);
        json.WriteString(name + "_case", StrikeWords.Of(range.Case));
    }

    private static void Bands(Utf8JsonWriter json, DragWindow window)
    {
        json.WriteStartArray("drag_bands");
        foreach (DragBand band in window.Bands)
        {
            json.WriteStartObject();
            json.WriteString("if", StrikeWords.Of(band.Case));
            json.WriteNumber("set_force_N", band.SetN);
            json.WriteNumber("tear_force_N", band.HoldN);
            Range(json, "drag_window", band.Range);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Points(Utf8JsonWriter json, DragWindow window)
    {
        json.WriteStartArray("drag_curve");
        foreach (DragPoint p in window.Points)
        {
            json.WriteStartObject();
            json.WriteNumber("drag_N", p.DragN);
            json.WriteNumber("hook_force_N", p.HookForceN);
            json.WriteNumber("tip_force_N", p.TipForceN);
            json.WriteNumber("rod_use_share", p.RodUse);
            json.WriteNumber("drag_slip_m", p.SlipM);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Strike(Utf8JsonWriter json, string name, StrikeResult? strike)
    {
        if (strike is null)
        {
            json.WriteNull(name);
            return;
        }

        StrikeSummary s = strike.Summary;
        json.WriteStartObject(name);
        json.WriteNumber("drag_N", strike.Setup.Reel.DragN);
        json.WriteNumber("hook_force_peak_N", s.HookForcePeakN);
        json.WriteNumber("drag_slip_m", s.DragSlipM);
        json.WriteBoolean("sets", s.Sets);
        json.WriteString("first_to_give", StrikeFigures.Name(s.FirstToGive.Place));
        JsonText.Number(json, "margin", s.FirstToGive.Ratio);
        json.WriteEndObject();
    }

    private static void Remedies(Utf8JsonWriter json, StrikeReport report)
    {
        json.WriteStartArray("remedies");
        foreach (StrikeRemedy remedy in report.Remedies)
        {
            json.WriteStartObject();
            json.WriteString("change", StrikeWords.Of(remedy.Kind));
            json.WriteString("line", StrikeWords.Of(remedy.Line));
            json.WriteNumber("distance_m", remedy.DistanceM);
            json.WriteNumber("hook_force_peak_N", remedy.HookForceN);
            json.WriteBoolean("sets", remedy.Sets);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
