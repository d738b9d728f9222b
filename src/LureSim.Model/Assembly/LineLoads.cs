using LureSim.Model.Lines.Chain;
using LureSim.Numerics;

namespace LureSim.Model.Assembly;

/// <summary>What the line weighs on the run at one instant.</summary>
/// <param name="DragN">Resultant of the fluid forces on the line, N.</param>
/// <param name="WettedM">Length of line in the water, nodes weighted by their wet share, m.</param>
/// <param name="SagM">Lowest point under the chord, m.</param>
internal readonly record struct LineLoads(double DragN, double WettedM, double SagM)
{
    /// <summary>Adds up over the nodes of the last step.</summary>
    /// <param name="mesh">Line.</param>
    /// <param name="medium">Water and air.</param>
    /// <param name="step">Step just taken.</param>
    public static LineLoads Of(LineMesh mesh, LineMedium medium, CoupledStep step)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(medium);
        ArgumentNullException.ThrowIfNull(step);
        LineState s = step.Now;
        LinePass pass = step.Pass;
        int n = mesh.Segments;
        double fx = 0.0, fy = 0.0, fz = 0.0, wetted = 0.0, sag = 0.0, run = 0.0;
        for (int i = 1; i < n; i++)
        {
            run += mesh.Rest[i - 1];
            double wet = pass.WetShare(i), dry = 1.0 - wet;
            Vec3 u = pass.Tangent(i);
            var v = new Vec3(s.VX[i] - (dry * pass.WindX[i]), s.VY[i] - (dry * pass.WindY[i]), s.VZ[i]);
            double along = Vec3.Dot(v, u);
            (double cn, double ct) = pass.Drag(i);
            Vec3 f = (cn * (v - (along * u))) + (ct * (along - (pass.FeedMS * mesh.FeedShare[i])) * u);
            (fx, fy, fz) = (fx + f.X, fy + f.Y, fz + f.Z);
            wetted += 0.5 * (mesh.Rest[i - 1] + mesh.Rest[i]) * wet;
            double chord = s.Z[0] + (run / mesh.LengthM * (s.Z[n] - s.Z[0]));
            sag = Math.Max(sag, chord - s.Z[i]);
        }

        return new LineLoads(Math.Sqrt((fx * fx) + (fy * fy) + (fz * fz)), wetted, sag);
    }
}
