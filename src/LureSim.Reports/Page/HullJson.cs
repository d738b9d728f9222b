using System.Text.Json;
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lures;

namespace LureSim.Reports.Page;

/// <summary>What the players draw beside the film: the outline of the lure, and where the hand holds the rod.</summary>
internal static class HullJson
{
    private const int Stations = 25;

    /// <summary>Writes <c>hand</c> and <c>hull</c>.</summary>
    /// <param name="json">Writer.</param>
    /// <param name="setup">Set-up.</param>
    public static void Write(Utf8JsonWriter json, Setup setup)
    {
        Hand(json, setup);
        LureSpec lure = setup.Lure;
        HullForm hull = HullShape.Create(lure);
        json.WriteStartObject("hull");
        json.WriteNumber("length", lure.LengthM);
        Places(json, lure, weight: true, tie: true);
        json.WriteStartArray("hooks");
        foreach (HookSpec hook in lure.Hooks)
        {
            Row(json, null, hook.XM, hook.ZM);
        }

        json.WriteEndArray();
        json.WriteStartArray("stations");
        for (int i = 0; i < Stations; i++)
        {
            double x = -0.5 * lure.LengthM * Math.Cos(Math.PI * i / (Stations - 1));
            HullSection s = hull.SectionAt(x);
            Row(json, null, x, s.HalfBreadthM, s.HalfHeightM, s.CentreZM);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Writes <c>hand</c>: where the resting rod is held, its tip being over the origin.</summary>
    /// <param name="json">Writer.</param>
    /// <param name="setup">Set-up.</param>
    public static void Hand(Utf8JsonWriter json, Setup setup)
    {
        AnglerSpec a = setup.Angler;
        double flat = setup.Rod.FreeLengthM * Math.Cos(a.RodElevationRad);
        Row(json, "hand", -flat * Math.Cos(a.RodBearingRad), -flat * Math.Sin(a.RodBearingRad), a.HandHeightM);
    }

    /// <summary>Writes <c>centre</c>, <c>tie</c> or both.</summary>
    /// <param name="json">Writer.</param>
    /// <param name="lure">Lure.</param>
    /// <param name="weight">With its centre of gravity.</param>
    /// <param name="tie">With its line tie.</param>
    public static void Places(Utf8JsonWriter json, LureSpec lure, bool weight, bool tie)
    {
        if (weight)
        {
            LureMass mass = LureMass.Of(lure, HullShape.Create(lure));
            Row(json, "centre", mass.Centre.X, mass.Centre.Z);
        }

        if (tie)
        {
            Row(json, "tie", lure.TieXM, lure.TieZM);
        }
    }

    private static void Row(Utf8JsonWriter json, string? name, params ReadOnlySpan<double> values)
    {
        if (name is null)
        {
            json.WriteStartArray();
        }
        else
        {
            json.WriteStartArray(name);
        }

        foreach (double v in values)
        {
            json.WriteNumberValue(Math.Round(v, 6));
        }

        json.WriteEndArray();
    }
}
