using OxyPlot;

namespace LureSim.Reports.Kit.Drawing;

/// <summary>A finished picture: its file name without extension, its content and its size.</summary>
/// <param name="Name">File stem, for example <c>path_top</c>.</param>
/// <param name="Model">What is drawn.</param>
/// <param name="Width">Width, px.</param>
/// <param name="Height">Height, px.</param>
public sealed record Chart(string Name, PlotModel Model, int Width = 1600, int Height = 1000);

/// <summary>Which picture files a command writes.</summary>
public enum PlotFormat
{
    /// <summary>No pictures.</summary>
    None,

    /// <summary>Scalable pictures; needs no native code.</summary>
    Svg,

    /// <summary>Pixel pictures.</summary>
    Png,

    /// <summary>Both.</summary>
    Both,
}
