using System.Text.Json;
using LureSim.Model.Assembly;
using LureSim.Scenarios;
using LureSim.Studies.Page;
using LureSim.Wire;

namespace LureSim.Reports.Page;

/// <summary>
/// The sliders as JSON. Every stop is the scenario resolved with its overrides, told as what differs from the file's own run: so the page knows no
/// rule of the files. Where two sliders reach one number, the one that stands first in the list wins: a stroke that is said stands over one that
/// follows from the angle of a wrist and the length of the rod. So patches are laid on from the last slider to the first.
/// </summary>
internal static class ControlJson
{
    /// <summary>Writes the array.</summary>
    /// <param name="json">Writer.</param>
    /// <param name="page">Page.</param>
    public static void Write(Utf8JsonWriter json, PageContext page)
    {
        PageFile file = page.Result.Cases[0].File;
        string own = Run(file.Here);
        json.WriteStartArray("controls");
        foreach (PageControl control in PageControls.Of(file, page.Shown.Choice == Kit.Text.UnitChoice.Trade))
        {
            json.WriteStartObject();
            json.WriteString("id", control.Kind.ToString().ToLowerInvariant());
            json.WriteString("label", ControlWords.Label(control.Kind));
            json.WriteNumber("own", control.Own);
            json.WriteStartArray("stops");
            foreach (PageStop stop in control.Stops)
            {
                Write(json, page, control.Kind, stop, Patch(own, file, stop));
                Drawn(json, control.Kind, stop, file);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A run of a scenario.</summary>
    /// <param name="scenario">Valid scenario.</param>
    public static string Run(ScenarioResult scenario) => RunJson.Write(scenario.Setup!, scenario.Retrieve!);

    /// <summary>What a stop changes of a run.</summary>
    /// <param name="own">The file's own run.</param>
    /// <param name="file">File.</param>
    /// <param name="stop">Stop.</param>
    public static RunPatch Patch(string own, PageFile file, PageStop stop) => stop.IsOwn ? new([]) : RunPatch.Between(own, Run(file.With(stop.Set)));

    private static void Write(Utf8JsonWriter json, PageContext page, ControlKind kind, PageStop stop, RunPatch patch)
    {
        json.WriteStartObject();
        json.WriteString("label", ControlWords.Of(kind, stop, page.Shown));
        json.WriteStartArray("set");
        foreach (string set in stop.Set)
        {
            json.WriteStringValue(set);
        }

        json.WriteEndArray();
        json.WriteString("typed", string.Join(' ', stop.Set.Select(s => $"--set {ShellWord.Of(s)}")));
        json.WritePropertyName("patch");
        patch.WriteTo(json);
    }

    // What the players draw otherwise at a stop.
    private static void Drawn(Utf8JsonWriter json, ControlKind kind, PageStop stop, PageFile file)
    {
        if (stop.IsOwn || kind is not (ControlKind.Rod or ControlKind.Ballast or ControlKind.Tie))
        {
            return;
        }

        Setup setup = file.With(stop.Set).Setup!;
        json.WriteStartObject("drawn");
        if (kind == ControlKind.Rod)
        {
            HullJson.Hand(json, setup);
        }
        else
        {
            json.WriteStartObject("hull");
            HullJson.Places(json, setup.Lure, weight: kind == ControlKind.Ballast, tie: kind == ControlKind.Tie);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }
}
