using System.Runtime.CompilerServices;

namespace LureSim.Numerics;

/// <summary>Axes of a turned body, as columns in world axes: right-handed, orthonormal.</summary>
/// <param name="X">Body x in world axes.</param>
/// <param name="Y">Body y in world axes.</param>
/// <param name="Z">Body z in world axes.</param>
public readonly record struct Frame3(Vec3 X, Vec3 Y, Vec3 Z)
{
    // Below this the series is exact to the last digit.
    private const double SmallAngle = 0.05;

    /// <summary>From body to world axes.</summary>
    /// <param name="body">Vector in body axes.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vec3 ToWorld(Vec3 body) => new(
        (X.X * body.X) + (Y.X * body.Y) + (Z.X * body.Z),
        (X.Y * body.X) + (Y.Y * body.Y) + (Z.Y * body.Z),
        (X.Z * body.X) + (Y.Z * body.Y) + (Z.Z * body.Z));

    /// <summary>From world to body axes.</summary>
    /// <param name="world">Vector in world axes.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vec3 ToBody(Vec3 world) => new(Vec3.Dot(X, world), Vec3.Dot(Y, world), Vec3.Dot(Z, world));

    /// <summary>Upward unit vector in body axes.</summary>
    public Vec3 Up => new(X.Z, Y.Z, Z.Z);

    /// <summary>These axes turned by a rotation vector given in them (Rodrigues' formula).</summary>
    /// <param name="turn">Axis times angle, body axes, rad.</param>
    public Frame3 Turned(Vec3 turn)
    {
        double square = Vec3.Dot(turn, turn);
        double sine, cosine;
        if (square < SmallAngle * SmallAngle)
        {
            sine = 1.0 - (square / 6.0 * (1.0 - (square / 20.0 * (1.0 - (square / 42.0)))));
            cosine = 0.5 - (square / 24.0 * (1.0 - (square / 30.0 * (1.0 - (square / 56.0)))));
        }
        else
        {
            double angle = Math.Sqrt(square);
            sine = Math.Sin(angle) / angle;
            cosine = (1.0 - Math.Cos(angle)) / square;
        }

        Vec3 x = ToWorld(Column(turn, square, sine, cosine, new Vec3(1.0, 0.0, 0.0)));
        Vec3 y = ToWorld(Column(turn, square, sine, cosine, new Vec3(0.0, 1.0, 0.0)));
        return new Frame3(x, y, Vec3.Cross(x, y));
    }

    /// <summary>The same axes, orthonormal again to the last digit: many turns leave rounding.</summary>
    public Frame3 Squared()
    {
        Vec3 x = X.Unit();
        Vec3 y = (Y - (Vec3.Dot(x, Y) * x)).Unit();
        return new Frame3(x, y, Vec3.Cross(x, y));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vec3 Column(Vec3 turn, double square, double sine, double cosine, Vec3 e) =>
        e + (sine * Vec3.Cross(turn, e)) + (cosine * ((Vec3.Dot(turn, e) * turn) - (square * e)));
}
