using LureSim.Model.Assembly;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Model.Tests.Data;

namespace LureSim.Model.Tests.References;

/// <summary>The coupled rod, line and hull of the product on case W of docs/reference-cases.md.</summary>
public sealed class CaseWTests
{
    private const double OutputS = 0.005, ReferenceImpulseNs = 0.4392;

    // Path in mm after 1, 2 and 4 s, heading in degrees after 2 and 4 s, as docs/reference-cases.md lists them for a scheme of this
    // kind. At 0.25 ms the path is held to the row of 0.125 ms: what is left there is not the step but the damping law, which
    // here acts as soon as a segment is about to come taut and in the reference only once it is stretched.
    [Theory]
    [InlineData(1e-3, 2.8, 7.2, 16.0, 1.4, 2.4, 0.02)]
    [InlineData(5e-4, 1.0, 2.8, 9.4, 0.7, 2.8, 0.021)]
    [InlineData(2.5e-4, 0.3, 1.7, 4.3, 0.6, 1.6, 0.01)]
    public void Lure_follows_the_explicit_reference(
        double dt, double oneSecond, double twoSeconds, double fourSeconds, double turnTwo, double turnFour, double impulse)
    {
        Outcome run = Run(dt);
        Assert.InRange(1e3 * run.PathRms(1.0), 0.0, oneSecond);
        Assert.InRange(1e3 * run.PathRms(2.0), 0.0, twoSeconds);
        Assert.InRange(1e3 * run.PathRms(4.0), 0.0, fourSeconds);
        Assert.InRange(run.TurnRmsDeg(2.0), 0.0, turnTwo);
        Assert.InRange(run.TurnRmsDeg(4.0), 0.0, turnFour);
        Assert.Equal(ReferenceImpulseNs, run.ImpulseNs, impulse * ReferenceImpulseNs);

        // The reference's highest 5 ms mean is 4.29 N; a scheme of this kind gives 4.10 to 4.18 N.
        Assert.Equal(4.29, run.PeakN, 0.05 * 4.29);
    }

    // All eight twitches end on alternate sides; each snap amplifies differences, the seventh heading is 6 deg off.
    [Fact]
    public void Every_twitch_turns_the_lure_to_the_other_side()
    {
        double[] expected = [-93.2, 83.7, -77.5, 81.5, -78.3, 76.9, -80.9, 81.5];
        var found = new List<double>();
        CoupledStep step = CaseW.Build();
        CaseW.Run(step, 5e-4, 4.0, t =>
        {
            if (Math.Abs(Math.IEEERemainder(t, CaseW.Period)) < 1e-9)
            {
                HullState h = ((PlanarLure)step.Lure).Now;
                double bearing = Math.Atan2(step.Now.Y[0] - h.Y, step.Now.X[0] - h.X);
                found.Add(Math.IEEERemainder(h.Psi - bearing, 2.0 * Math.PI) * 180.0 / Math.PI);
            }
        });
        Assert.Equal(expected.Length, found.Count);
        for (int k = 0; k < found.Count; k++)
        {
            Assert.Equal(expected[k], found[k], 8.0);
        }
    }

    // Rod, line and lure together, at the step of shown runs and at the step of sweeps.
    [Theory]
    [InlineData(5e-4)]
    [InlineData(1e-3)]
    public void Energy_is_never_gained(double dt)
    {
        CoupledStep step = CaseW.Build();
        var audit = new CaseWAudit(step);
        CaseW.Run(step, dt, 4.0, t => audit.Step(t, dt));
        Assert.InRange(audit.HandWorkJ, 0.1, 5.0);
        Assert.InRange(audit.HighestResidualJ, double.NegativeInfinity, 1e-3 * audit.HandWorkJ);
    }

    private static Outcome Run(double dt)
    {
        CoupledStep step = CaseW.Build();
        var outcome = new Outcome(Trace.Read("case_W_rk4.csv"));
        CaseW.Run(step, dt, 4.0, t => outcome.Add(t, dt, step));
        return outcome;
    }

    private sealed class Outcome(Trace trace)
    {
        private readonly double[] _x = trace["lure_x_m"], _y = trace["lure_y_m"], _psi = trace["heading_rad"];
        private readonly List<(double Path, double Turn)> _squares = [];
        private double _mean;

        public double ImpulseNs { get; private set; }

        public double PeakN { get; private set; }

        public void Add(double t, double dt, CoupledStep step)
        {
            double tension = step.TieForce.Length;
            ImpulseNs += dt * tension;
            _mean += dt * tension / OutputS;
            int i = (int)Math.Round(t / OutputS);
            if (Math.Abs((t / OutputS) - i) > 1e-6)
            {
                return;
            }

            PeakN = Math.Max(PeakN, _mean);
            _mean = 0.0;
            HullState h = ((PlanarLure)step.Lure).Now;
            _squares.Add((Math.Pow(h.X - _x[i], 2) + Math.Pow(h.Y - _y[i], 2), Math.Pow(h.Psi - _psi[i], 2)));
        }

        public double PathRms(double end) => Math.Sqrt(Until(end).Average(s => s.Path));

        public double TurnRmsDeg(double end) => Math.Sqrt(Until(end).Average(s => s.Turn)) * 180.0 / Math.PI;

        private IEnumerable<(double Path, double Turn)> Until(double end) => _squares.Take((int)Math.Round(end / OutputS));
    }
}
