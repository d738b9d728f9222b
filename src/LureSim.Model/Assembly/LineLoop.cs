using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Reels;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Assembly;

/// <summary>Takes a twitched line through base steps of one length (<see cref="StepHalving"/>): hand, reel, clutch, energy account.</summary>
internal sealed class LineLoop
{
    private readonly TwitchedLine _line;
    private readonly HandleTakeUp _takeUp;
    private readonly bool _backsAway;
    private readonly StepHalving _steps;
    private readonly EnergyAccount _account;
    private TipFrame _tip;
    private double _backedAway;

    /// <summary>Starts at time 0.</summary>
    /// <param name="line">Rod, line and lure.</param>
    /// <param name="takeUp">Reel.</param>
    /// <param name="baseStepS">Base step, s.</param>
    /// <param name="backsAway">True: the angler backs away instead of reeling, and the line keeps its length.</param>
    /// <param name="stop">Stops it, looked at in every step.</param>
    public LineLoop(TwitchedLine line, HandleTakeUp takeUp, double baseStepS, bool backsAway, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(takeUp);
        (_line, _takeUp, _backsAway) = (line, takeUp, backsAway);
        _steps = new StepHalving(baseStepS, TryStep, Accept, stop);
        _tip = line.Swing.At(0.0);
        _account = new EnergyAccount(line.Step, line.IsKnotFixed, _tip);
        _line.SetSurroundings();
    }

    /// <summary>Called after every accepted step with its length, s.</summary>
    public Action<double>? Accepted { get; init; }

    /// <summary>Base step, s.</summary>
    public double BaseStepS => _steps.BaseStepS;

    /// <summary>t at the end of the last accepted step, s.</summary>
    public double TimeS => _steps.TimeS;

    /// <summary>Line taken up, or speed of backing away, in this base step, m/s.</summary>
    public double TakeUpMS { get; private set; }

    /// <summary>Solver counters so far.</summary>
    public SolverCounters Counters => _steps.Counters(_line.Step.Pass, _account.OpenShare);

    /// <summary>Why the energy account, at the end of a run, is too far open for a result; null where it is closed.</summary>
    public string? OpenAccount() => _steps.OpenAccount(_account.OpenShare);

    /// <summary>One base step; returns why it cannot be taken, or null.</summary>
    /// <param name="start">t at its start, s.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public string? BaseStep(double start)
    {
        TakeUpMS = _takeUp.Speed(start, BaseStepS, _line.SlackM);
        return _steps.BaseStep(start);
    }

    private double TryStep(Bdf2 step, double end)
    {
        double dt = step.Dt;
        LineMesh mesh = _line.Mesh;
        CoupledStep coupled = _line.Step;
        (double length, double extra) = (mesh.LengthM, mesh.TipExtraM);
        TipFrame tip = _line.Swing.At(end);
        if (_backsAway)
        {
            double away = _backedAway + (dt * TakeUpMS);
            tip = tip with
            {
                Position = tip.Position - new Vec3(away, 0.0, 0.0),
                Velocity = tip.Velocity - new Vec3(TakeUpMS, 0.0, 0.0),
            };
        }

        Feed(dt, _backsAway ? 0.0 : TakeUpMS);
        _tip = tip;
        coupled.Try(step, tip);
        double ratio = coupled.IsFinite() ? coupled.StepRatio(dt) : double.PositiveInfinity;
        if (ratio > StepHalving.RatioLimit)
        {
            mesh.SetLength(length, extra);
        }

        return ratio;
    }

    // What the handle wins, and what the first segment has been given and hands on.
    private void Feed(double dt, double won)
    {
        (LineMesh mesh, LinePass pass) = (_line.Mesh, _line.Step.Pass);
        double even = mesh.TipExtraM / TipClutch.EvenS;
        if (won != 0.0 || pass.FeedMS != 0.0 || pass.EvenMS != 0.0 || even != 0.0)
        {
            mesh.SetLength(mesh.LengthM - (dt * won), mesh.TipExtraM - (dt * even));
            (pass.FeedMS, pass.EvenMS) = (won - even, even);
        }
    }

    private void Accept(double dt)
    {
        _account.Book(dt, _tip);
        _line.Step.Commit();
        _backedAway += _backsAway ? dt * TakeUpMS : 0.0;
        Accepted?.Invoke(dt);
        _line.SetSurroundings();
    }
}
