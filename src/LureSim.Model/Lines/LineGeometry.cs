namespace LureSim.Model.Lines;

/// <summary>Size and label of a line before its material numbers are added.</summary>
internal sealed record LineGeometry(SizedValue Diameter, SizedValue LinearDensity, SizedValue Label)
{
    internal const string LabelName = "LabelN";

    /// <summary>Single strand: the diameter rules; without one the number, without that the label.</summary>
    public static LineGeometry OfStrand(LineMaterial material, double densityKgM3, double? diameterM, double? number, double? labelN)
    {
        SizedValue diameter = StrandDiameter(material, diameterM, number, labelN);
        double area = Math.PI * diameter.Value * diameter.Value / 4.0;
        SizedValue label = labelN is double n
            ? SizedValue.Given(LabelName, n)
            : SizedValue.From(LabelName, LineLabels.LabelOfDiameter(material, diameter.Value),
                AsGuess(diameter, 0.85, 1.15), 2.0, "published label table, strength ~ d^2");
        Contradiction.CheckStrand(material, diameter.Value, number, labelN);
        return new(
            diameter,
            SizedValue.From(nameof(LineSpec.LinearDensityKgM), densityKgM3 * area, diameter, 2.0, "density times pi d^2/4"),
            label);
    }

    /// <summary>Braid: the mass rules (number); without one the label; the outer circle follows from packing.</summary>
    public static LineGeometry OfBraid(
        double densityKgM3, Ranged packing, double? diameterM, double? number, double? labelN)
    {
        SizedValue mass = BraidMass(densityKgM3, packing, diameterM, number, labelN);
        Contradiction.CheckBraid(densityKgM3, mass.Value, diameterM, number, labelN);
        double Outer(double solidShare) => Math.Sqrt(4.0 * mass.Value / (densityKgM3 * solidShare * Math.PI));
        SizedValue diameter = diameterM is double d
            ? SizedValue.Given(nameof(LineSpec.DiameterM), d)
            : SizedValue.Guess(nameof(LineSpec.DiameterM), Outer(packing.Value), Outer(packing.High), Outer(packing.Low),
                "from mass and packing (0.75, 0.65 to 0.9)");
        SizedValue label = labelN is double n
            ? SizedValue.Given(LabelName, n)
            : SizedValue.From(LabelName, LineLabels.LabelOfBraidNumber(TextileUnits.ToBraidNumber(mass.Value)),
                AsGuess(mass, 0.75, 1.35), 1.0, "published label tables");
        return new(diameter, mass, label);
    }

    private static SizedValue StrandDiameter(LineMaterial material, double? diameterM, double? number, double? labelN)
    {
        const string name = nameof(LineSpec.DiameterM);
        if (diameterM is double given)
        {
            return SizedValue.Given(name, given);
        }

        if (number is double n)
        {
            double listed = LineLabels.MonofilamentDiameter(n);
            return SizedValue.Guess(name, listed, 0.94 * listed, 1.15 * listed,
                "standard diameter of the number, the lower bound of its class; strands are made to 6 %");
        }

        double d = LineLabels.DiameterOfLabel(material, labelN!.Value);
        return SizedValue.Guess(name, d, 0.85 * d, 1.15 * d, "published label table");
    }

    private static SizedValue BraidMass(
        double densityKgM3, Ranged packing, double? diameterM, double? number, double? labelN)
    {
        const string name = nameof(LineSpec.LinearDensityKgM);
        if (number is double n)
        {
            double mass = TextileUnits.FromBraidNumber(n);
            return new(name, mass, mass, mass, ValueOrigin.Derived, "200 denier per braid number");
        }

        double Solid(double share) => densityKgM3 * share * Math.PI * diameterM!.Value * diameterM.Value / 4.0;
        if (labelN is null)
        {
            return SizedValue.Guess(name, Solid(packing.Value), Solid(packing.Low), Solid(packing.High), "from diameter and packing");
        }

        double byLabel = TextileUnits.FromBraidNumber(LineLabels.BraidNumberOfLabel(labelN.Value));
        // A measured outer circle bounds the mass it can hold; printed braid diameters are often too small for the label's mass.
        return diameterM is null
            ? SizedValue.Guess(name, byLabel, 0.85 * byLabel, 1.35 * byLabel, "published label tables, which differ by a third")
            : SizedValue.Guess(name, Math.Clamp(byLabel, Solid(packing.Low), Solid(packing.High)),
                Solid(packing.Low), Solid(packing.High), "label's mass, held to what the diameter can pack");
    }

    /// <summary>Widens an exact value by the scatter of a label table; a guess keeps its own range.</summary>
    private static SizedValue AsGuess(SizedValue v, double low, double high) => v.Origin == ValueOrigin.Guess
        ? v
        : SizedValue.Guess(v.Name, v.Value, low * v.Value, high * v.Value, v.Basis);
}
