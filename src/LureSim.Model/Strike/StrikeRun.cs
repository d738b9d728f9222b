using System.Globalization;
using LureSim.Model.Assembly;
using LureSim.Model.Fish;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Strike;

/// <summary>Runs one strike from the first movement of the hands to its end.</summary>
public sealed class StrikeRun
{
    // The tension direction is explicit, so dt sqrt(T/mu)/l must stay under this (docs/line-solver.md).
    private const double StepRatioLimit = 0.5;

    private const int DeepestHalving = 10;

    // Time in which the fish gets going (guess), s, and how near to the tip it may come, m.
    private const double StartS = 0.1, NearestM = 1.0;

    private readonly StrikeParts _parts;
    private readonly StrikeTask _task;
    private readonly StrikeRecorder _recorder;
    private readonly StrikeAccount _account;
    private readonly RunContext _context;
    private double _time, _stepBefore, _largestRatio;
    private int _halving, _steps, _halved;

    private StrikeRun(Setup setup, StrikeTask task, RunContext context)
    {
        _parts = new StrikeParts(setup, task);
        (_task, _context) = (task, context);
        _account = new StrikeAccount(_parts.Step);
        _recorder = new StrikeRecorder(_parts);
    }

    /// <summary>
    /// Runs the strike. Fails when the state stops being finite, the step rule cannot be kept, or the energy account is open by more than 1 % at the end.
    /// </summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike.</param>
    /// <param name="context">Progress and stop.</param>
    /// <exception cref="ArgumentException">A value is out of range or makes no sense beside the others.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<StrikeResult> Run(Setup setup, StrikeTask task, RunContext context = default)
    {
        context.Stop.ThrowIfCancellationRequested();
        return Outcome.Of(() => new StrikeRun(setup, task, context).Advance());
    }

    private StrikeResult Advance()
    {
        int total = (int)Math.Ceiling((_task.DurationS / _task.Solver.StepS) - 1e-9);
        int report = Math.Max(1, total / 100);
        for (int n = 0; n < total && !AtTheRod; n++)
        {
            if (n % report == 0)
            {
                _context.Progress?.Invoke((double)n / total);
            }

            BaseStep(n * _task.Solver.StepS);
        }

        double open = _account.OpenShare;
        return open <= SolverCounters.MostEnergyOpenShare
            ? _recorder.Finish(new(_steps, _halved, _parts.Step.Pass.Solver.Passes, _parts.Step.Pass.Solver.LimitHits, _largestRatio) { EnergyOpenShare = open })
            : throw new ModelException(
                string.Create(CultureInfo.InvariantCulture, $"The energy account stays open by {100.0 * open:0.0} % of the work at a step of {1e3 * _task.Solver.StepS:0.###} ms; use a smaller step."), _time);
    }

    private bool AtTheRod => (_parts.Step.Fish.Now.Place - _parts.Step.Rod.TipNow).Length < NearestM;

    // One base step, cut into halves as often as the step rule demands.
    private void BaseStep(double start)
    {
        _halving = Math.Max(0, _halving - 1);
        long done = 0;
        double worst = 0.0;
        while (done < 1L << _halving)
        {
            _context.Stop.ThrowIfCancellationRequested();
            double dt = _task.Solver.StepS / (1L << _halving);
            double ratio = Try(start + ((done + 1) * dt), dt);
            if (ratio > StepRatioLimit)
            {
                done *= 2;
                Halve(ratio, dt);
                continue;
            }

            Accept(dt, ratio);
            worst = Math.Max(worst, ratio);
            done++;
        }

        _time = start + _task.Solver.StepS;
        _halving += worst > 0.5 * StepRatioLimit && _halving > 0 ? 1 : 0;
    }

    private void Halve(double ratio, double dt)
    {
        _halved++;
        if (++_halving > DeepestHalving)
        {
            throw new ModelException(
                double.IsFinite(ratio)
                    ? string.Create(CultureInfo.InvariantCulture, $"The line's tension waves need a step below {dt:E1} s; use fewer nodes.")
                    : string.Create(CultureInfo.InvariantCulture, $"The state stopped being finite at {_time:F3} s."),
                _time);
        }
    }

    private double Try(double end, double dt)
    {
        Bdf2 step = _steps == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, _stepBefore);
        _parts.Step.Try(step, end, Swims(end));
        return _parts.Step.IsFinite ? _parts.Step.StepRatio(dt) : double.PositiveInfinity;
    }

    // A fish that runs needs its reaction time from the first pull; one that comes has been swimming before.
    private double Swims(double time)
    {
        if (_parts.Setup.Fish.Way == FishWay.Comes)
        {
            return 1.0;
        }

        double since = time - _recorder.FirstPullS - _parts.Setup.Fish.ReactionS;
        double s = Math.Clamp(since / StartS, 0.0, 1.0);
        return s * s * (3.0 - (2.0 * s));
    }

    private void Accept(double dt, double ratio)
    {
        _parts.Step.Commit();
        _account.Book(dt);
        _time += dt;
        _stepBefore = dt;
        _largestRatio = Math.Max(_largestRatio, ratio);
        _steps++;
        _recorder.Accept(_time, dt);
    }
}
