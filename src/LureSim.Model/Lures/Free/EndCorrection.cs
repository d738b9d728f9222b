using LureSim.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Lures.Free;

/// <summary>
/// Puts the end corrections of <see cref="HullAddedMass"/> (k2 of the equal spheroid in sway, J in yaw) into the sections: a factor
/// k(x) = k0 + k1 s + k2 s^2, s = 2x/L, so that mass, coupling and inertia of the resting hull come out as there. Held at 0 or more, which only
/// touches the last few per cent of the length of very stubby hulls.
/// </summary>
internal static class EndCorrection
{
    /// <summary>The constants with their end corrections.</summary>
    /// <param name="plain">Constants with a factor of rho.</param>
    /// <param name="f">Lure at rest.</param>
    /// <param name="wanted">Added mass at rest, about G.</param>
    public static NodeWater Fit(NodeWater plain, FloatingLure f, HullAddedMass wanted)
    {
        ArgumentNullException.ThrowIfNull(plain);
        ArgumentNullException.ThrowIfNull(f);
        ArgumentNullException.ThrowIfNull(wanted);
        HullNodes nodes = plain.Nodes;
        Attitude a = f.State.Attitude;
        var water = new WaterAxes(a.HeightM, a.Up);
        var cut = new NodeCut(nodes);
        cut.Set(water);
        var added = new NodeAddedMass(plain, cut);
        added.Set(water, 0.0, Vec3.Zero);
        double[] ahead = Array.ConvertAll(nodes.X, x => f.AheadM(x, 0.0));
        return plain with
        {
            SwayKgM3 = Corrected(plain, added.Sway, ahead, f.Hull.LengthM, [wanted.SwayKg, wanted.SwayYawKgM, wanted.YawKgM2]),
            HeaveKgM3 = Corrected(plain, added.Heave, ahead, f.Hull.LengthM, [wanted.HeaveKg, wanted.HeaveSumKgM, wanted.PitchKgM2]),
        };
    }

    private static double[] Corrected(NodeWater plain, double[] perMetre, double[] ahead, double lengthM, double[] wanted)
    {
        HullNodes nodes = plain.Nodes;
        var moments = Matrix<double>.Build.Dense(3, 3);
        for (int j = 0; j < HullNodes.Count; j++)
        {
            double mass = perMetre[j] * nodes.Width[j], s = 2.0 * nodes.X[j] / lengthM, arm = ahead[j] / lengthM;
            for (int row = 0; row < 3; row++)
            {
                double m = mass * Math.Pow(arm, row);
                moments[row, 0] += m;
                moments[row, 1] += m * s;
                moments[row, 2] += m * s * s;
            }
        }

        Vector<double> k = moments.Solve(Vector<double>.Build.Dense([wanted[0], wanted[1] / lengthM, wanted[2] / (lengthM * lengthM)]));
        return Array.ConvertAll(nodes.X, x =>
        {
            double s = 2.0 * x / lengthM;
            return plain.DensityKgM3 * Math.Max(0.0, k[0] + (s * (k[1] + (s * k[2]))));
        });
    }
}
