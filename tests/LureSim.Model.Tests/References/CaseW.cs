using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.References;

/// <summary>Case W of docs/reference-cases.md: line, planar hull with nose spring, rod tip with two modes, in its own simplified laws.</summary>
internal static class CaseW
{
    public const double Gravity = 9.81, WaterDensity = 1000.0, AirDensity = 1.225, Stroke = 0.20, Retreat = 0.45, Period = 0.5;

    public static readonly double[] StripX =
    [
        -0.049080952, -0.043842857, -0.038604762, -0.033366667, -0.028128571, -0.022890476, -0.017652381, -0.012414286, -0.007176190,
        -0.001938095, 0.003300000, 0.008538095, 0.013776190, 0.019014286, 0.024252381, 0.029490476, 0.034728571, 0.039966667,
        0.045204762, 0.050442857, 0.055680952,
    ];

    public static readonly double[] StripDraft =
    [
        0.006946744, 0.010959673, 0.012108108, 0.012836314, 0.013296146, 0.013560463, 0.013672514, 0.013662059, 0.013552542,
        0.013365498, 0.013125691, 0.012857172, 0.012535890, 0.012137081, 0.011639210, 0.011018833, 0.010246190, 0.009278032,
        0.008041500, 0.006384738, 0.003807433,
    ];

    public static readonly RodModeSet Modes = new(
        1.0, [0.008, 0.004], [6.395503652, 35.53057584], [0.01357168026, 0.02261946711], [1.5 * 0.008, -0.8 * 0.004], 0.0);

    public static WalkHull Hull { get; } = new(
        0.110, 0.018, 0.01908, 0.02877713631, 2.454979372e-6, 2.1202747e-5, 0.0539, 0.0,
        StripX, StripDraft.Select(h => 0.5 * WaterDensity * 1.1 * h * (0.110 / 21)).ToArray(), 0.04301642896,
        [0.0055, -0.0495], [0.5 * WaterDensity * 6e-5, 0.5 * WaterDensity * 6e-5],
        0.00699517399, 3.879457554, 0.09884074569, [], []);

    public static HullState Start => new(14.931802751, 0.008054715, Math.PI + 0.15, 0, 0, 0, 0, 0);

    public static CoupledStep Build(int segments = 40)
    {
        double area = Math.PI * 0.3e-3 * 0.3e-3 / 4.0;
        var line = new LineSpec(
            LineMaterial.Braid, 0.3e-3, 970.0 * area, 970.0, 5000.0, 4.5 / 5000.0, 0.0, SurfaceFilm.Wetted, 200.0, 1.0, 0.01);
        var medium = new LineMedium(
            new WaterState(WaterDensity, 1e-3, 0.0725), new AirState(AirDensity, 1.8e-5), DragCurve.Constant(1.2), Gravity,
            AddedMassCoefficient: 0.0);
        var step = new CoupledStep(new LineMesh(line, null, 15.0, segments), medium, new ModalRod(Modes), new PlanarLure(new WalkingHull(Hull), Start), false);
        step.Start(new Drive().At(0.0));
        return step;
    }

    public static void Run(CoupledStep step, double dt, double end, Action<double> record)
    {
        var drive = new Drive();
        int steps = (int)Math.Round(end / dt);
        for (int n = 0; n < steps; n++)
        {
            step.Try(n == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt), drive.At((n + 1) * dt));
            step.Commit();
            record((n + 1) * dt);
        }
    }

    /// <summary>s, s', s'' of the stroke.</summary>
    public static (double S, double Rate, double Acceleration) Pulse(double t)
    {
        double u = t % Period;
        if (u < 0.10)
        {
            double w = Math.PI / 0.10;
            return (0.5 * (1 - Math.Cos(w * u)), 0.5 * w * Math.Sin(w * u), 0.5 * w * w * Math.Cos(w * u));
        }

        if (u < 0.25)
        {
            double w = Math.PI / 0.15;
            u -= 0.10;
            return (0.5 * (1 + Math.Cos(w * u)), -0.5 * w * Math.Sin(w * u), -0.5 * w * w * Math.Cos(w * u));
        }

        return (0, 0, 0);
    }

    internal sealed class Drive : ITipDrive
    {
        private static readonly Vec3 D = new(0.8, 0.0, 0.6);

        public TipFrame At(double timeS)
        {
            (double s, double rate, _) = Pulse(timeS);
            return new TipFrame(
                new Vec3(-Retreat * timeS, 0.0, 0.8) - (Stroke * s * D), new Vec3(-Retreat, 0.0, 0.0) - (Stroke * rate * D),
                D, Vec3.Zero, Vec3.Zero, -Stroke * rate);
        }
    }
}
