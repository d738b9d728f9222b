using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Lines;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>The keys that main line and leader share.</summary>
public sealed class LineKeySet
{
    internal LineKeySet(string table, bool mayBeAbsent, Func<Setup, LineSpec?> line)
    {
        Lens Of(Func<LineSpec, double> value) => Lens.OfSetup(s => line(s) is LineSpec l ? value(l) : double.NaN);
        string group = $"{table} size";
        Material = new($"{table}.material", QuantityKind.Choice, "", mayBeAbsent ? "Leader material; \"none\" takes an inherited leader off." : "Line material.")
        {
            Required = !mayBeAbsent,
            Choices = Materials(mayBeAbsent),
            Lens = Of(l => (int)l.Material),
        };
        Label = new($"{table}.label", QuantityKind.Force, "lb", "Strength printed on the spool; not the break.") { Parameter = LineSizing.Label, Group = group };
        Number = new($"{table}.number", QuantityKind.LineNumber, "", "Line number: \"PE 3\" for braid (by mass), \"no. 3\" for single strands (by diameter).")
        {
            Words = $"number of the {table}",
            Parameter = LineSizing.Number,
            Group = group,
            Lens = Of(l => l.Material == LineMaterial.Braid ? TextileUnits.ToBraidNumber(l.LinearDensityKgM) : double.NaN),
        };
        Diameter = new($"{table}.diameter", QuantityKind.Length, "mm", "Outer diameter; without it label or number decide.")
        {
            Words = $"diameter of the {table}",
            Parameter = Parameter.Of<LineSpec>(nameof(LineSpec.DiameterM)),
            Group = group,
            Lens = Of(l => l.DiameterM),
        };
        Film = new($"{table}.film", QuantityKind.Choice, "", "Skin at the water surface: dry is carried by the surface film, wetted is not.")
        {
            Default = "dry",
            Choices = [new("dry", (int)SurfaceFilm.Dry), new("wetted", (int)SurfaceFilm.Wetted)],
            Lens = Of(l => (int)l.Film),
        };
        Density = new($"{table}.density", QuantityKind.Density, "kg/m3", "Density of the solid; the material decides.")
        {
            Words = $"density of the {table}",
            Parameter = Parameter.Of<LineSpec>(nameof(LineSpec.DensityKgM3)),
            Lens = Of(l => l.DensityKgM3),
        };
        Packing = new($"{table}.packing", QuantityKind.Ratio, "", "Solid share of a braid's outer circle.")
        {
            Words = $"packing of the braid, {table}",
            Parameter = LineSizing.BraidPacking,
            Lens = Of(Packed),
        };
        Modulus = new($"{table}.modulus", QuantityKind.Modulus, "GPa", "Modulus on the solid area; material and film decide.")
        {
            Words = $"stiffness of the {table}",
            Parameter = LineSizing.Modulus,
            Lens = Of(l => l.AxialStiffnessN * l.DensityKgM3 / l.LinearDensityKgM),
        };
        DampingTime = new($"{table}.damping_time", QuantityKind.Time, "ms", "Kelvin-Voigt time of the stretch; the material decides.")
        {
            Words = $"damping of the {table}",
            Parameter = Parameter.Of<LineSpec>(nameof(LineSpec.DampingTimeS)),
            Lens = Of(l => l.DampingTimeS),
        };
        Strength = new($"{table}.strength", QuantityKind.Force, "lb", "Breaking load, wet, without knot; label and material decide.")
        {
            Words = $"strength of the {table}",
            Parameter = Parameter.Of<LineSpec>(nameof(LineSpec.BreakN)),
            Lens = Of(l => l.BreakN),
        };
        DragFactor = new($"{table}.drag_factor", QuantityKind.Ratio, "", "Factor on the Cd(Re) of a smooth cylinder.")
        {
            Parameter = Parameter.Of<LineSpec>(nameof(LineSpec.NormalDragFactor)),
            Lens = Of(l => l.NormalDragFactor),
        };
        TangentialDrag = new($"{table}.tangential_drag", QuantityKind.Ratio, "", "Ct on the wetted skin, for flow along the line.")
        {
            Words = $"drag along the {table}",
            HasNoDefault = true,
            Parameter = Parameter.Of<LineSpec>(nameof(LineSpec.TangentialDragCoefficient)),
            Lens = Of(l => l.TangentialDragCoefficient),
        };
        All =
        [
            Material, Label, Number, Diameter, Film, Density, Packing, Modulus, DampingTime, Strength, DragFactor, TangentialDrag,
        ];
    }

    /// <summary>Material.</summary>
    public KeySpec Material { get; }

    /// <summary>Label strength.</summary>
    public KeySpec Label { get; }

    /// <summary>Line number.</summary>
    public KeySpec Number { get; }

    /// <summary>Outer diameter.</summary>
    public KeySpec Diameter { get; }

    /// <summary>Surface film.</summary>
    public KeySpec Film { get; }

    /// <summary>Density of the solid.</summary>
    public KeySpec Density { get; }

    /// <summary>Solid share of a braid.</summary>
    public KeySpec Packing { get; }

    /// <summary>Modulus.</summary>
    public KeySpec Modulus { get; }

    /// <summary>Damping time.</summary>
    public KeySpec DampingTime { get; }

    /// <summary>Breaking load.</summary>
    public KeySpec Strength { get; }

    /// <summary>Factor on the normal drag.</summary>
    public KeySpec DragFactor { get; }

    /// <summary>Tangential drag coefficient.</summary>
    public KeySpec TangentialDrag { get; }

    /// <summary>Rows of the set.</summary>
    public IReadOnlyList<KeySpec> All { get; }

    /// <summary>The word for "no leader".</summary>
    internal const double NoMaterial = -1.0;

    private static double Packed(LineSpec l) => l.Material == LineMaterial.Braid
        ? l.LinearDensityKgM / (l.DensityKgM3 * Math.PI * l.DiameterM * l.DiameterM / 4.0)
        : double.NaN;

    private static Choice[] Materials(bool mayBeAbsent)
    {
        Choice braid = new("braid", (int)LineMaterial.Braid), nylon = new("nylon", (int)LineMaterial.Nylon);
        Choice fluorocarbon = new("fluorocarbon", (int)LineMaterial.Fluorocarbon);
        return mayBeAbsent ? [braid, nylon, fluorocarbon, new("none", NoMaterial)] : [braid, nylon, fluorocarbon];
    }
}
