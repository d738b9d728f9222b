using OxyPlot;

namespace LureSim.Reports.Kit.Charts;

/// <summary>
/// The one table of colours: the same thing looks the same in every picture. What belongs to the lure is blue, to the rod vermilion, to the line green,
/// to the reel wine red, to the hand black. Colours of lines: Okabe and Ito 2008 ("Color universal design"); wine red: Paul Tol's scheme "muted"
/// (technical note SRON/EPS/TN/09-002, 2021). A test computes contrast and distances, also as colour-blind readers see them.
/// </summary>
public static class Looks
{
    /// <summary>Place, path, speed and glide of the lure, distance that it flies.</summary>
    public static readonly Look Lure = new(ChartStyle.Blue);

    /// <summary>Pull at the lure's nose.</summary>
    public static readonly Look NosePull = Lure;

    /// <summary>Rod, place and speed of its tip.</summary>
    public static readonly Look Rod = new(ChartStyle.Vermilion, LineStyle.Dash, MarkerType.Square);

    /// <summary>Pull at the rod tip.</summary>
    public static readonly Look TipPull = Rod;

    /// <summary>Line: its shape, its speed, slack in it.</summary>
    public static readonly Look Line = new(ChartStyle.Green, LineStyle.DashDot, MarkerType.Diamond);

    /// <summary>Drag of water and air on the line.</summary>
    public static readonly Look LineDrag = Line;

    /// <summary>Reel: speed of the spool, loops on it, brakes.</summary>
    public static readonly Look Spool = new(ChartStyle.Wine, LineStyle.Dot, MarkerType.Triangle);

    /// <summary>Hand: stroke, torque of the wrist.</summary>
    public static readonly Look Hand = new(ChartStyle.Ink, LineStyle.LongDash, MarkerType.Plus);

    /// <summary>What it is measured against: at rest, as computed, what a wrist keeps up.</summary>
    public static readonly Look Reference = new(ChartStyle.Grey, LineStyle.Dash, MarkerType.None);

    /// <summary>Mean of many casts: a black dot.</summary>
    public static readonly OxyColor Mean = ChartStyle.Ink;

    /// <summary>Where eight of ten casts land.</summary>
    public static readonly OxyColor Casts = ChartStyle.Blue;

    /// <summary>What the guesses may change.</summary>
    public static readonly OxyColor Guesses = ChartStyle.Pale(ChartStyle.Sky, 0.45);

    /// <summary>A guess at its low end.</summary>
    public static readonly OxyColor LowEnd = ChartStyle.Blue;

    /// <summary>A guess at its high end.</summary>
    public static readonly OxyColor HighEnd = ChartStyle.Orange;

    /// <summary>What cannot be told from chance.</summary>
    public static readonly OxyColor Chance = ChartStyle.Light;

    /// <summary>Water.</summary>
    public static readonly OxyColor Water = ChartStyle.Faint(ChartStyle.Sky, 0.35);

    /// <summary>A span of time in which the line is slack.</summary>
    public static readonly OxyColor Slack = ChartStyle.Faint(ChartStyle.Sky, 0.28);

    /// <summary>A span of time in which the hand pulls and the line is taut.</summary>
    public static readonly OxyColor Taut = ChartStyle.Pull;

    /// <summary>Things that share panels as lines, with what they are called.</summary>
    public static IReadOnlyList<(string Thing, Look Look)> Things { get; } = [("lure", Lure), ("rod", Rod), ("line", Line), ("reel", Spool), ("hand", Hand)];

    /// <summary>Set-ups that are compared as lines, in the order of use; beyond five they come again with other dashes.</summary>
    /// <param name="index">0 and up.</param>
    public static Look Series(int index)
    {
        Look first = Things[index % Things.Count].Look;
        return index < Things.Count ? first : first with { Style = Things[(index + 1 + (index / Things.Count)) % Things.Count].Look.Style, Marker = MarkerType.Cross };
    }
}
