using System.Globalization;
using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Reels;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Assembly;

/// <summary>Takes a twitched line through base steps of one length, each cut into halves as often as the step rule demands.</summary>
internal sealed class LineLoop
{
    /// <summary>Step rule: the tension direction is explicit, so dt sqrt(T/mu)/l must stay under this (docs/line-solver.md).</summary>
    public const double StepRatioLimit = 0.5;

    private const int DeepestHalving = 10;
    private readonly TwitchedLine _line;
    private readonly HandleTakeUp _takeUp;
    private readonly bool _backsAway;
    private readonly CancellationToken _stop;
    private readonly EnergyAccount _account;
    private TipFrame _tip;
    private double _stepBefore;
    private double _backedAway;
    private int _halving;
    private int _steps;
    private int _halved;
    private double _largestRatio;

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
        (_line, _takeUp, BaseStepS, _backsAway, _stop) = (line, takeUp, baseStepS, backsAway, stop);
        _tip = line.Swing.At(0.0);
        _account = new EnergyAccount(line.Step, line.IsKnotFixed, _tip);
        _line.SetSurroundings();
    }

    /// <summary>Called after every accepted step with its length, s.</summary>
    public Action<double>? Accepted { get; init; }

    /// <summary>Base step, s.</summary>
    public double BaseStepS { get; }

    /// <summary>t at the end of the last accepted step, s.</summary>
    public double TimeS { get; private set; }

    /// <summary>Line taken up, or speed of backing away, in this base step, m/s.</summary>
    public double TakeUpMS { get; private set; }

    /// <summary>Solver counters so far.</summary>
    public SolverCounters Counters => new(
        _steps, _halved, _line.Step.Pass.Solver.Passes, _line.Step.Pass.Solver.LimitHits, _largestRatio)
    {
        EnergyOpenShare = _account.OpenShare,
    };

    /// <summary>Why the energy account, at the end of a run, is too far open for a result; null where it is closed.</summary>
    public string? OpenAccount()
    {
        // Not above, so that NaN is open too.
        double open = _account.OpenShare;
        return open <= SolverCounters.MostEnergyOpenShare
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"the energy account stays open by {100.0 * open:0.0} % of the work at a step of {1e3 * BaseStepS:0.###} ms; use a smaller step");
    }

    /// <summary>One base step; returns why it cannot be taken, or null.</summary>
    /// <param name="start">t at its start, s.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public string? BaseStep(double start)
    {
        TakeUpMS = _takeUp.Speed(start, BaseStepS, _line.SlackM);
        _halving = Math.Max(0, _halving - 1);
        long done = 0;
        double worst = 0.0;
        while (done < 1L << _halving)
        {
            _stop.ThrowIfCancellationRequested();
            double dt = BaseStepS / (1L << _halving);
            double ratio = TryStep(start + ((done + 1) * dt), dt);
            if (ratio > StepRatioLimit)
            {
                if (++_halving > DeepestHalving)
                {
                    return double.IsFinite(ratio)
                        ? $"the line's tension waves need a step below {dt:E1} s at {TimeS:F3} s (stiffest rate {StepRatioLimit / dt:E1} /s); use fewer nodes"
                        : $"the state stopped being finite at {TimeS:F3} s, step {_steps}";
                }

                _halved++;
                done *= 2;
                continue;
            }

            Accept(dt, ratio);
            worst = Math.Max(worst, ratio);
            done++;
        }

        TimeS = start + BaseStepS;
        _halving += worst > 0.5 * StepRatioLimit && _halving > 0 ? 1 : 0;
        _halving = Math.Min(_halving, DeepestHalving);
        return null;
    }

    private double TryStep(double end, double dt)
    {
        Bdf2 step = _steps == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, _stepBefore);
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
        if (ratio > StepRatioLimit)
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

    private void Accept(double dt, double ratio)
    {
        _account.Book(dt, _tip);
        _line.Step.Commit();
        TimeS += dt;
        _stepBefore = dt;
        _backedAway += _backsAway ? dt * TakeUpMS : 0.0;
        _largestRatio = Math.Max(_largestRatio, ratio);
        _steps++;
        Accepted?.Invoke(dt);
        _line.SetSurroundings();
    }
}
