using CsCheck;
using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

public sealed class RandomLureTests
{
    private static readonly Gen<LureSpec> Lures =
        from shape in Gen.Int[0, 4]
        from length in Gen.Double[0.06, 0.16]
        from slimness in Gen.Double[2.5, 8.0]
        from flatness in Gen.Double[0.5, 1.5]
        from density in Gen.Double[0.2, 0.99]
        from ballastShare in Gen.Double[0.0, 0.9]
        from x in Gen.Double[-0.45, 0.45]
        from z in Gen.Double[-0.45, 0.45]
        select Lure((LureShape)shape, length, length / slimness, flatness, density, ballastShare, x, z);

    // Whatever the ballast: it floats with B over G in some stable attitude, and the reduction is finite.
    [Fact]
    public void Every_light_lure_floats_stably() => Lures.Sample(
        lure =>
        {
            FloatingLure floating = FloatingLure.Float(lure, TestLures.Water);
            (WalkHull hull, FloatReport f) = (WalkHullBuilder.Build(floating), FloatSolver.Report(floating));
            Assert.Equal(lure.MassKg, 1000.0 * f.DisplacedVolumeM3, 1e-9 * lure.MassKg);

            // A round hull with its weight on the axis is neutral: GM is 0 to the error of the strips.
            double neutral = -1e-4 * lure.DiameterM;
            Assert.True(f.GmTransverseM > neutral && f.GmLongitudinalM > neutral);
            Assert.True(double.IsFinite(hull.M11 + hull.M22 + hull.M23 + hull.M33 + hull.NoseStiffnessNM + hull.NoseMassKg));
            Assert.True(hull.M22 * hull.M33 > hull.M23 * hull.M23);
            Assert.True(hull.NoseStiffnessNM > 0.0);
        },
        iter: 500);

    private static LureSpec Lure(
        LureShape shape, double length, double diameter, double flatness, double density, double ballastShare, double x, double z)
    {
        double height = Math.Min(length, diameter * flatness);
        var hull = new NamedHull(shape, length, diameter, height);

        // No lure is lighter than half a gram.
        double mass = Math.Max(5e-4, 1000.0 * density * hull.VolumeM3());
        return new LureSpec(
            shape, length, diameter, height, mass, 0.46 * length, 0.0, [new BallastSpec(ballastShare * mass, x * length, z * height)], []);
    }
}
