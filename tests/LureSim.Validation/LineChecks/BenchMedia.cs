using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;

namespace LureSim.Validation.LineChecks;

/// <summary>Lines and surroundings in which the published line problems are posed.</summary>
internal static class BenchMedia
{
    public const double Gravity = 9.80665;

    /// <summary>Height at which the bench hangs its lines: far from the water.</summary>
    public const double High = 10.0;

    private const double Diameter = 1e-3;

    // Re = 1e-3 at 1e-9 m/s, so that a drag law 1/Re is a linear drag at every speed that matters.
    private const double LinearDragViscosity = 1e-6 * Diameter;

    private static readonly WaterState Water = new(1000.0, 1e-3, 0.0725);

    /// <summary>No fluid at all (a density of 1e-12 kg/m3).</summary>
    public static LineMedium Vacuum { get; } = new(Water, new AirState(1e-12, 1e-12), DragCurve.Constant(1.0), Gravity);

    /// <summary>A fluid whose drag across the line is b v per length, so that a line comes to rest exponentially.</summary>
    /// <param name="b">N s/m2.</param>
    public static LineMedium LinearDrag(double b) => new(
        Water, new AirState(1.0, LinearDragViscosity), DragCurve.FromLaw(re => 2.0 * b / (LinearDragViscosity * re)), Gravity);

    /// <summary>Deep water with one drag coefficient and no added mass (steady states do not know it).</summary>
    public static LineMedium DeepWater(double cd, double gravity = Gravity) => new(
        Water, new AirState(1.0, 1e-5), DragCurve.Constant(cd), gravity, AddedMassCoefficient: 0.0);

    /// <summary>A line of weight and stiffness per length, without bending, film or friction.</summary>
    public static LineSpec Line(double massKgM, double stiffnessN, double densityKgM3 = 2000.0, double diameterM = Diameter) => new(
        LineMaterial.Braid, diameterM, massKgM, densityKgM3, stiffnessN, 0.0, 0.0, SurfaceFilm.Wetted, 1e9,
        TangentialDragCoefficient: 0.0);
}
