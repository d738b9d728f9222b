namespace LureSim.Model.Lines;

/// <summary>Turns what an angler knows about a line (diameter, number, label) into every number the physics needs.</summary>
public static class LineSizing
{
    /// <summary>Line number.</summary>
    public static readonly Parameter Number = new("number", "no.", "", 0.1, 60.0);

    /// <summary>Label strength.</summary>
    public static readonly Parameter Label = new("label", "label", "N", 2.0, 2000.0);

    /// <summary>Modulus on the solid area; material and film give its default.</summary>
    public static readonly Parameter Modulus = new("ModulusPa", "E", "Pa", 1e8, 3e11);

    /// <summary>Solid share of a braid's outer circle; the material gives its default.</summary>
    public static readonly Parameter BraidPacking = new("Packing", "packing", "", 0.3, 0.907);

    /// <summary>A resolved line and the origin of each of its numbers.</summary>
    /// <param name="Spec">The line.</param>
    /// <param name="Values">Origin and range of its numbers and of its label.</param>
    public sealed record Result(LineSpec Spec, IReadOnlyList<SizedValue> Values)
    {
        /// <summary>The guessed numbers, one printable line each.</summary>
        public IReadOnlyList<string> Guesses =>
            [.. Values.Where(v => v.Origin == ValueOrigin.Guess).Select(v => v.ToString())];
    }

    /// <summary>Resolves a line. At least one of diameter, number and label must be given; the rest follows.</summary>
    /// <param name="material">What it is made of.</param>
    /// <param name="diameterM">d, outer diameter, m, 5e-5 to 2e-3.</param>
    /// <param name="number">Line number, 0.1 to 60: by diameter for single strands (0.165 mm sqrt(n)), 200 denier each for braid.</param>
    /// <param name="labelN">Label strength, N, 2 to 2000. Not the break.</param>
    /// <param name="film">State of the skin: a wetted nylon also counts as soaked (softer).</param>
    /// <param name="overrides">Values known better than the tables.</param>
    /// <exception cref="ArgumentException">
    /// Nothing given, or the given values contradict each other: they leave the spread of real products, or over-determine a
    /// braid (number, diameter and packing together).
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, or not a number.</exception>
    public static Result Resolve(
        LineMaterial material,
        double? diameterM,
        double? number,
        double? labelN,
        SurfaceFilm film,
        LineOverrides? overrides = null)
    {
        MaterialProperties properties = LineMaterials.Of(material);
        LineOverrides known = overrides ?? new();
        CheckArguments(diameterM, number, labelN, known);
        double density = known.DensityKgM3 ?? properties.DensityKgM3.Value;
        LineGeometry size = material == LineMaterial.Braid
            ? LineGeometry.OfBraid(density, Packing(properties, known, diameterM, number), diameterM, number, labelN)
            : LineGeometry.OfStrand(material, density, diameterM, number, labelN);
        double d = size.Diameter.Value;

        SizedValue densityValue = Or(known.DensityKgM3, nameof(LineSpec.DensityKgM3), properties.DensityKgM3, "polymer");
        SizedValue modulus = Or(known.ModulusPa, "ModulusPa", properties.ModulusPa(film), "effective modulus of the material");
        SizedValue damping = Or(known.DampingTimeS, nameof(LineSpec.DampingTimeS), properties.DampingTimeS, "material");
        SizedValue breakN = Break(properties, known, size.Label);
        SizedValue ea = SizedValue.From(nameof(LineSpec.AxialStiffnessN), modulus.Value * size.LinearDensity.Value / density,
            modulus, 1.0, "modulus on the solid area");
        SizedValue ei = Bending(material, d, modulus);
        SizedValue tangential = Or(known.TangentialDragCoefficient, nameof(LineSpec.TangentialDragCoefficient),
            new(0.01, 0.004, 0.02), "long thin cylinders and ropes");

        var spec = new LineSpec(material, d, size.LinearDensity.Value, density, ea.Value, damping.Value, ei.Value, film,
            breakN.Value, known.NormalDragFactor ?? 1.0, tangential.Value);
        Parameter.Demand(spec);
        return new(spec, [size.Diameter, size.LinearDensity, size.Label, densityValue, modulus, ea, damping, ei, breakN, tangential]);
    }

    private static void CheckArguments(double? diameterM, double? number, double? labelN, LineOverrides known)
    {
        if (diameterM is null && number is null && labelN is null)
        {
            throw new ArgumentException("A line needs at least one of diameter, number and label.");
        }

        Check(diameterM, Of(nameof(LineSpec.DiameterM)), nameof(diameterM));
        Check(number, Number, nameof(number));
        Check(labelN, Label, nameof(labelN));
        Check(known.DensityKgM3, Of(nameof(LineSpec.DensityKgM3)), nameof(known.DensityKgM3));
        Check(known.ModulusPa, Modulus, nameof(known.ModulusPa));
        Check(known.DampingTimeS, Of(nameof(LineSpec.DampingTimeS)), nameof(known.DampingTimeS));
        Check(known.Packing, BraidPacking, nameof(known.Packing));
        Check(known.BreakN, Of(nameof(LineSpec.BreakN)), nameof(known.BreakN));
        Check(known.NormalDragFactor, Of(nameof(LineSpec.NormalDragFactor)), nameof(known.NormalDragFactor));
        Check(known.TangentialDragCoefficient, Of(nameof(LineSpec.TangentialDragCoefficient)), nameof(known.TangentialDragCoefficient));
    }

    private static Parameter Of(string name) => Parameter.Of<LineSpec>(name);

    private static void Check(double? value, Parameter allowed, string name)
    {
        if (value is double v)
        {
            Require.InRange(v, allowed.Low, allowed.High, name);
        }
    }

    private static Ranged Packing(MaterialProperties properties, LineOverrides known, double? diameterM, double? number)
    {
        if (known.Packing is not double packing)
        {
            return properties.Packing;
        }

        return diameterM is null || number is null
            ? new(packing, packing, packing)
            : throw new ArgumentException("Contradictory line: packing follows from a braid's number and diameter.");
    }

    private static SizedValue Bending(LineMaterial material, double d, SizedValue modulus)
    {
        const string name = nameof(LineSpec.BendingStiffnessNm2);
        return material == LineMaterial.Braid
            ? new(name, 0.0, 0.0, 0.0, ValueOrigin.Derived, "braid is taken as limp")
            : SizedValue.From(name, modulus.Value * Math.PI * Math.Pow(d, 4) / 64.0, modulus, 1.0, "E pi d^4/64");
    }

    private static SizedValue Break(MaterialProperties properties, LineOverrides known, SizedValue label)
    {
        const string name = nameof(LineSpec.BreakN);
        if (known.BreakN is double given)
        {
            return SizedValue.Given(name, given);
        }

        Ranged factor = properties.BreakOverLabel, wet = properties.WetStrengthFactor;
        double dry = properties.Material == LineMaterial.Braid
            ? LineLabels.BraidBreak(label.Value)
            : factor.Value * label.Value;
        return SizedValue.Guess(name, wet.Value * dry, wet.Low * factor.Low * label.Low, wet.High * factor.High * label.High,
            "label times usual break over label, wet");
    }

    private static SizedValue Or(double? given, string name, Ranged otherwise, string basis) => given is double value
        ? SizedValue.Given(name, value)
        : SizedValue.Guess(name, otherwise.Value, otherwise.Low, otherwise.High, basis);
}
