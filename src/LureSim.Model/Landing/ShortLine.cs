using LureSim.Model.Assembly;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Model.Landing;

/// <summary>What eases a bolt of the fish at the boat, line straight down from the tip, held at the pull that is kept up for long.</summary>
/// <param name="StartN">That pull, N.</param>
/// <param name="LineGiveMN">Way that the line gives per newton of pull, m/N.</param>
/// <param name="RodGiveMN">Way that the tip of the bent rod gives per newton about that pull, m/N.</param>
/// <param name="LockedN">Largest pull of the bolt with the drag locked and the butt held fast, N.</param>
/// <param name="LockedTorqueNm">Torque on the hands then, N m; more than they hold means that the rod is pulled down, toward <see cref="PointedN"/>.</param>
/// <param name="PointedN">The same with the rod pointed at the fish: nothing gives but the line, N.</param>
/// <param name="FarN">The same bolt with the rod at the same angle to the line and the fish at its distance, N.</param>
/// <param name="SlipStartN">Pull at the fish that starts the drag, rings and static friction in it, N.</param>
/// <param name="SlipN">Pull at the fish that keeps it running, N.</param>
/// <param name="Weakest">The weakest part, the rod at that angle among them.</param>
/// <param name="SafeDragN">Setting of the drag, straight off the reel, at which it starts below the weakest part by the margin, N.</param>
/// <param name="HookDragN">The same without the rod: hook, knot and leader, N.</param>
public sealed record ShortLine(
    double StartN, double LineGiveMN, double RodGiveMN, double LockedN, double LockedTorqueNm, double PointedN, double FarN, double SlipStartN, double SlipN,
    TackleStrength Weakest, double SafeDragN, double HookDragN)
{
    /// <summary>Largest pull of the bolt with the drag as it is set, N.</summary>
    public double WithDragN => Math.Min(LockedN, SlipStartN);

    /// <summary>Of a set-up.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Where and how.</param>
    /// <param name="rod">The rod in the hands.</param>
    /// <param name="tackle">The weakest part between tip and fish.</param>
    /// <param name="densityKgM3">Density of the water, kg/m3.</param>
    internal static ShortLine Of(Setup setup, LandingTask task, HeldRod rod, TackleStrength tackle, double densityKgM3)
    {
        double angle = task.BoatAngleRad;
        RodLoad hold = new RodLift(rod, tackle).Lift(angle, task.Long)[0];
        TackleStrength weakest = tackle.Or(LandingLimit.Rod, hold.RodN);
        double rings = Math.Exp(setup.Reel.Clutch.RingFriction * hold.LineTurnRad), near = LineGive(setup, task.ShortLineM, rings);
        double TipM(double load) => rod.Hung(angle, load).TipYM;
        double Peak(double line, Func<double, double> bend) => Surge.PeakN(setup.Fish, densityKgM3, hold.LoadN, n => bend(n) + (n * line));

        // Past the most that is looked for the rod lies along the line and gives no more.
        double Bend(double load) => -TipM(Math.Min(load, RodHold.MostN));
        double locked = Peak(near, Bend), sliding = rings * Emptying(setup, task.ShortLineM), starting = setup.Reel.Clutch.StaticRatio * sliding;
        double swing = 0.02 * Math.Max(1.0, hold.LoadN);
        return new(
            hold.LoadN,
            near,
            (TipM(hold.LoadN - swing) - TipM(hold.LoadN + swing)) / (2.0 * swing),
            locked,
            rod.Hung(angle, locked).ButtMomentNm,
            Peak(LineGive(setup, task.ShortLineM, 1.0), _ => 0.0),
            Peak(LineGive(setup, task.DistanceM, rings), Bend),
            setup.Reel.DragN * starting,
            setup.Reel.DragN * sliding,
            weakest,
            weakest.LoadN / (task.Margin * starting),
            tackle.LoadN / (task.Margin * starting));
    }

    // Line and leader beyond the tip at the full pull, line along the rod at what the rings leave of it.
    private static double LineGive(Setup setup, double outM, double rings)
    {
        double leader = Math.Min(outM, setup.Leader?.LengthM ?? 0.0), line = (outM - leader + (setup.Rod.FreeLengthM / rings)) / setup.Line.AxialStiffnessN;
        return line + (setup.Leader is null ? 0.0 : leader / setup.Leader.Line.AxialStiffnessN);
    }

    // R_full/R: the drag slips at a force that grows as the spool empties.
    private static double Emptying(Setup setup, double outM) => setup.Reel.TakeUpPerTurnM / HandleTurn.TakeUpM(setup.Reel, setup.Line, outM);
}
