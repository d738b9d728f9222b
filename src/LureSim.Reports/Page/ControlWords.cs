using LureSim.Reports.Kit.Text;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>Sliders in words.</summary>
internal static class ControlWords
{
    /// <summary>Name of a slider.</summary>
    /// <param name="kind">What it moves.</param>
    public static string Label(ControlKind kind) => kind switch
    {
        ControlKind.Rhythm => "Rhythm",
        ControlKind.Slack => "Slack the hand keeps",
        ControlKind.Stroke => "Stroke of the tip",
        ControlKind.Line => "Line",
        ControlKind.Leader => "Leader",
        ControlKind.Rod => "Rod length",
        ControlKind.Ballast => "Place of the ballast",
        _ => "Height of the line tie",
    };

    /// <summary>A stop.</summary>
    /// <param name="kind">Slider.</param>
    /// <param name="stop">Stop.</param>
    /// <param name="shown">Units.</param>
    public static string Of(ControlKind kind, PageStop stop, Shown shown) => stop.Text.Length > 0 ? stop.Text : kind switch
    {
        ControlKind.Rhythm => $"{Trade.Digits(stop.Si, 2)} twitches a second",
        ControlKind.Ballast => Off(stop.Si, "in the middle", "ahead of the middle", "behind the middle", shown),
        ControlKind.Tie => Off(stop.Si, "on the axis", "above the axis", "below the axis", shown),
        _ => stop.Si == 0.0 ? "none" : shown.Size(stop.Si),
    };

    private static string Off(double m, string none, string more, string less, Shown shown) =>
        Math.Abs(m) < 1e-5 ? none : $"{shown.Size(Math.Abs(m))} {(m > 0.0 ? more : less)}";
}
