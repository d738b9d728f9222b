using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[retrieve]</c> to <see cref="RetrieveSpec"/>.</summary>
internal static class RetrieveMapper
{
    /// <summary>Maps; refused values stay NaN.</summary>
    public static RetrieveSpec Map(MapContext c, RodSpec? rod)
    {
        double takeUp = c[RetrieveKeys.TakeUp];
        return new(
            c[RetrieveKeys.Distance],
            c[RetrieveKeys.Cadence],
            StrokeM(c, rod),
            c[RetrieveKeys.Slack],
            double.IsNaN(takeUp) ? TakeUpMode.Gather : (TakeUpMode)(int)takeUp,
            c[RetrieveKeys.TakeUpSpeed],
            c[RetrieveKeys.TakeUpPerTwitch],
            c[RetrieveKeys.Duration],
            c[RetrieveKeys.HoldDistance] == 1.0,
            c[RetrieveKeys.StartHeading],
            c[RetrieveKeys.StartSideways],
            c[RetrieveKeys.WarmUp]);
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
