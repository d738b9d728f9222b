using OxyPlot;

namespace LureSim.Reports.Kit.Charts;

/// <summary>One line of a study chart.</summary>
/// <param name="Label">Legend.</param>
/// <param name="X">Abscissae, rising.</param>
/// <param name="Y">Ordinates; NaN leaves a gap.</param>
/// <param name="Low">Lower edge of the band or error bar; none = no band.</param>
/// <param name="High">Upper edge.</param>
/// <param name="Look">Look of the quantity; none = that of the next set-up.</param>
public sealed record StudyLine(string Label, double[] X, double[] Y, double[]? Low = null, double[]? High = null, Look? Look = null);

/// <summary>How the doubt of a <see cref="StudyLine"/> is drawn.</summary>
public enum DoubtStyle
{
    /// <summary>A band: the abscissa is a number that varies smoothly.</summary>
    Band,

    /// <summary>Bars: the points stand alone.</summary>
    Bars,
}

/// <summary>A coloured stretch of the abscissa: what class the answer belongs to there.</summary>
/// <param name="Label">Class.</param>
/// <param name="From">Start.</param>
/// <param name="To">End.</param>
public sealed record StudySpan(string Label, double From, double To);

/// <summary>One panel of a study chart.</summary>
/// <param name="Words">Header in plain words.</param>
/// <param name="YTitle">Quantity and unit.</param>
/// <param name="Lines">What is drawn.</param>
/// <param name="FromZero">The y axis starts at 0.</param>
/// <param name="Doubt">How bands are drawn.</param>
public sealed record StudyPanel(
    string Words, string YTitle, IReadOnlyList<StudyLine> Lines, bool FromZero = true, DoubtStyle Doubt = DoubtStyle.Band);

/// <summary>Values on a grid of two quantities.</summary>
/// <param name="X">Abscissae, rising, evenly spaced.</param>
/// <param name="Y">Ordinates, rising, evenly spaced.</param>
/// <param name="Values">[x, y]; NaN = no value.</param>
public sealed record StudyGrid(double[] X, double[] Y, double[,] Values);

/// <summary>One class of a map.</summary>
/// <param name="Label">Legend.</param>
/// <param name="Color">Fill.</param>
/// <param name="Region">Name written into its region of a map; classes of one name share a region; none = the label.</param>
public sealed record StudyClass(string Label, OxyColor Color, string? Region = null);
