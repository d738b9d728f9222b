using LureSim.Numerics;

namespace LureSim.Model.Lines.Chain;

/// <summary>
/// What holds one end of the line, as one step sees it: where the end would be without tension and how it yields,
/// v = FreeVelocity + q W F. W is symmetric; zero for a fixed or prescribed end.
/// </summary>
internal struct LineEnd
{
    /// <summary>End position without tension at the end of the step, m.</summary>
    public Vec3 FreePosition;

    /// <summary>End velocity without tension at the end of the step, m/s.</summary>
    public Vec3 FreeVelocity;

    /// <summary>W(x,x), 1/kg.</summary>
    public double Wxx;

    /// <summary>W(x,y), 1/kg.</summary>
    public double Wxy;

    /// <summary>W(x,z), 1/kg.</summary>
    public double Wxz;

    /// <summary>W(y,y), 1/kg.</summary>
    public double Wyy;

    /// <summary>W(y,z), 1/kg.</summary>
    public double Wyz;

    /// <summary>W(z,z), 1/kg.</summary>
    public double Wzz;

    /// <summary>W d.</summary>
    /// <param name="d">Direction.</param>
    public readonly Vec3 Yield(Vec3 d) => new(
        (Wxx * d.X) + (Wxy * d.Y) + (Wxz * d.Z),
        (Wxy * d.X) + (Wyy * d.Y) + (Wyz * d.Z),
        (Wxz * d.X) + (Wyz * d.Y) + (Wzz * d.Z));

    /// <summary>Adds w n n' to W.</summary>
    /// <param name="w">Inverse mass, 1/kg.</param>
    /// <param name="n">Unit direction.</param>
    public void AddYield(double w, Vec3 n)
    {
        Wxx += w * n.X * n.X;
        Wxy += w * n.X * n.Y;
        Wxz += w * n.X * n.Z;
        Wyy += w * n.Y * n.Y;
        Wyz += w * n.Y * n.Z;
        Wzz += w * n.Z * n.Z;
    }

    /// <summary>A prescribed end.</summary>
    /// <param name="position">Position at the end of the step, m.</param>
    /// <param name="velocity">Velocity at the end of the step, m/s.</param>
    public static LineEnd Prescribed(Vec3 position, Vec3 velocity) =>
        new() { FreePosition = position, FreeVelocity = velocity };
}
