using System.Buffers.Binary;
using System.Text.Json;

namespace LureSim.Browser.Tests.Support;

/// <summary>A channel of a film read by other code than the page's: what the page shows must agree with it.</summary>
internal static class FilmValues
{
    /// <summary>The first run's channel at a frame, SI.</summary>
    public static double At(string data, string channel, double seconds)
    {
        using JsonDocument json = JsonDocument.Parse(data);
        JsonElement film = json.RootElement.GetProperty("runs")[0].GetProperty("film"), c = film.GetProperty("channels").GetProperty(channel);
        byte[] steps = c.GetProperty("i16").GetBytesFromBase64();
        double step = (c.TryGetProperty("step_s", out JsonElement own) ? own : film.GetProperty("step_s")).GetDouble();
        int frame = (int)Math.Round(seconds / step);
        return c.GetProperty("offset").GetDouble() + (c.GetProperty("unit").GetDouble() * BinaryPrimitives.ReadInt16LittleEndian(steps.AsSpan(2 * frame)));
    }
}
