using LureSim.Model.Lines.Chain;
using LureSim.Numerics;

namespace LureSim.Model.Assembly;

/// <summary>Energy that the line holds.</summary>
internal static class LineEnergy
{
    /// <summary>Twice the energy of motion of the inner nodes and of stretch, J.</summary>
    /// <param name="mesh">Line.</param>
    /// <param name="s">State.</param>
    public static double Twice(LineMesh mesh, LineState s)
    {
        double twice = 0.0;
        for (int j = 0; j < mesh.Segments; j++)
        {
            double over = Math.Max(0.0, (Place(s, j + 1) - Place(s, j)).Length - mesh.Rest[j]);
            twice += mesh.Stiffness[j] * over * over;
            twice += j > 0 ? mesh.Mass[j] * ((s.VX[j] * s.VX[j]) + (s.VY[j] * s.VY[j]) + (s.VZ[j] * s.VZ[j])) : 0.0;
        }

        return twice;
    }

    /// <summary>Energy of the leader's bending, J.</summary>
    /// <param name="mesh">Line.</param>
    /// <param name="s">State.</param>
    public static double Bending(LineMesh mesh, LineState s)
    {
        double sum = 0.0;
        for (int i = Math.Max(1, mesh.FirstLeaderSegment + 1); i < mesh.Segments; i++)
        {
            Vec3 turn = Edge(mesh, s, i) - Edge(mesh, s, i - 1);
            sum += mesh.Piece(i).BendingStiffnessNm2 / (mesh.Rest[i - 1] + mesh.Rest[i]) * Vec3.Dot(turn, turn);
        }

        return sum;
    }

    /// <summary>A segment over its unstretched length.</summary>
    /// <param name="mesh">Line.</param>
    /// <param name="s">State.</param>
    /// <param name="j">Segment.</param>
    public static Vec3 Edge(LineMesh mesh, LineState s, int j) => (1.0 / mesh.Rest[j]) * (Place(s, j + 1) - Place(s, j));

    /// <summary>Stretch of the tight segments, m.</summary>
    /// <param name="mesh">Line.</param>
    /// <param name="s">State.</param>
    public static double StretchM(LineMesh mesh, LineState s)
    {
        double sum = 0.0;
        for (int j = 0; j < mesh.Segments; j++)
        {
            sum += Math.Max(0.0, (Place(s, j + 1) - Place(s, j)).Length - mesh.Rest[j]);
        }

        return sum;
    }

    private static Vec3 Place(LineState s, int i) => new(s.X[i], s.Y[i], s.Z[i]);
}
