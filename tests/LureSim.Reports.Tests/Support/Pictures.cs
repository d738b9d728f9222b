using LureSim.Reports.Kit.Drawing;

namespace LureSim.Reports.Tests.Support;

/// <summary>Renders both formats; LURESIM_PICTURES=folder keeps them for the eye.</summary>
internal static class Pictures
{
    public static void Render(Chart chart)
    {
        byte[] svg = ChartRenderer.Svg(chart), png = ChartRenderer.Png(chart);
        Assert.True(svg.Length > 2000, chart.Name);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], png[..4]);
        Keep(chart);
    }

    /// <summary>Keeps a picture for the eye where that is asked for.</summary>
    public static void Keep(Chart chart)
    {
        if (Environment.GetEnvironmentVariable("LURESIM_PICTURES") is { Length: > 0 } folder)
        {
            File.WriteAllBytes(Path.Combine(folder, chart.Name + ".svg"), ChartRenderer.Svg(chart));
            File.WriteAllBytes(Path.Combine(folder, chart.Name + ".png"), ChartRenderer.Png(chart));
        }
    }
}
