namespace LureSim.Model.Lines;

/// <summary>
/// What printed labels and numbers say about size and strength: published label tables and the standard diameters of line numbers.
/// </summary>
/// <remarks>
/// A label is a class name, not a break. Nylon and fluorocarbon: one published label table (diameter per lb); beyond it strength
/// grows as d^2. Braid: two published label tables disagree by up to a third in mass; their geometric mean is used. Printed braid
/// diameters are not used at all: with the printed masses they demand more polymer than the circle holds.
/// </remarks>
public static class LineLabels
{
    /// <summary>One pound-force, N.</summary>
    public const double NewtonPerLb = 4.4482216152605;

    // Standard diameters (mm) of monofilament numbers: trade standard of 2010, lower bound of each class.
    private static readonly PowerTable Numbers = new(
        [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10],
        [.053, .074, .090, .104, .117, .128, .148, .165, .185, .205, .235, .260, .285, .330, .370, .405, .470, .520],
        endExponent: 0.5);

    // Published label table: lb, mm.
    private static readonly PowerTable NylonLabels = new(
        [8, 10, 12, 15, 20, 25, 30, 40, 50], [0.275, 0.30, 0.35, 0.40, 0.45, 0.50, 0.55, 0.60, 0.70], endExponent: 0.5);

    private static readonly PowerTable FluorocarbonLabels = new(
        [8, 10, 15, 20, 25, 30, 40], [0.25, 0.27, 0.33, 0.40, 0.47, 0.50, 0.55], endExponent: 0.5);

    // Two published label tables: braid number per lb; the mean of their logarithms. Average break (lb) from the first.
    private static readonly double[] BraidLb = [8, 15, 20, 30, 40, 50, 60, 80];
    private static readonly PowerTable BraidLabels = new(
        BraidLb, Means([0.5, 1, 1.7, 3, 3.5, 4, 6, 8], [0.6, 1, 1.5, 2.5, 3.5, 4, 5, 6]), endExponent: 1.0);

    private static readonly PowerTable BraidBreaks = new(BraidLb, [14, 24, 35, 49, 59, 79, 92, 116], endExponent: 1.0);

    /// <summary>Diameter of a monofilament number (gou): the listed one, between entries by power law (d ~ 0.165 mm sqrt(n)), m.</summary>
    public static double MonofilamentDiameter(double number) => 1e-3 * Numbers.At(Require.Positive(number));

    /// <summary>Diameter that goes with a label, single strands only, m.</summary>
    /// <param name="material">Nylon or fluorocarbon.</param>
    /// <param name="labelN">Label, N, above 0.</param>
    /// <exception cref="ArgumentException">Braid: its printed diameters are no measure.</exception>
    public static double DiameterOfLabel(LineMaterial material, double labelN) =>
        1e-3 * Monofilament(material).At(Require.Positive(labelN) / NewtonPerLb);

    /// <summary>Label that goes with a diameter, single strands only, N.</summary>
    /// <inheritdoc cref="DiameterOfLabel" path="/exception"/>
    public static double LabelOfDiameter(LineMaterial material, double diameterM) =>
        NewtonPerLb * Monofilament(material).InverseAt(1e3 * Require.Positive(diameterM));

    /// <summary>Label that goes with a line's size, N.</summary>
    /// <param name="line">Line.</param>
    public static double LabelOf(LineSpec line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Material == LineMaterial.Braid ? LabelOfBraidNumber(TextileUnits.ToBraidNumber(line.LinearDensityKgM)) : LabelOfDiameter(line.Material, line.DiameterM);
    }

    /// <summary>Braid number that goes with a label, N.</summary>
    public static double BraidNumberOfLabel(double labelN) => BraidLabels.At(Require.Positive(labelN) / NewtonPerLb);

    /// <summary>Label that goes with a braid number, N.</summary>
    public static double LabelOfBraidNumber(double number) => NewtonPerLb * BraidLabels.InverseAt(Require.Positive(number));

    /// <summary>Average break of a braid of that label: 1.75 times the label on thin lines, 1.45 on thick ones, N.</summary>
    public static double BraidBreak(double labelN) => NewtonPerLb * BraidBreaks.At(Require.Positive(labelN) / NewtonPerLb);

    private static PowerTable Monofilament(LineMaterial material) => material switch
    {
        LineMaterial.Nylon => NylonLabels,
        LineMaterial.Fluorocarbon => FluorocarbonLabels,
        _ => throw new ArgumentException("Only single strands have a diameter per label.", nameof(material)),
    };

    private static double[] Means(double[] a, double[] b) => [.. a.Zip(b, (x, y) => Math.Sqrt(x * y))];
}
