using System.Text.Json;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Doubt;

/// <summary>A study of doubt as one JSON object.</summary>
public static class DoubtJson
{
    /// <summary>Writes the property <c>doubt</c>.</summary>
    /// <param name="json">Receives it, inside an object.</param>
    /// <param name="report">Study.</param>
    /// <param name="headlines">Figures for which the guesses are ranked.</param>
    public static void Write(Utf8JsonWriter json, DoubtReport report, IReadOnlyList<string> headlines)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(headlines);
        json.WriteStartObject("doubt");
        json.WriteNumber("runs", report.Runs);
        json.WriteNumber("failed", report.Failed);
        json.WriteStartObject("shares");
        foreach ((string name, double share) in report.Shares)
        {
            json.WriteNumber(name, share);
        }

        json.WriteEndObject();
        json.WriteStartObject("bands");
        foreach (Band band in report.Bands.Where(b => b.Count > 0))
        {
            json.WriteStartObject(band.Figure);
            json.WriteNumber("p10", band.P10);
            json.WriteNumber("p50", band.P50);
            json.WriteNumber("p90", band.P90);
            json.WriteNumber("runs", band.Count);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteNumber("rank_correlation_by_chance", report.ChanceRho);
        json.WriteStartObject("rank_correlation");
        foreach (string figure in report.Bands.Count > 0 ? headlines : [])
        {
            json.WriteStartObject(figure);
            foreach ((string guess, GuessEffect effect) in report.Ranking(figure))
            {
                json.WriteNumber(guess, effect.Rho);
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }
}
