using System.Runtime.CompilerServices;

namespace LureSim.Numerics;

/// <summary>A vector in three dimensions, double precision (System.Numerics has single precision only).</summary>
/// <param name="X">x.</param>
/// <param name="Y">y.</param>
/// <param name="Z">z.</param>
public readonly record struct Vec3(double X, double Y, double Z)
{
    /// <summary>The zero vector.</summary>
    public static Vec3 Zero => default;

    /// <summary>Euclidean length.</summary>
    public double Length => Math.Sqrt(Dot(this, this));

    /// <summary>Scalar product.</summary>
    /// <param name="a">Left.</param>
    /// <param name="b">Right.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Dot(Vec3 a, Vec3 b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    /// <summary>Vector product.</summary>
    /// <param name="a">Left.</param>
    /// <param name="b">Right.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vec3 Cross(Vec3 a, Vec3 b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    /// <summary>Unit vector; throws <see cref="ArgumentException"/> for a zero vector.</summary>
    public Vec3 Unit()
    {
        double length = Length;
        return length > 0.0 ? (1.0 / length) * this : throw new ArgumentException("a zero vector has no direction");
    }

    /// <summary>Sum.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vec3 operator +(Vec3 a, Vec3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vec3 operator -(Vec3 a, Vec3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Multiple.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vec3 operator *(double s, Vec3 a) => new(s * a.X, s * a.Y, s * a.Z);

    /// <summary>Opposite.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vec3 operator -(Vec3 a) => new(-a.X, -a.Y, -a.Z);
}
