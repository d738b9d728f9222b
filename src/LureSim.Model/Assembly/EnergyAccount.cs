using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Model.Assembly;

/// <summary>
/// Energy account of a retrieve: what line, leader, hull, nose, rod and turning spool hold, less the work of hand, reel, clutch, wind, weight, film, drag and damping
/// (trapezoid rule over the steps). What stays open is energy that the numbers made or lost. The added mass of a node that dips in or out is
/// taken as it is at the end of the step: the water's share is not part of the account.
/// </summary>
internal sealed class EnergyAccount
{
    // A lure that nobody moves: shares of less than this are shares of nothing, J.
    private const double LeastEffortJ = 1e-6;

    private readonly CoupledStep _step;
    private readonly bool _knotted;
    private readonly double _heldAtStart;
    private double _gained, _powerBefore, _driveBefore;
    private LinePower _before;
    private TipFrame _tipBefore;
    private Vec3 _forceBefore;

    /// <summary>Opens the account of a step that has been started.</summary>
    /// <param name="step">Rod, line and lure.</param>
    /// <param name="fixedKnot">True for a tight knot at the line tie.</param>
    /// <param name="tip">Rigid tip at the start.</param>
    public EnergyAccount(CoupledStep step, bool fixedKnot, in TipFrame tip)
    {
        (_step, _knotted, _tipBefore) = (step, fixedKnot, tip);
        _heldAtStart = Held(step.Now, step.Rod.Now);
    }

    /// <summary>Work of hand, reel, wind and weight, the size of each step's added up, J.</summary>
    public double EffortJ { get; private set; }

    /// <summary>Held energy less all work since the start, J; above 0 where energy came from nothing.</summary>
    public double ResidualJ => Held(_step.Now, _step.Rod.Now) + (_step.Clutch?.TakenJ ?? 0.0) - _heldAtStart - _gained;

    /// <summary>Size of what is open over the effort.</summary>
    public double OpenShare => Math.Abs(ResidualJ) / Math.Max(EffortJ, LeastEffortJ);

    /// <summary>Books a step that is about to be taken over: after <see cref="CoupledStep.Try"/>, before <see cref="CoupledStep.Commit"/>.</summary>
    /// <param name="dt">Step, s.</param>
    /// <param name="tip">Rigid tip at its end.</param>
    public void Book(double dt, in TipFrame tip)
    {
        ModalRod rod = _step.Rod;

        // By displacement, not by speed: winding sets in with a jump of speed.
        double bend = 0.5 * (rod.Next.Bend + rod.Now.Bend);
        Vec3 moved = tip.Position - _tipBefore.Position + (bend * (tip.Stroke - _tipBefore.Stroke));
        double hand = (-0.5 * Vec3.Dot(_step.TipForce + _forceBefore, moved)) + InertiaWork(tip.DriveMS);
        LinePower line = _step.Pass.Power(_step.Next);
        double power = line.FluidW + line.WeightW + line.StretchW + line.ReelW + _step.Lure.PowerW(_step.TieWeight) + RodPower(rod.Next);
        double half = 0.5 * dt;
        _gained += (half * (power + _powerBefore)) + hand - line.AddedJ;
        _gained += _step.Clutch is { StepM: not 0.0 and double given } ? given * _step.Pass.HeldPerFirstM(_step.Next) : 0.0;
        EffortJ += Math.Abs(hand) + (half * (Math.Abs(line.WindW + _before.WindW) + Math.Abs(line.ReelW + _before.ReelW) + Math.Abs(line.WeightW + _before.WeightW)));
        (_powerBefore, _before, _tipBefore, _forceBefore) = (power, line, tip, _step.TipForce);
    }

    private double InertiaWork(double drive)
    {
        RodModeSet modes = _step.Rod.Modes;
        double sum = 0.0;
        for (int k = 0; k < modes.Count; k++)
        {
            sum -= modes.BaseParticipationKg[k] * (drive - _driveBefore) * 0.5 * (_step.Rod.Next.Rate[k] + _step.Rod.Now.Rate[k]);
        }

        _driveBefore = drive;
        return sum;
    }

    private double RodPower(ModalRodState rod)
    {
        RodModeSet modes = _step.Rod.Modes;
        double power = 0.0;
        for (int k = 0; k < modes.Count; k++)
        {
            double inPlane = rod.Rate[k], across = rod.Rate[modes.Count + k];
            power -= modes.DampingNsM[k] * ((inPlane * inPlane) + (across * across));
        }

        return power;
    }

    private double Held(LineState s, ModalRodState rod)
    {
        RodModeSet modes = _step.Rod.Modes;
        double twice = LineEnergy.Twice(_step.Mesh, s);
        for (int k = 0; k < 2 * modes.Count; k++)
        {
            int mode = k % modes.Count;
            twice += (modes.MassKg[mode] * rod.Rate[k] * rod.Rate[k]) + (modes.StiffnessNM[mode] * rod.Q[k] * rod.Q[k]);
        }

        return (0.5 * twice) + _step.Lure.HeldJ + (LineEnergy.Bending(_step.Mesh, s) + Knot(s));
    }

    // Energy of a leader that leaves a fixed knot at an angle.
    private double Knot(LineState s)
    {
        LineMesh mesh = _step.Mesh;
        if (!_knotted || mesh.FirstLeaderSegment >= mesh.Segments)
        {
            return 0.0;
        }

        int last = mesh.Segments - 1;
        Vec3 off = LineEnergy.Edge(mesh, s, last) + _step.Lure.Axis;
        return mesh.Piece(last).BendingStiffnessNm2 / mesh.Rest[last] * Vec3.Dot(off, off);
    }
}
