using System.Text.Json;
using LureSim.Model.Margin;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;

namespace LureSim.Reports.Design;

/// <summary>A design as JSON: flat snake-case keys with the unit at the end.</summary>
public static class DesignJson
{
    /// <summary>Writes it.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="report">Design.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void Write(Stream stream, DesignReport report, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(report);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", report.Title);
            Point(json, report.Own);
            json.WriteNumber("tow_speed_m_s", report.Task.SpeedMS);
            json.WriteNumber("pull_impulse_N_s", report.Task.PullNs);
            Each(json, "hooks", report.Hooks, h =>
            {
                json.WriteString("front", h.Front is int f ? HookSizes.Name(f) : null);
                json.WriteString("rear", h.Rear is int r ? HookSizes.Name(r) : null);
                json.WriteNumber("hooks_kg", h.HooksKg);
                json.WriteBoolean("own", h.IsOwn);
                Point(json, h.Point);
            });
            Each(json, "tolerance", [.. (report.Tolerance?.Rows ?? []).SelectMany(r => new[] { (r.Less, r.LessPoint), (r.More, r.MorePoint) }).Where(p => p.Item2 is not null)], p => Change(json, p.Item1, p.Item2!));
            Each(json, "worst_cases", report.Tolerance?.Worst ?? [], w =>
            {
                json.WriteString("figure", w.Key);
                json.WriteStartObject("least");
                Point(json, w.Low);
                json.WriteEndObject();
                json.WriteStartObject("most");
                Point(json, w.High);
                json.WriteEndObject();
            });
            Each(json, "changes", report.Changes, c => Change(json, c.Change, c.After));
            if (report.Rhythms is { } rhythms)
            {
                Each(json, "windows", rhythms.Windows, w =>
                {
                    json.WriteNumber("from_per_s", w.FromPerS);
                    json.WriteNumber("to_per_s", w.ToPerS);
                });
            }

            Answer(json, report.Answer);
            Walk(json, report.Walk);
            if (report.After is DesignPoint after)
            {
                json.WriteStartObject("after");
                Point(json, after);
                json.WriteEndObject();
            }

            JsonText.Notes(json, notes);
        });
    }

    private static void Answer(Utf8JsonWriter json, BallastAnswer? answer)
    {
        if (answer is null)
        {
            return;
        }

        json.WriteBoolean("wish_met", answer.IsMet);
        JsonText.Number(json, "least_ballast_kg", answer.LeastKg);
        Each(json, "places", answer.Places, p =>
        {
            json.WriteNumber("ballast_kg", p.Weight.MassKg);
            json.WriteNumber("ballast_x_m", p.Weight.XM);
            json.WriteNumber("ballast_z_m", p.Weight.ZM);
            json.WriteNumber("body_kg", p.BodyKg);
            json.WriteNumber("ball_room_m", p.SpareM);
            json.WriteBoolean("taken", p == answer.Chosen);
            Point(json, p.Point);
        });
        Each(json, "dead_ends", answer.DeadEnds, d =>
        {
            json.WriteString("kind", JsonNamingPolicy.SnakeCaseLower.ConvertName(d.Kind.ToString()));
            json.WriteNumber("mass_kg", d.MassKg);
            JsonText.Number(json, "needed", d.XM);
            JsonText.Number(json, "limit", d.LimitM);
        });
    }

    private static void Walk(Utf8JsonWriter json, WalkAnswer? walk)
    {
        if (walk is null)
        {
            return;
        }

        json.WriteBoolean("walk_met", walk.IsMet);
        json.WriteBoolean("stopped", walk.IsStopped);
        json.WriteNumber("lures_tried", walk.Tried);
        Each(json, "candidates", [walk.Own, .. walk.Candidates], c =>
        {
            json.WriteNumber("ballast_kg", c.Move.BallastKg);
            json.WriteNumber("ballast_x_m", c.Move.BallastXM);
            json.WriteNumber("tie_z_m", c.Move.TieZM);
            json.WriteNumber("hook_steps", c.Move.HookSteps);
            json.WriteBoolean("walks", c.Walks);
            JsonText.Number(json, "glide_m", c.Check?.GlideM ?? c.GlideM);
            JsonText.Number(json, "glide_p10_m", c.Check?.LowM);
            JsonText.Number(json, "glide_p90_m", c.Check?.HighM);
            JsonText.Number(json, "starts_share", c.Check?.LockShare);
            JsonText.Number(json, "draws_share", c.Check?.WalkShare);
            Point(json, c.Point);
        });
        Each(json, "dead_walks", walk.DeadEnds, d =>
        {
            json.WriteString("fate", DesignWords.DeadWalk(d));
            json.WriteNumber("lures", d.Count);
        });
    }

    private static void Change(Utf8JsonWriter json, DesignChange change, DesignPoint after)
    {
        json.WriteString("change", DesignWords.Key(change.Kind));
        json.WriteNumber("amount", change.Amount);
        Point(json, after);
    }

    private static void Point(Utf8JsonWriter json, DesignPoint point)
    {
        json.WriteString("fate", DesignWords.Fate(point.Word));
        JsonText.Figures(json, DesignFigures.All, point);
        if (point.Margin is MarginResult margin)
        {
            JsonText.Number(json, "pull_advance_m", margin.Pull.AdvanceM);
        }

        if (point.Reason is not null)
        {
            json.WriteString("reason", point.Reason);
        }
    }

    private static void Each<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
