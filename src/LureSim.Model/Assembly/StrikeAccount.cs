using LureSim.Model.Lines.Chain;

namespace LureSim.Model.Assembly;

/// <summary>
/// Energy account of a strike: what hands, rod, spool, line and fish hold, less the work of hands, fish, weight, and what water, air, plants, clutch and damping
/// take (trapezoid rule). What stays open is energy that the numbers made or lost.
/// </summary>
internal sealed class StrikeAccount
{
    // A strike that hardly moves: shares of less than this are shares of nothing, J.
    private const double LeastEffortJ = 1e-3;

    private readonly StrikeStep _step;
    private readonly double _heldAtStart;
    private double _gained, _powerBefore, _effortBefore, _rodBefore, _handsBefore, _lossBefore, _givenBefore;

    /// <summary>Opens the account of a step that has been started.</summary>
    /// <param name="step">All parts.</param>
    public StrikeAccount(StrikeStep step)
    {
        _step = step;
        (_rodBefore, _handsBefore) = (RodWork(), step.Rod.Work.HandsJ);
        _heldAtStart = Held();
    }

    /// <summary>Work of hands, fish and weight, the size of each step's added up, J.</summary>
    public double EffortJ { get; private set; }

    /// <summary>Size of what is open over the effort.</summary>
    public double OpenShare => Math.Abs(Held() - _heldAtStart - _gained) / Math.Max(EffortJ, LeastEffortJ);

    /// <summary>Books a step that has just been taken over.</summary>
    /// <param name="dt">Step, s.</param>
    public void Book(double dt)
    {
        LinePower line = _step.Pass.Power(_step.Now);
        (double thrust, double loss) = _step.Fish.Power();
        double power = line.FluidW + line.WeightW + line.StretchW + thrust + loss, effort = Math.Abs(thrust) + Math.Abs(line.WeightW);
        double rod = RodWork(), hands = _step.Rod.Work.HandsJ, half = 0.5 * dt;
        _gained += (half * (power + _powerBefore)) - line.AddedJ + (rod - _rodBefore) - Given();
        EffortJ += Math.Abs(hands - _handsBefore) + (half * (effort + _effortBefore));
        (_powerBefore, _effortBefore, _rodBefore, _handsBefore) = (power, effort, rod, hands);
    }

    // What the clutch took: its heat, and what stretches the line that it gave, which lay unstretched on the spool.
    private double Given()
    {
        double heat = _step.Clutch.LossJ - _lossBefore, given = _step.Clutch.GivenM - _givenBefore;
        (_lossBefore, _givenBefore) = (_step.Clutch.LossJ, _step.Clutch.GivenM);
        if (given <= 0.0)
        {
            return heat;
        }

        LineMesh mesh = _step.Mesh;
        double over = Math.Max(0.0, mesh.Rest[0] * (LineEnergy.Edge(mesh, _step.Now, 0).Length - 1.0));
        double elastic = mesh.Stiffness[0] * over;
        double damped = (_step.TipN - elastic) * given;
        return heat + (0.5 * elastic * over / mesh.Rest[0] * given) - damped;
    }

    private double RodWork() => _step.Rod.Work.HandsJ - _step.Rod.Work.RaisedJ - _step.Rod.Work.AirJ - _step.Rod.Work.DampingJ;

    private double Held() =>
        (0.5 * LineEnergy.Twice(_step.Mesh, _step.Now)) + LineEnergy.Bending(_step.Mesh, _step.Now) + _step.Rod.KineticJ + _step.Rod.SpringJ + _step.Clutch.KineticJ
        + _step.Fish.HeldJ;
}
