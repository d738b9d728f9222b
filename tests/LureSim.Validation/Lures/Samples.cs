using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Validation.Lures;

/// <summary>Bodies that the hull checks share.</summary>
internal static class Samples
{
    /// <summary>Fresh water at 20 C as the worked numbers of the catalogue use it.</summary>
    public static readonly WaterState Water = new(998.2, 1.0016e-3, 0.072736);

    /// <summary>Spheroid that floats exactly half immersed, no ballast, no hooks.</summary>
    public static LureSpec HalfSpheroid(double length, double diameter) => new(
        LureShape.Spheroid, length, diameter, diameter, Water.DensityKgM3 * SpheroidVolume(length, diameter) / 2.0,
        0.5 * length, 0.0, [], [], AddedMassFactor: 1.0, CrossFlowCd: 1.0);

    /// <summary>pi L D^2 / 6, m3.</summary>
    public static double SpheroidVolume(double length, double diameter) => Math.PI * length * diameter * diameter / 6.0;

    /// <summary>A log or can: circular sections with flat ends.</summary>
    public static StationHull Cylinder(double length, double radius) =>
        new(length, [new(-0.5 * length, radius, radius), new(0.5 * length, radius, radius)]);

    /// <summary>A body of given mean density with G on the axis of its sections.</summary>
    public static FloatingBody Body(IHull hull, double volume, double specificGravity, double gX = 0.0, double gZ = 0.0) =>
        new(hull, specificGravity * volume * Water.DensityKgM3, new Vec3(gX, 0.0, gZ), Water.DensityKgM3);

    /// <summary>Root of a rising function between two ends.</summary>
    public static double Root(Func<double, double> f, double low, double high)
    {
        for (int i = 0; i < 50; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = f(middle) < 0.0 ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }
}
