using LureSim.Model.Lures;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Mapping;

/// <summary>Tables <c>[retrieve]</c> and <c>[solver]</c> to <see cref="RetrieveTask"/>.</summary>
internal static class RetrieveMapper
{
    /// <summary>Maps; refused values stay NaN.</summary>
    public static RetrieveTask Map(MapContext c, RodSpec? rod)
    {
        double takeUp = c[RetrieveKeys.TakeUp];
        return new(
            DistanceM: c[RetrieveKeys.Distance],
            CadencePerS: c[RetrieveKeys.Cadence],
            StrokeM: StrokeM(c, rod),
            DurationS: c[RetrieveKeys.Duration],
            HoldDistance: c[RetrieveKeys.HoldDistance] == 1.0,
            StartHeadingRad: c[RetrieveKeys.StartHeading],
            StartSidewaysM: c[RetrieveKeys.StartSideways],
            WarmUpS: c[RetrieveKeys.WarmUp])
        {
            TakeUp = new(
                Mode: double.IsNaN(takeUp) ? TakeUpMode.Gather : (TakeUpMode)(int)takeUp,
                SlackM: c[RetrieveKeys.Slack],
                SpeedMS: c[RetrieveKeys.TakeUpSpeed],
                PerTwitchM: c[RetrieveKeys.TakeUpPerTwitch],
                LagS: c[RetrieveKeys.GatherLag],
                GainPerS: c[RetrieveKeys.GatherGain],
                ResetPerS: c[RetrieveKeys.GatherReset],
                FastestMS: c[RetrieveKeys.GatherFastest]),
            Hull = c[RetrieveKeys.Hull] == (double)HullFreedom.Planar ? HullFreedom.Planar : HullFreedom.Six,
            Solver = new(Nodes: (int)c[SolverKeys.Nodes], StepS: c[SolverKeys.Step], OutputStepS: c[SolverKeys.OutputStep]),
        };
    }

    // A wrist angle swings the rigid tip on an arc about the hand.
    private static double StrokeM(MapContext c, RodSpec? rod)
    {
        double given = c[RetrieveKeys.Stroke];
        if (c.Values.KindOf(RetrieveKeys.Stroke) != QuantityKind.Angle)
        {
            return given;
        }

        double stroke = given * (rod?.FreeLengthM ?? double.NaN);
        if (stroke < RetrieveKeys.Stroke.Low || stroke > RetrieveKeys.Stroke.High)
        {
            c.Fault(RetrieveKeys.Stroke, string.Concat(
                $"\"{c.Values.Text(RetrieveKeys.Stroke)}\" moves the tip by {MapContext.Show(RetrieveKeys.Stroke, stroke)}; ",
                $"allowed: {RangeText.Of(RetrieveKeys.Stroke)}"));
        }

        return stroke;
    }
}
