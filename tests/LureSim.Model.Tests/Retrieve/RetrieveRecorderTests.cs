using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Retrieve;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Retrieve;

/// <summary>Channels of the start and of one step.</summary>
public sealed class RetrieveRecorderTests
{
    // The lure lies 2 m to the left, and its nose points at the rod tip, the bearing asin(2/ground distance) from the line's axis: nothing off the
    // line. Turned on by 0.1 rad about its tie, its centre leaves the ray by 5 mm in 15 m, 0.02 deg.
    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(0.1, 5.7296)]
    [InlineData(-0.1, -5.7296)]
    public void Heading_off_the_line_is_counted_from_the_bearing_of_the_rod_tip(double turned, double degrees)
    {
        const double distance = 15.0, across = 2.0;
        RetrieveParts probe = RetrieveCases.Parts(new RetrieveTask(DistanceM: distance));
        double drop = probe.Swing.TipHeightM - probe.Hull.TieHeightM, bearing = Math.Asin(across / Math.Sqrt((distance * distance) - (drop * drop)));
        Series s = Started(new RetrieveTask(DistanceM: distance, StartSidewaysM: across, StartHeadingRad: bearing + turned)).Series;
        Assert.Equal(degrees, s["heading_off_line_deg"][0], 0.03);
        Assert.Equal((bearing + turned) * 180.0 / Math.PI, s["heading_deg"][0], 1e-9);
        Assert.Equal(distance, s["straight_m"][0], 1e-9);
        Assert.Equal(0.14, s["slack_m"][0], 1e-9);
    }

    // The line pulls the tie with its tension, and half a segment at the tie weighs what it weighs less its buoyancy: both press the nose down.
    [Fact]
    public void The_load_on_the_nose_is_pull_and_weight()
    {
        var spec = new RetrieveTask(DurationS: 0.5);
        RetrieveParts parts = RetrieveCases.Parts(spec);
        var recorder = new RetrieveRecorder(parts, 1);
        recorder.RecordStart();
        TipFrame tip = parts.Swing.At(1e-3);
        parts.Step.Try(Bdf2.BackwardEuler(1e-3), tip);
        parts.Step.Commit();
        CoupledStep step = parts.Step;
        recorder.Accumulate(1e-3);
        recorder.Step(1e-3, 0.25, 1e-3);
        Series s = recorder.Finish(null, new SolverCounters(1, 0, 1, 0, 0.0)).Series;
        double half = 0.5 * parts.Mesh.Rest[parts.Mesh.Segments - 1], mu = parts.Setup.Line.LinearDensityKgM;
        double wet = parts.Medium.WetShare(parts.Hull.TieHeightM);
        double weight = half * mu * Physics.GravityMS2 * (1.0 - (wet * parts.Medium.Water.DensityKgM3 / parts.Setup.Line.DensityKgM3));

        // The step takes the tie where it guesses it, a micrometre from where it was.
        Assert.Equal(-weight, step.TieWeight, 1e-8);
        Assert.Equal(weight - step.TieForce.Z, s["nose_down_N"][1], 1e-8);
        Assert.Equal(step.TieForce.Length, s["nose_tension_N"][1], 1e-12);
        Assert.Equal(step.TipForce.Length, s["tip_tension_N"][1], 1e-12);
        Assert.Equal(0.25, s["take_up_m_s"][1]);
        Assert.Equal(step.Lure.Pose.Tie.Z, s["nose_height_m"][1], 1e-15);
    }

    private static RetrieveResult Started(RetrieveTask spec)
    {
        var recorder = new RetrieveRecorder(RetrieveCases.Parts(spec), 1);
        recorder.RecordStart();
        recorder.Step(0.005, 0.0, 0.005);
        return recorder.Finish(null, new SolverCounters(0, 0, 0, 0, 0.0));
    }
}
