using System.Globalization;

namespace LureSim.Model.Lines;

/// <summary>
/// Two statements about a line contradict each other when they leave the spread of real products: a strand's diameter outside
/// 0.90 to 1.25 of its number's (extrusion 6 %, width of a number class up to 16 %); a diameter more than 1.5 times off its label's;
/// a braid's mass more than 2 times off its label's; more braid fibre than its circle can hold (share above 0.907, the densest
/// packing of round fibres) or a share below 0.3.
/// </summary>
internal static class Contradiction
{
    private const double DensestPacking = 0.907;
    private const double LoosestPacking = 0.3;

    public static void CheckStrand(LineMaterial material, double diameterM, double? number, double? labelN)
    {
        if (number is double n)
        {
            double ratio = diameterM / LineLabels.MonofilamentDiameter(n);
            Demand(ratio is >= 0.90 and <= 1.25, $"number {n:G4} means {Mm(LineLabels.MonofilamentDiameter(n))}, not {Mm(diameterM)}");
        }

        if (labelN is double label)
        {
            double expected = LineLabels.DiameterOfLabel(material, label);
            Demand(
                diameterM / expected is >= 1.0 / 1.5 and <= 1.5,
                $"a label of {label / LineLabels.NewtonPerLb:G4} lb goes with about {Mm(expected)}, not {Mm(diameterM)}");
        }
    }

    public static void CheckBraid(double densityKgM3, double massKgM, double? diameterM, double? number, double? labelN)
    {
        if (diameterM is double d)
        {
            double packing = massKgM / (densityKgM3 * Math.PI * d * d / 4.0);
            Demand(
                packing is >= LoosestPacking and <= DensestPacking,
                $"a braid of number {TextileUnits.ToBraidNumber(massKgM):G4} fills {packing:P0} of a circle of {Mm(d)}",
                "; 30 % to 90.7 % is possible. Printed braid diameters are often too small: leave the diameter out");
        }

        if (labelN is double label)
        {
            double expected = LineLabels.BraidNumberOfLabel(label);
            double actual = number ?? TextileUnits.ToBraidNumber(massKgM);
            Demand(
                actual / expected is >= 0.5 and <= 2.0,
                $"a label of {label / LineLabels.NewtonPerLb:G4} lb goes with about number {expected:G3}, not {actual:G3}");
        }
    }

    private static void Demand(bool holds, FormattableString what, string hint = "")
    {
        if (!holds)
        {
            throw new ArgumentException($"Contradictory line: {what.ToString(CultureInfo.InvariantCulture)}{hint}.");
        }
    }

    private static string Mm(double metres) => string.Create(CultureInfo.InvariantCulture, $"{1e3 * metres:G3} mm");
}
