using LureSim.Model.Cover;
using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Model.Strike;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[strike]</c> to <see cref="StrikeTask"/> and to the <see cref="HookHold"/> of the lure.</summary>
internal static class StrikeMapper
{
    // What a hand keeps loose while it waits; a choice. A sweep is made on a tight line.
    private const double UsualSlackM = 0.3;

    /// <summary>Maps the strike; refused values stay NaN.</summary>
    public static StrikeTask Map(MapContext c)
    {
        StrikeStroke stroke = Stroke(c);
        return new(
            DistanceM: c[StrikeKeys.Distance],
            SlackM: c.Guessed(StrikeKeys.Slack, stroke.Style == StrikeStyle.Sweep ? 0.0 : UsualSlackM),
            DurationS: c[StrikeKeys.Duration],
            KnotShare: c[StrikeKeys.KnotStrength],
            RodFactor: c[StrikeKeys.RodLimit])
        {
            Stroke = stroke,
            Solver = new(StepS: c[StrikeKeys.Step], Nodes: Count(c[StrikeKeys.Nodes])),
        };
    }

    /// <summary>Maps what the hook needs and bears; refused values stay NaN.</summary>
    public static HookHold MapHook(MapContext c)
    {
        (HookKind kind, int? row) = HookMapper.Largest(c);
        double thickness = row is int sized ? HookWire.FleshFactor(HookTable.WireM(sized)) : 1.0;
        var hold = new HookHold(
            Points: Count(c.Guessed(StrikeKeys.Points, HookHold.UsualPoints(kind))),
            SetN: c.Guessed(StrikeKeys.SetForce, thickness * StrikeKeys.SetForce.Parameter!.Default),
            HoldN: c.Guessed(StrikeKeys.TearForce, thickness * StrikeKeys.TearForce.Parameter!.Default),
            WireN: row is int known
                ? c.Guessed(StrikeKeys.WireForce, HookWire.OpeningN(HookTable.WireM(known), HookTable.GapM(known)))
                : c.Guessed(StrikeKeys.WireForce, StrikeKeys.WireForce.Parameter!.Default))
        {
            Kind = kind,
        };
        int most = (int)kind + 1;
        if (hold.Points > most)
        {
            c.Fault(StrikeKeys.Points, $"{hold.Points} points of a {LureItemKeys.HookType.Choices[most - 1].Name}, the largest hook in lure.hooks; at most {most}");
        }

        return hold;
    }

    private static StrikeStroke Stroke(MapContext c)
    {
        StrikeStroke usual = StrikeStroke.Of(Style(c));
        StrikeStroke stroke = usual with
        {
            Effort = c[StrikeKeys.Effort],
            TorqueNm = c.Guessed(StrikeKeys.Torque, usual.TorqueNm),
            SpeedRadS = c.Guessed(StrikeKeys.TurnSpeed, usual.SpeedRadS),
            PullN = c.Guessed(StrikeKeys.Pull, usual.PullN),
            TravelM = c.Guessed(StrikeKeys.Travel, usual.TravelM),
            RampS = c.Guessed(StrikeKeys.Ramp, usual.RampS),
            StartRad = c.Guessed(StrikeKeys.StartAngle, usual.StartRad),
            StopRad = c.Guessed(StrikeKeys.StopAngle, usual.StopRad),
            HoldShare = c[StrikeKeys.HoldShare],
        };
        if (stroke.StopRad < stroke.StartRad + HandsSpec.LeastSwingRad)
        {
            c.Fault(StrikeKeys.StopAngle, string.Concat(
                $"{MapContext.Show(StrikeKeys.StopAngle, stroke.StopRad)} is hardly beyond strike.start_angle, {MapContext.Show(StrikeKeys.StartAngle, stroke.StartRad)}; ",
                $"at least {MapContext.Show(StrikeKeys.StopAngle, stroke.StartRad + HandsSpec.LeastSwingRad)} is due"));
        }

        return stroke;
    }

    private static StrikeStyle Style(MapContext c)
    {
        double style = c[StrikeKeys.Style], kind = c[CoverKeys.Kind];
        return !double.IsNaN(style) ? (StrikeStyle)(int)style : StrikeKeys.UsualStyle(double.IsNaN(kind) ? CoverKind.Open : (CoverKind)(int)kind);
    }

    // A count that was refused is a fault already.
    private static int Count(double value) => double.IsNaN(value) ? 1 : (int)value;
}
